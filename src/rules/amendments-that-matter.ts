import { type Amendment, type Code, holds } from "../edition/index.js";

/**
 * The amendments that an answer hangs on: without those in force, or with the others in force, it would be another.
 *
 * @param code - the code that the answer was found under
 * @param answer - the answer
 * @param answerUnder - the same question under another code
 * @returns those amendments, of the code's own list
 */
export function amendmentsThatMatter<T>(
  code: Code,
  answer: T,
  answerUnder: (code: Code) => T,
): readonly Amendment[] {
  const { amendments = [] } = code;
  return amendments.filter(
    (one, place) => answerUnder({ ...code, amendments: turned(code, one, place) }) !== answer,
  );
}

/** One that is not in force is put in force. One that is, is taken away with those before it that it replaced, as they would come to light. */
function turned(code: Code, one: Amendment, place: number): readonly Amendment[] {
  const { amendments = [], circumstances } = code;
  const { when: _, ...always } = one;
  if (holds(one, circumstances) !== "yes")
    return amendments.map((other, i) => (i === place ? (always as Amendment) : other));
  return amendments.filter((other, i) => i > place || !isOfSamePlace(other, one));
}

function isOfSamePlace(one: Amendment, other: Amendment): boolean {
  if (one.kind === "cell" && other.kind === "cell")
    return one.table === other.table && one.row === other.row && one.column === other.column;
  if (one.kind === "reading" && other.kind === "reading") return one.reading === other.reading;
  return one === other;
}

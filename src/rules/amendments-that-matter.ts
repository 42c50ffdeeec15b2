import {
  type Amendment,
  type CellAmendment,
  type Code,
  holds,
  type ReadingAmendment,
} from "../edition/index.js";

type TableAmendment = CellAmendment | ReadingAmendment;

/**
 * The amended cells and enforced readings that an answer hangs on: without those in force, or with the others in force, it would be another.
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
    (one, place) =>
      isOfTables(one) && answerUnder({ ...code, amendments: turned(code, one, place) }) !== answer,
  );
}

function isOfTables(amendment: Amendment): amendment is TableAmendment {
  return amendment.kind === "cell" || amendment.kind === "reading";
}

/** One that is not in force is put in force. One that is, is taken away with those before it that it replaced, as they would come to light. */
function turned(code: Code, one: TableAmendment, place: number): readonly Amendment[] {
  const { amendments = [], circumstances } = code;
  const { when: _, ...always } = one;
  if (holds(one, circumstances) !== "yes")
    return amendments.map((other, i) => (i === place ? always : other));
  return amendments.filter(
    (other, i) => i > place || !isOfTables(other) || targetOf(other) !== targetOf(one),
  );
}

function targetOf(amendment: TableAmendment): string {
  return amendment.kind === "reading"
    ? amendment.reading
    : [amendment.table, amendment.row, amendment.column].join(" ");
}

import { columnOf, type Material } from "../conductor/index.js";
import { type Amendment, type Code, holds, otherThan, placeOfCell, type Role } from "../edition/index.js";
import { readingFacts } from "../edition/tables/readings.generated.js";
import { reaches } from "./amendment-effects.js";

/** Whose result is looked at. */
export interface Sought {
  readonly code: Code;
  readonly role: Role;
  readonly material: Material;
}

/** What the amendments of a code have to do with a result; each list in the order of the code. */
export interface Mattering {
  /** Without those in force, or with the others in force, the result would be another. */
  readonly acting: readonly Amendment[];
  /** In force, and the result would be another had not a later one of the same place replaced it. */
  readonly superseded: readonly Amendment[];
}

/**
 * Which amendments a result hangs on. Only those are tried that could touch it, and those that do the same are tried once, so that the
 * number of tries does not grow with the square of the list.
 *
 * @param sought - the code of the result, and whose it is
 * @param answer - the result
 * @param answerUnder - the same question under another code, which differs in amendments like the one given
 * @returns those amendments, of the code's own list
 */
export function amendmentsThatMatter<T>(
  sought: Sought,
  answer: T,
  answerUnder: (code: Code, differsIn: Amendment) => T,
): Mattering {
  const { code } = sought;
  const { amendments = [], circumstances } = code;
  if (!amendments.some((one) => canTouch(one, sought))) return { acting: [], superseded: [] };
  const listed = amendments.map((one, place): Listed => {
    return { one, place, at: placeOf(one), inForce: holds(one, circumstances) === "yes" };
  });
  const last = new Map(
    listed.flatMap(({ at, place, inForce }) => (inForce && at !== null ? [[at, place]] : [])),
  );
  const isReplaced = ({ at, place }: Listed): boolean => at !== null && (last.get(at) ?? -1) > place;

  const found = new Map<string, T>();
  const tried = ({ one, place }: Listed, how: string, amendmentsThen: () => readonly Amendment[]): T => {
    const key = `${how} ${effectOf(one)}`;
    const known = found.has(key)
      ? (found.get(key) as T)
      : answerUnder(
          otherThan(code, `${how} amendment ${place}`, () => ({ ...code, amendments: amendmentsThen() })),
          one,
        );
    found.set(key, known);
    return known;
  };
  const without = (isLeftOut: (other: Listed) => boolean): readonly Amendment[] =>
    listed.filter((other) => !other.inForce || !isLeftOut(other)).map(({ one }) => one);

  const acts = (own: Listed): boolean => {
    const { one, place, at, inForce } = own;
    if (!canTouch(one, sought) || isReplaced(own)) return false;
    if (!inForce) {
      const { when: _, ...always } = one;
      const met = (): readonly Amendment[] =>
        amendments.map((other, i) => (i === place ? (always as Amendment) : other));
      return tried(own, "with", met) !== answer;
    }
    if (one.kind === "basis") {
      // Two that lift the same both act, although each alone could be missed.
      const isPeer = (other: Listed): boolean => other.one.kind === "basis" && other.one.use === one.use;
      const none = tried(own, "without all like", () => without(isPeer));
      return tried(own, "alone", () => without((other) => isPeer(other) && other !== own)) !== none;
    }
    // One of a place is taken away with those before it that it replaced, as they would come to light.
    const isTaken = (other: Listed): boolean =>
      other === own || (at !== null && other.at === at && other.place < place);
    return tried(own, "without", () => without(isTaken)) !== answer;
  };
  const wouldAct = (own: Listed): boolean =>
    own.inForce &&
    canTouch(own.one, sought) &&
    isReplaced(own) &&
    tried(own, "instead", () => without(({ at, place }) => at === own.at && place > own.place)) !== answer;
  return {
    acting: listed.filter(acts).map(({ one }) => one),
    superseded: listed.filter(wouldAct).map(({ one }) => one),
  };
}

/** An amendment with its place in the list, and what it stands at. */
interface Listed {
  readonly one: Amendment;
  readonly place: number;
  readonly at: string | null;
  readonly inForce: boolean;
}

/** Whether an amendment could have to do with a role and a material at all. */
export function canTouch(one: Amendment, { code, role, material }: Sought): boolean {
  switch (one.kind) {
    case "cell":
      return one.column === columnOf(material);
    case "reading":
      return readingFacts[one.reading].editions.includes(code.year);
    case "basis":
      return reaches(one, role);
    case "floor":
      return one.role === role && one[columnOf(material)] !== undefined;
    case "material":
      return one.material === material && (one.role === role || one.role === "every-role");
    case "always-wire":
      return false;
  }
}

/** The cell or the reading that an amendment stands at, where a later one replaces an earlier one; other kinds stand side by side. */
function placeOf(one: Amendment): string | null {
  if (one.kind === "cell") return `${one.table} ${placeOfCell(one)}`;
  return one.kind === "reading" ? one.reading : null;
}

/** What an amendment does, whoever made it and whenever it applies. */
function effectOf({ citation: _, when: __, ...own }: Amendment): string {
  return JSON.stringify(own);
}

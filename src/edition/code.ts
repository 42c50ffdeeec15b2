import { member, optional, type Reader, readObject, readOneOf } from "../input/reader.js";
import { type Amendment, type Circumstances, holds } from "./amendment.js";
import { type EditionYear, editionYears } from "./edition-year.js";
import type { Policy, PolicySet } from "./policy.js";
import { readAmendments, readCircumstances } from "./read-amendment.js";
import { defaultReadings, type Readings, readingFacts } from "./tables/readings.generated.js";

/**
 * The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen.
 * Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted.
 */
export interface Code {
  /** Year of the edition. */
  readonly year: EditionYear;
  /** Readings that differ from the defaults. */
  readonly readings?: Partial<Readings>;
  /** Local amendments, or proposals for the next edition, in the order in which they were made. */
  readonly amendments?: readonly Amendment[];
  /** What is known of the place and the run, for amendments under a condition. */
  readonly circumstances?: Circumstances;
}

/** Checks a code in an input. */
export function readCode(at: Reader): Code | undefined {
  if (!readObject(at, ["year", "readings", "amendments", "circumstances"])) return undefined;
  const year = readOneOf(member(at, "year"), editionYears);
  const readings = optional(member(at, "readings"), readReadings);
  const amendments = optional(member(at, "amendments"), readAmendments);
  const circumstances = optional(member(at, "circumstances"), readCircumstances);
  return (
    year && {
      year,
      ...(readings && { readings }),
      ...(amendments && { amendments }),
      ...(circumstances && { circumstances }),
    }
  );
}

/** The alternative that a code chooses for a reading. */
export function chosenReading<K extends keyof Readings>(code: Code, id: K): Readings[K] {
  const amended = amendmentsInForce(code, "reading")
    .filter(({ reading }) => reading === id)
    .at(-1);
  return code.readings?.[id] ?? (amended?.alternative as Readings[K] | undefined) ?? defaultReadings[id];
}

/** The amendments of a kind that apply under a code. */
export function amendmentsInForce<K extends Amendment["kind"]>(
  { amendments = [], circumstances }: Code,
  kind: K,
): readonly Extract<Amendment, { readonly kind: K }>[] {
  return amendments.filter(
    (one): one is Extract<Amendment, { readonly kind: K }> =>
      one.kind === kind && holds(one, circumstances) === "yes",
  );
}

/** The policy of a set under a code: the edition's row with the chosen readings laid over it. */
export function policyUnder<P extends object = Policy>(code: Code, policies: PolicySet<P>): P {
  const changes = readingsFor(code, policies).map((id) => policyChange(code, id));
  return Object.assign({}, policies.byEdition[code.year], ...changes) as P;
}

/** The readings that have a say for a set of policies in an edition, in the order of the ledger. */
export function readingsFor({ year }: Code, { id: set }: Pick<PolicySet, "id">): readonly (keyof Readings)[] {
  return readingIds.filter(
    (id) => readingFacts[id].policies.includes(set) && readingFacts[id].editions.includes(year),
  );
}

/** The same code with other alternatives for one reading, the chosen one left out. */
export function otherReadings(
  code: Code,
  id: keyof Readings,
): readonly { readonly alternative: string; readonly code: Code }[] {
  return Object.keys(readingFacts[id].policy)
    .filter((alternative) => alternative !== chosenReading(code, id))
    .map((alternative) => ({
      alternative,
      code: { ...code, readings: { ...code.readings, [id]: alternative } },
    }));
}

const readingIds = /* @__PURE__ */ Object.keys(readingFacts) as readonly (keyof Readings)[];

function policyChange(code: Code, id: keyof Readings): object {
  const changes: Readonly<Record<string, object>> = readingFacts[id].policy;
  return changes[chosenReading(code, id)] ?? {};
}

function readReadings(at: Reader): Partial<Readings> | undefined {
  if (!readObject(at, readingIds)) return undefined;
  const chosen: Record<string, string> = {};
  for (const id of Object.keys(at.value as object)) {
    if (!Object.hasOwn(readingFacts, id)) continue;
    const alternatives = Object.keys(readingFacts[id as keyof Readings].policy);
    const alternative = readOneOf(member(at, id), alternatives);
    if (alternative !== undefined) chosen[id] = alternative;
  }
  return chosen as Partial<Readings>;
}

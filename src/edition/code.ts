import { member, optional, type Reader, readObject, readOneOf } from "../input/reader.js";
import { type Amendment, amendmentsInForce, type Circumstances, type ReadingAmendment } from "./amendment.js";
import { type EditionYear, editionYears } from "./edition-year.js";
import type { Policy, PolicySet } from "./policy.js";
import { readAmendments, readCircumstances } from "./read-amendment.js";
import { refuseCells } from "./refuse-cells.js";
import { refuseServiceRating } from "./refuse-service-rating.js";
import { defaultReadings, type Readings, readingFacts } from "./tables/readings.generated.js";

/**
 * The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen.
 * Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted.
 */
export interface Code {
  /** Year of the edition. */
  readonly year: EditionYear;
  /** Readings that differ from the defaults. One that an amendment in force enforces otherwise is overruled, and that is said. */
  readonly readings?: Partial<Readings>;
  /** Local amendments, or proposals for the next edition, in the order in which they were made. */
  readonly amendments?: readonly Amendment[];
  /** What is known of the place and the run, for amendments under a condition. */
  readonly circumstances?: Circumstances;
}

/** Checks a code in an input, its amendments against the tables of its edition. */
export function readCode(at: Reader): Code | undefined {
  if (!readObject(at, ["year", "readings", "amendments", "circumstances"])) return undefined;
  const year = readOneOf(member(at, "year"), editionYears);
  const readings = optional(member(at, "readings"), readReadings);
  const amendments = optional(member(at, "amendments"), readAmendments);
  const circumstances = optional(member(at, "circumstances"), readCircumstances);
  if (year === undefined) return undefined;
  const code = {
    year,
    ...(readings && { readings }),
    ...(amendments && { amendments: withoutRepeats(amendments) }),
    ...(circumstances && { circumstances }),
  };
  if (amendments !== undefined) {
    refuseCells(member(at, "amendments"), year, amendments);
    refuseServiceRating(at, code);
  }
  return code;
}

/** The same amendment twice is one; the last stands, because a later one of the same place counts. */
function withoutRepeats(amendments: readonly Amendment[]): readonly Amendment[] {
  const last = new Map(amendments.map((one, place) => [JSON.stringify(one), place]));
  return amendments.filter((one, place) => last.get(JSON.stringify(one)) === place);
}

/** The alternative of a reading under a code: what a jurisdiction enforces, else what the caller chose, else the default. */
export function chosenReading<K extends keyof Readings>(code: Code, id: K): Readings[K] {
  const enforced = enforcedReading(code, id)?.alternative as Readings[K] | undefined;
  return enforced ?? code.readings?.[id] ?? defaultReadings[id];
}

/** The amendment that enforces an alternative of a reading under a code. The reading is then no longer open. */
export function enforcedReading(code: Code, id: keyof Readings): ReadingAmendment | undefined {
  return amendmentsInForce(code, "reading")
    .filter(({ reading }) => reading === id)
    .at(-1);
}

/** A reading that the caller chose and a jurisdiction enforces otherwise. */
export interface OverruledReading {
  readonly id: keyof Readings;
  readonly by: ReadingAmendment;
}

/** The readings that a code chooses in vain. */
export function overruledReadings(code: Code): readonly OverruledReading[] {
  return (Object.keys(code.readings ?? {}) as (keyof Readings)[]).flatMap((id) => {
    const by = enforcedReading(code, id);
    return by === undefined || by.alternative === code.readings?.[id] ? [] : [{ id, by }];
  });
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

/** The same code with other alternatives for one reading, the chosen one left out. None where a jurisdiction enforces one. */
export function otherReadings(
  code: Code,
  id: keyof Readings,
): readonly { readonly alternative: string; readonly code: Code }[] {
  if (enforcedReading(code, id) !== undefined) return [];
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

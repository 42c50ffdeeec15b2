import { amendmentsInForce } from "./amendment.js";
import type { EditionYear } from "./edition-year.js";
import { otherThan, perCode } from "./kept-code.js";
import type { Policy, PolicySet } from "./policy.js";
import type { Code, ReadingAmendment } from "./shape.generated.js";
import { defaultReadings, type Readings, readingFacts } from "./tables/readings.generated.js";

/** The alternative of a reading under a code: what a jurisdiction enforces, else what the caller chose, else the default. */
export function chosenReading<K extends keyof Readings>(code: Code, id: K): Readings[K] {
  const enforced =
    code.amendments === undefined
      ? undefined
      : (enforcedReading(code, id)?.alternative as Readings[K] | undefined);
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
  if (code.amendments === undefined) return [];
  return (Object.keys(code.readings ?? {}) as (keyof Readings)[]).flatMap((id) => {
    const by = enforcedReading(code, id);
    return by === undefined || by.alternative === code.readings?.[id] ? [] : [{ id, by }];
  });
}

/** The policy of a set under a code: the edition's row with the chosen readings laid over it. */
export function policyUnder<P extends object = Policy>(code: Code, policies: PolicySet<P>): P {
  return policiesUnder(code, policies, () => laidOver(code, policies)) as P;
}

const policiesUnder = /* @__PURE__ */ perCode<object, object>();

function laidOver<P extends object>(code: Code, policies: PolicySet<P>): P {
  const printed = policies.byEdition[code.year];
  const ids = readingsFor(code, policies);
  return ids.length === 0 ? printed : Object.assign({}, printed, ...ids.map((id) => policyChange(code, id)));
}

/** The readings that have a say for a set of policies in an edition, in the order of the ledger. */
export function readingsFor({ year }: Code, { id: set }: Pick<PolicySet, "id">): readonly (keyof Readings)[] {
  let known = readingIdsIn.get(year);
  if (known === undefined) {
    known = readingIdsBySet(year);
    readingIdsIn.set(year, known);
  }
  return known.get(set) ?? [];
}

/** The same code with another alternative for one reading, the chosen one left out. */
export interface OtherReading {
  readonly alternative: string;
  readonly code: Code;
}

/** The same code with other alternatives for one reading. None where a jurisdiction enforces one. */
export function otherReadings(code: Code, id: keyof Readings): readonly OtherReading[] {
  return otherReadingsOf(code, id, () => otherAlternatives(code, id));
}

const otherReadingsOf = /* @__PURE__ */ perCode<keyof Readings, readonly OtherReading[]>();

function otherAlternatives(code: Code, id: keyof Readings): readonly OtherReading[] {
  if (enforcedReading(code, id) !== undefined) return [];
  return Object.keys(readingFacts[id].policy)
    .filter((alternative) => alternative !== chosenReading(code, id))
    .map((alternative) => ({
      alternative,
      code: otherThan(code, `reading ${id} ${alternative}`, () => ({
        ...code,
        readings: { ...code.readings, [id]: alternative },
      })),
    }));
}

/** By edition and by set of policies, the readings that have a say; worked out at the first question about an edition, and kept. */
const readingIdsIn = new Map<EditionYear, ReadonlyMap<string, readonly (keyof Readings)[]>>();

function readingIdsBySet(year: EditionYear): ReadonlyMap<string, readonly (keyof Readings)[]> {
  const ids = (Object.keys(readingFacts) as (keyof Readings)[]).filter((id) =>
    readingFacts[id].editions.includes(year),
  );
  const sets = new Set(ids.flatMap((id) => readingFacts[id].policies));
  return new Map(
    [...sets].map((set) => [set, ids.filter((id) => readingFacts[id].policies.includes(set))] as const),
  );
}

function policyChange(code: Code, id: keyof Readings): object {
  const changes: Readonly<Record<string, object>> = readingFacts[id].policy;
  return changes[chosenReading(code, id)] ?? {};
}

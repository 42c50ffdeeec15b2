import {
  type Conductor,
  type ConductorColumn,
  type ConductorSize,
  columnOf,
  conductorSizes,
  type EditionYear,
  editionYears,
  type Input,
  type Material,
  type mainBondingJumper,
  materials,
  type Readings,
  type Supply,
  type SupplySet,
  type TemperatureColumn,
} from "bondmil";
import fc from "fast-check";

export const year: fc.Arbitrary<EditionYear> = fc.constantFrom(...editionYears);
export const material: fc.Arbitrary<Material> = fc.constantFrom(...materials);
export const temperature: fc.Arbitrary<TemperatureColumn> = fc.constantFrom<TemperatureColumn>(60, 75, 90);

/** What a supply may be made of. */
export interface SupplyShape {
  /** Materials to draw from; all unless told. */
  readonly materials?: readonly Material[];
  /** Sizes to draw from; every size that a table names unless told. */
  readonly sizes?: readonly ConductorSize[];
  /** Phases of the sets that list them; one to three unless told. */
  readonly phases?: number;
}

/** Materials of one column, so that the supply counts as one material. */
export function ofColumn(column: ConductorColumn): readonly Material[] {
  return materials.filter((one) => columnOf(one) === column);
}

function conductor({
  materials: from = materials,
  sizes = conductorSizes,
}: SupplyShape): fc.Arbitrary<Conductor> {
  return fc.record({ size: fc.constantFrom(...sizes), material: fc.constantFrom(...from) });
}

/** One to four entries of up to 20 sets each, uniform or with so many phases. */
export function supplyOf(shape: SupplyShape = {}): fc.Arbitrary<Supply> {
  return (shape.phases === undefined ? fc.constantFrom(1, 2, 3) : fc.constant(shape.phases)).chain((phases) =>
    fc.array(setOf(phases, shape), { minLength: 1, maxLength: 4 }).map((sets) => ({ sets })),
  );
}

function setOf(phases: number, shape: SupplyShape): fc.Arbitrary<SupplySet> {
  const count = fc.oneof(fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 20 }));
  const uniform = fc.tuple(count, conductor(shape)).map(([n, one]): SupplySet => ({ count: n, ...one }));
  const list = fc
    .array(fc.option(conductor(shape), { freq: 5 }), { minLength: phases, maxLength: phases })
    .filter((one) => one.some((phase) => phase !== null));
  const phased = fc.record({ count, phases: list });
  return fc.oneof({ weight: 2, arbitrary: uniform }, { weight: 1, arbitrary: phased });
}

/** A supply of copper alone, or of aluminum and copper-clad aluminum alone. */
export const oneMaterialSupply: fc.Arbitrary<Supply> = fc
  .constantFrom<ConductorColumn>("copper", "aluminum")
  .chain((column) => supplyOf({ materials: ofColumn(column) }));

/** Any supply: one material or both. */
export const supply: fc.Arbitrary<Supply> = fc.oneof(oneMaterialSupply, supplyOf());

/** Any choice of readings that have a say for a jumper. */
export const readings: fc.Arbitrary<Partial<Readings>> = fc.record(
  {
    "cap-on-small-supplies": fc.constantFrom("every-supply", "large-supplies-only"),
    "cap-in-2014": fc.constantFrom("absent", "as-in-2017"),
    "supply-side-other-material-in-2011": fc.constantFrom("at-any-size", "above-threshold"),
    "supply-side-other-material-in-2014": fc.constantFrom("at-any-size", "above-threshold"),
    "single-conductor-of-another-material": fc.constantFrom("as-in-parallel", "parallel-only"),
  },
  { requiredKeys: [] },
);

/** Any input, wires and busbars, with and without a temperature column. */
export const request: fc.Arbitrary<Input<typeof mainBondingJumper>> = requestFor(supply);

/** An input around such a supply. */
export function requestFor(supplies: fc.Arbitrary<Supply>): fc.Arbitrary<Input<typeof mainBondingJumper>> {
  return fc.record(
    {
      code: fc.record({ year }),
      supply: supplies,
      conductor: fc.record(
        { material, form: fc.constantFrom("wire" as const, "bus" as const) },
        { requiredKeys: ["material"] },
      ),
      temperature,
    },
    { requiredKeys: ["code", "supply", "conductor"] },
  );
}

/**
 * A supply, and one in which every conductor of it is matched by one of the same material and at least its area: conductors
 * enlarged, sets added to entries, and whole entries added.
 */
export function withLarger(
  base: fc.Arbitrary<Supply>,
  added: SupplyShape = {},
): fc.Arbitrary<{ readonly small: Supply; readonly large: Supply }> {
  return base.chain((small) => {
    const phases = Math.max(1, ...small.sets.map((set) => ("phases" in set ? set.phases.length : 1)));
    const enlarged = fc.tuple(...small.sets.map((set) => enlargedSet(set, added)));
    const more = fc.array(setOf(phases, added), { maxLength: 2 });
    return fc
      .record({ enlarged, more, first: fc.boolean() })
      .map(({ enlarged: sets, more: extra, first }) => ({
        small,
        large: { sets: first ? [...extra, ...sets] : [...sets, ...extra] },
      }));
  });
}

function enlargedSet(set: SupplySet, added: SupplyShape): fc.Arbitrary<SupplySet> {
  const count = fc.oneof(fc.constant(set.count), fc.integer({ min: set.count, max: set.count + 3 }));
  if (!("phases" in set)) {
    return fc.tuple(count, enlargedConductor(set)).map(([n, one]): SupplySet => ({ count: n, ...one }));
  }
  const phases = set.phases.map((phase) =>
    phase ? enlargedConductor(phase) : fc.option(conductor(added), { freq: 1 }),
  );
  return fc.record({ count, phases: fc.tuple(...phases) });
}

function enlargedConductor({ size, material: same }: Conductor): fc.Arbitrary<Conductor> {
  const larger = conductorSizes.slice(conductorSizes.indexOf(size));
  const to = fc.oneof(fc.constant(size), fc.constantFrom(...larger.slice(0, 3)), fc.constantFrom(...larger));
  return to.map((one) => ({ size: one, material: same }));
}

/** A supply in which every entry of n sets stands n times. */
export function spelledOut({ sets }: Supply): Supply {
  return {
    sets: sets.flatMap((set) => Array.from({ length: set.count }, () => ({ ...set, count: 1 }))),
  };
}

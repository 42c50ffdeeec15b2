import {
  areaOf,
  type Conductor,
  type ConductorColumn,
  columnOf,
  type EditionYear,
  type Material,
  type StandardSize,
  type Supply,
  type SupplySet,
  smallestConductorFor,
  tableAmpacity,
} from "../../../src/index.js";
import type { AnyInput, Wrong } from "./program.js";
import { onInput } from "./program.js";

/** Every supply in an input: that of the conductor, those of circuits, and those that an increase is counted from. */
export function mapSupplies(input: AnyInput, map: (supply: Supply) => Supply): AnyInput {
  const { supply, circuits } = input;
  return {
    ...input,
    ...(supply && { supply: map(supply) }),
    ...(circuits && {
      circuits: circuits.map((circuit) => ({
        ...circuit,
        ...(circuit.conductors && { conductors: map(circuit.conductors) }),
        ...(circuit.increasedFrom && {
          increasedFrom: { ...circuit.increasedFrom, conductors: map(circuit.increasedFrom.conductors) },
        }),
      })),
    }),
  };
}

/** Every supply is another. */
export function onSupplies(map: (supply: Supply, input: AnyInput) => Supply): Wrong {
  return onInput((input) => mapSupplies(input, (supply) => map(supply, input)));
}

/** Every set of every supply is another. */
export function onSets(map: (set: SupplySet) => SupplySet): Wrong {
  return onSupplies((supply) => ({ ...supply, sets: supply.sets.map(map) }));
}

/** Every conductor of a supply, by a map. */
export function mapConductors(supply: Supply, map: (conductor: Conductor) => Conductor): Supply {
  return {
    ...supply,
    sets: supply.sets.map((set) =>
      "phases" in set
        ? { count: set.count, phases: set.phases.map((phase) => phase && map(phase)) }
        : { count: set.count, ...map({ size: set.size, material: set.material }) },
    ),
  };
}

/** The conductors of a set, one per phase. */
export function phasesOf(set: SupplySet): readonly Conductor[] {
  return "phases" in set
    ? set.phases.filter((phase) => phase !== null)
    : [{ size: set.size, material: set.material }];
}

/** Every different conductor. */
export function conductorsOf({ sets }: Supply): readonly Conductor[] {
  return sets.flatMap(phasesOf);
}

/** The largest conductor of some. */
export function largestOf(conductors: readonly Conductor[]): Conductor {
  return conductors.reduce((so, one) => (areaOf(one.size) > areaOf(so.size) ? one : so));
}

/** Number of sets. */
export function countSets({ sets }: Supply): number {
  return sets.reduce((sum, { count }) => sum + count, 0);
}

/** Each set's largest conductor, added. */
export function sumOf({ sets }: Supply, area: (conductor: Conductor) => number = ownArea): number {
  return sets.reduce((sum, set) => sum + set.count * Math.max(...phasesOf(set).map(area)), 0);
}

/** The column of a supply; `mixed` of copper and aluminum. */
export function columnOfSupply(supply: Supply): ConductorColumn | "mixed" {
  const columns = new Set(conductorsOf(supply).map(({ material }) => columnOf(material)));
  const [first] = columns;
  return columns.size === 1 && first !== undefined ? first : "mixed";
}

/** Amperes of a supply at 75 C; what the table leaves out counts nothing. */
export function amperesOf(supply: Supply, edition: EditionYear): number {
  return sumOf(supply, (one) => tableAmpacity({ edition, ...one, temperature: 75 }).amperes ?? 0);
}

/** The smallest conductor for some amperes at 75 C. */
export function conductorFor(edition: EditionYear, amperes: number, material: Material): StandardSize | null {
  return smallestConductorFor({ edition, amperes, material, temperature: 75 });
}

/** A supply of equal sets. */
export function setsOf(count: number, conductor: Conductor): Supply {
  return { sets: [{ count, ...conductor }] };
}

function ownArea({ size }: Conductor): number {
  return areaOf(size);
}

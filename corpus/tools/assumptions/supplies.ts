import {
  areaOf,
  type ConductorSize,
  type Material,
  smallestConductorFor,
  standardSizes,
  tableAmpacity,
} from "../../../src/index.js";

/** Conductors as an input lists them. */
export interface Conductors {
  readonly sets: readonly SetOfConductors[];
}

interface SetOfConductors {
  readonly count: number;
  readonly size: ConductorSize;
  readonly material: Material;
}

const metals = ["copper", "aluminum"] as const satisfies readonly Material[];

/** More sets than any source has for the amperes that it names. */
const mostSets = 20;

/** 310.10(H), 310.10(G) since 2020: smaller conductors are not connected in parallel. */
const leastInParallel = areaOf("1/0 AWG");

/** The few ampacities that differ between editions do not change which sizes come into question. */
const column = { edition: "2017", temperature: 75 } as const;

/**
 * Other conductors that somebody could have who only knows the amperes, each the smallest that carries them; without amperes, one to eight
 * sets of every size.
 */
export function suppliesFor(amperes: number | undefined): readonly Conductors[] {
  return metals.flatMap((material) =>
    amperes === undefined
      ? standardSizes.flatMap((size) => [1, 2, 4, 8].map((count) => of(count, size, material)))
      : demandsOf(amperes).flatMap((demand) => carrying(demand, material)),
  );
}

/** Whether conductors could be those of a service, feeder or circuit of so many amperes. */
export function canCarry({ sets }: Conductors, amperes: number): boolean {
  const carried = sets.reduce(
    (sum, { count, size, material }) =>
      sum + count * (tableAmpacity({ ...column, size, material }).amperes ?? 0),
    0,
  );
  return demandsOf(amperes).some((demand) => carried >= demand);
}

function carrying(amperes: number, material: Material): readonly Conductors[] {
  return Array.from({ length: mostSets }, (_, index) => index + 1).flatMap((count) => {
    const needed = smallestConductorFor({ ...column, material, amperes: amperes / count });
    if (needed === null || (count > 1 && areaOf(needed) < leastInParallel)) return [];
    return [of(count, needed, material)];
  });
}

/** 310.15(B)(7), 310.12 since 2020: 83 percent for a dwelling, through 400 A; 240.4(B): the next rating above, through 800 A. */
function demandsOf(amperes: number): readonly number[] {
  if (amperes <= 400) return [amperes, 0.83 * amperes];
  return amperes <= 800 ? [amperes, 0.9 * amperes] : [amperes];
}

function of(count: number, size: ConductorSize, material: Material): Conductors {
  return { sets: [{ count, size, material }] };
}

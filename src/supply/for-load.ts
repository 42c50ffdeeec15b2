import { smallestConductorIn, type TemperatureColumn } from "../ampacity/index.js";
import { readColumn } from "../ampacity/read.js";
import { areaOf, type Material } from "../conductor/index.js";
import { type EditionYear, editionYears } from "../edition/index.js";
import {
  member,
  optional,
  type Reader,
  readAll,
  readCount,
  readObject,
  readOneOf,
  readPositive,
  refuse,
} from "../input/reader.js";
import { readMaterial } from "./read.js";
import type { Supply } from "./shape.generated.js";

export { readColumn };

/** A load for which no conductors are chosen yet. */
export interface LoadRequirement {
  /** Edition whose ampacity table is used. */
  readonly edition: EditionYear;
  /** Amperes that the conductors must carry. */
  readonly amperes: number;
  /** Material of the conductor. */
  readonly material: Material;
  /** Temperature column; 60 C up to 100 A and 75 C above, as 110.14(C)(1) has it, by default. */
  readonly temperature?: TemperatureColumn;
  /** Most parallel sets to consider; 1 by default. */
  readonly mostSets?: number;
}

const smallestParallel = areaOf("1/0 AWG");

/**
 * The conductors that a load would require, for bonding work ahead of the choice of conductors (the note on services without
 * service-entrance conductors). One candidate per number of sets; parallel sets start at 1/0 AWG. Each candidate leads to
 * its own jumper, so all are returned and none is preferred.
 *
 * @param load - the load and how its conductors are rated
 * @returns candidates by number of sets, fewest first; those that no conductor of the table can meet are left out
 * @throws {@link InputError} for bad input, or `out-of-range` if no candidate can carry the load
 *
 * @example
 * ```ts
 * import { suppliesForLoad } from "bondmil";
 * const candidates = suppliesForLoad({ edition: "2023", amperes: 760, material: "copper", mostSets: 3 });
 * candidates.map((supply) => supply.sets[0]);
 * // => [
 * //   { count: 2, size: "500 kcmil", material: "copper" },
 * //   { count: 3, size: "250 kcmil", material: "copper" },
 * // ]
 * ```
 */
export function suppliesForLoad(load: LoadRequirement): readonly Supply[] {
  return readAll(load, (at) => {
    const read = readLoad(at);
    if (read === undefined) return undefined;
    const { edition, amperes, material } = read;
    const column = read.temperature ?? (amperes <= 100 ? 60 : 75);
    const candidates = Array.from({ length: read.mostSets ?? 1 }, (_, i) => i + 1).flatMap(
      (count): Supply[] => {
        const size = smallestConductorIn(edition, amperes / count, material, column);
        if (size === null || (count > 1 && areaOf(size) < smallestParallel)) return [];
        return [{ sets: [{ count, size, material }], requiredForAmperes: amperes }];
      },
    );
    if (candidates.length > 0) return candidates;
    return refuse(
      member(at, "amperes"),
      "out-of-range",
      "a load that the conductors can carry",
      "allow more sets with mostSets",
    );
  });
}

function readLoad(at: Reader): LoadRequirement | undefined {
  if (!readObject(at, ["edition", "amperes", "material", "temperature", "mostSets"])) return undefined;
  const edition = readOneOf(member(at, "edition"), editionYears);
  const amperes = readPositive(member(at, "amperes"), "amperes");
  const material = readMaterial(member(at, "material"));
  const temperature = optional(member(at, "temperature"), readColumn);
  const mostSets = optional(member(at, "mostSets"), (one) => readCount(one, "sets"));
  if (edition === undefined || amperes === undefined || material === undefined) return undefined;
  return { edition, amperes, material, ...(temperature && { temperature }), ...(mostSets && { mostSets }) };
}

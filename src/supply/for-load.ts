import { smallestConductorIn } from "../ampacity/index.js";
import { readShape } from "../input/read-shape.js";
import { member, readAll, refuse } from "../input/reader.js";
import { smallestParallel } from "./parallel-minimum.js";
import { type LoadRequirement, loadRequirementShape } from "./questions/shape.generated.js";
import type { Supply } from "./shape.generated.js";
import { largerSize, leastOfCircuit } from "./small-conductors.js";

export type { LoadRequirement };

/**
 * The conductors that a load would require, for bonding work ahead of the choice of conductors (the note on services without
 * service-entrance conductors). One candidate per number of sets; parallel sets start at 1/0 AWG, and a single one at the smallest that a device of
 * the circuit's rating may protect (240.4(D)). Each candidate leads to its own jumper, so all are returned and none is preferred.
 *
 * @param load - the load and how its conductors are rated
 * @returns candidates by number of sets, fewest first; those that no conductor of the table can meet are left out
 * @throws {@link InputError} for bad input, or `out-of-range` if no candidate can carry the load, or the circuit is rated below it
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
    const read = readShape<LoadRequirement>(at, loadRequirementShape);
    if (read === undefined) return undefined;
    const { edition, amperes, material, circuitAmperes = amperes } = read;
    if (circuitAmperes < amperes) {
      const expected = `a circuit of at least ${amperes} A, the load that it carries`;
      return refuse(member(at, "circuitAmperes"), "out-of-range", expected, "give the rating of the device");
    }
    const column = read.temperature ?? (circuitAmperes <= 100 ? 60 : 75);
    const least = leastOfCircuit(edition, circuitAmperes, material)?.size ?? "18 AWG";
    const candidates = Array.from({ length: read.mostSets ?? 1 }, (_, i) => i + 1).flatMap(
      (count): Supply[] => {
        const carrying = smallestConductorIn(edition, amperes / count, material, column);
        if (carrying === null) return [];
        const size = largerSize(carrying, count > 1 ? smallestParallel : least);
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

import { readMaterial } from "../conductor/read.js";
import { mostSets } from "../input/limits.js";
import { type Members, readShape } from "../input/read-shape.js";
import { member, placeIn, type Reader, refuse } from "../input/reader.js";
import {
  type ChosenConductors,
  type Conductor,
  chosenConductorsShape,
  conductorShape,
  type Supply,
  type SupplySet,
  supplyShape,
} from "./shape.generated.js";

export { readMaterial };

/** Checks a supply in an input. */
export function readSupply(at: Reader): Supply | undefined {
  return readShape<Supply>(at, supplyShape, refineSets);
}

/** Checks conductors in an input that are chosen, whatever a load requires. */
export function readChosenConductors(at: Reader): ChosenConductors | undefined {
  return readShape<ChosenConductors>(at, chosenConductorsShape, refineSets);
}

/** Checks one conductor, its size and its material, in an input. */
export function readConductor(at: Reader): Conductor | undefined {
  return readShape<Conductor>(at, conductorShape);
}

function refineSets(at: Reader, { sets }: Members<Supply>): void {
  if (sets === undefined) return;
  const list = member(at, "sets");
  refuseEmptyPhases(list, sets);
  refuseUnaddableSets(list, sets);
}

function refuseEmptyPhases(list: Reader, sets: readonly SupplySet[]): void {
  sets.forEach((set, i) => {
    if (!("phases" in set) || set.phases.some((phase) => phase !== null)) return;
    const place = placeIn(list, [i, "phases"], set.phases);
    refuse(place, "empty-list", "a conductor in at least one phase", "leave the set out if it has none");
  });
}

/** Refuses sets that cannot be added as one supply: phases unlike each other, or more sets than keep every product exact. */
export function refuseUnaddableSets(at: Reader, sets: readonly SupplySet[]): void {
  refuseUnlikePhases(at, sets);
  if (sets.reduce((sum, { count }) => sum + count, 0) <= mostSets) return;
  refuse(at, "out-of-range", `at most ${mostSets} sets together`, "divide the supply");
}

/** Corresponding conductors can be added where all phased sets list the same phases. */
function refuseUnlikePhases(at: Reader, sets: readonly SupplySet[]): void {
  const lengths = sets.flatMap((set) => ("phases" in set ? [set.phases.length] : []));
  if (lengths.every((length) => length === lengths[0])) return;
  refuse(
    at,
    "unlike-phases",
    "the same number of phases in every set",
    "list the phases of every set in the same order, with null where a set leaves a phase out",
  );
}

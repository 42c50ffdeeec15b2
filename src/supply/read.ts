import { readMaterial, readSize } from "../conductor/read.js";
import { mostPhases, mostSetEntries, mostSets } from "../input/limits.js";
import {
  member,
  optional,
  type Reader,
  readCount,
  readList,
  readObject,
  readPositive,
  refuse,
} from "../input/reader.js";
import type { Conductor, Supply, SupplySet } from "./supply.js";

export { readMaterial };

/** Checks a supply in an input. */
export function readSupply(at: Reader): Supply | undefined {
  if (!readObject(at, ["sets", "requiredForAmperes"])) return undefined;
  const sets = readList(member(at, "sets"), readSet, mostSetEntries);
  const required = optional(member(at, "requiredForAmperes"), (one) => readPositive(one, "amperes"));
  if (sets === undefined) return undefined;
  return areLikePhases(member(at, "sets"), sets) && areFewEnough(member(at, "sets"), sets)
    ? { sets, ...(required === undefined ? {} : { requiredForAmperes: required }) }
    : undefined;
}

function areFewEnough(at: Reader, sets: readonly SupplySet[]): boolean {
  if (sets.reduce((sum, { count }) => sum + count, 0) <= mostSets) return true;
  refuse(at, "out-of-range", `at most ${mostSets} sets together`, "divide the supply");
  return false;
}

/** Checks that all phased sets list the same phases, so that corresponding conductors can be added. */
export function areLikePhases(at: Reader, sets: readonly SupplySet[]): boolean {
  const lengths = new Set(sets.flatMap((set) => ("phases" in set ? [set.phases.length] : [])));
  if (lengths.size <= 1) return true;
  refuse(
    at,
    "unlike-phases",
    "the same number of phases in every set",
    "list the phases of every set in the same order, with null where a set leaves a phase out",
  );
  return false;
}

function readSet(at: Reader): SupplySet | undefined {
  const phased = member(at, "phases").value !== undefined;
  if (!readObject(at, phased ? ["count", "phases"] : ["count", "size", "material"])) return undefined;
  const count = readCount(member(at, "count"), "sets");
  if (phased) {
    const phases = readPhases(member(at, "phases"));
    return count === undefined || phases === undefined ? undefined : { count, phases };
  }
  const conductor = readConductorMembers(at);
  return count === undefined || conductor === undefined ? undefined : { count, ...conductor };
}

function readPhases(at: Reader): PhaseList | undefined {
  const readPhase = (one: Reader) => (one.value === null ? { conductor: null } : wrap(readConductor(one)));
  const phases = readList(at, readPhase, mostPhases);
  if (phases?.every(({ conductor }) => conductor === null)) {
    return refuse(at, "empty-list", "a conductor in at least one phase", "leave the set out if it has none");
  }
  return phases?.map(({ conductor }) => conductor);
}

type PhaseList = readonly (Conductor | null)[];

function wrap(conductor: Conductor | undefined): { readonly conductor: Conductor } | undefined {
  return conductor && { conductor };
}

/** Checks one conductor, its size and its material, in an input. */
export function readConductor(at: Reader): Conductor | undefined {
  return readObject(at, ["size", "material"]) ? readConductorMembers(at) : undefined;
}

function readConductorMembers(at: Reader): Conductor | undefined {
  const size = readSize(member(at, "size"));
  const material = readMaterial(member(at, "material"));
  return size && material && { size, material };
}

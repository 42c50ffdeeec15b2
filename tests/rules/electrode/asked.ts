import {
  type ConductorSize,
  type EditionYear,
  type Electrode,
  type ElectrodeConductorInput,
  type Material,
  type SizingResult,
  type Supply,
  sizeGroundingElectrodeConductor,
} from "bondmil";
import { sets } from "../jumper/supplies.js";

export const pipe: Electrode = { kind: "metal-water-pipe" };
export const steel: Electrode = { kind: "structural-metal" };
export const rod: Electrode = { kind: "rod" };
export const concrete: Electrode = { kind: "concrete-encased" };
export const ring = (conductor: ConductorSize): Electrode => ({ kind: "ring", conductor });

/** So many sets of one size. */
export function one(count: number, size: ConductorSize, material: Material = "copper"): Supply {
  return { sets: [sets(count, size, material)] };
}

/** A conductor of a service, of copper and to a water pipe unless told. */
export function size(
  year: EditionYear,
  supply: Supply,
  electrodes: readonly Electrode[] = [pipe],
  more: Partial<ElectrodeConductorInput> = {},
): SizingResult {
  const usual = { of: "service", conductor: { material: "copper" } } as const;
  return sizeGroundingElectrodeConductor({ code: { year }, supply, electrodes, ...usual, ...more });
}

export const aluminum = { conductor: { material: "aluminum" } } as const;
export const copperClad = { conductor: { material: "copper-clad aluminum" } } as const;

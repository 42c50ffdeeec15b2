import {
  type ConductorSize,
  type EditionYear,
  type Electrode,
  groundingElectrodeConductor,
  type Input,
  type Material,
  type SizingResult,
  type Supply,
  size,
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

/** A conductor of a service, of copper and to a water pipe by default. */
export function sized(
  year: EditionYear,
  supply: Supply,
  electrodes: readonly Electrode[] = [pipe],
  more: Partial<Input<typeof groundingElectrodeConductor>> = {},
): SizingResult {
  const usual = { system: "service", conductor: { material: "copper" } } as const;
  return size(groundingElectrodeConductor, { code: { year }, supply, electrodes, ...usual, ...more });
}

export const aluminum = { conductor: { material: "aluminum" } } as const;
export const copperClad = { conductor: { material: "copper-clad aluminum" } } as const;

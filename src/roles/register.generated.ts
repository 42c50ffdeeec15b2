// Generated from tables/roles.json by "npm run generate"; do not edit.
import type { Role } from "../edition/index.js";
import type { AnyRole } from "./definition.js";
import { electrodeBondingJumper } from "./electrode-bonding-jumper/index.js";
import { electrodeRacewayBondingJumper } from "./electrode-raceway-bonding-jumper/index.js";
import { equipmentBondingJumper } from "./equipment-bonding-jumper/index.js";
import { equipmentGroundingConductor } from "./equipment-grounding-conductor/index.js";
import { groundedConductor } from "./grounded-conductor/index.js";
import { groundingElectrodeConductor } from "./grounding-electrode-conductor/index.js";
import { impedanceBondingJumper } from "./impedance-bonding-jumper/index.js";
import { impedanceGroundingConductor } from "./impedance-grounding-conductor/index.js";
import { intersystemBondingConductor } from "./intersystem-bonding-conductor/index.js";
import { mainBondingJumper } from "./main-bonding-jumper/index.js";
import { otherPipingBondingJumper } from "./other-piping-bonding-jumper/index.js";
import { structuralMetalBondingJumper } from "./structural-metal-bonding-jumper/index.js";
import { supplySideBondingJumper } from "./supply-side-bonding-jumper/index.js";
import { systemBondingJumper } from "./system-bonding-jumper/index.js";
import { waterPipingBondingJumper } from "./water-piping-bonding-jumper/index.js";

export {
  electrodeBondingJumper,
  electrodeRacewayBondingJumper,
  equipmentBondingJumper,
  equipmentGroundingConductor,
  groundedConductor,
  groundingElectrodeConductor,
  impedanceBondingJumper,
  impedanceGroundingConductor,
  intersystemBondingConductor,
  mainBondingJumper,
  otherPipingBondingJumper,
  structuralMetalBondingJumper,
  supplySideBondingJumper,
  systemBondingJumper,
  waterPipingBondingJumper,
};

/**
 * Every role that the library sizes, by its id, in the order in which a fault meets them. Whatever goes over all roles takes them from here; to
 * size one role, import its value alone, and a bundle holds no other.
 *
 * @example
 * ```ts
 * import { roles } from "bondmil";
 * Object.values(roles).filter(({ facts }) => facts.purpose === "electrode-system").map(({ id }) => id);
 * // => ["grounding-electrode-conductor", "electrode-bonding-jumper", "electrode-raceway-bonding-jumper"]
 * ```
 */
export const roles = {
  "main-bonding-jumper": mainBondingJumper,
  "system-bonding-jumper": systemBondingJumper,
  "supply-side-bonding-jumper": supplySideBondingJumper,
  "grounded-conductor": groundedConductor,
  "impedance-grounding-conductor": impedanceGroundingConductor,
  "impedance-bonding-jumper": impedanceBondingJumper,
  "equipment-grounding-conductor": equipmentGroundingConductor,
  "equipment-bonding-jumper": equipmentBondingJumper,
  "water-piping-bonding-jumper": waterPipingBondingJumper,
  "other-piping-bonding-jumper": otherPipingBondingJumper,
  "structural-metal-bonding-jumper": structuralMetalBondingJumper,
  "grounding-electrode-conductor": groundingElectrodeConductor,
  "electrode-bonding-jumper": electrodeBondingJumper,
  "electrode-raceway-bonding-jumper": electrodeRacewayBondingJumper,
  "intersystem-bonding-conductor": intersystemBondingConductor,
} as const satisfies { readonly [R in Role]: AnyRole<R> };

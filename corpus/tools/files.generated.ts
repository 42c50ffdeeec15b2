// Generated from tables/roles.json by "npm run generate"; do not edit.

import electrodeBondingJumper from "../electrode-bonding-jumper.json" with { type: "json" };
import electrodeRacewayBondingJumper from "../electrode-raceway-bonding-jumper.json" with { type: "json" };
import equipmentBondingJumper from "../equipment-bonding-jumper.json" with { type: "json" };
import equipmentGroundingConductor from "../equipment-grounding-conductor.json" with { type: "json" };
import groundedConductor from "../grounded-conductor.json" with { type: "json" };
import groundingElectrodeConductor from "../grounding-electrode-conductor.json" with { type: "json" };
import impedanceBondingJumper from "../impedance-bonding-jumper.json" with { type: "json" };
import impedanceGroundingConductor from "../impedance-grounding-conductor.json" with { type: "json" };
import intersystemBondingConductor from "../intersystem-bonding-conductor.json" with { type: "json" };
import mainBondingJumper from "../main-bonding-jumper.json" with { type: "json" };
import otherPipingBondingJumper from "../other-piping-bonding-jumper.json" with { type: "json" };
import structuralMetalBondingJumper from "../structural-metal-bonding-jumper.json" with { type: "json" };
import supplySideBondingJumper from "../supply-side-bonding-jumper.json" with { type: "json" };
import systemBondingJumper from "../system-bonding-jumper.json" with { type: "json" };
import waterPipingBondingJumper from "../water-piping-bonding-jumper.json" with { type: "json" };

/** The file of every role, as JSON gives it. */
export const files = {
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
};

import {
  bondingAtDesignation,
  cableTrayAsEquipmentGroundingConductor,
  classifySource,
  racewayFill,
  size,
  voltageDrop,
} from "bondmil";

const code = { year: "2017" } as const;
const grounding = "solidly-grounded";

/** Results that are no conductor by a role, each by what it is of. */
export const otherResults = {
  "cable tray": size(cableTrayAsEquipmentGroundingConductor, { code, amperes: 225, metal: "steel" }),
  designation: bondingAtDesignation({ code, designation: "meter-disconnect", grounding }),
  source: classifySource({
    code,
    source: { kind: "transformer", windings: "separate", overcurrentDevice: "not-integral" },
    grounding,
  }),
  "raceway fill": racewayFill({
    edition: "2017",
    raceway: "rigid-metal",
    conductors: [{ count: 3, size: "4/0 AWG", insulation: "THWN-2" }],
    added: [{ count: 1, squareInches: 0.2 }],
  }),
  "voltage drop": voltageDrop({
    edition: "2017",
    current: "single-phase",
    volts: 240,
    amperes: 100,
    feet: 300,
    conductors: { size: "2 AWG", material: "copper" },
    impedance: { from: "table-8" },
    permittedPercent: 3,
  }),
} as const;

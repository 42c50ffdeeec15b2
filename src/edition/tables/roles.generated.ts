// Generated from tables/roles.json by "npm run generate"; do not edit.
import type { RoleFacts } from "../role.js";

/**
 * The id of every role, in the order in which a fault meets them.
 *
 * @example
 * ```ts
 * import { roleIds } from "bondmil";
 * roleIds.includes("main-bonding-jumper"); // => true
 * ```
 */
export const roleIds = [
  "main-bonding-jumper",
  "system-bonding-jumper",
  "supply-side-bonding-jumper",
  "grounded-conductor",
  "impedance-grounding-conductor",
  "impedance-bonding-jumper",
  "equipment-grounding-conductor",
  "equipment-bonding-jumper",
  "water-piping-bonding-jumper",
  "other-piping-bonding-jumper",
  "structural-metal-bonding-jumper",
  "grounding-electrode-conductor",
  "electrode-bonding-jumper",
  "electrode-raceway-bonding-jumper",
  "intersystem-bonding-conductor",
] as const;

/** What a conductor is there for: one of the kinds of conductor that the library sizes. */
export type Role = (typeof roleIds)[number];

export const mainBondingJumperFacts: RoleFacts<"main-bonding-jumper"> = {
  role: "main-bonding-jumper",
  purpose: "fault-path",
  name: {
    "2008": "main bonding jumper",
    "2011": "main bonding jumper",
    "2014": "main bonding jumper",
    "2017": "main bonding jumper",
    "2020": "main bonding jumper",
    "2023": "main bonding jumper",
    "2026": "main bonding jumper",
  },
};

export const systemBondingJumperFacts: RoleFacts<"system-bonding-jumper"> = {
  role: "system-bonding-jumper",
  purpose: "fault-path",
  name: {
    "2008": "system bonding jumper",
    "2011": "system bonding jumper",
    "2014": "system bonding jumper",
    "2017": "system bonding jumper",
    "2020": "system bonding jumper",
    "2023": "system bonding jumper",
    "2026": "system bonding jumper",
  },
};

export const supplySideBondingJumperFacts: RoleFacts<"supply-side-bonding-jumper"> = {
  role: "supply-side-bonding-jumper",
  purpose: "fault-path",
  name: {
    "2008": "equipment bonding jumper on the supply side of the service",
    "2011": "supply-side bonding jumper",
    "2014": "supply-side bonding jumper",
    "2017": "supply-side bonding jumper",
    "2020": "supply-side bonding jumper",
    "2023": "supply-side bonding jumper",
    "2026": "supply-side bonding jumper",
  },
};

export const groundedConductorFacts: RoleFacts<"grounded-conductor"> = {
  role: "grounded-conductor",
  purpose: "fault-path",
  name: {
    "2008": "grounded conductor",
    "2011": "grounded conductor",
    "2014": "grounded conductor",
    "2017": "grounded conductor",
    "2020": "grounded conductor",
    "2023": "grounded conductor",
    "2026": "grounded conductor",
  },
};

export const impedanceGroundingConductorFacts: RoleFacts<"impedance-grounding-conductor"> = {
  role: "impedance-grounding-conductor",
  purpose: "fault-path",
  name: {
    "2008": "neutral conductor to the grounding impedance",
    "2011": "neutral conductor to the grounding impedance",
    "2014": "neutral conductor to the grounding impedance",
    "2017": "neutral conductor to the grounding impedance",
    "2020": "neutral conductor to the grounding impedance",
    "2023": "impedance grounding conductor",
    "2026": "impedance grounding conductor",
  },
};

export const impedanceBondingJumperFacts: RoleFacts<"impedance-bonding-jumper"> = {
  role: "impedance-bonding-jumper",
  purpose: "fault-path",
  name: {
    "2008": "equipment bonding jumper to the grounding impedance",
    "2011": "equipment bonding jumper to the grounding impedance",
    "2014": "equipment bonding jumper to the grounding impedance",
    "2017": "equipment bonding jumper to the grounding impedance",
    "2020": "equipment bonding jumper to the grounding impedance",
    "2023": "impedance bonding jumper",
    "2026": "impedance bonding jumper",
  },
};

export const equipmentGroundingConductorFacts: RoleFacts<"equipment-grounding-conductor"> = {
  role: "equipment-grounding-conductor",
  purpose: "fault-path",
  name: {
    "2008": "equipment grounding conductor",
    "2011": "equipment grounding conductor",
    "2014": "equipment grounding conductor",
    "2017": "equipment grounding conductor",
    "2020": "equipment grounding conductor",
    "2023": "equipment grounding conductor",
    "2026": "equipment grounding conductor",
  },
};

export const equipmentBondingJumperFacts: RoleFacts<"equipment-bonding-jumper"> = {
  role: "equipment-bonding-jumper",
  purpose: "fault-path",
  name: {
    "2008": "equipment bonding jumper on the load side",
    "2011": "equipment bonding jumper on the load side",
    "2014": "equipment bonding jumper on the load side",
    "2017": "equipment bonding jumper on the load side",
    "2020": "equipment bonding jumper on the load side",
    "2023": "equipment bonding jumper on the load side",
    "2026": "equipment bonding jumper on the load side",
  },
};

export const waterPipingBondingJumperFacts: RoleFacts<"water-piping-bonding-jumper"> = {
  role: "water-piping-bonding-jumper",
  purpose: "equalizing",
  name: {
    "2008": "bonding jumper of metal water piping",
    "2011": "bonding jumper of metal water piping",
    "2014": "bonding jumper of metal water piping",
    "2017": "bonding jumper of metal water piping",
    "2020": "bonding jumper of metal water piping",
    "2023": "bonding jumper of metal water piping",
    "2026": "bonding jumper of metal water piping",
  },
};

export const otherPipingBondingJumperFacts: RoleFacts<"other-piping-bonding-jumper"> = {
  role: "other-piping-bonding-jumper",
  purpose: "equalizing",
  name: {
    "2008": "bonding jumper of other metal piping",
    "2011": "bonding jumper of other metal piping",
    "2014": "bonding jumper of other metal piping",
    "2017": "bonding jumper of other metal piping",
    "2020": "bonding jumper of other metal piping",
    "2023": "bonding jumper of other metal piping",
    "2026": "bonding jumper of other metal piping",
  },
};

export const structuralMetalBondingJumperFacts: RoleFacts<"structural-metal-bonding-jumper"> = {
  role: "structural-metal-bonding-jumper",
  purpose: "equalizing",
  name: {
    "2008": "bonding jumper of structural metal",
    "2011": "bonding jumper of structural metal",
    "2014": "bonding jumper of structural metal",
    "2017": "bonding jumper of structural metal",
    "2020": "bonding jumper of structural metal",
    "2023": "bonding jumper of structural metal",
    "2026": "bonding jumper of structural metal",
  },
};

export const groundingElectrodeConductorFacts: RoleFacts<"grounding-electrode-conductor"> = {
  role: "grounding-electrode-conductor",
  purpose: "electrode-system",
  name: {
    "2008": "grounding electrode conductor",
    "2011": "grounding electrode conductor",
    "2014": "grounding electrode conductor",
    "2017": "grounding electrode conductor",
    "2020": "grounding electrode conductor",
    "2023": "grounding electrode conductor",
    "2026": "grounding electrode conductor",
  },
};

export const electrodeBondingJumperFacts: RoleFacts<"electrode-bonding-jumper"> = {
  role: "electrode-bonding-jumper",
  purpose: "electrode-system",
  name: {
    "2008": "bonding jumper to a grounding electrode",
    "2011": "bonding jumper to a grounding electrode",
    "2014": "bonding jumper to a grounding electrode",
    "2017": "bonding jumper to a grounding electrode",
    "2020": "bonding jumper to a grounding electrode",
    "2023": "bonding jumper to a grounding electrode",
    "2026": "bonding jumper to a grounding electrode",
  },
};

export const electrodeRacewayBondingJumperFacts: RoleFacts<"electrode-raceway-bonding-jumper"> = {
  role: "electrode-raceway-bonding-jumper",
  purpose: "electrode-system",
  name: {
    "2008": "bonding jumper of a metal raceway around a grounding electrode conductor",
    "2011": "bonding jumper of a metal raceway around a grounding electrode conductor",
    "2014": "bonding jumper of a metal raceway around a grounding electrode conductor",
    "2017": "bonding jumper of a metal raceway around a grounding electrode conductor",
    "2020": "bonding jumper of a metal raceway around a grounding electrode conductor",
    "2023": "bonding jumper of a metal raceway around a grounding electrode conductor",
    "2026": "bonding jumper of a metal raceway around a grounding electrode conductor",
  },
};

export const intersystemBondingConductorFacts: RoleFacts<"intersystem-bonding-conductor"> = {
  role: "intersystem-bonding-conductor",
  purpose: "equalizing",
  name: {
    "2008": "conductor to the intersystem bonding termination",
    "2011": "conductor to the intersystem bonding termination",
    "2014": "conductor to the intersystem bonding termination",
    "2017": "conductor to the intersystem bonding termination",
    "2020": "conductor to the intersystem bonding termination",
    "2023": "conductor to the intersystem bonding termination",
    "2026": "conductor to the intersystem bonding termination",
  },
};

// Generated from tables/named-sizes.json by "npm run generate"; do not edit.
import type { NamedSize } from "../policy.js";
import type { ByEdition } from "../supply-area-table.js";

/** Not required larger to a rod, pipe or plate electrode. */
export const rodElectrodeCeiling: ByEdition<NamedSize> = {
  "2008": { copper: "6 AWG", aluminum: "4 AWG", citation: { section: "250.66(A)", evidence: "carried" } },
  "2011": { copper: "6 AWG", aluminum: "4 AWG", citation: { section: "250.66(A)", evidence: "single" } },
  "2014": { copper: "6 AWG", aluminum: "4 AWG", citation: { section: "250.66(A)", evidence: "bracketed" } },
  "2017": { copper: "6 AWG", aluminum: "4 AWG", citation: { section: "250.66(A)", evidence: "single" } },
  "2020": { copper: "6 AWG", aluminum: "4 AWG", citation: { section: "250.66(A)", evidence: "single" } },
  "2023": { copper: "6 AWG", aluminum: "4 AWG", citation: { section: "250.66(A)", evidence: "single" } },
  "2026": { copper: "6 AWG", aluminum: "4 AWG", citation: { section: "250.66(A)", evidence: "carried" } },
};

/** Not required larger to a concrete-encased electrode. No aluminum size is named. */
export const concreteElectrodeCeiling: ByEdition<NamedSize> = {
  "2008": { copper: "4 AWG", aluminum: null, citation: { section: "250.66(B)", evidence: "carried" } },
  "2011": { copper: "4 AWG", aluminum: null, citation: { section: "250.66(B)", evidence: "single" } },
  "2014": { copper: "4 AWG", aluminum: null, citation: { section: "250.66(B)", evidence: "bracketed" } },
  "2017": { copper: "4 AWG", aluminum: null, citation: { section: "250.66(B)", evidence: "single" } },
  "2020": { copper: "4 AWG", aluminum: null, citation: { section: "250.66(B)", evidence: "single" } },
  "2023": { copper: "4 AWG", aluminum: null, citation: { section: "250.66(B)", evidence: "single" } },
  "2026": { copper: "4 AWG", aluminum: null, citation: { section: "250.66(B)", evidence: "carried" } },
};

/** Minimum size of a ground ring's own conductor, bare copper. */
export const ringElectrodeLeast: ByEdition<NamedSize> = {
  "2008": { copper: "2 AWG", aluminum: null, citation: { section: "250.52(A)(4)", evidence: "carried" } },
  "2011": { copper: "2 AWG", aluminum: null, citation: { section: "250.52(A)(4)", evidence: "single" } },
  "2014": { copper: "2 AWG", aluminum: null, citation: { section: "250.52(A)(4)", evidence: "bracketed" } },
  "2017": { copper: "2 AWG", aluminum: null, citation: { section: "250.52(A)(4)", evidence: "single" } },
  "2020": { copper: "2 AWG", aluminum: null, citation: { section: "250.52(A)(4)", evidence: "single" } },
  "2023": { copper: "2 AWG", aluminum: null, citation: { section: "250.52(A)(4)", evidence: "single" } },
  "2026": { copper: "2 AWG", aluminum: null, citation: { section: "250.52(A)(4)", evidence: "carried" } },
};

/** Not required larger where the jumper is the sole connection to a supplemental rod, pipe or plate. */
export const supplementalRodCeiling: ByEdition<NamedSize> = {
  "2008": { copper: "6 AWG", aluminum: "4 AWG", citation: { section: "250.53(E)", evidence: "carried" } },
  "2011": { copper: "6 AWG", aluminum: "4 AWG", citation: { section: "250.53(E)", evidence: "single" } },
  "2014": { copper: "6 AWG", aluminum: "4 AWG", citation: { section: "250.53(E)", evidence: "bracketed" } },
  "2017": { copper: "6 AWG", aluminum: "4 AWG", citation: { section: "250.53(E)", evidence: "single" } },
  "2020": { copper: "6 AWG", aluminum: "4 AWG", citation: { section: "250.53(E)", evidence: "single" } },
  "2023": { copper: "6 AWG", aluminum: "4 AWG", citation: { section: "250.53(E)", evidence: "single" } },
  "2026": { copper: "6 AWG", aluminum: "4 AWG", citation: { section: "250.53(E)", evidence: "carried" } },
};

/** Common grounding electrode conductor of several separately derived systems. */
export const commonConductorOfDerivedSystems: ByEdition<NamedSize> = {
  "2008": {
    copper: "3/0 AWG",
    aluminum: "250 kcmil",
    citation: { section: "250.30(A)(4)", evidence: "carried" },
  },
  "2011": {
    copper: "3/0 AWG",
    aluminum: "250 kcmil",
    citation: { section: "250.30(A)(6)", evidence: "single" },
  },
  "2014": {
    copper: "3/0 AWG",
    aluminum: "250 kcmil",
    citation: { section: "250.30(A)(6)", evidence: "bracketed" },
  },
  "2017": {
    copper: "3/0 AWG",
    aluminum: "250 kcmil",
    citation: { section: "250.30(A)(6)", evidence: "single" },
  },
  "2020": {
    copper: "3/0 AWG",
    aluminum: "250 kcmil",
    citation: { section: "250.30(A)(6)", evidence: "single" },
  },
  "2023": {
    copper: "3/0 AWG",
    aluminum: "250 kcmil",
    citation: { section: "250.30(A)(6)", evidence: "single" },
  },
  "2026": {
    copper: "3/0 AWG",
    aluminum: "250 kcmil",
    citation: { section: "250.30(A)(6)", evidence: "carried" },
  },
};

/** Minimum size of the conductor from the neutral point to the grounding impedance. */
export const impedanceConductorLeast: ByEdition<NamedSize> = {
  "2008": { copper: "8 AWG", aluminum: "6 AWG", citation: { section: "250.36(B)", evidence: "carried" } },
  "2011": { copper: "8 AWG", aluminum: "6 AWG", citation: { section: "250.36(B)", evidence: "single" } },
  "2014": { copper: "8 AWG", aluminum: "6 AWG", citation: { section: "250.36(B)", evidence: "bracketed" } },
  "2017": { copper: "8 AWG", aluminum: "6 AWG", citation: { section: "250.36(B)", evidence: "single" } },
  "2020": { copper: "8 AWG", aluminum: "6 AWG", citation: { section: "250.36(B)", evidence: "single" } },
  "2023": { copper: "8 AWG", aluminum: "6 AWG", citation: { section: "250.36(B)", evidence: "single" } },
  "2026": { copper: "8 AWG", aluminum: "6 AWG", citation: { section: "250.36(B)", evidence: "carried" } },
};

/** Minimum size of the conductor that ties an intersystem bonding termination. */
export const intersystemLeast: ByEdition<NamedSize> = {
  "2008": { copper: "6 AWG", aluminum: null, citation: { section: "250.94", evidence: "carried" } },
  "2011": { copper: "6 AWG", aluminum: null, citation: { section: "250.94", evidence: "single" } },
  "2014": { copper: "6 AWG", aluminum: null, citation: { section: "250.94", evidence: "bracketed" } },
  "2017": { copper: "6 AWG", aluminum: null, citation: { section: "250.94(A)", evidence: "single" } },
  "2020": { copper: "6 AWG", aluminum: null, citation: { section: "250.94(A)", evidence: "single" } },
  "2023": { copper: "6 AWG", aluminum: null, citation: { section: "250.94(A)", evidence: "single" } },
  "2026": { copper: "6 AWG", aluminum: null, citation: { section: "250.94(A)", evidence: "carried" } },
};

/** Minimum size of the system bonding jumper of a control transformer. */
export const controlCircuitJumperLeast: ByEdition<NamedSize> = {
  "2008": {
    copper: "14 AWG",
    aluminum: null,
    citation: { section: "250.30(A)(1) Exception No. 3", evidence: "carried" },
  },
  "2011": {
    copper: "14 AWG",
    aluminum: null,
    citation: { section: "250.30(A)(1) Exception No. 3", evidence: "single" },
  },
  "2014": {
    copper: "14 AWG",
    aluminum: null,
    citation: { section: "250.30(A)(1) Exception No. 3", evidence: "memory" },
  },
  "2017": {
    copper: "14 AWG",
    aluminum: "12 AWG",
    citation: { section: "250.30(A)(1) Exception No. 3", evidence: "single" },
  },
  "2020": {
    copper: "14 AWG",
    aluminum: "12 AWG",
    citation: { section: "250.30(A)(1) Exception No. 3", evidence: "single" },
  },
  "2023": {
    copper: "14 AWG",
    aluminum: "12 AWG",
    citation: { section: "250.30(A)(1) Exception No. 3", evidence: "single" },
  },
  "2026": {
    copper: "14 AWG",
    aluminum: "12 AWG",
    citation: { section: "250.30(A)(1) Exception No. 3", evidence: "carried" },
  },
};

/** Smallest conductor of a circuit rated above 7 A, its ampacity aside: a smaller one is limited to a smaller device. */
export const leastAboveSevenAmperes: ByEdition<NamedSize> = {
  "2008": { copper: "16 AWG", aluminum: "12 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
  "2011": { copper: "16 AWG", aluminum: "12 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
  "2014": { copper: "16 AWG", aluminum: "12 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
  "2017": { copper: "16 AWG", aluminum: "12 AWG", citation: { section: "240.4(D)", evidence: "single" } },
  "2020": { copper: "16 AWG", aluminum: "12 AWG", citation: { section: "240.4(D)", evidence: "single" } },
  "2023": { copper: "16 AWG", aluminum: "12 AWG", citation: { section: "240.4(D)", evidence: "single" } },
  "2026": { copper: "16 AWG", aluminum: "12 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
};

/** Smallest conductor of a circuit rated above 10 A, its ampacity aside: a smaller one is limited to a smaller device. */
export const leastAboveTenAmperes: ByEdition<NamedSize> = {
  "2008": { copper: "14 AWG", aluminum: "12 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
  "2011": { copper: "14 AWG", aluminum: "12 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
  "2014": { copper: "14 AWG", aluminum: "12 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
  "2017": { copper: "14 AWG", aluminum: "12 AWG", citation: { section: "240.4(D)", evidence: "single" } },
  "2020": { copper: "14 AWG", aluminum: "12 AWG", citation: { section: "240.4(D)", evidence: "single" } },
  "2023": { copper: "14 AWG", aluminum: "12 AWG", citation: { section: "240.4(D)", evidence: "single" } },
  "2026": { copper: "14 AWG", aluminum: "12 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
};

/** Smallest conductor of a circuit rated above 15 A, its ampacity aside: a smaller one is limited to a smaller device. */
export const leastAboveFifteenAmperes: ByEdition<NamedSize> = {
  "2008": { copper: "12 AWG", aluminum: "10 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
  "2011": { copper: "12 AWG", aluminum: "10 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
  "2014": { copper: "12 AWG", aluminum: "10 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
  "2017": { copper: "12 AWG", aluminum: "10 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
  "2020": { copper: "12 AWG", aluminum: "10 AWG", citation: { section: "240.4(D)", evidence: "single" } },
  "2023": { copper: "12 AWG", aluminum: "10 AWG", citation: { section: "240.4(D)", evidence: "single" } },
  "2026": { copper: "12 AWG", aluminum: "10 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
};

/** Smallest conductor of a circuit rated above 20 A, its ampacity aside: a smaller one is limited to a smaller device. */
export const leastAboveTwentyAmperes: ByEdition<NamedSize> = {
  "2008": { copper: "10 AWG", aluminum: "10 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
  "2011": { copper: "10 AWG", aluminum: "10 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
  "2014": { copper: "10 AWG", aluminum: "10 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
  "2017": { copper: "10 AWG", aluminum: "10 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
  "2020": { copper: "10 AWG", aluminum: "10 AWG", citation: { section: "240.4(D)", evidence: "single" } },
  "2023": { copper: "10 AWG", aluminum: "10 AWG", citation: { section: "240.4(D)", evidence: "single" } },
  "2026": { copper: "10 AWG", aluminum: "10 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
};

/** Smallest conductor of a circuit rated above 25 A, its ampacity aside: a smaller one is limited to a smaller device. */
export const leastAboveTwentyFiveAmperes: ByEdition<NamedSize> = {
  "2008": { copper: "10 AWG", aluminum: "8 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
  "2011": { copper: "10 AWG", aluminum: "8 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
  "2014": { copper: "10 AWG", aluminum: "8 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
  "2017": { copper: "10 AWG", aluminum: "8 AWG", citation: { section: "240.4(D)", evidence: "single" } },
  "2020": { copper: "10 AWG", aluminum: "8 AWG", citation: { section: "240.4(D)", evidence: "single" } },
  "2023": { copper: "10 AWG", aluminum: "8 AWG", citation: { section: "240.4(D)", evidence: "single" } },
  "2026": { copper: "10 AWG", aluminum: "8 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
};

/** Smallest conductor of a circuit rated above 30 A, its ampacity aside: a smaller one is limited to a smaller device. */
export const leastAboveThirtyAmperes: ByEdition<NamedSize> = {
  "2008": { copper: "8 AWG", aluminum: "8 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
  "2011": { copper: "8 AWG", aluminum: "8 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
  "2014": { copper: "8 AWG", aluminum: "8 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
  "2017": { copper: "8 AWG", aluminum: "8 AWG", citation: { section: "240.4(D)", evidence: "single" } },
  "2020": { copper: "8 AWG", aluminum: "8 AWG", citation: { section: "240.4(D)", evidence: "single" } },
  "2023": { copper: "8 AWG", aluminum: "8 AWG", citation: { section: "240.4(D)", evidence: "single" } },
  "2026": { copper: "8 AWG", aluminum: "8 AWG", citation: { section: "240.4(D)", evidence: "carried" } },
};

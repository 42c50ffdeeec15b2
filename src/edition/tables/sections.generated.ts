// Generated from tables/sections.json by "npm run generate"; do not edit.
import type { Citation } from "../citation.js";
import { frozen } from "../frozen.js";
import type { ByEdition } from "../supply-area-table.js";

/** Sizes and areas of conductors. */
export const conductorSizes: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "Chapter 9 Table 8", evidence: "bracketed" },
  "2011": { section: "Chapter 9 Table 8", evidence: "single" },
  "2014": { section: "Chapter 9 Table 8", evidence: "bracketed" },
  "2017": { section: "Chapter 9 Table 8", evidence: "single" },
  "2020": { section: "Chapter 9 Table 8", evidence: "bracketed" },
  "2023": { section: "Chapter 9 Table 8", evidence: "bracketed" },
  "2026": { section: "Chapter 9 Table 8", evidence: "bracketed" },
});

/** Conductors in parallel are 1/0 AWG or larger, with few exceptions. */
export const parallelMinimum: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "310.4", evidence: "carried" },
  "2011": { section: "310.10(H)", evidence: "single" },
  "2014": { section: "310.10(H)", evidence: "bracketed" },
  "2017": { section: "310.10(H)", evidence: "single" },
  "2020": { section: "310.10(G)", evidence: "single" },
  "2023": { section: "310.10(G)", evidence: "single" },
  "2026": { section: "310.10(G)", evidence: "carried" },
});

/** The travelling cables of elevators, among the exceptions for conductors in parallel smaller than 1/0 AWG. */
export const parallelElevators: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "310.4", evidence: "memory" },
  "2011": { section: "310.10(H)", evidence: "single" },
  "2014": { section: "310.10(H)", evidence: "bracketed" },
  "2017": { section: "310.10(H)", evidence: "single" },
  "2020": { section: "310.10(G)", evidence: "single" },
  "2023": { section: "310.10(G)", evidence: "single" },
  "2026": { section: "310.10(G)", evidence: "carried" },
});

/** One unspliced main bonding jumper within the enclosure of each service disconnect. */
export const mainJumperPlace: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.24(B)", evidence: "carried" },
  "2011": { section: "250.24(B)", evidence: "single" },
  "2014": { section: "250.24(B)", evidence: "bracketed" },
  "2017": { section: "250.24(B)", evidence: "single" },
  "2020": { section: "250.24(B)", evidence: "single" },
  "2023": { section: "250.24(C)", evidence: "single" },
  "2026": { section: "250.24(C)", evidence: "carried" },
});

/** An assembly listed as service equipment with more than one disconnect has one main bonding jumper, to the assembly. */
export const listedAssembly: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.24(B) Exception No. 1", evidence: "carried" },
  "2011": { section: "250.24(B) Exception No. 1", evidence: "single" },
  "2014": { section: "250.24(B) Exception No. 1", evidence: "bracketed" },
  "2017": { section: "250.24(B) Exception No. 1", evidence: "single" },
  "2020": { section: "250.24(B) Exception No. 1", evidence: "single" },
  "2023": { section: "250.24(C) Exception No. 1", evidence: "single" },
  "2026": { section: "250.24(C) Exception No. 1", evidence: "carried" },
});

/** In each of several enclosures by the largest ungrounded conductor to it. */
export const mainJumperSeveralEnclosures: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.28(D)(2)", evidence: "carried" },
  "2011": { section: "250.28(D)(2)", evidence: "single" },
  "2014": { section: "250.28(D)(2)", evidence: "bracketed" },
  "2017": { section: "250.28(D)(2)", evidence: "single" },
  "2020": { section: "250.28(D)(2)", evidence: "single" },
  "2023": { section: "250.28(D)(2)", evidence: "single" },
  "2026": { section: "250.28(D)(2)", evidence: "carried" },
});

/** A separately derived system that feeds several enclosures: a jumper in each by the conductors to it, or one at the source by the largest sum of corresponding conductors. */
export const systemJumperSeveralEnclosures: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.28(D)(3)", evidence: "bracketed" },
  "2011": { section: "250.28(D)(3)", evidence: "single" },
  "2014": { section: "250.28(D)(3)", evidence: "bracketed" },
  "2017": { section: "250.28(D)(3)", evidence: "single" },
  "2020": { section: "250.28(D)(3)", evidence: "single" },
  "2023": { section: "250.28(D)(3)", evidence: "single" },
  "2026": { section: "250.28(D)(3)", evidence: "carried" },
});

/** The system bonding jumper is at any single point from the source to the first disconnect. */
export const systemJumperPlace: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.30(A)(1)", evidence: "carried" },
  "2011": { section: "250.30(A)(1)", evidence: "single" },
  "2014": { section: "250.30(A)(1)", evidence: "bracketed" },
  "2017": { section: "250.30(A)(1)", evidence: "single" },
  "2020": { section: "250.30(A)(1)", evidence: "single" },
  "2023": { section: "250.30(A)(1)", evidence: "single" },
  "2026": { section: "250.30(A)(1)", evidence: "carried" },
});

/** Jumpers at the source and at the first disconnect, where no parallel path arises; from 2014 for an outdoor source that feeds a building. */
export const systemJumperBothEnds: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.30(A)(1) Exception No. 2", evidence: "carried" },
  "2011": { section: "250.30(A)(1) Exception No. 2", evidence: "single" },
  "2014": { section: "250.30(A)(1) Exception No. 2", evidence: "carried" },
  "2017": { section: "250.30(A)(1) Exception No. 2", evidence: "single" },
  "2020": { section: "250.30(A)(1) Exception No. 2", evidence: "single" },
  "2023": { section: "250.30(A)(1) Exception No. 2", evidence: "single" },
  "2026": { section: "250.30(A)(1) Exception No. 2", evidence: "carried" },
});

/** An outdoor source has its electrode connection, and with it its system bonding jumper, at the source. Not established for 2008. */
export const outdoorSource: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.30(A)(1)", evidence: "memory" },
  "2011": { section: "250.30(C)", evidence: "single" },
  "2014": { section: "250.30(C)", evidence: "bracketed" },
  "2017": { section: "250.30(C)", evidence: "single" },
  "2020": { section: "250.30(C)", evidence: "single" },
  "2023": { section: "250.30(C)", evidence: "single" },
  "2026": { section: "250.30(C)", evidence: "carried" },
});

/** The grounded conductor is brought to each disconnect with at least the table's size where the jumper is not at the source. */
export const derivedGroundedConductor: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.30(A)(8)", evidence: "memory" },
  "2011": { section: "250.30(A)(3)", evidence: "single" },
  "2014": { section: "250.30(A)(3)", evidence: "bracketed" },
  "2017": { section: "250.30(A)(3)", evidence: "single" },
  "2020": { section: "250.30(A)(3)", evidence: "single" },
  "2023": { section: "250.30(A)(3)", evidence: "single" },
  "2026": { section: "250.30(A)(3)", evidence: "carried" },
});

/** The electrode conductor of a separately derived system is connected at the point of the system bonding jumper. */
export const derivedElectrodeConnection: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.30(A)(3)", evidence: "memory" },
  "2011": { section: "250.30(A)(5)", evidence: "single" },
  "2014": { section: "250.30(A)(5)", evidence: "bracketed" },
  "2017": { section: "250.30(A)(5)", evidence: "single" },
  "2020": { section: "250.30(A)(5)", evidence: "single" },
  "2023": { section: "250.30(A)(5)", evidence: "single" },
  "2026": { section: "250.30(A)(5)", evidence: "carried" },
});

/** No further connection of the grounded conductor to metal beyond the system bonding jumper, save listed exceptions. */
export const derivedLoadSide: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.30(A)", evidence: "carried" },
  "2011": { section: "250.30(A)", evidence: "single" },
  "2014": { section: "250.30(A)", evidence: "bracketed" },
  "2017": { section: "250.30(A)", evidence: "single" },
  "2020": { section: "250.30(A)", evidence: "single" },
  "2023": { section: "250.30(A)", evidence: "single" },
  "2026": { section: "250.30(A)", evidence: "carried" },
});

/** A supply-side bonding jumper runs from the source to the first disconnect. */
export const derivedSupplySideJumper: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.30(A)(2)", evidence: "carried" },
  "2011": { section: "250.30(A)(2)", evidence: "single" },
  "2014": { section: "250.30(A)(2)", evidence: "carried" },
  "2017": { section: "250.30(A)(2)", evidence: "single" },
  "2020": { section: "250.30(A)(2)", evidence: "single" },
  "2023": { section: "250.30(A)(2)", evidence: "single" },
  "2026": { section: "250.30(A)(2)", evidence: "carried" },
});

/** The grounded conductor is run to each service disconnect and bonded to its enclosure. */
export const serviceGroundedConductor: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.24(C)", evidence: "carried" },
  "2011": { section: "250.24(C)", evidence: "single" },
  "2014": { section: "250.24(C)", evidence: "bracketed" },
  "2017": { section: "250.24(C)", evidence: "single" },
  "2020": { section: "250.24(C)", evidence: "single" },
  "2023": { section: "250.24(D)", evidence: "single" },
  "2026": { section: "250.24(D)", evidence: "carried" },
});

/** The electrode conductor of a service is connected at any accessible point from the load end of the drop or lateral to the disconnect. */
export const serviceElectrodeConnection: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.24(A)(1)", evidence: "carried" },
  "2011": { section: "250.24(A)(1)", evidence: "single" },
  "2014": { section: "250.24(A)(1)", evidence: "bracketed" },
  "2017": { section: "250.24(A)(1)", evidence: "single" },
  "2020": { section: "250.24(A)(1)", evidence: "single" },
  "2023": { section: "250.24(A)(1)", evidence: "single" },
  "2026": { section: "250.24(A)(1)", evidence: "carried" },
});

/** A service has an electrode conductor from its enclosures, equipment grounding conductors and, where it is grounded, its grounded conductor to the electrodes. */
export const serviceElectrodeConductor: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.24(D)", evidence: "carried" },
  "2011": { section: "250.24(D)", evidence: "single" },
  "2014": { section: "250.24(D)", evidence: "bracketed" },
  "2017": { section: "250.24(D)", evidence: "single" },
  "2020": { section: "250.24(D)", evidence: "single" },
  "2023": { section: "250.24(E)", evidence: "single" },
  "2026": { section: "250.24(E)", evidence: "carried" },
});

/** Electrode conductors of a service with several enclosures: common with taps, individual, or at one place on the supply side. */
export const serviceElectrodeSeveralEnclosures: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.64(D)", evidence: "carried" },
  "2011": { section: "250.64(D)", evidence: "single" },
  "2014": { section: "250.64(D)", evidence: "bracketed" },
  "2017": { section: "250.64(D)", evidence: "single" },
  "2020": { section: "250.64(D)", evidence: "single" },
  "2023": { section: "250.64(D)", evidence: "single" },
  "2026": { section: "250.64(D)", evidence: "carried" },
});

/** No further connection of the grounded conductor to metal on the load side of the service disconnect, save listed exceptions. */
export const serviceLoadSide: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.24(A)(5)", evidence: "carried" },
  "2011": { section: "250.24(A)(5)", evidence: "single" },
  "2014": { section: "250.24(A)(5)", evidence: "bracketed" },
  "2017": { section: "250.24(A)(5)", evidence: "single" },
  "2020": { section: "250.24(A)(5)", evidence: "single" },
  "2023": { section: "250.24(B)", evidence: "single" },
  "2026": { section: "250.24(B)", evidence: "carried" },
});

/** On the supply side of the service disconnect the grounded conductor may bond metal boxes and raceways, at several points. */
export const supplySideConnections: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.142(A)", evidence: "carried" },
  "2011": { section: "250.142(A)", evidence: "single" },
  "2014": { section: "250.142(A)", evidence: "bracketed" },
  "2017": { section: "250.142(A)", evidence: "single" },
  "2020": { section: "250.142(A)", evidence: "single" },
  "2023": { section: "250.142(A)", evidence: "single" },
  "2026": { section: "250.142(A)", evidence: "carried" },
});

/** Raceways, gutters, boxes and fittings that hold service conductors are bonded together. */
export const serviceBoxes: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.92(A)", evidence: "carried" },
  "2011": { section: "250.92(A)", evidence: "single" },
  "2014": { section: "250.92(A)", evidence: "bracketed" },
  "2017": { section: "250.92(A)", evidence: "single" },
  "2020": { section: "250.92(A)", evidence: "single" },
  "2023": { section: "250.92(A)", evidence: "single" },
  "2026": { section: "250.92(A)", evidence: "carried" },
});

/** Two to six disconnects per service. From 2020 not six in one undivided enclosure: separate enclosures, or sections and compartments of an assembly. */
export const numberOfDisconnects: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "230.71(A)", evidence: "carried" },
  "2011": { section: "230.71(A)", evidence: "carried" },
  "2014": { section: "230.71(A)", evidence: "carried" },
  "2017": { section: "230.71(A)", evidence: "single" },
  "2020": { section: "230.71(B)", evidence: "single" },
  "2023": { section: "230.71(B)", evidence: "single" },
  "2026": { section: "230.71(B)", evidence: "carried" },
});

/** Without service-entrance conductors the size follows from the conductors that the load would require. */
export const noServiceConductors: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "Table 250.66 note 2", evidence: "carried" },
  "2011": { section: "Table 250.66 note 2", evidence: "single" },
  "2014": { section: "Table 250.102(C)(1) note 4", evidence: "carried" },
  "2017": { section: "Table 250.102(C)(1) note 4", evidence: "single" },
  "2020": { section: "Table 250.102(C)(1) note 4", evidence: "single" },
  "2023": { section: "Table 250.102(C)(1) note 3", evidence: "single" },
  "2026": { section: "Table 250.102(C)(1) note 3", evidence: "carried" },
});

/** Not required larger than the conductor of the ground ring itself. */
export const ringElectrodeCeiling: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.66(C)", evidence: "carried" },
  "2011": { section: "250.66(C)", evidence: "single" },
  "2014": { section: "250.66(C)", evidence: "bracketed" },
  "2017": { section: "250.66(C)", evidence: "single" },
  "2020": { section: "250.66(C)", evidence: "single" },
  "2023": { section: "250.66(C)", evidence: "single" },
  "2026": { section: "250.66(C)", evidence: "carried" },
});

/** What the sizes for particular electrodes hold for: the sole connection to an electrode, or every conductor that serves no kind that requires more. */
export const electrodeCeilingConnection: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.66", evidence: "carried" },
  "2011": { section: "250.66", evidence: "single" },
  "2014": { section: "250.66", evidence: "memory" },
  "2017": { section: "250.66", evidence: "single" },
  "2020": { section: "250.66", evidence: "single" },
  "2023": { section: "250.66", evidence: "single" },
  "2026": { section: "250.66", evidence: "carried" },
});

/** Ungrounded service: the electrode conductor goes to a metal enclosure of the service conductors. */
export const serviceUngroundedElectrode: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.24(E)", evidence: "carried" },
  "2011": { section: "250.24(E)", evidence: "single" },
  "2014": { section: "250.24(E)", evidence: "bracketed" },
  "2017": { section: "250.24(E)", evidence: "single" },
  "2020": { section: "250.24(E)", evidence: "single" },
  "2023": { section: "250.24(F)", evidence: "single" },
  "2026": { section: "250.24(F)", evidence: "carried" },
});

/** Grounded conductor of a three-phase three-wire delta service: ampacity not below that of the ungrounded conductors. */
export const deltaGroundedConductor: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.24(C)(1)", evidence: "memory" },
  "2011": { section: "250.24(C)(3)", evidence: "single" },
  "2014": { section: "250.24(C)(3)", evidence: "bracketed" },
  "2017": { section: "250.24(C)(3)", evidence: "single" },
  "2020": { section: "250.24(C)(3)", evidence: "single" },
  "2023": { section: "250.24(D)(3)", evidence: "single" },
  "2026": { section: "250.24(D)(3)", evidence: "carried" },
});

/** The same for a separately derived system. */
export const deltaGroundedConductorDerived: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.30(A)(8)", evidence: "memory" },
  "2011": { section: "250.30(A)(3)(c)", evidence: "single" },
  "2014": { section: "250.30(A)(3)(c)", evidence: "bracketed" },
  "2017": { section: "250.30(A)(3)(c)", evidence: "single" },
  "2020": { section: "250.30(A)(3)(c)", evidence: "single" },
  "2023": { section: "250.30(A)(3)(c)", evidence: "single" },
  "2026": { section: "250.30(A)(3)(c)", evidence: "carried" },
});

/** Terminations: 60 C through 100 A unless listed otherwise, 75 C above. */
export const terminations: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "110.14(C)(1)", evidence: "carried" },
  "2011": { section: "110.14(C)(1)", evidence: "single" },
  "2014": { section: "110.14(C)(1)", evidence: "bracketed" },
  "2017": { section: "110.14(C)(1)", evidence: "single" },
  "2020": { section: "110.14(C)(1)", evidence: "single" },
  "2023": { section: "110.14(C)(1)", evidence: "single" },
  "2026": { section: "110.14(C)(1)", evidence: "carried" },
});

/** Load of the grounded conductor. */
export const neutralLoad: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "220.61", evidence: "carried" },
  "2011": { section: "220.61", evidence: "single" },
  "2014": { section: "220.61", evidence: "bracketed" },
  "2017": { section: "220.61", evidence: "single" },
  "2020": { section: "220.61", evidence: "single" },
  "2023": { section: "220.61", evidence: "single" },
  "2026": { section: "120.61", evidence: "memory" },
});

/** The conductor from the neutral point carries at least the impedance's largest current. */
export const impedanceAmpacity: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.36(B)", evidence: "carried" },
  "2011": { section: "250.36(B)", evidence: "single" },
  "2014": { section: "250.36(B)", evidence: "bracketed" },
  "2017": { section: "250.36(B)", evidence: "single" },
  "2020": { section: "250.36(B)", evidence: "single" },
  "2023": { section: "250.36(B)", evidence: "single" },
  "2026": { section: "250.36(B)", evidence: "carried" },
});

/** With the electrode conductor at the first disconnect the jumper equals the conductor to the impedance. */
export const impedanceJumperAtDisconnect: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.36(G)(2)", evidence: "carried" },
  "2011": { section: "250.36(G)(2)", evidence: "single" },
  "2014": { section: "250.36(G)(2)", evidence: "bracketed" },
  "2017": { section: "250.36(G)(2)", evidence: "single" },
  "2020": { section: "250.36(G)(2)", evidence: "single" },
  "2023": { section: "250.36(G)(2)", evidence: "single" },
  "2026": { section: "250.36(G)(2)", evidence: "carried" },
});

/** Ferrous raceways around an electrode conductor are bonded at both ends, by a jumper at least as large as the largest conductor enclosed. */
export const electrodeRaceway: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.64(E)", evidence: "carried" },
  "2011": { section: "250.64(E)", evidence: "single" },
  "2014": { section: "250.64(E)", evidence: "bracketed" },
  "2017": { section: "250.64(E)", evidence: "single" },
  "2020": { section: "250.64(E)", evidence: "single" },
  "2023": { section: "250.64(E)", evidence: "single" },
  "2026": { section: "250.64(E)", evidence: "carried" },
});

/** Intersystem bonding termination. */
export const intersystemTermination: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.94", evidence: "carried" },
  "2011": { section: "250.94", evidence: "single" },
  "2014": { section: "250.94", evidence: "bracketed" },
  "2017": { section: "250.94(A)", evidence: "single" },
  "2020": { section: "250.94(A)", evidence: "single" },
  "2023": { section: "250.94(A)", evidence: "single" },
  "2026": { section: "250.94(A)", evidence: "carried" },
});

/** No termination where communications systems are unlikely. */
export const intersystemExcuse: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.94", evidence: "carried" },
  "2011": { section: "250.94", evidence: "single" },
  "2014": { section: "250.94", evidence: "memory" },
  "2017": { section: "250.94 Exception", evidence: "single" },
  "2020": { section: "250.94 Exception", evidence: "single" },
  "2023": { section: "250.94 Exception", evidence: "single" },
  "2026": { section: "250.94 Exception", evidence: "carried" },
});

/** A busbar may serve in place of the termination device, from 2017 on; before, the section names the device alone. From 2023 the tie of the busbar follows the largest electrode conductor on it; before, no text gives it a size. */
export const intersystemBusbar: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.94", evidence: "carried" },
  "2011": { section: "250.94", evidence: "single" },
  "2014": { section: "250.94", evidence: "carried" },
  "2017": { section: "250.94(B)", evidence: "single" },
  "2020": { section: "250.94(B)", evidence: "single" },
  "2023": { section: "250.94(B)", evidence: "single" },
  "2026": { section: "250.94(B)", evidence: "carried" },
});

/** No electrode conductor for a small control transformer. */
export const controlTransformerElectrode: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.30(A)(3) Exception No. 3", evidence: "memory" },
  "2011": { section: "250.30(A)(5) Exception No. 3", evidence: "carried" },
  "2014": { section: "250.30(A)(5) Exception No. 3", evidence: "carried" },
  "2017": { section: "250.30(A)(5) Exception No. 3", evidence: "single" },
  "2020": { section: "250.30(A)(5) Exception No. 3", evidence: "single" },
  "2023": { section: "250.30(A)(5) Exception No. 3", evidence: "single" },
  "2026": { section: "250.30(A)(5) Exception No. 3", evidence: "carried" },
});

/** Common conductor of several derived systems and its taps, where the only electrodes present have a limit of their own; from 2020. */
export const commonDerivedException: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.30(A)(4)", evidence: "memory" },
  "2011": { section: "250.30(A)(6)", evidence: "single" },
  "2014": { section: "250.30(A)(6)", evidence: "bracketed" },
  "2017": { section: "250.30(A)(6)", evidence: "single" },
  "2020": { section: "250.30(A)(6) Exception to (a)(1) and (b)", evidence: "single" },
  "2023": { section: "250.30(A)(6) Exception to (a)(1) and (b)", evidence: "single" },
  "2026": { section: "250.30(A)(6) Exception to (a)(1) and (b)", evidence: "carried" },
});

/** Metal water piping of each occupancy by the device. */
export const pipingByDevice: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.104(A)(2)", evidence: "carried" },
  "2011": { section: "250.104(A)(2)", evidence: "single" },
  "2014": { section: "250.104(A)(2)", evidence: "bracketed" },
  "2017": { section: "250.104(A)(2)", evidence: "single" },
  "2020": { section: "250.104(A)(2)", evidence: "single" },
  "2023": { section: "250.104(A)(2)", evidence: "single" },
  "2026": { section: "250.104(A)(2)", evidence: "carried" },
});

/** Metal water piping of a feeder-supplied building; by the device from 2020. */
export const buildingPipingByDevice: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.104(A)(3)", evidence: "carried" },
  "2011": { section: "250.104(A)(3)", evidence: "single" },
  "2014": { section: "250.104(A)(3)", evidence: "bracketed" },
  "2017": { section: "250.104(A)(3)", evidence: "single" },
  "2020": { section: "250.104(A)(3)", evidence: "single" },
  "2023": { section: "250.104(A)(3)", evidence: "single" },
  "2026": { section: "250.104(A)(3)", evidence: "carried" },
});

/** Other metal piping by the circuit that is likely to energize it. */
export const otherPiping: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.104(B)", evidence: "carried" },
  "2011": { section: "250.104(B)", evidence: "single" },
  "2014": { section: "250.104(B)", evidence: "bracketed" },
  "2017": { section: "250.104(B)", evidence: "single" },
  "2020": { section: "250.104(B)", evidence: "single" },
  "2023": { section: "250.104(B)", evidence: "single" },
  "2026": { section: "250.104(B)", evidence: "carried" },
});

/** Service raceways and boxes may be bonded to the grounded conductor. */
export const supplySideBoxesByGroundedConductor: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.92(B)(1)", evidence: "carried" },
  "2011": { section: "250.92(B)(1)", evidence: "single" },
  "2014": { section: "250.92(B)(1)", evidence: "bracketed" },
  "2017": { section: "250.92(B)(1)", evidence: "single" },
  "2020": { section: "250.92(B)(1)", evidence: "single" },
  "2023": { section: "250.92(B)(1)", evidence: "single" },
  "2026": { section: "250.92(B)(1)", evidence: "carried" },
});

/** Service raceways may be bonded by threaded hubs, tight threadless fittings or listed bonding devices. */
export const serviceRacewayFittings: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.92(B)", evidence: "carried" },
  "2011": { section: "250.92(B)", evidence: "single" },
  "2014": { section: "250.92(B)", evidence: "bracketed" },
  "2017": { section: "250.92(B)", evidence: "single" },
  "2020": { section: "250.92(B)", evidence: "single" },
  "2023": { section: "250.92(B)", evidence: "single" },
  "2026": { section: "250.92(B)", evidence: "carried" },
});

/** What serves as equipment grounding conductor: a wire, or a raceway of a kind that is listed there. */
export const equipmentGroundingKinds: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.118", evidence: "carried" },
  "2011": { section: "250.118", evidence: "single" },
  "2014": { section: "250.118", evidence: "bracketed" },
  "2017": { section: "250.118", evidence: "single" },
  "2020": { section: "250.118", evidence: "single" },
  "2023": { section: "250.118(A)", evidence: "single" },
  "2026": { section: "250.118(A)", evidence: "carried" },
});

/** An equipment grounding conductor is not used as grounding electrode conductor. An exception lets one wire that meets the rules of both serve as both. */
export const electrodeConductorNoEquipmentGrounding: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.121", evidence: "carried" },
  "2011": { section: "250.121", evidence: "carried" },
  "2014": { section: "250.121", evidence: "carried" },
  "2017": { section: "250.121", evidence: "single" },
  "2020": { section: "250.121(A)", evidence: "single" },
  "2023": { section: "250.118(B)", evidence: "single" },
  "2026": { section: "250.118(B)", evidence: "carried" },
});

/** A grounding electrode conductor may go to one electrode and on to others; its size is that of the largest that any of them requires. */
export const electrodeConductorPastElectrodes: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.64(F)", evidence: "carried" },
  "2011": { section: "250.64(F)", evidence: "carried" },
  "2014": { section: "250.64(F)", evidence: "carried" },
  "2017": { section: "250.64(F)", evidence: "single" },
  "2020": { section: "250.64(F)", evidence: "single" },
  "2023": { section: "250.64(F)", evidence: "single" },
  "2026": { section: "250.64(F)", evidence: "carried" },
});

/** One equipment grounding conductor may serve several circuits in one raceway, cable or tray; the largest device decides. */
export const equipmentGroundingSeveralCircuits: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.122(C)", evidence: "carried" },
  "2011": { section: "250.122(C)", evidence: "carried" },
  "2014": { section: "250.122(C)", evidence: "carried" },
  "2017": { section: "250.122(C)", evidence: "single" },
  "2020": { section: "250.122(C)", evidence: "single" },
  "2023": { section: "250.122(C)", evidence: "single" },
  "2026": { section: "250.122(C)", evidence: "carried" },
});

/** Existing separate building that keeps its grounded conductor as the fault path: not smaller than an equipment grounding conductor, nor than its load requires. */
export const rebondedBuilding: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.32(B) Exception", evidence: "carried" },
  "2011": { section: "250.32(B)(1) Exception", evidence: "single" },
  "2014": { section: "250.32(B)(1) Exception", evidence: "bracketed" },
  "2017": { section: "250.32(B)(1) Exception No. 1", evidence: "single" },
  "2020": { section: "250.32(B)(1) Exception No. 1", evidence: "single" },
  "2023": { section: "250.32(B)(1) Exception No. 1", evidence: "single" },
  "2026": { section: "250.32(B)(1) Exception No. 1", evidence: "carried" },
});

/** The equipment grounding conductor of a motor circuit goes by the branch-circuit short-circuit and ground-fault device. */
export const equipmentGroundingMotor: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.122(D)(1)", evidence: "carried" },
  "2011": { section: "250.122(D)(1)", evidence: "single" },
  "2014": { section: "250.122(D)(1)", evidence: "bracketed" },
  "2017": { section: "250.122(D)(1)", evidence: "single" },
  "2020": { section: "250.122(D)(1)", evidence: "single" },
  "2023": { section: "250.122(D)(1)", evidence: "single" },
  "2026": { section: "250.122", evidence: "carried" },
});

/** With an instantaneous-trip breaker or a motor short-circuit protector it goes by the largest dual-element time-delay fuse permitted for the motor. */
export const equipmentGroundingInstantaneousTrip: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.122(D)(2)", evidence: "carried" },
  "2011": { section: "250.122(D)(2)", evidence: "single" },
  "2014": { section: "250.122(D)(2)", evidence: "bracketed" },
  "2017": { section: "250.122(D)(2)", evidence: "single" },
  "2020": { section: "250.122(D)(2)", evidence: "single" },
  "2023": { section: "250.122(D)(2)", evidence: "single" },
  "2026": { section: "250.122", evidence: "carried" },
});

/** Parallel runs: an equipment grounding conductor of full size in each raceway or cable; in one raceway or tray a single one. */
export const equipmentGroundingParallel: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.122(F)", evidence: "carried" },
  "2011": { section: "250.122(F)", evidence: "single" },
  "2014": { section: "250.122(F)", evidence: "bracketed" },
  "2017": { section: "250.122(F)", evidence: "single" },
  "2020": { section: "250.122(F)", evidence: "single" },
  "2023": { section: "250.122(F)", evidence: "single" },
  "2026": { section: "250.122", evidence: "carried" },
});

/** Cables in parallel in one raceway, tray or gutter: their own equipment grounding conductors count together with one of full size beside them. */
export const equipmentGroundingCablesCombined: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.122(F)", evidence: "carried" },
  "2011": { section: "250.122(F)", evidence: "single" },
  "2014": { section: "250.122(F)", evidence: "memory" },
  "2017": { section: "250.122(F)(2)", evidence: "single" },
  "2020": { section: "250.122(F)(2)", evidence: "single" },
  "2023": { section: "250.122(F)(2)", evidence: "single" },
  "2026": { section: "250.122", evidence: "carried" },
});

/** With feeder taps the equipment grounding conductor goes by the device ahead of the feeder and need not be larger than the tap conductors. */
export const equipmentGroundingFeederTap: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.122(G)", evidence: "carried" },
  "2011": { section: "250.122(G)", evidence: "carried" },
  "2014": { section: "250.122(G)", evidence: "carried" },
  "2017": { section: "250.122(G)", evidence: "single" },
  "2020": { section: "250.122(G)", evidence: "single" },
  "2023": { section: "250.122(G)", evidence: "single" },
  "2026": { section: "250.122", evidence: "carried" },
});

/** Aluminum and copper-clad aluminum equipment grounding conductors have restrictions near earth, masonry and in corrosive places. */
export const aluminumEquipmentGrounding: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.120", evidence: "carried" },
  "2011": { section: "250.120", evidence: "carried" },
  "2014": { section: "250.120", evidence: "carried" },
  "2017": { section: "250.120", evidence: "single" },
  "2020": { section: "250.120", evidence: "single" },
  "2023": { section: "250.120", evidence: "single" },
  "2026": { section: "250.120", evidence: "carried" },
});

/** A single conductor used as equipment grounding conductor in a cable tray is 4 AWG or larger, of any material. */
export const traySingleConductor: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "392.3(B)(1)(c)", evidence: "memory" },
  "2011": { section: "392.10(B)(1)(c)", evidence: "single" },
  "2014": { section: "392.10(B)(1)(c)", evidence: "bracketed" },
  "2017": { section: "392.10(B)(1)(c)", evidence: "single" },
  "2020": { section: "392.10(B)(1)(c)", evidence: "single" },
  "2023": { section: "392.10(B)(1)(c)", evidence: "single" },
  "2026": { section: "392.10(B)(1)(c)", evidence: "carried" },
});

/** A metal cable tray may serve as equipment grounding conductor: qualified persons, identified for it, area marked, bonded. */
export const trayAsEquipmentGrounding: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "392.7(B)", evidence: "memory" },
  "2011": { section: "392.60", evidence: "single" },
  "2014": { section: "392.60", evidence: "bracketed" },
  "2017": { section: "392.60", evidence: "single" },
  "2020": { section: "392.60", evidence: "single" },
  "2023": { section: "392.60", evidence: "single" },
  "2026": { section: "392.60", evidence: "carried" },
});

/** The path over a metal water pipe, and the bonding of it, does not rely on meters, filters and the like. */
export const waterPipeContinuity: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.53(D)(1)", evidence: "carried" },
  "2011": { section: "250.53(D)(1)", evidence: "carried" },
  "2014": { section: "250.53(D)(1)", evidence: "carried" },
  "2017": { section: "250.53(D)(1)", evidence: "single" },
  "2020": { section: "250.53(D)(1)", evidence: "single" },
  "2023": { section: "250.53(D)(1)", evidence: "single" },
  "2026": { section: "250.53(D)(1)", evidence: "carried" },
});

/** A bonding jumper around equipment that is likely to be taken out, long enough that it can be taken out with the jumper in place. */
export const removableEquipment: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.68(B)", evidence: "carried" },
  "2011": { section: "250.68(B)", evidence: "carried" },
  "2014": { section: "250.68(B)", evidence: "carried" },
  "2017": { section: "250.68(B)", evidence: "single" },
  "2020": { section: "250.68(B)", evidence: "single" },
  "2023": { section: "250.68(B)", evidence: "single" },
  "2026": { section: "250.68(B)", evidence: "carried" },
});

/** A single rod, pipe or plate is supplemented unless it has 25 ohms or less; metal water pipe always. */
export const electrodeSupplement: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.56", evidence: "memory" },
  "2011": { section: "250.53(A)(2)", evidence: "single" },
  "2014": { section: "250.53(A)(2)", evidence: "bracketed" },
  "2017": { section: "250.53(A)(2)", evidence: "single" },
  "2020": { section: "250.53(A)(2)", evidence: "single" },
  "2023": { section: "250.53(A)(2)", evidence: "single" },
  "2026": { section: "250.53(A)(2)", evidence: "carried" },
});

/** An impedance-grounded service has no main bonding jumper. */
export const mainJumperImpedance: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.24(B) Exception No. 2", evidence: "carried" },
  "2011": { section: "250.24(B) Exception No. 2", evidence: "single" },
  "2014": { section: "250.24(B) Exception No. 2", evidence: "bracketed" },
  "2017": { section: "250.24(B) Exception No. 2", evidence: "single" },
  "2020": { section: "250.24(B) Exception No. 2", evidence: "single" },
  "2023": { section: "250.24(C) Exception No. 2", evidence: "single" },
  "2026": { section: "250.24(C) Exception No. 2", evidence: "carried" },
});

/** Meter disconnects, and emergency disconnects that are not service equipment, lie ahead of the service disconnect; its enclosure has the main bonding jumper. */
export const meterAndEmergencyDisconnects: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "230.82", evidence: "carried" },
  "2011": { section: "230.82", evidence: "carried" },
  "2014": { section: "230.82", evidence: "carried" },
  "2017": { section: "230.82", evidence: "single" },
  "2020": { section: "230.82", evidence: "single" },
  "2023": { section: "230.82", evidence: "single" },
  "2026": { section: "230.82", evidence: "carried" },
});

/** Supply-side connected sources are grounded and bonded as a service from 2020; before, practice differs. */
export const supplySideSourceBonding: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.102(C)", evidence: "memory" },
  "2011": { section: "250.102(C)", evidence: "memory" },
  "2014": { section: "250.102(C)", evidence: "memory" },
  "2017": { section: "250.102(C)", evidence: "memory" },
  "2020": { section: "250.25", evidence: "single" },
  "2023": { section: "250.25", evidence: "single" },
  "2026": { section: "250.25", evidence: "carried" },
});

/** An ungrounded or impedance-grounded derived system has no system bonding jumper. */
export const ungroundedDerived: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.30(B)", evidence: "carried" },
  "2011": { section: "250.30(B)", evidence: "single" },
  "2014": { section: "250.30(B)", evidence: "bracketed" },
  "2017": { section: "250.30(B)", evidence: "single" },
  "2020": { section: "250.30(B)", evidence: "single" },
  "2023": { section: "250.30(B)", evidence: "single" },
  "2026": { section: "250.30(B)", evidence: "carried" },
});

/** A building on a single branch circuit with an equipment grounding conductor needs no electrode. */
export const buildingOnBranchCircuit: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.32(A) Exception", evidence: "carried" },
  "2011": { section: "250.32(A) Exception", evidence: "single" },
  "2014": { section: "250.32(A) Exception", evidence: "bracketed" },
  "2017": { section: "250.32(A) Exception", evidence: "single" },
  "2020": { section: "250.32(A) Exception", evidence: "single" },
  "2023": { section: "250.32(A) Exception", evidence: "single" },
  "2026": { section: "250.32(A) Exception", evidence: "carried" },
});

/** A branch circuit that is no individual one has a rating of at most 50 A. Read in quotations that name 2011 and 2023. */
export const branchCircuitRating: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "210.3", evidence: "memory" },
  "2011": { section: "210.3", evidence: "memory" },
  "2014": { section: "210.3", evidence: "memory" },
  "2017": { section: "210.3", evidence: "memory" },
  "2020": { section: "210.18", evidence: "memory" },
  "2023": { section: "210.18", evidence: "memory" },
  "2026": { section: "210.18", evidence: "memory" },
});

/** An outdoor transformer of the service requires at least one more electrode connection, outside the building. */
export const outdoorTransformerElectrode: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.24(A)(2)", evidence: "carried" },
  "2011": { section: "250.24(A)(2)", evidence: "single" },
  "2014": { section: "250.24(A)(2)", evidence: "bracketed" },
  "2017": { section: "250.24(A)(2)", evidence: "single" },
  "2020": { section: "250.24(A)(2)", evidence: "single" },
  "2023": { section: "250.24(A)(2)", evidence: "single" },
  "2026": { section: "250.24(A)(2)", evidence: "carried" },
});

/** Structural metal that is intentionally grounded, as an electrode is, needs no bonding jumper of its own. */
export const structuralMetalGrounded: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.104(C)", evidence: "carried" },
  "2011": { section: "250.104(C)", evidence: "carried" },
  "2014": { section: "250.104(C)", evidence: "carried" },
  "2017": { section: "250.104(C)", evidence: "single" },
  "2020": { section: "250.104(C)", evidence: "single" },
  "2023": { section: "250.104(C)", evidence: "single" },
  "2026": { section: "250.104(C)", evidence: "carried" },
});

/** A system is separately derived if its conductors have no direct connection to those of another source, save by grounding and bonding. */
export const separatelyDerivedDefinition: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "Article 100", evidence: "memory" },
  "2011": { section: "Article 100", evidence: "memory" },
  "2014": { section: "Article 100", evidence: "memory" },
  "2017": { section: "Article 100", evidence: "memory" },
  "2020": { section: "Article 100", evidence: "memory" },
  "2023": { section: "Article 100", evidence: "memory" },
  "2026": { section: "Article 100", evidence: "memory" },
});

/** A generator or other alternate source whose grounded conductor is solidly connected to that of a service is not separately derived: a transfer switch that does not switch it is the example. */
export const notSeparatelyDerived: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.20(D) FPN No. 1", evidence: "memory" },
  "2011": { section: "250.30 note", evidence: "single" },
  "2014": { section: "250.30 note", evidence: "bracketed" },
  "2017": { section: "250.30 note", evidence: "single" },
  "2020": { section: "250.30 note", evidence: "single" },
  "2023": { section: "250.30 note", evidence: "single" },
  "2026": { section: "250.30 note", evidence: "carried" },
});

/** A permanent generator that is not separately derived: jumpers on both sides of its overcurrent device in 2008; from 2011 a supply-side bonding jumper to the disconnect where that device is not integral. */
export const generatorJumpers: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.35(B)", evidence: "carried" },
  "2011": { section: "250.35(B)", evidence: "single" },
  "2014": { section: "250.35(B)", evidence: "bracketed" },
  "2017": { section: "250.35(B)", evidence: "single" },
  "2020": { section: "250.35(B)", evidence: "single" },
  "2023": { section: "250.35(B)", evidence: "single" },
  "2026": { section: "250.35(B)", evidence: "carried" },
});

/** A supply-side bonding jumper is sized by the ungrounded supply conductors. */
export const supplySideJumperSize: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.102(C)", evidence: "bracketed" },
  "2011": { section: "250.102(C)(1)", evidence: "single" },
  "2014": { section: "250.102(C)(1)", evidence: "bracketed" },
  "2017": { section: "250.102(C)(1)", evidence: "single" },
  "2020": { section: "250.102(C)(1)", evidence: "single" },
  "2023": { section: "250.102(C)(1)", evidence: "single" },
  "2026": { section: "250.102(C)(1)", evidence: "carried" },
});

/** Beyond an overcurrent device an equipment grounding conductor is sized by the device. */
export const equipmentGroundingByDevice: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.122(A)", evidence: "carried" },
  "2011": { section: "250.122(A)", evidence: "single" },
  "2014": { section: "250.122(A)", evidence: "bracketed" },
  "2017": { section: "250.122(A)", evidence: "single" },
  "2020": { section: "250.122(A)", evidence: "single" },
  "2023": { section: "250.122(A)", evidence: "single" },
  "2026": { section: "250.122", evidence: "carried" },
});

/** An equipment bonding jumper on the load side is sized as an equipment grounding conductor. */
export const loadSideJumper: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.102(D)", evidence: "bracketed" },
  "2011": { section: "250.102(D)", evidence: "single" },
  "2014": { section: "250.102(D)", evidence: "bracketed" },
  "2017": { section: "250.102(D)", evidence: "single" },
  "2020": { section: "250.102(D)", evidence: "single" },
  "2023": { section: "250.102(D)", evidence: "single" },
  "2026": { section: "250.102(D)", evidence: "carried" },
});

/** Bonding jumpers join the electrodes. */
export const electrodeBonding: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.53(C)", evidence: "carried" },
  "2011": { section: "250.53(C)", evidence: "single" },
  "2014": { section: "250.53(C)", evidence: "bracketed" },
  "2017": { section: "250.53(C)", evidence: "single" },
  "2020": { section: "250.53(C)", evidence: "single" },
  "2023": { section: "250.53(C)", evidence: "single" },
  "2026": { section: "250.53(C)", evidence: "carried" },
});

/** Metal water piping and structural metal in the area of a separately derived system are bonded at the point of its electrode conductor. */
export const derivedPipingAndMetal: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.104(D)", evidence: "carried" },
  "2011": { section: "250.104(D)", evidence: "single" },
  "2014": { section: "250.104(D)", evidence: "bracketed" },
  "2017": { section: "250.104(D)", evidence: "single" },
  "2020": { section: "250.104(D)", evidence: "single" },
  "2023": { section: "250.104(D)", evidence: "single" },
  "2026": { section: "250.104(D)", evidence: "carried" },
});

/** Metal water piping is bonded to the service. */
export const serviceWaterPiping: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.104(A)(1)", evidence: "carried" },
  "2011": { section: "250.104(A)(1)", evidence: "single" },
  "2014": { section: "250.104(A)(1)", evidence: "bracketed" },
  "2017": { section: "250.104(A)(1)", evidence: "single" },
  "2020": { section: "250.104(A)(1)", evidence: "single" },
  "2023": { section: "250.104(A)(1)", evidence: "single" },
  "2026": { section: "250.104(A)(1)", evidence: "carried" },
});

/** Exposed structural metal is bonded to the service. */
export const serviceStructuralMetal: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.104(C)", evidence: "carried" },
  "2011": { section: "250.104(C)", evidence: "single" },
  "2014": { section: "250.104(C)", evidence: "bracketed" },
  "2017": { section: "250.104(C)", evidence: "single" },
  "2020": { section: "250.104(C)", evidence: "single" },
  "2023": { section: "250.104(C)", evidence: "single" },
  "2026": { section: "250.104(C)", evidence: "carried" },
});

/** An ungrounded derived system: the electrode conductor goes from the metal enclosures, at any point from source to first disconnect, to the electrode. */
export const ungroundedDerivedElectrode: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.30(B)(1)", evidence: "carried" },
  "2011": { section: "250.30(B)(1)", evidence: "single" },
  "2014": { section: "250.30(B)(1)", evidence: "bracketed" },
  "2017": { section: "250.30(B)(1)", evidence: "single" },
  "2020": { section: "250.30(B)(1)", evidence: "single" },
  "2023": { section: "250.30(B)(1)", evidence: "single" },
  "2026": { section: "250.30(B)(1)", evidence: "carried" },
});

/** An ungrounded derived system: a supply-side bonding jumper from source to first disconnect, not required above the derived conductors. */
export const ungroundedDerivedSupplySide: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.30(B)(3)", evidence: "carried" },
  "2011": { section: "250.30(B)(3)", evidence: "single" },
  "2014": { section: "250.30(B)(3)", evidence: "bracketed" },
  "2017": { section: "250.30(B)(3)", evidence: "single" },
  "2020": { section: "250.30(B)(3)", evidence: "single" },
  "2023": { section: "250.30(B)(3)", evidence: "single" },
  "2026": { section: "250.30(B)(3)", evidence: "carried" },
});

/** An impedance-grounded system has no connection to ground but that through its impedance. */
export const impedanceNoOtherConnection: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.36(C)", evidence: "carried" },
  "2011": { section: "250.36(C)", evidence: "single" },
  "2014": { section: "250.36(C)", evidence: "bracketed" },
  "2017": { section: "250.36(C)", evidence: "single" },
  "2020": { section: "250.36(C)", evidence: "single" },
  "2023": { section: "250.36(C)", evidence: "single" },
  "2026": { section: "250.36(C)", evidence: "carried" },
});

/** The electrode conductor of an impedance-grounded system goes from the grounded side of the impedance to the equipment grounding connection of the first disconnect, at any point. */
export const impedanceElectrode: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.36(F)", evidence: "carried" },
  "2011": { section: "250.36(F)", evidence: "single" },
  "2014": { section: "250.36(F)", evidence: "bracketed" },
  "2017": { section: "250.36(F)", evidence: "single" },
  "2020": { section: "250.36(F)", evidence: "single" },
  "2023": { section: "250.36(F)", evidence: "single" },
  "2026": { section: "250.36(F)", evidence: "carried" },
});

/** A meter disconnect lies ahead of the service disconnect and is not service equipment. */
export const meterDisconnect: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "230.82(3)", evidence: "carried" },
  "2011": { section: "230.82(3)", evidence: "carried" },
  "2014": { section: "230.82(3)", evidence: "carried" },
  "2017": { section: "230.82(3)", evidence: "single" },
  "2020": { section: "230.82(3)", evidence: "single" },
  "2023": { section: "230.82(3)", evidence: "single" },
  "2026": { section: "230.82(3)", evidence: "carried" },
});

/** An outdoor emergency disconnect may be the service disconnect; before 2020 no rule names emergency disconnects. */
export const emergencyDisconnectAsService: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "230.70", evidence: "carried" },
  "2011": { section: "230.70", evidence: "carried" },
  "2014": { section: "230.70", evidence: "carried" },
  "2017": { section: "230.70", evidence: "single" },
  "2020": { section: "230.85(1)", evidence: "single" },
  "2023": { section: "230.85(B)(1)", evidence: "single" },
  "2026": { section: "230.70(A)(1)", evidence: "carried" },
});

/** An outdoor emergency disconnect that is not service equipment lies ahead of the service disconnect, as a meter disconnect does; before 2020 no rule names emergency disconnects. */
export const emergencyDisconnectAhead: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "230.70", evidence: "carried" },
  "2011": { section: "230.70", evidence: "carried" },
  "2014": { section: "230.70", evidence: "carried" },
  "2017": { section: "230.70", evidence: "single" },
  "2020": { section: "230.85(2), (3)", evidence: "single" },
  "2023": { section: "230.85(B)(2), (B)(3)", evidence: "single" },
  "2026": { section: "230.70", evidence: "memory" },
});

/** The jumper from the equipment grounding conductors to the grounded side of a grounding impedance. */
export const impedanceJumper: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.36(E)", evidence: "carried" },
  "2011": { section: "250.36(E)", evidence: "single" },
  "2014": { section: "250.36(E)", evidence: "bracketed" },
  "2017": { section: "250.36(E)", evidence: "single" },
  "2020": { section: "250.36(E)", evidence: "single" },
  "2023": { section: "250.36(E)", evidence: "single" },
  "2026": { section: "250.36(E)", evidence: "carried" },
});

/** Where aluminum and copper-clad aluminum electrode conductors may not run or end. */
export const aluminumElectrodeConductor: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.64(A)", evidence: "carried" },
  "2011": { section: "250.64(A)", evidence: "single" },
  "2014": { section: "250.64(A)", evidence: "bracketed" },
  "2017": { section: "250.64(A)", evidence: "single" },
  "2020": { section: "250.64(A)", evidence: "single" },
  "2023": { section: "250.64(A)", evidence: "single" },
  "2026": { section: "250.64(A)", evidence: "carried" },
});

/** Not required larger to a rod, pipe or plate than the size named. */
export const rodElectrodeCeiling: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.66(A)", evidence: "carried" },
  "2011": { section: "250.66(A)", evidence: "single" },
  "2014": { section: "250.66(A)", evidence: "bracketed" },
  "2017": { section: "250.66(A)", evidence: "single" },
  "2020": { section: "250.66(A)", evidence: "single" },
  "2023": { section: "250.66(A)", evidence: "single" },
  "2026": { section: "250.66(A)", evidence: "carried" },
});

/** A common electrode conductor with a tap into every enclosure. */
export const serviceElectrodeCommon: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.64(D)", evidence: "carried" },
  "2011": { section: "250.64(D)(1)", evidence: "single" },
  "2014": { section: "250.64(D)(1)", evidence: "carried" },
  "2017": { section: "250.64(D)(1)", evidence: "single" },
  "2020": { section: "250.64(D)(1)", evidence: "single" },
  "2023": { section: "250.64(D)(1)", evidence: "single" },
  "2026": { section: "250.64(D)(1)", evidence: "carried" },
});

/** An electrode conductor from every enclosure. */
export const serviceElectrodeIndividual: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.64(D)(2)", evidence: "carried" },
  "2011": { section: "250.64(D)(2)", evidence: "single" },
  "2014": { section: "250.64(D)(2)", evidence: "bracketed" },
  "2017": { section: "250.64(D)(2)", evidence: "single" },
  "2020": { section: "250.64(D)(2)", evidence: "single" },
  "2023": { section: "250.64(D)(2)", evidence: "single" },
  "2026": { section: "250.64(D)(2)", evidence: "carried" },
});

/** One electrode conductor from a wireway or other accessible enclosure on the supply side of the disconnects. */
export const serviceElectrodeOnePlace: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.64(D)", evidence: "carried" },
  "2011": { section: "250.64(D)(3)", evidence: "single" },
  "2014": { section: "250.64(D)(3)", evidence: "bracketed" },
  "2017": { section: "250.64(D)(3)", evidence: "single" },
  "2020": { section: "250.64(D)(3)", evidence: "single" },
  "2023": { section: "250.64(D)(3)", evidence: "single" },
  "2026": { section: "250.64(D)(3)", evidence: "carried" },
});

/** No tap to a common electrode conductor for a small control transformer. */
export const controlTransformerTap: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.30(A)(4) Exception No. 2", evidence: "memory" },
  "2011": { section: "250.30(A)(6) Exception No. 2", evidence: "single" },
  "2014": { section: "250.30(A)(6) Exception No. 2", evidence: "bracketed" },
  "2017": { section: "250.30(A)(6) Exception No. 2", evidence: "single" },
  "2020": { section: "250.30(A)(6) Exception No. 2", evidence: "single" },
  "2023": { section: "250.30(A)(6) Exception No. 2", evidence: "single" },
  "2026": { section: "250.30(A)(6) Exception No. 2", evidence: "carried" },
});

/** Without service-entrance conductors the electrode conductor follows from the conductors that the load would require. */
export const noServiceConductorsElectrode: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "Table 250.66 note 2", evidence: "carried" },
  "2011": { section: "Table 250.66 note 2", evidence: "single" },
  "2014": { section: "Table 250.66 note 2", evidence: "bracketed" },
  "2017": { section: "Table 250.66 note 2", evidence: "single" },
  "2020": { section: "Table 250.66 note 2", evidence: "bracketed" },
  "2023": { section: "Table 250.66 note 2", evidence: "single" },
  "2026": { section: "Table 250.66 note 2", evidence: "carried" },
});

/** One supply-side bonding jumper for several raceways or cables: sized as the one of a single raceway is, from all of their conductors. */
export const supplySideJumperSeveralRaceways: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.102(C)", evidence: "carried" },
  "2011": { section: "250.102(C)(2)", evidence: "carried" },
  "2014": { section: "250.102(C)(2)", evidence: "carried" },
  "2017": { section: "250.102(C)(2)", evidence: "single" },
  "2020": { section: "250.102(C)(2)", evidence: "single" },
  "2023": { section: "250.102(C)(2)", evidence: "single" },
  "2026": { section: "250.102(C)(2)", evidence: "carried" },
});

/** The conductors in parallel of one phase are of one length, material, size, insulation and termination. */
export const parallelAlike: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "310.4", evidence: "memory" },
  "2011": { section: "310.10(H)", evidence: "single" },
  "2014": { section: "310.10(H)", evidence: "bracketed" },
  "2017": { section: "310.10(H)", evidence: "single" },
  "2020": { section: "310.10(G)", evidence: "single" },
  "2023": { section: "310.10(G)", evidence: "single" },
  "2026": { section: "310.10(G)", evidence: "carried" },
});

/** The grounded conductor bonds no metal on the load side of the service disconnect or of a system bonding jumper, save listed exceptions. */
export const loadSideGrounding: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.142(B)", evidence: "carried" },
  "2011": { section: "250.142(B)", evidence: "single" },
  "2014": { section: "250.142(B)", evidence: "bracketed" },
  "2017": { section: "250.142(B)", evidence: "single" },
  "2020": { section: "250.142(B)", evidence: "single" },
  "2023": { section: "250.142(B)", evidence: "single" },
  "2026": { section: "250.142(B)", evidence: "carried" },
});

/** Frames of ranges, ovens and dryers on existing branch circuits may be bonded by the grounded conductor under conditions. */
export const frameByGroundedConductor: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.140 Exception", evidence: "carried" },
  "2011": { section: "250.140 Exception", evidence: "single" },
  "2014": { section: "250.140 Exception", evidence: "bracketed" },
  "2017": { section: "250.140 Exception", evidence: "single" },
  "2020": { section: "250.140 Exception", evidence: "single" },
  "2023": { section: "250.140(B)", evidence: "single" },
  "2026": { section: "250.140(B)", evidence: "carried" },
});

/** Meter enclosures beside the service disconnect may be bonded by the grounded conductor under conditions. */
export const meterEnclosureByGroundedConductor: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.142(B) Exception No. 2", evidence: "carried" },
  "2011": { section: "250.142(B) Exception No. 2", evidence: "single" },
  "2014": { section: "250.142(B) Exception No. 2", evidence: "bracketed" },
  "2017": { section: "250.142(B) Exception No. 2", evidence: "single" },
  "2020": { section: "250.142(B) Exception No. 2", evidence: "single" },
  "2023": { section: "250.142(B) Exception No. 2", evidence: "single" },
  "2026": { section: "250.142(B) Exception No. 2", evidence: "carried" },
});

/** A metal underground water pipe is supplemented by another electrode. */
export const waterPipeSupplement: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.53(D)(2)", evidence: "carried" },
  "2011": { section: "250.53(D)(2)", evidence: "single" },
  "2014": { section: "250.53(D)(2)", evidence: "bracketed" },
  "2017": { section: "250.53(D)(2)", evidence: "single" },
  "2020": { section: "250.53(D)(2)", evidence: "single" },
  "2023": { section: "250.53(D)(2)", evidence: "single" },
  "2026": { section: "250.53(D)(2)", evidence: "carried" },
});

/** All electrodes that are present at a building are bonded together; save concrete-encased ones of existing buildings whose steel is not accessible without disturbing the concrete. */
export const electrodesPresent: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.50", evidence: "carried" },
  "2011": { section: "250.50", evidence: "single" },
  "2014": { section: "250.50", evidence: "bracketed" },
  "2017": { section: "250.50", evidence: "single" },
  "2020": { section: "250.50", evidence: "bracketed" },
  "2023": { section: "250.50", evidence: "single" },
  "2026": { section: "250.50", evidence: "carried" },
});

/** An electrode conductor smaller than 6 AWG runs in a raceway or cable armor, a larger one where it is exposed to damage. */
export const electrodeConductorProtection: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.64(B)", evidence: "carried" },
  "2011": { section: "250.64(B)", evidence: "single" },
  "2014": { section: "250.64(B)", evidence: "bracketed" },
  "2017": { section: "250.64(B)", evidence: "single" },
  "2020": { section: "250.64(B)", evidence: "single" },
  "2023": { section: "250.64(B)", evidence: "single" },
  "2026": { section: "250.64(B)", evidence: "carried" },
});

/** Existing service equipment with several disconnects in one undivided enclosure may stay. */
export const undividedAssemblyExisting: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "230.71(A)", evidence: "carried" },
  "2011": { section: "230.71(A)", evidence: "carried" },
  "2014": { section: "230.71(A)", evidence: "carried" },
  "2017": { section: "230.71(A)", evidence: "single" },
  "2020": { section: "230.71(B)", evidence: "single" },
  "2023": { section: "230.71(B) Exception", evidence: "single" },
  "2026": { section: "230.71(B) Exception", evidence: "carried" },
});

/** The grounded conductor of a feeder is not smaller than the equipment grounding conductor that its device requires; the rule on parallel runs is not applied to it, so that each of several in parallel has the minimum size for parallel conductors. */
export const feederGroundedConductor: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "215.2(A)(1)", evidence: "memory" },
  "2011": { section: "215.2(A)(2)", evidence: "single" },
  "2014": { section: "215.2(A)(2)", evidence: "bracketed" },
  "2017": { section: "215.2(A)(2)", evidence: "bracketed" },
  "2020": { section: "215.2(A)(2)", evidence: "single" },
  "2023": { section: "215.2(B)", evidence: "single" },
  "2026": { section: "215.2(B)", evidence: "carried" },
});

/** At a building on a feeder the grounded conductor is kept apart from the equipment grounding conductors and the electrodes. */
export const buildingGroundedConductor: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.32(B)", evidence: "carried" },
  "2011": { section: "250.32(B)(1)", evidence: "single" },
  "2014": { section: "250.32(B)(1)", evidence: "bracketed" },
  "2017": { section: "250.32(B)(1)", evidence: "single" },
  "2020": { section: "250.32(B)(1)", evidence: "single" },
  "2023": { section: "250.32(B)(1)", evidence: "single" },
  "2026": { section: "250.32(B)(1)", evidence: "carried" },
});

/** A building on a separately derived system without an overcurrent device where its conductors start: a supply-side bonding jumper to the disconnect of the building and its electrodes, in place of an equipment grounding conductor. */
export const buildingFromDerivedSystem: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.32(B)", evidence: "carried" },
  "2011": { section: "250.32(B)(2)", evidence: "single" },
  "2014": { section: "250.32(B)(2)", evidence: "bracketed" },
  "2017": { section: "250.32(B)(2)", evidence: "single" },
  "2020": { section: "250.32(B)(2)", evidence: "single" },
  "2023": { section: "250.32(B)(2)", evidence: "single" },
  "2026": { section: "250.32(B)(2)", evidence: "carried" },
});

/** A building on an ungrounded system: an equipment grounding conductor runs with the supply conductors to the disconnect and the electrodes. */
export const buildingUngrounded: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.32(C)", evidence: "carried" },
  "2011": { section: "250.32(C)", evidence: "single" },
  "2014": { section: "250.32(C)", evidence: "bracketed" },
  "2017": { section: "250.32(C)", evidence: "single" },
  "2020": { section: "250.32(C)", evidence: "single" },
  "2023": { section: "250.32(C)", evidence: "single" },
  "2026": { section: "250.32(C)", evidence: "carried" },
});

/** A bonding jumper runs inside the raceway or enclosure or outside it; outside it follows the raceway and is at most 6 ft long, save at outdoor poles and for electrodes. */
export const jumperOutsideRaceway: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.102(E)", evidence: "carried" },
  "2011": { section: "250.102(E)", evidence: "single" },
  "2014": { section: "250.102(E)", evidence: "bracketed" },
  "2017": { section: "250.102(E)", evidence: "single" },
  "2020": { section: "250.102(E)", evidence: "single" },
  "2023": { section: "250.102(E)", evidence: "single" },
  "2026": { section: "250.102(E)", evidence: "carried" },
});

/** Flexible metal conduit with up to 6 ft in the path serves as equipment grounding conductor within limits of device and, in texts from 2017 on, of trade size, where it need not flex after it is installed. */
export const flexibleConduitAsGrounding: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.118", evidence: "carried" },
  "2011": { section: "250.118", evidence: "single" },
  "2014": { section: "250.118", evidence: "bracketed" },
  "2017": { section: "250.118", evidence: "single" },
  "2020": { section: "250.118", evidence: "single" },
  "2023": { section: "250.118(A)", evidence: "single" },
  "2026": { section: "250.118(A)", evidence: "carried" },
});

/** No overcurrent device opens the grounded conductor of a corner-grounded system, unless it opens all conductors at once. */
export const groundedPhaseDevices: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "240.22", evidence: "carried" },
  "2011": { section: "240.22", evidence: "single" },
  "2014": { section: "240.22", evidence: "bracketed" },
  "2017": { section: "240.22", evidence: "single" },
  "2020": { section: "240.22", evidence: "single" },
  "2023": { section: "240.22", evidence: "single" },
  "2026": { section: "240.22", evidence: "carried" },
});

/** Impedance grounding: three-phase systems of 480 to 1000 V without loads between line and neutral, with ground detectors, where qualified persons serve the installation. */
export const impedanceConditions: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.36", evidence: "carried" },
  "2011": { section: "250.36", evidence: "single" },
  "2014": { section: "250.36", evidence: "bracketed" },
  "2017": { section: "250.36", evidence: "single" },
  "2020": { section: "250.36", evidence: "single" },
  "2023": { section: "250.36", evidence: "single" },
  "2026": { section: "250.36", evidence: "carried" },
});

/** A building or structure on a feeder or branch circuit has electrodes of its own, to which its electrode conductor goes. */
export const buildingElectrodes: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.32(A)", evidence: "carried" },
  "2011": { section: "250.32(A)", evidence: "single" },
  "2014": { section: "250.32(A)", evidence: "bracketed" },
  "2017": { section: "250.32(A)", evidence: "single" },
  "2020": { section: "250.32(A)", evidence: "single" },
  "2023": { section: "250.32(A)", evidence: "single" },
  "2026": { section: "250.32(A)", evidence: "carried" },
});

/** No jumper of its own from a derived system to the water piping, where the metal frame is the electrode of that system and is bonded to the piping. */
export const derivedPipingByFrame: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.104(D)(1) Exception No. 2", evidence: "carried" },
  "2011": { section: "250.104(D)(1) Exception No. 2", evidence: "carried" },
  "2014": { section: "250.104(D)(1) Exception No. 2", evidence: "carried" },
  "2017": { section: "250.104(D)(1) Exception No. 2", evidence: "carried" },
  "2020": { section: "250.104(D)(1) Exception No. 2", evidence: "single" },
  "2023": { section: "250.104(D)(1) Exception No. 2", evidence: "single" },
  "2026": { section: "250.104(D)(1) Exception No. 2", evidence: "carried" },
});

/** No jumper of its own from a derived system to the frame, where the water piping is the electrode of that system and is bonded to the frame. */
export const derivedMetalByPiping: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.104(D)(2) Exception No. 2", evidence: "carried" },
  "2011": { section: "250.104(D)(2) Exception No. 2", evidence: "carried" },
  "2014": { section: "250.104(D)(2) Exception No. 2", evidence: "carried" },
  "2017": { section: "250.104(D)(2) Exception No. 2", evidence: "carried" },
  "2020": { section: "250.104(D)(2) Exception No. 2", evidence: "single" },
  "2023": { section: "250.104(D)(2) Exception No. 2", evidence: "single" },
  "2026": { section: "250.104(D)(2) Exception No. 2", evidence: "carried" },
});

/** No jumper of its own from each derived system to piping and frame that are bonded to the common electrode conductor of the systems. */
export const derivedMetalByCommon: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.104(D)(3) Exception", evidence: "carried" },
  "2011": { section: "250.104(D)(3) Exception", evidence: "carried" },
  "2014": { section: "250.104(D)(3) Exception", evidence: "carried" },
  "2017": { section: "250.104(D)(3) Exception", evidence: "carried" },
  "2020": { section: "250.104(D)(3) Exception", evidence: "single" },
  "2023": { section: "250.104(D)(3) Exception", evidence: "single" },
  "2026": { section: "250.104(D)(3) Exception", evidence: "carried" },
});

/** Metal water piping or a metal frame may serve as the common electrode conductor of several derived systems. The piping is named as such in texts from 2017; before, from memory. */
export const commonConductorByMetal: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.30(A)(4)", evidence: "memory" },
  "2011": { section: "250.30(A)(6)", evidence: "carried" },
  "2014": { section: "250.30(A)(6)", evidence: "carried" },
  "2017": { section: "250.30(A)(6)", evidence: "single" },
  "2020": { section: "250.30(A)(6)", evidence: "single" },
  "2023": { section: "250.30(A)(6)", evidence: "single" },
  "2026": { section: "250.30(A)(6)", evidence: "carried" },
});

/** A grounded service conductor is insulated, but may be bare: copper in a raceway or in a service cable, aluminum in a cable or raceway identified for underground use. */
export const serviceGroundedCovering: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "230.41 Exception", evidence: "carried" },
  "2011": { section: "230.41 Exception", evidence: "carried" },
  "2014": { section: "230.41 Exception", evidence: "carried" },
  "2017": { section: "230.41 Exception", evidence: "single" },
  "2020": { section: "230.41 Exception", evidence: "single" },
  "2023": { section: "230.41 Exception", evidence: "single" },
  "2026": { section: "230.41 Exception", evidence: "carried" },
});

/** Conductors are insulated, except where covered or bare ones are specifically permitted. */
export const conductorsInsulated: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "310.2(A)", evidence: "memory" },
  "2011": { section: "310.106(D)", evidence: "memory" },
  "2014": { section: "310.106(D)", evidence: "memory" },
  "2017": { section: "310.106(D)", evidence: "memory" },
  "2020": { section: "310.3(D)", evidence: "memory" },
  "2023": { section: "310.3(D)", evidence: "memory" },
  "2026": { section: "310.3(D)", evidence: "memory" },
});

/** An electrode conductor of the wire type may be insulated, covered or bare. */
export const electrodeConductorCovering: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.62", evidence: "carried" },
  "2011": { section: "250.62", evidence: "single" },
  "2014": { section: "250.62", evidence: "bracketed" },
  "2017": { section: "250.62", evidence: "single" },
  "2020": { section: "250.62", evidence: "single" },
  "2023": { section: "250.62", evidence: "single" },
  "2026": { section: "250.62", evidence: "carried" },
});

/** An equipment grounding conductor may be bare, covered or insulated. */
export const equipmentGroundingCovering: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.119", evidence: "carried" },
  "2011": { section: "250.119", evidence: "carried" },
  "2014": { section: "250.119", evidence: "carried" },
  "2017": { section: "250.119", evidence: "single" },
  "2020": { section: "250.119", evidence: "single" },
  "2023": { section: "250.119", evidence: "single" },
  "2026": { section: "250.119", evidence: "carried" },
});

/** A bonding jumper need not be insulated: the section names its material and no covering. */
export const bondingJumperCovering: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.102(A)", evidence: "carried" },
  "2011": { section: "250.102(A)", evidence: "carried" },
  "2014": { section: "250.102(A)", evidence: "carried" },
  "2017": { section: "250.102(A)", evidence: "single" },
  "2020": { section: "250.102(A)", evidence: "single" },
  "2023": { section: "250.102(A)", evidence: "single" },
  "2026": { section: "250.102(A)", evidence: "carried" },
});

/** A main or system bonding jumper need not be insulated: the section names its material and no covering. */
export const mainJumperCovering: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.28(A)", evidence: "carried" },
  "2011": { section: "250.28(A)", evidence: "carried" },
  "2014": { section: "250.28(A)", evidence: "carried" },
  "2017": { section: "250.28(A)", evidence: "carried" },
  "2020": { section: "250.28(A)", evidence: "single" },
  "2023": { section: "250.28(A)", evidence: "carried" },
  "2026": { section: "250.28(A)", evidence: "carried" },
});

/** A common electrode conductor of several jumpers of one derived system. No text sizes it; it is taken as the electrode conductor of that system. Inferred. */
export const commonConductorOfOneSystem: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "250.30(A)(3), (4)", evidence: "memory" },
  "2011": { section: "250.30(A)(5), (6)", evidence: "memory" },
  "2014": { section: "250.30(A)(5), (6)", evidence: "memory" },
  "2017": { section: "250.30(A)(5), (6)", evidence: "memory" },
  "2020": { section: "250.30(A)(5), (6)", evidence: "memory" },
  "2023": { section: "250.30(A)(5), (6)", evidence: "memory" },
  "2026": { section: "250.30(A)(5), (6)", evidence: "memory" },
});

/** The equation that may stand in place of the table of ambient temperatures; its numbers agree with every cell of the table. */
export const ambientEquation: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "310.15(C)", evidence: "memory" },
  "2011": { section: "310.15(B)(2)", evidence: "memory" },
  "2014": { section: "310.15(B)(2)", evidence: "memory" },
  "2017": { section: "310.15(B)(2)", evidence: "memory" },
  "2020": { section: "310.15(B)", evidence: "carried" },
  "2023": { section: "310.15(B)", evidence: "single" },
  "2026": { section: "310.15(B)", evidence: "carried" },
});

/** Whether the neutral counts as a current-carrying conductor. */
export const neutralCounting: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "310.15(B)(4)", evidence: "carried" },
  "2011": { section: "310.15(B)(5)", evidence: "carried" },
  "2014": { section: "310.15(B)(5)", evidence: "carried" },
  "2017": { section: "310.15(B)(5)", evidence: "single" },
  "2020": { section: "310.15(E)", evidence: "single" },
  "2023": { section: "310.15(E)", evidence: "single" },
  "2026": { section: "310.15(E)", evidence: "carried" },
});

/** Spare conductors and every conductor of parallel sets count. */
export const conductorCounting: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "310.15(B)(2)(a)", evidence: "memory" },
  "2011": { section: "310.15(B)(3)(a)", evidence: "carried" },
  "2014": { section: "310.15(B)(3)(a)", evidence: "carried" },
  "2017": { section: "310.15(B)(3)(a)", evidence: "single" },
  "2020": { section: "310.15(C)(1)", evidence: "single" },
  "2023": { section: "310.15(C)(1)", evidence: "single" },
  "2026": { section: "310.15(C)(1)", evidence: "carried" },
});

/** No adjustment by the number of conductors in a raceway of 24 in. or less. */
export const shortRaceway: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "310.15(B)(2)(a) Exception No. 3", evidence: "memory" },
  "2011": { section: "310.15(B)(3)(a)(2)", evidence: "single" },
  "2014": { section: "310.15(B)(3)(a)(2)", evidence: "bracketed" },
  "2017": { section: "310.15(B)(3)(a)(2)", evidence: "single" },
  "2020": { section: "310.15(C)(1)", evidence: "single" },
  "2023": { section: "310.15(C)(1)", evidence: "single" },
  "2026": { section: "310.15(C)(1)", evidence: "carried" },
});

/** The device may have the next standard rating above the ampacity, through 800 A. */
export const nextStandardRating: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "240.4(B)", evidence: "carried" },
  "2011": { section: "240.4(B)", evidence: "carried" },
  "2014": { section: "240.4(B)", evidence: "carried" },
  "2017": { section: "240.4(B)", evidence: "single" },
  "2020": { section: "240.4(B)", evidence: "single" },
  "2023": { section: "240.4(B)", evidence: "single" },
  "2026": { section: "240.4(B)", evidence: "carried" },
});

/** A device above 800 A has at most the ampacity of its conductors. */
export const deviceAbove800: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "240.4(C)", evidence: "carried" },
  "2011": { section: "240.4(C)", evidence: "carried" },
  "2014": { section: "240.4(C)", evidence: "carried" },
  "2017": { section: "240.4(C)", evidence: "single" },
  "2020": { section: "240.4(C)", evidence: "single" },
  "2023": { section: "240.4(C)", evidence: "single" },
  "2026": { section: "240.4(C)", evidence: "carried" },
});

/** Most that may protect small conductors, their ampacity aside. */
export const smallConductorDevice: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "240.4(D)", evidence: "carried" },
  "2011": { section: "240.4(D)", evidence: "single" },
  "2014": { section: "240.4(D)", evidence: "bracketed" },
  "2017": { section: "240.4(D)", evidence: "single" },
  "2020": { section: "240.4(D)", evidence: "single" },
  "2023": { section: "240.4(D)", evidence: "single" },
  "2026": { section: "240.4(D)", evidence: "carried" },
});

/** The next standard rating is not for tap conductors. */
export const tapConductors: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "240.21(B)", evidence: "carried" },
  "2011": { section: "240.21(B)", evidence: "single" },
  "2014": { section: "240.21(B)", evidence: "bracketed" },
  "2017": { section: "240.21(B)", evidence: "single" },
  "2020": { section: "240.21(B)", evidence: "single" },
  "2023": { section: "240.21(B)", evidence: "single" },
  "2026": { section: "240.21(B)", evidence: "carried" },
});

/** The next standard rating is not for conductors from the secondary of a transformer. */
export const transformerSecondaryConductors: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "240.21(C)", evidence: "carried" },
  "2011": { section: "240.21(C)", evidence: "carried" },
  "2014": { section: "240.21(C)", evidence: "carried" },
  "2017": { section: "240.21(C)", evidence: "single" },
  "2020": { section: "240.21(C)", evidence: "single" },
  "2023": { section: "240.21(C)", evidence: "single" },
  "2026": { section: "240.21(C)", evidence: "carried" },
});

/** Conductors of a feeder carry 125 percent of its continuous load and the rest. */
export const continuousFeeder: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "215.2(A)(1)", evidence: "carried" },
  "2011": { section: "215.2(A)(1)", evidence: "carried" },
  "2014": { section: "215.2(A)(1)", evidence: "carried" },
  "2017": { section: "215.2(A)(1)", evidence: "carried" },
  "2020": { section: "215.2(A)(1)", evidence: "single" },
  "2023": { section: "215.2(A)(1)", evidence: "single" },
  "2026": { section: "215.2(A)(1)", evidence: "carried" },
});

/** Conductors of a service carry 125 percent of its continuous load and the rest. */
export const continuousService: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "230.42(A)", evidence: "carried" },
  "2011": { section: "230.42(A)", evidence: "carried" },
  "2014": { section: "230.42(A)", evidence: "carried" },
  "2017": { section: "230.42(A)", evidence: "single" },
  "2020": { section: "230.42(A)", evidence: "single" },
  "2023": { section: "230.42(A)", evidence: "single" },
  "2026": { section: "230.42(A)", evidence: "carried" },
});

/** Conductors of a branch circuit carry 125 percent of its continuous load and the rest. */
export const continuousBranchCircuit: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "210.19(A)(1)", evidence: "memory" },
  "2011": { section: "210.19(A)(1)", evidence: "memory" },
  "2014": { section: "210.19(A)(1)", evidence: "memory" },
  "2017": { section: "210.19(A)(1)", evidence: "memory" },
  "2020": { section: "210.19(A)(1)", evidence: "memory" },
  "2023": { section: "210.19(A)(1)", evidence: "memory" },
  "2026": { section: "210.19(A)(1)", evidence: "memory" },
});

/** The device of a feeder is rated for 125 percent of its continuous load and the rest. */
export const continuousFeederDevice: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "215.3", evidence: "carried" },
  "2011": { section: "215.3", evidence: "carried" },
  "2014": { section: "215.3", evidence: "carried" },
  "2017": { section: "215.3", evidence: "carried" },
  "2020": { section: "215.3", evidence: "single" },
  "2023": { section: "215.3", evidence: "single" },
  "2026": { section: "215.3", evidence: "carried" },
});

/** The device of a branch circuit is rated for 125 percent of its continuous load and the rest. */
export const continuousBranchCircuitDevice: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "210.20(A)", evidence: "memory" },
  "2011": { section: "210.20(A)", evidence: "memory" },
  "2014": { section: "210.20(A)", evidence: "memory" },
  "2017": { section: "210.20(A)", evidence: "memory" },
  "2020": { section: "210.20(A)", evidence: "memory" },
  "2023": { section: "210.20(A)", evidence: "memory" },
  "2026": { section: "210.20(A)", evidence: "memory" },
});

/** Conductors that carry the whole load of a dwelling: by a list of sizes, or 83 percent of the rating. */
export const dwellingAllowance: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "310.15(B)(6)", evidence: "carried" },
  "2011": { section: "310.15(B)(7)", evidence: "single" },
  "2014": { section: "310.15(B)(7)", evidence: "carried" },
  "2017": { section: "310.15(B)(7)", evidence: "single" },
  "2020": { section: "310.12", evidence: "single" },
  "2023": { section: "310.12", evidence: "single" },
  "2026": { section: "310.12", evidence: "carried" },
});

/** The allowance for dwellings on two phases and the neutral of a 208Y/120 system. */
export const dwellingTwoPhases: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "310.15(B)(6)", evidence: "memory" },
  "2011": { section: "310.15(B)(7)", evidence: "single" },
  "2014": { section: "310.15(B)(7)", evidence: "memory" },
  "2017": { section: "310.15(B)(7)", evidence: "single" },
  "2020": { section: "310.12", evidence: "single" },
  "2023": { section: "310.12", evidence: "single" },
  "2026": { section: "310.12", evidence: "carried" },
});

/** NM cable has the ampacity of the 60 C column, whatever its insulation. */
export const nonmetallicCableAmpacity: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "334.80", evidence: "memory" },
  "2011": { section: "334.80", evidence: "memory" },
  "2014": { section: "334.80", evidence: "memory" },
  "2017": { section: "334.80", evidence: "memory" },
  "2020": { section: "334.80", evidence: "memory" },
  "2023": { section: "334.80", evidence: "memory" },
  "2026": { section: "334.80", evidence: "memory" },
});

/** UF cable has the ampacity of the 60 C column, whatever its insulation. */
export const undergroundFeederCableAmpacity: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "340.80", evidence: "memory" },
  "2011": { section: "340.80", evidence: "memory" },
  "2014": { section: "340.80", evidence: "memory" },
  "2017": { section: "340.80", evidence: "memory" },
  "2020": { section: "340.80", evidence: "memory" },
  "2023": { section: "340.80", evidence: "memory" },
  "2026": { section: "340.80", evidence: "memory" },
});

/** A tap of not more than 10 ft: at least its load and the device that it ends in, and a tenth of the feeder's device where it leaves the enclosure. */
export const feederTapTenFeet: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "240.21(B)(1)", evidence: "carried" },
  "2011": { section: "240.21(B)(1)", evidence: "single" },
  "2014": { section: "240.21(B)(1)", evidence: "bracketed" },
  "2017": { section: "240.21(B)(1)", evidence: "single" },
  "2020": { section: "240.21(B)(1)", evidence: "single" },
  "2023": { section: "240.21(B)(1)", evidence: "single" },
  "2026": { section: "240.21(B)(1)", evidence: "carried" },
});

/** A tap of not more than 25 ft: at least a third of the feeder's device, ending in one device not above its ampacity. */
export const feederTapTwentyFiveFeet: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "240.21(B)(2)", evidence: "carried" },
  "2011": { section: "240.21(B)(2)", evidence: "single" },
  "2014": { section: "240.21(B)(2)", evidence: "bracketed" },
  "2017": { section: "240.21(B)(2)", evidence: "single" },
  "2020": { section: "240.21(B)(2)", evidence: "single" },
  "2023": { section: "240.21(B)(2)", evidence: "single" },
  "2026": { section: "240.21(B)(2)", evidence: "carried" },
});

/** A tap that supplies a transformer: primary and secondary conductors of not more than 25 ft together, each at least a third of the feeder's device, the secondary's by the ratio of the voltages. */
export const feederTapTransformer: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "240.21(B)(3)", evidence: "carried" },
  "2011": { section: "240.21(B)(3)", evidence: "single" },
  "2014": { section: "240.21(B)(3)", evidence: "bracketed" },
  "2017": { section: "240.21(B)(3)", evidence: "single" },
  "2020": { section: "240.21(B)(3)", evidence: "single" },
  "2023": { section: "240.21(B)(3)", evidence: "single" },
  "2026": { section: "240.21(B)(3)", evidence: "carried" },
});

/** A tap of not more than 100 ft, 25 ft of it horizontal, in a manufacturing building more than 35 ft high at its walls. */
export const feederTapHighBay: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "240.21(B)(4)", evidence: "carried" },
  "2011": { section: "240.21(B)(4)", evidence: "single" },
  "2014": { section: "240.21(B)(4)", evidence: "bracketed" },
  "2017": { section: "240.21(B)(4)", evidence: "single" },
  "2020": { section: "240.21(B)(4)", evidence: "single" },
  "2023": { section: "240.21(B)(4)", evidence: "single" },
  "2026": { section: "240.21(B)(4)", evidence: "carried" },
});

/** A tap outdoors of any length that ends in one device not above its ampacity. */
export const feederTapOutdoors: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "240.21(B)(5)", evidence: "carried" },
  "2011": { section: "240.21(B)(5)", evidence: "single" },
  "2014": { section: "240.21(B)(5)", evidence: "bracketed" },
  "2017": { section: "240.21(B)(5)", evidence: "single" },
  "2020": { section: "240.21(B)(5)", evidence: "single" },
  "2023": { section: "240.21(B)(5)", evidence: "single" },
  "2026": { section: "240.21(B)(5)", evidence: "carried" },
});

/** The primary device protects the secondary conductors of a two-wire, or of a three-wire delta-delta transformer. */
export const secondaryProtectedByPrimary: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "240.21(C)(1)", evidence: "carried" },
  "2011": { section: "240.21(C)(1)", evidence: "single" },
  "2014": { section: "240.21(C)(1)", evidence: "bracketed" },
  "2017": { section: "240.21(C)(1)", evidence: "single" },
  "2020": { section: "240.21(C)(1)", evidence: "single" },
  "2023": { section: "240.21(C)(1)", evidence: "single" },
  "2026": { section: "240.21(C)(1)", evidence: "carried" },
});

/** Secondary conductors of not more than 10 ft: at least their load and the device that they end in, and a tenth of the primary device, by the ratio of the voltages, where they leave the enclosure. */
export const secondaryTenFeet: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "240.21(C)(2)", evidence: "carried" },
  "2011": { section: "240.21(C)(2)", evidence: "single" },
  "2014": { section: "240.21(C)(2)", evidence: "bracketed" },
  "2017": { section: "240.21(C)(2)", evidence: "single" },
  "2020": { section: "240.21(C)(2)", evidence: "single" },
  "2023": { section: "240.21(C)(2)", evidence: "single" },
  "2026": { section: "240.21(C)(2)", evidence: "carried" },
});

/** Secondary conductors of not more than 25 ft in an industrial installation: at least the transformer's secondary current and the sum of the devices that they end in. */
export const secondaryIndustrial: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "240.21(C)(3)", evidence: "carried" },
  "2011": { section: "240.21(C)(3)", evidence: "single" },
  "2014": { section: "240.21(C)(3)", evidence: "bracketed" },
  "2017": { section: "240.21(C)(3)", evidence: "single" },
  "2020": { section: "240.21(C)(3)", evidence: "single" },
  "2023": { section: "240.21(C)(3)", evidence: "single" },
  "2026": { section: "240.21(C)(3)", evidence: "carried" },
});

/** Secondary conductors outdoors of any length that end in one device not above their ampacity. */
export const secondaryOutdoors: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "240.21(C)(4)", evidence: "carried" },
  "2011": { section: "240.21(C)(4)", evidence: "single" },
  "2014": { section: "240.21(C)(4)", evidence: "bracketed" },
  "2017": { section: "240.21(C)(4)", evidence: "single" },
  "2020": { section: "240.21(C)(4)", evidence: "single" },
  "2023": { section: "240.21(C)(4)", evidence: "single" },
  "2026": { section: "240.21(C)(4)", evidence: "carried" },
});

/** Secondary conductors of a transformer that a feeder tap supplies go by the rule of that tap. */
export const secondaryOfTappedTransformer: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "240.21(C)(5)", evidence: "carried" },
  "2011": { section: "240.21(C)(5)", evidence: "single" },
  "2014": { section: "240.21(C)(5)", evidence: "bracketed" },
  "2017": { section: "240.21(C)(5)", evidence: "single" },
  "2020": { section: "240.21(C)(5)", evidence: "single" },
  "2023": { section: "240.21(C)(5)", evidence: "single" },
  "2026": { section: "240.21(C)(5)", evidence: "carried" },
});

/** Secondary conductors of not more than 25 ft: at least a third of the primary device, by the ratio of the voltages, ending in one device not above their ampacity. */
export const secondaryTwentyFiveFeet: ByEdition<Citation> = /* @__PURE__ */ frozen({
  "2008": { section: "240.21(C)(6)", evidence: "carried" },
  "2011": { section: "240.21(C)(6)", evidence: "single" },
  "2014": { section: "240.21(C)(6)", evidence: "bracketed" },
  "2017": { section: "240.21(C)(6)", evidence: "single" },
  "2020": { section: "240.21(C)(6)", evidence: "single" },
  "2023": { section: "240.21(C)(6)", evidence: "single" },
  "2026": { section: "240.21(C)(6)", evidence: "carried" },
});

// Generated from tables/sections.json by "npm run generate"; do not edit.
import type { Citation } from "../citation.js";
import type { ByEdition } from "../supply-area-table.js";

/** Sizes and areas of conductors. */
export const conductorSizes: ByEdition<Citation> = {
  "2008": { section: "Chapter 9 Table 8", evidence: "carried" },
  "2011": { section: "Chapter 9 Table 8", evidence: "single" },
  "2014": { section: "Chapter 9 Table 8", evidence: "bracketed" },
  "2017": { section: "Chapter 9 Table 8", evidence: "confirmed" },
  "2020": { section: "Chapter 9 Table 8", evidence: "bracketed" },
  "2023": { section: "Chapter 9 Table 8", evidence: "bracketed" },
  "2026": { section: "Chapter 9 Table 8", evidence: "carried" },
};

/** Conductors in parallel are 1/0 AWG or larger, with few exceptions. */
export const parallelMinimum: ByEdition<Citation> = {
  "2008": { section: "310.4", evidence: "single" },
  "2011": { section: "310.10(H)", evidence: "single" },
  "2014": { section: "310.10(H)", evidence: "bracketed" },
  "2017": { section: "310.10(H)", evidence: "single" },
  "2020": { section: "310.10(G)", evidence: "single" },
  "2023": { section: "310.10(G)", evidence: "single" },
  "2026": { section: "310.10(G)", evidence: "carried" },
};

/** One unspliced main bonding jumper within the enclosure of each service disconnect. */
export const mainJumperPlace: ByEdition<Citation> = {
  "2008": { section: "250.24(B)", evidence: "carried" },
  "2011": { section: "250.24(B)", evidence: "single" },
  "2014": { section: "250.24(B)", evidence: "bracketed" },
  "2017": { section: "250.24(B)", evidence: "single" },
  "2020": { section: "250.24(B)", evidence: "single" },
  "2023": { section: "250.24(C)", evidence: "single" },
  "2026": { section: "250.24(C)", evidence: "carried" },
};

/** An assembly listed as service equipment with more than one disconnect has one main bonding jumper, to the assembly. */
export const listedAssembly: ByEdition<Citation> = {
  "2008": { section: "250.24(B) Exception No. 1", evidence: "carried" },
  "2011": { section: "250.24(B) Exception No. 1", evidence: "single" },
  "2014": { section: "250.24(B) Exception No. 1", evidence: "bracketed" },
  "2017": { section: "250.24(B) Exception No. 1", evidence: "single" },
  "2020": { section: "250.24(B) Exception No. 1", evidence: "single" },
  "2023": { section: "250.24(C) Exception No. 1", evidence: "single" },
  "2026": { section: "250.24(C) Exception No. 1", evidence: "carried" },
};

/** In each of several enclosures by the largest ungrounded conductor to it. */
export const mainJumperSeveralEnclosures: ByEdition<Citation> = {
  "2008": { section: "250.28(D)(2)", evidence: "carried" },
  "2011": { section: "250.28(D)(2)", evidence: "single" },
  "2014": { section: "250.28(D)(2)", evidence: "bracketed" },
  "2017": { section: "250.28(D)(2)", evidence: "single" },
  "2020": { section: "250.28(D)(2)", evidence: "single" },
  "2023": { section: "250.28(D)(2)", evidence: "single" },
  "2026": { section: "250.28(D)(2)", evidence: "carried" },
};

/** A separately derived system that feeds several enclosures: a jumper in each by the conductors to it, or one at the source by the largest sum of corresponding conductors. */
export const systemJumperSeveralEnclosures: ByEdition<Citation> = {
  "2008": { section: "250.28(D)(3)", evidence: "single" },
  "2011": { section: "250.28(D)(3)", evidence: "single" },
  "2014": { section: "250.28(D)(3)", evidence: "bracketed" },
  "2017": { section: "250.28(D)(3)", evidence: "single" },
  "2020": { section: "250.28(D)(3)", evidence: "single" },
  "2023": { section: "250.28(D)(3)", evidence: "single" },
  "2026": { section: "250.28(D)(3)", evidence: "carried" },
};

/** The system bonding jumper is at any single point from the source to the first disconnect. */
export const systemJumperPlace: ByEdition<Citation> = {
  "2008": { section: "250.30(A)(1)", evidence: "single" },
  "2011": { section: "250.30(A)(1)", evidence: "single" },
  "2014": { section: "250.30(A)(1)", evidence: "bracketed" },
  "2017": { section: "250.30(A)(1)", evidence: "single" },
  "2020": { section: "250.30(A)(1)", evidence: "single" },
  "2023": { section: "250.30(A)(1)", evidence: "single" },
  "2026": { section: "250.30(A)(1)", evidence: "carried" },
};

/** Jumpers at the source and at the first disconnect, where no parallel path arises; from 2014 for an outdoor source that feeds a building. */
export const systemJumperBothEnds: ByEdition<Citation> = {
  "2008": { section: "250.30(A)(1) Exception No. 2", evidence: "memory" },
  "2011": { section: "250.30(A)(1) Exception No. 2", evidence: "single" },
  "2014": { section: "250.30(A)(1) Exception No. 2", evidence: "carried" },
  "2017": { section: "250.30(A)(1) Exception No. 2", evidence: "single" },
  "2020": { section: "250.30(A)(1) Exception No. 2", evidence: "single" },
  "2023": { section: "250.30(A)(1) Exception No. 2", evidence: "single" },
  "2026": { section: "250.30(A)(1) Exception No. 2", evidence: "carried" },
};

/** An outdoor source has its electrode connection, and with it its system bonding jumper, at the source. Not established for 2008. */
export const outdoorSource: ByEdition<Citation> = {
  "2008": { section: "250.30(A)(1)", evidence: "memory" },
  "2011": { section: "250.30(C)", evidence: "single" },
  "2014": { section: "250.30(C)", evidence: "bracketed" },
  "2017": { section: "250.30(C)", evidence: "single" },
  "2020": { section: "250.30(C)", evidence: "single" },
  "2023": { section: "250.30(C)", evidence: "single" },
  "2026": { section: "250.30(C)", evidence: "carried" },
};

/** The grounded conductor is brought to each disconnect with at least the table's size where the jumper is not at the source. */
export const derivedGroundedConductor: ByEdition<Citation> = {
  "2008": { section: "250.30(A)(8)", evidence: "memory" },
  "2011": { section: "250.30(A)(3)", evidence: "single" },
  "2014": { section: "250.30(A)(3)", evidence: "bracketed" },
  "2017": { section: "250.30(A)(3)", evidence: "single" },
  "2020": { section: "250.30(A)(3)", evidence: "single" },
  "2023": { section: "250.30(A)(3)", evidence: "single" },
  "2026": { section: "250.30(A)(3)", evidence: "carried" },
};

/** The electrode conductor of a separately derived system is connected at the point of the system bonding jumper. */
export const derivedElectrodeConnection: ByEdition<Citation> = {
  "2008": { section: "250.30(A)(3)", evidence: "memory" },
  "2011": { section: "250.30(A)(5)", evidence: "single" },
  "2014": { section: "250.30(A)(5)", evidence: "bracketed" },
  "2017": { section: "250.30(A)(5)", evidence: "single" },
  "2020": { section: "250.30(A)(5)", evidence: "single" },
  "2023": { section: "250.30(A)(5)", evidence: "single" },
  "2026": { section: "250.30(A)(5)", evidence: "carried" },
};

/** No further connection of the grounded conductor to metal beyond the system bonding jumper, save listed exceptions. */
export const derivedLoadSide: ByEdition<Citation> = {
  "2008": { section: "250.30(A)", evidence: "memory" },
  "2011": { section: "250.30(A)", evidence: "single" },
  "2014": { section: "250.30(A)", evidence: "bracketed" },
  "2017": { section: "250.30(A)", evidence: "single" },
  "2020": { section: "250.30(A)", evidence: "single" },
  "2023": { section: "250.30(A)", evidence: "single" },
  "2026": { section: "250.30(A)", evidence: "carried" },
};

/** A supply-side bonding jumper runs from the source to the first disconnect. */
export const derivedSupplySideJumper: ByEdition<Citation> = {
  "2008": { section: "250.30(A)(2)", evidence: "memory" },
  "2011": { section: "250.30(A)(2)", evidence: "single" },
  "2014": { section: "250.30(A)(2)", evidence: "bracketed" },
  "2017": { section: "250.30(A)(2)", evidence: "single" },
  "2020": { section: "250.30(A)(2)", evidence: "single" },
  "2023": { section: "250.30(A)(2)", evidence: "single" },
  "2026": { section: "250.30(A)(2)", evidence: "carried" },
};

/** The grounded conductor is run to each service disconnect and bonded to its enclosure. */
export const serviceGroundedConductor: ByEdition<Citation> = {
  "2008": { section: "250.24(C)", evidence: "carried" },
  "2011": { section: "250.24(C)", evidence: "single" },
  "2014": { section: "250.24(C)", evidence: "bracketed" },
  "2017": { section: "250.24(C)", evidence: "single" },
  "2020": { section: "250.24(C)", evidence: "single" },
  "2023": { section: "250.24(D)", evidence: "single" },
  "2026": { section: "250.24(D)", evidence: "carried" },
};

/** The electrode conductor of a service is connected at any accessible point from the load end of the drop or lateral to the disconnect. */
export const serviceElectrodeConnection: ByEdition<Citation> = {
  "2008": { section: "250.24(A)(1)", evidence: "carried" },
  "2011": { section: "250.24(A)(1)", evidence: "single" },
  "2014": { section: "250.24(A)(1)", evidence: "bracketed" },
  "2017": { section: "250.24(A)(1)", evidence: "single" },
  "2020": { section: "250.24(A)(1)", evidence: "single" },
  "2023": { section: "250.24(A)(1)", evidence: "single" },
  "2026": { section: "250.24(A)(1)", evidence: "carried" },
};

/** Electrode conductors of a service with several enclosures: common with taps, individual, or at one place on the supply side. */
export const serviceElectrodeSeveralEnclosures: ByEdition<Citation> = {
  "2008": { section: "250.64(D)", evidence: "memory" },
  "2011": { section: "250.64(D)", evidence: "single" },
  "2014": { section: "250.64(D)", evidence: "bracketed" },
  "2017": { section: "250.64(D)", evidence: "single" },
  "2020": { section: "250.64(D)", evidence: "single" },
  "2023": { section: "250.64(D)", evidence: "single" },
  "2026": { section: "250.64(D)", evidence: "carried" },
};

/** No further connection of the grounded conductor to metal on the load side of the service disconnect, save listed exceptions. */
export const serviceLoadSide: ByEdition<Citation> = {
  "2008": { section: "250.24(A)(5)", evidence: "carried" },
  "2011": { section: "250.24(A)(5)", evidence: "single" },
  "2014": { section: "250.24(A)(5)", evidence: "bracketed" },
  "2017": { section: "250.24(A)(5)", evidence: "single" },
  "2020": { section: "250.24(A)(5)", evidence: "single" },
  "2023": { section: "250.24(B)", evidence: "single" },
  "2026": { section: "250.24(B)", evidence: "carried" },
};

/** On the supply side of the service disconnect the grounded conductor may bond metal boxes and raceways, at several points. */
export const supplySideConnections: ByEdition<Citation> = {
  "2008": { section: "250.142(A)", evidence: "memory" },
  "2011": { section: "250.142(A)", evidence: "single" },
  "2014": { section: "250.142(A)", evidence: "bracketed" },
  "2017": { section: "250.142(A)", evidence: "bracketed" },
  "2020": { section: "250.142(A)", evidence: "single" },
  "2023": { section: "250.142(A)", evidence: "single" },
  "2026": { section: "250.142(A)", evidence: "carried" },
};

/** Raceways, gutters, boxes and fittings that hold service conductors are bonded together. */
export const serviceBoxes: ByEdition<Citation> = {
  "2008": { section: "250.92(A)", evidence: "carried" },
  "2011": { section: "250.92(A)", evidence: "single" },
  "2014": { section: "250.92(A)", evidence: "bracketed" },
  "2017": { section: "250.92(A)", evidence: "single" },
  "2020": { section: "250.92(A)", evidence: "single" },
  "2023": { section: "250.92(A)", evidence: "single" },
  "2026": { section: "250.92(A)", evidence: "carried" },
};

/** Two to six disconnects per service. From 2020 not six in one undivided enclosure: separate enclosures, or sections and compartments of an assembly. */
export const numberOfDisconnects: ByEdition<Citation> = {
  "2008": { section: "230.71(A)", evidence: "memory" },
  "2011": { section: "230.71(A)", evidence: "memory" },
  "2014": { section: "230.71(A)", evidence: "memory" },
  "2017": { section: "230.71(A)", evidence: "memory" },
  "2020": { section: "230.71(B)", evidence: "single" },
  "2023": { section: "230.71(B)", evidence: "single" },
  "2026": { section: "230.71(B)", evidence: "carried" },
};

/** Without service-entrance conductors the size follows from the conductors that the load would require. */
export const noServiceConductors: ByEdition<Citation> = {
  "2008": { section: "Table 250.66 note 2", evidence: "carried" },
  "2011": { section: "Table 250.66 note 2", evidence: "single" },
  "2014": { section: "Table 250.102(C)(1) note 4", evidence: "carried" },
  "2017": { section: "Table 250.102(C)(1) note 4", evidence: "single" },
  "2020": { section: "Table 250.102(C)(1) note 4", evidence: "single" },
  "2023": { section: "Table 250.102(C)(1) note 3", evidence: "single" },
  "2026": { section: "Table 250.102(C)(1) note 3", evidence: "carried" },
};

/** Not required larger than the conductor of the ground ring itself. */
export const ringElectrodeCeiling: ByEdition<Citation> = {
  "2008": { section: "250.66(C)", evidence: "carried" },
  "2011": { section: "250.66(C)", evidence: "single" },
  "2014": { section: "250.66(C)", evidence: "bracketed" },
  "2017": { section: "250.66(C)", evidence: "single" },
  "2020": { section: "250.66(C)", evidence: "single" },
  "2023": { section: "250.66(C)", evidence: "single" },
  "2026": { section: "250.66(C)", evidence: "carried" },
};

/** Ungrounded service: the electrode conductor goes to a metal enclosure of the service conductors. */
export const serviceUngroundedElectrode: ByEdition<Citation> = {
  "2008": { section: "250.24(E)", evidence: "carried" },
  "2011": { section: "250.24(E)", evidence: "single" },
  "2014": { section: "250.24(E)", evidence: "bracketed" },
  "2017": { section: "250.24(E)", evidence: "single" },
  "2020": { section: "250.24(E)", evidence: "single" },
  "2023": { section: "250.24(F)", evidence: "single" },
  "2026": { section: "250.24(F)", evidence: "carried" },
};

/** Grounded conductor of a three-phase three-wire delta service: ampacity not below that of the ungrounded conductors. */
export const deltaGroundedConductor: ByEdition<Citation> = {
  "2008": { section: "250.24(C)(1)", evidence: "memory" },
  "2011": { section: "250.24(C)(3)", evidence: "single" },
  "2014": { section: "250.24(C)(3)", evidence: "bracketed" },
  "2017": { section: "250.24(C)(3)", evidence: "single" },
  "2020": { section: "250.24(C)(3)", evidence: "single" },
  "2023": { section: "250.24(D)(3)", evidence: "single" },
  "2026": { section: "250.24(D)(3)", evidence: "carried" },
};

/** The same for a separately derived system. */
export const deltaGroundedConductorDerived: ByEdition<Citation> = {
  "2008": { section: "250.30(A)(8)", evidence: "memory" },
  "2011": { section: "250.30(A)(3)(c)", evidence: "single" },
  "2014": { section: "250.30(A)(3)(c)", evidence: "bracketed" },
  "2017": { section: "250.30(A)(3)(c)", evidence: "single" },
  "2020": { section: "250.30(A)(3)(c)", evidence: "single" },
  "2023": { section: "250.30(A)(3)(c)", evidence: "single" },
  "2026": { section: "250.30(A)(3)(c)", evidence: "carried" },
};

/** Terminations: 60 C through 100 A unless listed otherwise, 75 C above. */
export const terminations: ByEdition<Citation> = {
  "2008": { section: "110.14(C)(1)", evidence: "carried" },
  "2011": { section: "110.14(C)(1)", evidence: "single" },
  "2014": { section: "110.14(C)(1)", evidence: "bracketed" },
  "2017": { section: "110.14(C)(1)", evidence: "single" },
  "2020": { section: "110.14(C)(1)", evidence: "single" },
  "2023": { section: "110.14(C)(1)", evidence: "single" },
  "2026": { section: "110.14(C)(1)", evidence: "carried" },
};

/** Load of the grounded conductor. */
export const neutralLoad: ByEdition<Citation> = {
  "2008": { section: "220.61", evidence: "carried" },
  "2011": { section: "220.61", evidence: "single" },
  "2014": { section: "220.61", evidence: "carried" },
  "2017": { section: "220.61", evidence: "single" },
  "2020": { section: "220.61", evidence: "single" },
  "2023": { section: "220.61", evidence: "single" },
  "2026": { section: "120.61", evidence: "carried" },
};

/** The conductor from the neutral point carries at least the impedance's largest current. */
export const impedanceAmpacity: ByEdition<Citation> = {
  "2008": { section: "250.36(B)", evidence: "carried" },
  "2011": { section: "250.36(B)", evidence: "single" },
  "2014": { section: "250.36(B)", evidence: "bracketed" },
  "2017": { section: "250.36(B)", evidence: "single" },
  "2020": { section: "250.36(B)", evidence: "single" },
  "2023": { section: "250.36(B)", evidence: "single" },
  "2026": { section: "250.36(B)", evidence: "carried" },
};

/** With the electrode conductor at the first disconnect the jumper equals the conductor to the impedance. */
export const impedanceJumperAtDisconnect: ByEdition<Citation> = {
  "2008": { section: "250.36(G)(2)", evidence: "carried" },
  "2011": { section: "250.36(G)(2)", evidence: "single" },
  "2014": { section: "250.36(G)(2)", evidence: "bracketed" },
  "2017": { section: "250.36(G)(2)", evidence: "single" },
  "2020": { section: "250.36(G)(2)", evidence: "single" },
  "2023": { section: "250.36(G)(2)", evidence: "single" },
  "2026": { section: "250.36(G)(2)", evidence: "carried" },
};

/** Ferrous raceways around an electrode conductor are bonded at both ends, by a jumper at least as large as the largest conductor enclosed. */
export const electrodeRaceway: ByEdition<Citation> = {
  "2008": { section: "250.64(E)", evidence: "carried" },
  "2011": { section: "250.64(E)", evidence: "single" },
  "2014": { section: "250.64(E)", evidence: "bracketed" },
  "2017": { section: "250.64(E)", evidence: "single" },
  "2020": { section: "250.64(E)", evidence: "single" },
  "2023": { section: "250.64(E)", evidence: "single" },
  "2026": { section: "250.64(E)", evidence: "carried" },
};

/** Intersystem bonding termination. */
export const intersystemTermination: ByEdition<Citation> = {
  "2008": { section: "250.94", evidence: "carried" },
  "2011": { section: "250.94", evidence: "single" },
  "2014": { section: "250.94", evidence: "bracketed" },
  "2017": { section: "250.94(A)", evidence: "single" },
  "2020": { section: "250.94(A)", evidence: "single" },
  "2023": { section: "250.94(A)", evidence: "single" },
  "2026": { section: "250.94(A)", evidence: "carried" },
};

/** A busbar in place of the termination; from 2023 its tie follows the largest electrode conductor on it. */
export const intersystemBusbar: ByEdition<Citation> = {
  "2008": { section: "250.94(B)", evidence: "carried" },
  "2011": { section: "250.94(B)", evidence: "single" },
  "2014": { section: "250.94(B)", evidence: "bracketed" },
  "2017": { section: "250.94(B)", evidence: "single" },
  "2020": { section: "250.94(B)", evidence: "single" },
  "2023": { section: "250.94(B)", evidence: "single" },
  "2026": { section: "250.94(B)", evidence: "carried" },
};

/** No electrode conductor for a small control transformer. */
export const controlTransformerElectrode: ByEdition<Citation> = {
  "2008": { section: "250.30(A)(3) Exception No. 3", evidence: "memory" },
  "2011": { section: "250.30(A)(5) Exception No. 3", evidence: "carried" },
  "2014": { section: "250.30(A)(5) Exception No. 3", evidence: "bracketed" },
  "2017": { section: "250.30(A)(5) Exception No. 3", evidence: "single" },
  "2020": { section: "250.30(A)(5) Exception No. 3", evidence: "single" },
  "2023": { section: "250.30(A)(5) Exception No. 3", evidence: "single" },
  "2026": { section: "250.30(A)(5) Exception No. 3", evidence: "carried" },
};

/** Common conductor of several derived systems and its taps, where the only electrodes present have a limit of their own; from 2020. */
export const commonDerivedException: ByEdition<Citation> = {
  "2008": { section: "250.30(A)(4)", evidence: "memory" },
  "2011": { section: "250.30(A)(6)", evidence: "single" },
  "2014": { section: "250.30(A)(6)", evidence: "bracketed" },
  "2017": { section: "250.30(A)(6)", evidence: "single" },
  "2020": { section: "250.30(A)(6) Exception to (a)(1) and (b)", evidence: "single" },
  "2023": { section: "250.30(A)(6) Exception to (a)(1) and (b)", evidence: "single" },
  "2026": { section: "250.30(A)(6) Exception to (a)(1) and (b)", evidence: "carried" },
};

/** Metal water piping of each occupancy by the device. */
export const pipingByDevice: ByEdition<Citation> = {
  "2008": { section: "250.104(A)(2)", evidence: "carried" },
  "2011": { section: "250.104(A)(2)", evidence: "single" },
  "2014": { section: "250.104(A)(2)", evidence: "bracketed" },
  "2017": { section: "250.104(A)(2)", evidence: "single" },
  "2020": { section: "250.104(A)(2)", evidence: "single" },
  "2023": { section: "250.104(A)(2)", evidence: "single" },
  "2026": { section: "250.104(A)(2)", evidence: "carried" },
};

/** Metal water piping of a feeder-supplied building; by the device from 2020. */
export const buildingPipingByDevice: ByEdition<Citation> = {
  "2008": { section: "250.104(A)(3)", evidence: "carried" },
  "2011": { section: "250.104(A)(3)", evidence: "single" },
  "2014": { section: "250.104(A)(3)", evidence: "bracketed" },
  "2017": { section: "250.104(A)(3)", evidence: "single" },
  "2020": { section: "250.104(A)(3)", evidence: "single" },
  "2023": { section: "250.104(A)(3)", evidence: "single" },
  "2026": { section: "250.104(A)(3)", evidence: "carried" },
};

/** Other metal piping by the circuit that is likely to energize it. */
export const otherPiping: ByEdition<Citation> = {
  "2008": { section: "250.104(B)", evidence: "carried" },
  "2011": { section: "250.104(B)", evidence: "single" },
  "2014": { section: "250.104(B)", evidence: "bracketed" },
  "2017": { section: "250.104(B)", evidence: "single" },
  "2020": { section: "250.104(B)", evidence: "single" },
  "2023": { section: "250.104(B)", evidence: "single" },
  "2026": { section: "250.104(B)", evidence: "carried" },
};

/** Service raceways and boxes may be bonded to the grounded conductor. */
export const supplySideBoxesByGroundedConductor: ByEdition<Citation> = {
  "2008": { section: "250.92(B)(1)", evidence: "carried" },
  "2011": { section: "250.92(B)(1)", evidence: "single" },
  "2014": { section: "250.92(B)(1)", evidence: "bracketed" },
  "2017": { section: "250.92(B)(1)", evidence: "single" },
  "2020": { section: "250.92(B)(1)", evidence: "single" },
  "2023": { section: "250.92(B)(1)", evidence: "single" },
  "2026": { section: "250.92(B)(1)", evidence: "carried" },
};

/** Service raceways may be bonded by threaded hubs, tight threadless fittings or listed bonding devices. */
export const serviceRacewayFittings: ByEdition<Citation> = {
  "2008": { section: "250.92(B)", evidence: "carried" },
  "2011": { section: "250.92(B)", evidence: "single" },
  "2014": { section: "250.92(B)", evidence: "bracketed" },
  "2017": { section: "250.92(B)", evidence: "single" },
  "2020": { section: "250.92(B)", evidence: "single" },
  "2023": { section: "250.92(B)", evidence: "single" },
  "2026": { section: "250.92(B)", evidence: "carried" },
};

/** Existing separate building that keeps its grounded conductor as the fault path: not smaller than an equipment grounding conductor, nor than its load requires. */
export const rebondedBuilding: ByEdition<Citation> = {
  "2008": { section: "250.32(B) Exception", evidence: "carried" },
  "2011": { section: "250.32(B) Exception", evidence: "single" },
  "2014": { section: "250.32(B) Exception", evidence: "bracketed" },
  "2017": { section: "250.32(B)(1) Exception No. 1", evidence: "single" },
  "2020": { section: "250.32(B)(1) Exception No. 1", evidence: "single" },
  "2023": { section: "250.32(B)(1) Exception No. 1", evidence: "single" },
  "2026": { section: "250.32(B)(1) Exception No. 1", evidence: "carried" },
};

/** The equipment grounding conductor of a motor circuit goes by the branch-circuit short-circuit and ground-fault device. */
export const equipmentGroundingMotor: ByEdition<Citation> = {
  "2008": { section: "250.122(D)(1)", evidence: "carried" },
  "2011": { section: "250.122(D)(1)", evidence: "single" },
  "2014": { section: "250.122(D)(1)", evidence: "bracketed" },
  "2017": { section: "250.122(D)(1)", evidence: "single" },
  "2020": { section: "250.122(D)(1)", evidence: "single" },
  "2023": { section: "250.122(D)(1)", evidence: "single" },
  "2026": { section: "250.122", evidence: "carried" },
};

/** With an instantaneous-trip breaker or a motor short-circuit protector it goes by the largest dual-element time-delay fuse permitted for the motor. */
export const equipmentGroundingInstantaneousTrip: ByEdition<Citation> = {
  "2008": { section: "250.122(D)(2)", evidence: "carried" },
  "2011": { section: "250.122(D)(2)", evidence: "single" },
  "2014": { section: "250.122(D)(2)", evidence: "bracketed" },
  "2017": { section: "250.122(D)(2)", evidence: "single" },
  "2020": { section: "250.122(D)(2)", evidence: "single" },
  "2023": { section: "250.122(D)(2)", evidence: "single" },
  "2026": { section: "250.122", evidence: "carried" },
};

/** Parallel runs: an equipment grounding conductor of full size in each raceway or cable; in one raceway or tray a single one. */
export const equipmentGroundingParallel: ByEdition<Citation> = {
  "2008": { section: "250.122(F)", evidence: "carried" },
  "2011": { section: "250.122(F)", evidence: "single" },
  "2014": { section: "250.122(F)", evidence: "bracketed" },
  "2017": { section: "250.122(F)", evidence: "single" },
  "2020": { section: "250.122(F)", evidence: "single" },
  "2023": { section: "250.122(F)", evidence: "single" },
  "2026": { section: "250.122", evidence: "carried" },
};

/** With feeder taps the equipment grounding conductor goes by the device ahead of the feeder and need not be larger than the tap conductors. */
export const equipmentGroundingFeederTap: ByEdition<Citation> = {
  "2008": { section: "250.122(G)", evidence: "carried" },
  "2011": { section: "250.122(G)", evidence: "carried" },
  "2014": { section: "250.122(G)", evidence: "carried" },
  "2017": { section: "250.122(G)", evidence: "single" },
  "2020": { section: "250.122(G)", evidence: "single" },
  "2023": { section: "250.122(G)", evidence: "single" },
  "2026": { section: "250.122", evidence: "carried" },
};

/** Aluminum and copper-clad aluminum equipment grounding conductors have restrictions near earth, masonry and in corrosive places. */
export const aluminumEquipmentGrounding: ByEdition<Citation> = {
  "2008": { section: "250.120", evidence: "carried" },
  "2011": { section: "250.120", evidence: "carried" },
  "2014": { section: "250.120", evidence: "carried" },
  "2017": { section: "250.120", evidence: "single" },
  "2020": { section: "250.120", evidence: "single" },
  "2023": { section: "250.120", evidence: "single" },
  "2026": { section: "250.120", evidence: "carried" },
};

/** A single conductor used as equipment grounding conductor in a cable tray is 4 AWG or larger, of any material. */
export const traySingleConductor: ByEdition<Citation> = {
  "2008": { section: "392.3(B)(1)(c)", evidence: "memory" },
  "2011": { section: "392.10(B)(1)(c)", evidence: "single" },
  "2014": { section: "392.10(B)(1)(c)", evidence: "bracketed" },
  "2017": { section: "392.10(B)(1)(c)", evidence: "single" },
  "2020": { section: "392.10(B)(1)(c)", evidence: "single" },
  "2023": { section: "392.10(B)(1)(c)", evidence: "single" },
  "2026": { section: "392.10(B)(1)(c)", evidence: "carried" },
};

/** A metal cable tray may serve as equipment grounding conductor: qualified persons, identified for it, area marked, bonded. */
export const trayAsEquipmentGrounding: ByEdition<Citation> = {
  "2008": { section: "392.7(B)", evidence: "memory" },
  "2011": { section: "392.60", evidence: "single" },
  "2014": { section: "392.60", evidence: "bracketed" },
  "2017": { section: "392.60", evidence: "single" },
  "2020": { section: "392.60", evidence: "single" },
  "2023": { section: "392.60", evidence: "single" },
  "2026": { section: "392.60", evidence: "carried" },
};

/** A single rod, pipe or plate is supplemented unless it has 25 ohms or less; metal water pipe always. */
export const electrodeSupplement: ByEdition<Citation> = {
  "2008": { section: "250.56", evidence: "memory" },
  "2011": { section: "250.53(A)(2)", evidence: "single" },
  "2014": { section: "250.53(A)(2)", evidence: "bracketed" },
  "2017": { section: "250.53(A)(2)", evidence: "single" },
  "2020": { section: "250.53(A)(2)", evidence: "single" },
  "2023": { section: "250.53(A)(2)", evidence: "single" },
  "2026": { section: "250.53(A)(2)", evidence: "carried" },
};

/** An impedance-grounded service has no main bonding jumper. */
export const mainJumperImpedance: ByEdition<Citation> = {
  "2008": { section: "250.24(B) Exception No. 2", evidence: "carried" },
  "2011": { section: "250.24(B) Exception No. 2", evidence: "single" },
  "2014": { section: "250.24(B) Exception No. 2", evidence: "bracketed" },
  "2017": { section: "250.24(B) Exception No. 2", evidence: "single" },
  "2020": { section: "250.24(B) Exception No. 2", evidence: "single" },
  "2023": { section: "250.24(C) Exception No. 2", evidence: "single" },
  "2026": { section: "250.24(C) Exception No. 2", evidence: "carried" },
};

/** Meter disconnects, and emergency disconnects that are not service equipment, lie ahead of the service disconnect; its enclosure has the main bonding jumper. */
export const meterAndEmergencyDisconnects: ByEdition<Citation> = {
  "2008": { section: "230.82", evidence: "memory" },
  "2011": { section: "230.82", evidence: "memory" },
  "2014": { section: "230.82", evidence: "carried" },
  "2017": { section: "230.82", evidence: "single" },
  "2020": { section: "230.82", evidence: "single" },
  "2023": { section: "230.82", evidence: "single" },
  "2026": { section: "230.82", evidence: "carried" },
};

/** Supply-side connected sources are grounded and bonded as a service from 2020; before, practice differs. */
export const supplySideSourceBonding: ByEdition<Citation> = {
  "2008": { section: "250.102(C)", evidence: "memory" },
  "2011": { section: "250.102(C)", evidence: "memory" },
  "2014": { section: "250.102(C)", evidence: "memory" },
  "2017": { section: "250.102(C)", evidence: "memory" },
  "2020": { section: "250.25", evidence: "single" },
  "2023": { section: "250.25", evidence: "single" },
  "2026": { section: "250.25", evidence: "carried" },
};

/** An ungrounded or impedance-grounded derived system has no system bonding jumper. */
export const ungroundedDerived: ByEdition<Citation> = {
  "2008": { section: "250.30(B)", evidence: "memory" },
  "2011": { section: "250.30(B)", evidence: "single" },
  "2014": { section: "250.30(B)", evidence: "bracketed" },
  "2017": { section: "250.30(B)", evidence: "single" },
  "2020": { section: "250.30(B)", evidence: "single" },
  "2023": { section: "250.30(B)", evidence: "single" },
  "2026": { section: "250.30(B)", evidence: "carried" },
};

/** A building on a single branch circuit with an equipment grounding conductor needs no electrode. */
export const buildingOnBranchCircuit: ByEdition<Citation> = {
  "2008": { section: "250.32(A) Exception", evidence: "carried" },
  "2011": { section: "250.32(A) Exception", evidence: "single" },
  "2014": { section: "250.32(A) Exception", evidence: "bracketed" },
  "2017": { section: "250.32(A) Exception", evidence: "single" },
  "2020": { section: "250.32(A) Exception", evidence: "single" },
  "2023": { section: "250.32(A) Exception", evidence: "single" },
  "2026": { section: "250.32(A) Exception", evidence: "carried" },
};

/** A branch circuit that is no individual one has a rating of at most 50 A. Read in quotations that name 2011 and 2023. */
export const branchCircuitRating: ByEdition<Citation> = {
  "2008": { section: "210.3", evidence: "carried" },
  "2011": { section: "210.3", evidence: "carried" },
  "2014": { section: "210.3", evidence: "carried" },
  "2017": { section: "210.3", evidence: "carried" },
  "2020": { section: "210.18", evidence: "carried" },
  "2023": { section: "210.18", evidence: "carried" },
  "2026": { section: "210.18", evidence: "carried" },
};

/** An outdoor transformer of the service requires at least one more electrode connection, outside the building. */
export const outdoorTransformerElectrode: ByEdition<Citation> = {
  "2008": { section: "250.24(A)(2)", evidence: "carried" },
  "2011": { section: "250.24(A)(2)", evidence: "single" },
  "2014": { section: "250.24(A)(2)", evidence: "bracketed" },
  "2017": { section: "250.24(A)(2)", evidence: "single" },
  "2020": { section: "250.24(A)(2)", evidence: "single" },
  "2023": { section: "250.24(A)(2)", evidence: "single" },
  "2026": { section: "250.24(A)(2)", evidence: "carried" },
};

/** Structural metal that is intentionally grounded, as an electrode is, needs no bonding jumper of its own. Read in a quotation of 2005 only. */
export const structuralMetalGrounded: ByEdition<Citation> = {
  "2008": { section: "250.104(C)", evidence: "carried" },
  "2011": { section: "250.104(C)", evidence: "memory" },
  "2014": { section: "250.104(C)", evidence: "memory" },
  "2017": { section: "250.104(C)", evidence: "memory" },
  "2020": { section: "250.104(C)", evidence: "memory" },
  "2023": { section: "250.104(C)", evidence: "memory" },
  "2026": { section: "250.104(C)", evidence: "memory" },
};

/** A system is separately derived if its conductors have no direct connection to those of another source, save by grounding and bonding. */
export const separatelyDerivedDefinition: ByEdition<Citation> = {
  "2008": { section: "Article 100", evidence: "carried" },
  "2011": { section: "Article 100", evidence: "memory" },
  "2014": { section: "Article 100", evidence: "memory" },
  "2017": { section: "Article 100", evidence: "memory" },
  "2020": { section: "Article 100", evidence: "memory" },
  "2023": { section: "Article 100", evidence: "memory" },
  "2026": { section: "Article 100", evidence: "memory" },
};

/** A generator or other alternate source whose grounded conductor is solidly connected to that of a service is not separately derived: a transfer switch that does not switch it is the example. */
export const notSeparatelyDerived: ByEdition<Citation> = {
  "2008": { section: "250.20(D) FPN No. 1", evidence: "carried" },
  "2011": { section: "250.30 note", evidence: "single" },
  "2014": { section: "250.30 note", evidence: "bracketed" },
  "2017": { section: "250.30 note", evidence: "single" },
  "2020": { section: "250.30 note", evidence: "single" },
  "2023": { section: "250.30 note", evidence: "single" },
  "2026": { section: "250.30 note", evidence: "carried" },
};

/** A permanent generator that is not separately derived: jumpers on both sides of its overcurrent device in 2008; from 2011 a supply-side bonding jumper to the disconnect where that device is not integral. */
export const generatorJumpers: ByEdition<Citation> = {
  "2008": { section: "250.35(B)", evidence: "memory" },
  "2011": { section: "250.35(B)", evidence: "single" },
  "2014": { section: "250.35(B)", evidence: "bracketed" },
  "2017": { section: "250.35(B)", evidence: "single" },
  "2020": { section: "250.35(B)", evidence: "single" },
  "2023": { section: "250.35(B)", evidence: "single" },
  "2026": { section: "250.35(B)", evidence: "carried" },
};

/** A supply-side bonding jumper is sized by the ungrounded supply conductors. */
export const supplySideJumperSize: ByEdition<Citation> = {
  "2008": { section: "250.102(C)", evidence: "carried" },
  "2011": { section: "250.102(C)(1)", evidence: "single" },
  "2014": { section: "250.102(C)(1)", evidence: "bracketed" },
  "2017": { section: "250.102(C)(1)", evidence: "single" },
  "2020": { section: "250.102(C)(1)", evidence: "single" },
  "2023": { section: "250.102(C)(1)", evidence: "single" },
  "2026": { section: "250.102(C)(1)", evidence: "carried" },
};

/** Beyond an overcurrent device an equipment grounding conductor is sized by the device. */
export const equipmentGroundingByDevice: ByEdition<Citation> = {
  "2008": { section: "250.122(A)", evidence: "carried" },
  "2011": { section: "250.122(A)", evidence: "single" },
  "2014": { section: "250.122(A)", evidence: "bracketed" },
  "2017": { section: "250.122(A)", evidence: "single" },
  "2020": { section: "250.122(A)", evidence: "single" },
  "2023": { section: "250.122(A)", evidence: "single" },
  "2026": { section: "250.122(A)", evidence: "carried" },
};

/** An equipment bonding jumper on the load side is sized as an equipment grounding conductor. */
export const loadSideJumper: ByEdition<Citation> = {
  "2008": { section: "250.102(D)", evidence: "single" },
  "2011": { section: "250.102(D)", evidence: "single" },
  "2014": { section: "250.102(D)", evidence: "bracketed" },
  "2017": { section: "250.102(D)", evidence: "single" },
  "2020": { section: "250.102(D)", evidence: "single" },
  "2023": { section: "250.102(D)", evidence: "single" },
  "2026": { section: "250.102(D)", evidence: "carried" },
};

/** Bonding jumpers join the electrodes. */
export const electrodeBonding: ByEdition<Citation> = {
  "2008": { section: "250.53(C)", evidence: "carried" },
  "2011": { section: "250.53(C)", evidence: "single" },
  "2014": { section: "250.53(C)", evidence: "bracketed" },
  "2017": { section: "250.53(C)", evidence: "single" },
  "2020": { section: "250.53(C)", evidence: "single" },
  "2023": { section: "250.53(C)", evidence: "single" },
  "2026": { section: "250.53(C)", evidence: "carried" },
};

/** Metal water piping and structural metal in the area of a separately derived system are bonded at the point of its electrode conductor. */
export const derivedPipingAndMetal: ByEdition<Citation> = {
  "2008": { section: "250.104(D)", evidence: "carried" },
  "2011": { section: "250.104(D)", evidence: "single" },
  "2014": { section: "250.104(D)", evidence: "bracketed" },
  "2017": { section: "250.104(D)", evidence: "single" },
  "2020": { section: "250.104(D)", evidence: "single" },
  "2023": { section: "250.104(D)", evidence: "single" },
  "2026": { section: "250.104(D)", evidence: "carried" },
};

/** Metal water piping is bonded to the service. */
export const serviceWaterPiping: ByEdition<Citation> = {
  "2008": { section: "250.104(A)(1)", evidence: "carried" },
  "2011": { section: "250.104(A)(1)", evidence: "single" },
  "2014": { section: "250.104(A)(1)", evidence: "bracketed" },
  "2017": { section: "250.104(A)(1)", evidence: "single" },
  "2020": { section: "250.104(A)(1)", evidence: "single" },
  "2023": { section: "250.104(A)(1)", evidence: "single" },
  "2026": { section: "250.104(A)(1)", evidence: "carried" },
};

/** Exposed structural metal is bonded to the service. */
export const serviceStructuralMetal: ByEdition<Citation> = {
  "2008": { section: "250.104(C)", evidence: "carried" },
  "2011": { section: "250.104(C)", evidence: "single" },
  "2014": { section: "250.104(C)", evidence: "bracketed" },
  "2017": { section: "250.104(C)", evidence: "single" },
  "2020": { section: "250.104(C)", evidence: "single" },
  "2023": { section: "250.104(C)", evidence: "single" },
  "2026": { section: "250.104(C)", evidence: "carried" },
};

/** An ungrounded derived system: the electrode conductor goes from the metal enclosures, at any point from source to first disconnect, to the electrode. */
export const ungroundedDerivedElectrode: ByEdition<Citation> = {
  "2008": { section: "250.30(B)(1)", evidence: "memory" },
  "2011": { section: "250.30(B)(1)", evidence: "single" },
  "2014": { section: "250.30(B)(1)", evidence: "bracketed" },
  "2017": { section: "250.30(B)(1)", evidence: "single" },
  "2020": { section: "250.30(B)(1)", evidence: "single" },
  "2023": { section: "250.30(B)(1)", evidence: "single" },
  "2026": { section: "250.30(B)(1)", evidence: "carried" },
};

/** An ungrounded derived system: a supply-side bonding jumper from source to first disconnect, not required above the derived conductors. */
export const ungroundedDerivedSupplySide: ByEdition<Citation> = {
  "2008": { section: "250.30(B)(3)", evidence: "memory" },
  "2011": { section: "250.30(B)(3)", evidence: "single" },
  "2014": { section: "250.30(B)(3)", evidence: "bracketed" },
  "2017": { section: "250.30(B)(3)", evidence: "single" },
  "2020": { section: "250.30(B)(3)", evidence: "single" },
  "2023": { section: "250.30(B)(3)", evidence: "single" },
  "2026": { section: "250.30(B)(3)", evidence: "carried" },
};

/** An impedance-grounded system has no connection to ground but that through its impedance. */
export const impedanceNoOtherConnection: ByEdition<Citation> = {
  "2008": { section: "250.36(C)", evidence: "carried" },
  "2011": { section: "250.36(C)", evidence: "single" },
  "2014": { section: "250.36(C)", evidence: "bracketed" },
  "2017": { section: "250.36(C)", evidence: "single" },
  "2020": { section: "250.36(C)", evidence: "single" },
  "2023": { section: "250.36(C)", evidence: "single" },
  "2026": { section: "250.36(C)", evidence: "carried" },
};

/** The electrode conductor of an impedance-grounded system goes from the grounded side of the impedance to the equipment grounding connection of the first disconnect, at any point. */
export const impedanceElectrode: ByEdition<Citation> = {
  "2008": { section: "250.36(F)", evidence: "carried" },
  "2011": { section: "250.36(F)", evidence: "single" },
  "2014": { section: "250.36(F)", evidence: "bracketed" },
  "2017": { section: "250.36(F)", evidence: "single" },
  "2020": { section: "250.36(F)", evidence: "single" },
  "2023": { section: "250.36(F)", evidence: "single" },
  "2026": { section: "250.36(F)", evidence: "carried" },
};

/** A meter disconnect lies ahead of the service disconnect and is not service equipment. */
export const meterDisconnect: ByEdition<Citation> = {
  "2008": { section: "230.82(3)", evidence: "memory" },
  "2011": { section: "230.82(3)", evidence: "memory" },
  "2014": { section: "230.82(3)", evidence: "memory" },
  "2017": { section: "230.82(3)", evidence: "single" },
  "2020": { section: "230.82(3)", evidence: "single" },
  "2023": { section: "230.82(3)", evidence: "single" },
  "2026": { section: "230.82(3)", evidence: "carried" },
};

/** An outdoor emergency disconnect may be the service disconnect; before 2020 no rule names emergency disconnects. */
export const emergencyDisconnectAsService: ByEdition<Citation> = {
  "2008": { section: "230.70", evidence: "memory" },
  "2011": { section: "230.70", evidence: "memory" },
  "2014": { section: "230.70", evidence: "memory" },
  "2017": { section: "230.70", evidence: "memory" },
  "2020": { section: "230.85(1)", evidence: "single" },
  "2023": { section: "230.85(B)(1)", evidence: "single" },
  "2026": { section: "230.85(B)(1)", evidence: "carried" },
};

/** An outdoor emergency disconnect that is not service equipment lies ahead of the service disconnect, as a meter disconnect does; before 2020 no rule names emergency disconnects. */
export const emergencyDisconnectAhead: ByEdition<Citation> = {
  "2008": { section: "230.70", evidence: "memory" },
  "2011": { section: "230.70", evidence: "memory" },
  "2014": { section: "230.70", evidence: "memory" },
  "2017": { section: "230.70", evidence: "memory" },
  "2020": { section: "230.85(2), (3)", evidence: "single" },
  "2023": { section: "230.85(B)(2), (B)(3)", evidence: "single" },
  "2026": { section: "230.85(B)(2), (B)(3)", evidence: "carried" },
};

/** The jumper from the equipment grounding conductors to the grounded side of a grounding impedance. */
export const impedanceJumper: ByEdition<Citation> = {
  "2008": { section: "250.36(E)", evidence: "carried" },
  "2011": { section: "250.36(E)", evidence: "single" },
  "2014": { section: "250.36(E)", evidence: "bracketed" },
  "2017": { section: "250.36(E)", evidence: "single" },
  "2020": { section: "250.36(E)", evidence: "single" },
  "2023": { section: "250.36(E)", evidence: "single" },
  "2026": { section: "250.36(E)", evidence: "carried" },
};

/** Where aluminum and copper-clad aluminum electrode conductors may not run or end. */
export const aluminumElectrodeConductor: ByEdition<Citation> = {
  "2008": { section: "250.64(A)", evidence: "carried" },
  "2011": { section: "250.64(A)", evidence: "single" },
  "2014": { section: "250.64(A)", evidence: "bracketed" },
  "2017": { section: "250.64(A)", evidence: "single" },
  "2020": { section: "250.64(A)", evidence: "single" },
  "2023": { section: "250.64(A)", evidence: "single" },
  "2026": { section: "250.64(A)", evidence: "carried" },
};

/** Not required larger to a rod, pipe or plate than the size named. */
export const rodElectrodeCeiling: ByEdition<Citation> = {
  "2008": { section: "250.66(A)", evidence: "carried" },
  "2011": { section: "250.66(A)", evidence: "single" },
  "2014": { section: "250.66(A)", evidence: "bracketed" },
  "2017": { section: "250.66(A)", evidence: "single" },
  "2020": { section: "250.66(A)", evidence: "single" },
  "2023": { section: "250.66(A)", evidence: "single" },
  "2026": { section: "250.66(A)", evidence: "carried" },
};

/** A common electrode conductor with a tap into every enclosure. */
export const serviceElectrodeCommon: ByEdition<Citation> = {
  "2008": { section: "250.64(D)", evidence: "memory" },
  "2011": { section: "250.64(D)(1)", evidence: "single" },
  "2014": { section: "250.64(D)(1)", evidence: "bracketed" },
  "2017": { section: "250.64(D)(1)", evidence: "single" },
  "2020": { section: "250.64(D)(1)", evidence: "single" },
  "2023": { section: "250.64(D)(1)", evidence: "single" },
  "2026": { section: "250.64(D)(1)", evidence: "carried" },
};

/** An electrode conductor from every enclosure. */
export const serviceElectrodeIndividual: ByEdition<Citation> = {
  "2008": { section: "250.64(D)", evidence: "memory" },
  "2011": { section: "250.64(D)(2)", evidence: "single" },
  "2014": { section: "250.64(D)(2)", evidence: "bracketed" },
  "2017": { section: "250.64(D)(2)", evidence: "single" },
  "2020": { section: "250.64(D)(2)", evidence: "single" },
  "2023": { section: "250.64(D)(2)", evidence: "single" },
  "2026": { section: "250.64(D)(2)", evidence: "carried" },
};

/** One electrode conductor from a wireway or other accessible enclosure on the supply side of the disconnects. */
export const serviceElectrodeOnePlace: ByEdition<Citation> = {
  "2008": { section: "250.64(D)", evidence: "memory" },
  "2011": { section: "250.64(D)(3)", evidence: "single" },
  "2014": { section: "250.64(D)(3)", evidence: "bracketed" },
  "2017": { section: "250.64(D)(3)", evidence: "single" },
  "2020": { section: "250.64(D)(3)", evidence: "single" },
  "2023": { section: "250.64(D)(3)", evidence: "single" },
  "2026": { section: "250.64(D)(3)", evidence: "carried" },
};

/** No tap to a common electrode conductor for a small control transformer. */
export const controlTransformerTap: ByEdition<Citation> = {
  "2008": { section: "250.30(A)(4) Exception No. 2", evidence: "memory" },
  "2011": { section: "250.30(A)(6) Exception No. 2", evidence: "single" },
  "2014": { section: "250.30(A)(6) Exception No. 2", evidence: "bracketed" },
  "2017": { section: "250.30(A)(6) Exception No. 2", evidence: "single" },
  "2020": { section: "250.30(A)(6) Exception No. 2", evidence: "single" },
  "2023": { section: "250.30(A)(6) Exception No. 2", evidence: "single" },
  "2026": { section: "250.30(A)(6) Exception No. 2", evidence: "carried" },
};

/** Without service-entrance conductors the electrode conductor follows from the conductors that the load would require. */
export const noServiceConductorsElectrode: ByEdition<Citation> = {
  "2008": { section: "Table 250.66 note 2", evidence: "carried" },
  "2011": { section: "Table 250.66 note 2", evidence: "single" },
  "2014": { section: "Table 250.66 note 2", evidence: "bracketed" },
  "2017": { section: "Table 250.66 note 2", evidence: "single" },
  "2020": { section: "Table 250.66 note 2", evidence: "bracketed" },
  "2023": { section: "Table 250.66 note 2", evidence: "single" },
  "2026": { section: "Table 250.66 note 2", evidence: "carried" },
};

/** One supply-side bonding jumper for several raceways or cables: sized as the one of a single raceway is, from all of their conductors. */
export const supplySideJumperSeveralRaceways: ByEdition<Citation> = {
  "2008": { section: "250.102(C)", evidence: "memory" },
  "2011": { section: "250.102(C)(2)", evidence: "memory" },
  "2014": { section: "250.102(C)(2)", evidence: "memory" },
  "2017": { section: "250.102(C)(2)", evidence: "single" },
  "2020": { section: "250.102(C)(2)", evidence: "single" },
  "2023": { section: "250.102(C)(2)", evidence: "single" },
  "2026": { section: "250.102(C)(2)", evidence: "carried" },
};

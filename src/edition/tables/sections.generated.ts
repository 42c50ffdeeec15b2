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

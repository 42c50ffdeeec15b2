// Generated from shape.ts by "npm run generate"; do not edit.

import { readCode } from "../../edition/read-code.js";
import type { Code } from "../../edition/shape.generated.js";
import type { Shape } from "../../input/shapes.js";
import type { Electrode, WantedWire } from "../../rules/shape.generated.js";
import { electrodeShape, wantedWireShape } from "../../rules/shape.generated.js";
import { readSupply } from "../../supply/read.js";
import type { Supply } from "../../supply/shape.generated.js";

/** The common conductor of several separately derived systems, whose size is fixed: it names no supply. */
export interface CommonOfDerivedSystems {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** Several separately derived systems. */
  readonly system: "separately-derived";
  /** The common conductor. */
  readonly part: "common";
  /** The conductor to be sized. */
  readonly conductor: WantedWire;
  /** All electrodes that are present: the exception from 2020 on speaks of those, not only of the ones on this conductor. */
  readonly electrodes: readonly Electrode[];
}

export const commonOfDerivedSystemsShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    system: { is: "exactly", value: "separately-derived" },
    part: { is: "exactly", value: "common" },
    conductor: wantedWireShape,
    electrodes: { is: "list", of: electrodeShape, least: 1, most: 2000 },
  },
};

/** A grounding electrode conductor that is sized from the ungrounded conductors. */
export interface ElectrodeConductorOfSupply {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** What it grounds: a service, a separately derived system, or a building or structure on a feeder. */
  readonly system: "service" | "separately-derived" | "building";
  /** The ungrounded conductors: to the disconnect or enclosure it serves, or all of them for a common conductor. */
  readonly supply: Supply;
  /** The conductor to be sized. */
  readonly conductor: WantedWire;
  /** Every electrode that this conductor serves, also those beyond the first, in any order. */
  readonly electrodes: readonly Electrode[];
  /** Which part it is: the only conductor, an individual one of an enclosure or the one from a place ahead of several (only), the common conductor of several enclosures, or the tap of one enclosure or system. The only one by default. */
  readonly part?: "only" | "common" | "tap";
  /** For the common conductor of a service: whether the conductors to the enclosures connect directly to the drop, lateral or service conductors. Corresponding conductors are then added instead of each set's largest (Table 250.66 note 1). */
  readonly fromDrop?: boolean;
  /** Whether the system has no grounded conductor. The size is the same; another section requires it. */
  readonly ungrounded?: boolean;
  /** Whether the system is grounded through an impedance. The size is the same; another section says where it starts. */
  readonly impedance?: boolean;
  /** Whether the source is a transformer of at most 1000 VA for Class 1, 2 or 3 circuits whose frame is bonded to its grounded conductor as the exception requires; none is then required. Conductors for more than 100 A belong to no such transformer and are refused, and an ungrounded system has no conductor to bond. */
  readonly controlTransformer?: boolean;
  /** Whether one branch circuit, a multiwire one included, supplies the building and brings an equipment grounding conductor; none is then required. Conductors larger than a circuit of 50 A has get a caution. */
  readonly onSingleBranchCircuit?: boolean;
}

export const electrodeConductorOfSupplyShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    system: { is: "words", of: ["service", "separately-derived", "building"] },
    supply: { is: "checked", read: readSupply },
    conductor: wantedWireShape,
    electrodes: { is: "list", of: electrodeShape, least: 1, most: 2000 },
    part: { is: "words", of: ["only", "common", "tap"] },
    fromDrop: { is: "flag", says: "whether the conductors connect directly to the drop or lateral" },
    ungrounded: { is: "flag", says: "whether the system has no grounded conductor" },
    impedance: { is: "flag", says: "whether the system is grounded through an impedance" },
    controlTransformer: { is: "flag", says: "whether this is a small control transformer" },
    onSingleBranchCircuit: { is: "flag", says: "whether one branch circuit supplies the building" },
  },
  optional: ["part", "fromDrop", "ungrounded", "impedance", "controlTransformer", "onSingleBranchCircuit"],
};

/** A grounding electrode conductor to be sized. */
export type GroundingElectrodeConductorInput =
  | ElectrodeConductorOfSupply
  | (CommonOfDerivedSystems & {
      readonly supply?: never;
      readonly fromDrop?: never;
      readonly ungrounded?: never;
      readonly impedance?: never;
      readonly controlTransformer?: never;
      readonly onSingleBranchCircuit?: never;
    });

export const groundingElectrodeConductorInputShape: Shape = {
  is: "variants",
  of: [
    {
      is: "object",
      members: {
        code: { is: "checked", read: readCode },
        system: { is: "words", of: ["service", "separately-derived", "building"] },
        supply: { is: "checked", read: readSupply },
        conductor: wantedWireShape,
        electrodes: { is: "list", of: electrodeShape, least: 1, most: 2000 },
        part: { is: "words", of: ["only", "common", "tap"] },
        fromDrop: { is: "flag", says: "whether the conductors connect directly to the drop or lateral" },
        ungrounded: { is: "flag", says: "whether the system has no grounded conductor" },
        impedance: { is: "flag", says: "whether the system is grounded through an impedance" },
        controlTransformer: { is: "flag", says: "whether this is a small control transformer" },
        onSingleBranchCircuit: { is: "flag", says: "whether one branch circuit supplies the building" },
      },
      optional: [
        "part",
        "fromDrop",
        "ungrounded",
        "impedance",
        "controlTransformer",
        "onSingleBranchCircuit",
      ],
    },
    {
      is: "object",
      members: {
        code: { is: "checked", read: readCode },
        system: { is: "exactly", value: "separately-derived" },
        part: { is: "exactly", value: "common" },
        conductor: wantedWireShape,
        electrodes: { is: "list", of: electrodeShape, least: 1, most: 2000 },
      },
    },
  ],
};

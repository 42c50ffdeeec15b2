// Generated from shape.ts by "npm run generate"; do not edit.
import type { TemperatureColumn } from "../../ampacity/shape.generated.js";
import { temperatureColumnShape } from "../../ampacity/shape.generated.js";
import { readCode } from "../../edition/read-code.js";
import type { Code } from "../../edition/shape.generated.js";
import type { Shape } from "../../input/shapes.js";
import type { Electrode, SystemKind, WantedConductor, WantedWire } from "../../rules/shape.generated.js";
import {
  electrodeShape,
  systemKindShape,
  wantedConductorShape,
  wantedWireShape,
} from "../../rules/shape.generated.js";
import { readSupply } from "../../supply/read.js";
import type { Supply } from "../../supply/shape.generated.js";

/** A disconnecting means with its enclosure, a raceway, or a wireway ahead of several, with the ungrounded conductors to it. */
export interface SuppliedPlace {
  /** Name on the drawing; unique within a question. */
  readonly id: string;
  /** The ungrounded conductors to it. */
  readonly supply: Supply;
}

export const suppliedPlaceShape: Shape = {
  is: "object",
  members: {
    id: { is: "name", says: "this place, as on the drawing" },
    supply: { is: "checked", read: readSupply },
  },
};

/** Electrode conductors of several separately derived systems. */
export interface DerivedElectrodesInput {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** Material of every conductor and tap. */
  readonly conductor: WantedWire;
  /** The electrodes of the building, all of them served by every conductor. */
  readonly electrodes: readonly Electrode[];
  /** Several separately derived systems. */
  readonly system: "separately-derived";
  /** The systems, each with its derived ungrounded conductors. */
  readonly systems: readonly SuppliedPlace[];
}

export const derivedElectrodesInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    conductor: wantedWireShape,
    electrodes: { is: "list", of: electrodeShape, least: 1, most: 2000 },
    system: { is: "exactly", value: "separately-derived" },
    systems: { is: "list", of: suppliedPlaceShape, least: 1, most: 2000 },
  },
};

/** The source of a separately derived system. */
export interface DerivedSource {
  /** Name on the drawing. */
  readonly id: string;
  /** Whether the source stands outside the building that it supplies. */
  readonly outdoors: boolean;
}

export const derivedSourceShape: Shape = {
  is: "object",
  members: {
    id: { is: "name", says: "the source, as on the drawing" },
    outdoors: { is: "flag", says: "whether the source stands outdoors" },
  },
};

/** Several places that are connected to the electrodes. */
export type ElectrodeConductorsInput = EnclosureElectrodesInput | DerivedElectrodesInput;

export const electrodeConductorsInputShape: Shape = {
  is: "variants",
  by: "system",
  of: [
    {
      is: "object",
      members: {
        code: { is: "checked", read: readCode },
        conductor: wantedWireShape,
        electrodes: { is: "list", of: electrodeShape, least: 1, most: 2000 },
        system: { is: "words", of: ["service", "building"] },
        enclosures: { is: "list", of: suppliedPlaceShape, least: 1, most: 2000 },
        wireway: suppliedPlaceShape,
        fromDrop: { is: "flag", says: "whether the conductors connect directly to the drop or lateral" },
      },
      optional: ["wireway", "fromDrop"],
    },
    {
      is: "object",
      members: {
        code: { is: "checked", read: readCode },
        conductor: wantedWireShape,
        electrodes: { is: "list", of: electrodeShape, least: 1, most: 2000 },
        system: { is: "exactly", value: "separately-derived" },
        systems: { is: "list", of: suppliedPlaceShape, least: 1, most: 2000 },
      },
    },
  ],
};

/** Electrode conductors of a service, or of a building on a feeder, with one enclosure or several. */
export interface EnclosureElectrodesInput {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** Material of every conductor and tap. */
  readonly conductor: WantedWire;
  /** The electrodes of the building, all of them served by every conductor. */
  readonly electrodes: readonly Electrode[];
  /** What the enclosures belong to. */
  readonly system: "service" | "building";
  /** The enclosures of the disconnects, each with the ungrounded conductors to it. */
  readonly enclosures: readonly SuppliedPlace[];
  /** An accessible wireway or enclosure ahead of them, with the conductors there; all those of the enclosures by default. */
  readonly wireway?: SuppliedPlace;
  /** Whether the conductors to the enclosures of a service connect directly to the drop, lateral or service conductors. */
  readonly fromDrop?: boolean;
}

export const enclosureElectrodesInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    conductor: wantedWireShape,
    electrodes: { is: "list", of: electrodeShape, least: 1, most: 2000 },
    system: { is: "words", of: ["service", "building"] },
    enclosures: { is: "list", of: suppliedPlaceShape, least: 1, most: 2000 },
    wireway: suppliedPlaceShape,
    fromDrop: { is: "flag", says: "whether the conductors connect directly to the drop or lateral" },
  },
  optional: ["wireway", "fromDrop"],
};

/** A service with one enclosure or several, whose main bonding jumpers are to be arranged. */
export interface MainJumpersInput {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** The enclosures of the disconnects, each with the ungrounded conductors to it. */
  readonly enclosures: readonly SuppliedPlace[];
  /** A wireway, gutter or box ahead of the enclosures, with all the conductors that supply it. */
  readonly wireway?: SuppliedPlace;
  /** The conductor to be sized. */
  readonly conductor: WantedConductor;
  /** Temperature column in which conductors of another material are matched; 75 C by default. */
  readonly temperature?: TemperatureColumn;
}

export const mainJumpersInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    enclosures: { is: "list", of: suppliedPlaceShape, least: 1, most: 2000 },
    wireway: suppliedPlaceShape,
    conductor: wantedConductorShape,
    temperature: temperatureColumnShape,
  },
  optional: ["wireway", "temperature"],
};

/** Metal raceways that end together, whose supply-side bonding jumpers are to be arranged. */
export interface RacewayJumpersInput {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** A service by default. */
  readonly system?: SystemKind;
  /** The raceways, each with the ungrounded conductors in it. */
  readonly raceways: readonly SuppliedPlace[];
  /** The conductor to be sized. */
  readonly conductor: WantedConductor;
  /** Temperature column in which conductors of another material are matched; 75 C by default. */
  readonly temperature?: TemperatureColumn;
}

export const racewayJumpersInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    system: systemKindShape,
    raceways: { is: "list", of: suppliedPlaceShape, least: 1, most: 2000 },
    conductor: wantedConductorShape,
    temperature: temperatureColumnShape,
  },
  optional: ["system", "temperature"],
};

/** A separately derived system that feeds one enclosure or several, whose system bonding jumpers are to be arranged. */
export interface SystemJumpersInput {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** The source. */
  readonly source: DerivedSource;
  /** The enclosures of the disconnects, each with the ungrounded conductors to it. */
  readonly enclosures: readonly SuppliedPlace[];
  /** The conductor to be sized. */
  readonly conductor: WantedConductor;
  /** Temperature column in which conductors of another material are matched; 75 C by default. */
  readonly temperature?: TemperatureColumn;
}

export const systemJumpersInputShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    source: derivedSourceShape,
    enclosures: { is: "list", of: suppliedPlaceShape, least: 1, most: 2000 },
    conductor: wantedConductorShape,
    temperature: temperatureColumnShape,
  },
  optional: ["temperature"],
};

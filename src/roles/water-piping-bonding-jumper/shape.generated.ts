// Generated from shape.ts by "npm run generate"; do not edit.

import { readCode } from "../../edition/read-code.js";
import type { Code } from "../../edition/shape.generated.js";
import type { Shape } from "../../input/shapes.js";
import type { WantedWire } from "../../rules/shape.generated.js";
import { wantedWireShape } from "../../rules/shape.generated.js";
import { readSupply } from "../../supply/read.js";
import type { Supply } from "../../supply/shape.generated.js";

/** Metal water piping in a building or structure that a feeder supplies. */
export interface PipingOfBuilding {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** Piping in a building or structure that a feeder supplies. */
  readonly system: "building";
  /** Ungrounded conductors of the feeder. */
  readonly supply: Supply;
  /** Rating in amperes of the device that protects the feeder; it decides from 2020. */
  readonly deviceAmperes?: number;
  /** The conductor to be sized. */
  readonly conductor: WantedWire;
}

export const pipingOfBuildingShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    system: { is: "exactly", value: "building" },
    supply: { is: "checked", read: readSupply },
    deviceAmperes: { is: "number", unit: "amperes" },
    conductor: wantedWireShape,
  },
  optional: ["deviceAmperes"],
};

/** Metal water piping in the area of a separately derived system. */
export interface PipingOfDerivedSystem {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** Piping in the area of a separately derived system. */
  readonly system: "separately-derived";
  /** Ungrounded conductors of the derived system. */
  readonly supply: Supply;
  /** The conductor to be sized. */
  readonly conductor: WantedWire;
  /** Whether the piping is itself the electrode of the derived system, which then needs no further jumper to it. */
  readonly isElectrode?: boolean;
}

export const pipingOfDerivedSystemShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    system: { is: "exactly", value: "separately-derived" },
    supply: { is: "checked", read: readSupply },
    conductor: wantedWireShape,
    isElectrode: { is: "flag", says: "whether the piping is itself the electrode" },
  },
  optional: ["isElectrode"],
};

/** Metal water piping of one occupancy, isolated from that of the others. */
export interface PipingOfOccupancy {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** Piping of one occupancy, isolated from that of the others. */
  readonly system: "occupancy";
  /** Rating in amperes of the device that supplies the occupancy. */
  readonly deviceAmperes: number;
  /** The conductor to be sized. */
  readonly conductor: WantedWire;
}

export const pipingOfOccupancyShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    system: { is: "exactly", value: "occupancy" },
    deviceAmperes: { is: "number", unit: "amperes" },
    conductor: wantedWireShape,
  },
};

/** Metal water piping in the area of a service. */
export interface PipingOfService {
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** Piping in the area of a service. */
  readonly system: "service";
  /** Ungrounded conductors of the service. */
  readonly supply: Supply;
  /** The conductor to be sized. */
  readonly conductor: WantedWire;
}

export const pipingOfServiceShape: Shape = {
  is: "object",
  members: {
    code: { is: "checked", read: readCode },
    system: { is: "exactly", value: "service" },
    supply: { is: "checked", read: readSupply },
    conductor: wantedWireShape,
  },
};

/** A bonding jumper to metal water piping. */
export type WaterPipingBondingJumperInput =
  | PipingOfService
  | PipingOfDerivedSystem
  | PipingOfBuilding
  | PipingOfOccupancy;

export const waterPipingBondingJumperInputShape: Shape = {
  is: "variants",
  by: "system",
  of: [
    {
      is: "object",
      members: {
        code: { is: "checked", read: readCode },
        system: { is: "exactly", value: "service" },
        supply: { is: "checked", read: readSupply },
        conductor: wantedWireShape,
      },
    },
    {
      is: "object",
      members: {
        code: { is: "checked", read: readCode },
        system: { is: "exactly", value: "separately-derived" },
        supply: { is: "checked", read: readSupply },
        conductor: wantedWireShape,
        isElectrode: { is: "flag", says: "whether the piping is itself the electrode" },
      },
      optional: ["isElectrode"],
    },
    {
      is: "object",
      members: {
        code: { is: "checked", read: readCode },
        system: { is: "exactly", value: "building" },
        supply: { is: "checked", read: readSupply },
        deviceAmperes: { is: "number", unit: "amperes" },
        conductor: wantedWireShape,
      },
      optional: ["deviceAmperes"],
    },
    {
      is: "object",
      members: {
        code: { is: "checked", read: readCode },
        system: { is: "exactly", value: "occupancy" },
        deviceAmperes: { is: "number", unit: "amperes" },
        conductor: wantedWireShape,
      },
    },
  ],
};

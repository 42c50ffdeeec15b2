// Generated from shape.ts by "npm run generate"; do not edit.
import type { EditionYear } from "../../edition/edition-year.js";
import type { Shape } from "../../input/shapes.js";

/** What the conductors end in: one device, or equipment with several. */
export type ConductorEnding =
  | (OneDevice & { readonly devices?: never; readonly equipment?: never })
  | (SeveralDevices & { readonly device?: never });

export const conductorEndingShape: Shape = {
  is: "variants",
  of: [
    { is: "object", members: { device: { is: "number", unit: "amperes" } } },
    {
      is: "object",
      members: {
        devices: { is: "list", of: { is: "number", unit: "amperes" }, least: 1, most: 100 },
        equipment: { is: "number", unit: "amperes" },
      },
    },
  ],
};

/** A manufacturing building with a high bay. */
export interface HighBay {
  /** Height of the building at its walls, in feet. */
  readonly wallFeet: number;
  /** How much of the tap runs horizontally, in feet. */
  readonly horizontalFeet: number;
  /** Height above the floor at which the tap is made, in feet. */
  readonly aboveFloorFeet: number;
  /** Whether maintenance and supervision ensure that only qualified persons service the systems. */
  readonly qualified: boolean;
  /** Whether the tap has no splice and passes through no wall, floor or ceiling. */
  readonly unspliced: boolean;
}

export const highBayShape: Shape = {
  is: "object",
  members: {
    wallFeet: { is: "number", unit: "feet" },
    horizontalFeet: { is: "number", unit: "feet", orZero: true },
    aboveFloorFeet: { is: "number", unit: "feet" },
    qualified: { is: "flag", says: "whether only qualified persons service the systems" },
    unspliced: { is: "flag", says: "whether the tap is without splice and passes no wall, floor or ceiling" },
  },
};

/** The transformer that a tap supplies. */
export interface TappedTransformer {
  /** Volts of the primary, from line to line. */
  readonly primaryVolts: number;
  /** Volts of the secondary, from line to line. */
  readonly secondaryVolts: number;
  /** Length of the secondary conductors to their device, in feet. */
  readonly secondaryFeet: number;
}

export const tappedTransformerShape: Shape = {
  is: "object",
  members: {
    primaryVolts: { is: "between", unit: "volts", least: 1, most: 1000000 },
    secondaryVolts: { is: "between", unit: "volts", least: 1, most: 1000000 },
    secondaryFeet: { is: "number", unit: "feet", orZero: true },
  },
};

/** Conductors tapped to a feeder, and where they end. */
export interface FeederTapQuestion {
  /** Edition whose rules are used. */
  readonly edition: EditionYear;
  /** Amperes of the device that protects the feeder. */
  readonly feederDevice: number;
  /** Length of the tap in feet, less any part of a transformer's primary that is protected at its ampacity. */
  readonly feet: number;
  /** Outside where the conductors run outdoors except at the point of load termination. */
  readonly place: "inside" | "outside";
  /** What the conductors end in: one device, or equipment with several. */
  readonly endsIn: ConductorEnding;
  /** Calculated load that the conductors supply, in amperes; 0 where it is not known. */
  readonly load: number;
  /** Whether the conductors are installed in the field and leave the enclosure or vault in which they begin; they do by default. */
  readonly leavesEnclosure?: boolean;
  /** A manufacturing building with a high bay. */
  readonly highBay?: HighBay;
  /** The transformer that a tap supplies. */
  readonly transformer?: TappedTransformer;
}

export const feederTapQuestionShape: Shape = {
  is: "object",
  members: {
    edition: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
    feederDevice: { is: "number", unit: "amperes" },
    feet: { is: "number", unit: "feet" },
    place: { is: "words", of: ["inside", "outside"] },
    endsIn: conductorEndingShape,
    load: { is: "number", unit: "amperes", orZero: true },
    leavesEnclosure: {
      is: "flag",
      says: "whether the conductors leave the enclosure or vault in which they begin",
    },
    highBay: highBayShape,
    transformer: tappedTransformerShape,
  },
  optional: ["leavesEnclosure", "highBay", "transformer"],
};

/** One circuit breaker or one set of fuses at the end. */
export interface OneDevice {
  /** Amperes of the device. */
  readonly device: number;
}

export const oneDeviceShape: Shape = { is: "object", members: { device: { is: "number", unit: "amperes" } } };

/** A transformer: its nameplate, and the two connections whose secondary conductors the primary device may protect. */
export interface ProtectedTransformer {
  /** Apparent power in kilovolt-amperes, from 0.001 to 10,000,000. */
  readonly kva: number;
  /** Volts of the primary, from line to line; through 1000. */
  readonly primaryVolts: number;
  /** Volts of the secondary, from line to line; through 1000. */
  readonly secondaryVolts: number;
  /** Phases of the transformer. */
  readonly phases: 1 | 3;
  /** Whether the secondary is single-phase two-wire at one voltage, or delta-delta three-wire at one voltage; all others are other. */
  readonly windings: "two-wire-secondary" | "delta-delta-three-wire" | "other";
}

export const protectedTransformerShape: Shape = {
  is: "object",
  members: {
    kva: { is: "between", unit: "kilovolt-amperes", least: 0.001, most: 10000000 },
    primaryVolts: {
      is: "between",
      unit: "volts",
      least: 1,
      most: 1000,
      advice: "the table for higher voltages is not here",
    },
    secondaryVolts: {
      is: "between",
      unit: "volts",
      least: 1,
      most: 1000,
      advice: "the table for higher voltages is not here",
    },
    phases: { is: "numbers", unit: "phases of the transformer", of: [1, 3] },
    windings: { is: "words", of: ["two-wire-secondary", "delta-delta-three-wire", "other"] },
  },
};

/** The secondary conductors. Without endsIn they end in one device, the largest that the table permits. */
export interface SecondaryConductors {
  /** Length of the secondary conductors in feet. */
  readonly feet: number;
  /** Outside where the conductors run outdoors except at the point of load termination. */
  readonly place: "inside" | "outside";
  /** What the conductors end in: one device, or equipment with several. */
  readonly endsIn?: ConductorEnding;
  /** Calculated load that the conductors supply, in amperes; 0 where it is not known. */
  readonly load: number;
  /** Whether the conductors are installed in the field and leave the enclosure or vault in which they begin; they do by default. */
  readonly leavesEnclosure?: boolean;
  /** Whether the installation is industrial and only qualified persons service the systems; not by default. */
  readonly industrial?: boolean;
}

export const secondaryConductorsShape: Shape = {
  is: "object",
  members: {
    feet: { is: "number", unit: "feet" },
    place: { is: "words", of: ["inside", "outside"] },
    endsIn: conductorEndingShape,
    load: { is: "number", unit: "amperes", orZero: true },
    leavesEnclosure: {
      is: "flag",
      says: "whether the conductors leave the enclosure or vault in which they begin",
    },
    industrial: {
      is: "flag",
      says: "whether the installation is industrial and only qualified persons service the systems",
    },
  },
  optional: ["endsIn", "leavesEnclosure", "industrial"],
};

/** Several devices at the end, in one piece of equipment. */
export interface SeveralDevices {
  /** Amperes of each device. */
  readonly devices: readonly number[];
  /** Rating of the equipment that holds the devices, in amperes, such as the bus of a panelboard. */
  readonly equipment: number;
}

export const severalDevicesShape: Shape = {
  is: "object",
  members: {
    devices: { is: "list", of: { is: "number", unit: "amperes" }, least: 1, most: 100 },
    equipment: { is: "number", unit: "amperes" },
  },
};

/** A transformer whose devices and secondary conductors are to be found. */
export interface TransformerQuestion {
  /** Edition whose rules are used. */
  readonly edition: EditionYear;
  /** A transformer: its nameplate, and the two connections whose secondary conductors the primary device may protect. */
  readonly transformer: ProtectedTransformer;
  /** Which sides have overcurrent protection for the transformer itself. */
  readonly protection: "primary-only" | "primary-and-secondary";
  /** Amperes of the primary device; the largest that the table permits by default. */
  readonly primaryDevice?: number;
  /** The secondary conductors. Without endsIn they end in one device, the largest that the table permits. */
  readonly conductors: SecondaryConductors;
  /** Given where a feeder tap supplies the transformer and its primary conductors are not protected at their ampacity. */
  readonly feederTap?: {
    /** Amperes of the device that protects the feeder. */
    readonly feederDevice: number;
    /** Length of the tap to the primary in feet, less any part protected at its ampacity. */
    readonly primaryFeet: number;
  };
}

export const transformerQuestionShape: Shape = {
  is: "object",
  members: {
    edition: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
    transformer: protectedTransformerShape,
    protection: { is: "words", of: ["primary-only", "primary-and-secondary"] },
    primaryDevice: { is: "number", unit: "amperes" },
    conductors: secondaryConductorsShape,
    feederTap: {
      is: "object",
      members: {
        feederDevice: { is: "number", unit: "amperes" },
        primaryFeet: { is: "number", unit: "feet", orZero: true },
      },
    },
  },
  optional: ["primaryDevice", "feederTap"],
};

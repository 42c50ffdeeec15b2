// Generated from shape.ts by "npm run generate"; do not edit.
import type { ConductorSize, Material } from "../conductor/index.js";
import { readMaterial, readSize } from "../conductor/read.js";
import type { Shape } from "../input/shapes.js";
import { readSupply } from "../supply/read.js";
import type { Supply } from "../supply/shape.generated.js";

/** The device that protects the circuit. */
export interface OwnDevice {
  /** Rating of the device in amperes. Of a motor circuit give `motor` instead: neither its full-load current nor its overloads decide. */
  readonly amperes: number;
}

export const ownDeviceShape: Shape = {
  is: "object",
  members: { amperes: { is: "number", unit: "amperes" } },
};

/** The overcurrent device that decides, with its rating in amperes. It need not be a standard rating; one between two rows of the table takes the next. */
export type CircuitDevice =
  | (OwnDevice & { readonly motor?: never; readonly aheadOfFeeder?: never })
  | (MotorDevice & { readonly amperes?: never; readonly aheadOfFeeder?: never })
  | (FeederDevice & { readonly amperes?: never; readonly motor?: never });

export const circuitDeviceShape: Shape = {
  is: "variants",
  of: [
    { is: "object", members: { amperes: { is: "number", unit: "amperes" } } },
    {
      is: "object",
      members: {
        motor: {
          is: "variants",
          by: "kind",
          of: [
            {
              is: "object",
              members: {
                kind: { is: "exactly", value: "inverse-time-or-fuse" },
                deviceAmperes: { is: "number", unit: "amperes" },
              },
            },
            {
              is: "object",
              members: {
                kind: { is: "exactly", value: "instantaneous-trip" },
                dualElementFuseAmperes: { is: "number", unit: "amperes" },
              },
            },
          ],
        },
      },
    },
    { is: "object", members: { aheadOfFeeder: ownDeviceShape } },
  ],
};

/** A grounding electrode. */
export type Electrode = PlainElectrode | RingElectrode;

export const electrodeShape: Shape = {
  is: "variants",
  by: "kind",
  of: [
    {
      is: "object",
      members: {
        kind: {
          is: "words",
          of: ["rod", "pipe", "plate", "concrete-encased", "metal-water-pipe", "structural-metal", "other"],
        },
      },
    },
    {
      is: "object",
      members: { kind: { is: "exactly", value: "ring" }, conductor: { is: "checked", read: readSize } },
    },
  ],
};

/** A tap: what counts is the device ahead of the feeder, not one at the end of the tap (250.122(G)). */
export interface FeederDevice {
  /** The device ahead of the feeder. */
  readonly aheadOfFeeder: OwnDevice;
}

export const feederDeviceShape: Shape = { is: "object", members: { aheadOfFeeder: ownDeviceShape } };

/** Why ungrounded conductors were increased. */
export type IncreaseReason = "voltage-drop" | "temperature-or-number" | "other";

export const increaseReasonShape: Shape = {
  is: "words",
  of: ["voltage-drop", "temperature-or-number", "other"],
};

/** What the ungrounded conductors would be without the increase. */
export interface Increase {
  /** The baseline, of the material that is installed. Which conductors it is differs between editions: through 2014 those before the increase; 2017 the smallest with sufficient ampacity for the installation; from 2020 those that temperature and the number of conductors require. */
  readonly conductors: Supply;
  /** Why ungrounded conductors were increased. */
  readonly reason: IncreaseReason;
}

export const increaseShape: Shape = {
  is: "object",
  members: { conductors: { is: "checked", read: readSupply }, reason: increaseReasonShape },
};

/** An instantaneous-trip breaker or a motor short-circuit protector: what counts is the largest dual-element time-delay fuse that 430.52(C)(1) Exception No. 1 permits for the motor, which the caller gives. */
export interface InstantaneousTripMotorDevice {
  /** An instantaneous-trip breaker or motor short-circuit protector. */
  readonly kind: "instantaneous-trip";
  /** Rating in amperes of the largest dual-element time-delay fuse that is permitted for the motor. */
  readonly dualElementFuseAmperes: number;
}

export const instantaneousTripMotorDeviceShape: Shape = {
  is: "object",
  members: {
    kind: { is: "exactly", value: "instantaneous-trip" },
    dualElementFuseAmperes: { is: "number", unit: "amperes" },
  },
};

/** Fuses or an inverse-time breaker as branch-circuit short-circuit and ground-fault device; overloads do not count. */
export interface InverseTimeMotorDevice {
  /** An inverse-time breaker or fuses. */
  readonly kind: "inverse-time-or-fuse";
  /** Rating in amperes of the branch-circuit short-circuit and ground-fault device, never the full-load current of the motor. */
  readonly deviceAmperes: number;
}

export const inverseTimeMotorDeviceShape: Shape = {
  is: "object",
  members: {
    kind: { is: "exactly", value: "inverse-time-or-fuse" },
    deviceAmperes: { is: "number", unit: "amperes" },
  },
};

/** A motor circuit, whose short-circuit device is larger than its conductors' ampacity (250.122(D)). */
export interface MotorDevice {
  /** The short-circuit device of the motor circuit. */
  readonly motor: InverseTimeMotorDevice | InstantaneousTripMotorDevice;
}

export const motorDeviceShape: Shape = {
  is: "object",
  members: {
    motor: {
      is: "variants",
      by: "kind",
      of: [
        {
          is: "object",
          members: {
            kind: { is: "exactly", value: "inverse-time-or-fuse" },
            deviceAmperes: { is: "number", unit: "amperes" },
          },
        },
        {
          is: "object",
          members: {
            kind: { is: "exactly", value: "instantaneous-trip" },
            dualElementFuseAmperes: { is: "number", unit: "amperes" },
          },
        },
      ],
    },
  },
};

/** The load that one grounded conductor carries. */
export interface NeutralLoad {
  /** Amperes of this conductor (its share, where several run in parallel); zero if it carries no load. */
  readonly amperes: number;
  /** Amperes of the circuit, the rating of its device, which decide the temperature of its terminations, 60 C through 100 A and 75 C above, and the smallest conductor that it may have (240.4(D)). */
  readonly circuitAmperes: number;
  /** Whether the terminations of a circuit of 100 A or less are listed for 75 C; they are not by default. */
  readonly listedFor75?: boolean;
}

export const neutralLoadShape: Shape = {
  is: "object",
  members: {
    amperes: { is: "number", unit: "amperes", orZero: true },
    circuitAmperes: { is: "number", unit: "amperes" },
    listedFor75: { is: "flag", says: "whether the terminations are listed for 75 C" },
  },
  optional: ["listedFor75"],
};

/** A grounding electrode without a size of its own that counts (250.52). */
export interface PlainElectrode {
  /** Kind of electrode (250.52). */
  readonly kind:
    | "rod"
    | "pipe"
    | "plate"
    | "concrete-encased"
    | "metal-water-pipe"
    | "structural-metal"
    | "other";
}

export const plainElectrodeShape: Shape = {
  is: "object",
  members: {
    kind: {
      is: "words",
      of: ["rod", "pipe", "plate", "concrete-encased", "metal-water-pipe", "structural-metal", "other"],
    },
  },
};

/** A circuit that the conductor serves. */
export interface ProtectedCircuit {
  /** The overcurrent device that decides, with its rating in amperes. It need not be a standard rating; one between two rows of the table takes the next. */
  readonly device: CircuitDevice;
  /** Its ungrounded conductors as installed, every set of a parallel run; of a tap, the tap conductors. Needed for the limit at the circuit conductors and for an increase; without them neither is applied. */
  readonly conductors?: Supply;
  /** Without it no increase is counted. Where the installed conductors are the baseline, give them here too. */
  readonly increasedFrom?: Increase;
}

export const protectedCircuitShape: Shape = {
  is: "object",
  members: {
    device: circuitDeviceShape,
    conductors: { is: "checked", read: readSupply },
    increasedFrom: increaseShape,
  },
  optional: ["conductors", "increasedFrom"],
};

/** A ground ring, whose own conductor counts. */
export interface RingElectrode {
  /** A ground ring. */
  readonly kind: "ring";
  /** Size of the ring's bare copper conductor, at least 2 AWG. */
  readonly conductor: ConductorSize;
}

export const ringElectrodeShape: Shape = {
  is: "object",
  members: { kind: { is: "exactly", value: "ring" }, conductor: { is: "checked", read: readSize } },
};

/** Whether it serves one of several raceways, by the conductors in that raceway, or all that there is; all by default. */
export type Scope = "raceway" | "all";

export const scopeShape: Shape = { is: "words", of: ["raceway", "all"] };

/** What kind of system a conductor belongs to. */
export type SystemKind = "service" | "separately-derived";

export const systemKindShape: Shape = { is: "words", of: ["service", "separately-derived"] };

/** The conductor to be sized, where it may be a bus. */
export interface WantedConductor {
  /** Material of a conductor. */
  readonly material: Material;
  /** A wire by default; a bus gets an area instead of a size. */
  readonly form?: "wire" | "bus";
}

export const wantedConductorShape: Shape = {
  is: "object",
  members: { material: { is: "checked", read: readMaterial }, form: { is: "words", of: ["wire", "bus"] } },
  optional: ["form"],
};

/** The conductor to be sized, of which the material is chosen. */
export interface WantedWire {
  /** Material of a conductor. */
  readonly material: Material;
}

export const wantedWireShape: Shape = {
  is: "object",
  members: { material: { is: "checked", read: readMaterial } },
};

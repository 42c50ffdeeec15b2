// Generated from shape.ts by "npm run generate"; do not edit.
import type { TemperatureColumn } from "../../ampacity/shape.generated.js";
import { temperatureColumnShape } from "../../ampacity/shape.generated.js";
import type {
  CandidateConductor,
  CandidateLimits,
  CandidateLoad,
  CandidatePlace,
} from "../../candidates/shape.generated.js";
import {
  candidateConductorShape,
  candidateLimitsShape,
  candidateLoadShape,
  candidatePlaceShape,
} from "../../candidates/shape.generated.js";
import type { ConductorSize, Material } from "../../conductor/index.js";
import { readMaterial, readSize } from "../../conductor/read.js";
import type { RacewayKind } from "../../engineering/raceway-fill/shape.generated.js";
import { racewayKindShape } from "../../engineering/raceway-fill/shape.generated.js";
import type { Shape } from "../../input/shapes.js";
import type { ChosenConductors } from "../../supply/shape.generated.js";
import { supplySetShape } from "../../supply/shape.generated.js";
import type { Raceways } from "../raceways/shape.generated.js";
import { racewaysShape } from "../raceways/shape.generated.js";
import { readId } from "../read-id.js";

/** Load of the grounded conductor, whose requirement stands beside the table's. */
export interface Load {
  /** Amperes of the grounded conductor, of all its parallel parts together; zero if it carries no load. */
  readonly amperes: number;
  /** Rating of the circuit, which decides the temperature of its terminations. */
  readonly circuitAmperes: number;
  /** Whether the terminations of a circuit of 100 A or less are listed for 75 C; they are not by default. */
  readonly listedFor75?: boolean;
}

export const loadShape: Shape = {
  is: "object",
  members: {
    amperes: { is: "number", unit: "amperes", orZero: true },
    circuitAmperes: { is: "number", unit: "amperes" },
    listedFor75: { is: "flag", says: "whether the terminations are listed for 75 C" },
  },
  optional: ["listedFor75"],
};

/** Why its conductors may be in parallel though smaller than 1/0 AWG: they supply control power, or run at 360 Hz or more, or to an elevator (2008). */
export type ParallelException = "control-power" | "high-frequency" | "elevator";

export const parallelExceptionShape: Shape = {
  is: "words",
  of: ["control-power", "high-frequency", "elevator"],
};

/** Conductors that are yet to be chosen for a load. */
export interface RequiredForLoad {
  /** No conductors are chosen yet: those that this load requires, in so many sets. */
  readonly forLoad: {
    /** Amperes that the conductors are to carry. */
    readonly amperes: number;
    /** Amperes of the circuit, the rating of its device, which decide the temperature column and the smallest conductor; those of the load by default. */
    readonly circuitAmperes?: number;
    /** Material of a conductor. */
    readonly material: Material;
    /** Sets in parallel. */
    readonly sets: number;
  };
}

export const requiredForLoadShape: Shape = {
  is: "object",
  members: {
    forLoad: {
      is: "object",
      members: {
        amperes: { is: "number", unit: "amperes" },
        circuitAmperes: { is: "number", unit: "amperes" },
        material: { is: "checked", read: readMaterial },
        sets: { is: "number", unit: "sets", whole: true },
      },
      optional: ["circuitAmperes"],
    },
  },
};

/** Ungrounded conductors that run from one place to another. */
export interface Run {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** Id of the place where it starts: the source, a box, or at a service a disconnect that is not service equipment. */
  readonly from: string;
  /** Id of the place where it ends: a box or a disconnect. */
  readonly to: string;
  /** Its ungrounded conductors. */
  readonly supply:
    | (ChosenConductors & { readonly forLoad?: never; readonly toChoose?: never })
    | (RequiredForLoad & { readonly sets?: never; readonly toChoose?: never })
    | (SupplyToChoose & { readonly sets?: never; readonly forLoad?: never });
  /** How the sets run. What they run in is never assumed: a run has this member, or `in`. */
  readonly raceways?: Raceways;
  /** Id of the raceway that it shares with other runs, in place of raceways of its own. */
  readonly in?: string;
  /** Whether metal raceways get a jumper each or one in common, or, at a service, are bonded by fittings instead; common by default. Locknuts are what was found where nothing but ordinary locknuts bonds them. */
  readonly racewayJumpers?: "per-raceway" | "common" | "fittings-instead" | "locknuts";
  /** Why its conductors may be in parallel though smaller than 1/0 AWG: they supply control power, or run at 360 Hz or more, or to an elevator (2008). */
  readonly parallelException?: ParallelException;
  /** Its grounded conductors as drawn, one in each raceway; what is required is sized all the same. */
  readonly groundedConductors?: {
    /** Size of each of them. */
    readonly size: ConductorSize;
    /** Whether they are existing neutrals under engineering supervision, which may be 2 or 1 AWG in parallel. */
    readonly existingUnderSupervision?: boolean;
  };
  /** Form of its supply-side bonding jumpers: a wire by default; a bus gets an area instead of a size. */
  readonly jumperForm?: "wire" | "bus";
  /** Form of its grounded conductor: a wire by default; a bus gets an area instead of a size. */
  readonly groundedConductorForm?: "wire" | "bus";
  /** Load of the grounded conductor, whose requirement stands beside the table's. */
  readonly load?: Load;
  /** Length in feet. */
  readonly lengthFeet?: number;
  /** Materials of its own conductors. The nearest wins: what is left out is of the material of what it belongs to, and last of the installation's. */
  readonly materials?: {
    /** Material of its bonding jumpers. */
    readonly bondingJumpers?: Material;
    /** Material of its grounded conductors. */
    readonly groundedConductors?: Material;
  };
}

export const runShape: Shape = {
  is: "object",
  members: {
    id: { is: "checked", read: readId },
    from: {
      is: "text",
      says: "the place where it starts: the source, a box, or at a service a disconnect that is not service equipment",
    },
    to: { is: "text", says: "the place where it ends: a box or a disconnect" },
    supply: {
      is: "variants",
      of: [
        { is: "object", members: { sets: { is: "list", of: supplySetShape, least: 1, most: 2000 } } },
        {
          is: "object",
          members: {
            forLoad: {
              is: "object",
              members: {
                amperes: { is: "number", unit: "amperes" },
                circuitAmperes: { is: "number", unit: "amperes" },
                material: { is: "checked", read: readMaterial },
                sets: { is: "number", unit: "sets", whole: true },
              },
              optional: ["circuitAmperes"],
            },
          },
        },
        {
          is: "object",
          members: {
            toChoose: {
              is: "object",
              members: {
                load: candidateLoadShape,
                device: { is: "number", unit: "amperes" },
                protection: { is: "words", of: ["at-supply", "at-end"] },
                leastAmpacity: { is: "number", unit: "amperes" },
                groundedConductorCarriesCurrent: {
                  is: "flag",
                  says: "whether the grounded conductor counts as current-carrying",
                },
                conductor: candidateConductorShape,
                place: candidatePlaceShape,
                terminations: temperatureColumnShape,
                limits: candidateLimitsShape,
                raceways: { is: "list", of: racewayKindShape, least: 1, most: 5 },
              },
              optional: [
                "device",
                "protection",
                "leastAmpacity",
                "groundedConductorCarriesCurrent",
                "terminations",
                "raceways",
              ],
            },
          },
        },
      ],
    },
    raceways: racewaysShape,
    in: { is: "text", says: "the raceway that it shares with other runs, in place of raceways of its own" },
    racewayJumpers: { is: "words", of: ["per-raceway", "common", "fittings-instead", "locknuts"] },
    parallelException: parallelExceptionShape,
    groundedConductors: {
      is: "object",
      members: {
        size: { is: "checked", read: readSize },
        existingUnderSupervision: {
          is: "flag",
          says: "whether they exist and stand under engineering supervision",
        },
      },
      optional: ["existingUnderSupervision"],
    },
    jumperForm: { is: "words", of: ["wire", "bus"] },
    groundedConductorForm: { is: "words", of: ["wire", "bus"] },
    load: loadShape,
    lengthFeet: { is: "number", unit: "feet" },
    materials: {
      is: "object",
      members: {
        bondingJumpers: { is: "checked", read: readMaterial },
        groundedConductors: { is: "checked", read: readMaterial },
      },
      optional: ["bondingJumpers", "groundedConductors"],
    },
  },
  optional: [
    "raceways",
    "in",
    "racewayJumpers",
    "parallelException",
    "groundedConductors",
    "jumperForm",
    "groundedConductorForm",
    "load",
    "lengthFeet",
    "materials",
  ],
};

/** A load and its conditions, in place of conductors. */
export interface SupplyToChoose {
  /** A load for which the conductors are yet to be chosen: candidatesOf gives every lawful way to supply it; a schedule waits until one is chosen. */
  readonly toChoose: {
    /** The load that is supplied. */
    readonly load: CandidateLoad;
    /** Rating of the overcurrent device; the smallest standard rating that the load allows by default. */
    readonly device?: number;
    /** Where the conductors have their protection; at their supply by default. Taps and secondary conductors have it at their end, and never above their ampacity. */
    readonly protection?: "at-supply" | "at-end";
    /** Ampacity that all sets together must have besides, as a rule of taps or secondary conductors asks it. */
    readonly leastAmpacity?: number;
    /** Whether the grounded conductor counts among the current-carrying ones; not by default. */
    readonly groundedConductorCarriesCurrent?: boolean;
    /** The ungrounded conductors that are tried. */
    readonly conductor: CandidateConductor;
    /** Where the conductors lie. The current-carrying ones in a raceway are counted from its sets. */
    readonly place: CandidatePlace;
    /** Temperature in degrees Celsius for which the equipment at both ends is listed and marked, the lower of the two; by default 60 C for a device through 100 A and 75 C above, as 110.14(C)(1) has it. */
    readonly terminations?: TemperatureColumn;
    /** How far the search goes. */
    readonly limits: CandidateLimits;
    /** Kinds of raceway to be tried; without them none is chosen and none is filled. */
    readonly raceways?: readonly RacewayKind[];
  };
}

export const supplyToChooseShape: Shape = {
  is: "object",
  members: {
    toChoose: {
      is: "object",
      members: {
        load: candidateLoadShape,
        device: { is: "number", unit: "amperes" },
        protection: { is: "words", of: ["at-supply", "at-end"] },
        leastAmpacity: { is: "number", unit: "amperes" },
        groundedConductorCarriesCurrent: {
          is: "flag",
          says: "whether the grounded conductor counts as current-carrying",
        },
        conductor: candidateConductorShape,
        place: candidatePlaceShape,
        terminations: temperatureColumnShape,
        limits: candidateLimitsShape,
        raceways: { is: "list", of: racewayKindShape, least: 1, most: 5 },
      },
      optional: [
        "device",
        "protection",
        "leastAmpacity",
        "groundedConductorCarriesCurrent",
        "terminations",
        "raceways",
      ],
    },
  },
};

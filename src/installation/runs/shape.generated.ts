// Generated from shape.ts by "npm run generate"; do not edit.
import type { ConductorSize, Material } from "../../conductor/index.js";
import { readMaterial, readSize } from "../../conductor/read.js";
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
    | (ChosenConductors & { readonly forLoad?: never })
    | (RequiredForLoad & { readonly sets?: never });
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

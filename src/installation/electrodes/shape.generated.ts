// Generated from shape.ts by "npm run generate"; do not edit.
import type { ConductorSize, Material } from "../../conductor/index.js";
import { readMaterial, readSize } from "../../conductor/read.js";
import type { Shape } from "../../input/shapes.js";
import { readId } from "../read-id.js";
import type { RemovableFitting } from "../water-pipe/shape.generated.js";
import { removableFittingShape } from "../water-pipe/shape.generated.js";

/** How the conductor or jumper to an electrode runs and ends. */
export interface Route {
  /** Its cover; covered is without an extruded covering. */
  readonly cover?: "bare" | "covered" | "insulated";
  /** What it lies directly against, or what surrounds it. */
  readonly against?: readonly ("masonry" | "concrete" | "earth" | "corrosive-surroundings")[];
  /** Where it ends outdoors. */
  readonly outdoorEnd?: {
    /** Inches from its end to the earth. */
    readonly inchesAboveEarth: number;
    /** Whether it ends in an outdoor enclosure that is listed and identified for the place. */
    readonly inListedEnclosure?: boolean;
  };
  /** The raceway or armor that protects it; none if it runs open. */
  readonly protection?:
    | "rigid-metal"
    | "intermediate-metal"
    | "electrical-metallic-tubing"
    | "pvc-schedule-80"
    | "pvc-schedule-40"
    | "reinforced-thermosetting"
    | "cable-armor"
    | "none";
  /** Whether it is exposed to physical damage. */
  readonly exposedToDamage?: boolean;
}

export const routeShape: Shape = {
  is: "object",
  members: {
    cover: { is: "words", of: ["bare", "covered", "insulated"] },
    against: {
      is: "list",
      of: { is: "words", of: ["masonry", "concrete", "earth", "corrosive-surroundings"] },
      least: 1,
      most: 4,
    },
    outdoorEnd: {
      is: "object",
      members: {
        inchesAboveEarth: { is: "number", unit: "inches" },
        inListedEnclosure: { is: "flag", says: "whether it ends in a listed enclosure" },
      },
      optional: ["inListedEnclosure"],
    },
    protection: {
      is: "words",
      of: [
        "rigid-metal",
        "intermediate-metal",
        "electrical-metallic-tubing",
        "pvc-schedule-80",
        "pvc-schedule-40",
        "reinforced-thermosetting",
        "cable-armor",
        "none",
      ],
    },
    exposedToDamage: { is: "flag", says: "whether it is exposed to physical damage" },
  },
  optional: ["cover", "against", "outdoorEnd", "protection", "exposedToDamage"],
};

/** A further conductor to an electrode that stands in the document once, such as that of another system. */
export interface ElectrodeConnection {
  /** Id of an electrode that is named elsewhere in the document, or metal water piping or structural metal that is one. */
  readonly electrode: string;
  /** Id of what its conductor comes from: a disconnect, box, run, source or building, the common electrode conductor, or another electrode. */
  readonly from: string;
  /** Whether its conductor runs in a ferrous metal raceway, whose ends are bonded to it. */
  readonly ferrousRaceway?: boolean;
  /** How the conductor or jumper to an electrode runs and ends. */
  readonly route?: Route;
  /** Materials of its own conductors. The nearest wins: what is left out is of the material of what it belongs to, and last of the installation's. */
  readonly materials?: {
    /** Material of its grounding electrode conductors. */
    readonly electrodeConductors?: Material;
    /** Material of its bonding jumpers. */
    readonly bondingJumpers?: Material;
  };
}

export const electrodeConnectionShape: Shape = {
  is: "object",
  members: {
    electrode: {
      is: "text",
      says: "an electrode that is named elsewhere in the document, or metal water piping or structural metal that is one",
    },
    from: {
      is: "text",
      says: "what its conductor comes from: a disconnect, box, run, source or building, the common electrode conductor, or another electrode",
    },
    ferrousRaceway: { is: "flag", says: "whether its conductor runs in a ferrous metal raceway" },
    route: routeShape,
    materials: {
      is: "object",
      members: {
        electrodeConductors: { is: "checked", read: readMaterial },
        bondingJumpers: { is: "checked", read: readMaterial },
      },
      optional: ["electrodeConductors", "bondingJumpers"],
    },
  },
  optional: ["ferrousRaceway", "route", "materials"],
};

/** An electrode; one connected from another electrode is tied by a bonding jumper; no cycles. */
export interface InstalledElectrode {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** Kind of electrode (250.52). */
  readonly kind:
    | "rod"
    | "pipe"
    | "plate"
    | "concrete-encased"
    | "metal-water-pipe"
    | "structural-metal"
    | "other"
    | "ring";
  /** Size of the bare copper conductor of a ring. */
  readonly ringConductor?: ConductorSize;
  /** Id of what its conductor comes from: a disconnect, box, run, source or building, the common electrode conductor, or another electrode. */
  readonly from: string;
  /** Whether its conductor runs in a ferrous metal raceway, whose ends are bonded to it. */
  readonly ferrousRaceway?: boolean;
  /** Resistance to ground on record, in ohms, of a rod, pipe or plate. */
  readonly ohms?: number;
  /** How the conductor or jumper to an electrode runs and ends. */
  readonly route?: Route;
  /** Meters and fittings in the pipe that are likely to be taken out. */
  readonly removable?: readonly RemovableFitting[];
  /** Materials of its own conductors. The nearest wins: what is left out is of the material of what it belongs to, and last of the installation's. */
  readonly materials?: {
    /** Material of its grounding electrode conductors. */
    readonly electrodeConductors?: Material;
    /** Material of its bonding jumpers. */
    readonly bondingJumpers?: Material;
  };
}

export const installedElectrodeShape: Shape = {
  is: "object",
  members: {
    id: { is: "checked", read: readId },
    kind: {
      is: "words",
      of: [
        "rod",
        "pipe",
        "plate",
        "concrete-encased",
        "metal-water-pipe",
        "structural-metal",
        "other",
        "ring",
      ],
    },
    ringConductor: { is: "checked", read: readSize },
    from: {
      is: "text",
      says: "what its conductor comes from: a disconnect, box, run, source or building, the common electrode conductor, or another electrode",
    },
    ferrousRaceway: { is: "flag", says: "whether its conductor runs in a ferrous metal raceway" },
    ohms: { is: "number", unit: "ohms" },
    route: routeShape,
    removable: { is: "list", of: removableFittingShape, least: 0, most: 50 },
    materials: {
      is: "object",
      members: {
        electrodeConductors: { is: "checked", read: readMaterial },
        bondingJumpers: { is: "checked", read: readMaterial },
      },
      optional: ["electrodeConductors", "bondingJumpers"],
    },
  },
  optional: ["ringConductor", "ferrousRaceway", "ohms", "route", "removable", "materials"],
};

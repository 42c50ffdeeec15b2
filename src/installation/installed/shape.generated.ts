// Generated from shape.ts by "npm run generate"; do not edit.
import type { ConductorSize, Material } from "../../conductor/index.js";
import { readMaterial, readSize } from "../../conductor/read.js";
import type { EditionYear } from "../../edition/edition-year.js";
import type { Role } from "../../edition/tables/roles.generated.js";
import type { Shape } from "../../input/shapes.js";

/** A further conductor of the schedule that a found one stands for. */
export interface Purpose {
  /** What it serves as besides. */
  readonly role: Role;
  /** Id of what it belongs to or serves, as far as that tells it apart: a run, a circuit, an electrode, a pipe, a frame, a box, a disconnect, a system. */
  readonly of?: string;
  /** Id of the place where one end of it was found, as far as that decides: an enclosure, a box, a source, an electrode. */
  readonly at?: string;
}

export const purposeShape: Shape = {
  is: "object",
  members: {
    role: {
      is: "words",
      of: [
        "main-bonding-jumper",
        "system-bonding-jumper",
        "supply-side-bonding-jumper",
        "grounded-conductor",
        "impedance-grounding-conductor",
        "impedance-bonding-jumper",
        "equipment-grounding-conductor",
        "equipment-bonding-jumper",
        "water-piping-bonding-jumper",
        "other-piping-bonding-jumper",
        "structural-metal-bonding-jumper",
        "grounding-electrode-conductor",
        "electrode-bonding-jumper",
        "electrode-raceway-bonding-jumper",
        "intersystem-bonding-conductor",
      ],
    },
    of: {
      is: "text",
      says: "what it belongs to or serves, as far as that tells it apart: a run, a circuit, an electrode, a pipe, a frame, a box, a disconnect, a system",
    },
    at: {
      is: "text",
      says: "the place where one end of it was found, as far as that decides: an enclosure, a box, a source, an electrode",
    },
  },
  optional: ["of", "at"],
};

/** A conductor, or what stands in its place, as it was found. */
export interface FoundConductor {
  /** What it is there for. */
  readonly role: Role;
  /** Id of what it belongs to or serves, as far as that tells it apart: a run, a circuit, an electrode, a pipe, a frame, a box, a disconnect, a system. */
  readonly of?: string;
  /** Id of the place where one end of it was found, as far as that decides: an enclosure, a box, a source, an electrode. */
  readonly at?: string;
  /** What it is called where it was found, in your own words. */
  readonly name?: string;
  /** Size of one conductor, of a wire. */
  readonly size?: ConductorSize;
  /** Area of its section in circular mils, of a bus. */
  readonly busArea?: number;
  /** What was found in place of a conductor: bonding fittings of a service raceway, a nonflexible metal raceway that serves, or the grounded conductor that bonds a box. */
  readonly instead?: "bonding-fittings" | "nonflexible-metal-raceway" | "grounded-conductor";
  /** Material of the wire or bus. */
  readonly material?: Material;
  /** How many there are; 1 by default. */
  readonly quantity?: number;
  /** Whether it connects the grounded conductor to metal, an electrode or equipment grounding conductors. Main and system bonding jumpers do. */
  readonly connectsGroundedConductor?: boolean;
  /** What the same conductor serves as besides. */
  readonly servesAlso?: readonly Purpose[];
  /** Edition that it was built under, which then judges it as printed; that of the installation by default. */
  readonly edition?: EditionYear;
}

export const foundConductorShape: Shape = {
  is: "object",
  members: {
    role: {
      is: "words",
      of: [
        "main-bonding-jumper",
        "system-bonding-jumper",
        "supply-side-bonding-jumper",
        "grounded-conductor",
        "impedance-grounding-conductor",
        "impedance-bonding-jumper",
        "equipment-grounding-conductor",
        "equipment-bonding-jumper",
        "water-piping-bonding-jumper",
        "other-piping-bonding-jumper",
        "structural-metal-bonding-jumper",
        "grounding-electrode-conductor",
        "electrode-bonding-jumper",
        "electrode-raceway-bonding-jumper",
        "intersystem-bonding-conductor",
      ],
    },
    of: {
      is: "text",
      says: "what it belongs to or serves, as far as that tells it apart: a run, a circuit, an electrode, a pipe, a frame, a box, a disconnect, a system",
    },
    at: {
      is: "text",
      says: "the place where one end of it was found, as far as that decides: an enclosure, a box, a source, an electrode",
    },
    name: { is: "name", says: "its name" },
    size: { is: "checked", read: readSize },
    busArea: { is: "number", unit: "circular mils" },
    instead: { is: "words", of: ["bonding-fittings", "nonflexible-metal-raceway", "grounded-conductor"] },
    material: { is: "checked", read: readMaterial },
    quantity: { is: "number", unit: "conductors", whole: true },
    connectsGroundedConductor: { is: "flag", says: "whether it connects the grounded conductor to metal" },
    servesAlso: { is: "list", of: purposeShape, least: 0, most: 20 },
    edition: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
  },
  optional: [
    "of",
    "at",
    "name",
    "size",
    "busArea",
    "instead",
    "material",
    "quantity",
    "connectsGroundedConductor",
    "servesAlso",
    "edition",
  ],
};

/** What is installed or drawn, to be checked. */
export interface Installed {
  /** What was found, one entry for conductors alike. */
  readonly found?: readonly FoundConductor[];
  /** What was found exactly as scheduled, a whole run or system at once. */
  readonly asScheduled?: readonly string[];
  /** That everything which is not listed is as scheduled. Without it, what is required and not listed is missing. */
  readonly rest?: "as-scheduled";
}

export const installedShape: Shape = {
  is: "object",
  members: {
    found: { is: "list", of: foundConductorShape, least: 0, most: 5000 },
    asScheduled: {
      is: "list",
      of: {
        is: "text",
        says: "a run, a circuit, a disconnect, a system or other thing whose conductors are all as scheduled, save those in `found`",
      },
      least: 0,
      most: 5000,
    },
    rest: { is: "exactly", value: "as-scheduled" },
  },
  optional: ["found", "asScheduled", "rest"],
};

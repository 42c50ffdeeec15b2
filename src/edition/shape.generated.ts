// Generated from shape.ts by "npm run generate"; do not edit.
import type { ConductorSize, Material } from "../conductor/index.js";
import { readMaterial, readSize } from "../conductor/read.js";
import type { Shape } from "../input/shapes.js";
import type { EditionYear } from "./edition-year.js";
import type { ElectrodeKind } from "./electrode-kinds.js";
import { readReadingId, readReadings } from "./read-readings.js";
import { readRow } from "./read-row.js";
import type { Readings } from "./tables/readings.generated.js";
import type { Role } from "./tables/roles.generated.js";

/** Where an amendment stands. */
export interface AmendmentCitation {
  /** Who enforces it, for example a city or a state. */
  readonly jurisdiction: string;
  /** Section or ordinance. */
  readonly section: string;
  /** Address of the text, if there is one. */
  readonly url?: string;
}

export const amendmentCitationShape: Shape = {
  is: "object",
  members: {
    jurisdiction: { is: "name", says: "the jurisdiction" },
    section: { is: "name", says: "the section or ordinance" },
    url: { is: "name", says: "the address" },
  },
  optional: ["url"],
};

/** When an amendment applies; without a condition always. Every member that is given must hold. */
export interface AmendmentCondition {
  /** Length of the circuit or run in feet below which it applies. */
  readonly lengthBelowFeet?: number;
  /** Length in feet from which it applies. */
  readonly lengthFromFeet?: number;
  /** Location to which it is limited. */
  readonly location?: string;
  /** Rating of the service in amperes from which it applies. */
  readonly serviceFromAmperes?: number;
  /** Rating of the service in amperes through which it applies. */
  readonly serviceThroughAmperes?: number;
}

export const amendmentConditionShape: Shape = {
  is: "object",
  members: {
    lengthBelowFeet: { is: "number", unit: "feet" },
    lengthFromFeet: { is: "number", unit: "feet" },
    location: { is: "name", says: "the location" },
    serviceFromAmperes: { is: "number", unit: "amperes" },
    serviceThroughAmperes: { is: "number", unit: "amperes" },
  },
  optional: ["lengthBelowFeet", "lengthFromFeet", "location", "serviceFromAmperes", "serviceThroughAmperes"],
};

/** A wire-type conductor is always required where the code would let something else serve. */
export interface AlwaysWireAmendment {
  /** Kind of amendment. */
  readonly kind: "always-wire";
  /** What the conductor is there for. */
  readonly role: Role;
  /** Where the amendment stands. */
  readonly citation: AmendmentCitation;
  /** When it applies; always by default. */
  readonly when?: AmendmentCondition;
}

export const alwaysWireAmendmentShape: Shape = {
  is: "object",
  members: {
    kind: { is: "exactly", value: "always-wire" },
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
    citation: amendmentCitationShape,
    when: amendmentConditionShape,
  },
  optional: ["when"],
};

/** A change that a jurisdiction makes to an edition, or that a proposal would make. Plain JSON, of a closed set of kinds. */
export type Amendment =
  | CellAmendment
  | FloorAmendment
  | BasisAmendment
  | ReadingAmendment
  | MaterialAmendment
  | AlwaysWireAmendment;

export const amendmentShape: Shape = {
  is: "variants",
  by: "kind",
  of: [
    {
      is: "object",
      members: {
        kind: { is: "exactly", value: "cell" },
        table: { is: "words", of: ["electrode-conductor", "bonding-conductor", "equipment-grounding"] },
        row: { is: "checked", read: readRow },
        column: { is: "words", of: ["copper", "aluminum"] },
        size: { is: "checked", read: readSize },
        citation: amendmentCitationShape,
        when: amendmentConditionShape,
      },
      optional: ["when"],
    },
    {
      is: "object",
      members: {
        kind: { is: "exactly", value: "floor" },
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
        copper: { is: "checked", read: readSize },
        aluminum: { is: "checked", read: readSize },
        citation: amendmentCitationShape,
        when: amendmentConditionShape,
      },
      optional: ["copper", "aluminum", "when"],
    },
    {
      is: "object",
      members: {
        kind: { is: "exactly", value: "basis" },
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
        use: { is: "words", of: ["no-increase", "no-electrode-ceiling", "equipment-grounding-table"] },
        electrode: {
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
        citation: amendmentCitationShape,
        when: amendmentConditionShape,
      },
      optional: ["electrode", "when"],
    },
    {
      is: "object",
      members: {
        kind: { is: "exactly", value: "reading" },
        reading: { is: "checked", read: readReadingId },
        alternative: { is: "name", says: "the alternative" },
        citation: amendmentCitationShape,
        when: amendmentConditionShape,
      },
      optional: ["when"],
    },
    {
      is: "object",
      members: {
        kind: { is: "exactly", value: "material" },
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
            "every-role",
          ],
        },
        material: { is: "checked", read: readMaterial },
        allowedFrom: { is: "checked", read: readSize },
        citation: amendmentCitationShape,
        when: amendmentConditionShape,
      },
      optional: ["allowedFrom", "when"],
    },
    {
      is: "object",
      members: {
        kind: { is: "exactly", value: "always-wire" },
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
        citation: amendmentCitationShape,
        when: amendmentConditionShape,
      },
      optional: ["when"],
    },
  ],
};

/** Another basis for a role: no increase in proportion (of equipment grounding conductors, which takes the load-side jumpers along, or of those jumpers alone), no ceiling for particular electrodes (of electrode conductors, which takes the jumpers to electrodes along, or of those jumpers alone), or the table of equipment grounding conductors by the service's rating in place of the role's own table of supply areas. */
export interface BasisAmendment {
  /** Kind of amendment. */
  readonly kind: "basis";
  /** What the conductor is there for. */
  readonly role: Role;
  /** The other basis. */
  readonly use: "no-increase" | "no-electrode-ceiling" | "equipment-grounding-table";
  /** For no-electrode-ceiling, the kind of electrode whose ceiling is lifted; every kind by default. */
  readonly electrode?: ElectrodeKind;
  /** Where the amendment stands. */
  readonly citation: AmendmentCitation;
  /** When it applies; always by default. */
  readonly when?: AmendmentCondition;
}

export const basisAmendmentShape: Shape = {
  is: "object",
  members: {
    kind: { is: "exactly", value: "basis" },
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
    use: { is: "words", of: ["no-increase", "no-electrode-ceiling", "equipment-grounding-table"] },
    electrode: {
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
    citation: amendmentCitationShape,
    when: amendmentConditionShape,
  },
  optional: ["electrode", "when"],
};

/** Another value in a cell of a table. */
export interface CellAmendment {
  /** Kind of amendment. */
  readonly kind: "cell";
  /** Table of which a cell is amended. */
  readonly table: "electrode-conductor" | "bonding-conductor" | "equipment-grounding";
  /** The row: its largest copper supply size, its device rating in amperes, or last for the open last row. */
  readonly row: string | number;
  /** Column of the table. */
  readonly column: "copper" | "aluminum";
  /** Trade size, for example 4/0 AWG or 500 kcmil. */
  readonly size: ConductorSize;
  /** Where the amendment stands. */
  readonly citation: AmendmentCitation;
  /** When it applies; always by default. */
  readonly when?: AmendmentCondition;
}

export const cellAmendmentShape: Shape = {
  is: "object",
  members: {
    kind: { is: "exactly", value: "cell" },
    table: { is: "words", of: ["electrode-conductor", "bonding-conductor", "equipment-grounding"] },
    row: { is: "checked", read: readRow },
    column: { is: "words", of: ["copper", "aluminum"] },
    size: { is: "checked", read: readSize },
    citation: amendmentCitationShape,
    when: amendmentConditionShape,
  },
  optional: ["when"],
};

/** What is known of the place and the run, for amendments under a condition. */
export interface Circumstances {
  /** Length of the circuit or run in feet. */
  readonly lengthFeet?: number;
  /** Location of the building. */
  readonly location?: string;
  /** Rating of the service in amperes. */
  readonly serviceAmperes?: number;
}

export const circumstancesShape: Shape = {
  is: "object",
  members: {
    lengthFeet: { is: "number", unit: "feet" },
    location: { is: "name", says: "the location" },
    serviceAmperes: { is: "number", unit: "amperes" },
  },
  optional: ["lengthFeet", "location", "serviceAmperes"],
};

/** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
export interface Code {
  /** Edition of NFPA 70 that the jurisdiction enforces. */
  readonly year: EditionYear;
  /** Readings that differ from the defaults. One that an amendment in force enforces otherwise is overruled, and that is said. */
  readonly readings?: Partial<Readings>;
  /** Local amendments, or proposals for the next edition, in the order in which they were made. */
  readonly amendments?: readonly Amendment[];
  /** What is known of the place and the run, for amendments under a condition. */
  readonly circumstances?: Circumstances;
}

export const codeShape: Shape = {
  is: "object",
  members: {
    year: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
    readings: { is: "checked", read: readReadings },
    amendments: { is: "list", of: amendmentShape, least: 0, most: 100 },
    circumstances: circumstancesShape,
  },
  optional: ["readings", "amendments", "circumstances"],
};

/** A size below which a role may not fall. A material without a size of its own is not concerned. */
export interface FloorAmendment {
  /** Kind of amendment. */
  readonly kind: "floor";
  /** What the conductor is there for. */
  readonly role: Role;
  /** Minimum size in copper. */
  readonly copper?: ConductorSize;
  /** Minimum size in aluminum or copper-clad aluminum. */
  readonly aluminum?: ConductorSize;
  /** Where the amendment stands. */
  readonly citation: AmendmentCitation;
  /** When it applies; always by default. */
  readonly when?: AmendmentCondition;
}

export const floorAmendmentShape: Shape = {
  is: "object",
  members: {
    kind: { is: "exactly", value: "floor" },
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
    copper: { is: "checked", read: readSize },
    aluminum: { is: "checked", read: readSize },
    citation: amendmentCitationShape,
    when: amendmentConditionShape,
  },
  optional: ["copper", "aluminum", "when"],
};

/** A material that may not be used, for a role or for all, at any size or below one. */
export interface MaterialAmendment {
  /** Kind of amendment. */
  readonly kind: "material";
  /** The role that is concerned, or every role. */
  readonly role: Role | "every-role";
  /** Material of a conductor. */
  readonly material: Material;
  /** Smallest size of this material that is allowed; none is by default. */
  readonly allowedFrom?: ConductorSize;
  /** Where the amendment stands. */
  readonly citation: AmendmentCitation;
  /** When it applies; always by default. */
  readonly when?: AmendmentCondition;
}

export const materialAmendmentShape: Shape = {
  is: "object",
  members: {
    kind: { is: "exactly", value: "material" },
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
        "every-role",
      ],
    },
    material: { is: "checked", read: readMaterial },
    allowedFrom: { is: "checked", read: readSize },
    citation: amendmentCitationShape,
    when: amendmentConditionShape,
  },
  optional: ["allowedFrom", "when"],
};

/** A reading that the jurisdiction enforces. */
export interface ReadingAmendment {
  /** Kind of amendment. */
  readonly kind: "reading";
  /** Id of the reading. */
  readonly reading: keyof Readings;
  /** The alternative that is enforced. */
  readonly alternative: string;
  /** Where the amendment stands. */
  readonly citation: AmendmentCitation;
  /** When it applies; always by default. */
  readonly when?: AmendmentCondition;
}

export const readingAmendmentShape: Shape = {
  is: "object",
  members: {
    kind: { is: "exactly", value: "reading" },
    reading: { is: "checked", read: readReadingId },
    alternative: { is: "name", says: "the alternative" },
    citation: amendmentCitationShape,
    when: amendmentConditionShape,
  },
  optional: ["when"],
};

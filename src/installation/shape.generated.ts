// Generated from shape.ts by "npm run generate"; do not edit.
import type { ConductorSize, Material } from "../conductor/index.js";
import { readMaterial, readSize } from "../conductor/read.js";
import { readCode } from "../edition/read-code.js";
import type { Code } from "../edition/shape.generated.js";
import type { Role } from "../edition/tables/roles.generated.js";
import type { Shape } from "../input/shapes.js";
import type { CircuitDevice, IncreaseReason } from "../rules/shape.generated.js";
import { circuitDeviceShape, increaseReasonShape } from "../rules/shape.generated.js";
import { readChosenConductors } from "../supply/read.js";
import type { ChosenConductors } from "../supply/shape.generated.js";
import { readId } from "./read-id.js";
import type { DerivedSystem, Generator, InstalledElectrode, Service } from "./systems/shape.generated.js";
import {
  derivedSystemShape,
  generatorShape,
  installedElectrodeShape,
  serviceShape,
} from "./systems/shape.generated.js";

/** A building or structure that a feeder or branch circuit supplies. */
export interface Building {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** Id of the feeder or branch circuit that supplies it. */
  readonly circuit: string;
  /** Whether one branch circuit, a multiwire one included, supplies it. */
  readonly onSingleBranchCircuit: boolean;
  /** The grounding electrodes. */
  readonly electrodes?: readonly InstalledElectrode[];
}

export const buildingShape: Shape = {
  is: "object",
  members: {
    id: { is: "checked", read: readId },
    circuit: { is: "text", says: "the feeder or branch circuit that supplies it" },
    onSingleBranchCircuit: { is: "flag", says: "whether one branch circuit supplies it" },
    electrodes: { is: "list", of: installedElectrodeShape, least: 0, most: 50 },
  },
  optional: ["electrodes"],
};

/** A feeder or branch circuit. */
export interface Circuit {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** Id of what it starts from: a disconnect, a building, another circuit or its end, or what exists. */
  readonly from: string;
  /** What it supplies: an id of the document, or a name of its own. */
  readonly to: string;
  /** The overcurrent device that decides, with its rating in amperes. It need not be a standard rating; one between two rows of the table takes the next. */
  readonly device: CircuitDevice;
  /** Its ungrounded conductors as installed. */
  readonly conductors?: ChosenConductors;
  /** What the conductors would be without an increase. */
  readonly increasedFrom?: {
    /** The conductors without the increase. */
    readonly conductors: ChosenConductors;
    /** Why ungrounded conductors were increased. */
    readonly reason: IncreaseReason;
  };
  /** How the equipment grounding conductor runs. */
  readonly wiring:
    | "raceway"
    | "parallel-raceways"
    | "parallel-cables"
    | "tray-single-conductor"
    | "tray-cable";
  /** Raceways or cables in parallel; one equipment grounding conductor in each. */
  readonly raceways?: number;
  /** Length in feet. */
  readonly lengthFeet?: number;
  /** Location, for amendments that are limited to one. */
  readonly location?: string;
}

export const circuitShape: Shape = {
  is: "object",
  members: {
    id: { is: "checked", read: readId },
    from: {
      is: "text",
      says: "what it starts from: a disconnect, a building, another circuit or its end, or what exists",
    },
    to: { is: "text", says: "what it supplies" },
    device: circuitDeviceShape,
    conductors: { is: "checked", read: readChosenConductors },
    increasedFrom: {
      is: "object",
      members: { conductors: { is: "checked", read: readChosenConductors }, reason: increaseReasonShape },
    },
    wiring: {
      is: "words",
      of: ["raceway", "parallel-raceways", "parallel-cables", "tray-single-conductor", "tray-cable"],
    },
    raceways: { is: "number", unit: "raceways or cables", whole: true },
    lengthFeet: { is: "number", unit: "feet" },
    location: { is: "text", says: "the location" },
  },
  optional: ["conductors", "increasedFrom", "raceways", "lengthFeet", "location"],
};

/** A conductor as it was found. */
export interface FoundConductor {
  /** Id of a conductor of the schedule, or a name for something else that was found. */
  readonly conductor: string;
  /** What it is, of something that the schedule does not hold, such as a second main bonding jumper. */
  readonly role?: Role;
  /** Trade size, for example 4/0 AWG or 500 kcmil. */
  readonly size: ConductorSize;
  /** Material of a conductor. */
  readonly material: Material;
  /** How many there are; as many as required by default. */
  readonly quantity?: number;
  /** Where it was found, if not where the schedule puts it. */
  readonly at?: string;
}

export const foundConductorShape: Shape = {
  is: "object",
  members: {
    conductor: { is: "text", says: "the conductor" },
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
    size: { is: "checked", read: readSize },
    material: { is: "checked", read: readMaterial },
    quantity: { is: "number", unit: "conductors", whole: true },
    at: { is: "text", says: "the place" },
  },
  optional: ["role", "quantity", "at"],
};

/** An intersystem bonding termination. */
export interface IntersystemTermination {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** Id of the service, box, disconnect or building where it is. */
  readonly at: string;
  /** Mounted on an enclosure or raceway, set apart, or a busbar (from 2017). */
  readonly termination: "on-enclosure" | "apart" | "busbar";
  /** Largest grounding electrode conductor on the busbar. */
  readonly electrodeConductorOnBusbar?: ConductorSize;
  /** Whether communications systems are unlikely to be used here; they are likely by default. */
  readonly communicationsUnlikely?: boolean;
}

export const intersystemTerminationShape: Shape = {
  is: "object",
  members: {
    id: { is: "checked", read: readId },
    at: { is: "text", says: "the service, box, disconnect or building where it is" },
    termination: { is: "words", of: ["on-enclosure", "apart", "busbar"] },
    electrodeConductorOnBusbar: { is: "checked", read: readSize },
    communicationsUnlikely: { is: "flag", says: "whether communications systems are unlikely" },
  },
  optional: ["electrodeConductorOnBusbar", "communicationsUnlikely"],
};

/** Metal piping. */
export type Piping =
  | {
      /** Name on the drawing. Every id is unique in the document. */
      readonly id: string;
      /** Id of the service, derived system or building it belongs to. */
      readonly of: string;
      /** Whether it is itself the electrode of a derived system. */
      readonly isElectrode?: boolean;
      /** Metal water piping of the building. */
      readonly kind: "water";
    }
  | {
      /** Name on the drawing. Every id is unique in the document. */
      readonly id: string;
      /** Metal water piping of one occupancy, isolated from that of the others. */
      readonly kind: "water-of-occupancy";
      /** Rating in amperes of the device that supplies the occupancy. */
      readonly deviceAmperes: number;
    }
  | {
      /** Name on the drawing. Every id is unique in the document. */
      readonly id: string;
      /** Other metal piping that is likely to become energized. */
      readonly kind: "other";
      /** Rating in amperes of the device of the circuit that is likely to energize it. */
      readonly deviceAmperes: number;
    };

export const pipingShape: Shape = {
  is: "variants",
  by: "kind",
  of: [
    {
      is: "object",
      members: {
        id: { is: "checked", read: readId },
        of: { is: "text", says: "the service, derived system or building it belongs to" },
        isElectrode: { is: "flag", says: "whether it is itself the electrode of a derived system" },
        kind: { is: "exactly", value: "water" },
      },
      optional: ["isElectrode"],
    },
    {
      is: "object",
      members: {
        id: { is: "checked", read: readId },
        kind: { is: "exactly", value: "water-of-occupancy" },
        deviceAmperes: { is: "number", unit: "amperes" },
      },
    },
    {
      is: "object",
      members: {
        id: { is: "checked", read: readId },
        kind: { is: "exactly", value: "other" },
        deviceAmperes: { is: "number", unit: "amperes" },
      },
    },
  ],
};

/** Exposed structural metal that forms a building frame. */
export interface StructuralMetal {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** Id of the service, derived system or building it belongs to. */
  readonly of: string;
  /** Whether it is itself the electrode of a derived system. */
  readonly isElectrode?: boolean;
}

export const structuralMetalShape: Shape = {
  is: "object",
  members: {
    id: { is: "checked", read: readId },
    of: { is: "text", says: "the service, derived system or building it belongs to" },
    isElectrode: { is: "flag", says: "whether it is itself the electrode of a derived system" },
  },
  optional: ["isElectrode"],
};

/** Services, separately derived systems and what follows them, as one document. */
export interface Installation {
  /** Address of this schema, for editors; not looked at. */
  readonly $schema?: string;
  /** Version of this format. */
  readonly format: 1;
  /** Title of the drawing. */
  readonly title: string;
  /** The code that a result is to follow: an edition of NFPA 70 and, where the text is open, the readings that were chosen. Plain JSON. There is no default edition; a jurisdiction enforces the one that it adopted. */
  readonly code: Code;
  /** Materials of the conductors to be sized. */
  readonly materials: {
    /** Material of the bonding jumpers. */
    readonly bondingJumpers: Material;
    /** Material of the grounded conductors. */
    readonly groundedConductors: Material;
    /** Material of the grounding electrode conductors. */
    readonly electrodeConductors: Material;
    /** Material of the equipment grounding conductors. */
    readonly equipmentGrounding: Material;
  };
  /** Equipment beyond the edge of the drawing, from which circuits may start. */
  readonly existing?: readonly {
    /** Name on the drawing. Every id is unique in the document. */
    readonly id: string;
  }[];
  /** The services. */
  readonly services?: readonly Service[];
  /** The separately derived systems. */
  readonly derivedSystems?: readonly DerivedSystem[];
  /** Generators that are no separately derived systems. */
  readonly generators?: readonly Generator[];
  /** Feeders and branch circuits. */
  readonly circuits?: readonly Circuit[];
  /** Buildings and structures on a feeder or branch circuit. */
  readonly buildings?: readonly Building[];
  /** Metal piping. */
  readonly piping?: readonly Piping[];
  /** Structural metal. */
  readonly structuralMetal?: readonly StructuralMetal[];
  /** Intersystem bonding terminations. */
  readonly intersystem?: readonly IntersystemTermination[];
  /** What is installed or drawn, to be checked. */
  readonly installed?: readonly FoundConductor[];
}

export const installationShape: Shape = {
  is: "object",
  members: {
    $schema: { is: "text", says: "the address of the schema" },
    format: { is: "exactly", value: 1 },
    title: { is: "name", says: "the title" },
    code: { is: "checked", read: readCode },
    materials: {
      is: "object",
      members: {
        bondingJumpers: { is: "checked", read: readMaterial },
        groundedConductors: { is: "checked", read: readMaterial },
        electrodeConductors: { is: "checked", read: readMaterial },
        equipmentGrounding: { is: "checked", read: readMaterial },
      },
    },
    existing: {
      is: "list",
      of: { is: "object", members: { id: { is: "checked", read: readId } } },
      least: 0,
      most: 1000,
    },
    services: { is: "list", of: serviceShape, least: 0, most: 100 },
    derivedSystems: { is: "list", of: derivedSystemShape, least: 0, most: 200 },
    generators: { is: "list", of: generatorShape, least: 0, most: 100 },
    circuits: { is: "list", of: circuitShape, least: 0, most: 2000 },
    buildings: { is: "list", of: buildingShape, least: 0, most: 500 },
    piping: { is: "list", of: pipingShape, least: 0, most: 1000 },
    structuralMetal: { is: "list", of: structuralMetalShape, least: 0, most: 1000 },
    intersystem: { is: "list", of: intersystemTerminationShape, least: 0, most: 500 },
    installed: { is: "list", of: foundConductorShape, least: 0, most: 5000 },
  },
  optional: [
    "$schema",
    "existing",
    "services",
    "derivedSystems",
    "generators",
    "circuits",
    "buildings",
    "piping",
    "structuralMetal",
    "intersystem",
    "installed",
  ],
};

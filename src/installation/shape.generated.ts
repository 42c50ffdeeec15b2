// Generated from shape.ts by "npm run generate"; do not edit.
import type { ConductorSize, Material } from "../conductor/index.js";
import { readMaterial, readSize } from "../conductor/read.js";
import { readCode } from "../edition/read-code.js";
import type { Code } from "../edition/shape.generated.js";
import type { Shape } from "../input/shapes.js";
import type { CircuitDevice, IncreaseReason } from "../rules/shape.generated.js";
import { circuitDeviceShape, increaseReasonShape } from "../rules/shape.generated.js";
import { readChosenConductors } from "../supply/read.js";
import type { ChosenConductors } from "../supply/shape.generated.js";
import type { ElectrodeConnection, InstalledElectrode } from "./electrodes/shape.generated.js";
import { routeShape } from "./electrodes/shape.generated.js";
import type { Installed } from "./installed/shape.generated.js";
import { installedShape } from "./installed/shape.generated.js";
import type { LoadSideJumper } from "./jumpers/shape.generated.js";
import { loadSideJumperShape } from "./jumpers/shape.generated.js";
import type { LoadSideConnection } from "./load-side/shape.generated.js";
import { loadSideConnectionShape } from "./load-side/shape.generated.js";
import { readId } from "./read-id.js";
import { readOwners } from "./read-owners.js";
import type { ParallelException } from "./runs/shape.generated.js";
import { parallelExceptionShape } from "./runs/shape.generated.js";
import type { Generator, GroundedConductor, TransferSwitch } from "./sources/shape.generated.js";
import { generatorShape, groundedConductorShape, transferSwitchShape } from "./sources/shape.generated.js";
import type { DerivedSystem, Service } from "./systems/shape.generated.js";
import { derivedSystemShape, serviceShape } from "./systems/shape.generated.js";
import type { RemovableFitting } from "./water-pipe/shape.generated.js";
import { removableFittingShape } from "./water-pipe/shape.generated.js";

/** A building or structure that a feeder or branch circuit supplies. */
export interface Building {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** Id of the feeder or branch circuit that supplies it. */
  readonly circuit?: string;
  /** Id of the disconnect of a separately derived system that is in it, where the system supplies it with no circuit between; in place of circuit. */
  readonly disconnect?: string;
  /** Of an existing building, built under an earlier edition, whose grounded conductor is to stay the fault path: the three conditions of the exception. */
  readonly existingGroundedConductor?: {
    /** Whether an equipment grounding conductor runs with the supply. */
    readonly equipmentGroundingConductor: boolean;
    /** Whether a continuous metal path, as a water pipe, is bonded at both buildings. */
    readonly continuousMetalPath: boolean;
    /** Whether ground-fault protection of equipment is installed on the supply side. */
    readonly groundFaultProtection: boolean;
  };
  /** Whether one branch circuit, a multiwire one included, supplies it. */
  readonly onSingleBranchCircuit: boolean;
  /** The grounding electrodes, and conductors to those named elsewhere. */
  readonly electrodes?: readonly (
    | (InstalledElectrode & { readonly electrode?: never })
    | (ElectrodeConnection & {
        readonly id?: never;
        readonly kind?: never;
        readonly ringConductor?: never;
        readonly ohms?: never;
        readonly removable?: never;
      })
  )[];
  /** Electrodes that are present at the building and not connected to the others. */
  readonly electrodesNotConnected?: readonly {
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
      | "ring";
    /** Whether the building exists and the steel of a concrete-encased electrode cannot be reached without disturbing the concrete. */
    readonly steelNotAccessible?: boolean;
  }[];
  /** Materials of its own conductors. The nearest wins: what is left out is of the material of what it belongs to, and last of the installation's. */
  readonly materials?: {
    /** Material of its grounding electrode conductors. */
    readonly electrodeConductors?: Material;
  };
}

export const buildingShape: Shape = {
  is: "object",
  members: {
    id: { is: "checked", read: readId },
    circuit: { is: "text", says: "the feeder or branch circuit that supplies it" },
    disconnect: {
      is: "text",
      says: "the disconnect of a separately derived system that is in it, where the system supplies it with no circuit between; in place of circuit",
    },
    existingGroundedConductor: {
      is: "object",
      members: {
        equipmentGroundingConductor: {
          is: "flag",
          says: "whether an equipment grounding conductor runs with the supply",
        },
        continuousMetalPath: {
          is: "flag",
          says: "whether a continuous metal path is bonded at both buildings",
        },
        groundFaultProtection: {
          is: "flag",
          says: "whether ground-fault protection of equipment is on the supply side",
        },
      },
    },
    onSingleBranchCircuit: { is: "flag", says: "whether one branch circuit supplies it" },
    electrodes: {
      is: "list",
      of: {
        is: "variants",
        of: [
          {
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
          },
          {
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
          },
        ],
      },
      least: 0,
      most: 50,
    },
    electrodesNotConnected: {
      is: "list",
      of: {
        is: "object",
        members: {
          id: { is: "checked", read: readId },
          kind: {
            is: "words",
            of: ["rod", "pipe", "plate", "concrete-encased", "metal-water-pipe", "structural-metal", "ring"],
          },
          steelNotAccessible: { is: "flag", says: "whether its steel cannot be reached" },
        },
        optional: ["steelNotAccessible"],
      },
      least: 0,
      most: 50,
    },
    materials: {
      is: "object",
      members: { electrodeConductors: { is: "checked", read: readMaterial } },
      optional: ["electrodeConductors"],
    },
  },
  optional: [
    "circuit",
    "disconnect",
    "existingGroundedConductor",
    "electrodes",
    "electrodesNotConnected",
    "materials",
  ],
};

/** A feeder or branch circuit. */
export interface Circuit {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** Id of what it starts from: a disconnect, a generator, a transfer switch, a building, another circuit or its end, or what exists. */
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
  /** Why its conductors may be in parallel though smaller than 1/0 AWG: they supply control power, or run at 360 Hz or more, or to an elevator (2008). */
  readonly parallelException?: ParallelException;
  /** How the equipment grounding conductor runs. */
  readonly wiring:
    | "raceway"
    | "parallel-raceways"
    | "parallel-cables"
    | "tray-single-conductor"
    | "tray-cable";
  /** Raceways or cables in parallel; one equipment grounding conductor in each. */
  readonly raceways?: number;
  /** Whether its metal raceway, of a kind that the code names, is the equipment grounding conductor itself, so that no wire is required. */
  readonly racewayServes?: boolean;
  /** The grounded conductor that runs with them, with its load where that is known. */
  readonly groundedConductor?: GroundedConductor;
  /** Length in feet. */
  readonly lengthFeet?: number;
  /** Location, for amendments that are limited to one. */
  readonly location?: string;
  /** Materials of its own conductors. The nearest wins: what is left out is of the material of what it belongs to, and last of the installation's. */
  readonly materials?: {
    /** Material of its equipment grounding conductors. */
    readonly equipmentGrounding?: Material;
  };
}

export const circuitShape: Shape = {
  is: "object",
  members: {
    id: { is: "checked", read: readId },
    from: {
      is: "text",
      says: "what it starts from: a disconnect, a generator, a transfer switch, a building, another circuit or its end, or what exists",
    },
    to: { is: "text", says: "what it supplies" },
    device: circuitDeviceShape,
    conductors: { is: "checked", read: readChosenConductors },
    increasedFrom: {
      is: "object",
      members: { conductors: { is: "checked", read: readChosenConductors }, reason: increaseReasonShape },
    },
    parallelException: parallelExceptionShape,
    wiring: {
      is: "words",
      of: ["raceway", "parallel-raceways", "parallel-cables", "tray-single-conductor", "tray-cable"],
    },
    raceways: { is: "number", unit: "raceways or cables", whole: true },
    racewayServes: { is: "flag", says: "whether its metal raceway is the equipment grounding conductor" },
    groundedConductor: groundedConductorShape,
    lengthFeet: { is: "number", unit: "feet" },
    location: { is: "text", says: "the location" },
    materials: {
      is: "object",
      members: { equipmentGrounding: { is: "checked", read: readMaterial } },
      optional: ["equipmentGrounding"],
    },
  },
  optional: [
    "conductors",
    "increasedFrom",
    "parallelException",
    "raceways",
    "racewayServes",
    "groundedConductor",
    "lengthFeet",
    "location",
    "materials",
  ],
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
      /** What it belongs to; several systems in a list, each of which bonds it. */
      readonly of: string | readonly string[];
      /** Whether it is itself an electrode of what it belongs to; it is of every system that has it among its electrodes. */
      readonly isElectrode?: boolean;
      /** Id of the metal that is the electrode of a derived system, or the common electrode conductor, to which it is bonded in place of a jumper of that system; of water piping also the metal water pipe among the electrodes that it continues. */
      readonly bondedTo?: string;
      /** Metal water piping of the building. */
      readonly kind: "water";
      /** Meters and fittings in the pipe that are likely to be taken out. */
      readonly removable?: readonly RemovableFitting[];
      /** Materials of its own conductors. The nearest wins: what is left out is of the material of what it belongs to, and last of the installation's. */
      readonly materials?: {
        /** Material of its bonding jumpers. */
        readonly bondingJumpers?: Material;
      };
    }
  | {
      /** Name on the drawing. Every id is unique in the document. */
      readonly id: string;
      /** Metal water piping of one occupancy, isolated from that of the others. */
      readonly kind: "water-of-occupancy";
      /** Rating in amperes of the device that supplies the occupancy. */
      readonly deviceAmperes: number;
      /** Materials of its own conductors. The nearest wins: what is left out is of the material of what it belongs to, and last of the installation's. */
      readonly materials?: {
        /** Material of its bonding jumpers. */
        readonly bondingJumpers?: Material;
      };
    }
  | {
      /** Name on the drawing. Every id is unique in the document. */
      readonly id: string;
      /** Other metal piping that is likely to become energized. */
      readonly kind: "other";
      /** Rating in amperes of the device of the circuit that is likely to energize it. */
      readonly deviceAmperes: number;
      /** Materials of its own conductors. The nearest wins: what is left out is of the material of what it belongs to, and last of the installation's. */
      readonly materials?: {
        /** Material of its bonding jumpers. */
        readonly bondingJumpers?: Material;
      };
    };

export const pipingShape: Shape = {
  is: "variants",
  by: "kind",
  of: [
    {
      is: "object",
      members: {
        id: { is: "checked", read: readId },
        of: { is: "checked", read: readOwners },
        isElectrode: { is: "flag", says: "whether it is itself an electrode" },
        bondedTo: {
          is: "text",
          says: "the metal that is the electrode of a derived system, or the common electrode conductor, to which it is bonded in place of a jumper of that system; of water piping also the metal water pipe among the electrodes that it continues",
        },
        kind: { is: "exactly", value: "water" },
        removable: { is: "list", of: removableFittingShape, least: 0, most: 50 },
        materials: {
          is: "object",
          members: { bondingJumpers: { is: "checked", read: readMaterial } },
          optional: ["bondingJumpers"],
        },
      },
      optional: ["isElectrode", "bondedTo", "removable", "materials"],
    },
    {
      is: "object",
      members: {
        id: { is: "checked", read: readId },
        kind: { is: "exactly", value: "water-of-occupancy" },
        deviceAmperes: { is: "number", unit: "amperes" },
        materials: {
          is: "object",
          members: { bondingJumpers: { is: "checked", read: readMaterial } },
          optional: ["bondingJumpers"],
        },
      },
      optional: ["materials"],
    },
    {
      is: "object",
      members: {
        id: { is: "checked", read: readId },
        kind: { is: "exactly", value: "other" },
        deviceAmperes: { is: "number", unit: "amperes" },
        materials: {
          is: "object",
          members: { bondingJumpers: { is: "checked", read: readMaterial } },
          optional: ["bondingJumpers"],
        },
      },
      optional: ["materials"],
    },
  ],
};

/** Exposed structural metal that forms a building frame. */
export interface StructuralMetal {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** What it belongs to; several systems in a list, each of which bonds it. */
  readonly of: string | readonly string[];
  /** Whether it is itself an electrode of what it belongs to; it is of every system that has it among its electrodes. */
  readonly isElectrode?: boolean;
  /** Id of the metal that is the electrode of a derived system, or the common electrode conductor, to which it is bonded in place of a jumper of that system; of water piping also the metal water pipe among the electrodes that it continues. */
  readonly bondedTo?: string;
  /** Materials of its own conductors. The nearest wins: what is left out is of the material of what it belongs to, and last of the installation's. */
  readonly materials?: {
    /** Material of its bonding jumpers. */
    readonly bondingJumpers?: Material;
  };
}

export const structuralMetalShape: Shape = {
  is: "object",
  members: {
    id: { is: "checked", read: readId },
    of: { is: "checked", read: readOwners },
    isElectrode: { is: "flag", says: "whether it is itself an electrode" },
    bondedTo: {
      is: "text",
      says: "the metal that is the electrode of a derived system, or the common electrode conductor, to which it is bonded in place of a jumper of that system; of water piping also the metal water pipe among the electrodes that it continues",
    },
    materials: {
      is: "object",
      members: { bondingJumpers: { is: "checked", read: readMaterial } },
      optional: ["bondingJumpers"],
    },
  },
  optional: ["isElectrode", "bondedTo", "materials"],
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
  /** Transfer switches between sources. */
  readonly transferSwitches?: readonly TransferSwitch[];
  /** Feeders and branch circuits. */
  readonly circuits?: readonly Circuit[];
  /** Equipment bonding jumpers on the load side. */
  readonly loadSideJumpers?: readonly LoadSideJumper[];
  /** Buildings and structures on a feeder, a branch circuit or a derived system. */
  readonly buildings?: readonly Building[];
  /** Connections of the grounded conductor to ground beyond the service disconnects and system bonding jumpers. */
  readonly loadSideConnections?: readonly LoadSideConnection[];
  /** Metal piping. */
  readonly piping?: readonly Piping[];
  /** Structural metal. */
  readonly structuralMetal?: readonly StructuralMetal[];
  /** Intersystem bonding terminations. */
  readonly intersystem?: readonly IntersystemTermination[];
  /** What is installed or drawn, to be checked. */
  readonly installed?: Installed;
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
    transferSwitches: { is: "list", of: transferSwitchShape, least: 0, most: 100 },
    circuits: { is: "list", of: circuitShape, least: 0, most: 2000 },
    loadSideJumpers: { is: "list", of: loadSideJumperShape, least: 0, most: 2000 },
    buildings: { is: "list", of: buildingShape, least: 0, most: 500 },
    loadSideConnections: { is: "list", of: loadSideConnectionShape, least: 0, most: 500 },
    piping: { is: "list", of: pipingShape, least: 0, most: 1000 },
    structuralMetal: { is: "list", of: structuralMetalShape, least: 0, most: 1000 },
    intersystem: { is: "list", of: intersystemTerminationShape, least: 0, most: 500 },
    installed: installedShape,
  },
  optional: [
    "$schema",
    "existing",
    "services",
    "derivedSystems",
    "generators",
    "transferSwitches",
    "circuits",
    "loadSideJumpers",
    "buildings",
    "loadSideConnections",
    "piping",
    "structuralMetal",
    "intersystem",
    "installed",
  ],
};

// Generated from shape.ts by "npm run generate"; do not edit.
import type { Material } from "../../conductor/index.js";
import { readMaterial, readSize } from "../../conductor/read.js";
import type { Shape } from "../../input/shapes.js";
import type { Grounding } from "../../systems/shape.generated.js";
import { groundingShape } from "../../systems/shape.generated.js";
import type { BoxWithoutSupply } from "../boxes/shape.generated.js";
import { boxWithoutSupplyShape } from "../boxes/shape.generated.js";
import type { SwitchboardBus } from "../buses/shape.generated.js";
import { switchboardBusShape } from "../buses/shape.generated.js";
import type { ElectrodeConnection, InstalledElectrode } from "../electrodes/shape.generated.js";
import { routeShape } from "../electrodes/shape.generated.js";
import type { SharedRaceway } from "../raceways/shape.generated.js";
import { sharedRacewayShape } from "../raceways/shape.generated.js";
import { readId } from "../read-id.js";
import type { Run } from "../runs/shape.generated.js";
import { runShape } from "../runs/shape.generated.js";
import { removableFittingShape } from "../water-pipe/shape.generated.js";

/** A box ahead of the disconnects of a service. */
export interface Box {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** What it is; transformer-cabinet is a current-transformer cabinet. */
  readonly kind: "meter" | "transformer-cabinet" | "gutter" | "wireway" | "pull-box";
  /** What bonds its metal on the supply side; locknuts are what was found where nothing but ordinary locknuts does. */
  readonly bondedBy: "jumper" | "grounded-conductor" | "locknuts";
  /** Form of its supply-side bonding jumper: a wire by default; a bus gets an area instead of a size. */
  readonly jumperForm?: "wire" | "bus";
  /** Materials of its own conductors. The nearest wins: what is left out is of the material of what it belongs to, and last of the installation's. */
  readonly materials?: {
    /** Material of its bonding jumpers. */
    readonly bondingJumpers?: Material;
  };
}

export const boxShape: Shape = {
  is: "object",
  members: {
    id: { is: "checked", read: readId },
    kind: { is: "words", of: ["meter", "transformer-cabinet", "gutter", "wireway", "pull-box"] },
    bondedBy: { is: "words", of: ["jumper", "grounded-conductor", "locknuts"] },
    jumperForm: { is: "words", of: ["wire", "bus"] },
    materials: {
      is: "object",
      members: { bondingJumpers: { is: "checked", read: readMaterial } },
      optional: ["bondingJumpers"],
    },
  },
  optional: ["jumperForm", "materials"],
};

/** The jumper that the factory fits between grounded conductor and frame; left out where there is none. */
export type FactoryJumper = "in-place" | "removed";

export const factoryJumperShape: Shape = { is: "words", of: ["in-place", "removed"] };

/** A separately derived system, from its source to its disconnects. */
export interface DerivedSystem {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** The source. */
  readonly source: {
    /** Name on the drawing. Every id is unique in the document. */
    readonly id: string;
    /** What makes the system. */
    readonly kind: "transformer" | "generator" | "other";
    /** Whether the source stands outdoors. */
    readonly outdoors: boolean;
    /** Whether it is a transformer of at most 1000 VA for Class 1, 2 or 3 circuits; it is not by default. */
    readonly controlTransformer?: boolean;
    /** Rating of an overcurrent device in the enclosure of the source, as the breaker on a generator set: the runs are then feeders from that device. */
    readonly deviceAmperes?: number;
    /** The jumper that the factory fits between grounded conductor and frame; left out where there is none. */
    readonly factoryJumper?: FactoryJumper;
  };
  /** How the system is grounded; `grounded-phase` is a corner-grounded delta. */
  readonly grounding: Grounding;
  /** How the windings are connected. */
  readonly connection: "three-phase-wye" | "single-phase-three-wire" | "three-phase-delta" | "high-leg-delta";
  /** Present if and only if the system is grounded through an impedance. */
  readonly impedance?: {
    /** Name of the impedance, from which electrode conductors may start. */
    readonly id?: string;
    /** Largest current that the impedance lets through, in amperes. */
    readonly amperes: number;
    /** Where the grounding electrode conductor is connected. */
    readonly electrodeConductorAt: "impedance" | "first-disconnect";
  };
  /** The runs of conductors from the source to the disconnects. */
  readonly runs: readonly Run[];
  /** Raceways, nipples and wireways that several runs share. */
  readonly sharedRaceways?: readonly SharedRaceway[];
  /** The disconnects. */
  readonly disconnects: readonly {
    /** Name on the drawing. Every id is unique in the document. */
    readonly id: string;
    /** Rating in amperes. */
    readonly amperes: number;
    /** Materials of its own conductors. The nearest wins: what is left out is of the material of what it belongs to, and last of the installation's. */
    readonly materials?: {
      /** Material of its bonding jumpers. */
      readonly bondingJumpers?: Material;
      /** Material of its grounding electrode conductors. */
      readonly electrodeConductors?: Material;
    };
  }[];
  /** Form of its system bonding jumpers: a wire by default; a bus gets an area instead of a size. */
  readonly jumperForm?: "wire" | "bus";
  /** Where the system bonding jumper is; compare lists the arrangements that are permitted without a condition. */
  readonly jumperAt: "source" | "disconnects" | "both-ends" | "compare";
  /** Id of the transfer switch that it feeds, which must not carry the grounded conductor through. */
  readonly transferSwitch?: string;
  /** The common electrode conductor of several derived systems that this one taps. */
  readonly commonElectrodeConductor?: {
    /** Id of a common electrode conductor, alike in all systems that tap it; or of the metal water piping or structural metal that serves as one. */
    readonly id: string;
    /** Materials of its own conductors. The nearest wins: what is left out is of the material of what it belongs to, and last of the installation's. */
    readonly materials?: {
      /** Material of its grounding electrode conductors. */
      readonly electrodeConductors?: Material;
    };
  };
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
  /** Materials of its own conductors. The nearest wins: what is left out is of the material of what it belongs to, and last of the installation's. */
  readonly materials?: {
    /** Material of its bonding jumpers. */
    readonly bondingJumpers?: Material;
    /** Material of its grounded conductors. */
    readonly groundedConductors?: Material;
    /** Material of its grounding electrode conductors. */
    readonly electrodeConductors?: Material;
  };
}

export const derivedSystemShape: Shape = {
  is: "object",
  members: {
    id: { is: "checked", read: readId },
    source: {
      is: "object",
      members: {
        id: { is: "checked", read: readId },
        kind: { is: "words", of: ["transformer", "generator", "other"] },
        outdoors: { is: "flag", says: "whether the source stands outdoors" },
        controlTransformer: { is: "flag", says: "whether the source is a small control transformer" },
        deviceAmperes: { is: "number", unit: "amperes" },
        factoryJumper: factoryJumperShape,
      },
      optional: ["controlTransformer", "deviceAmperes", "factoryJumper"],
    },
    grounding: groundingShape,
    connection: {
      is: "words",
      of: ["three-phase-wye", "single-phase-three-wire", "three-phase-delta", "high-leg-delta"],
    },
    impedance: {
      is: "object",
      members: {
        id: { is: "checked", read: readId },
        amperes: { is: "number", unit: "amperes" },
        electrodeConductorAt: { is: "words", of: ["impedance", "first-disconnect"] },
      },
      optional: ["id"],
    },
    runs: { is: "list", of: runShape, least: 1, most: 200 },
    sharedRaceways: { is: "list", of: sharedRacewayShape, least: 0, most: 100 },
    disconnects: {
      is: "list",
      of: {
        is: "object",
        members: {
          id: { is: "checked", read: readId },
          amperes: { is: "number", unit: "amperes" },
          materials: {
            is: "object",
            members: {
              bondingJumpers: { is: "checked", read: readMaterial },
              electrodeConductors: { is: "checked", read: readMaterial },
            },
            optional: ["bondingJumpers", "electrodeConductors"],
          },
        },
        optional: ["materials"],
      },
      least: 1,
      most: 100,
    },
    jumperForm: { is: "words", of: ["wire", "bus"] },
    jumperAt: { is: "words", of: ["source", "disconnects", "both-ends", "compare"] },
    transferSwitch: {
      is: "text",
      says: "the transfer switch that it feeds, which must not carry the grounded conductor through",
    },
    commonElectrodeConductor: {
      is: "object",
      members: {
        id: {
          is: "text",
          says: "a common electrode conductor, alike in all systems that tap it; or of the metal water piping or structural metal that serves as one",
        },
        materials: {
          is: "object",
          members: { electrodeConductors: { is: "checked", read: readMaterial } },
          optional: ["electrodeConductors"],
        },
      },
      optional: ["materials"],
    },
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
    materials: {
      is: "object",
      members: {
        bondingJumpers: { is: "checked", read: readMaterial },
        groundedConductors: { is: "checked", read: readMaterial },
        electrodeConductors: { is: "checked", read: readMaterial },
      },
      optional: ["bondingJumpers", "groundedConductors", "electrodeConductors"],
    },
  },
  optional: [
    "impedance",
    "sharedRaceways",
    "jumperForm",
    "transferSwitch",
    "commonElectrodeConductor",
    "electrodes",
    "materials",
  ],
};

/** A disconnect of a service. */
export interface ServiceDisconnect {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** What it is marked as. An emergency or meter disconnect here is one that is not service equipment. */
  readonly designation:
    | "service-disconnect"
    | "emergency-disconnect"
    | "meter-disconnect"
    | "supply-side-source";
  /** Rating in amperes. */
  readonly amperes: number;
  /** Id of the bus of the switchboard that it is a section of; no run of its own then leads to it. */
  readonly bus?: string;
  /** Form of its main bonding jumper, or of the jumper that bonds it: a wire by default; a bus gets an area instead of a size. */
  readonly jumperForm?: "wire" | "bus";
  /** What bonds an emergency or meter disconnect, or a supply-side source under an edition without a rule for it. */
  readonly bondedBy?: "jumper" | "grounded-conductor" | "locknuts";
  /** Materials of its own conductors. The nearest wins: what is left out is of the material of what it belongs to, and last of the installation's. */
  readonly materials?: {
    /** Material of its bonding jumpers. */
    readonly bondingJumpers?: Material;
    /** Material of its grounding electrode conductors. */
    readonly electrodeConductors?: Material;
  };
}

export const serviceDisconnectShape: Shape = {
  is: "object",
  members: {
    id: { is: "checked", read: readId },
    designation: {
      is: "words",
      of: ["service-disconnect", "emergency-disconnect", "meter-disconnect", "supply-side-source"],
    },
    amperes: { is: "number", unit: "amperes" },
    bus: {
      is: "text",
      says: "the bus of the switchboard that it is a section of; no run of its own then leads to it",
    },
    jumperForm: { is: "words", of: ["wire", "bus"] },
    bondedBy: { is: "words", of: ["jumper", "grounded-conductor", "locknuts"] },
    materials: {
      is: "object",
      members: {
        bondingJumpers: { is: "checked", read: readMaterial },
        electrodeConductors: { is: "checked", read: readMaterial },
      },
      optional: ["bondingJumpers", "electrodeConductors"],
    },
  },
  optional: ["bus", "jumperForm", "bondedBy", "materials"],
};

/** A service, from the utility to its disconnects. */
export interface Service {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** How the system is grounded; `grounded-phase` is a corner-grounded delta. */
  readonly grounding: Grounding;
  /** How the windings are connected. */
  readonly connection: "three-phase-wye" | "single-phase-three-wire" | "three-phase-delta" | "high-leg-delta";
  /** Present if and only if the system is grounded through an impedance. */
  readonly impedance?: {
    /** Name of the impedance, from which electrode conductors may start. */
    readonly id?: string;
    /** Largest current that the impedance lets through, in amperes. */
    readonly amperes: number;
    /** Where the grounding electrode conductor is connected. */
    readonly electrodeConductorAt: "impedance" | "first-disconnect";
  };
  /** The utility's source. */
  readonly utility: {
    /** Name on the drawing. Every id is unique in the document. */
    readonly id: string;
    /** Whether the utility's transformer stands outdoors. */
    readonly outdoorTransformer: boolean;
  };
  /** Boxes ahead of the disconnects. */
  readonly boxes?: readonly Box[];
  /** Boxes that no supply conductors run through. */
  readonly boxesWithoutSupply?: readonly BoxWithoutSupply[];
  /** Buses of switchboards, with the disconnects that stand on them. */
  readonly buses?: readonly SwitchboardBus[];
  /** The runs of conductors from the source to the disconnects. */
  readonly runs: readonly Run[];
  /** Raceways, nipples and wireways that several runs share. */
  readonly sharedRaceways?: readonly SharedRaceway[];
  /** The disconnects. */
  readonly disconnects: readonly ServiceDisconnect[];
  /** Whether each disconnect has an enclosure of its own or all are one assembly listed as service equipment. */
  readonly housing: "separate-enclosures" | "listed-assembly";
  /** The inside of a listed assembly. */
  readonly assembly?: {
    /** Whether each disconnect has a section or compartment of its own, or several share one. */
    readonly compartments: "one-for-each" | "shared";
    /** Whether it is existing service equipment, built under an earlier edition. */
    readonly existing?: boolean;
  };
  /** A common electrode conductor with a tap from every service disconnect. */
  readonly commonElectrodeConductor?: {
    /** Name on the drawing. Every id is unique in the document. */
    readonly id: string;
    /** Materials of its own conductors. The nearest wins: what is left out is of the material of what it belongs to, and last of the installation's. */
    readonly materials?: {
      /** Material of its grounding electrode conductors. */
      readonly electrodeConductors?: Material;
    };
  };
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
    /** Material of its bonding jumpers. */
    readonly bondingJumpers?: Material;
    /** Material of its grounded conductors. */
    readonly groundedConductors?: Material;
    /** Material of its grounding electrode conductors. */
    readonly electrodeConductors?: Material;
  };
}

export const serviceShape: Shape = {
  is: "object",
  members: {
    id: { is: "checked", read: readId },
    grounding: groundingShape,
    connection: {
      is: "words",
      of: ["three-phase-wye", "single-phase-three-wire", "three-phase-delta", "high-leg-delta"],
    },
    impedance: {
      is: "object",
      members: {
        id: { is: "checked", read: readId },
        amperes: { is: "number", unit: "amperes" },
        electrodeConductorAt: { is: "words", of: ["impedance", "first-disconnect"] },
      },
      optional: ["id"],
    },
    utility: {
      is: "object",
      members: {
        id: { is: "checked", read: readId },
        outdoorTransformer: { is: "flag", says: "whether the utility's transformer stands outdoors" },
      },
    },
    boxes: { is: "list", of: boxShape, least: 0, most: 100 },
    boxesWithoutSupply: { is: "list", of: boxWithoutSupplyShape, least: 0, most: 100 },
    buses: { is: "list", of: switchboardBusShape, least: 0, most: 50 },
    runs: { is: "list", of: runShape, least: 1, most: 200 },
    sharedRaceways: { is: "list", of: sharedRacewayShape, least: 0, most: 100 },
    disconnects: { is: "list", of: serviceDisconnectShape, least: 1, most: 100 },
    housing: { is: "words", of: ["separate-enclosures", "listed-assembly"] },
    assembly: {
      is: "object",
      members: {
        compartments: { is: "words", of: ["one-for-each", "shared"] },
        existing: { is: "flag", says: "whether the assembly exists" },
      },
      optional: ["existing"],
    },
    commonElectrodeConductor: {
      is: "object",
      members: {
        id: { is: "checked", read: readId },
        materials: {
          is: "object",
          members: { electrodeConductors: { is: "checked", read: readMaterial } },
          optional: ["electrodeConductors"],
        },
      },
      optional: ["materials"],
    },
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
      members: {
        bondingJumpers: { is: "checked", read: readMaterial },
        groundedConductors: { is: "checked", read: readMaterial },
        electrodeConductors: { is: "checked", read: readMaterial },
      },
      optional: ["bondingJumpers", "groundedConductors", "electrodeConductors"],
    },
  },
  optional: [
    "impedance",
    "boxes",
    "boxesWithoutSupply",
    "buses",
    "sharedRaceways",
    "assembly",
    "commonElectrodeConductor",
    "electrodes",
    "electrodesNotConnected",
    "materials",
  ],
};

// Generated from shape.ts by "npm run generate"; do not edit.
import type { ConductorSize, Material } from "../../conductor/index.js";
import { readMaterial, readSize } from "../../conductor/read.js";
import type { Shape } from "../../input/shapes.js";
import type { ChosenConductors } from "../../supply/shape.generated.js";
import { supplySetShape } from "../../supply/shape.generated.js";
import type { Grounding } from "../../systems/shape.generated.js";
import { groundingShape } from "../../systems/shape.generated.js";
import { readId } from "../read-id.js";

/** A box ahead of the disconnects of a service. */
export interface Box {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** What it is; transformer-cabinet is a current-transformer cabinet. */
  readonly kind: "meter" | "transformer-cabinet" | "gutter" | "wireway" | "pull-box";
  /** What bonds its metal on the supply side. */
  readonly bondedBy: "jumper" | "grounded-conductor";
}

export const boxShape: Shape = {
  is: "object",
  members: {
    id: { is: "checked", read: readId },
    kind: { is: "words", of: ["meter", "transformer-cabinet", "gutter", "wireway", "pull-box"] },
    bondedBy: { is: "words", of: ["jumper", "grounded-conductor"] },
  },
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
    | "ring"
    | "metal-water-pipe"
    | "structural-metal"
    | "other";
  /** Size of the bare copper conductor of a ring. */
  readonly ringConductor?: ConductorSize;
  /** Id of what its conductor comes from: a disconnect, box, source or building, the common electrode conductor, or another electrode. */
  readonly from: string;
  /** Whether its conductor runs in a ferrous metal raceway, whose ends are bonded to it. */
  readonly ferrousRaceway?: boolean;
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
        "ring",
        "metal-water-pipe",
        "structural-metal",
        "other",
      ],
    },
    ringConductor: { is: "checked", read: readSize },
    from: {
      is: "text",
      says: "what its conductor comes from: a disconnect, box, source or building, the common electrode conductor, or another electrode",
    },
    ferrousRaceway: { is: "flag", says: "whether its conductor runs in a ferrous metal raceway" },
  },
  optional: ["ringConductor", "ferrousRaceway"],
};

/** Load of the grounded conductor, whose requirement stands beside the table's. */
export interface Load {
  /** Amperes of the grounded conductor, of all its parallel parts together. */
  readonly amperes: number;
  /** Rating of the circuit, which decides the temperature of its terminations. */
  readonly circuitAmperes: number;
  /** Whether the terminations of a circuit of 100 A or less are listed for 75 C; they are not by default. */
  readonly listedFor75?: boolean;
}

export const loadShape: Shape = {
  is: "object",
  members: {
    amperes: { is: "number", unit: "amperes" },
    circuitAmperes: { is: "number", unit: "amperes" },
    listedFor75: { is: "flag", says: "whether the terminations are listed for 75 C" },
  },
  optional: ["listedFor75"],
};

/** How the sets run; one nonmetallic raceway by default. */
export interface Raceways {
  /** Raceways or cables that the sets are divided over evenly. */
  readonly count: number;
  /** What they are made of. */
  readonly kind: "nonflexible-metal" | "flexible-metal" | "nonmetallic";
}

export const racewaysShape: Shape = {
  is: "object",
  members: {
    count: { is: "number", unit: "raceways or cables", whole: true },
    kind: { is: "words", of: ["nonflexible-metal", "flexible-metal", "nonmetallic"] },
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
  /** How the sets run; one nonmetallic raceway by default. */
  readonly raceways?: Raceways;
  /** Whether metal raceways get a jumper each or one in common, or, at a service, are bonded by fittings instead; common by default. */
  readonly racewayJumpers?: "per-raceway" | "common" | "fittings-instead";
  /** Load of the grounded conductor, whose requirement stands beside the table's. */
  readonly load?: Load;
  /** Length in feet. */
  readonly lengthFeet?: number;
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
                material: { is: "checked", read: readMaterial },
                sets: { is: "number", unit: "sets", whole: true },
              },
            },
          },
        },
      ],
    },
    raceways: racewaysShape,
    racewayJumpers: { is: "words", of: ["per-raceway", "common", "fittings-instead"] },
    load: loadShape,
    lengthFeet: { is: "number", unit: "feet" },
  },
  optional: ["raceways", "racewayJumpers", "load", "lengthFeet"],
};

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
  };
  /** How the system is grounded; `grounded-phase` is a corner-grounded delta. */
  readonly grounding: Grounding;
  /** How the windings are connected. */
  readonly connection: "three-phase-wye" | "single-phase-three-wire" | "three-phase-delta" | "high-leg-delta";
  /** Present if and only if the system is grounded through an impedance. */
  readonly impedance?: {
    /** Largest current that the impedance lets through, in amperes. */
    readonly amperes: number;
    /** Where the grounding electrode conductor is connected. */
    readonly electrodeConductorAt: "impedance" | "first-disconnect";
  };
  /** The runs of conductors from the source to the disconnects. */
  readonly runs: readonly Run[];
  /** The disconnects. */
  readonly disconnects: readonly {
    /** Name on the drawing. Every id is unique in the document. */
    readonly id: string;
    /** Rating in amperes. */
    readonly amperes: number;
  }[];
  /** Where the system bonding jumper is; compare lists the arrangements that are permitted without a condition. */
  readonly jumperAt: "source" | "disconnects" | "both-ends" | "compare";
  /** The common electrode conductor of several derived systems that this one taps. */
  readonly commonElectrodeConductor?: {
    /** Id of a common electrode conductor, alike in all systems that tap it. */
    readonly id: string;
  };
  /** The grounding electrodes. */
  readonly electrodes?: readonly InstalledElectrode[];
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
      },
      optional: ["controlTransformer"],
    },
    grounding: groundingShape,
    connection: {
      is: "words",
      of: ["three-phase-wye", "single-phase-three-wire", "three-phase-delta", "high-leg-delta"],
    },
    impedance: {
      is: "object",
      members: {
        amperes: { is: "number", unit: "amperes" },
        electrodeConductorAt: { is: "words", of: ["impedance", "first-disconnect"] },
      },
    },
    runs: { is: "list", of: runShape, least: 1, most: 200 },
    disconnects: {
      is: "list",
      of: {
        is: "object",
        members: { id: { is: "checked", read: readId }, amperes: { is: "number", unit: "amperes" } },
      },
      least: 1,
      most: 100,
    },
    jumperAt: { is: "words", of: ["source", "disconnects", "both-ends", "compare"] },
    commonElectrodeConductor: {
      is: "object",
      members: { id: { is: "text", says: "a common electrode conductor, alike in all systems that tap it" } },
    },
    electrodes: { is: "list", of: installedElectrodeShape, least: 0, most: 50 },
  },
  optional: ["impedance", "commonElectrodeConductor", "electrodes"],
};

/** A generator that is not a separately derived system: its grounded conductor is not switched. */
export interface Generator {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** Its ungrounded conductors. */
  readonly supply:
    | (ChosenConductors & { readonly forLoad?: never })
    | (RequiredForLoad & { readonly sets?: never });
  /** Id of the first disconnect or transfer switch, or a name of its own. */
  readonly to: string;
  /** Whether it has an overcurrent device of its own. */
  readonly integralOvercurrentDevice: boolean;
  /** Rating of the integral device; present if and only if there is one. */
  readonly deviceAmperes?: number;
  /** Length in feet. */
  readonly lengthFeet?: number;
}

export const generatorShape: Shape = {
  is: "object",
  members: {
    id: { is: "checked", read: readId },
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
                material: { is: "checked", read: readMaterial },
                sets: { is: "number", unit: "sets", whole: true },
              },
            },
          },
        },
      ],
    },
    to: { is: "text", says: "the first disconnect or transfer switch, or a name of its own" },
    integralOvercurrentDevice: { is: "flag", says: "whether it has an overcurrent device of its own" },
    deviceAmperes: { is: "number", unit: "amperes" },
    lengthFeet: { is: "number", unit: "feet" },
  },
  optional: ["deviceAmperes", "lengthFeet"],
};

/** Conductors that are yet to be chosen for a load. */
export interface RequiredForLoad {
  /** No conductors are chosen yet: those that this load requires, in so many sets. */
  readonly forLoad: {
    /** Amperes that the conductors are to carry. */
    readonly amperes: number;
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
        material: { is: "checked", read: readMaterial },
        sets: { is: "number", unit: "sets", whole: true },
      },
    },
  },
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
  /** What bonds an emergency or meter disconnect, or a supply-side source under an edition without a rule for it. */
  readonly bondedBy?: "jumper" | "grounded-conductor";
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
    bondedBy: { is: "words", of: ["jumper", "grounded-conductor"] },
  },
  optional: ["bondedBy"],
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
  /** The runs of conductors from the source to the disconnects. */
  readonly runs: readonly Run[];
  /** The disconnects. */
  readonly disconnects: readonly ServiceDisconnect[];
  /** Whether each disconnect has an enclosure of its own or all are one assembly listed as service equipment. */
  readonly housing: "separate-enclosures" | "listed-assembly";
  /** A common electrode conductor with a tap from every service disconnect. */
  readonly commonElectrodeConductor?: {
    /** Name on the drawing. Every id is unique in the document. */
    readonly id: string;
  };
  /** The grounding electrodes. */
  readonly electrodes?: readonly InstalledElectrode[];
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
        amperes: { is: "number", unit: "amperes" },
        electrodeConductorAt: { is: "words", of: ["impedance", "first-disconnect"] },
      },
    },
    utility: {
      is: "object",
      members: {
        id: { is: "checked", read: readId },
        outdoorTransformer: { is: "flag", says: "whether the utility's transformer stands outdoors" },
      },
    },
    boxes: { is: "list", of: boxShape, least: 0, most: 100 },
    runs: { is: "list", of: runShape, least: 1, most: 200 },
    disconnects: { is: "list", of: serviceDisconnectShape, least: 1, most: 100 },
    housing: { is: "words", of: ["separate-enclosures", "listed-assembly"] },
    commonElectrodeConductor: { is: "object", members: { id: { is: "checked", read: readId } } },
    electrodes: { is: "list", of: installedElectrodeShape, least: 0, most: 50 },
  },
  optional: ["impedance", "boxes", "commonElectrodeConductor", "electrodes"],
};

// Generated from shape.ts by "npm run generate"; do not edit.
import type { Material } from "../../conductor/index.js";
import { readMaterial } from "../../conductor/read.js";
import type { Shape } from "../../input/shapes.js";
import type { ChosenConductors } from "../../supply/shape.generated.js";
import { supplySetShape } from "../../supply/shape.generated.js";
import { readId } from "../read-id.js";
import type { Load, RequiredForLoad } from "../runs/shape.generated.js";
import { loadShape } from "../runs/shape.generated.js";
import type { FactoryJumper } from "../systems/shape.generated.js";
import { factoryJumperShape } from "../systems/shape.generated.js";

/** The grounded conductor that runs with them, with its load where that is known. */
export interface GroundedConductor {
  /** Load of the grounded conductor, whose requirement stands beside the table's. */
  readonly load?: Load;
}

export const groundedConductorShape: Shape = {
  is: "object",
  members: { load: loadShape },
  optional: ["load"],
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
  /** The grounded conductor that runs with them, with its load where that is known. */
  readonly groundedConductor?: GroundedConductor;
  /** Raceways or cables in parallel that its conductors run in. */
  readonly raceways?: number;
  /** The jumper that the factory fits between grounded conductor and frame; left out where there is none. */
  readonly factoryJumper?: FactoryJumper;
  /** Length in feet. */
  readonly lengthFeet?: number;
  /** Materials of its own conductors. The nearest wins: what is left out is of the material of what it belongs to, and last of the installation's. */
  readonly materials?: {
    /** Material of its bonding jumpers. */
    readonly bondingJumpers?: Material;
    /** Material of its grounded conductors. */
    readonly groundedConductors?: Material;
    /** Material of its equipment grounding conductors. */
    readonly equipmentGrounding?: Material;
  };
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
    to: { is: "text", says: "the first disconnect or transfer switch, or a name of its own" },
    integralOvercurrentDevice: { is: "flag", says: "whether it has an overcurrent device of its own" },
    deviceAmperes: { is: "number", unit: "amperes" },
    groundedConductor: groundedConductorShape,
    raceways: { is: "number", unit: "raceways or cables", whole: true },
    factoryJumper: factoryJumperShape,
    lengthFeet: { is: "number", unit: "feet" },
    materials: {
      is: "object",
      members: {
        bondingJumpers: { is: "checked", read: readMaterial },
        groundedConductors: { is: "checked", read: readMaterial },
        equipmentGrounding: { is: "checked", read: readMaterial },
      },
      optional: ["bondingJumpers", "groundedConductors", "equipmentGrounding"],
    },
  },
  optional: ["deviceAmperes", "groundedConductor", "raceways", "factoryJumper", "lengthFeet", "materials"],
};

/** A transfer switch between a normal and an alternate source. */
export interface TransferSwitch {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** Whether it switches the grounded conductor, carries it through solidly, or has none at all. Carried through, the source behind it is not separately derived. */
  readonly groundedConductor: "switched" | "carried-through" | "none";
}

export const transferSwitchShape: Shape = {
  is: "object",
  members: {
    id: { is: "checked", read: readId },
    groundedConductor: { is: "words", of: ["switched", "carried-through", "none"] },
  },
};

// Generated from shape.ts by "npm run generate"; do not edit.
import type { ConductorSize, Material } from "../../conductor/index.js";
import { readMaterial, readSize } from "../../conductor/read.js";
import type { Shape } from "../../input/shapes.js";
import { readId } from "../read-id.js";

/** A connection of the grounded conductor to ground on the load side, drawn or found. */
export interface LoadSideConnection {
  /** Name on the drawing. Every id is unique in the document. */
  readonly id: string;
  /** Id of where it is: the end of a circuit, a building, or a disconnect of a derived system whose jumper is at its source. */
  readonly at: string;
  /** The exception under which it may stay, with its conditions. */
  readonly exception?:
    | {
        /** The frame of a range, cooking unit, oven or dryer. */
        readonly kind: "range-or-dryer";
        /** Whether the branch circuit exists and has no equipment grounding conductor. */
        readonly existingBranchCircuit: boolean;
        /** Whether the grounded conductor is insulated, or part of a service-entrance cable from the service equipment. */
        readonly insulatedOrServiceCable: boolean;
        /** The grounded conductor that runs to it. */
        readonly groundedConductor: {
          /** Trade size, for example 4/0 AWG or 500 kcmil. */
          readonly size: ConductorSize;
          /** Material of a conductor. */
          readonly material: Material;
        };
      }
    | {
        /** A meter enclosure behind the service disconnect. */
        readonly kind: "meter-enclosure";
        /** Whether it stands immediately adjacent to the service disconnect. */
        readonly besideServiceDisconnect: boolean;
        /** Whether ground-fault protection of equipment is installed ahead. */
        readonly groundFaultProtection: boolean;
        /** The grounded conductor that runs to it. */
        readonly groundedConductor: {
          /** Trade size, for example 4/0 AWG or 500 kcmil. */
          readonly size: ConductorSize;
          /** Material of a conductor. */
          readonly material: Material;
        };
      };
}

export const loadSideConnectionShape: Shape = {
  is: "object",
  members: {
    id: { is: "checked", read: readId },
    at: {
      is: "text",
      says: "where it is: the end of a circuit, a building, or a disconnect of a derived system whose jumper is at its source",
    },
    exception: {
      is: "variants",
      by: "kind",
      of: [
        {
          is: "object",
          members: {
            kind: { is: "exactly", value: "range-or-dryer" },
            existingBranchCircuit: { is: "flag", says: "whether the branch circuit exists" },
            insulatedOrServiceCable: {
              is: "flag",
              says: "whether the grounded conductor is insulated or part of a service cable",
            },
            groundedConductor: {
              is: "object",
              members: {
                size: { is: "checked", read: readSize },
                material: { is: "checked", read: readMaterial },
              },
            },
          },
        },
        {
          is: "object",
          members: {
            kind: { is: "exactly", value: "meter-enclosure" },
            besideServiceDisconnect: { is: "flag", says: "whether it stands beside the service disconnect" },
            groundFaultProtection: {
              is: "flag",
              says: "whether there is ground-fault protection of equipment",
            },
            groundedConductor: {
              is: "object",
              members: {
                size: { is: "checked", read: readSize },
                material: { is: "checked", read: readMaterial },
              },
            },
          },
        },
      ],
    },
  },
  optional: ["exception"],
};

import * as v from "valibot";
import { conductorSize, material } from "../../conductor/shape.js";
import { says } from "../../input/define.js";
import { id, reference, yes } from "../define.js";

const connectedConductor = v.pipe(
  v.strictObject({ size: conductorSize, material }),
  says("The grounded conductor that runs to it."),
);

export const loadSideConnection = v.pipe(
  v.strictObject({
    id,
    at: reference(
      "where it is: the end of a circuit, a building, or a disconnect of a derived system whose jumper is at its source",
    ),
    exception: v.optional(
      v.pipe(
        v.variant("kind", [
          v.strictObject({
            kind: v.pipe(
              v.literal("range-or-dryer"),
              says("The frame of a range, cooking unit, oven or dryer."),
            ),
            existingBranchCircuit: yes(
              "whether the branch circuit exists",
              "Whether the branch circuit exists and has no equipment grounding conductor.",
            ),
            insulatedOrServiceCable: yes(
              "whether the grounded conductor is insulated or part of a service cable",
              "Whether the grounded conductor is insulated, or part of a service-entrance cable from the service equipment.",
            ),
            groundedConductor: connectedConductor,
          }),
          v.strictObject({
            kind: v.pipe(
              v.literal("meter-enclosure"),
              says("A meter enclosure behind the service disconnect."),
            ),
            besideServiceDisconnect: yes(
              "whether it stands beside the service disconnect",
              "Whether it stands immediately adjacent to the service disconnect.",
            ),
            groundFaultProtection: yes(
              "whether there is ground-fault protection of equipment",
              "Whether ground-fault protection of equipment is installed ahead.",
            ),
            groundedConductor: connectedConductor,
          }),
        ]),
        says("The exception under which it may stay, with its conditions."),
      ),
    ),
  }),
  says("A connection of the grounded conductor to ground on the load side, drawn or found."),
);

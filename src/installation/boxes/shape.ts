import * as v from "valibot";
import { anyOf, says } from "../../input/define.js";
import { id, reference } from "../define.js";

export const boxWithoutSupply = v.pipe(
  v.strictObject({
    id,
    kind: v.pipe(
      v.picklist(["meter", "transformer-cabinet", "gutter", "wireway", "pull-box"]),
      says("What it is; a meter here is one that holds wiring of current transformers alone."),
    ),
    beside: reference("the box or disconnect that its wiring comes from"),
    bondedBy: v.pipe(
      v.picklist(["equipment-grounding-conductor", "metal-raceway"]),
      says("What bonds it: the conductor that runs with its wiring, or the metal raceway to it."),
    ),
  }),
  says(
    "A box at a service that holds no supply conductors, such as a meter at current transformers, or a box on the load side.",
  ),
);

export const boxesWithoutSupply = v.optional(
  v.pipe(anyOf(boxWithoutSupply, 100), says("Boxes that no supply conductors run through.")),
);

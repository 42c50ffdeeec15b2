import * as v from "valibot";
import { code } from "../../edition/shape.js";
import { flag, listOf, says } from "../../input/define.js";
import { electrode, wantedWire } from "../../rules/shape.js";
import { supply } from "../../supply/shape.js";

export const electrodeBondingJumperInput = v.pipe(
  v.strictObject({
    code,
    supply: v.pipe(supply, says("The ungrounded conductors that size the grounding electrode conductor.")),
    conductor: v.pipe(wantedWire, says("The conductor to be sized.")),
    electrodes: v.pipe(
      listOf(electrode),
      says(
        "The electrodes that depend on this jumper: those beyond it, seen from the grounding electrode conductor.",
      ),
    ),
    supplemental: v.optional(
      v.pipe(
        flag("whether the electrodes beyond it are supplemental"),
        says("Whether it is the sole connection to a supplemental rod, pipe or plate (250.53(E))."),
      ),
    ),
  }),
  says("A bonding jumper that ties electrodes into one grounding electrode system."),
);

import * as v from "valibot";
import { conductorSize } from "../../conductor/shape.js";
import { code } from "../../edition/shape.js";
import { flag, says } from "../../input/define.js";

export const intersystemBondingConductorInput = v.pipe(
  v.strictObject({
    code,
    termination: v.pipe(
      v.picklist(["on-enclosure", "apart", "busbar"]),
      says(
        "A termination mounted on and connected to an enclosure or raceway, one set apart, or a busbar (from 2017).",
      ),
    ),
    electrodeConductorOnBusbar: v.optional(
      v.pipe(
        conductorSize,
        says(
          "Largest grounding electrode conductor that lands on the busbar, if one does; only a busbar has one.",
        ),
      ),
    ),
    communicationsUnlikely: v.optional(
      v.pipe(
        flag("whether communications systems are unlikely"),
        says("Whether communications systems are unlikely to be used here; they are likely by default."),
      ),
    ),
  }),
  says("The copper conductor that ties an intersystem bonding termination to the grounding of the building."),
);

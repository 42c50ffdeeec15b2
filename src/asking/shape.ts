import * as v from "valibot";
import { material } from "../conductor/shape.js";
import { code } from "../edition/shape.js";
import { says } from "../input/define.js";
import { wantedWire } from "../rules/shape.js";
import { conductor } from "../supply/shape.js";

const heldUnder = v.pipe(
  code,
  says("The code that it is held under: an edition, its amendments and readings."),
);
const toBeSized = v.pipe(wantedWire, says("The conductor to be sized."));
const installed = v.pipe(conductor, says("The conductor that is there."));

export const preparedRequest = v.pipe(
  v.strictObject({
    code: heldUnder,
    supplyMaterial: v.pipe(material, says("Material of the supply, the same throughout.")),
    conductor: toBeSized,
  }),
  says("What is fixed before a loop over areas: the code and the materials. The supply is of one material."),
);

export const preparedRatingRequest = v.pipe(
  v.strictObject({ code: heldUnder, conductor: toBeSized }),
  says("What is fixed before a loop over ratings."),
);

export const largestSupplyInput = v.pipe(
  v.strictObject({
    code: heldUnder,
    conductor: installed,
    supplyMaterial: v.pipe(material, says("The one material of the supply.")),
  }),
  says("An installed conductor, and the material of the supply whose largest area is to be found."),
);

export const largestDeviceInput = v.pipe(
  v.strictObject({ code: heldUnder, conductor: installed }),
  says("A conductor that is there, and the edition by which it is to be judged."),
);

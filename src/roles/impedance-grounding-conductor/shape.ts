import * as v from "valibot";
import { temperatureColumn } from "../../ampacity/shape.js";
import { code } from "../../edition/shape.js";
import { says } from "../../input/define.js";
import { amperes, wantedWire } from "../../rules/shape.js";

export const impedanceGroundingConductorInput = v.pipe(
  v.strictObject({
    code,
    impedanceAmperes: amperes("Largest current that the impedance lets through, in amperes."),
    conductor: v.pipe(wantedWire, says("The conductor to be sized.")),
    temperature: v.optional(
      v.pipe(temperatureColumn, says("Temperature column of its ampacity; 60 C by default.")),
    ),
  }),
  says("A conductor from the neutral point of a system to its grounding impedance."),
);

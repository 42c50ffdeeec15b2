import * as v from "valibot";
import { code } from "../../edition/shape.js";
import { says } from "../../input/define.js";
import { amperes, wantedWire } from "../../rules/shape.js";

export const otherPipingBondingJumperInput = v.pipe(
  v.strictObject({
    code,
    deviceAmperes: amperes(
      "Rating in amperes of the device of the circuit that is likely to energize the piping.",
    ),
    conductor: v.pipe(wantedWire, says("The conductor to be sized.")),
  }),
  says(
    "A bonding jumper to metal piping that is not water piping and is likely to become energized, gas piping among them.",
  ),
);

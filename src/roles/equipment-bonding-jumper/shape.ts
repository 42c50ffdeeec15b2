import * as v from "valibot";
import { code } from "../../edition/shape.js";
import { listOf, says } from "../../input/define.js";
import { protectedCircuit, wantedWire } from "../../rules/shape.js";

export const equipmentBondingJumperInput = v.pipe(
  v.strictObject({
    code,
    circuits: v.pipe(
      listOf(protectedCircuit),
      says(
        "The circuit in the raceway or enclosure that it bonds, or all those in the raceways that one jumper bonds in common.",
      ),
    ),
    conductor: v.pipe(wantedWire, says("The conductor to be sized.")),
  }),
  says("An equipment bonding jumper on the load side of an overcurrent device, to be sized."),
);

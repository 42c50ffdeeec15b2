import * as v from "valibot";
import { flag, says } from "../../input/define.js";
import { bySupply } from "../../rules/shape.js";

export const systemBondingJumperInput = v.pipe(
  v.strictObject({
    ...bySupply,
    controlTransformer: v.optional(
      v.pipe(
        flag("whether the source is a small control transformer"),
        says(
          "Whether the source is a transformer of at most 1000 VA for Class 1, 2 or 3 circuits: its jumper need only be as large as the derived ungrounded conductors, not below 14 AWG copper or 12 AWG aluminum. Conductors for more than 100 A belong to no such transformer and are refused.",
        ),
      ),
    ),
  }),
  says("A system bonding jumper to be sized."),
);

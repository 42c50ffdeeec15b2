import * as v from "valibot";
import { says } from "../../input/define.js";
import { bySupply } from "../../rules/shape.js";

export const mainBondingJumperInput = v.pipe(
  v.strictObject(bySupply),
  says("A main bonding jumper to be sized."),
);

import * as v from "valibot";
import { conductorSize } from "../../conductor/shape.js";
import { between, count, flag, listOf, says } from "../../input/define.js";

export const weighedConductors = v.pipe(
  v.strictObject({
    count: v.pipe(count("conductors"), says("How many of them run side by side.")),
    size: conductorSize,
    material: v.pipe(
      v.picklist(["copper", "aluminum"]),
      says("Copper or aluminum; no density of copper-clad aluminum is held."),
    ),
    solid: v.optional(
      v.pipe(
        flag("whether they are solid"),
        says("Whether they are solid; stranded by default, which weighs 2 percent more."),
      ),
    ),
  }),
  says("Conductors of one size and material."),
);

export const metalMassQuestion = v.pipe(
  v.strictObject({
    conductors: v.pipe(listOf(weighedConductors), says("The conductors.")),
    feet: v.optional(
      v.pipe(between("feet", 0.1, 10_000_000, "check the unit"), says("Length in feet; 1000 by default.")),
    ),
  }),
  says("Conductors whose metal is to be weighed."),
);

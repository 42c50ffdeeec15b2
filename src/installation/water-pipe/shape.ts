import * as v from "valibot";
import { anyOf, says } from "../../input/define.js";
import { id } from "../define.js";

export const removableFitting = v.pipe(
  v.strictObject({
    id,
    kind: v.pipe(
      v.picklist(["meter", "filter", "fitting"]),
      says("What it is: a water meter, a filter or the like, an insulated joint or another fitting."),
    ),
  }),
  says(
    "A meter or fitting in a metal water pipe that is likely to be taken out; a bonding jumper bridges it (250.53(D)(1), 250.68(B)).",
  ),
);

export const removable = v.optional(
  v.pipe(
    anyOf(removableFitting, 50),
    says("Meters and fittings in the pipe that are likely to be taken out."),
  ),
);

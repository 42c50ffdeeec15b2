import * as v from "valibot";
import { code } from "../../edition/shape.js";
import { says } from "../../input/define.js";
import { amperes, bySupply, neutralLoad, scope, systemKind, wantedConductor } from "../../rules/shape.js";
import { supply } from "../../supply/shape.js";

export const groundedConductorInput = v.pipe(
  v.strictObject({
    code,
    system: v.pipe(systemKind, says("What kind of system it belongs to.")),
    supply: v.pipe(
      supply,
      says("The ungrounded conductors that run with it: those in its raceway, or all to its enclosure."),
    ),
    scope: v.optional(
      v.pipe(
        scope,
        says(
          "Whether it is one of several in parallel raceways or cables, or the only one; the only one by default.",
        ),
      ),
    ),
    conductor: v.pipe(wantedConductor, says("The conductor to be sized.")),
    grounded: v.optional(
      v.pipe(
        v.picklist(["neutral", "phase"]),
        says(
          "The grounded conductor of a corner-grounded delta (three-phase, three-wire), which must carry as much as the others; a neutral by default.",
        ),
      ),
    ),
    jumperAt: v.optional(
      v.pipe(
        v.picklist(["source", "enclosure"]),
        says(
          "Where the system bonding jumper of a separately derived system is; the table counts only if it is not at the source.",
        ),
      ),
    ),
    load: v.optional(v.pipe(neutralLoad, says("Its load, whose requirement stands beside the table's."))),
    rebondedAtBuildingWithDevice: v.optional(
      amperes(
        "Rating in amperes of the feeder's device, where an existing separate building keeps its grounded conductor as the fault path: the larger of its load's conductor and an equipment grounding conductor, and the table has no say. That of a corner-grounded delta also carries as much as the ungrounded conductors.",
      ),
    ),
    feederDeviceAmperes: v.optional(
      amperes(
        "Rating in amperes of the feeder's device, where it is the grounded conductor of a feeder: not smaller than the equipment grounding conductor of the feeder, save in parallel raceways, where the minimum size for parallel conductors stands in its place; the table of supply conductors has no say.",
      ),
    ),
    temperature: bySupply.temperature,
  }),
  says("A grounded conductor to be sized."),
);

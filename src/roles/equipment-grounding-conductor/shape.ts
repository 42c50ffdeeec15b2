import * as v from "valibot";
import { code } from "../../edition/shape.js";
import { listOf, says } from "../../input/define.js";
import { amperes, protectedCircuit, wantedWire } from "../../rules/shape.js";

export const groundingRun = v.pipe(
  v.variant("kind", [
    v.strictObject({
      kind: v.pipe(
        v.picklist(["single", "parallel-raceways", "parallel-cables"]),
        says("In one raceway, cable or trench, or with parallel sets in several, one in each."),
      ),
    }),
    v.strictObject({
      kind: v.pipe(v.literal("tray"), says("In a cable tray.")),
      conductor: v.pipe(
        v.picklist(["single", "in-cable"]),
        says("A single conductor of its own, or one inside a multiconductor cable."),
      ),
    }),
  ]),
  says("How an equipment grounding conductor runs."),
);

export const equipmentGroundingConductorInput = v.pipe(
  v.strictObject({
    code,
    circuits: v.pipe(
      listOf(protectedCircuit),
      says("The circuit that it serves, or several that share a raceway, cable or tray."),
    ),
    conductor: v.pipe(wantedWire, says("The conductor to be sized.")),
    run: v.optional(v.pipe(groundingRun, says("How it runs; in one raceway or cable by default."))),
  }),
  says("An equipment grounding conductor to be sized."),
);

export const cableTrayInput = v.pipe(
  v.strictObject({
    code,
    amperes: amperes(
      "Largest fuse or breaker, or relay setting for ground-fault protection, of any circuit in the tray.",
    ),
    metal: v.pipe(v.picklist(["steel", "aluminum"]), says("Metal of the tray.")),
  }),
  says("A metal cable tray that is to serve as equipment grounding conductor."),
);

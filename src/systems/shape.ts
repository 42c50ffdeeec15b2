import * as v from "valibot";
import { code } from "../edition/shape.js";
import { flag, says } from "../input/define.js";

export const grounding = v.pipe(
  v.picklist(["solidly-grounded", "grounded-phase", "impedance", "ungrounded"]),
  says("How the system is grounded; `grounded-phase` is a corner-grounded delta."),
);

export const designation = v.pipe(
  v.picklist([
    "service-disconnect",
    "emergency-disconnect-as-service-disconnect",
    "emergency-disconnect-not-service-equipment",
    "meter-disconnect",
    "supply-side-source",
  ]),
  says(
    "What a disconnect on the supply side, or the service disconnect itself, is marked as: an outdoor emergency disconnect of a dwelling either is the service disconnect or lies ahead of it; `supply-side-source` is the disconnect of a source, solar power for example, that is connected ahead of the service disconnect in an enclosure of its own.",
  ),
);

export const designationInput = v.pipe(
  v.strictObject({
    code,
    designation: v.pipe(designation, says("How the disconnect is marked.")),
    grounding: v.pipe(grounding, says("How the utility's system is grounded.")),
  }),
  says("A designated disconnect of a service."),
);

const overcurrentDevice = v.pipe(
  v.picklist(["integral", "not-integral"]),
  says("Whether its overcurrent device is in the enclosure of the source."),
);

export const transformerSource = v.pipe(
  v.strictObject({
    kind: v.pipe(v.literal("transformer"), says("A transformer.")),
    overcurrentDevice,
    windings: v.pipe(
      v.picklist(["separate", "common"]),
      says("How its windings are connected to those of its supply."),
    ),
  }),
  says("A transformer with windings of its own, or an autotransformer, whose windings are in common."),
);

export const alternateSource = v.pipe(
  v.strictObject({
    kind: v.pipe(v.picklist(["generator", "other"]), says("A generator or another alternate source.")),
    overcurrentDevice,
  }),
  says("A permanently installed generator, or another alternate source such as an inverter or a fuel cell."),
);

export const sourceInput = v.pipe(
  v.strictObject({
    code: v.pipe(code, says("The code that it is held under: an edition, its amendments and readings.")),
    source: v.pipe(
      v.variant("kind", [transformerSource, alternateSource]),
      says("The source and how it is connected."),
    ),
    grounding: v.pipe(
      grounding,
      says(
        "How the system of the source is grounded, or would be if it stood alone; `grounded-phase` is the corner of a delta.",
      ),
    ),
    groundedConductorSolidlyConnected: v.optional(
      v.pipe(
        flag("whether the grounded conductor is solidly connected to that of another system"),
        says(
          "Whether the grounded conductor is solidly connected to that of a service or of another system. Without it the transfer switch tells; a transformer's is not by default. Decides where both are given.",
        ),
      ),
    ),
    transferSwitch: v.optional(
      v.pipe(
        v.strictObject({
          switchesGroundedConductor: v.pipe(
            flag("whether it switches the grounded conductor"),
            says("Whether the transfer switch opens the grounded conductor."),
          ),
        }),
        says("Of a generator or another alternate source that has a grounded conductor."),
      ),
    ),
  }),
  says("A source, and how its grounded conductor meets that of another system."),
);

import * as v from "valibot";
import { code } from "../edition/shape.js";
import { says } from "../input/define.js";

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

import { otherPiping } from "../../edition/tables/sections.generated.js";
import { isAlwaysWire } from "../../rules/amendment-effects.js";
import type { ScheduledConductor } from "../schedule.js";
import type { Context } from "./context.js";
import type { Remedy } from "./finding.js";

/** What may serve in place of a conductor as it is drawn: what the schedule says of it, or the equipment grounding conductor that is there. */
export function otherwise(
  { schedule: { code, edition } }: Context,
  { role, insteadPermitted }: ScheduledConductor,
): readonly Remedy[] {
  if (role === "other-piping-bonding-jumper" && !isAlwaysWire(code, role))
    return [{ do: "bond-otherwise", by: "equipment-grounding-conductor", citation: otherPiping[edition] }];
  return insteadPermitted === undefined ? [] : [{ do: "bond-otherwise", ...insteadPermitted }];
}

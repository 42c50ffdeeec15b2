import type { ScheduledConductor } from "../schedule.js";
import type { Context } from "./context.js";
import type { Remedy } from "./finding.js";
import { type Fault, faultMaker } from "./judge.js";
import { otherwise } from "./otherwise.js";
import { requiredOf } from "./required.js";

/** A required conductor that is not there: what is to be installed, or what may serve in its place. */
export function missingFault(context: Context, line: ScheduledConductor): Fault {
  const required = requiredOf(line, line.result);
  const install: readonly Remedy[] = required === null ? [] : [{ do: "install", conductor: required }];
  return faultMaker(required, line.result.citation)("missing", {
    more: line.quantity,
    remedies: [...install, ...otherwise(context, line)],
  });
}

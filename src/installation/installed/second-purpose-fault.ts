import { connectionAt } from "./besides.js";
import type { Context } from "./context.js";
import { faultMaker } from "./judge.js";
import type { FaultOf } from "./judge-line.js";
import { isConnection } from "./lines.js";
import type { Purposed } from "./purposed.js";
import { mayServeAlso } from "./second-purpose.js";

/** A conductor that connects the grounded conductor where that is not permitted, whatever it is called. */
export function furtherConnection(context: Context, purpose: Purposed): readonly FaultOf[] {
  const { found, role, at } = purpose;
  if (found.connectsGroundedConductor !== true || at === undefined || isConnection(role)) return [];
  const isOfJumper = context.schedule.conductors.some(
    (one) => isConnection(one.role) && one.quantity > 0 && one.subject === at,
  );
  const besides = isOfJumper ? null : connectionAt(context, at);
  return besides !== null && "fault" in besides ? [{ fault: besides.fault, purpose, context }] : [];
}

/** A conductor that serves as something besides which it may not be. */
export function secondPurposeFault(context: Context, purpose: Purposed): readonly FaultOf[] {
  const { found, role, isSecond } = purpose;
  if (!isSecond) return [];
  const may = mayServeAlso(found.role, role, context.schedule.edition);
  if (may.is === "permitted") return [];
  const fault =
    may.is === "forbidden"
      ? faultMaker(null, may.citation)("not-permitted", { remedies: [{ do: "remove" }] })
      : faultMaker(null, null)("open", { remedies: [{ do: "ask" }] });
  return [{ fault, purpose, context }];
}

import { identityOf } from "../conductor-identity.js";
import type { OpenOutcome } from "../open-question.js";
import type { ScheduledConductor } from "../schedule.js";
import type { Context } from "./context.js";
import type { Remedy } from "./finding.js";
import { type Fault, faultMaker } from "./judge.js";
import { requiredOf } from "./required.js";

/** One of the cases of an open question; `null` of a conductor about which nothing is open. */
export type Case = OpenOutcome["if"] | null;

/**
 * The cases in which different things may be required of a conductor of the schedule: one, unless the installation leaves something open that
 * decides it. What is found has to be enough in every one of them.
 */
export function casesOf({ open }: ScheduledConductor): readonly Case[] {
  return open === undefined ? [null] : open.outcomes.map((one) => one.if);
}

/** Gives the contexts in which something open has turned out so; each is made once. */
export function contextsIn(of: Case): (context: Context) => Context {
  if (of === null) return (context) => context;
  const known = new Map<Context, Context>();
  const inCase = (context: Context): Context => {
    const before = known.get(context);
    if (before !== undefined) return before;
    const made: Context = {
      ...context,
      lineOf: (conductor) => {
        const line = context.lineOf(conductor);
        return line && settled(line, of);
      },
      requirementOf: (line, material) => {
        // What a case requires is read from the conductor with all its cases, of this material.
        const whole = context.lineOf(identityOf(line)) ?? line;
        const requirement = context.requirementOf(whole, material);
        return requirement && { ...requirement, conductor: settled(requirement.conductor, of) };
      },
      drawn: (name, change) => {
        const other = context.drawn(name, change);
        return other && inCase(other);
      },
    };
    known.set(context, made);
    return made;
  };
  return inCase;
}

/** A conductor of the schedule as it is if something open turns out so. */
function settled(line: ScheduledConductor, of: Case): ScheduledConductor {
  const { open, ...rest } = line;
  const outcome = open?.outcomes.find((one) => one.if === of);
  return outcome === undefined ? line : { ...rest, quantity: outcome.quantity, result: outcome.result };
}

/** What is wrong in every case, or, where it is wrong in some of them only, that this is open. */
export function inEveryCase<T>(cases: readonly (readonly T[])[], open: () => T): readonly T[] {
  const wrong = cases.filter((one) => one.length > 0);
  if (wrong.length === 0) return [];
  if (wrong.length < cases.length) return [open()];
  return wrong.reduce((so, one) => (one.length > so.length ? one : so));
}

/** That it hangs on something open whether a conductor is as required: it is to be found out, or to be made so that it is enough in every case. */
export function openFault(line: ScheduledConductor, how: "install" | "replace"): Fault {
  const { open, result } = line;
  const required = requiredOf(line, result);
  const remedies: readonly Remedy[] = [
    ...(open === undefined ? [] : [{ do: "find-out", what: open.what } as const]),
    ...(required === null ? [] : [{ do: how, conductor: required } as const]),
  ];
  return faultMaker(required, result.citation)("open", { remedies });
}

/** Whether a conductor may turn out not to be required. */
export function mayBeNeedless({ open }: ScheduledConductor): boolean {
  return open?.outcomes.some(({ quantity }) => quantity === 0) === true;
}

import type { Citation } from "../edition/index.js";
import type { SizingResult } from "../rules/result.js";
import { type ConductorEnd, type ConductorIdentity, identityOf, idOf } from "./conductor-identity.js";
import type { OpenOutcome, OpenQuestion } from "./open-question.js";
import type { ScheduledConductor } from "./schedule.js";

/** What a conductor of the schedule carries along. */
export interface ScheduledOptions {
  /** What it is sized by; nothing by default. */
  readonly by?: readonly string[];
  /** How often the result's own quantity occurs; once by default. */
  readonly times?: number;
  /** The run whose length is the conductor's. */
  readonly run?: { readonly lengthFeet?: number | undefined };
  /** Where the edition says that it has to be; absent where the section that sizes it says so, or none is known. */
  readonly placement?: Citation;
  /** Which conductors size it, where a section says so beside the role's own. */
  readonly sizing?: Citation | undefined;
  /** What may stand in its place. */
  readonly insteadPermitted?: ScheduledConductor["insteadPermitted"];
  /** The service or derived system that it belongs to. */
  readonly system?: string;
}

/** Puts a result into the schedule; an end in text is the id of a place. */
export function scheduled(
  who: Omit<ConductorIdentity, "role">,
  from: string | ConductorEnd,
  to: string | ConductorEnd,
  result: SizingResult,
  { by = [], times = 1, run, system, placement, sizing, insteadPermitted }: ScheduledOptions = {},
): ScheduledConductor {
  const identity = identityOf({ role: result.role, ...who });
  return {
    id: idOf(identity),
    ...identity,
    ...(system === undefined ? {} : { system }),
    from: endOf(from),
    to: endOf(to),
    quantity: quantityOf(result) * times,
    ...(result.outcome.kind === "not-required"
      ? {}
      : {
          ...(placement && { placement }),
          ...(sizing && { sizing }),
          ...(insteadPermitted && { insteadPermitted }),
        }),
    result: withoutParallelCaution(result),
    by: result.outcome.kind === "not-required" ? [] : by,
    ...(run?.lengthFeet === undefined ? {} : { lengthFeet: run.lengthFeet }),
  };
}

/** A case of something that is not known, with what is then required and how often. */
export interface Case extends Pick<OpenOutcome, "if" | "result"> {
  readonly times: number;
}

/** Puts the larger of the results of several cases into the schedule, with all of them as an open question. */
export function scheduledOpen(
  who: Omit<ConductorIdentity, "role">,
  from: string | ConductorEnd,
  to: string | ConductorEnd,
  what: OpenQuestion["what"],
  [first, ...others]: readonly [Case, ...Case[]],
  options: ScheduledOptions = {},
): ScheduledConductor {
  const cases = [first, ...others];
  const outcomes = cases.map(({ if: material, result, times }) => ({
    if: material,
    quantity: quantityOf(result) * times,
    result: withoutParallelCaution(result),
  }));
  const larger = others.reduce((so, one) => (metalOf(one) > metalOf(so) ? one : so), first);
  const made = scheduled(who, from, to, larger.result, { ...options, times: larger.times });
  return { ...made, open: { what, outcomes } };
}

function metalOf({ result, times }: Case): number {
  return result.requiredArea * quantityOf(result) * times;
}

function endOf(end: string | ConductorEnd): ConductorEnd {
  return typeof end === "string" ? { kind: "place", id: end } : end;
}

/** Says of conductors which service or derived system they belong to. */
export function ofSystem(
  system: string,
  conductors: readonly ScheduledConductor[],
): readonly ScheduledConductor[] {
  return conductors.map((one) => ({ ...one, system }));
}

/**
 * Sets that go to several places do not share a load, and a result that is sized from all of them cannot tell. Whether conductors are
 * too small to be in parallel is therefore said of each run; only a circuit is one run by itself.
 */
function withoutParallelCaution(result: SizingResult): SizingResult {
  if (result.role === "equipment-grounding-conductor") return result;
  return { ...result, cautions: result.cautions.filter(({ code }) => code !== "parallel-below-1-0") };
}

function quantityOf({ outcome }: SizingResult): number {
  switch (outcome.kind) {
    case "conductor":
      return outcome.quantity;
    case "area-only":
      return 1;
    case "not-required":
      return 0;
  }
}

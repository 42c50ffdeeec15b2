import type { EditionYear } from "../../edition/index.js";
import type { ScheduledConductor } from "../schedule.js";
import type { Context } from "./context.js";
import type { RequiredConductor } from "./finding.js";
import { type Fault, faultMaker, type Judgement, judge } from "./judge.js";
import { otherWays, reserveInParallel } from "./lawful-forms.js";
import { casesOf, contextsIn, inEveryCase, openFault } from "./open-question.js";
import type { Purposed } from "./purposed.js";
import { requiredOf } from "./required.js";

/** A fault with what it is of. */
export interface FaultOf {
  readonly fault: Fault;
  readonly purpose: Purposed;
  readonly context: Context;
}

/** All that was found of one conductor of the schedule, judged together. */
export interface JudgedLine {
  readonly faults: readonly FaultOf[];
  /** Smallest reserve of them in circular mils; `null` where areas say nothing. */
  readonly reserve: number | null;
  readonly required: RequiredConductor | null;
  /** Whether none is required. */
  readonly isNeedless: boolean;
}

/** Holds everything that was found of one conductor against it: each by itself, and their number. */
export function judgeLine(
  line: ScheduledConductor,
  all: readonly Purposed[],
  contextOf: (edition: EditionYear | undefined) => Context,
): JudgedLine {
  const cases = casesOf(line).map((of) => {
    const inCase = contextsIn(of);
    return judgedAs(line, all, (edition) => inCase(contextOf(edition)));
  });
  const [first, ...others] = cases;
  if (first === undefined) throw new TypeError("a conductor has a case");
  const [purpose] = all;
  const faults = inEveryCase(
    cases.map((one) => one.faults),
    (): FaultOf => {
      if (purpose === undefined) throw new TypeError("something was found");
      return { fault: openFault(line, "replace"), purpose, context: contextOf(purpose.found.edition) };
    },
  );
  if (others.length === 0) return { ...first, faults };
  const reserves = cases.flatMap(({ reserve }) => reserve ?? []);
  return {
    faults,
    reserve: reserves.length === 0 ? null : Math.min(...reserves),
    required: requiredOf(line, line.result),
    isNeedless: cases.every(({ isNeedless }) => isNeedless),
  };
}

function judgedAs(
  line: ScheduledConductor,
  all: readonly Purposed[],
  contextOf: (edition: EditionYear | undefined) => Context,
): JudgedLine {
  const entries = all.map((purpose) => {
    const context = contextOf(purpose.found.edition);
    return { purpose, context, line: context.lineOf(line) };
  });
  const plain = together(entries);
  if (plain.faults.length === 0) return plain;
  const [first] = entries;
  const isOneEdition = entries.every(({ context }) => context === first?.context);
  if (first?.line === undefined || !isOneEdition) return plain;
  for (const [context, other] of otherWays(first.context, first.line)) {
    const judged = together(all.map((purpose) => ({ purpose, context, line: other })));
    if (judged.faults.length === 0) return judged;
  }
  const reserve = plain.faults.every(({ fault: { kind } }) => kind === "short")
    ? reserveInParallel(first.line, all, (material) => areaRequired(first.context, first.line, material))
    : null;
  return reserve === null ? plain : { ...plain, faults: [], reserve };
}

function areaRequired(
  context: Context,
  line: ScheduledConductor | undefined,
  material: NonNullable<Purposed["found"]["material"]>,
): number | null {
  return (line && context.requirementOf(line, material)?.conductor.result.requiredArea) ?? null;
}

interface Entry {
  readonly purpose: Purposed;
  readonly context: Context;
  readonly line: ScheduledConductor | undefined;
}

function together(entries: readonly Entry[]): JudgedLine {
  const judged = entries.map(({ purpose, context, line }) => ({
    purpose,
    context,
    line,
    judgement: line === undefined ? null : judge(context, line, purpose),
  }));
  const each = judged.flatMap(({ purpose, context, judgement }) =>
    (judgement?.faults ?? []).map((fault): FaultOf => ({ fault, purpose, context })),
  );
  const reserves = judged.flatMap(({ judgement }) => judgement?.reserve ?? []);
  const required = judged.find(({ judgement }) => judgement?.required)?.judgement?.required ?? null;
  return {
    faults: [...each, ...countFaults(judged)],
    reserve: reserves.length === 0 ? null : Math.min(...reserves),
    required,
    isNeedless: judged.every(({ line }) => line === undefined || line.quantity === 0),
  };
}

/** Whether there are too few; what stands in place of a conductor stands for all of them. */
function countFaults(
  judged: readonly (Entry & { readonly judgement: Judgement | null })[],
): readonly FaultOf[] {
  const most = judged.reduce(
    (so, one) => ((one.line?.quantity ?? 0) > (so?.line?.quantity ?? 0) ? one : so),
    judged[0],
  );
  const needed = most?.line?.quantity ?? 0;
  if (most?.line === undefined || judged.some(({ purpose }) => purpose.found.instead !== undefined))
    return [];
  const there = judged.reduce((sum, { purpose }) => sum + (purpose.found.quantity ?? 1), 0);
  if (there >= needed) return [];
  const { line, judgement, purpose, context } = most;
  const required = judgement?.required ?? requiredOf(line, line.result);
  const more = needed - there;
  const remedies =
    required === null ? [] : [{ do: "install", conductor: { ...required, quantity: more } } as const];
  const fault = faultMaker(required, judgement?.citation ?? line.result.citation)("too-few", {
    more,
    remedies,
  });
  return [{ fault, purpose, context }];
}

import type { EditionYear } from "../edition/index.js";
import type { SizingResult } from "../rules/result.js";
import type { Supply } from "../supply/index.js";
import { type DrawnRun, joined, supplyOf } from "./supplies.js";

/** Ungrounded conductors by which something may be sized, with the runs that they are. */
export interface Serving {
  /** Ids of the runs. */
  readonly by: readonly string[];
  readonly supply: Supply;
}

/** A result and the runs by which it is sized. */
export interface ServedResult {
  readonly by: readonly string[];
  readonly result: SizingResult;
}

/** Most ways to cut through a system that are looked at: those of six enclosures with a meter ahead of each. */
const mostCuts = 64;

/** The conductors of some runs together. */
export function servingOf(runs: readonly DrawnRun[], year: EditionYear): Serving {
  return {
    by: runs.map(({ id }) => id),
    supply: joined(runs.map(({ supply }) => supplyOf(supply, year))),
  };
}

/** The conductors that end at a place. */
export function servingTo(runs: readonly DrawnRun[], place: string, year: EditionYear): Serving {
  return servingOf(
    runs.filter(({ to }) => to === place),
    year,
  );
}

/**
 * Every set of conductors that all that leaves a place passes through: the runs that start there, or, for any box or disconnect behind it,
 * those that go on from there. The tables go by the conductors of the premises, which may be larger than the drop ahead of them, so
 * that none of these may be left out. Of more ways than {@link mostCuts} the ones nearest to the place and the last one count.
 */
export function servingsFrom(
  runs: readonly DrawnRun[],
  place: string,
  year: EditionYear,
): readonly Serving[] {
  const goesOn = new Set(runs.map(({ from }) => from));
  const isOpen = (opened: readonly string[], next: string): boolean =>
    goesOn.has(next) && runs.every(({ from, to }) => to !== next || opened.includes(from));
  const behind = (opened: readonly string[]): readonly string[] => {
    const ends = runs.filter(({ from, to }) => opened.includes(from) && !opened.includes(to));
    return [...new Set(ends.map(({ to }) => to))].filter((next) => isOpen(opened, next));
  };
  const found = new Map<string, readonly string[]>([[place, [place]]]);
  for (const opened of found.values()) {
    for (const next of behind(opened)) {
      const wider = [...opened, next];
      const key = [...wider].sort().join("\n");
      if (found.size < mostCuts) found.set(key, wider);
    }
  }
  if (found.size === mostCuts) {
    let widest: readonly string[] = [place];
    for (let next = behind(widest); next.length > 0; next = behind(widest)) widest = [...widest, ...next];
    found.set("all", widest);
  }
  return [...found.values()].map((opened) =>
    servingOf(
      runs.filter(({ from, to }) => opened.includes(from) && !opened.includes(to)),
      year,
    ),
  );
}

/** The conductors at a place: those that end there, and those beyond it. */
export function servingsAt(runs: readonly DrawnRun[], place: string, year: EditionYear): readonly Serving[] {
  const isSource = !runs.some(({ to }) => to === place);
  const isEnd = !runs.some(({ from }) => from === place);
  return [
    ...(isSource ? [] : [servingTo(runs, place, year)]),
    ...(isEnd ? [] : servingsFrom(runs, place, year)),
  ];
}

/**
 * The largest of the results that each of several sets of conductors requires. Of equal ones, as where the electrodes limit both, that with
 * the larger row, and else the first.
 */
export function largestServed(
  servings: readonly Serving[],
  size: (supply: Supply) => SizingResult,
): ServedResult {
  const [first, ...others] = distinct(servings).map(({ by, supply }) => ({ by, result: size(supply) }));
  if (first === undefined) throw new TypeError("something is sized by at least one set of conductors");
  return others.reduce((so, one) => (isLarger(one.result, so.result) ? one : so), first);
}

function isLarger(one: SizingResult, other: SizingResult): boolean {
  if (one.requiredArea !== other.requiredArea) return one.requiredArea > other.requiredArea;
  return beforeLimits(one) > beforeLimits(other);
}

function beforeLimits({ steps }: SizingResult): number {
  return Math.max(
    0,
    ...steps.map((step) => (step.kind === "row" || step.kind === "one-eighth" ? step.requiredArea : 0)),
  );
}

/** Sets of conductors that are alike require the same, so that one of them will do. */
function distinct(servings: readonly Serving[]): readonly Serving[] {
  if (servings.length < 2) return servings;
  const keys = servings.map(({ supply }) => JSON.stringify(supply));
  return servings.filter((_, i) => keys.indexOf(keys[i] ?? "") === i);
}

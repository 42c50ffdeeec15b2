import { areaOf } from "../../conductor/index.js";
import type { EditionYear } from "../../edition/index.js";
import { elevatorParallelException } from "../../edition/tables/placements.generated.js";
import { parallelAlike, parallelMinimum } from "../../edition/tables/sections.generated.js";
import { hasSmallParallelSets } from "../../rules/by-supply-cautions.js";
import type { Conductor, Supply } from "../../supply/index.js";
import { isSmallForParallel } from "../../supply/parallel-minimum.js";
import type { PlacedCaution } from "../schedule.js";
import { type DrawnRun, joined, supplyOf } from "../supplies.js";
import type { Violation } from "../violation.js";

/** What may run in parallel: a run of a system, a circuit, or conductors without ends. */
export interface ParallelRun extends Pick<DrawnRun, "parallelException" | "groundedConductors" | "raceways"> {
  /** Stable id. */
  readonly id: string;
  readonly from?: string;
  readonly to?: string;
  readonly supply: DrawnRun["supply"];
}

/** Where runs may pass through without being joined. */
interface PassedBox {
  readonly id: string;
  readonly kind: string;
}

/** Runs that share one load, since both of their ends are the same; of some it is not told whether they do. */
interface Bundle {
  readonly runs: readonly ParallelRun[];
  readonly supply: Supply;
  readonly isOneLoad: boolean;
}

const smallestNeutral = /* @__PURE__ */ areaOf("2 AWG");

/** Conductors in parallel that are too small, or of one phase that are not alike, and small grounded conductors beside them. */
export function parallelViolations(
  runs: readonly ParallelRun[],
  year: EditionYear,
  boxes: readonly PassedBox[] = [],
): readonly Violation[] {
  return bundlesOf(runs, year, boxes)
    .filter(({ isOneLoad }) => isOneLoad)
    .flatMap((bundle) => {
      const phases = phasesOf(bundle.supply);
      return [
        ...smallConductors(bundle, phases, year),
        ...unlikeConductors(bundle, phases, year),
        ...smallGroundedConductors(bundle, year),
      ];
    });
}

/** Runs through a box whose small sets may share one load, or serve one each. */
export function parallelCautions(
  runs: readonly ParallelRun[],
  year: EditionYear,
  boxes: readonly PassedBox[] = [],
): readonly PlacedCaution[] {
  const { section } = parallelMinimum[year];
  return bundlesOf(runs, year, boxes)
    .filter(({ isOneLoad, supply }) => !isOneLoad && hasSmallParallelSets(supply))
    .map((bundle) => ({ code: "parallel-below-1-0", section, at: bundle.runs[0]?.id ?? "" }));
}

function bundlesOf(
  runs: readonly ParallelRun[],
  year: EditionYear,
  boxes: readonly PassedBox[],
): readonly Bundle[] {
  const found = new Map<string, ParallelRun[]>();
  for (const run of runs) {
    const key = JSON.stringify(run.to === undefined ? run.id : [run.from, run.to]);
    const same = found.get(key);
    if (same === undefined) found.set(key, [run]);
    else same.push(run);
  }
  return [...found.values()].map((same) => ({
    runs: same,
    supply: joined(same.map(({ supply }) => supplyOf(supply, year))),
    isOneLoad: endsTogether(same[0]?.to, runs, boxes),
  }));
}

const passedThrough: readonly string[] = ["gutter", "wireway", "pull-box"];

/** Sets are joined at a disconnect and in metering; through a gutter, wireway or pull box they may go on to one place or to several. */
function endsTogether(
  place: string | undefined,
  runs: readonly ParallelRun[],
  boxes: readonly PassedBox[],
): boolean {
  const box = boxes.find(({ id, kind }) => id === place && passedThrough.includes(kind));
  if (box === undefined) return true;
  const [next, ...others] = new Set(runs.flatMap(({ from, to }) => (from === place && to ? [to] : [])));
  return next !== undefined && others.length === 0 && endsTogether(next, runs, boxes);
}

function smallConductors(
  { runs }: Bundle,
  phases: readonly Phase[],
  year: EditionYear,
): readonly Violation[] {
  if (runs.every((run) => isExcepted(run, year))) return [];
  const small = phases.filter(({ count, kinds }) => count > 1 && kinds.some(isSmall));
  if (small.length === 0) return [];
  return [
    {
      code: "parallel-below-1-0",
      ...parallelMinimum[year],
      at: runs.map(({ id }) => id),
      found: {
        count: Math.max(...small.map(({ count }) => count)),
        conductors: distinct(small.flatMap(({ kinds }) => kinds.filter(isSmall))),
      },
      remedies: [{ code: "larger-parallel-conductors" }, { code: "one-conductor-per-phase" }],
    },
  ];
}

function isSmall({ size }: Conductor): boolean {
  return isSmallForParallel(areaOf(size));
}

/** The exceptions of an edition: control power and 360 Hz in all, elevators in the first. */
function isExcepted({ parallelException }: ParallelRun, year: EditionYear): boolean {
  return parallelException === "elevator" ? elevatorParallelException[year] : parallelException !== undefined;
}

/** Of each phase by itself: the conductors of one phase may differ from those of another. */
function unlikeConductors(
  { runs }: Bundle,
  phases: readonly Phase[],
  year: EditionYear,
): readonly Violation[] {
  const unlike = phases.filter(({ kinds }) => kinds.length > 1);
  if (unlike.length === 0) return [];
  return [
    {
      code: "unlike-conductors-in-parallel",
      ...parallelAlike[year],
      at: runs.map(({ id }) => id),
      found: { conductors: distinct(unlike.flatMap(({ kinds }) => kinds)) },
      remedies: [{ code: "alike-conductors" }],
    },
  ];
}

interface Phase {
  /** Conductors in parallel. */
  readonly count: number;
  readonly kinds: readonly Conductor[];
}

function phasesOf({ sets }: Supply): readonly Phase[] {
  const most = Math.max(1, ...sets.map(({ phases }) => phases?.length ?? 1));
  return Array.from({ length: most }, (_, phase) => {
    const own = sets.flatMap((set) => {
      const one = set.phases === undefined ? set : set.phases[phase];
      return one ? [{ count: set.count, size: one.size, material: one.material }] : [];
    });
    return { count: own.reduce((sum, { count }) => sum + count, 0), kinds: distinct(own) };
  });
}

function distinct(conductors: readonly Conductor[]): readonly Conductor[] {
  const found = new Map(
    conductors.map(({ size, material }) => [`${size} ${material}`, { size, material }] as const),
  );
  return [...found.values()];
}

/** One grounded conductor runs in each raceway, so that those of several raceways are in parallel. */
function smallGroundedConductors({ runs }: Bundle, year: EditionYear): readonly Violation[] {
  const count = runs.reduce((sum, run) => sum + (run.raceways?.count ?? 1), 0);
  if (count === 1) return [];
  const small = runs.filter(({ groundedConductors: drawn }) => {
    if (drawn === undefined) return false;
    const area = areaOf(drawn.size);
    return drawn.existingUnderSupervision ? area < smallestNeutral : isSmallForParallel(area);
  });
  if (small.length === 0) return [];
  const sizes = new Set(small.flatMap(({ groundedConductors: drawn }) => drawn?.size ?? []));
  return [
    {
      code: "grounded-conductors-below-1-0",
      ...parallelMinimum[year],
      at: small.map(({ id }) => id),
      found: { count, conductors: [...sizes].map((size) => ({ size })) },
      remedies: [{ code: "larger-parallel-conductors" }],
    },
  ];
}

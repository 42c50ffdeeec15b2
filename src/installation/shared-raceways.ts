import type { Installation } from "./document.js";
import type { DrawnRun } from "./supplies.js";

/** A raceway, nipple or wireway that several runs of a system share. */
export type SharedRaceway = NonNullable<
  NonNullable<Installation["services"]>[number]["sharedRaceways"]
>[number];

/** The runs of a system that lie in a raceway which they share. */
export function runsIn(runs: readonly DrawnRun[], { id }: Pick<SharedRaceway, "id">): readonly DrawnRun[] {
  return runs.filter((run) => run.in === id);
}

/** The one place at which all runs start, or end; none where they differ. */
export function commonEnd(runs: readonly DrawnRun[], end: "from" | "to"): string | undefined {
  const [first, ...others] = new Set(runs.map((run) => run[end]));
  return others.length === 0 ? first : undefined;
}

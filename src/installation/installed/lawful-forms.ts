import type { Material } from "../../conductor/index.js";
import { isSmallForParallel } from "../../supply/parallel-minimum.js";
import type { ScheduledConductor } from "../schedule.js";
import type { Context } from "./context.js";
import { withRun } from "./instead.js";
import type { Purposed } from "./purposed.js";
import { areaFound } from "./purposed.js";

/** The same conductor in the other way in which the jumpers of several raceways may be run: one in each, or one for all. */
export function otherWays(
  context: Context,
  line: ScheduledConductor,
): readonly (readonly [Context, ScheduledConductor])[] {
  if (line.role !== "supply-side-bonding-jumper") return [];
  const { subject } = line;
  const run = [...(context.installation.services ?? []), ...(context.installation.derivedSystems ?? [])]
    .flatMap(({ runs }) => runs)
    .find(({ id }) => id === subject);
  if ((run?.raceways?.count ?? 1) === 1) return [];
  return (["per-raceway", "common"] as const).flatMap((how) => {
    const other = context.drawn(`${how} in ${subject}`, (one) =>
      withRun(one, subject, (same) => ({ ...same, racewayJumpers: how })),
    );
    const same = other?.lineOf(line);
    return other === null || same === undefined || same.quantity === 0 ? [] : [[other, same] as const];
  });
}

/**
 * Circular mils that a grounded conductor of several alike in parallel has above what is required in each raceway; `null` if they are not
 * alike, below 1/0 AWG, too few for each raceway, or together too small. Of no other role is a sum of areas known to be permitted.
 */
export function reserveInParallel(
  { role, quantity }: ScheduledConductor,
  all: readonly Purposed[],
  requiredArea: (material: Material) => number | null,
): number | null {
  const [first, ...others] = all.map(({ found }) => found);
  const area = all[0] === undefined ? null : areaFound(all[0].found);
  if (role !== "grounded-conductor" || first?.material === undefined || area === null) return null;
  const isAlike = others.every(({ size, busArea, material }) => {
    return size === first.size && busArea === first.busArea && material === first.material;
  });
  const each = all.reduce((sum, { found }) => sum + (found.quantity ?? 1), 0) / quantity;
  const required = requiredArea(first.material);
  if (!isAlike || !Number.isInteger(each) || each < 2 || isSmallForParallel(area) || required === null)
    return null;
  return each * area >= required ? each * area - required : null;
}

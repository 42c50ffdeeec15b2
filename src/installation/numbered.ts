import type { SizingResult } from "../rules/result.js";
import type { ScheduledConductor } from "./schedule.js";

/** The systems that conductors belong to, in the order in which they are written. */
export const purposes: readonly SizingResult["purpose"][] = [
  "fault-path",
  "electrode-system",
  "equalizing",
  "load",
];

/** A conductor of a schedule with its number, from 1: the same in report, drawing and rows. */
export interface Numbered {
  readonly mark: number;
  readonly conductor: ScheduledConductor;
}

/** The conductors of a schedule as they are numbered: what is required by the system that it belongs to, then what is not required. */
export function numbered(conductors: readonly ScheduledConductor[]): readonly Numbered[] {
  const place = ({ result }: ScheduledConductor): number =>
    result.outcome.kind === "not-required" ? purposes.length : purposes.indexOf(result.purpose);
  return [...conductors]
    .sort((a, b) => place(a) - place(b))
    .map((conductor, i) => ({ mark: i + 1, conductor }));
}

/** Numbers in a row as people write them: 1, 4 to 6. */
export function numberRanges(marks: readonly number[]): string {
  const sorted = [...new Set(marks)].sort((a, b) => a - b);
  const ranges: [number, number][] = [];
  for (const mark of sorted) {
    const last = ranges.at(-1);
    if (last !== undefined && last[1] === mark - 1) last[1] = mark;
    else ranges.push([mark, mark]);
  }
  return ranges
    .map(([from, to]) => (from === to ? `${from}` : to === from + 1 ? `${from}, ${to}` : `${from} to ${to}`))
    .join(", ");
}

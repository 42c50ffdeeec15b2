import type { MutatedCell } from "../../../corpus/tools/mutation/mutate.js";

/**
 * How a cell fared: every change of it noticed, by published answers, with charts, or with what follows from a rule; one of two, or none; and none where no
 * check reads it. In the order of the page.
 */
export const fates = [
  "noticed",
  "by a chart",
  "by arithmetic",
  "one way only",
  "read, not noticed",
  "not read",
] as const;

/** One of {@link fates}. */
export type Fate = (typeof fates)[number];

/** What became of a cell. */
export function fateOf({ changes, readBy }: MutatedCell): Fate {
  const noticed = changes.filter((change) => change.noticed !== "not").length;
  if (changes.length > 0 && noticed === changes.length)
    return (
      (["by arithmetic", "by a chart"] as const).find((last) =>
        changes.some((one) => one.noticed === last),
      ) ?? "noticed"
    );
  if (noticed > 0) return "one way only";
  return readBy > 0 ? "read, not noticed" : "not read";
}

/** Whether every change is noticed by a check whose source states the edition of the cell. */
export function isNoticedByItsEdition(cell: MutatedCell): boolean {
  return cell.changes.length > 0 && cell.changes.every(({ noticed }) => noticed === "by its edition");
}

/** The heads of what {@link figuresOf} gives. */
export const figureNames = [
  "cells",
  ...fates,
  "noticed, of all",
  "with charts",
  "with arithmetic",
  "by its own edition",
] as const;

/** One line of figures: all cells, each fate, the share of those that published answers notice, with charts and with arithmetic too, and by the edition itself. */
export function figuresOf(cells: readonly MutatedCell[]): readonly string[] {
  const counted = fates.map((fate) => cells.filter((cell) => fateOf(cell) === fate).length);
  const [noticed = 0, byChart = 0, byArithmetic = 0] = counted;
  return [
    `${cells.length}`,
    ...counted.map(String),
    percent(noticed, cells.length),
    percent(noticed + byChart, cells.length),
    percent(noticed + byChart + byArithmetic, cells.length),
    percent(cells.filter(isNoticedByItsEdition).length, cells.length),
  ];
}

function percent(part: number, whole: number): string {
  return whole === 0 ? "none" : `${((100 * part) / whole).toFixed(1)} %`;
}

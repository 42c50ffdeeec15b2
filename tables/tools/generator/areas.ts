import type { TableFile } from "./model.js";

/** Reads areas of size names from the conductor table; a kcmil designation is its own area. */
export function areaReader(conductors: TableFile): (size: string) => number {
  const tabulated = new Map(
    conductors.blocks.flatMap((block) => block.rows.map((row) => [row[0], row[1]] as const)),
  );
  return (size) => {
    const area = tabulated.get(size);
    if (typeof area === "number") return area;
    const kcmil = /^(\d+) kcmil$/.exec(size)?.[1];
    if (kcmil === undefined) throw new Error(`no area for "${size}"`);
    return Number(kcmil) * 1000;
  };
}

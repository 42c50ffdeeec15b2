import type { Canvas, Stack } from "./canvas.js";
import { across, conductorLine, line, say, sayConductor } from "./canvas.js";
import { BAR, BESIDE, type Columns } from "./columns.js";
import type { Frame } from "./frame.js";
import type { Marked } from "./group.js";
import { widthOf } from "./wrap.js";

/** Draws the bars of a place, the jumpers between them, and what ties them to the metal and to the buses of an assembly. */
export function drawBars(
  canvas: Canvas,
  { grounded: n, grounding: g, right }: Columns,
  { buses }: Frame,
  jumpers: readonly Marked[],
  { hasBar, hasGrounding }: { readonly hasBar: boolean; readonly hasGrounding: boolean },
  top: number,
  name: string,
  least: number,
): { readonly y: number; readonly bottom: number } {
  const named = widthOf(name) + 4;
  const after = n + BESIDE + Math.max(named, BAR - BESIDE) + 8;
  const cell: Stack = { x: after, width: g - 12 - after, y: top + 2 };
  for (const one of jumpers) sayConductor(canvas, cell, one);
  const y = Math.max(cell.y + 6, top + 22, least + 4);
  const nameAt = (x: number, text: string): void =>
    say(canvas, { x, width: widthOf(text) + 1, y: y - 20 }, text);
  if (hasBar) {
    nameAt(n + BESIDE, name);
    across(canvas, "bar", y, n - 8, n + BAR);
  }
  if (hasGrounding) {
    nameAt(g + BESIDE, "G bar");
    across(canvas, "bar", y, g - 8, g + BAR);
    across(canvas, "bond", y, g + BAR, right);
  }
  jumpers.forEach((one, i) => {
    const row = y + 6 * i;
    conductorLine(
      canvas,
      one,
      i === 0
        ? [
            { x: n + BAR, y },
            { x: g - 8, y },
          ]
        : [
            { x: n + BAR - 6 * i, y },
            { x: n + BAR - 6 * i, y: row },
            { x: g - 8 + 6 * i, y: row },
            { x: g - 8 + 6 * i, y },
          ],
      "to-start",
      i === 0 ? 0 : 1,
    );
  });
  if (buses === undefined) return { y, bottom: y + 6 + 6 * jumpers.length };
  if (hasBar) across(canvas, "bar", y, buses.grounded, n - 8);
  const row = y + 12 + 6 * jumpers.length;
  line(canvas, "bar", [
    { x: buses.grounding, y: row },
    { x: g + BAR - 6, y: row },
    { x: g + BAR - 6, y },
  ]);
  return { y, bottom: row + 6 };
}

/** Draws what bonds the metal of a place to its grounded conductor, below `cell`; gives the heights of its rows. */
export function drawToMetal(
  canvas: Canvas,
  { grounded, right }: Columns,
  jumpers: readonly Marked[],
  isBondedByGrounded: boolean,
  cell: Stack,
): readonly number[] {
  const rowBelow = (): number => {
    const row = cell.y + 6;
    cell.y = row + 5;
    return row;
  };
  const rows = jumpers.map((one) => {
    sayConductor(canvas, cell, one);
    const y = rowBelow();
    conductorLine(
      canvas,
      one,
      [
        { x: grounded, y },
        { x: right, y },
      ],
      "to-start",
    );
    return y;
  });
  if (!isBondedByGrounded || jumpers.length > 0) return rows;
  say(canvas, cell, "bonded by the grounded conductor");
  const y = rowBelow();
  across(canvas, "bond", y, grounded, right);
  return [...rows, y];
}

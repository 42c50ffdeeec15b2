import { drawBlock, type Sketch } from "./block.js";
import { newCanvas } from "./canvas.js";
import { columnsOf, MARGIN } from "./columns.js";
import { describe } from "./describe.js";
import { SHEET_WIDTH, type Sheet } from "./drawing.js";
import { drawEarth, MOST_BESIDE } from "./earth.js";
import type { Group } from "./group.js";
import { joined } from "./joints.js";
import { partsOf, type WholeSheet } from "./parts.js";
import { type Branch, type Forest, forestsOf } from "./tree.js";

/**
 * Draws a group from its source down. Every line has a column, a lane or a row of its own and labels stand between them, so that nothing overlaps. What
 * hangs too deep gets a sheet of its own, and what is too high for a page is divided.
 */
export function sheetsOf(groups: readonly Group[]): readonly Sheet[] {
  return groups.flatMap((group, i) =>
    wholeSheetsOf(group).flatMap((sheet, j) => partsOf(sheet, i === 0 && j === 0)),
  );
}

/** The sheets of a group before any of them is divided. */
export function wholeSheetsOf(group: Group): readonly WholeSheet[] {
  return forestsOf(group).map((forest, i) => sheetOf(group, forest, i));
}

function sheetOf(group: Group, forest: Forest, number: number): WholeSheet {
  const isFirst = number === 0;
  const canvas = newCanvas();
  const columns = columnsOf(forest.indents, lanesOf(group, forest));
  const sketch: Sketch = { canvas, columns, exits: [], tops: new Map() };
  let y = MARGIN;
  for (const root of forest.roots) {
    if (y > MARGIN) canvas.cuts.push({ y: y - 6, depth: 0 });
    y = drawBlock(sketch, root, MARGIN, y) + 18;
  }
  if (forest.roots.length > 0) canvas.cuts.push({ y: y - 6, depth: 0 });
  y = drawEarth(sketch, group, isFirst, y - (forest.roots.length > 0 ? 8 : 0));
  const { lines, joints } = joined(canvas.lines, canvas.joints);
  const { outlines, arrows, symbols, grounds, labels, conductors } = canvas;
  const names = forest.roots.map(({ place }) => place.name).join(", ");
  return {
    title: isFirst ? group.title : `${group.title}: what follows ${names}`,
    width: SHEET_WIDTH,
    height: Math.ceil(y + 8),
    outlines,
    lines,
    joints,
    arrows,
    symbols,
    grounds,
    labels,
    conductors: [...conductors],
    cuts: canvas.cuts,
    ...(isFirst && group.violations?.length && { violations: group.violations }),
    description: isFirst ? describe(group) : [],
  };
}

/** How many lanes right of the enclosures a sheet needs at most. */
function lanesOf(group: Group, { roots }: Forest): number {
  const kinds = new Map(group.places.map(({ key, kind }) => [key, kind]));
  const of = ({ exits, exitsOfRun, place, children }: Branch): number =>
    [...exits, ...exitsOfRun]
      .filter(({ to }) => kinds.get(to) !== "common")
      .reduce((sum, { conductors }) => sum + Math.max(conductors.length, 0), 0) +
    place.inside.filter(
      ({ conductor: { role, from } }) =>
        role === "impedance-bonding-jumper" || from.kind === "grounding-electrode-conductor",
    ).length +
    children.reduce((sum, one) => sum + of(one), 0);
  const toElectrodes = group.links.filter(({ to }) => kinds.get(to) === "electrode");
  const jumpers = toElectrodes.filter(({ from }) => kinds.get(from) === "electrode").length;
  const hasCommon = group.places.some(({ kind }) => kind === "common");
  const own = roots.reduce((sum, one) => sum + of(one), 0);
  // Only jumpers to a further row of electrodes go around by a lane.
  const mostBeside = Math.max(own + jumpers, toElectrodes.length);
  return own + (mostBeside > MOST_BESIDE ? jumpers : 0) + (hasCommon ? 1 : 0);
}

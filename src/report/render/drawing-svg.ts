import type { Drawing } from "../../drawing/drawing.js";
import { drawingMarks } from "../../drawing/drawing.js";
import { useResult } from "../../input/given-result.js";
import { readShape } from "../../input/read-shape.js";
import { readAll } from "../../input/reader.js";
import type { DrawingOptions } from "../shape.generated.js";
import { drawingOptionsShape } from "../shape.generated.js";
import { sheetElement, sheetStyles } from "./sheet-svg.js";

/**
 * Writes a picture as one SVG file, its sheets one below the other and one key for all. Fault path, electrode system and other bonding differ in
 * thickness and dashes; the file loads nothing, follows a dark theme, and carries the path as a list.
 *
 * @param drawing - of {@link drawingOf}
 * @param options - the conductor that is to stand out; then only the sheets that show it are written
 * @returns the text of the file
 * @throws {@link InputError} for anything but what drawingOf gives, and for wrong options
 *
 * @example
 * ```ts
 * import { drawingAsSvg } from "bondmil";
 * drawingAsSvg({ title: "Empty", sheets: [] }).startsWith("<svg"); // => true
 * ```
 */
export function drawingAsSvg(drawing: Drawing, options: DrawingOptions = {}): string {
  const { highlight } = readAll(options, (at) => readShape<DrawingOptions>(at, drawingOptionsShape));
  return useResult(drawing, "drawingOf", drawingMarks, (given) => svgOf(given, highlight));
}

const GAP = 12;

function svgOf({ sheets }: Drawing, highlight: string | undefined): string {
  const shown =
    highlight === undefined ? sheets : sheets.filter(({ conductors }) => conductors.includes(highlight));
  const elements = shown.map((sheet, i) =>
    sheetElement(sheet, { id: `sheet-${i + 1}`, hasKey: i === 0, highlight }),
  );
  const width = Math.max(0, ...shown.map((sheet) => sheet.width));
  let y = 0;
  const placed = elements.map(({ element, height }) => {
    const at = element.replace("<svg ", `<svg y="${y}" `);
    y += height + GAP;
    return at;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${y}" viewBox="0 0 ${width} ${y}">
<style>${sheetStyles()}</style>
${placed.join("\n")}
</svg>
`;
}

import type { Drawing } from "../../drawing/drawing.js";
import { drawingMarks } from "../../drawing/drawing.js";
import { useResult } from "../../input/given-result.js";
import { sheetElement, sheetStyles } from "./sheet-svg.js";

/**
 * Writes a picture as one SVG file, its sheets one below the other. Fault path, electrode system and equalizing conductors differ in
 * thickness and dashes; the file loads nothing, follows a dark theme, and carries what it shows in words.
 *
 * @param drawing - of {@link drawingOf}
 * @returns the text of the file
 * @throws {@link InputError} for anything but what drawingOf gives
 *
 * @example
 * ```ts
 * import { drawingAsSvg } from "bondmil";
 * drawingAsSvg({ title: "Empty", sheets: [] }).startsWith("<svg"); // => true
 * ```
 */
export function drawingAsSvg(drawing: Drawing): string {
  return useResult(drawing, "drawingOf", drawingMarks, svgOf);
}

function svgOf({ sheets }: Drawing): string {
  const elements = sheets.map((sheet, i) => sheetElement(sheet, `sheet-${i + 1}`));
  const sizes = elements.map(
    (one) => /width="(\d+)" height="([\d.]+)"/.exec(one)?.slice(1).map(Number) ?? [0, 0],
  );
  const width = sizes.reduce((widest, [one = 0]) => Math.max(widest, one), 0);
  let y = 0;
  const placed = elements.map((one, i) => {
    const at = one.replace("<svg ", `<svg y="${y}" `);
    y += (sizes[i]?.[1] ?? 0) + 16;
    return at;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${y}" viewBox="0 0 ${width} ${y}">
<style>${sheetStyles()}</style>
${placed.join("\n")}
</svg>
`;
}

import { useResult } from "../input/given-result.js";
import type { Picture } from "../picture/picture.js";
import { pictureMarks } from "../picture/picture.js";
import { sheetElement, sheetStyles } from "./sheet-svg.js";

/**
 * Writes a picture as one SVG file, its sheets one below the other. Fault path, electrode system and equalizing conductors differ in
 * thickness and dashes; the file loads nothing, follows a dark theme, and carries what it shows in words.
 *
 * @param picture - of {@link pictureOf}
 * @returns the text of the file
 * @throws {@link InputError} for anything but what pictureOf gives
 *
 * @example
 * ```ts
 * import { pictureAsSvg } from "bondmil";
 * pictureAsSvg({ title: "Empty", sheets: [] }).startsWith("<svg"); // => true
 * ```
 */
export function pictureAsSvg(picture: Picture): string {
  return useResult(picture, "pictureOf", pictureMarks, svgOf);
}

function svgOf({ sheets }: Picture): string {
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

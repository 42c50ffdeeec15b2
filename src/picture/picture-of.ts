import { buildSchedule } from "../installation/build-schedule.js";
import { readDrawing } from "../installation/read-drawing.js";
import { groupsOf } from "./groups.js";
import { sheetOf } from "./layout.js";
import type { Picture } from "./picture.js";

/**
 * Lays the path of a drawing out in layers, one sheet for each service and each arrangement of a derived system: sources, boxes,
 * enclosures, electrodes, and every conductor of the schedule with its number, id and size. The same drawing gives the same picture.
 *
 * @param source - a drawing, its JSON text, or the value that it would parse to
 * @returns shapes with coordinates in CSS pixels; plain JSON
 * @throws {@link InputError} listing everything that is wrong in the drawing
 *
 * @example
 * ```ts
 * import { pictureOf } from "bondmil";
 * const picture = pictureOf({
 *   format: 1,
 *   title: "Pump house",
 *   code: { year: "2020" },
 *   materials: {
 *     bondingJumpers: "copper",
 *     groundedConductors: "copper",
 *     electrodeConductors: "copper",
 *     equipmentGrounding: "copper",
 *   },
 *   existing: [{ id: "P1" }],
 *   circuits: [{ id: "C1", from: "P1", to: "pump", device: { amperes: 100 }, wiring: "raceway" }],
 * });
 * picture.sheets.map(({ title }) => title); // => ["Circuits, generators and buildings"]
 * ```
 */
export function pictureOf(source: unknown): Picture {
  const drawing = readDrawing(source);
  const groups = groupsOf(drawing, buildSchedule(drawing));
  return { title: drawing.title, sheets: groups.map(sheetOf) };
}

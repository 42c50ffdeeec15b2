import type { Installation } from "../installation/document.js";
import { readInstallation } from "../installation/read-installation.js";
import type { Schedule } from "../installation/schedule.js";
import { scheduleOfRead } from "../installation/schedule-of.js";
import type { Drawing } from "./drawing.js";
import { groupsOf } from "./groups.js";
import { sheetsOf } from "./sheets.js";

/**
 * Lays the path of a drawing out from the source down, one sheet for each service and each arrangement of a derived system with what follows it: enclosures with
 * their bars, what connects them, electrodes in the earth, and every conductor of the schedule with its size and number. The same drawing gives the same picture.
 *
 * @param installation - the installation; {@link readInstallation} reads one from text
 * @returns shapes with coordinates in CSS pixels; plain JSON
 * @throws {@link InputError} listing everything that is wrong in the drawing
 *
 * @example
 * ```ts
 * import { drawingOf } from "bondmil";
 * const picture = drawingOf({
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
export function drawingOf(installation: Installation): Drawing {
  const read = readInstallation(installation);
  return drawingOfRead(read, scheduleOfRead(read));
}

/** The drawing of an installation that was read. */
export function drawingOfRead(installation: Installation, schedule: Schedule): Drawing {
  const groups = groupsOf(installation, schedule);
  return { title: installation.title, sheets: sheetsOf(groups) };
}

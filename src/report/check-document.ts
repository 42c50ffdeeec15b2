import { useResult } from "../input/given-result.js";
import { type Check, type CheckedConductor, checkMarks } from "../installation/check.js";
import { conductorWords } from "../installation/conductor-words.js";
import { formatArea } from "../units/area.js";
import type { Document, DocumentPart } from "./document.js";
import { type DocumentOptions, framed, listed, readOptions } from "./frame.js";
import { cautionParts, readingParts, scheduleFacts } from "./schedule-parts.js";
import { rowsOfCheck } from "./schedule-rows.js";
import { checkCounts, verdictWords } from "./words/schedule-words.js";
import { violationSentence } from "./words/violation-words.js";

/**
 * Makes a document of a check of installed conductors: what is not permitted, one row for each verdict with what is installed, what is
 * required and the reserve, how many there are of each, then cautions and open readings of the schedule.
 *
 * @param check - what {@link checkOf} gives
 * @param options - another title, who prepared it, the date
 * @returns a document for {@link render}; its rows are the verdicts, areas in circular mils
 * @throws {@link InputError} for anything but what checkOf gives, and for wrong options
 *
 * @example
 * ```ts
 * import { checkDocument, checkOf, render } from "bondmil";
 * const check = checkOf({
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
 *   installed: [{ conductor: "equipment-grounding-conductor C1", size: "10 AWG", material: "copper" }],
 * });
 * render(checkDocument(check), { as: "markdown" }).split("\n").find((line) => line.includes("SHORT"));
 * // => "| SHORT | equipment grounding conductor C1 | 1 x 10 AWG copper |  | 16,510 cmil | -6,130 cmil | 250.122(A) |"
 * ```
 */
export function checkDocument(check: Check, options: DocumentOptions = {}): Document {
  const own = readOptions(options);
  return useResult(check, "checkOf", checkMarks, (given) =>
    framed(
      {
        title: `${given.schedule.title}: check of installed conductors`,
        editions: [given.schedule.edition],
        facts: [
          ...scheduleFacts(given.schedule).map((one) =>
            one.name === "Fingerprint" ? { ...one, name: "Fingerprint of the schedule" } : one,
          ),
          { name: "Fingerprint", text: given.fingerprint },
        ],
        parts: partsOf(given),
        rows: rowsOfCheck(given),
      },
      own,
    ),
  );
}

function partsOf(check: Check): readonly DocumentPart[] {
  const { schedule, conductors } = check;
  const head = ["verdict", "conductor", "installed", "at", "required", "reserve", "section"];
  return [
    ...listed("Not permitted", schedule.violations.map(violationSentence)),
    { kind: "heading", level: 2, text: "Verdicts" },
    ...(conductors.length === 0
      ? []
      : [{ kind: "table", of: "records", head, rows: conductors.map(cellsOf) } as const]),
    { kind: "text", text: `In all: ${checkCounts(check)}.` },
    ...cautionParts(schedule),
    ...readingParts(schedule),
  ];
}

function cellsOf(one: CheckedConductor): readonly string[] {
  const { id, identity, verdict, installed, requiredArea, reserve, citation } = one;
  return [
    verdictWords[verdict],
    identity === null ? id : conductorWords(identity),
    installed === null ? "" : `${installed.quantity ?? 1} x ${installed.size} ${installed.material}`,
    installed?.at ?? "",
    requiredArea === 0 ? "" : formatArea(requiredArea),
    reserve === null || requiredArea === 0 ? "" : formatArea(reserve),
    citation?.section ?? "",
  ];
}

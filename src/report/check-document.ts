import { useResult } from "../input/given-result.js";
import { checkMarks } from "../installation/check.js";
import type { Check } from "../installation/installed/checked.js";
import { type CheckFinding, type Todo, todos } from "../installation/installed/finding.js";
import { rowsOfCheck } from "./check-rows.js";
import { evidenceOf, metLines, summaryOf } from "./check-summary.js";
import type { Document, DocumentPart } from "./document.js";
import { type DocumentOptions, framed, listed, readOptions } from "./frame.js";
import { cautionParts, openParts, scheduleFacts } from "./schedule-parts.js";
import {
  checkedWords,
  findingWords,
  judgedByWords,
  remedyWords,
  requiredWords,
  shortWords,
  thereWords,
  todoWords,
} from "./words/check-words.js";
import { violationSentence } from "./words/violation-words.js";

/**
 * Makes a document of a check of installed conductors: what is not permitted in what is drawn, then the findings by what is to be done, each with
 * what is there, what is required, by how much it is short, the section and the remedies; what is as required in one line, with every reserve;
 * then what the schedule leaves open, and its cautions.
 *
 * @param check - what {@link checkOf} gives
 * @param options - another title, who prepared it, the date
 * @returns a document for {@link render}; its rows are the findings and the conductors without any, areas in circular mils
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
 *   installed: { found: [{ role: "equipment-grounding-conductor", of: "C1", size: "10 AWG", material: "copper" }] },
 * });
 * render(checkDocument(check), { as: "text" }).split("\n").filter((line) => line.startsWith("SHORT"));
 * // => ["SHORT: equipment grounding conductor C1"]
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
          ...(given.isListed ? [{ name: "Evidence", text: evidenceOf(given) }] : []),
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
  const { schedule, findings, isListed } = check;
  return [
    ...listed("Not permitted in what is drawn", schedule.violations.map(violationSentence)),
    ...(isListed
      ? [...todos.flatMap((todo) => group(todo, findings)), ...summary(check)]
      : [{ kind: "text", strong: "Nothing is listed as installed", text: nothingListed } as const]),
    ...openParts(schedule),
    ...cautionParts(schedule),
  ];
}

const nothingListed =
  'There is nothing to check. List in "installed" what was found, whole runs as scheduled, or that the rest is as scheduled.';

const head = [
  "finding",
  "conductor",
  "there is",
  "required",
  "short by",
  "section",
  "judged by",
  "what to do",
];

function group(todo: Todo, findings: readonly CheckFinding[]): readonly DocumentPart[] {
  const own = findings.filter((one) => one.todo === todo);
  if (own.length === 0) return [];
  return [
    { kind: "heading", level: 2, text: todoWords[todo] },
    { kind: "table", of: "records", head, rows: own.map(cellsOf) },
  ];
}

function cellsOf(finding: CheckFinding): readonly string[] {
  const { kind, required, citation, judgedBy, remedies } = finding;
  return [
    findingWords[kind],
    checkedWords(finding),
    thereWords(finding),
    required === null ? "" : requiredWords(required),
    shortWords(finding),
    citation?.section ?? "",
    judgedByWords(judgedBy),
    remedies.map(remedyWords).join("; or "),
  ];
}

function summary(check: Check): readonly DocumentPart[] {
  const { arrangedAsFound, findings } = check;
  const text =
    arrangedAsFound.length === 0
      ? summaryOf(check)
      : `${summaryOf(check)} The jumpers of ${arrangedAsFound.join(", ")} were found at another lawful place than drawn, and the conductors are judged by that.`;
  const met = metLines(check);
  return [
    { kind: "heading", level: 2, text: "As required" },
    ...(findings.length === 0
      ? [{ kind: "text", strong: "No findings", text } as const]
      : [{ kind: "text", text } as const]),
    ...(met.length === 0
      ? []
      : [{ kind: "list", folded: "Each, with what is required", items: met } as const]),
  ];
}

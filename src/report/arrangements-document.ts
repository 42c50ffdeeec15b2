import { rectangularBarsFor } from "../engineering/rectangular-bar.js";
import { useResult } from "../input/given-result.js";
import type {
  Arrangement,
  ArrangementComparison,
  Connection,
} from "../installation/arrangements/arrangement.js";
import { arrangementMarks } from "../installation/arrangements/arrangement.js";
import { conductorWords, endWords } from "../installation/conductor-words.js";
import type { ScheduledConductor } from "../installation/schedule.js";
import type { Caution } from "../rules/caution.js";
import type { SizingResult } from "../rules/result.js";
import { writtenArea } from "../units/area.js";
import type { Document, DocumentPart, DocumentRow } from "./document.js";
import { type DocumentOptions, framed, listed, readOptions } from "./frame.js";
import { amendedFact, citationsOf } from "./told/facts.js";
import { tellSizing } from "./told/sizing.js";
import { sentencesOf } from "./told/told.js";
import {
  arrangementNames,
  arrangementStatusWords,
  connectionNames,
  connectionWords,
  differenceWords,
} from "./words/arrangement-words.js";
import { cautionSentence } from "./words/caution-words.js";
import { evidenceWords } from "./words/evidence-words.js";
import { notRequiredWords } from "./words/not-required-words.js";
import { governingWords, purposeNames } from "./words/schedule-words.js";
import { violationSentence } from "./words/violation-words.js";

/**
 * Makes a document of arrangements side by side: of each every conductor with its size, place, reason, section, evidence and open
 * readings, where things are connected, what is a fault, and what to be careful of.
 *
 * @param comparison - the arrangements of a service, of a separately derived system, of raceways or of electrode conductors
 * @param options - another title, who prepared it, the date
 * @returns a document for {@link render}; its rows are the conductors of each arrangement, areas in circular mils
 * @throws {@link InputError} for anything but what arrangementsOf gives, and for wrong options
 *
 * @example
 * ```ts
 * import { arrangementsDocument, arrangementsOf, mainBondingJumper, render } from "bondmil";
 * const comparison = arrangementsOf(mainBondingJumper, {
 *   code: { year: "2020" },
 *   enclosures: [{ id: "D1", supply: { sets: [{ count: 1, size: "4/0 AWG", material: "aluminum" }] } }],
 *   conductor: { material: "copper" },
 * });
 * const document = arrangementsDocument(comparison, { title: "Shop" });
 * render(document, { as: "text" }).split("\n")[5]; // => "A jumper in each enclosure (250.24(B)): permitted"
 * ```
 */
export function arrangementsDocument(
  comparison: ArrangementComparison,
  options: DocumentOptions = {},
): Document {
  const own = readOptions(options);
  return useResult(comparison, "arrangementsOf", arrangementMarks, (given) => {
    const { edition, arrangements, differences } = given;
    const differ = differences.map((one) => differenceWords[one]).join(", ");
    return framed(
      {
        title: "Arrangements side by side",
        editions: [edition],
        facts: amendedFact(
          arrangements.flatMap((one) => one.conductors.flatMap(({ result }) => citationsOf(result))),
          arrangements.flatMap(cautionsOf),
        ),
        parts: [
          ...listed("Not permitted", arrangements.flatMap(violationsOf)),
          ...arrangements.flatMap(partsOf),
          ...(differ === ""
            ? []
            : ([
                { kind: "heading", level: 2, text: "Differences" },
                { kind: "text", text: `The arrangements differ in: ${differ}.` },
              ] as const)),
        ],
        rows: arrangements.flatMap((one) =>
          one.conductors.map((conductor) => rowOf(one, conductor, edition)),
        ),
      },
      own,
    );
  });
}

function partsOf(arrangement: Arrangement): readonly DocumentPart[] {
  const { id, status, citation, conductors, totalArea, connections, violations } = arrangement;
  const sections = [...new Set(violations.map(({ section }) => section))];
  const forbiddenBy = status === "not-permitted" ? ` [${sections.join(", ")}]` : "";
  return [
    {
      kind: "heading",
      level: 2,
      text: `${arrangementNames[id]} (${citation.section}): ${arrangementStatusWords[status]}${forbiddenBy}`,
    },
    ...conductors.flatMap(conductorParts),
    { kind: "text", text: `Total metal: ${writtenArea(totalArea)} (${writtenArea(totalArea, "mm2")}).` },
    ...listed("Connections", connections.map(connectionWordsOf), 3),
    ...listed("Cautions", cautionsOf(arrangement).map(cautionSentence), 3),
  ];
}

function violationsOf({ id, violations }: Arrangement): readonly string[] {
  return violations.map((one) => `${arrangementNames[id]}: ${violationSentence(one)}`);
}

function conductorParts(conductor: ScheduledConductor): readonly DocumentPart[] {
  const { from, to, result } = conductor;
  const told = tellSizing(result);
  const { governs, evidence, purpose } = result;
  const decided = governs === null ? "" : `; decided by ${governingWords[governs]}`;
  return [
    {
      kind: "text",
      strong: `${conductorWords(conductor)}: ${outcomeOf(result)}`,
      text: `${sentencesOf(told)} From ${endWords(from)} to ${endWords(to)}; ${purposeNames[purpose]}${decided}; evidence: ${evidenceWords(evidence)}.`,
    },
    ...(told.readings.length === 0
      ? []
      : [{ kind: "list", items: told.readings.map((one) => `Open reading: ${one}`) } as const]),
  ];
}

function outcomeOf({ outcome, material }: SizingResult): string {
  if (outcome.kind === "conductor") return `${outcome.size} ${material}`;
  if (outcome.kind === "not-required") return `not required, ${notRequiredWords[outcome.why]}`;
  const { requiredArea } = outcome;
  const bar = rectangularBarsFor(requiredArea).find(({ thickness }) => thickness === 0.25);
  const example = bar === undefined ? "" : `; a bar of ${bar.thickness} in. x ${bar.width} in. meets it`;
  return `${material}, at least ${writtenArea(requiredArea)} (${writtenArea(requiredArea, "mm2")}, ${writtenArea(requiredArea, "in2")})${example}`;
}

function connectionWordsOf({ kind, at, note, citation }: Connection): string {
  const places = at.length === 0 ? "" : ` (${at.join(", ")})`;
  return `${connectionNames[kind]}${places}: ${connectionWords[note]} [${citation.section}]`;
}

function cautionsOf({ conductors, cautions }: Arrangement): readonly Caution[] {
  const all = [...conductors.flatMap(({ result }) => result.cautions), ...cautions];
  return all.filter(
    (one, i) => all.findIndex(({ code, section }) => code === one.code && section === one.section) === i,
  );
}

function rowOf(
  { id: arrangement, status }: Arrangement,
  { id, from, to, quantity, result }: ScheduledConductor,
  edition: string,
): DocumentRow {
  const { role, purpose, outcome, material, requiredArea, governs, citation, evidence, cautions } = result;
  return {
    arrangement,
    status,
    id,
    role,
    purpose,
    from: endWords(from),
    to: endWords(to),
    quantity,
    size: outcome.kind === "conductor" ? outcome.size : null,
    material,
    requiredArea,
    notRequired: outcome.kind === "not-required" ? outcome.why : null,
    governs,
    section: citation.section,
    evidence,
    cautions: cautions.map(({ code }) => code).join(" "),
    edition,
  };
}

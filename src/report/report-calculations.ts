import { conductorWords, roleName } from "../installation/conductor-words.js";
import { type Numbered, numberRanges } from "../installation/numbered.js";
import type { ScheduledConductor } from "../installation/schedule.js";
import type { DocumentTable } from "./document.js";
import { calculationOf } from "./told/calculation.js";
import { coveringWords } from "./words/covering-words.js";
import { capital } from "./words/names.js";
import { sectionsBeside } from "./words/schedule-words.js";

/** A calculation with the conductors that it is alike for. */
export interface CalculationSheet {
  readonly cells: readonly [given: string, rule: string, result: string];
  readonly of: readonly Numbered[];
}

/** The calculations of conductors, each once for all for which it is the same. */
export function calculationsOf(required: readonly Numbered[]): readonly CalculationSheet[] {
  const alike = new Map<string, Numbered[]>();
  const cells = new Map<string, CalculationSheet["cells"]>();
  for (const one of required) {
    const { given, rule, result } = calculationOf(one.conductor.result);
    const { role } = one.conductor;
    const key = JSON.stringify([role, given, rule, result, besideWords(one.conductor)]);
    const known = alike.get(key);
    if (known === undefined) {
      alike.set(key, [one]);
      cells.set(key, [
        given,
        rule,
        [result, besideWords(one.conductor)].filter((part) => part !== "").join("; "),
      ]);
    } else known.push(one);
  }
  return [...alike].flatMap(([key, of]) => {
    const own = cells.get(key);
    return own === undefined ? [] : [{ cells: own, of }];
  });
}

/** The mark of the sheet of a calculation. */
export function sheetMark({ of: [first] }: CalculationSheet): string {
  return `calculation-${first?.mark}`;
}

/** Calculations as sheets of three lines. */
export function sheetsTable(sheets: readonly CalculationSheet[]): DocumentTable {
  return {
    kind: "table",
    of: "sheets",
    head: ["No.", "Conductor", "Given", "Rule", "Result"],
    rows: sheets.map((sheet) => {
      const [given, rule, result] = sheet.cells;
      const by = runsWords([...new Set(sheet.of.flatMap(({ conductor }) => conductor.by))]);
      return [
        { text: numberRanges(sheet.of.map(({ mark }) => mark)), mark: sheetMark(sheet) },
        namesOf(sheet.of.map(({ conductor }) => conductor)),
        `${given}${by}`,
        rule,
        result,
      ];
    }),
  };
}

/** More than these are counted. */
const mostNames = 4;

/** The runs and circuits whose conductors or devices are given. */
function runsWords(by: readonly string[]): string {
  return by.length === 0 ? "" : ` (${several(by)})`;
}

function several(names: readonly string[]): string {
  const more = names.length > mostNames ? ` and ${names.length - mostNames} more` : "";
  return `${names.slice(0, mostNames).join(", ")}${more}`;
}

function namesOf(alike: readonly ScheduledConductor[]): string {
  const [first] = alike;
  if (first === undefined) return "";
  if (alike.length === 1) return capital(conductorWords(first));
  return capital(`${roleName(first.role)} ${several([...new Set(alike.map(({ subject }) => subject))])}`);
}

/** Where it goes, what may serve in its place, and whether it is to be insulated. */
function besideWords(one: ScheduledConductor): string {
  const { covering } = one;
  return [
    ...sectionsBeside(one),
    ...(covering === undefined ? [] : [`${coveringWords[covering.kind]} [${covering.citation.section}]`]),
  ].join("; ");
}

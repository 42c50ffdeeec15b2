import type {
  AmendmentComparison,
  Change,
  ComparedResult,
  EditionComparison,
  EditionEntry,
  ReadingComparison,
} from "../comparison/comparison.js";
import type { Issue } from "../input/input-error.js";
import { writtenArea } from "../units/area.js";
import type { DocumentFact, DocumentPart, DocumentRow } from "./document.js";
import type { Content } from "./frame.js";
import { tellCableTray } from "./told/cable-tray.js";
import { amendedFact, citationsOf } from "./told/facts.js";
import { tellSizing } from "./told/sizing.js";
import { partsOf, type Told } from "./told/told.js";
import { changePhrase, effectWords, outcomeWords } from "./words/change-words.js";
import { evidenceWords } from "./words/evidence-words.js";
import { alternativeWords, readingAbout } from "./words/reading-words.js";
import { governingWords } from "./words/schedule-words.js";

/** Editions side by side: what changed from one to the next and why, what stays the same, a table, and every edition in full. */
export function contentOfEditions(comparison: EditionComparison): Content {
  const pairs = comparison.slice(1).map((entry, i) => ({ entry, before: comparison[i] ?? entry }));
  return {
    title: `${subjectOf(comparison.map(({ result }) => result))}: editions side by side`,
    editions: comparison.map(({ edition }) => edition),
    facts: amendedIn(comparison.map(({ result }) => result)),
    parts: [
      ...changeParts(
        "What changed",
        pairs.map(({ entry, before }) => ({
          name: `${before.edition} to ${entry.edition}`,
          changes: entry.changes,
        })),
      ),
      heading(2, "Side by side"),
      grid(
        ["edition", ...columns("the one before")],
        comparison.map((entry) => [entry.edition, ...entryCells(entry)]),
      ),
      heading(2, "Each edition in full"),
      ...comparison.flatMap((entry) => [heading(3, entry.edition), ...entryInFull(entry)]),
    ],
    rows: comparison.map((entry) => ({ edition: entry.edition, ...entryRow(entry) })),
  };
}

/** Readings side by side: what each changes and why, what stays the same, a table, and every result in full. */
export function contentOfReadings({ edition, result, otherwise }: ReadingComparison): Content {
  return {
    title: `${subjectOf([result])}: open readings side by side`,
    editions: [edition],
    facts: amendedIn([result, ...otherwise.map((one) => one.result)]),
    parts: [
      ...(otherwise.length === 0
        ? [{ kind: "text", text: "No open reading has a say here." } as const]
        : changeParts(
            "What changes",
            otherwise.map(({ reading, chosen, alternative, changes }) => ({
              name: `${readingAbout(reading)}: "${alternativeWords(reading, alternative)}" instead of "${alternativeWords(reading, chosen)}"`,
              changes,
            })),
          )),
      heading(2, "Side by side"),
      grid(
        ["reading", "read as", ...columns("as given")],
        [
          ["as given", "", ...cellsOf(result, "first")],
          ...otherwise.map((one) => [
            readingAbout(one.reading),
            alternativeWords(one.reading, one.alternative),
            ...cellsOf(one.result, one.effect),
          ]),
        ],
      ),
      heading(2, "Each result in full"),
      heading(3, "As given"),
      ...inFull(result),
      ...otherwise.flatMap((one) => [
        heading(
          3,
          `With ${readingAbout(one.reading)} read as "${alternativeWords(one.reading, one.alternative)}"`,
        ),
        ...inFull(one.result),
      ]),
    ],
    rows: [
      { reading: "", alternative: "", edition, ...rowOf(result, "first") },
      ...otherwise.map((one) => ({
        reading: one.reading,
        alternative: one.alternative,
        edition,
        ...rowOf(one.result, one.effect),
      })),
    ],
  };
}

/** An edition as printed, under each amendment alone, and under all of them: what each changes and why, a table, and every result in full. */
export function contentOfAmendments({ edition, asPrinted, each, all }: AmendmentComparison): Content {
  const amended = [
    ...each.map((one) => ({ ...one, name: one.amendment })),
    ...(each.length === 1 ? [] : [{ ...all, name: "all amendments" }]),
  ];
  return {
    title: `${subjectOf([asPrinted])}: as printed and as amended`,
    editions: [edition],
    facts: [{ name: "Amendments", text: each.map(({ amendment }) => amendment).join("; ") || "none" }],
    parts: [
      ...changeParts("What changes", amended),
      heading(2, "Side by side"),
      grid(
        ["amendment", ...columns("as printed")],
        [
          ["as printed", ...cellsOf(asPrinted, "first")],
          ...amended.map((one) => [one.name, ...entryCells(one)]),
        ],
      ),
      heading(2, "Each result in full"),
      heading(3, "As printed"),
      ...inFull(asPrinted),
      ...amended.flatMap((one) => [heading(3, `With ${one.name}`), ...entryInFull(one)]),
    ],
    rows: [
      { amendment: "", edition, ...rowOf(asPrinted, "first") },
      ...amended.map((one) => ({ amendment: one.name, edition, ...entryRow(one) })),
    ],
  };
}

function columns(against: string): readonly string[] {
  return ["required", "area", `against ${against}`, "decided by", "where", "evidence"];
}

function subjectOf(results: readonly (ComparedResult | undefined)[]): string {
  const first = results.find((one) => one !== undefined);
  return first === undefined ? "Conductor" : tell(first).name;
}

function amendedIn(results: readonly (ComparedResult | undefined)[]): readonly DocumentFact[] {
  const given = results.filter((one) => one !== undefined);
  return amendedFact(
    given.flatMap((one) => ("steps" in one ? citationsOf(one) : [one.citation])),
    given.flatMap(({ cautions }) => cautions),
  );
}

function tell(result: ComparedResult): Told {
  return "steps" in result ? tellSizing(result) : tellCableTray(result);
}

function inFull(result: ComparedResult): readonly DocumentPart[] {
  const told = tell(result);
  return [{ kind: "text", strong: told.name, text: `${outcomeWords(result)}.` }, ...partsOf(told)];
}

/** A result, or why there is none. */
type Entry = Pick<EditionEntry, "result" | "refused" | "effect">;

function entryCells({ result, refused = [], effect }: Entry): readonly string[] {
  return result === undefined
    ? [`refused: ${refused.map(({ message }) => message).join("; ")}`, "", effectWords[effect], "", "", ""]
    : cellsOf(result, effect);
}

function entryInFull({ result, refused = [] }: Entry): readonly DocumentPart[] {
  return result === undefined ? [refusal(refused)] : inFull(result);
}

function entryRow({ result, refused = [], effect }: Entry): DocumentRow {
  return { ...rowOf(result, effect), refused: refused.map(({ code }) => code).join(" ") };
}

function cellsOf(result: ComparedResult, effect: EditionEntry["effect"]): readonly string[] {
  const { governs, area, section, evidence } = decidingIn(result);
  return [
    outcomeWords(result),
    area === null ? "" : writtenArea(area),
    effectWords[effect],
    governs === null ? "" : governingWords[governs],
    section,
    evidenceWords(evidence),
  ];
}

/** What decides a result, and where that stands. */
function decidingIn(result: ComparedResult) {
  if (!("steps" in result)) return { governs: null, area: null, ...result.citation };
  const { governs, requiredArea, steps, citation, evidence } = result;
  const deciding = steps.find(
    (step) => step.kind === governs && "requiredArea" in step && step.requiredArea === requiredArea,
  );
  const { section } = (deciding ?? result).citation ?? citation;
  return { governs, area: governs === null ? null : requiredArea, section, evidence };
}

function rowOf(result: ComparedResult | undefined, effect: EditionEntry["effect"]): DocumentRow {
  if (result === undefined) return { outcome: "refused", effect };
  const { governs, area, section, evidence } = decidingIn(result);
  const { outcome, cautions } = result;
  return {
    outcome: outcome.kind,
    quantity: outcome.kind === "conductor" ? outcome.quantity : null,
    size: outcome.kind === "conductor" ? outcome.size : null,
    material: "material" in result ? result.material : result.metal,
    requiredArea: area,
    squareInches: outcome.kind === "permitted" ? outcome.least.squareInches : null,
    effect,
    governs,
    section,
    sections: sectionsOf(result).join("; "),
    evidence,
    cautions: cautions.map(({ code }) => code).join(" "),
  };
}

/** Every section that a result cites, each once. */
function sectionsOf(result: ComparedResult): readonly string[] {
  const cited = "steps" in result ? citationsOf(result) : [result.citation];
  return [...new Set(cited.map(({ section }) => section))];
}

/** What changed, each with why and its section; then what changed nothing as one folded line. */
function changeParts(
  title: string,
  steps: readonly { readonly name: string; readonly changes: readonly Change[] }[],
): readonly DocumentPart[] {
  const changed = steps.filter(({ changes }) => changes.length > 0);
  const idle = steps.filter(({ changes }) => changes.length === 0).map(({ name }) => name);
  return [
    ...(changed.length === 0 ? [] : [heading(2, title)]),
    ...changed.flatMap(({ name, changes }): readonly DocumentPart[] => [
      heading(3, name),
      { kind: "list", items: changes.map(changePhrase) },
    ]),
    ...(idle.length === 0
      ? []
      : [
          heading(2, "What stays the same"),
          { kind: "list", folded: `No change in ${idle.length} of ${steps.length}`, items: idle } as const,
        ]),
  ];
}

function refusal(issues: readonly Issue[]): DocumentPart {
  const items = issues.map(({ path, message }) => `${path === "" ? "" : `${path}: `}${message}`);
  return { kind: "list", items };
}

function heading(level: 2 | 3, text: string): DocumentPart {
  return { kind: "heading", level, text };
}

function grid(head: readonly string[], rows: readonly (readonly string[])[]): DocumentPart {
  return { kind: "table", of: "grid", head, rows };
}

import type {
  Change,
  ChangeKind,
  ChangeSubject,
  ComparedResult,
  Effect,
} from "../../comparison/comparison.js";
import type { CitedEvidence, Readings } from "../../edition/index.js";
import type { Governing } from "../../sizing/index.js";
import { writtenArea } from "../../units/area.js";
import { cautionWords } from "./caution-words.js";
import { evidenceWords } from "./evidence-words.js";
import { notRequiredWords } from "./not-required-words.js";
import { alternativeWords, readingAbout } from "./reading-words.js";
import { governingWords } from "./schedule-words.js";

/** What each kind of change means. */
export const changeKindWords: Readonly<Record<ChangeKind, string>> = {
  value: "another number",
  policy: "another rule",
  reading: "an open text",
  place: "another place",
  name: "another name",
  evidence: "known otherwise",
  caution: "a caution",
};

/** How what changed is called. */
const subjectWords: Readonly<Record<ChangeSubject, string>> = {
  outcome: "what is required",
  quantity: "how many conductors",
  governs: "what decides",
  "required-area": "the required area",
  rule: "the rule for the conductor",
  sum: "how the sets are added",
  assumed: "conductors assumed in place of those of another material",
  "assumed-conductor": "the conductor assumed for each",
  row: "the table's size for a supply of",
  "row-end": "the upper limit of the row for a supply of",
  "one-eighth": "12.5 percent of a supply of",
  threshold: "where the 12.5 percent starts, for",
  floor: "the minimum size",
  cap: "the limit",
  "rating-row": "the table's size for the device",
  "rating-row-end": "the largest rating of the row or the table",
  increase: "the increase in proportion",
  shared: "which of the circuits decides",
  load: "the conductor for the load",
  "named-size": "the size that is named or taken over",
  "standard-size": "the list of sizes",
  "tray-area": "the minimum metal of the tray",
  reading: "the open reading",
  name: "the name",
  evidence: "the weakest evidence",
  caution: "caution",
};

/** What became of the required area. */
export const effectWords: Readonly<Record<Effect, string>> = {
  first: "",
  same: "the same",
  larger: "LARGER",
  smaller: "SMALLER",
  "other-outcome": "ANOTHER OUTCOME",
};

const inCircularMils: readonly ChangeSubject[] = [
  "required-area",
  "row-end",
  "one-eighth",
  "threshold",
  "cap",
  "increase",
  "named-size",
];

/** Which of several: reasons of a floor or a limit, sources of a named size; everything else is said as it is. */
const ofWords: Readonly<Record<string, string>> = {
  "last-row": "of the table's last row",
  "least-size": "of the section",
  amendment: "of an amendment",
  "ungrounded-conductors": "at the ungrounded conductors",
  "circuit-conductors": "at the circuit conductors",
  "largest-size": "at the largest size named",
  electrode: "for the electrode",
  code: "by the code",
  "other-conductor": "from the other conductor",
};

/** Codes that stand for a value. */
const valueWords: Readonly<Record<string, string>> = {
  corresponding: "phase by phase",
  largest: "each set's largest conductor",
  "area-only": "an area",
  "not-required": "not required",
  "not-permitted": "not permitted",
};

/** A change as a phrase, with the places and what is known of them. */
export function changePhrase(change: Change): string {
  const { kind, what, because } = change;
  const behind =
    because === undefined
      ? ""
      : `; this is open in ${because.edition} (${readingAbout(because.reading)}): read as "${alternativeWords(because.reading, because.alternative)}" instead of "${alternativeWords(because.reading, because.chosen)}" it would not differ`;
  return `${changeKindWords[kind]}: ${subjectWords[what]}${which(change)}, ${difference(change)}${behind}${places(change)}`;
}

function which({ kind, what, of }: Change): string {
  if (of === null) return "";
  if (what === "caution") return kind === "place" ? ` "${cautionValue(of)}"` : "";
  return ` ${what === "reading" ? readingAbout(of as keyof Readings) : (ofWords[of] ?? of)}`;
}

function difference({ kind, what, of, before, after }: Change): string {
  const value = (one: Change["before"]): string =>
    kind === "place" ? `${one ?? "none"}` : shownValue(what, of, one);
  if (before === null) return `new: ${value(after)}`;
  return after === null ? `no longer: ${value(before)}` : `before: ${value(before)}; now: ${value(after)}`;
}

function shownValue(what: ChangeSubject, of: string | null, value: Change["before"]): string {
  if (value === null) return "none";
  if (what === "shared" && typeof value === "number") return `circuit ${value + 1} of the list`;
  if (typeof value === "number") {
    return inCircularMils.includes(what)
      ? writtenArea(value)
      : what === "rating-row-end"
        ? `${value} A`
        : `${value}`;
  }
  switch (what) {
    case "caution":
      return cautionValue(value);
    case "reading":
      return `"${alternativeWords(of as keyof Readings, value)}"`;
    case "evidence":
      return `"${evidenceWords(value as CitedEvidence)}"`;
    case "outcome":
      return outcomeValue(value);
    case "sum":
      return valueWords[value] ?? value;
    case "governs":
      return governingWords[value as Governing] ?? value;
    default:
      return value;
  }
}

function cautionValue(code: string): string {
  return (cautionWords as Readonly<Record<string, string>>)[code] ?? code;
}

/** The outcome of a refused edition names the fault, and of one that requires nothing the reason. */
function outcomeValue(value: string): string {
  const [kind = "", reason = ""] = value.split(": ");
  const why = (notRequiredWords as Readonly<Record<string, string>>)[reason];
  return `${valueWords[kind] ?? kind}${why === undefined ? "" : `, ${why}`}`;
}

/** Of a place the sections are the change; elsewhere they stand behind it. */
function places({ kind, sectionBefore, sectionAfter, evidenceBefore, evidenceAfter }: Change): string {
  const levels =
    evidenceBefore === null && evidenceAfter === null
      ? ""
      : ` (${[...new Set([evidenceBefore, evidenceAfter])].map((one) => (one === null ? "none" : evidenceWords(one))).join(" / ")})`;
  const sections =
    kind === "place" ? [] : [...new Set([sectionBefore, sectionAfter])].filter((section) => section !== null);
  return sections.length === 0 ? levels : ` [${sections.join(" / ")}]${levels}`;
}

/** An outcome in short. */
export function outcomeWords(result: ComparedResult): string {
  const { outcome } = result;
  switch (outcome.kind) {
    case "conductor":
      return `${outcome.quantity === 1 ? "" : `${outcome.quantity} x `}${outcome.size}${materialOf(result)}`;
    case "area-only":
      return `${writtenArea(outcome.requiredArea)}${materialOf(result)}`;
    case "not-required":
      return `not required: ${notRequiredWords[outcome.why]}`;
    case "permitted":
      return `${outcome.least.squareInches} in2 (${outcome.least.squareMillimeters} mm2)${materialOf(result)}, through ${outcome.through} A`;
    case "not-permitted":
      return `not permitted;${materialOf(result)} through ${outcome.largestAmperes} A`;
  }
}

function materialOf(result: ComparedResult): string {
  return ` ${"material" in result ? result.material : result.metal}`;
}

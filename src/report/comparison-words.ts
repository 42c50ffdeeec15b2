import type { Change, ChangeKind, ChangeSubject, ComparedResult, Effect } from "../comparison/comparison.js";
import { formatArea } from "../units/area.js";
import { cautionWords, notRequiredWords } from "./words.js";

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
  "row-end": "the end of the row for a supply of",
  "one-eighth": "one eighth of a supply of",
  threshold: "where the one eighth starts, for",
  floor: "the least size",
  cap: "the limit",
  "rating-row": "the table's size for the device",
  "rating-row-end": "the rating that ends the row or the table",
  increase: "the increase in proportion",
  shared: "which of the circuits decides",
  load: "the conductor for the current",
  "named-size": "the size that is named or taken over",
  "standard-size": "the list of sizes",
  "tray-area": "the least metal of the tray",
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

/** A change as a phrase, with the places and what is known of them. */
export function changePhrase(change: Change): string {
  const { kind, what, of, because } = change;
  const which = of === null ? "" : ` ${of}`;
  const behind =
    because === undefined
      ? ""
      : `; ${because.reading} is open in ${because.edition} and read as ${because.chosen}, as ${because.alternative} this would not differ`;
  return `${changeKindWords[kind]}: ${subjectWords[what]}${which}, ${difference(change)}${behind}${places(change)}`;
}

function difference({ what, before, after }: Change): string {
  const value = (one: Change["before"]): string => shownValue(what, one);
  if (before === null) return `new: ${value(after)}`;
  return after === null ? `no longer: ${value(before)}` : `${value(before)} before, ${value(after)} now`;
}

function shownValue(what: ChangeSubject, value: Change["before"]): string {
  if (value === null) return "none";
  if (what === "shared" && typeof value === "number") return `circuit ${value + 1} of the list`;
  if (typeof value === "number") {
    return inCircularMils.includes(what)
      ? formatArea(value)
      : what === "rating-row-end"
        ? `${value} A`
        : `${value}`;
  }
  return what === "caution" && isCaution(value) ? cautionWords[value] : value;
}

function isCaution(code: string): code is keyof typeof cautionWords {
  return Object.hasOwn(cautionWords, code);
}

/** Of a place the sections are the change; elsewhere they stand behind it. */
function places({ kind, sectionBefore, sectionAfter, evidenceBefore, evidenceAfter }: Change): string {
  const levels =
    evidenceBefore === null && evidenceAfter === null
      ? ""
      : ` (${evidenceBefore ?? "none"} / ${evidenceAfter ?? "none"})`;
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
      return `${formatArea(outcome.requiredArea)}${materialOf(result)}`;
    case "not-required":
      return `not required: ${notRequiredWords[outcome.why]}`;
    case "permitted":
      return `${outcome.least.squareInches} in2 (${outcome.least.squareMillimetres} mm2)${materialOf(result)}, through ${outcome.through} A`;
    case "not-permitted":
      return `not permitted;${materialOf(result)} through ${outcome.largestAmperes} A`;
  }
}

function materialOf(result: ComparedResult): string {
  return ` ${"material" in result ? result.material : result.metal}`;
}

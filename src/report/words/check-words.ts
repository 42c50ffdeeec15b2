import { conductorWords, endWords } from "../../installation/conductor-words.js";
import type { CheckedConductor } from "../../installation/installed/checked.js";
import type {
  CheckFinding,
  FindingKind,
  JudgedBy,
  Remedy,
  RequiredConductor,
  Todo,
} from "../../installation/installed/finding.js";
import type { FoundConductor } from "../../installation/installed/shape.generated.js";
import type { OpenQuestion } from "../../installation/open-question.js";
import { writtenArea } from "../../units/area.js";

/** What is to be done, as headings. */
export const todoWords: Readonly<Record<Todo, string>> = {
  remove: "To be removed",
  move: "To be moved",
  replace: "To be replaced",
  install: "To be installed",
  settle: "To be settled",
};

/** What is wrong; in capitals, since all of it is to be mended. */
export const findingWords: Readonly<Record<FindingKind, string>> = {
  "not-permitted": "NOT PERMITTED",
  "wrong-place": "WRONG PLACE",
  "wrong-material": "WRONG MATERIAL",
  short: "SHORT",
  "cannot-serve": "CANNOT SERVE",
  missing: "MISSING",
  "too-few": "TOO FEW",
  "not-in-schedule": "NOT IN THE SCHEDULE",
  open: "OPEN",
};

const insteadWords: Readonly<Record<NonNullable<FoundConductor["instead"]>, string>> = {
  "bonding-fittings": "bonding fittings",
  "nonflexible-metal-raceway": "the nonflexible metal raceway",
  "grounded-conductor": "the grounded conductor",
};

const questionWords: Readonly<Record<OpenQuestion["what"], string>> = {
  "raceway-material": "find out what the raceway is made of, and say it in the installation",
};

const otherwiseWords: Readonly<Record<Extract<Remedy, { readonly do: "bond-otherwise" }>["by"], string>> = {
  "bonding-fittings": "threaded or listed bonding fittings",
  "grounded-conductor": "the grounded conductor",
  "equipment-grounding-conductor":
    "the equipment grounding conductor of the circuit that is likely to energize it",
};

/** What a finding or a conductor is about, in words. */
export function checkedWords({ id, identity }: Pick<CheckedConductor, "id" | "identity">): string {
  return identity === null ? id : conductorWords(identity);
}

/** What was found: its own name, how many of what, and where. */
export function foundWords({
  name,
  size,
  busArea,
  instead,
  material,
  quantity = 1,
  at,
}: FoundConductor): string {
  const what =
    instead === undefined
      ? `${quantity} x ${size ?? `bus of ${writtenArea(busArea ?? 0)}`} ${material}`
      : insteadWords[instead];
  return `${name === undefined ? "" : `"${name}", `}${what}${at === undefined ? "" : ` at ${at}`}`;
}

/** What is required: how many, of what size and material. */
export function amountWords({ quantity, size, requiredArea, material }: RequiredConductor): string {
  return size === null
    ? `${quantity} x ${material} of at least ${writtenArea(requiredArea)}`
    : `${quantity} x ${size} ${material}`;
}

/** What is required, with its exact area and its place. */
export function requiredWords(required: RequiredConductor): string {
  const { size, requiredArea, from, to } = required;
  const area = size === null ? "" : ` (at least ${writtenArea(requiredArea)})`;
  return `${amountWords(required)}${area}, ${endWords(from)} to ${endWords(to)}`;
}

/** By how much it is short, in circular mils or in conductors. */
export function shortWords({ kind, shortBy, more }: CheckFinding): string {
  if (shortBy !== null) return `${writtenArea(shortBy)} each`;
  return more === null || kind === "missing" ? "" : `${more} more`;
}

/** The edition that judges, and why that one. */
export function judgedByWords({ edition, of }: JudgedBy): string {
  return of === "installation"
    ? `NFPA 70-${edition}, that of the installation`
    : `NFPA 70-${edition} as printed, under which it was built`;
}

/** What can be done. */
export function remedyWords(remedy: Remedy): string {
  switch (remedy.do) {
    case "install":
      return `install ${amountWords(remedy.conductor)}, ${endWords(remedy.conductor.from)} to ${endWords(remedy.conductor.to)}`;
    case "replace":
      return `replace it by ${amountWords(remedy.conductor)}`;
    case "move":
      return `connect it at ${remedy.to.map(endWords).join(" or ")}`;
    case "remove":
      return "remove it";
    case "bond-otherwise":
      return `bond by ${otherwiseWords[remedy.by]} [${remedy.citation.section}]`;
    case "draw":
      return remedy.near.length === 0
        ? "draw it in the installation if it is to stay"
        : `is it ${remedy.near.map(conductorWords).join(", or ")}? If not, draw it in the installation if it is to stay`;
    case "find-out":
      return questionWords[remedy.what];
    case "ask":
      return "have the authority having jurisdiction decide";
  }
}

/** What is there, for a finding about something that is not. */
export function thereWords({ found }: CheckFinding): string {
  return found === null ? "nothing" : foundWords(found);
}

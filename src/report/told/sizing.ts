import { areaOf, conductorSizes } from "../../conductor/index.js";
import type { SizingResult } from "../../rules/result.js";
import type { CapReason, SharedCircuit, Step } from "../../sizing/index.js";
import { writeSupply } from "../../supply/index.js";
import { writtenArea } from "../../units/area.js";
import { cautionSentence } from "../words/caution-words.js";
import { capital } from "../words/names.js";
import { notRequiredWords } from "../words/not-required-words.js";
import { readingSentence } from "../words/reading-words.js";
import { amendedFact, citationsOf, evidenceFact } from "./facts.js";
import type { Statement, Told } from "./told.js";

/** How a conductor came about: every step with its numbers and its section, then what the outcome is. */
export function tellSizing(result: SizingResult): Told {
  const { role, name, edition, steps, evidence, readings, cautions } = result;
  return {
    name: capital(name),
    editions: [edition],
    facts: [...amendedFact(citationsOf(result), cautions), evidenceFact(evidence)],
    statements: [...steps.map((step) => stepStatement(step, steps)), outcomeStatement(result)],
    beside: [],
    readings: readings.map(readingSentence),
    cautions: cautions.map((one) => ({ code: one.code, words: cautionSentence(one) })),
    row: { role },
  };
}

/** What each kind of step is called. */
const stepNames: Readonly<Record<Step["kind"], string>> = {
  sum: "supply",
  assumed: "assumed conductors",
  row: "row of the supply",
  "one-eighth": "12.5 percent",
  floor: "minimum size",
  cap: "limit",
  "rating-row": "row of the device",
  increase: "increase in proportion",
  shared: "shared conductor",
  load: "load",
  "named-size": "named size",
  "standard-size": "standard size",
};

function stepStatement(step: Step, steps: readonly Step[]): Statement {
  const { section, evidence } = step.citation;
  return {
    step: step.kind,
    about: stepNames[step.kind],
    words: sentenceOf(step),
    isWhole: true,
    ...(saysNothingNew(step, steps) && { goesWithoutSaying: true }),
    area: "requiredArea" in step ? step.requiredArea : "area" in step ? step.area : null,
    section,
    evidence,
  };
}

function outcomeStatement(result: SizingResult): Statement {
  const { name, citation, requiredArea } = result;
  const { section, evidence } = citation;
  return {
    step: "outcome",
    about: name,
    words: outcomeWords(result),
    isWhole: false,
    area: requiredArea,
    section,
    evidence,
  };
}

/** A row names a standard size; that the same size is the smallest with its own area goes without saying. */
function saysNothingNew(step: Step, steps: readonly Step[]): boolean {
  return (
    step.kind === "standard-size" &&
    steps.some((other) => (other.kind === "row" || other.kind === "rating-row") && other.size === step.size)
  );
}

/** One step in words, without its section. */
function sentenceOf(step: Step): string {
  switch (step.kind) {
    case "sum":
      return `${writeSupply(step.supply)}: ${writtenArea(step.area)}${step.rule === "largest" ? ", each set's largest conductor added" : ""}`;
    case "assumed":
      return `Assumed instead, matched at ${step.temperature} C: ${step.conductors.map(assumedPhrase).join("; ")}; together ${writtenArea(step.area)}`;
    case "row":
      return `${writtenArea(step.area)} falls in the ${step.entered} row ${rowLimits(step)}, which requires ${step.size} ${step.read}`;
    case "one-eighth":
      return `${writtenArea(step.area)} is over ${writtenArea(step.threshold, "kcmil")} ${step.entered}: 12.5 percent is ${writtenArea(step.requiredArea)}`;
    case "floor":
      return `Not below ${step.size}, ${writtenArea(step.requiredArea)}`;
    case "cap":
      return `Not required above ${capWords[step.why]}: ${writtenArea(step.requiredArea)}`;
    case "rating-row":
      return `A device of ${step.amperes} A takes the row of ${step.through} A, which requires ${step.size} ${step.read}`;
    case "increase":
      return `Ungrounded conductors of ${writtenArea(step.installedArea)} instead of ${writtenArea(step.baselineArea)}: ${writtenArea(step.area)} rises in proportion to ${writtenArea(step.requiredArea)}`;
    case "shared":
      return `Shared by circuits with devices of ${step.circuits.map(sharedPhrase).join(", ")}; the one of ${step.circuits[step.decides]?.amperes} A decides`;
    case "load":
      return `${step.amperes} A at ${step.temperature} C${step.circuitAmperes === undefined ? "" : `, in a circuit of ${step.circuitAmperes} A, which limits small conductors,`} require ${step.size}, ${writtenArea(step.requiredArea)}`;
    case "named-size":
      return `${step.from === "code" ? "The code names" : "The same as the other conductor:"} ${step.size ?? writtenArea(step.requiredArea)}`;
    case "standard-size":
      return `The smallest standard size with ${writtenArea(step.requiredArea)} is ${step.size}, ${writtenArea(step.area)}`;
  }
}

/** At what a conductor is limited. */
export const capWords: Readonly<Record<CapReason, string>> = {
  "ungrounded-conductors": "the ungrounded conductor or set",
  "circuit-conductors": "the circuit conductors",
  "largest-size": "the largest size that the section names",
  electrode: "the size for this electrode",
};

function sharedPhrase({ amperes, requiredArea }: SharedCircuit): string {
  return `${amperes} A (${writtenArea(requiredArea)})`;
}

type RowStep = Extract<
  Step,
  {
    /** Tells the members of the union apart. */
    readonly kind: "row";
  }
>;
type AssumedStep = Extract<
  Step,
  {
    /** Tells the members of the union apart. */
    readonly kind: "assumed";
  }
>;

/** A conductor that is assumed in place of an installed one. */
export function assumedPhrase({
  installed,
  installedAmperes,
  assumed,
  area,
  citation,
}: AssumedStep["conductors"][number]): string {
  const instead = assumed === null ? `${writtenArea(area)} of equal conductance` : assumed;
  return `${instead} for each ${installed.size} ${installed.material} (${installedAmperes} A by ${citation.section})`;
}

/** The limits of a row as tables print them: over 500 through 900 kcmil. */
export function rowLimits({ over, through }: RowStep): string {
  const [from, to] = [over, through].map((area) => (area === null ? undefined : nameOfArea(area)));
  const isOneUnit = from?.endsWith("kcmil") === true && to?.endsWith("kcmil") === true;
  const limits = [from && `over ${isOneUnit ? from.replace(" kcmil", "") : from}`, to && `through ${to}`];
  return limits.filter((limit) => limit !== undefined).join(" ");
}

function nameOfArea(area: number): string {
  return conductorSizes.find((size) => areaOf(size) === area) ?? writtenArea(area, "kcmil");
}

/** What comes out, in words. */
export function outcomeWords({ material, outcome }: SizingResult): string {
  if (outcome.kind === "not-required") return `not required, ${notRequiredWords[outcome.why]}`;
  if (outcome.kind === "conductor") return `${outcome.size} ${material}`;
  const { requiredArea } = outcome;
  const areas = (["cmil", "mm2", "in2"] as const).map((unit) => writtenArea(requiredArea, unit));
  return `${material} with at least ${areas.join(", ")}`;
}

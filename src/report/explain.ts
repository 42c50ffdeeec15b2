import { areaOf, conductorSizes } from "../conductor/index.js";
import { useResult } from "../input/given-result.js";
import type { SizingResult } from "../rules/result.js";
import { sizingResultMarks } from "../rules/result.js";
import type { CapReason, SharedCircuit, Step } from "../sizing/index.js";
import { writeSupply } from "../supply/index.js";
import { formatArea } from "../units/area.js";
import { notRequiredWords } from "./words.js";

/**
 * Says in sentences how a result came about: every step with its numbers and its section, then what the outcome is.
 * Rendered from the steps that decided, so it cannot say anything else.
 *
 * @param result - a sized conductor
 * @returns one paragraph
 * @throws {@link InputError} for anything but what a sizing function gives
 *
 * @example
 * ```ts
 * import { explain, sizeMainBondingJumper } from "bondmil";
 * const jumper = sizeMainBondingJumper({
 *   code: { year: "2023" },
 *   supply: { sets: [{ count: 1, size: "4/0 AWG", material: "aluminum" }] },
 *   jumper: { material: "copper" },
 * });
 * explain(jumper).startsWith("1 x 4/0 AWG aluminum: 211,600 cmil"); // => true
 * ```
 */
export function explain(result: SizingResult): string {
  return useResult(result, "a sizing function", sizingResultMarks, inSentences);
}

function inSentences(result: SizingResult): string {
  const told = result.steps.filter((step) => !saysNothingNew(step, result.steps));
  const sentences = told.map((step) => `${sentenceOf(step)} [${step.citation.section}]`);
  return [...sentences, `${outcomeSentence(result)} [${result.citation.section}]`].join(". ").concat(".");
}

/** A row names a standard size; that the same size is the smallest with its own area goes without saying. */
function saysNothingNew(step: Step, steps: readonly Step[]): boolean {
  return (
    step.kind === "standard-size" &&
    steps.some((other) => (other.kind === "row" || other.kind === "rating-row") && other.size === step.size)
  );
}

/** One step in words, without its section. */
export function sentenceOf(step: Step): string {
  switch (step.kind) {
    case "sum":
      return `${writeSupply(step.supply)}: ${formatArea(step.area)}${step.rule === "largest" ? ", each set's largest conductor added" : ""}`;
    case "assumed":
      return `Assumed instead, matched at ${step.temperature} C: ${step.conductors.map(assumedPhrase).join("; ")}; together ${formatArea(step.area)}`;
    case "row":
      return `${formatArea(step.area)} falls in the ${step.entered} row ${rowPhrase(step.through)}, which asks for ${step.size} ${step.read}`;
    case "one-eighth":
      return `${formatArea(step.area)} is above ${formatArea(step.threshold, "kcmil")} ${step.entered}: one eighth is ${formatArea(step.requiredArea)}`;
    case "floor":
      return `Not below ${step.size}, ${formatArea(step.requiredArea)}`;
    case "cap":
      return `Not required above ${capWords[step.why]}: ${formatArea(step.requiredArea)}`;
    case "rating-row":
      return `A device of ${step.amperes} A falls in the row that ends at ${step.through} A, which asks for ${step.size} ${step.read}`;
    case "increase":
      return `Ungrounded conductors of ${formatArea(step.installedArea)} instead of ${formatArea(step.baselineArea)}: ${formatArea(step.area)} rises in proportion to ${formatArea(step.requiredArea)}`;
    case "shared":
      return `Shared by circuits with devices of ${step.circuits.map(sharedPhrase).join(", ")}; the one of ${step.circuits[step.decides]?.amperes} A decides`;
    case "load":
      return `${step.amperes} A at ${step.temperature} C need ${step.size}, ${formatArea(step.requiredArea)}`;
    case "named-size":
      return `${step.from === "code" ? "The code names" : "The same as the other conductor:"} ${step.size ?? formatArea(step.requiredArea)}`;
    case "standard-size":
      return `The smallest standard size with ${formatArea(step.requiredArea)} is ${step.size}, ${formatArea(step.area)}`;
  }
}

const capWords: Readonly<Record<CapReason, string>> = {
  "ungrounded-conductors": "the ungrounded conductor or set",
  "circuit-conductors": "the circuit conductors",
  "largest-size": "the largest size that the section names",
  electrode: "the size for this electrode",
};

function sharedPhrase({ amperes, requiredArea }: SharedCircuit): string {
  return `${amperes} A (${formatArea(requiredArea)})`;
}

type AssumedStep = Extract<Step, { readonly kind: "assumed" }>;

function assumedPhrase({
  installed,
  installedAmperes,
  assumed,
  area,
}: AssumedStep["conductors"][number]): string {
  const instead = assumed === null ? `${formatArea(area)} of equal conductance` : assumed;
  return `${instead} for each ${installed.size} ${installed.material} (${installedAmperes} A)`;
}

function rowPhrase(through: number | null): string {
  return through === null ? "above the last limit" : `that ends at ${nameOfArea(through)}`;
}

function nameOfArea(area: number): string {
  return conductorSizes.find((size) => areaOf(size) === area) ?? formatArea(area, "kcmil");
}

function outcomeSentence({ name, material, outcome }: SizingResult): string {
  const what = name.charAt(0).toUpperCase() + name.slice(1);
  if (outcome.kind === "not-required") return `${what}: not required, ${notRequiredWords[outcome.why]}`;
  if (outcome.kind === "conductor") return `${what}: ${outcome.size} ${material}`;
  const area = `${formatArea(outcome.requiredArea)}, ${formatArea(outcome.requiredArea, "mm2")}, ${formatArea(outcome.requiredArea, "in2")}`;
  return `${what}: ${material} with at least ${area}`;
}

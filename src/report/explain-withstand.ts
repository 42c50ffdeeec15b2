import type {
  ShortTimeWithstand,
  WithstandCautionCode,
  WithstandCrossCheck,
  WithstandStep,
} from "../engineering/short-time-withstand.js";
import { withstandMarks } from "../engineering/short-time-withstand.js";
import { useResult } from "../input/given-result.js";
import { formatArea } from "../units/area.js";

const cautionWords: Readonly<Record<WithstandCautionCode, string>> = {
  "never-lowers-the-code-minimum":
    "This stands beside the code minimum: it may ask for a larger conductor, never permit a smaller one.",
  "not-the-code-size": "It is not the size that the code asks for; size the conductor by its rule as well.",
  "asymmetry-not-included":
    "The current is taken as symmetrical. Asymmetry adds heat in the first cycles; include it in the amperes where it counts.",
  "let-through-as-stated":
    "The let-through is taken as stated; it must be the device's clearing value at the available current, asymmetry included.",
};

/**
 * Says in sentences how a conductor stands against a fault, with the rule of thumb and the cautions beside it.
 *
 * @param result - from {@link shortTimeWithstand}
 * @returns one paragraph
 * @throws {@link InputError} for anything but what shortTimeWithstand gives
 *
 * @example
 * ```ts
 * import { explainShortTimeWithstand, shortTimeWithstand } from "bondmil";
 * const result = shortTimeWithstand({
 *   conductor: { size: "4/0 AWG", material: "aluminum" },
 *   temperatures: { initial: 75, final: 150 },
 *   fault: { amperes: 12000, seconds: 0.2 },
 * });
 * explainShortTimeWithstand(result).includes("takes 53,757,000 A2s"); // => true
 * ```
 */
export function explainShortTimeWithstand(result: ShortTimeWithstand): string {
  return useResult(result, "shortTimeWithstand", withstandMarks, inSentences);
}

function inSentences(result: ShortTimeWithstand): string {
  const { withstands, ratio, steps, crossCheck, cautions } = result;
  return [
    ...steps.map(
      (step) => `${sentenceOf(step)}${step.citation === null ? "" : ` [${step.citation.section}]`}.`,
    ),
    `${withstands ? "Withstands the fault" : "Does not withstand the fault"}: ratio ${roundDown(ratio)}.`,
    ...(crossCheck === null ? [] : [crossCheckSentence(crossCheck)]),
    ...cautions.map((code) => cautionWords[code]),
  ].join(" ");
}

function sentenceOf(step: WithstandStep): string {
  switch (step.kind) {
    case "heat":
      return `${step.material === "copper" ? "Copper" : "Aluminum"} from ${step.initial} C to ${step.final} C: ${step.factor} x log10((${step.final} + ${step.offset}) / (${step.initial} + ${step.offset})) = ${round(step.perSquaredCircularMil, 5)} A2s per squared circular mil`;
    case "capacity":
      return `${formatArea(step.area)} takes ${round(step.capacity, 5)} A2s`;
    case "let-through":
      return step.amperes === null
        ? `The device lets through ${round(step.letThrough, 5)} A2s, as stated`
        : `${round(step.amperes, 6)} A for ${step.seconds} s bring ${round(step.letThrough, 5)} A2s`;
    case "required-area":
      return `That needs ${formatArea(step.requiredArea)}`;
    case "standard-size":
      return `The smallest standard size with that area is ${step.size}`;
  }
}

function crossCheckSentence(rule: WithstandCrossCheck): string {
  const others = rule.sameTemperatures ? "" : ", which are not the temperatures asked for";
  return `Beside it, from one practitioner source: one ampere per ${rule.circularMilsPerAmpere} circular mils for ${rule.seconds} s (${rule.initial} C to ${rule.final} C${others}) gives ${round(rule.amperes, 4)} A for ${rule.seconds} s, ${round(rule.capacity, 5)} A2s.`;
}

function round(value: number, digits: number): string {
  return value.toLocaleString("en-US", { maximumSignificantDigits: digits });
}

/** Never up, so that a ratio just below 1 does not read as 1. */
function roundDown(ratio: number): string {
  return (Math.floor(ratio * 1000) / 1000).toLocaleString("en-US", { maximumFractionDigits: 3 });
}

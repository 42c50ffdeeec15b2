import type {
  ShortTimeWithstand,
  WithstandCautionCode,
  WithstandCrossCheck,
  WithstandStep,
} from "../../engineering/short-time-withstand.js";
import { writtenArea } from "../../units/area.js";
import { evidenceFact } from "./facts.js";
import type { Statement, Told } from "./told.js";

/** What each caution says. */
export const withstandCautionWords: Readonly<Record<WithstandCautionCode, string>> = {
  "never-lowers-the-code-minimum":
    "This stands beside the code minimum: it may require a larger conductor, never permit a smaller one.",
  "not-the-code-size": "It is not the size that the code requires; size the conductor by its rule as well.",
  "asymmetry-not-included":
    "The current is taken as symmetrical. Asymmetry adds heat in the first cycles; include it in the amperes where it counts.",
  "let-through-as-stated":
    "The let-through is taken as stated; it must be the device's clearing value at the available current, asymmetry included.",
};

/** How a conductor stands against a fault, with the rule of thumb and the cautions beside it. */
export function tellWithstand(result: ShortTimeWithstand): Told {
  const { size, area, material, withstands, ratio, steps, crossCheck, evidence, cautions } = result;
  const conductor = `${size ?? writtenArea(area)} ${material}`;
  return {
    name: `${conductor} against a fault`,
    editions: [],
    facts: [
      { name: "Edition", text: "none; this stands beside the code, by the formula of the section named" },
      evidenceFact(evidence),
    ],
    statements: [
      ...steps.map(
        (step): Statement => ({
          step: step.kind,
          about: stepNames[step.kind],
          words: sentenceOf(step),
          isWhole: true,
          area: "requiredArea" in step ? step.requiredArea : null,
          section: step.citation?.section ?? null,
          evidence: step.citation?.evidence ?? null,
        }),
      ),
      {
        step: "outcome",
        about: "outcome",
        words: `${withstands ? "Withstands the fault" : "Does not withstand the fault"}: ratio ${roundDown(ratio)}`,
        isWhole: true,
        area: null,
        section: null,
        evidence: null,
      },
    ],
    beside: crossCheck === null ? [] : [crossCheckSentence(crossCheck)],
    readings: [],
    cautions: cautions.map((code) => ({ code, words: withstandCautionWords[code] })),
    row: { conductor },
  };
}

const stepNames: Readonly<Record<WithstandStep["kind"], string>> = {
  heat: "heat in the metal",
  capacity: "what the conductor takes",
  "let-through": "what the fault brings",
  "required-area": "required area",
  "standard-size": "standard size",
};

function sentenceOf(step: WithstandStep): string {
  switch (step.kind) {
    case "heat":
      return `${step.material === "copper" ? "Copper" : "Aluminum"} from ${step.initial} C to ${step.final} C: ${step.factor} x log10((${step.final} + ${step.offset}) / (${step.initial} + ${step.offset})) = ${round(step.perSquaredCircularMil, 5)} A2s per squared circular mil`;
    case "capacity":
      return `${writtenArea(step.area)} takes ${round(step.capacity, 5)} A2s`;
    case "let-through":
      return step.amperes === null
        ? `The device lets through ${round(step.letThrough, 5)} A2s, as stated`
        : `${round(step.amperes, 6)} A for ${step.seconds} s bring ${round(step.letThrough, 5)} A2s`;
    case "required-area":
      return `That requires ${writtenArea(step.requiredArea)}`;
    case "standard-size":
      return `The smallest standard size with that area is ${step.size}`;
  }
}

function crossCheckSentence(rule: WithstandCrossCheck): string {
  const others = rule.sameTemperatures ? "" : ", which are not the temperatures given";
  return `Beside it, from one practitioner source: one ampere per ${rule.circularMilsPerAmpere} circular mils for ${rule.seconds} s (${rule.initial} C to ${rule.final} C${others}) gives ${round(rule.amperes, 4)} A for ${rule.seconds} s, ${round(rule.capacity, 5)} A2s.`;
}

function round(value: number, digits: number): string {
  return value.toLocaleString("en-US", { maximumSignificantDigits: digits });
}

/** Never up, so that a ratio just below 1 does not read as 1. */
function roundDown(ratio: number): string {
  return (Math.floor(ratio * 1000) / 1000).toLocaleString("en-US", { maximumFractionDigits: 3 });
}

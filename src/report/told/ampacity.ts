import type { AmpacityStep, ConductorAmpacity } from "../../ampacity/index.js";
import type { Citation } from "../../edition/index.js";
import { ampacityCautionWords, ampacityLimitWords } from "../words/ampacity-words.js";
import { evidenceFact } from "./facts.js";
import type { Statement, Told } from "./told.js";

/** The ampacity of a conductor in its place. */
export function tellAmpacity(result: ConductorAmpacity): Told {
  const { edition, amperes, limitedBy, steps, cautions, evidence } = result;
  return {
    name: "Ampacity of a conductor in its place",
    editions: [edition],
    facts: [evidenceFact(evidence)],
    statements: [
      ...steps.map((step) => said(step.kind, names[step.kind], sentenceOf(step), step.citation)),
      said(
        "outcome",
        "outcome",
        `The ampacity is ${amperesWords(amperes)}, decided by ${ampacityLimitWords[limitedBy]}`,
      ),
    ],
    beside: [],
    readings: [],
    cautions: cautions.map((code) => ({ code, words: ampacityCautionWords[code] })),
    row: { amperes },
  };
}

/** One statement, which says by itself what it is about. */
export function said(step: string, about: string, words: string, citation?: Citation): Statement {
  return {
    step,
    about,
    words,
    isWhole: true,
    area: null,
    section: citation?.section ?? null,
    evidence: citation?.evidence ?? null,
  };
}

/** Amperes as they are read; never rounded up, so that what is just below a value does not read as that value. */
export function amperesWords(amperes: number): string {
  // A product of whole numbers is exact to far more places; the second term takes back what a binary fraction loses.
  const hundredths = Math.floor(amperes * 100 + 1e-6);
  return `${(hundredths / 100).toLocaleString("en-US", { maximumFractionDigits: 2 })} A`;
}

/** Amperes that are required, as they are read; never rounded down, so that what is read is enough. */
export function leastAmperesWords(amperes: number): string {
  const hundredths = Math.ceil(amperes * 100 - 1e-6);
  return `${(hundredths / 100).toLocaleString("en-US", { maximumFractionDigits: 2 })} A`;
}

const names: Readonly<Record<AmpacityStep["kind"], string>> = {
  insulation: "insulation",
  table: "ampacity table",
  rooftop: "roof",
  ambient: "ambient temperature",
  adjustment: "number of conductors",
  cable: "kind of cable",
  terminations: "terminations",
};

function sentenceOf(step: AmpacityStep): string {
  switch (step.kind) {
    case "insulation":
      return `${step.insulation} is rated ${step.temperature} C in a ${step.location} place`;
    case "table":
      return `The ${step.column} C column gives ${amperesWords(step.after)}`;
    case "rooftop":
      return rooftopSentence(step);
    case "ambient":
      return ambientSentence(step);
    case "adjustment":
      return step.because === "short-raceway"
        ? `${step.conductors} current-carrying conductors in a raceway of 24 in. or less are not adjusted for`
        : `${step.conductors} current-carrying conductors: ${step.percent} percent of ${amperesWords(step.before)} is ${amperesWords(step.after)}`;
    case "cable":
      return `Cable of this kind has at most ${amperesWords(step.limit)}, by the ${step.column} C column`;
    case "terminations":
      return step.after < step.before
        ? `Terminations at ${step.column} C carry ${amperesWords(step.limit)}, less than ${amperesWords(step.before)}`
        : `Terminations at ${step.column} C carry ${amperesWords(step.limit)} and limit nothing`;
  }
}

function rooftopSentence(step: Extract<AmpacityStep, { readonly kind: "rooftop" }>): string {
  const height = `${step.inchesAboveRoof} in. above a roof`;
  if (step.because === "height") return `At ${height} nothing is added`;
  if (step.added === null) return `At ${height} nothing is added for this insulation`;
  return `At ${height}, direct sunlight adds ${degrees(step.added)}, which makes ${degrees(step.ambient)}`;
}

function ambientSentence(step: Extract<AmpacityStep, { readonly kind: "ambient" }>): string {
  const at = `At ${degrees(step.ambient)}`;
  const result = `of ${amperesWords(step.before)} is ${amperesWords(step.after)}`;
  return step.method === "table"
    ? `${at}, in the band through ${step.through} C, ${step.percent} percent ${result}`
    : `${at}, the equation gives a factor of ${step.factor.toFixed(4)}, which ${result}`;
}

function degrees(temperature: { readonly celsius?: number; readonly fahrenheit?: number }): string {
  return temperature.fahrenheit === undefined ? `${temperature.celsius} C` : `${temperature.fahrenheit} F`;
}

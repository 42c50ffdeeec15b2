import type { Citation } from "../../edition/index.js";
import type { FeederTap, FeederTapRule } from "../../supply/taps/feeder-tap.js";
import type { TransformerSecondary, TransformerSide } from "../../supply/taps/transformer-secondary.js";
import {
  feederTapRuleNames,
  secondaryRuleNames,
  tapCautionSentence,
  tapPartWords,
  unmetTapWords,
} from "../words/tap-words.js";
import { amperesWords, leastAmperesWords, said } from "./ampacity.js";
import { evidenceFact } from "./facts.js";
import type { Statement, Told } from "./told.js";

type Rule = TransformerSecondary["rules"][number];
type Part = Rule["parts"][number];
type Sizes = NonNullable<FeederTap["smallest"]>;

/** Conductors that are tapped to a feeder. */
export function tellFeederTap(result: FeederTap): Told {
  return told(
    "Conductors tapped to a feeder",
    result,
    result.rules.flatMap((rule, place) => [
      ruleStatement(rule, feederTapRuleNames[place]),
      ...secondaryStatement(rule),
    ]),
  );
}

/** The devices of a transformer and its secondary conductors. */
export function tellTransformerSecondary(result: TransformerSecondary): Told {
  return told("Transformer and its secondary conductors", result, [
    ...sideStatements("primary", result.primary),
    ...sideStatements("secondary", result.secondary),
    ...result.rules.map((rule, place) => ruleStatement(rule, secondaryRuleNames[place])),
  ]);
}

function told(
  name: string,
  result: FeederTap | TransformerSecondary,
  statements: readonly Statement[],
): Told {
  const { edition, amperes, smallest, evidence, cautions } = result;
  return {
    name,
    editions: [edition],
    facts: [evidenceFact(evidence)],
    statements: [
      ...statements,
      outcome(result),
      ...(smallest === null ? [] : [said("smallest", "smallest conductors", sizesSentence(smallest))]),
    ],
    beside: [],
    readings: [],
    cautions: cautions.map((one) => ({ code: one.code, words: tapCautionSentence(one) })),
    row: { amperes, copper: smallest?.copper ?? null, aluminum: smallest?.aluminum ?? null },
  };
}

function sideStatements(side: "primary" | "secondary", one: TransformerSide): readonly Statement[] {
  const { amperes, permitted, device, given } = one;
  return [
    said(`${side}-current`, side, `The ${side} is rated ${amperesWords(amperes)}`),
    said(`${side}-permitted`, `${side} device`, permittedSentence(permitted), permitted?.citation),
    said(
      `${side}-device`,
      `${side} device`,
      device === null
        ? `No device of the ${side} is known`
        : `The ${side} has a device of ${amperesWords(device)}, ${given ? "as given" : "the largest permitted"}`,
    ),
  ];
}

function permittedSentence(permitted: TransformerSide["permitted"]): string {
  if (permitted === null) return "For the transformer itself no device is required there";
  const { percent, amperes, rounding, rating } = permitted;
  const may = `Its device may be rated ${percent} percent of that, ${amperesWords(amperes)}`;
  if (rating === null) return `${may}, and not more; no standard rating is as small`;
  if (rating > amperes) return `${may}, or the next standard rating, ${amperesWords(rating)}`;
  const bound = rounding === "not-above" ? ", and not more" : "";
  return `${may}${bound}; the largest standard rating is ${amperesWords(rating)}`;
}

function ruleStatement(rule: Rule, name = "rule"): Statement {
  const { citation, holds, unmet, amperes, parts, smallest } = rule;
  const floor =
    smallest === null ? "" : `; not smaller than ${smallest.copper} copper or ${smallest.aluminum} aluminum`;
  const words =
    holds && amperes !== null
      ? `holds, and requires ${requiredWords(amperes, parts)}${floor}`
      : `does not hold, for ${unmet.map((one) => unmetTapWords[one]).join("; ")}`;
  return about(name, words, citation);
}

function secondaryStatement({
  citation,
  secondaryAmperes,
  secondaryParts,
}: FeederTapRule): readonly Statement[] {
  if (secondaryAmperes === null) return [];
  const words = requiredWords(secondaryAmperes, secondaryParts);
  return [about("secondary conductors of that transformer", words, citation)];
}

function about(name: string, words: string, citation: Citation): Statement {
  return { ...said("rule", name, words, citation), isWhole: false };
}

function requiredWords(amperes: number, parts: readonly Part[]): string {
  const of = parts.map(partWords).join("; ");
  return `at least ${leastAmperesWords(amperes)}, ${parts.length > 1 ? "the largest of " : "for "}${of}`;
}

function partWords({ from, of, divisor, ratio, amperes }: Part): string {
  if (divisor === 1 && ratio === null) return `${tapPartWords[from]}, ${leastAmperesWords(amperes)}`;
  return `${nameOfPart({ from, divisor })} of ${amperesWords(of)}${ratioWords(ratio)}, ${leastAmperesWords(amperes)}`;
}

function ratioWords(ratio: number | null): string {
  if (ratio === null) return "";
  return ` by the ratio of the voltages, ${ratio.toLocaleString("en-US", { maximumFractionDigits: 4 })}`;
}

function nameOfPart({ from, divisor }: Pick<Part, "from" | "divisor">): string {
  return `${shares[divisor]}${tapPartWords[from]}`;
}

const shares: Readonly<Record<Part["divisor"], string>> = { 1: "", 3: "a third of ", 10: "a tenth of " };

function outcome({ decides, amperes, rules }: FeederTap | TransformerSecondary): Statement {
  if (decides === null || amperes === null) {
    return said("outcome", "outcome", "None of these rules holds for the conductors");
  }
  const rule = rules[decides];
  if (rule === undefined) throw new RangeError("decides is the place of no rule");
  const deciding = rule.parts.filter((part) => part.amperes === amperes).map(nameOfPart);
  return said(
    "outcome",
    "outcome",
    `The conductors carry at least ${leastAmperesWords(amperes)}, by the rule that requires least, for ${deciding.join(" and ")}`,
    rule.citation,
  );
}

function sizesSentence({ copper, aluminum, temperature }: Sizes): string {
  const by = `by the ${temperature} C column`;
  if (copper !== null && aluminum !== null) {
    return `The smallest single conductors ${by} are ${copper} copper and ${aluminum} aluminum`;
  }
  if (copper === null && aluminum === null) {
    return `No single conductor ${by} has that ampacity, of copper or aluminum`;
  }
  const [found, other] =
    copper === null ? [`${aluminum} aluminum`, "copper"] : [`${copper} copper`, "aluminum"];
  return `The smallest single conductor ${by} is ${found}; none of ${other} has that ampacity`;
}

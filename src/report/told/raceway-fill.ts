import type { Fill, FilledBy, RacewayFill } from "../../engineering/raceway-fill/raceway-fill.js";
import { racewayFillCautionWords, racewayNames } from "../words/raceway-words.js";
import { evidenceFact } from "./facts.js";
import type { Statement, Told } from "./told.js";

/** How far a raceway is filled, by what, and what that permits. */
export function tellRacewayFill(result: RacewayFill): Told {
  const { edition, raceway, tradeSize, nipple, conductors, withoutAdded, citations, evidence, cautions } =
    result;
  const name = `${racewayNames[raceway]}, trade size ${tradeSize}${nipple ? ", nipple" : ""}`;
  const [fill] = citations;
  const last: readonly Statement[] =
    withoutAdded === null
      ? []
      : [said("without-added", "without what is added", fillWords(withoutAdded), null)];
  return {
    name: `Fill of ${name}`,
    editions: [edition],
    facts: [evidenceFact(evidence)],
    statements: [
      ...conductors.map((one) => said("conductors", "conductors", conductorWords(one), one.citation)),
      said("outcome", name, fillWords(result), fill ?? null),
      ...last,
    ],
    beside: [],
    readings: [],
    cautions: cautions.map((code) => ({ code, words: racewayFillCautionWords[code] })),
    row: { raceway, tradeSize, nipple },
  };
}

function said(step: string, about: string, words: string, citation: FilledBy["citation"]): Statement {
  return {
    step,
    about,
    words,
    isWhole: false,
    area: null,
    section: citation?.section ?? null,
    evidence: citation?.evidence ?? null,
  };
}

function conductorWords({ count, squareInches, citation }: FilledBy): string {
  return `${count} x ${squareInches} in2${citation === null ? ", as stated" : ""}`;
}

function fillWords(fill: Fill): string {
  const { count, squareInches, percent, permittedPercent, permittedSquareInches, fits, byRounding } = fill;
  const against = `${count} of ${squareInches} in2 together, ${percent.toFixed(1)} percent, of ${permittedSquareInches} in2 at ${permittedPercent} percent`;
  const smallest = fill.smallestTradeSize;
  const needed =
    smallest === null ? "no trade size takes them" : `the smallest trade size that takes them is ${smallest}`;
  const verdict = byRounding
    ? "permitted, the count being rounded up by note 7"
    : fits
      ? "permitted"
      : "not permitted";
  return `${against}: ${verdict}; ${needed}`;
}

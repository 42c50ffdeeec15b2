import type { CableTrayResult } from "../../roles/equipment-grounding-conductor/cable-tray.js";
import { cautionSentence } from "../words/caution-words.js";
import { capital } from "../words/names.js";
import { amendedFact } from "./facts.js";
import type { Told } from "./told.js";

/** Whether a cable tray may serve, with how much metal, and what else must hold. */
export function tellCableTray(result: CableTrayResult): Told {
  const { edition, metal, amperes, citation, cautions } = result;
  const name = `${metal} cable tray as equipment grounding conductor, ${amperes} A`;
  const { section, evidence } = citation;
  return {
    name: capital(name),
    editions: [edition],
    facts: amendedFact([citation], cautions),
    statements: [
      {
        step: "outcome",
        about: name,
        words: outcomeWords(result),
        isWhole: false,
        area: null,
        section,
        evidence,
      },
    ],
    beside: [],
    readings: [],
    cautions: cautions.map((one) => ({ code: one.code, words: cautionSentence(one) })),
    row: { metal, amperes },
  };
}

function outcomeWords({ outcome, metal }: CableTrayResult): string {
  if (outcome.kind === "permitted") {
    const { least, through } = outcome;
    return `permitted with at least ${least.squareInches} in2 (${least.squareMillimeters} mm2) of metal, through ${through} A`;
  }
  const { largestAmperes } = outcome;
  return largestAmperes === 0
    ? "not permitted"
    : `not permitted; ${metal} is permitted through ${largestAmperes} A`;
}

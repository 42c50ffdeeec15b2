import { conductorWords } from "../../installation/conductor-words.js";
import type { OpenOutcome, OpenQuestion, RacewayCase } from "../../installation/open-question.js";
import type { ScheduledConductor } from "../../installation/schedule.js";
import { writtenArea } from "../../units/area.js";
import { notRequiredWords } from "./not-required-words.js";

const questions: Readonly<Record<OpenQuestion["what"], string>> = {
  "raceway-material": "it is not known what the raceway is made of",
};

const cases: Readonly<Record<RacewayCase, string>> = {
  metal: "it is metal",
  nonmetallic: "it is nonmetallic",
  "nonflexible-metal": "it is nonflexible metal",
  "flexible-metal-or-nonmetallic": "it is flexible metal or nonmetallic",
};

/** What the installation does not tell, each as a sentence with what is required in every case. */
export function openSentences(
  conductors: readonly ScheduledConductor[],
  nameOf: (one: ScheduledConductor) => string = conductorWords,
): readonly string[] {
  return conductors.flatMap((one) => {
    if (one.open === undefined) return [];
    const { what, outcomes } = one.open;
    const each = outcomes.map((outcome) => `if ${cases[outcome.if]}: ${requiredWords(outcome)}`);
    return [`${nameOf(one)}: ${questions[what]}; ${each.join("; ")}.`];
  });
}

/** In which case the line of an open question is required; nothing of a line that is not open. */
export function onlyIf({ open, quantity }: Pick<ScheduledConductor, "open" | "quantity">): string {
  const required = (open?.outcomes ?? []).filter((one) => one.quantity > 0);
  if (open === undefined || quantity === 0 || required.length === open.outcomes.length) return "";
  return required.map((one) => `, if ${cases[one.if]}`).join("");
}

function requiredWords({ quantity, result: { outcome, material, citation } }: OpenOutcome): string {
  switch (outcome.kind) {
    case "conductor":
      return `${quantity} x ${outcome.size} ${material} [${citation.section}]`;
    case "area-only":
      return `${quantity} x ${material} of at least ${writtenArea(outcome.requiredArea)} [${citation.section}]`;
    case "not-required":
      return `none, ${notRequiredWords[outcome.why]} [${outcome.citation.section}]`;
  }
}

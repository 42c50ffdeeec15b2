import type { EditionYear, Role } from "../../../src/index.js";
import { answerOf } from "./answer-of.js";
import { gridFor } from "./grid.js";
import { type NamedMistake, programOf } from "./mistakes.js";
import { rightProgram } from "./program.js";

/** Whether a wrong program answers anything in the grid of a role otherwise than the library. */
export function hasEffect(mistake: NamedMistake, role: Role, year: EditionYear): boolean {
  const wrong = programOf(mistake);
  const right = rightAnswers(role, year);
  return gridFor(role, year).some(
    (input, place) => JSON.stringify(answerOf(wrong, { role, year, input })) !== right[place],
  );
}

const kept = new Map<string, readonly string[]>();

function rightAnswers(role: Role, year: EditionYear): readonly string[] {
  const key = `${role} ${year}`;
  const known = kept.get(key);
  if (known !== undefined) return known;
  const answers = gridFor(role, year).map((input) =>
    JSON.stringify(answerOf(rightProgram, { role, year, input })),
  );
  kept.set(key, answers);
  return answers;
}

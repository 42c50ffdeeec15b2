import { InputError, type Role } from "../../../src/index.js";
import type { Given } from "../runner/answer.js";
import type { Asked, Decided, Program } from "./program.js";

/**
 * What a program answers, in as few words as any program could: the size, or the outcome. Figures on the way are left out, so that only a wrong
 * answer is noticed.
 */
export function answerOf(program: Program, asked: Asked): Given {
  try {
    return wordsOf(program(asked), asked.role);
  } catch (error) {
    if (error instanceof InputError) return { errors: error.issues.map(({ code }) => code) };
    throw new Error(`a wrong program breaks at ${JSON.stringify(asked)}`, { cause: error });
  }
}

function wordsOf({ outcome, requiredArea }: Decided, role: Role): Given {
  if (outcome.kind === "area-only") return { outcome: outcome.kind, requiredArea };
  if (outcome.kind !== "conductor") return { outcome: outcome.kind };
  // A raceway is bonded at both ends; a check speaks of the jumper at one of them.
  const quantity = role === "electrode-raceway-bonding-jumper" ? 1 : outcome.quantity;
  return { size: outcome.size, quantity };
}

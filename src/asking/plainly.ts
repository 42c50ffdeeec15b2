import type { AnyRole, PlainQuestion } from "../roles/definition.js";

/** The plainest question of a role; what it does not hang on may be left out. */
export function plainly<Input>(
  role: Pick<AnyRole, "by"> & { plainest(question: PlainQuestion): Input },
  question: Pick<PlainQuestion, "code" | "material"> & Partial<PlainQuestion>,
): Input {
  return role.plainest({ supply: aSupply, amperes: 100, size: "4 AWG", ...question });
}

/** Stands where a role does not look. */
const aSupply: PlainQuestion["supply"] = { sets: [{ count: 1, size: "4/0 AWG", material: "copper" }] };

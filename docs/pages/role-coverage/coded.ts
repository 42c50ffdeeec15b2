import { type EditionYear, type Role, roles } from "bondmil";
import { plainly } from "../../../src/asking/plainly.js";
import type { AnyRole } from "../../../src/roles/definition.js";

/** Whether the library has a role in an edition: the plainest question gets a conductor. */
export function isCoded(role: Role, year: EditionYear): boolean {
  const asked: AnyRole = roles[role];
  return asked.decide(plainly(asked, { code: { year }, material: "copper" })).outcome.kind === "conductor";
}

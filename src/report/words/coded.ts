import type { PlacedCaution } from "../../installation/schedule.js";
import type { Violation } from "../../installation/violation.js";

/** Violations for a program: code, section and places of each, with semicolons between. */
export function codedViolations(violations: readonly Violation[]): string {
  return violations.map(({ code, section, at }) => `${code} [${section}] at ${at.join(", ")}`).join("; ");
}

/** Cautions that are not of one conductor, for a program: code, section and place of each, with semicolons between. */
export function codedCautions(cautions: readonly PlacedCaution[]): string {
  return cautions
    .map(({ code, section, at }) => `${code}${section === null ? "" : ` [${section}]`} at ${at}`)
    .join("; ");
}

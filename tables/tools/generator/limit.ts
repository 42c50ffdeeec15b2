import type { Limit } from "./model.js";

/** Whether a field of a policy is a size with a place of its own. */
export function isLimit(value: unknown): value is Limit {
  return typeof value === "object" && value !== null && "section" in value;
}

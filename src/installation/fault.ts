import type { Issue, IssueCode } from "../input/input-error.js";
import type { Keys } from "../input/place.js";
import { issueAt } from "../input/reader.js";

export type { Issue as Fault, Keys };

/** Notes something wrong at a place. */
export function fault(
  code: IssueCode,
  keys: Keys,
  expected: string,
  received: unknown,
  advice: string,
  alternatives: readonly string[] = [],
): Issue {
  return issueAt(keys, code, expected, received, advice, alternatives);
}

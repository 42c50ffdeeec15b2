import type { Issue } from "./input-error.js";

/**
 * The issues of every trial: a first look at an input, of which only matters whether anything is wrong. Most inputs are right, and a look that
 * tells nothing puts no places and no messages together.
 */
export const trial: Issue[] = [];

/** Where issues are noted. */
interface Noting {
  readonly issues: Issue[];
}

/** Whether this is a trial, so that nobody reads the issues. */
export function isTrial({ issues }: Noting): boolean {
  return issues === trial;
}

/** Notes in a trial that something is wrong. */
export function refuseUntold({ issues }: Noting): undefined {
  issues.push(untold);
  return undefined;
}

const untold: Issue = {
  code: "wrong-type",
  path: "",
  keys: [],
  expected: "",
  alternatives: [],
  received: "",
  message: "",
};

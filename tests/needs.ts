import { spawnSync } from "node:child_process";

/** Something beyond Node that a test needs: whether the test is to be skipped, and what its title then says. */
export interface Need {
  readonly isMissing: boolean;
  readonly because: string;
}

/** Says aloud what is missing; a test that is skipped must not pass for one that passed. */
export function need(what: string, isThere: boolean, advice: string): Need {
  if (isThere) return { isMissing: false, because: "" };
  const skipped = `skipped: there is no ${what}; ${advice}`;
  console.warn(`\nTESTS ${skipped}\n`);
  return { isMissing: true, because: ` (${skipped})` };
}

/** Whether a program answers, and as what is expected. */
export function answers(program: string, words: readonly string[], expected: RegExp): boolean {
  const { stdout } = spawnSync(program, words, { encoding: "utf8" });
  return expected.test(stdout ?? "");
}

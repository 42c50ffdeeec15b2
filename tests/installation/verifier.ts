import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import type { Schedule } from "bondmil";
import { answers, need } from "../needs.js";

/** What the verifier is written in. */
export const python = need(
  "Python 3",
  answers("python3", ["--version"], /^Python 3/),
  "on Debian apt-get install python3",
);

const script = fileURLToPath(new URL("../../corpus/tools/verifier/verify.py", import.meta.url));
const tables = fileURLToPath(new URL("../../tables", import.meta.url));

/** What the verifier says: one line for each refuted step. */
export interface Verdict {
  readonly status: number | null;
  readonly lines: readonly string[];
}

/** Runs the verifier, which is written in another language and shares no code with the library. */
export function runVerifier(input: string, ...options: readonly string[]): Verdict {
  const { status, stdout, stderr, error } = spawnSync("python3", [script, ...options, tables], {
    input,
    encoding: "utf8",
    maxBuffer: 100_000_000,
  });
  if (error !== undefined || stderr !== "") throw error ?? new Error(stderr);
  return { status, lines: stdout.split("\n").filter((line) => line !== "") };
}

/** Streams schedules to the verifier. */
export function verify(schedules: readonly Schedule[]): Verdict {
  return runVerifier(schedules.map((one) => JSON.stringify(one)).join("\n"), "--stream");
}

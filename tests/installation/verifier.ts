import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import type { Installation, Schedule } from "bondmil";
import { answers, need } from "../needs.js";

/** What the verifier is written in. */
export const python = need(
  "Python 3",
  answers("python3", ["--version"], /^Python 3/),
  "on Debian apt-get install python3",
);

const script = fileURLToPath(new URL("../../corpus/tools/verifier/verify.py", import.meta.url));

/** The folder of tables that the verifier reads. */
export const tables = fileURLToPath(new URL("../../tables", import.meta.url));

/** What the verifier says: one line for each refuted statement. */
export interface Verdict {
  readonly status: number | null;
  readonly lines: readonly string[];
}

/** A schedule with the installation that it is of. */
export interface Pair {
  readonly installation: Installation;
  readonly schedule: Schedule;
}

/** What the verifier writes, called with these arguments. */
export function callVerifier(
  words: readonly string[],
  input = "",
): { readonly status: number | null; readonly stdout: string; readonly stderr: string } {
  const { status, stdout, stderr, error } = spawnSync("python3", [script, ...words], {
    input,
    encoding: "utf8",
    maxBuffer: 100_000_000,
  });
  if (error !== undefined) throw error;
  return { status, stdout, stderr };
}

/** Runs the verifier, which is written in another language and shares no code with the library. */
export function runVerifier(input: string, ...options: readonly string[]): Verdict {
  const { status, stdout, stderr } = callVerifier([...options, tables], input);
  if (stderr !== "") throw new Error(stderr);
  const lines = stdout.split("\n").filter((line) => line !== "");
  return { status, lines: lines.slice(0, -1) };
}

/** Streams schedules to the verifier. */
export function verify(schedules: readonly Schedule[]): Verdict {
  return runVerifier(schedules.map((one) => JSON.stringify(one)).join("\n"), "--stream");
}

/** Streams schedules with their installations to the verifier. */
export function verifyDrawn(pairs: readonly Pair[]): Verdict {
  return runVerifier(pairs.map((one) => JSON.stringify(one)).join("\n"), "--stream");
}

import { spawnSync } from "node:child_process";
import type { Command } from "./command.js";

/** Seconds on the clock for the same lines. */
export interface Divided {
  /** One process over all of them. */
  readonly one: number;
  /** Two processes at once, each over a half that was cut beforehand: the most that the two cores of this machine can give. */
  readonly halves: number;
  /** The line that is documented, with two processes at a time. */
  readonly parallel: number;
}

/** What dividing gains, the answers being the same bytes. */
export function divided({ main }: Command, input: string, lines: number): Divided {
  const stream = `'${process.execPath}' '${main}' stream`;
  const half = Math.ceil(lines / 2);
  secondsOf(`head -n ${half} '${input}' > '${input}.1' && tail -n +${half + 1} '${input}' > '${input}.2'`);
  const parts = `parallel -j 2 --pipe -N ${half} --block 200M --keep-order "${stream} --first-line {= \\$_ = (seq() - 1) * ${half} + 1 =}"`;
  const took = {
    one: secondsOf(`${stream} < '${input}' > '${input}.one'`),
    halves: secondsOf(
      `${stream} < '${input}.1' > /dev/null & first=$!; ${stream} < '${input}.2' > /dev/null && wait $first`,
    ),
    parallel: secondsOf(`${parts} < '${input}' > '${input}.two'`),
  };
  secondsOf(`cmp '${input}.one' '${input}.two'`);
  return took;
}

function secondsOf(line: string): number {
  const start = performance.now();
  const { status, stderr } = spawnSync("bash", ["-c", `${line} 2> /dev/null`], { encoding: "utf8" });
  if (status !== 0) throw new Error(`${line} ended with ${status}: ${stderr}`);
  return (performance.now() - start) / 1000;
}

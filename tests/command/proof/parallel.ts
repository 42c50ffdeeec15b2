import { spawnSync } from "node:child_process";
import { linesOfAPart } from "../../../src/command/facts/of-lines.js";
import type { Command } from "./command.js";

/** Seconds on the clock of one process, and of two by the line that is documented; both write the same. */
export function oneAndTwo({ main }: Command, input: string): readonly [one: number, two: number] {
  const stream = `'${process.execPath}' '${main}' stream`;
  const divided = `parallel -j 2 --pipe -N ${linesOfAPart} --keep-order "${stream} --first-line {= \\$_ = (seq() - 1) * ${linesOfAPart} + 1 =}"`;
  return [
    secondsOf(`${stream} < '${input}' > '${input}.one'`),
    secondsOf(`${divided} < '${input}' > '${input}.two' && cmp '${input}.one' '${input}.two'`),
  ];
}

function secondsOf(line: string): number {
  const start = performance.now();
  const { status, stderr } = spawnSync("bash", ["-c", `${line} 2> /dev/null`], { encoding: "utf8" });
  if (status !== 0) throw new Error(`${line} ended with ${status}: ${stderr}`);
  return (performance.now() - start) / 1000;
}

import { spawn } from "node:child_process";
import { once } from "node:events";
import { readFileSync } from "node:fs";
import type { Command } from "./command.js";
import { lineAt } from "./lines.js";

/** How far a stream had come, and what the process had taken by then. */
export interface Mark {
  readonly lines: number;
  /** Megabytes that were resident, on average over the lines just before. */
  readonly megabytes: number;
  /** Of the processor, since the start. */
  readonly seconds: number;
}

/** Lines before a mark over which memory is averaged, for it rises and falls with every collection. */
const before = 20_000;

/**
 * Node lets the part of the heap where objects begin grow for as long as a program makes garbage, whatever the program keeps: without a bound
 * the resident set rises by 9 to 24 percent between 100,000 and 1,000,000 lines, and stays there.
 */
const nursery = "--max-semi-space-size=4";

/** Sends a stream of many lines through one process, and looks at it at some of them. */
export async function marksOf(
  { main }: Command,
  lines: number,
  at: readonly number[],
): Promise<readonly Mark[]> {
  const child = spawn(process.execPath, [nursery, main, "stream"], { stdio: ["pipe", "pipe", "ignore"] });
  const { pid, stdin, stdout } = child;
  const marks: Mark[] = [];
  let seen = 0;
  let samples: number[] = [];
  stdout.on("data", (data: Buffer) => {
    for (let i = data.indexOf(0x0a); i >= 0; i = data.indexOf(0x0a, i + 1)) seen += 1;
    const next = at[marks.length];
    if (next === undefined) return;
    if (seen > next - before) samples.push(residentOf(pid ?? 0));
    // The process still waits for more lines when the last mark is taken.
    if (seen < next) return;
    marks.push({ lines: next, megabytes: meanOf(samples), seconds: secondsOf(pid ?? 0) });
    samples = [];
    if (marks.length === at.length && !stdin.writableEnded) stdin.end();
  });
  for (let number = 0; number < lines; number += 100) {
    const some = Array.from({ length: Math.min(100, lines - number) }, (_, i) => `${lineAt(number + i)}\n`);
    if (!stdin.write(some.join(""))) await once(stdin, "drain");
  }
  if (child.exitCode === null) await once(child, "close");
  return marks;
}

function residentOf(pid: number): number {
  const [, kilobytes] = /VmRSS:\s*(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, "utf8")) ?? [];
  return Number(kilobytes) / 1024;
}

/** Seconds of the processor, for the process and for the system. */
function secondsOf(pid: number): number {
  const times = readFileSync(`/proc/${pid}/stat`, "utf8")
    .replace(/^.*\) /, "")
    .split(" ");
  return (Number(times[11]) + Number(times[12])) / 100;
}

function meanOf(numbers: readonly number[]): number {
  return numbers.reduce((sum, one) => sum + one, 0) / numbers.length;
}

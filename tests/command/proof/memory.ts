import { spawn } from "node:child_process";
import { once } from "node:events";
import { readFileSync } from "node:fs";
import type { Command } from "./command.js";
import { lineAt } from "./lines.js";

/** How far a stream had come, and what the process had taken by then. */
export interface Mark {
  readonly lines: number;
  /** Most megabytes that were resident at once. */
  readonly megabytes: number;
  /** Of the processor, since the start. */
  readonly seconds: number;
}

/** Sends a stream of many lines through one process, and looks at it at some of them. */
export async function marksOf({ main }: Command, lines: number, at: readonly number[]): Promise<readonly Mark[]> {
  const child = spawn(process.execPath, [main, "stream"], { stdio: ["pipe", "pipe", "ignore"] });
  const { pid, stdin, stdout } = child;
  const marks: Mark[] = [];
  let seen = 0;
  stdout.on("data", (data: Buffer) => {
    for (let i = data.indexOf(0x0a); i >= 0; i = data.indexOf(0x0a, i + 1)) seen += 1;
    // The last of them is looked at while the process still waits for more.
    while (seen >= (at[marks.length] ?? Number.POSITIVE_INFINITY)) marks.push(markOf(pid ?? 0, at[marks.length] ?? 0));
    if (marks.length === at.length && !stdin.writableEnded) stdin.end();
  });
  for (let number = 0; number < lines; number += 100) {
    const some = Array.from({ length: Math.min(100, lines - number) }, (_, i) => `${lineAt(number + i)}\n`);
    if (!stdin.write(some.join(""))) await once(stdin, "drain");
  }
  if (child.exitCode === null) await once(child, "close");
  return marks;
}

function markOf(pid: number, lines: number): Mark {
  const [, kilobytes] = /VmHWM:\s*(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, "utf8")) ?? [];
  const times = readFileSync(`/proc/${pid}/stat`, "utf8").replace(/^.*\) /, "").split(" ");
  // User and system, in hundredths of a second.
  const seconds = (Number(times[11]) + Number(times[12])) / 100;
  return { lines, megabytes: Number(kilobytes) / 1024, seconds };
}

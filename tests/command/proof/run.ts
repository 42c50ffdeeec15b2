/**
 * Tries what bondmil stream promises, at full length: memory that stays flat and time that is linear over 1,000,000 lines, two processes
 * by GNU parallel over installations against one, and Dask distributed with a worker that is killed half-way. LINES, PARALLEL_LINES and DASK_LINES say how
 * many. It ends with 1 where a promise is not kept; what is not there is skipped, and said.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildCommand, type Command } from "./command.js";
import { hasDask, throughDask } from "./dask.js";
import { installationAt, lineAt } from "./lines.js";
import { marksOf } from "./memory.js";
import { divided } from "./parallel.js";

const asked = (name: string, usual: number): number => Number(process.env[name] ?? usual);
const only = process.env["ONLY"];
const folder = mkdtempSync(join(tmpdir(), "bondmil-stream-"));
const broken: string[] = [];

try {
  const command = await buildCommand(folder);
  if (only === undefined || only === "memory") await tryMemory(command);
  if (only === undefined || only === "parallel") tryParallel(command);
  if (only === undefined || only === "dask") await tryDask(command);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
for (const promise of broken) console.log(`BROKEN: ${promise}`);
if (broken.length > 0) process.exitCode = 1;

function hold(isKept: boolean, promise: string): void {
  if (!isKept) broken.push(promise);
}

async function tryMemory(command: Command): Promise<void> {
  const lines = asked("LINES", 1_000_000);
  const tenth = lines / 10;
  const [early, late] = await marksOf(command, lines, [tenth, lines]);
  if (early === undefined || late === undefined) throw new Error("the stream ended early");
  const more = late.megabytes / early.megabytes;
  // The start of the process is in the first tenth.
  const slower = (late.seconds - early.seconds) / 9 / early.seconds;
  for (const { lines: at, megabytes, seconds } of [early, late]) {
    console.log(`${at} lines: ${megabytes.toFixed(0)} MB resident, ${seconds.toFixed(1)} s of the processor`);
  }
  console.log(`memory ${more.toFixed(2)} x, a tenth takes ${slower.toFixed(2)} x of the first`);
  hold(more <= 1.1, "the resident set grows by at most 10 percent from a tenth of the lines to all");
  hold(slower <= 1.2, "every tenth of the lines takes as long as the first");
}

function tryParallel(command: Command): void {
  if (!/GNU parallel/i.test(spawnSync("parallel", ["--version"], { encoding: "utf8" }).stdout ?? "")) {
    console.log("SKIPPED: GNU parallel is not there; on Debian apt-get install parallel");
    return;
  }
  const lines = asked("PARALLEL_LINES", 80_000);
  const { one, halves, parallel } = divided(command, written("parallel", lines, installationAt), lines);
  console.log(
    `one process ${one.toFixed(1)} s, two over halves ${halves.toFixed(1)} s, GNU parallel ${parallel.toFixed(1)} s: ${(one / parallel).toFixed(2)} x of ${(one / halves).toFixed(2)} x`,
  );
  // How much two cores give is the machine's: some share what is behind them.
  hold(parallel < one, "two processes by GNU parallel are faster than one");
  hold(parallel <= 1.3 * halves, "GNU parallel comes within 30 percent of two processes over halves");
}

async function tryDask(command: Command): Promise<void> {
  if (!hasDask()) {
    console.log("SKIPPED: Dask distributed is not there; on Debian apt-get install python3-distributed");
    return;
  }
  const lines = asked("DASK_LINES", 200_000);
  const input = written("dask", lines);
  const output = `${input}.out`;
  const alone = spawnSync(
    "bash",
    [
      "-c",
      `'${process.execPath}' '${command.main}' stream --give rows < '${input}' > '${input}.alone' 2> /dev/null`,
    ],
    { stdio: "ignore" },
  );
  const { code, errors, killed } = await throughDask(command, input, output, Math.ceil(lines / 40));
  const isSame = readFileSync(output).equals(readFileSync(`${input}.alone`));
  console.log(
    `Dask: ${lines} lines, a worker ${killed ? "killed" : "NOT killed"}, answers ${isSame ? "the same" : "OTHERS"}`,
  );
  hold(alone.status === 0 && code === 0, `Dask ends well: ${code}\n${errors}`);
  hold(killed, "a worker was killed while answers were still awaited");
  hold(isSame, "nothing is lost, doubled or out of order");
}

function written(name: string, lines: number, at: (number: number) => string = lineAt): string {
  const path = join(folder, name);
  writeFileSync(path, Array.from({ length: lines }, (_, i) => `${at(i)}\n`).join(""));
  return path;
}

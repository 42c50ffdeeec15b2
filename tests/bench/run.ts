/** Ratios of sizing, in one run: npm run bench, or npm run bench -- --write for docs/benchmarks.md */
import { writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { do_not_optimize } from "mitata";
import { areas, calls, contenders, warm } from "./contenders.js";

const runs = 5;

/** What is timed, how often it is done in one run, and what it took in each run, in nanoseconds of processor time for one. */
interface Timed {
  readonly name: string;
  readonly times: number;
  readonly run: () => number;
  readonly took: number[];
}

const loops = Object.entries(contenders).map(([name, contender]): Timed => {
  const run = (): number => areas.reduce((sum, area) => sum + contender(area), 0);
  return { name, times: 400, run, took: [] };
});
const whole = Object.entries(calls).map(
  ([name, call]): Timed => ({ name, times: 4000, run: call, took: [] }),
);

do_not_optimize(warm());
// One run for each beforehand, and then all of them in turn: what the machine does beside falls on all alike.
for (let round = 0; round <= runs; round += 1) {
  for (const { times, run, took } of [...loops, ...whole]) {
    const before = process.cpuUsage();
    for (let i = 0; i < times; i += 1) do_not_optimize(run());
    const { user, system } = process.cpuUsage(before);
    if (round > 0) took.push(((user + system) * 1000) / times);
  }
}

const ordered = ({ took }: Timed): readonly number[] => [...took].sort((a, b) => a - b);
const least = (one: Timed): number => ordered(one)[0] ?? Number.NaN;
const median = (one: Timed): number => ordered(one)[Math.floor(runs / 2)] ?? Number.NaN;

const [baseline] = loops;
if (baseline === undefined) throw new Error("there is no baseline");
const ofLoop = loops.map((one) => {
  const each = (time: number): string => (time / areas.length).toFixed(1);
  const ratio = (median(one) / median(baseline)).toFixed(1);
  return `| ${one.name} | ${each(least(one))} | ${each(median(one))} | ${ratio} |`;
});
const ofCalls = whole.map((one) => {
  const each = (time: number): string => (time / 1000).toFixed(1);
  return `| ${one.name} | ${each(least(one))} | ${each(median(one))} |`;
});
const [processor] = cpus();
const page = `# How fast it is

Written by \`npm run bench -- --write\`. Read the ratios: the times are of one machine, whatever else it did.

Node ${process.versions.node}, ${process.platform} ${process.arch}, ${cpus().length} x ${processor?.model ?? "unknown"}. Processor time, ${runs} runs in turn after one beforehand, every edition, role and
pair of materials prepared and asked before.

## One area in, one area out

A main bonding jumper of 2023, copper from copper, over ${areas.length} areas around every end of a row and between. Nanoseconds for one.

| what | least | median | to the first |
| --- | --- | --- | --- |
${ofLoop.join("\n")}

The first two are what one would write by hand for this one table, with nothing checked. The prepared path checks its argument and knows cap and floors.

## A whole result

Input checked, steps, citations, evidence, cautions, readings compared. Microseconds for one.

| what | least | median |
| --- | --- | --- |
${ofCalls.join("\n")}
`;

if (process.argv.includes("--write"))
  writeFileSync(new URL("../../docs/benchmarks.md", import.meta.url), page);
console.log(page);

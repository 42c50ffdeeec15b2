import { cpus } from "node:os";
import type { Import } from "./imports.js";
import type { Shares } from "./profile.js";
import type { Stream } from "./streams.js";
import { least, median, runs, type Timed } from "./timed.js";

/** What was measured. */
export interface Measured {
  /** One area in, one area out; the first is the baseline. Each was asked so many areas at a time. */
  readonly loops: readonly Timed[];
  readonly engines: readonly Timed[];
  readonly roles: readonly Timed[];
  readonly areas: number;
  readonly areasOfEngines: number;
  readonly calls: readonly Timed[];
  /** The first is the baseline. */
  readonly schedules: readonly Timed[];
  readonly bundles: readonly {
    readonly what: string;
    readonly goal: number;
    readonly esbuild: number;
    readonly rollup: number;
    readonly rooms: readonly (readonly [room: string, kilobytes: number])[];
  }[];
  readonly streams: readonly Stream[];
  /** The first is the baseline. */
  readonly imports: readonly Import[];
  readonly profiles: readonly { readonly what: string; readonly shares: Shares }[];
}

/** The times of a loop for one area. */
export function ratioOf(one: Timed, asked: number, baseline: Timed, areas: number): number {
  return median(one) / asked / (median(baseline) / areas);
}

/** A line of the table of imports. */
function ofImport(empty: Import): (one: Import) => string {
  return ({ what, read, timed }) => {
    const times = [least(timed), median(timed)].map((nanoseconds) => (nanoseconds / 1e6).toFixed(0));
    return `| ${[what, read.toFixed(0), ...times, (median(timed) / median(empty.timed)).toFixed(2)].join(" | ")} |`;
  };
}

/** The page of what was measured. */
export function pageOf(measured: Measured): string {
  const { loops, engines, roles, areas, areasOfEngines, calls, schedules, bundles, profiles } = measured;
  const { streams, imports } = measured;
  const [baseline] = loops;
  const [bare] = schedules;
  const [empty] = imports;
  if (baseline === undefined || bare === undefined || empty === undefined)
    throw new Error("there is no baseline");
  const ofLoop = (asked: number) => (one: Timed) => {
    const each = (nanoseconds: number): string => (nanoseconds / asked).toFixed(1);
    const ratio = ratioOf(one, asked, baseline, areas).toFixed(1);
    return `| ${one.name} | ${each(least(one))} | ${each(median(one))} | ${ratio} |`;
  };
  const ofStream = ({ what, goal, lines, stream, bare }: Stream): string => {
    const times = [least(stream), median(stream), median(bare)].map((all) => micro(all / lines));
    return `| ${[what, goal ?? "", ...times, (median(stream) / median(bare)).toFixed(1)].join(" | ")} |`;
  };
  const micro = (nanoseconds: number): string => (nanoseconds / 1000).toFixed(1);
  const [processor] = cpus();
  return `# How fast it is, and how large

Written by \`npm run bench:write\`. Read the ratios: the times are of one machine, whatever else it did.

Node ${process.versions.node}, ${process.platform} ${process.arch}, ${cpus().length} x ${processor?.model ?? "unknown"}. Processor time, ${runs} runs in turn after one beforehand, every edition, role and
pair of materials prepared and asked before.

## One area in, one area out

A main bonding jumper of 2023, copper from copper, over ${areas} areas around every end of a row and between (the engines that answer later, over ${areasOfEngines} of them). Nanoseconds for one.

![How many times the time of a sorted array each way takes](pictures/benchmarks.svg)

([data](pictures/benchmarks.csv))

| what | least | median | to the first |
| --- | --- | --- | --- |
${[...loops.map(ofLoop(areas)), ...engines.map(ofLoop(areasOfEngines))].join("\n")}

The first two are what one would write by hand for this one table, with nothing checked. The prepared path checks its argument and knows cap and floors. The goal for it is
1.5 times the first. The general engines are given the same rows and give the same answers, which a test holds;
of \`@gorules/zen-engine\`, which the bench fetches for itself, the bench.

Each role that can be prepared, copper from copper, or by the rating of a device. A role that goes by the current of an impedance, by another conductor or by a
size that the code names has no loop to be prepared for.

| role | least | median | to the sorted array |
| --- | --- | --- | --- |
${roles.map(ofLoop(areas)).join("\n")}

## A whole result

Input checked, steps, citations, evidence, cautions, readings compared. Microseconds for one. The goal is 2 for a main bonding jumper and 3 for an electrode conductor.
A form bound to its code and materials, whose goal was 0.6, was made and taken back: it saves reading the code, a twentieth of the time, since what hangs on the code alone is kept already.

| what | least | median |
| --- | --- | --- |
${calls.map((one) => `| ${one.name} | ${micro(least(one))} | ${micro(median(one))} |`).join("\n")}

## A whole installation

A service of six enclosures, 45 conductors. Microseconds for one. The goal is 8 times bare JSON.

| what | least | median | to the first |
| --- | --- | --- | --- |
${schedules.map((one) => `| ${one.name} | ${micro(least(one))} | ${micro(median(one))} | ${(median(one) / median(bare)).toFixed(1)} |`).join("\n")}

## A stream

\`bondmil stream\` without the process and the pipe: four installations, or sixteen questions of a main bonding jumper, a hundred times over, to bare JSON, which parses each line and writes
the result that is already there. Microseconds for a line.

| what | goal | least | median | bare JSON | to bare JSON |
| --- | --- | --- | --- | --- | --- |
${streams.map(ofStream).join("\n")}

## An import

A process of Node that imports this and ends, by the clock. The goal is 1.2 times the empty script.

| what | kilobytes of code | least, ms | median, ms | to the first |
| --- | --- | --- | --- | --- |
${imports.map(ofImport(empty)).join("\n")}

Node reads all of the code that is imported before its first line runs, whatever is used of it, and that is most of the difference (the last line below): so much a byte, in every room alike.
Entries for installations and for reports would hold most of the library, and are none.

## Where the time goes

Hundredths of the time of the processor by room of the library, whoever called; rooms below 1 left out.

${profiles.map(({ what, shares }) => `- ${what}: ${shares.map(([room, share]) => `${room} ${Math.round(share)}`).join(", ")}.`).join("\n")}

## How large it is

What a program carries that imports this and nothing else, from \`bondmil\`: kilobytes, minified and compressed by brotli, as two bundlers make it.

| what | goal | esbuild | Rollup |
| --- | --- | --- | --- |
${bundles.map(({ what, goal, esbuild, rollup }) => `| ${what} | ${goal} | ${esbuild.toFixed(1)} | ${rollup.toFixed(1)} |`).join("\n")}

\`bondmil/sizing\` saves no byte here: nothing of the library stays in a program that does not use it, which a test holds, whichever of the two it imports.

What each room of the library brings to it: kilobytes, compressed by itself, so that they add up to more than the whole. \`edition/tables\` is what the code says: sizes,
sections, policies, readings.

${bundles.map(({ what, rooms }) => `- ${what}: ${rooms.map(([room, own]) => `\`${room}\` ${own.toFixed(1)}`).join(", ")}.`).join("\n")}

Where a goal is not met, this is why. The value of a role holds its input check and its whole rule, so that whoever prepares one carries what explains it. Every code is checked with its
amendments: their kinds, cells and conditions, the readings of every edition, and the ampacities by which a supply of another material is replaced. The budgets in \`package.json\` are what is reached, and are only lowered.
`;
}

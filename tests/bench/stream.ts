/**
 * What a stream costs against the least that any program could do with its lines: parse each, and write the result that is already
 * there. Time of the processor, so that what else the machine does counts little: npm run bench.
 */
import { readFileSync } from "node:fs";
import type { StreamOptions } from "../../src/command/stream.js";
import { compiled } from "./compiled.js";

const { answerLines } = await compiled<typeof import("../../src/command/stream.js")>("src/command/stream.ts");

const rounds = 5;
const names = ["shop", "cold-store", "print-works", "pump-station"];
const installations = names.map((name) =>
  JSON.stringify(
    JSON.parse(readFileSync(new URL(`../../docs/installations/${name}.json`, import.meta.url), "utf8")),
  ),
);
const questions = ["2/0 AWG", "250 kcmil", "500 kcmil", "750 kcmil"].flatMap((size) =>
  ["2008", "2014", "2020", "2026"].map((year) =>
    JSON.stringify({
      role: "main-bonding-jumper",
      input: {
        code: { year },
        supply: { sets: [{ count: 3, size, material: "copper" }] },
        conductor: { material: "copper" },
      },
    }),
  ),
);

const asked: readonly (readonly [name: string, lines: readonly string[], options: Partial<StreamOptions>])[] =
  [
    ["installations, with fingerprints", repeated(installations, 100), { isFingerprinted: true }],
    ["installations", repeated(installations, 100), {}],
    ["installations, rows", repeated(installations, 100), { give: "rows" }],
    ["conductors", repeated(questions, 100), {}],
    ["conductors, rows", repeated(questions, 100), { give: "rows" }],
  ];

console.log("\nA stream to bare parse and stringify of the same lines and results. Medians of one run.\n");
for (const [name, lines, given] of asked) {
  const options: StreamOptions = { give: "schedule", isFingerprinted: false, firstLine: 1, ...given };
  const bytes = Buffer.from(`${lines.join("\n")}\n`);
  const results = (await answered(bytes, options))
    .trimEnd()
    .split("\n")
    .map((line) => JSON.parse(line) as unknown);
  const times = { stream: [] as number[], bare: [] as number[] };
  for (let round = 0; round <= rounds; round += 1) {
    const stream = await processorTime(() => answered(bytes, options));
    const bare = await processorTime(async () => bareAnswers(lines, results));
    // The first round is for the compiler.
    if (round > 0) times.stream.push(stream);
    if (round > 0) times.bare.push(bare);
  }
  const [stream, bare] = [median(times.stream), median(times.bare)];
  const each = `${((stream / lines.length) * 1000).toFixed(0)} us a line`;
  console.log(name.padEnd(36) + `${(stream / bare).toFixed(1)} x`.padStart(10) + each.padStart(18));
}

async function answered(bytes: Uint8Array, options: StreamOptions): Promise<string> {
  let text = "";
  for await (const part of answerLines(chunks(bytes), options)) text += part.text;
  return text;
}

/** As a pipe hands them over. */
async function* chunks(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  for (let start = 0; start < bytes.length; start += 65_536) yield bytes.subarray(start, start + 65_536);
}

function bareAnswers(lines: readonly string[], results: readonly unknown[]): string {
  let text = "";
  for (const [i, line] of lines.entries()) {
    JSON.parse(line);
    text += `${JSON.stringify(results[i])}\n`;
  }
  return text;
}

async function processorTime(run: () => Promise<unknown>): Promise<number> {
  const start = process.cpuUsage();
  await run();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}

function median(of: readonly number[]): number {
  return [...of].sort((a, b) => a - b)[Math.floor(of.length / 2)] ?? Number.NaN;
}

function repeated<Item>(items: readonly Item[], times: number): readonly Item[] {
  return Array.from({ length: times }, () => items).flat();
}

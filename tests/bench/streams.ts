import { readFileSync } from "node:fs";
import type { StreamOptions } from "../../src/command/stream.js";
import { compiled } from "./compiled.js";
import { type Timed, timed } from "./timed.js";

const { answerLines } = await compiled<typeof import("../../src/command/stream.js")>("src/command/stream.ts");

/** A stream, and the least that any program could do with its lines: parse each, and write the result that is already there. */
export interface Stream {
  readonly what: string;
  /** How many times bare JSON it may take; absent where none is set. */
  readonly goal?: number;
  /** Both time all lines together. */
  readonly stream: Timed;
  readonly bare: Timed;
  readonly lines: number;
}

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

export const streams: readonly Stream[] = [
  await streamOf("installations, with fingerprints", installations, { isFingerprinted: true }, 5),
  await streamOf("installations", installations, {}, 3),
  await streamOf("installations, rows", installations, { give: "rows" }),
  await streamOf("conductors", questions, {}),
  await streamOf("conductors, rows", questions, { give: "rows" }),
];

async function streamOf(
  what: string,
  lines: readonly string[],
  given: Partial<StreamOptions>,
  goal?: number,
): Promise<Stream> {
  const options: StreamOptions = { give: "schedule", isFingerprinted: false, firstLine: 1, ...given };
  const all = Array.from({ length: 100 }, () => lines).flat();
  const bytes = Buffer.from(`${all.join("\n")}\n`);
  const results = (await answered(bytes, options))
    .trimEnd()
    .split("\n")
    .map((line) => JSON.parse(line) as unknown);
  return {
    what,
    ...(goal === undefined ? {} : { goal }),
    stream: timed(what, 1, () => answered(bytes, options)),
    bare: timed(`${what}, bare`, 1, () => bareAnswers(all, results)),
    lines: all.length,
  };
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

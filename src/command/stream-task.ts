import type { Ending } from "./exit-codes.js";
import { failed, type Outcome } from "./failure.js";
import { answer, tell } from "./output.js";
import { progressOn } from "./progress.js";
import { bytesOf, standardInput, Unreadable } from "./source.js";
import { answerLines, type StreamOptions } from "./stream.js";
import type { Surroundings } from "./surroundings.js";

/** Writes a line for every line of standard input, as fast as the output is taken. */
export async function streamTask(
  { give = "schedule", "first-line": first = "1", strict }: Readonly<Record<string, string>>,
  around: Surroundings,
): Promise<Outcome<Ending>> {
  if (!/^[1-9]\d{0,14}$/.test(first)) {
    return failed(
      "usage",
      `--first-line requires a whole number from 1, not "${first}". See bondmil stream --help.`,
    );
  }
  if (around.inputIsTerminal) {
    return failed(
      "usage",
      "stream reads installations from standard input, one on each line. See bondmil stream --help.",
    );
  }
  const progress = progressOn(around.output.isTerminal ? null : around.errors, around.now);
  let lines = 0;
  let refused = 0;
  const options = { give, firstLine: Number(first) } as StreamOptions;
  try {
    for await (const { text, isRefused } of answerLines(bytesOf(around.input, standardInput), options)) {
      lines += 1;
      if (isRefused) refused += 1;
      await progress.step(lines, refused);
      await answer(`${text}\n`, around);
    }
  } catch (error) {
    if (error instanceof Unreadable) return failed("file", error.message);
    throw error;
  } finally {
    await progress.end();
  }
  if (refused > 0) await tell(`bondmil: ${refused} of ${lines} lines refused\n`, around);
  return { value: refused > 0 && strict !== undefined ? "refused" : "done" };
}

import type { Ending } from "./exit-codes.js";
import { failed, type Outcome } from "./failure.js";
import { progressOn } from "./progress.js";
import { answerLines, type StreamOptions } from "./stream.js";
import type { Surroundings } from "./surroundings.js";

/** Answers every line of standard input, as fast as the answers are taken. */
export async function streamTask(
  { give = "schedule", "first-line": first = "1", strict }: Readonly<Record<string, string>>,
  around: Surroundings,
): Promise<Outcome<Ending>> {
  if (!/^[1-9]\d{0,14}$/.test(first)) {
    return failed(
      "usage",
      `--first-line wants a whole number from 1, not "${first}". See bondmil stream --help.`,
    );
  }
  if (around.inputIsTerminal) {
    return failed(
      "usage",
      "stream reads drawings from standard input, one on each line. See bondmil stream --help.",
    );
  }
  const progress = progressOn(around.output.isTerminal ? null : around.errors, around.now);
  let lines = 0;
  let refused = 0;
  const options = { give, firstLine: Number(first) } as StreamOptions;
  async function* pieces(): AsyncGenerator<string> {
    for await (const { text, isRefused } of answerLines(around.input, options)) {
      lines += 1;
      if (isRefused) refused += 1;
      progress.step(lines, refused);
      yield `${text}\n`;
    }
  }
  try {
    await around.pour(pieces());
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    if (code === undefined) throw error;
    return failed("file", `standard input cannot be read: ${message}`);
  } finally {
    progress.end();
  }
  if (refused > 0) around.errors.write(`bondmil: ${refused} of ${lines} lines refused\n`);
  return { value: refused > 0 && strict !== undefined ? "refused" : "done" };
}

import type { RunTask } from "../answer.js";
import { failed } from "../failure.js";
import { hintFor } from "../hints.js";
import { answer, tell } from "../output.js";
import { progressOn } from "../progress.js";
import { bytesOf, nameOf, Unreadable } from "../source.js";
import { answerLines, type StreamOptions } from "../stream.js";

/** Writes a line for every line of standard input, as fast as the output is taken. */
export const streamTask: RunTask = async ({ options: given }, around) => {
  const { give = "schedule", "first-line": first = "1", strict, fingerprint } = given;
  if (!/^[1-9]\d{0,14}$/.test(first)) {
    return failed(
      "usage",
      `--first-line requires a whole number from 1, not "${first}". See bondmil stream --help.`,
    );
  }
  if (around.inputIsTerminal) return failed("usage", hintFor("stream"));
  const progress = progressOn(around.output.isTerminal ? null : around.errors, around.now);
  const options = { give, isFingerprinted: fingerprint !== undefined, firstLine: Number(first) };
  let lines = 0;
  let refused = 0;
  try {
    const input = bytesOf(around.input, nameOf(undefined));
    for await (const part of answerLines(input, options as StreamOptions)) {
      lines += part.lines;
      refused += part.refused;
      await progress.step(lines, refused);
      await answer(part.text, around);
    }
  } catch (error) {
    if (error instanceof Unreadable) return failed("file", error.message);
    throw error;
  } finally {
    await progress.end();
  }
  if (refused > 0) await tell(`bondmil: ${refused} of ${lines} lines refused\n`, around);
  const ending = refused > 0 && strict !== undefined ? "refused" : "done";
  return { value: { text: null, ending } };
};

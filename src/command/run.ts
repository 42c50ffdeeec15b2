import type { Issue } from "../input/input-error.js";
import { InputError } from "../input/input-error.js";
import { type Asked, readArguments } from "./arguments.js";
import { corpusTask } from "./corpus-task.js";
import { type Ending, exitCodes } from "./exit-codes.js";
import { failed, type Outcome } from "./failure.js";
import { generalHelp, subcommandHelp } from "./help.js";
import { answer, Unwritten } from "./output.js";
import { standardInput } from "./source.js";
import { streamTask } from "./stream-task.js";
import { suppliesTask } from "./supplies-task.js";
import type { Surroundings } from "./surroundings.js";
import { type Answer, answerTask } from "./tasks.js";
import { alarm, colored, fitted, isColored, printable, readingWidth } from "./terminal.js";

const pageWidth = 80;

/**
 * Runs the command once.
 *
 * @param words - the command line, without the name of the program
 * @param around - the world outside
 * @param version - of the package
 * @returns the exit code
 */
export async function run(words: readonly string[], around: Surroundings, version: string): Promise<number> {
  try {
    const asked = readArguments(words);
    const outcome = asked.value === undefined ? asked : await answered(asked.value, around, version);
    if (outcome.value !== undefined) return exitCodes[outcome.value].code;
    await complain(outcome.failure.message, around);
    return exitCodes[outcome.failure.ending].code;
  } catch (error) {
    if (error instanceof Unwritten) {
      if (error.isUnread) return exitCodes.done.code;
      await complain(error.message, around);
      return exitCodes.output.code;
    }
    const detail = error instanceof Error ? (error.stack ?? error.message) : String(error);
    await complain(`this is a defect of bondmil, please report it with the installation\n${detail}`, around);
    return exitCodes.defect.code;
  }
}

async function answered(asked: Asked, around: Surroundings, version: string): Promise<Outcome<Ending>> {
  if (asked.kind === "version") return said(version, around);
  if (asked.kind === "help") {
    const width = readingWidth(around.output) ?? pageWidth;
    return said(asked.about ? subcommandHelp(asked.about, width) : generalHelp(width), around);
  }
  const { subcommand } = asked;
  try {
    if (subcommand === "stream") return await streamTask(asked.options, around);
    const given =
      subcommand === "corpus"
        ? await corpusTask(asked.options)
        : subcommand === "supplies"
          ? await suppliesTask(asked, around)
          : await answerTask(subcommand, asked, around);
    return given.value === undefined ? given : await written(given.value, around);
  } catch (error) {
    if (error instanceof InputError)
      return failed("refused", refusal(error.issues, asked.installation ?? standardInput));
    throw error;
  }
}

async function said(text: string, around: Surroundings): Promise<Outcome<Ending>> {
  await answer(`${text}\n`, around);
  return { value: "done" };
}

/** Text for reading is fitted to a terminal; everything else goes out as it is. */
async function written(
  { text, isForReading, ending }: Answer,
  around: Surroundings,
): Promise<Outcome<Ending>> {
  const { output } = around;
  const width = readingWidth(output);
  const plain = isForReading ? printable(text) : text;
  const shown = isForReading && width !== undefined ? fitted(plain, width) : plain;
  const whole = shown.endsWith("\n") ? shown : `${shown}\n`;
  await answer(isForReading && isColored(output, around) ? colored(whole) : whole, around);
  return { value: ending };
}

function refusal(issues: readonly Issue[], name: string): string {
  const lines = issues.map(({ path, message }) => `  ${path === "" ? "the whole" : path}: ${message}`);
  const count = issues.length === 1 ? "one thing is wrong" : `${issues.length} things are wrong`;
  return [`${name} is refused, ${count}:`, ...lines].join("\n");
}

/** Where nobody can be told either, the exit code alone tells it. */
async function complain(message: string, around: Surroundings): Promise<void> {
  const { errors } = around;
  const name = isColored(errors, around) ? alarm("bondmil:") : "bondmil:";
  const width = readingWidth(errors);
  const text = printable(message);
  const shown = width === undefined ? text : fitted(text, width - "bondmil: ".length);
  await errors.write(`${name} ${shown}\n`).catch(() => {});
}

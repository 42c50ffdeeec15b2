import { InputError } from "../input/input-error.js";
import type { Answer, RunTask } from "./answer.js";
import { type Asked, readArguments } from "./arguments.js";
import { type Ending, exitCodes } from "./exit-codes.js";
import type { SubcommandName } from "./facts/fact.js";
import { failed, type Outcome } from "./failure.js";
import { generalHelp, subcommandHelp } from "./help.js";
import { answer, Unwritten } from "./output.js";
import { refusal } from "./refusal.js";
import { nameOf } from "./source.js";
import type { Surroundings } from "./surroundings.js";
import { alarm, colored, isColored, printable, readingWidth } from "./terminal.js";

const pageWidth = 80;

/** What a subcommand requires is loaded when it runs. */
export const tasks: { readonly [Name in SubcommandName]: () => Promise<RunTask> } = {
  begin: async () => (await import("./tasks/begin.js")).beginTask,
  schedule: async () => (await import("./tasks/of-installation.js")).scheduleTask,
  report: async () => (await import("./tasks/of-installation.js")).reportTask,
  check: async () => (await import("./tasks/of-installation.js")).checkTask,
  compare: async () => (await import("./tasks/compare.js")).compareTask,
  supplies: async () => (await import("./tasks/supplies.js")).suppliesTask,
  size: async () => (await import("./tasks/size.js")).sizeTask,
  sweep: async () => (await import("./tasks/sweep.js")).sweepTask,
  stream: async () => (await import("./tasks/stream.js")).streamTask,
  corpus: async () => (await import("./tasks/corpus.js")).corpusTask,
};

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
    const { about } = asked;
    return said(about ? subcommandHelp(about, width) : generalHelp(width, around.home), around);
  }
  try {
    const runTask = await tasks[asked.subcommand]();
    const given = await runTask(asked, around);
    return given.value === undefined ? given : await written(given.value, around);
  } catch (error) {
    if (error instanceof InputError) return failed("refused", refusal(error.issues, nameOf(asked.path)));
    throw error;
  }
}

async function said(text: string, around: Surroundings): Promise<Outcome<Ending>> {
  await answer(`${text}\n`, around);
  return { value: "done" };
}

/** Text for reading is fitted to a terminal; everything else goes out as it is. */
async function written(given: Answer, around: Surroundings): Promise<Outcome<Ending>> {
  const { ending } = given;
  if (given.text === null) return { value: ending };
  const { text, isForReading } = given;
  const { output } = around;
  const shown = isForReading ? await toWidth(printable(text), readingWidth(output)) : text;
  const whole = shown.endsWith("\n") ? shown : `${shown}\n`;
  await answer(isForReading && isColored(output, around) ? colored(whole) : whole, around);
  return { value: ending };
}

/** Where nobody can be told either, the exit code alone tells it. */
async function complain(message: string, around: Surroundings): Promise<void> {
  const { errors } = around;
  const name = isColored(errors, around) ? alarm("bondmil:") : "bondmil:";
  const width = readingWidth(errors);
  const room = width === undefined ? undefined : width - "bondmil: ".length;
  const shown = await toWidth(printable(message), room);
  await errors.write(`${name} ${shown}\n`).catch(() => {});
}

/** Fits a text to a width, where there is one. */
async function toWidth(text: string, width: number | undefined): Promise<string> {
  return width === undefined ? text : (await import("./fitted.js")).fitted(text, width);
}

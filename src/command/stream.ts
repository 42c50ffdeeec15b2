import { InputError, type Issue } from "../input/input-error.js";
import { checkOfRead } from "../installation/check.js";
import type { Installation } from "../installation/document.js";
import { fault } from "../installation/fault.js";
import { readInstallation } from "../installation/read-installation.js";
import { scheduleOfRead } from "../installation/schedule-of.js";
import { rowsOfSchedule } from "../report/schedule-rows.js";
import { type Line, linesOf } from "./lines.js";
import { decoded, mostBytes } from "./source.js";
import type { givable } from "./subcommands.js";

/** What a stream is to give, and where it starts. */
export interface StreamOptions {
  readonly give: (typeof givable)[number];
  /** Number of the first line. */
  readonly firstLine: number;
}

/** What became of one line. */
export interface StreamedLine {
  /** A JSON document without a line break. */
  readonly text: string;
  readonly isRefused: boolean;
}

/**
 * A line of output for each line of a stream of installations, one JSON document in each, in the same order. Nothing is read ahead of
 * what the consumer takes, and nothing of a line outlives its output.
 */
export async function* answerLines(
  input: AsyncIterable<Uint8Array>,
  { give, firstLine }: StreamOptions,
): AsyncGenerator<StreamedLine> {
  let line = firstLine;
  for await (const bytes of linesOf(input, mostBytes)) {
    yield answerOf(bytes, line, give);
    line += 1;
  }
}

function answerOf(bytes: Line, line: number, give: StreamOptions["give"]): StreamedLine {
  try {
    return {
      text: JSON.stringify({ line, [give]: givers[give](readInstallation(textOf(bytes))) }),
      isRefused: false,
    };
  } catch (error) {
    const text = JSON.stringify({ line, error: { issues: issuesOf(error) } });
    return { text, isRefused: true };
  }
}

const givers = {
  schedule: scheduleOfRead,
  rows: (installation: Installation) => rowsOfSchedule(scheduleOfRead(installation)),
  check: checkOfRead,
} as const;

function textOf(bytes: Line): string {
  if (bytes === null) {
    throw new InputError([
      fault("out-of-range", [], `at most ${mostBytes} bytes`, "a longer line", "divide the installation"),
    ]);
  }
  const text = decoded(bytes);
  if (text === null)
    throw new InputError([fault("wrong-type", [], "UTF-8 text", "other bytes", "save it as UTF-8")]);
  if (text.trim() === "") {
    throw new InputError([
      fault("missing", [], "an installation", undefined, "write one JSON document on each line"),
    ]);
  }
  return text;
}

/** A defect in one line does not end the stream either; it is told in the same shape. */
function issuesOf(error: unknown): readonly Omit<Issue, "code">[] {
  if (error instanceof InputError) return error.issues;
  const detail = error instanceof Error ? error.message : String(error);
  const message = `this is a defect of bondmil, please report it with the installation: ${detail}`;
  const { code: _, ...issue } = fault("wrong-type", [], "a line of output", "a defect", "");
  return [{ ...issue, received: "a defect", message }];
}

import { InputError, type Issue } from "../input/input-error.js";
import { buildSchedule } from "../installation/build-schedule.js";
import { checkInstalled } from "../installation/check.js";
import { errorOf, fault } from "../installation/fault.js";
import { scheduleRows } from "../report/schedule-rows.js";
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
 * Answers a stream of drawings, one JSON document in each line: one answer for each line, in the same order. Nothing is read ahead of
 * what is asked for, and nothing of a line outlives its answer.
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
    return { text: JSON.stringify({ line, [give]: givers[give](textOf(bytes)) }), isRefused: false };
  } catch (error) {
    const text = JSON.stringify({ line, error: { issues: issuesOf(error) } });
    return { text, isRefused: true };
  }
}

const givers = {
  schedule: buildSchedule,
  rows: (drawing: string) => scheduleRows(buildSchedule(drawing)),
  check: checkInstalled,
} as const;

function textOf(bytes: Line): string {
  if (bytes === null) {
    throw errorOf([
      fault("out-of-range", [], `at most ${mostBytes} bytes`, "a longer line", "divide the drawing"),
    ]);
  }
  const text = decoded(bytes);
  if (text === null)
    throw errorOf([fault("wrong-type", [], "UTF-8 text", "other bytes", "save it as UTF-8")]);
  if (text.trim() === "") {
    throw errorOf([fault("missing", [], "a drawing", undefined, "write one JSON document on each line")]);
  }
  return text;
}

/** A defect in one line does not end the stream either; it is told in the same shape. */
function issuesOf(error: unknown): readonly Omit<Issue, "code">[] {
  if (error instanceof InputError) return error.issues;
  const detail = error instanceof Error ? error.message : String(error);
  const message = `this is a defect of bondmil, please report it with the drawing: ${detail}`;
  return [{ path: "", expected: "an answer", received: "a defect", message }];
}

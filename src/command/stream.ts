import { InputError, type Issue } from "../input/input-error.js";
import { checkOfRead } from "../installation/check.js";
import { fault } from "../installation/fault.js";
import { readInstallation } from "../installation/read-installation.js";
import { plainScheduleOf, scheduleOfRead } from "../installation/schedule-of.js";
import { plainRows, rowsOfSchedule } from "../report/schedule-rows.js";
import type { givable } from "./facts/of-lines.js";
import { type Line, linesOf } from "./lines.js";
import { isQuestion, resultOf, rowOfResult } from "./questions.js";
import { decoded, mostBytes } from "./source.js";

/** What a stream is to give, and where it starts. */
export interface StreamOptions {
  readonly give: (typeof givable)[number];
  /** Whether schedules and their rows have their fingerprints. */
  readonly isFingerprinted: boolean;
  /** Number of the first line. */
  readonly firstLine: number;
}

/** What became of some lines. */
export interface StreamedPart {
  /** One JSON document on each line. */
  readonly text: string;
  readonly lines: number;
  readonly refused: number;
}

/** Letters after which a part is handed on: large enough that writing does not count, and little to keep. */
const enough = 65_536;

/**
 * A line of output for each line of a stream, one JSON document in each, in the same order. Nothing is read ahead of what the consumer
 * takes, and nothing of a line outlives its output.
 */
export async function* answerLines(
  input: AsyncIterable<Uint8Array>,
  options: StreamOptions,
): AsyncGenerator<StreamedPart> {
  let line = options.firstLine;
  for await (const some of linesOf(input, mostBytes)) {
    let part = { text: "", lines: 0, refused: 0 };
    for (const bytes of some) {
      const { kind, text } = answerOf(bytes, options);
      part.text += `{"line":${line},"${kind}":${text}}\n`;
      part.lines += 1;
      if (kind === "error") part.refused += 1;
      line += 1;
      if (part.text.length > enough) {
        yield part;
        part = { text: "", lines: 0, refused: 0 };
      }
    }
    if (part.lines > 0) yield part;
  }
}

interface LineAnswer {
  readonly kind: "error" | "result" | StreamOptions["give"];
  /** Of JSON. */
  readonly text: string;
}

function answerOf(bytes: Line, options: StreamOptions): LineAnswer {
  try {
    const data = dataOf(textOf(bytes));
    const { kind, given } = isQuestion(data)
      ? answerQuestion(data, options)
      : answerInstallation(data, options);
    return { kind, text: JSON.stringify(given) };
  } catch (error) {
    return { kind: "error", text: JSON.stringify({ issues: issuesOf(error) }) };
  }
}

type Given = { readonly kind: Exclude<LineAnswer["kind"], "error">; readonly given: unknown };

function answerInstallation(data: unknown, { give, isFingerprinted }: StreamOptions): Given {
  const installation = readInstallation(data);
  switch (give) {
    case "schedule":
      return {
        kind: give,
        given: isFingerprinted ? scheduleOfRead(installation) : plainScheduleOf(installation),
      };
    case "rows":
      return {
        kind: give,
        given: isFingerprinted
          ? rowsOfSchedule(scheduleOfRead(installation))
          : plainRows(plainScheduleOf(installation)),
      };
    case "check":
      return { kind: give, given: checkOfRead(installation) };
  }
}

function answerQuestion(data: object, { give }: StreamOptions): Given {
  switch (give) {
    case "schedule":
      return { kind: "result", given: resultOf(data) };
    case "rows":
      return { kind: give, given: [rowOfResult(resultOf(data))] };
    case "check":
      throw new InputError([
        fault(
          "wrong-type",
          ["role"],
          "an installation",
          "the question of a conductor",
          "leave out --give check",
        ),
      ]);
  }
}

/** What a line holds. A text that is no JSON, or too long, is left to the one place that refuses it. */
function dataOf(text: string): unknown {
  try {
    return text.length > mostCharacters ? text : (JSON.parse(text) as unknown);
  } catch {
    return text;
  }
}

/** No installation is longer. */
const mostCharacters = 5_000_000;

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

import type { Amendment, EditionYear } from "../edition/index.js";
import { type Check, checkInstalled, findings } from "../installation/check.js";
import { compareDrawing } from "../installation/compare-drawing.js";
import type { DrawingComparison } from "../installation/drawing-comparison.js";
import type { Asked, Options } from "./arguments.js";
import type { Ending } from "./exit-codes.js";
import { failed, type Outcome } from "./failure.js";
import { readSource } from "./source.js";
import type { comparable, SubcommandName } from "./subcommands.js";
import type { Surroundings } from "./surroundings.js";
import { readingWidth } from "./terminal.js";
import {
  checkWriters,
  comparisonWriters,
  type Format,
  type ReportFormat,
  reportWriters,
  scheduleWriters,
} from "./writers.js";

/** What a subcommand answers. */
export interface Answer {
  readonly text: string;
  /** Whether people read it as it is, and not a program. */
  readonly isForReading: boolean;
  readonly ending: Ending;
}

type Task = Extract<Asked, { readonly kind: "task" }>;

/** Answers a subcommand about one drawing. */
export async function answerTask(
  subcommand: Exclude<SubcommandName, "stream" | "corpus">,
  { drawing: path, options }: Pick<Task, "drawing" | "options">,
  around: Surroundings,
): Promise<Outcome<Answer>> {
  const format = (options["as"] ?? "text") as Format;
  const isForReading = format === "text";
  const width = readingWidth(around.output);
  const wanted = await comparisonOf(options, around);
  if (wanted.failure !== undefined) return wanted;
  const source = await readSource(path, around);
  if (source.failure !== undefined) return source;
  const drawing = source.value;
  switch (subcommand) {
    case "schedule": {
      const text = scheduleWriters[format](drawing, width);
      return { value: { text, isForReading, ending: "done" } };
    }
    case "report": {
      const text = reportWriters[(options["as"] ?? "html") as ReportFormat](drawing);
      return { value: { text, isForReading: false, ending: "done" } };
    }
    case "check": {
      const check = checkInstalled(drawing);
      const text = checkWriters[format](check, width);
      return { value: { text, isForReading, ending: endingOfCheck(check) } };
    }
    case "compare": {
      const comparison = compareDrawing({ ...wanted.value, drawing });
      const text = comparisonWriters[format](comparison, width);
      return { value: { text, isForReading, ending: endingOfComparison(comparison) } };
    }
  }
}

function endingOfCheck({ conductors, schedule }: Check): Ending {
  const isFound = conductors.some(({ verdict }) => findings.includes(verdict));
  return isFound || schedule.violations.length > 0 ? "found" : "done";
}

function endingOfComparison({ variants }: DrawingComparison): Ending {
  return variants.every(({ refused }) => refused !== undefined) ? "refused" : "done";
}

type Wanted =
  | { readonly by: "reading" | "arrangement" }
  | { readonly by: "edition"; readonly years?: readonly EditionYear[] }
  | { readonly by: "amendment"; readonly amendments?: readonly Amendment[] };

async function comparisonOf(options: Options, around: Surroundings): Promise<Outcome<Wanted>> {
  const by = (options["by"] ?? "edition") as (typeof comparable)[number];
  const { years, amendments } = options;
  if (years !== undefined && by !== "edition") return misplaced("--years", "edition");
  if (amendments !== undefined && by !== "amendment") return misplaced("--amendments", "amendment");
  if (by === "edition") {
    return {
      value: { by, ...(years !== undefined && { years: years.split(",") as unknown as EditionYear[] }) },
    };
  }
  if (by !== "amendment" || amendments === undefined) return { value: { by } };
  const file = await readSource(amendments, around);
  if (file.failure !== undefined) return file;
  try {
    return { value: { by, amendments: JSON.parse(file.value) as readonly Amendment[] } };
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return failed("refused", `${amendments} is not JSON: ${why}`);
  }
}

function misplaced(option: string, by: string): Outcome<never> {
  return failed("usage", `${option} is for --by ${by} only. See bondmil compare --help.`);
}

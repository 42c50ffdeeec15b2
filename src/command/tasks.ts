import type { Amendment, EditionYear } from "../edition/index.js";
import { checkOfRead } from "../installation/check.js";
import { compareInstallation } from "../installation/compare-installation.js";
import type { InstallationComparison } from "../installation/installation-comparison.js";
import type { Check } from "../installation/installed/checked.js";
import { readInstallation } from "../installation/read-installation.js";
import type { DocumentOptions } from "../report/frame.js";
import type { Asked, Options } from "./arguments.js";
import type { Ending } from "./exit-codes.js";
import { failed, type Outcome } from "./failure.js";
import { readSource } from "./source.js";
import type { comparable, SubcommandName } from "./subcommands.js";
import type { Surroundings } from "./surroundings.js";
import { readingWidth } from "./terminal.js";
import {
  type Format,
  type ReportFormat,
  writeCheck,
  writeComparison,
  writeReport,
  writeSchedule,
} from "./writers.js";

/** The output of a subcommand. */
export interface Answer {
  readonly text: string;
  /** Whether people read it as it is, and not a program. */
  readonly isForReading: boolean;
  readonly ending: Ending;
}

type Task = Extract<Asked, { readonly kind: "task" }>;

/** Runs a subcommand on one installation. */
export async function answerTask(
  subcommand: Exclude<SubcommandName, "stream" | "corpus" | "supplies">,
  { installation: path, options }: Pick<Task, "installation" | "options">,
  around: Surroundings,
): Promise<Outcome<Answer>> {
  const format = (options["as"] ?? "text") as Format;
  const isForReading = format === "text";
  const style = { format, width: readingWidth(around.output), options: documentOptions(options) };
  const wanted = await comparisonOf(options, around);
  if (wanted.failure !== undefined) return wanted;
  const source = await readSource(path, around);
  if (source.failure !== undefined) return source;
  const installation = readInstallation(source.value);
  switch (subcommand) {
    case "schedule": {
      const text = writeSchedule(installation, style);
      return { value: { text, isForReading, ending: "done" } };
    }
    case "report": {
      const text = writeReport(installation, (options["as"] ?? "html") as ReportFormat, style.options);
      return { value: { text, isForReading: false, ending: "done" } };
    }
    case "check": {
      const check = checkOfRead(installation);
      const text = writeCheck(check, style);
      return { value: { text, isForReading, ending: endingOfCheck(check) } };
    }
    case "compare": {
      const comparison = compareInstallation({ ...wanted.value, installation });
      const text = writeComparison(comparison, style);
      return { value: { text, isForReading, ending: endingOfComparison(comparison) } };
    }
  }
}

/** What stands in the title block beside what the library knows; what is blank is not given. */
export function documentOptions(options: Options): DocumentOptions {
  const [preparedBy = "", date = ""] = [options["prepared-by"], options["date"]];
  return { ...(preparedBy.trim() !== "" && { preparedBy }), ...(date.trim() !== "" && { date }) };
}

function endingOfCheck({ isListed, findings, schedule }: Check): Ending {
  return !isListed || findings.length > 0 || schedule.violations.length > 0 ? "found" : "done";
}

function endingOfComparison({ variants }: InstallationComparison): Ending {
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

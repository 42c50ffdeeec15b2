import type { Amendment, EditionYear } from "../../edition/index.js";
import { compareInstallation } from "../../installation/compare-installation.js";
import type { InstallationComparison } from "../../installation/installation-comparison.js";
import { readInstallation } from "../../installation/read-installation.js";
import type { RunTask } from "../answer.js";
import type { Options } from "../arguments.js";
import type { Ending } from "../exit-codes.js";
import type { comparable } from "../facts/of-installation.js";
import { failed, type Outcome } from "../failure.js";
import { hintFor } from "../hints.js";
import { readJson, readSource } from "../source.js";
import { formatOf, refusePage, styleOf } from "../style.js";
import type { Surroundings } from "../surroundings.js";
import { writeComparison } from "../writers.js";

/** Puts an installation side by side with itself. */
export const compareTask: RunTask = async (task, around) => {
  const format = formatOf(task, "text");
  const page = refusePage(task, format, around);
  if (page !== null) return page;
  const wanted = await comparisonOf(task.options, around);
  if (wanted.failure !== undefined) return wanted;
  const source = await readSource(task.path, around, hintFor("compare"));
  if (source.failure !== undefined) return source;
  const installation = readInstallation(source.value);
  const comparison = compareInstallation({ ...wanted.value, installation });
  const text = writeComparison(comparison, styleOf(task, format, around));
  return { value: { text, isForReading: format === "text", ending: endingOf(comparison) } };
};

function endingOf({ variants }: InstallationComparison): Ending {
  return variants.every(({ refused }) => refused !== undefined) ? "refused" : "done";
}

type Wanted =
  | { readonly by: "reading" | "arrangement" }
  | { readonly by: "edition"; readonly years?: readonly EditionYear[] }
  | { readonly by: "amendment"; readonly amendments?: readonly Amendment[] };

async function comparisonOf(options: Options, around: Surroundings): Promise<Outcome<Wanted>> {
  const by = (options["by"] ?? "edition") as (typeof comparable)[number];
  const { editions, amendments } = options;
  if (editions !== undefined && by !== "edition") return misplaced("--editions", "edition");
  if (amendments !== undefined && by !== "amendment") return misplaced("--amendments", "amendment");
  if (by === "edition") {
    return {
      value: { by, ...(editions !== undefined && { years: editions.split(",") as EditionYear[] }) },
    };
  }
  if (by !== "amendment" || amendments === undefined) return { value: { by } };
  const file = await readJson(amendments, around, hintFor("compare"));
  return file.failure !== undefined
    ? file
    : { value: { by, amendments: file.value as readonly Amendment[] } };
}

function misplaced(option: string, by: string): Outcome<never> {
  return failed("usage", `${option} is for --by ${by} only. See bondmil compare --help.`);
}

import type { Amendment, EditionYear } from "../../edition/index.js";
import { compareInstallation } from "../../installation/compare-installation.js";
import type { InstallationComparison } from "../../installation/installation-comparison.js";
import { readInstallation } from "../../installation/read-installation.js";
import type { RunTask } from "../answer.js";
import type { Options } from "../arguments.js";
import type { Ending } from "../exit-codes.js";
import type { comparable } from "../facts/of-installation.js";
import { failed, type Outcome } from "../failure.js";
import { hintFor, hintForAmendments } from "../hints.js";
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
  | { readonly over: "readings" | "arrangements" }
  | { readonly over: "editions"; readonly editions?: readonly EditionYear[] }
  | { readonly over: "amendments"; readonly amendments?: readonly Amendment[] };

async function comparisonOf(options: Options, around: Surroundings): Promise<Outcome<Wanted>> {
  const over = (options["over"] ?? "editions") as (typeof comparable)[number];
  const { editions, amendments } = options;
  if (editions !== undefined && over !== "editions") return misplaced("--editions", "editions");
  if (amendments !== undefined && over !== "amendments") return misplaced("--amendments", "amendments");
  if (over === "editions") {
    return {
      value: { over, ...(editions !== undefined && { editions: editions.split(",") as EditionYear[] }) },
    };
  }
  if (amendments === undefined) return { value: { over } };
  const file = await readJson(amendments, around, hintForAmendments);
  return file.failure !== undefined
    ? file
    : { value: { over, amendments: file.value as readonly Amendment[] } };
}

function misplaced(option: string, over: string): Outcome<never> {
  return failed("usage", `${option} is for --over ${over} only. See bondmil compare --help.`);
}

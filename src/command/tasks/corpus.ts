import type { RunTask } from "../answer.js";
import { failed } from "../failure.js";
import { formatOf } from "../style.js";

/** Runs the published checks. They are a part of the package of their own, which only this loads. */
export const corpusTask: RunTask = async (task) => {
  const library = await import("bondmil");
  const { implementationOf, runCorpus, sources, writeMisses, writeSummary } = await import("bondmil/corpus");
  const { as: _, ...filter } = task.options;
  // The choices were checked with the command line.
  const rows = runCorpus(implementationOf(library), filter as NonNullable<Parameters<typeof runCorpus>[1]>);
  if (rows.length === 0) {
    return failed("usage", "no published check is left by these options. See bondmil corpus --help.");
  }
  const misses = writeMisses(rows, sources);
  const ending = misses === "" ? "done" : "found";
  if (formatOf(task, "text") === "json") {
    return { value: { text: JSON.stringify(rows, null, 2), isForReading: false, ending } };
  }
  const text = [writeSummary(rows, sources), ...(misses === "" ? [] : [misses])].join("\n\n");
  return { value: { text, isForReading: true, ending } };
};

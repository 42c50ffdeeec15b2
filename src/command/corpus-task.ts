import type { Options } from "./arguments.js";
import { failed, type Outcome } from "./failure.js";
import type { Answer } from "./tasks.js";

/** Runs the published checks. They are a part of the package of their own, which only this loads. */
export async function corpusTask(options: Options): Promise<Outcome<Answer>> {
  const library = await import("bondmil");
  const { implementationOf, runCorpus, sources, writeMisses, writeSummary } = await import("bondmil/corpus");
  // The choices were checked with the command line.
  const rows = runCorpus(implementationOf(library), options as NonNullable<Parameters<typeof runCorpus>[1]>);
  if (rows.length === 0) {
    return failed("usage", "no published check is left by these options. See bondmil corpus --help.");
  }
  const misses = writeMisses(rows, sources);
  const text = [writeSummary(rows, sources), ...(misses === "" ? [] : [misses])].join("\n\n");
  return { value: { text, isForReading: true, ending: misses === "" ? "done" : "found" } };
}

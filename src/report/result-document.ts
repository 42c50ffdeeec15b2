import type { Document } from "./document.js";
import { type DocumentOptions, framed, readOptions } from "./frame.js";
import { type AnyResult, useAnyResult } from "./told/results.js";
import { partsOf, rowsOf } from "./told/told.js";

/**
 * Makes a document of one result: its steps with sections and evidence, the outcome, open readings and cautions.
 *
 * @param result - what {@link explain} takes
 * @param options - another title, who prepared it, the date
 * @returns a document for {@link render}; its rows are the steps, areas in circular mils
 * @throws {@link InputError} for anything but such a result, and for wrong options
 *
 * @example
 * ```ts
 * import { classifySource, render, resultDocument } from "bondmil";
 * const transformer = classifySource({
 *   code: { year: "2023" },
 *   source: { kind: "transformer", windings: "separate", overcurrentDevice: "not-integral" },
 *   grounding: "ungrounded",
 * });
 * const text = render(resultDocument(transformer, { preparedBy: "J. Doe" }), { as: "text" });
 * text.split("\n").slice(0, 3);
 * // => ["Separately derived system", "=========================", "Edition: NFPA 70-2023"]
 * ```
 */
export function resultDocument(result: AnyResult, options: DocumentOptions = {}): Document {
  const own = readOptions(options);
  return useAnyResult(result, (told) =>
    framed(
      {
        title: told.name,
        editions: told.editions,
        facts: told.facts,
        parts: partsOf(told),
        rows: rowsOf(told),
      },
      own,
    ),
  );
}

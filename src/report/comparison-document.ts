import {
  type AmendmentComparison,
  type EditionComparison,
  type ReadingComparison,
  readingComparisonMarks,
} from "../comparison/comparison.js";
import { type Marks, useResult } from "../input/given-result.js";
import {
  type InstallationComparison,
  installationComparisonMarks,
} from "../installation/installation-comparison.js";
import type { Document } from "./document.js";
import { contentOfAmendments, contentOfEditions, contentOfReadings } from "./editions-document.js";
import { type Content, type DocumentOptions, framed, readOptions } from "./frame.js";
import { contentOfInstallations } from "./installation-comparison-document.js";

/** What is held side by side: whole installations, or one conductor under several editions, readings or amendments. */
export type AnyComparison =
  | InstallationComparison
  | EditionComparison
  | ReadingComparison
  | AmendmentComparison;

/**
 * Makes a document of a comparison: everything in one table, what differs and why, with sections and evidence, cautions and open
 * readings. Of one conductor every result follows in full.
 *
 * @param comparison - what {@link compareInstallation} or {@link compare} gives
 * @param options - another title, who prepared it, the date
 * @returns a document for {@link render}; its rows are the results, areas in circular mils
 * @throws {@link InputError} for anything but such a comparison, and for wrong options
 *
 * @example
 * ```ts
 * import { compare, comparisonDocument, equipmentGroundingConductor, render } from "bondmil";
 * const editions = compare(equipmentGroundingConductor, {
 *   over: "editions",
 *   input: { circuits: [{ device: { amperes: 4000 } }], conductor: { material: "aluminum" } },
 *   editions: ["2008", "2011"],
 * });
 * const document = comparisonDocument(editions, { title: "Riser" });
 * render(document, { as: "markdown" }).split("\n").find((line) => line.startsWith("- another number"));
 * // => "- another number: the table's size for the device, before: 800 kcmil; now: 750 kcmil \\[Table 250.122\\] (from memory / one source)"
 * ```
 */
export function comparisonDocument(comparison: AnyComparison, options: DocumentOptions = {}): Document {
  const own = readOptions(options);
  return framed(contentOf(comparison), own);
}

function contentOf(comparison: AnyComparison): Content {
  if (isEditions(comparison)) {
    return useResult({ comparison }, "compare", { comparison: "list" }, (given) =>
      contentOfEditions(given.comparison),
    );
  }
  if (has(comparison, "otherwise"))
    return useResult(comparison, "compare", readingComparisonMarks, contentOfReadings);
  if (has(comparison, "asPrinted"))
    return useResult(comparison, "compare", amendmentComparisonMarks, contentOfAmendments);
  return useResult(comparison, "a comparison", installationComparisonMarks, contentOfInstallations);
}

function isEditions(comparison: AnyComparison): comparison is EditionComparison {
  return Array.isArray(comparison);
}

function has<Key extends string>(
  comparison: Exclude<AnyComparison, EditionComparison>,
  key: Key,
): comparison is Extract<Exclude<AnyComparison, EditionComparison>, { readonly [K in Key]: unknown }> {
  return typeof comparison === "object" && comparison !== null && Object.hasOwn(comparison, key);
}

const amendmentComparisonMarks: Marks<AmendmentComparison> = {
  edition: "text",
  asPrinted: "object",
  each: "list",
  all: "object",
};

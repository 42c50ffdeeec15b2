import type { Drawing } from "./document.js";
import { examine } from "./examine.js";

/** One thing wrong, as the Standard Schema interface wants it. */
export interface DrawingSchemaIssue {
  readonly message: string;
  readonly path: readonly (string | number)[];
}

/** What a validation through the Standard Schema interface returns. */
export type DrawingSchemaResult =
  | { readonly value: Drawing; readonly issues?: undefined }
  | { readonly issues: readonly DrawingSchemaIssue[] };

/** A Standard Schema (version 1): any library that takes one can validate drawings with it. */
export interface DrawingStandardSchema {
  readonly "~standard": {
    readonly version: 1;
    readonly vendor: "bondmil";
    /** Returns the drawing, or everything that is wrong with the value. */
    readonly validate: (value: unknown) => DrawingSchemaResult;
    readonly types?: { readonly input: Drawing; readonly output: Drawing } | undefined;
  };
}

/**
 * All that {@link readDrawing} checks, behind the Standard Schema interface: issues come back instead of being thrown, each with the
 * steps to its place.
 *
 * @example
 * ```ts
 * import { drawingStandardSchema } from "bondmil";
 * const result = drawingStandardSchema["~standard"].validate({ format: 1, title: "Barn", code: { year: "1999" } });
 * result.issues?.map(({ path }) => path); // => [["code", "year"], ["materials"]]
 * ```
 */
export const drawingStandardSchema: DrawingStandardSchema = {
  "~standard": {
    version: 1,
    vendor: "bondmil",
    validate: (value) => {
      const { drawing, faults } = examine(value);
      if (faults === null) return { value: drawing };
      return { issues: faults.map(({ keys, issue }) => ({ message: issue.message, path: keys })) };
    },
  },
};

import { type StandardSchema, standardIssue } from "../input/standard-schema.js";
import type { Installation } from "./document.js";
import { examine } from "./examine.js";

/**
 * All that {@link readInstallation} checks, behind the Standard Schema interface: issues come back instead of being thrown, each with the
 * steps to its place.
 *
 * @example
 * ```ts
 * import { installationSchema } from "bondmil";
 * const result = installationSchema["~standard"].validate({ format: 1, title: "Barn", code: { year: "1999" } });
 * result.issues?.map(({ path }) => path); // => [["code", "year"], ["materials"]]
 * ```
 */
export const installationSchema: {
  /** What a form library calls. */
  readonly "~standard": StandardSchema<Installation>;
} = {
  "~standard": {
    version: 1,
    vendor: "bondmil",
    validate: (value) => {
      const { installation, faults } = examine(value);
      return faults === null ? { value: installation } : { issues: faults.map(standardIssue) };
    },
  },
};

import type { ViteUserConfig } from "vitest/config";
import rules from "./vitest.config.js";

const suites = [
  "ampacity",
  "engineering",
  "candidates",
  "comparison",
  "drawing",
  "report",
  "units",
  "conductor",
];

/** The suites that a mutant of what stands around the rules can fail in, with the answers that were published of ampacities, fill and drop. */
const config: ViteUserConfig = {
  ...rules,
  test: {
    ...rules.test,
    include: [
      ...suites.map((suite) => `tests/${suite}/**/*.test.ts`),
      "tests/corpus/corpus.test.ts",
      "tests/laws/ampacity.test.ts",
    ],
    exclude: [],
  },
};

export default config;

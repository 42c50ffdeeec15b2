import type { ViteUserConfig } from "vitest/config";
import rules from "./vitest.config.js";

/** The suites that a mutant of the installation can fail in; the verifier and the random installations would take most of the time. */
const config: ViteUserConfig = {
  ...rules,
  test: {
    ...rules.test,
    include: [
      "tests/installation/{build-schedule,check,read-drawing,amendments}.test.ts",
      "tests/laws/installations/found-where-drawn.test.ts",
      "tests/command/endings.test.ts",
    ],
    exclude: [],
  },
};

export default config;

import type { ViteUserConfig } from "vitest/config";
import rules from "./vitest.config.js";

/** The suites that a mutant of the installation can fail in; the verifier and the random installations would take most of the time. */
const config: ViteUserConfig = {
  ...rules,
  test: {
    ...rules.test,
    include: [
      "tests/installation/{schedule-of,check,read-installation,amendments}.test.ts",
      "tests/installation/arrangements/*.test.ts",
      "tests/installation/conductor-names.test.ts",
      "tests/laws/arrangements.test.ts",
      "tests/laws/installations/found-where-drawn.test.ts",
      "tests/command/endings.test.ts",
    ],
    exclude: [],
  },
};

export default config;

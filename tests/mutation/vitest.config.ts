import type { ViteUserConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";
import shared from "../vitest.config.js";

/** The suites that a mutant of a rule can fail in, nearest first: the first failure ends the run of a mutant. */
const suites = ["sizing", "supply", "roles", "rules", "asking", "systems", "conductor", "corpus", "laws"];

/** The laws over whole grids: four fifths of the time, so a mutant that only they would notice counts as survived. */
const slow = ["asking", "containment", "electrode-conductors", "equipment-grounding", "grounded-conductors"];

class NearestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ moduleId }: TestSpecification) =>
      suites.findIndex((suite) => moduleId.includes(`/tests/${suite}/`));
    return [...files].sort((one, other) => place(one) - place(other));
  }
}

const config: ViteUserConfig = {
  ...shared,
  test: {
    ...shared.test,
    include: suites.map((suite) => `tests/${suite}/**/*.test.ts`),
    exclude: ["tests/corpus/runner.test.ts", ...slow.map((law) => `tests/laws/${law}.test.ts`)],
    setupFiles: ["tests/setup.ts", "tests/mutation/setup.ts"],
    env: { FAST_CHECK_SEED: "20080101" },
    sequence: { sequencer: NearestFirst },
    runner: "tests/mutation/stop-at-failure.ts",
    // One worker for all files of one mutant, instead of one per file, halves the time; the next mutant gets a new one.
    isolate: false,
  },
};

export default config;

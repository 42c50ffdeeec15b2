import type { ViteUserConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";
import { slow } from "../slow.js";
import shared from "../vitest.config.js";
import { bundled } from "./bundled.js";
import { measuredTests } from "./rooms.js";

const asBundled = (file: string) => `${bundled}/${file.replace(/\.ts$/, ".js")}`;

const tests = measuredTests();
const folders = tests.map((pattern) => pattern.split("/").slice(0, 2).join("/"));

class NearestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ moduleId }: TestSpecification) =>
      folders.findIndex((folder) => moduleId.includes(`/${folder}/`));
    return [...files].sort((one, other) => place(one) - place(other));
  }
}

const config: ViteUserConfig = {
  ...shared,
  test: {
    ...shared.test,
    include: tests.map(asBundled),
    // The last one replaces a module, which is in the same file as the test here.
    exclude: [...slow.filter((file) => !tests.includes(file)), "tests/command/corpus-missed.test.ts"].map(
      asBundled,
    ),
    setupFiles: ["tests/setup.ts", "tests/mutation/setup.ts"].map(asBundled),
    env: { FAST_CHECK_SEED: "20080101" },
    sequence: { sequencer: NearestFirst },
    runner: "tests/mutation/stop-at-failure.ts",
    server: { deps: { external: [/\/chunk-[A-Z0-9]+\.js$/] } },
  },
};

export default config;

import { fileURLToPath } from "node:url";
import type { ViteUserConfig } from "vitest/config";
import { slow } from "./slow.js";

const fixedSeed = "20080101";
const seed = process.env.FAST_CHECK_SEED ?? (process.env.CI ? fixedSeed : undefined);
if (seed !== undefined) console.log(`fast-check seed ${seed}`);

function entry(name: string, file: string): { readonly find: RegExp; readonly replacement: string } {
  return {
    find: new RegExp(`^${name}$`),
    replacement: fileURLToPath(new URL(`../${file}`, import.meta.url)),
  };
}

const config: ViteUserConfig = {
  resolve: {
    // Only the entries: `bondmil/tables/x.json` goes through the package's own exports.
    alias: [
      entry("bondmil", "src/index.ts"),
      entry("bondmil/sizing", "src/sizing.entry.ts"),
      entry("bondmil/corpus", "corpus/tools/index.ts"),
      entry("bondmil/tables", "tables/tools/index.ts"),
    ],
  },
  test: {
    root: fileURLToPath(new URL("..", import.meta.url)),
    // Only a test that hangs is to end here; how long one takes says nothing of it on a busy machine.
    testTimeout: 900_000,
    hookTimeout: 900_000,
    maxWorkers: "100%",
    // Reading the modules anew for each of two hundred files took most of the time. A test that replaces one puts it back.
    isolate: false,
    include: ["tests/**/*.test.ts"],
    exclude: [...slow],
    setupFiles: ["tests/setup.ts"],
    env: seed === undefined ? {} : { FAST_CHECK_SEED: seed },
    coverage: {
      provider: "v8",
      include: ["src/**/*.ts"],
      exclude: ["src/**/*.generated.ts", "src/index.ts", "src/*.entry.ts"],
    },
  },
};

export default config;

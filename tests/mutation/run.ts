import { parseArgs } from "node:util";
import { Stryker } from "@stryker-mutator/core";
import { isRoom, rooms } from "./rooms.js";

const { positionals, values } = parseArgs({
  allowPositionals: true,
  options: { sample: { type: "string" }, from: { type: "string", default: "0" } },
});
const [room = "", ...files] = positionals;
if (!isRoom(room) || !/^[1-9]\d*$/.test(values.sample ?? "1") || !/^\d+$/.test(values.from)) {
  console.error("usage: npm run proof:mutation -- ROOM [FILE...] [--sample NUMBER [--from NUMBER]]");
  console.error(`ROOM is one of ${Object.keys(rooms).join(", ")}`);
  process.exit(2);
}
process.env.MEASURED_ROOM = room;
if (values.sample !== undefined)
  process.env.MUTATION_SAMPLE = JSON.stringify([Number(values.from), Number(values.sample)]);

const results = await new Stryker({
  mutate: files.length > 0 ? files : [`src/${room}/**/*.ts`, "!src/**/*.generated.ts", "!src/**/shape.ts"],
  mutator: { excludedMutations: ["StringLiteral"] },
  buildCommand: "tsx tests/mutation/bundle.ts",
  testRunner: "vitest",
  testRunnerNodeArgs: ["--max-old-space-size=8192"],
  vitest: { configFile: "tests/mutation/vitest.config.ts", related: false },
  plugins: [
    import.meta.resolve("@stryker-mutator/vitest-runner"),
    import.meta.resolve("@stryker-mutator/typescript-checker"),
    import.meta.resolve("./sample.mjs"),
  ],
  checkers: values.sample === undefined ? ["typescript"] : ["sample", "typescript"],
  // Nothing is compiled but by the bundler, which takes types away unread.
  disableTypeChecks: false,
  tsconfigFile: "tests/mutation/tsconfig.json",
  coverageAnalysis: "perTest",
  concurrency: 2,
  timeoutMS: 20_000,
  ignorePatterns: ["coverage", "dist", "docs/site"],
  tempDirName: `coverage/mutation/${room}`,
  reporters: ["clear-text", "json", "progress-append-only"],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false, reportScoreTable: false },
  jsonReporter: { fileName: `coverage/mutation/${room}.json` },
  allowConsoleColors: false,
}).runMutationTest();

const count = (...statuses: readonly string[]) =>
  results.filter(({ status }) => statuses.includes(status)).length;
const noticed = count("Killed", "Timeout");
const unnoticed = count("Survived");
console.log(
  `${room}: ${noticed} of ${noticed + unnoticed} changes noticed; ${count("NoCoverage")} of ${results.length} lie where none of its tests goes`,
);

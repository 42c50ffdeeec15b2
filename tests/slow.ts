/** Files of tests that start compilers, browsers, Python or an installed package, each for many seconds: npm run test:slow. */
export const slow: readonly string[] = [
  "tests/architecture/new-edition.test.ts",
  "tests/bench/bundles.test.ts",
  "tests/browser/report.test.ts",
  "tests/command/process.test.ts",
  "tests/command/stream.test.ts",
  "tests/corpus/flat.test.ts",
  "tests/corpus/types.test.ts",
  "tests/installation/verifier-drawn.test.ts",
  "tests/installation/verifier.test.ts",
  "tests/package/tarball.test.ts",
  "tests/tables/extracts.test.ts",
  "tests/tables/new-role.test.ts",
  "tests/tables/scaffold.test.ts",
  "tests/tables/witnessed-results.test.ts",
  "tests/website/browser.test.ts",
];

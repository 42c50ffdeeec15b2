/** Writes the page on coverage, or says with `--check` whether the written one is fresh. */
import { readDocuments } from "../corpus/runner/read.js";
import { validate } from "../corpus/runner/validate.js";
import { coveragePage } from "./coverage-page/page.js";
import { writePage } from "./write-page.js";

const { corpus, faults } = validate(readDocuments());
if (corpus === null || faults.length > 0) {
  console.error(`The corpus is not valid:\n${faults.join("\n")}`);
  process.exitCode = 1;
} else {
  writePage("coverage.md", coveragePage(corpus), "coverage");
}

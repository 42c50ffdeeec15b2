/** Writes the page on published answers that contradict the code, or says with `--check` whether the written one is fresh. */
import { readDocuments } from "../corpus/runner/read.js";
import { validate } from "../corpus/runner/validate.js";
import { mistakeSentences } from "./published-errors/mistake-sentences.js";
import { publishedErrorsPage } from "./published-errors/page.js";
import { writePage } from "./write-page.js";

const documents = readDocuments();
const { corpus, faults } = validate(documents);
if (corpus === null || faults.length > 0) {
  console.error(`The corpus is not valid:\n${faults.join("\n")}`);
  process.exitCode = 1;
} else {
  const page = publishedErrorsPage(corpus, mistakeSentences(documents.checksSchema));
  writePage("published-errors.md", page, "published-errors");
}

/** Writes the page on general references, or says with `--check` whether the written one is fresh. */
import { missesOf } from "../corpus/references/judge.js";
import { readReferences, validateReferences } from "../corpus/references/read.js";
import { readDocuments } from "../corpus/runner/read.js";
import { validate } from "../corpus/runner/validate.js";
import { referencesPage } from "./references-page/page.js";
import { writePage } from "./write-page.js";

const { corpus, faults } = validate(readDocuments());
const references = validateReferences(readReferences());
const wrong = [...faults, ...references.faults, ...missesOf(references.files)];
if (corpus === null || wrong.length > 0) {
  console.error(`The general references do not hold:\n${wrong.join("\n")}`);
  process.exitCode = 1;
} else {
  writePage("general-references.md", referencesPage(references.files, corpus.sources), "references");
}

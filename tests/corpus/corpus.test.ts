import { describe, expect, it } from "vitest";
import { library } from "../../corpus/runner/library.js";
import { writeMisses } from "../../corpus/runner/misses.js";
import { type Corpus, entriesOf } from "../../corpus/runner/model.js";
import { readDocuments } from "../../corpus/runner/read.js";
import { runChecks } from "../../corpus/runner/run-checks.js";
import { validate } from "../../corpus/runner/validate.js";

const { corpus, faults } = validate(readDocuments());
const { files, sources }: Corpus = corpus ?? { files: [], sources: {} };

it("the corpus is valid", () => expect(faults).toEqual([]));

describe.each(files)("the checks of $role", (file) => {
  it.each(entriesOf({ files: [file] }))("$check.id", (entry) => {
    expect(writeMisses(runChecks([entry], library), sources)).toBe("");
  });
});

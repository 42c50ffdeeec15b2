import { describe, expect, it } from "vitest";
import { library } from "../../corpus/tools/runner/library.js";
import { writeMisses } from "../../corpus/tools/runner/misses.js";
import { type Corpus, entriesOf } from "../../corpus/tools/runner/model.js";
import { readDocuments } from "../../corpus/tools/runner/read.js";
import { runChecks } from "../../corpus/tools/runner/run-checks.js";
import { validate } from "../../corpus/tools/runner/validate.js";

const { corpus, faults } = validate(readDocuments());
const { files, sources }: Corpus = corpus ?? { files: [], sources: {} };

it("the corpus is valid", () => expect(faults).toEqual([]));

describe.each(files)("the checks of $role", (file) => {
  it.each(entriesOf({ files: [file] }))("$check.id", (entry) => {
    expect(writeMisses(runChecks([entry], library), sources)).toBe("");
  });
});

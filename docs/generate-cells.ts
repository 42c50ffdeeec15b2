/** Writes the page on cells that no check would miss, or says with `--check` whether the written one is fresh. */
import { mutateOwnCells } from "../corpus/mutation/run.js";
import { readDocuments } from "../corpus/runner/read.js";
import { validate } from "../corpus/runner/validate.js";
import { cellsPage } from "./cells-page/page.js";
import { writePage } from "./write-page.js";

const { corpus, faults } = validate(readDocuments());
if (corpus === null || faults.length > 0) {
  console.error(`The corpus is not valid:\n${faults.join("\n")}`);
  process.exitCode = 1;
} else {
  writePage("unnoticed-cells.md", cellsPage(mutateOwnCells(corpus)), "cells");
}

/** Writes the sample drawings and reports of `docs/report.md`, or says with `--check` whether the written ones are fresh. */
import { mkdirSync, readFileSync } from "node:fs";
import { pictureAsSvg, pictureOf, reportAsHtml, reportAsMarkdown } from "../src/index.js";
import { writePage } from "./write-page.js";

const command = "report:samples";
mkdirSync(new URL("samples/", import.meta.url), { recursive: true });
for (const name of ["shop", "cold-store", "print-works"]) {
  const text = readFileSync(new URL(`drawings/${name}.json`, import.meta.url), "utf8");
  writePage(`samples/${name}.svg`, pictureAsSvg(pictureOf(text)), command);
  if (name === "cold-store") writePage(`samples/${name}.html`, reportAsHtml(text), command);
  if (name === "shop") writePage(`samples/${name}.md`, reportAsMarkdown(text), command);
}

import { readFileSync } from "node:fs";
import {
  drawingAsSvg,
  drawingOf,
  type Installation,
  readInstallation,
  render,
  reportDocument,
} from "bondmil";

/** The sample installations and reports of `docs/report.md`. */
export function reportSamples(): Readonly<Record<string, string>> {
  const svg = (name: string) =>
    [`docs/samples/${name}.svg`, drawingAsSvg(drawingOf(installation(name)))] as const;
  return {
    ...Object.fromEntries(["shop", "cold-store", "print-works"].map(svg)),
    "docs/samples/cold-store.html": render(reportDocument(installation("cold-store")), { as: "html" }),
    "docs/samples/shop.md": render(reportDocument(installation("shop")), { as: "markdown" }),
  };
}

function installation(name: string): Installation {
  return readInstallation(readFileSync(new URL(`../installations/${name}.json`, import.meta.url), "utf8"));
}

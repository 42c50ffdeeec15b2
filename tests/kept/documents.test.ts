import { type Document, render } from "bondmil";
import { describe, expect, it } from "vitest";
import { kinds } from "../report/every-kind.js";
import { unversioned } from "./unversioned.js";

// The documents of whole installations are held in installations.test.ts.
const others = Object.entries(kinds).filter(
  ([kind]) => !/^(schedule|check|report|comparison of installations)/.test(kind),
);

const writers = {
  txt: (document: Document) => render(document, { as: "text" }),
  // The head and its styles are those of any page: docs/samples has one.
  html: (document: Document) => render(document, { as: "html" }).replace(/^.*<main>/s, "<main>"),
};

describe.each(others)("a document of the kind: %s", (kind, documents) => {
  it.each(Object.entries(writers))("is written as before as %s", async (suffix, write) => {
    const all = documents().slice(0, suffix === "html" ? 3 : undefined);
    const file = new URL(`./documents/${kind.replaceAll(" ", "-")}.${suffix}`, import.meta.url);
    const text = all.map(({ document }) => unversioned(write(document))).join("\n");
    await expect(text).toMatchFileSnapshot(file.pathname);
  });
});

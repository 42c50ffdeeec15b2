import { type Document, render } from "bondmil";
import { describe, expect, it } from "vitest";
import { kinds } from "../report/every-kind.js";
import { unversioned } from "./unversioned.js";

// The documents of whole installations are held in installations.test.ts.
const others = Object.entries(kinds).filter(
  ([kind]) => !/^(schedule|check|report|comparison of installations)/.test(kind),
);

const formats = { text: "txt", html: "html" } as const;

describe.each(others)("a document of the kind: %s", (kind, documents) => {
  it.each(Object.entries(formats))("is written as before as %s", async (as, suffix) => {
    const write = (document: Document) => unversioned(render(document, { as: as as keyof typeof formats }));
    const all = documents().slice(0, as === "html" ? 3 : undefined);
    const file = new URL(`./documents/${kind.replaceAll(" ", "-")}.${suffix}`, import.meta.url);
    await expect(all.map(({ document }) => write(document)).join("\n")).toMatchFileSnapshot(file.pathname);
  });
});

import { render, reportDocument } from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { demo } from "../installation/installations.js";
import { documentWith, places } from "./hostile.js";

const hostile = fc
  .array(
    fc.constantFrom(
      "<",
      ">",
      "</",
      "<script>",
      "<!--",
      "-->",
      "&",
      "&lt;",
      '"',
      "'",
      "=",
      "x",
      " ",
      "on",
      "]]>",
      "\0",
    ),
    { maxLength: 8 },
  )
  .map((parts) => parts.join(""));

/** Tags without what is in their attributes; a class may depend on the length of a word. */
const tagsOf = (page: string): readonly string[] =>
  page.match(/<[a-z/!][^>]*>/gi)?.map((tag) => tag.replace(/"[^"]*"/g, '""').replace(' class=""', "")) ?? [];

/** What a browser shows of it, and what it has in its attributes. */
function read(page: string): string {
  return page
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll("&amp;", "&");
}

describe.each(places)("what an installation names, in HTML as %s", (_, of) => {
  it("adds no tag and no attribute, and is there as it was written", () => {
    const pageOf = (text: string): string => render(documentWith(of(text)), { as: "html" });
    const wanted = tagsOf(pageOf("plain"));
    fc.assert(
      fc.property(hostile, (text) => {
        const page = pageOf(text);
        expect(tagsOf(page)).toEqual(wanted);
        expect(read(page)).toContain(text.replaceAll("\0", " "));
      }),
    );
  });
});

describe("a document as HTML", () => {
  const html = render(reportDocument(demo("print-works")), { as: "html" });

  it("loads nothing", () => {
    const rest = html.replaceAll("http://www.w3.org/2000/svg", "");
    expect(rest).not.toMatch(/https?:|url\(|@import|<link|<script|src=/);
  });

  it("has every id once and no link without its end", () => {
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(ids.length).toBeGreaterThan(50);
    expect(new Set(ids).size).toBe(ids.length);
    const ends = [...html.matchAll(/href="#([^"]+)"/g)].map(([, end]) => end);
    expect(ends.length).toBeGreaterThan(40);
    for (const end of ends) expect(ids).toContain(end);
  });
});

import { describe, expect, it } from "vitest";
import { type Part, partsAsMarkdown } from "../../src/report/parts.js";
import { partsAsHtml } from "../../src/report/parts-html.js";

const hostile = '<b title="x">|_&</b>';
const parts: readonly Part[] = [
  { kind: "title", text: hostile },
  { kind: "heading", text: hostile },
  { kind: "text", text: hostile },
  { kind: "lines", lines: [hostile] },
  { kind: "list", lines: [hostile] },
  { kind: "table", head: [hostile], rows: [[hostile], [hostile]] },
];

describe.each(parts.map((part) => [part.kind, part] as const))("a part of a page: %s", (_, part) => {
  it("is escaped in HTML, wherever its text stands", () => {
    const page = partsAsHtml([part]);
    expect(page).not.toContain("<b ");
    expect(page).not.toContain('"x"');
    expect(page).toContain("&lt;b title=&quot;x&quot;&gt;|_&amp;&lt;/b&gt;");
  });

  it("is escaped in Markdown", () => {
    const page = partsAsMarkdown([part]);
    expect(page).not.toContain("<b");
    expect(page).toContain("\\|\\_&amp;");
  });
});

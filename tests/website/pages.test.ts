import { describe, expect, it } from "vitest";
import { renderPages } from "../../docs/website/pages.js";
import { linkTo, readLink, sitePathOf } from "../../docs/website/paths.js";
import { placesOf } from "../../docs/website/search-data.js";
import { folderWith } from "./folder.js";

function render(texts: Readonly<Record<string, string>>, files: Readonly<Record<string, string>> = {}) {
  return renderPages(folderWith(files), new Map(Object.entries(texts)));
}

describe("a page of the site", () => {
  it.each([
    ["README.md", "index.html"],
    ["DEVELOPERS.md", "developers.html"],
    ["docs/tables.md", "tables.html"],
    ["docs/roles/main-bonding-jumper.md", "roles/main-bonding-jumper.html"],
    ["tables/README.md", "tables/index.html"],
    ["docs/samples/shop.svg", "samples/shop.svg"],
    ["LICENSE", "LICENSE"],
  ])("of %s is %s", (file, path) => expect(sitePathOf(file)).toBe(path));

  it("is linked from where it stands", () => {
    expect(linkTo("roles/a.html", "index.html")).toBe("../index.html");
    expect(linkTo("a.html", "a.html")).toBe("a.html");
    expect(readLink("docs/roles/a.md", "../tables.md#b")).toEqual({ file: "docs/tables.md", anchor: "#b" });
    expect(readLink("docs/a.md", "https://example.com")).toBeUndefined();
    expect(readLink("docs/a.md", "#here")).toBeUndefined();
  });

  it("has the links of the repository turned into those of the site, in raw HTML too", () => {
    const { pages, linked } = render(
      {
        "README.md": '# Read\n\n[a](docs/a.md#one-two)\n\n<img src="docs/pictures/p.svg" alt="">\n',
        "docs/a.md": "# A\n\n## One, two\n\n[back](../README.md) ![plan](pictures/p.svg)\n",
      },
      { "docs/pictures/p.svg": '<svg xmlns="http://www.w3.org/2000/svg" width="90" height="40"></svg>' },
    );
    const [read, a] = pages.map(({ html }) => html);
    expect(read).toContain('href="a.html#one-two"');
    expect(read).toContain('src="pictures/p.svg"');
    expect(a).toContain('<h2 id="one-two">');
    expect(a).toContain('href="index.html"');
    expect(a).toContain('src="pictures/p.svg" alt="plan" width="90" height="40"');
    expect([...linked]).toEqual(["docs/pictures/p.svg"]);
  });

  it("with a link that leads nowhere, or without a title, is not written, and everything wrong is said at once", () => {
    expect(() => render({ "docs/a.md": "# A\n\n[b](b.md)", "docs/c.md": "No title." })).toThrow(
      "docs/a.md links to docs/b.md, which is not there\ndocs/c.md has no title",
    );
  });

  it("names its columns, and no column that has no name", () => {
    const [page] = render({ "a.md": "# A\n\n|  | b |\n| --- | --- |\n| 1 | 2 |\n" }).pages;
    expect(page?.html).toContain("<td></td>\n<th>b</th>");
    expect(page?.html).toContain('aria-label="Table: A"');
  });

  it("shows code with its marks escaped", () => {
    const [page] = render({
      "a.md": "# A\n\n```ts\nconst a: Map<string, 1> = b;\n```\n\n```\n<b>\n```\n",
    }).pages;
    expect(page?.html).toContain('<span class="hljs-keyword">const</span>');
    expect(page?.html).toContain("&lt;b&gt;");
    expect(page?.html).not.toContain("<b>");
  });
});

it("the search finds each section of a guide, and each name of the reference once", () => {
  const { pages } = render({
    "docs/a.md": "# A\n\nFirst.\n\n## B\n\nSecond `code`.\n",
    "docs/reference/bondmil/functions/size.md":
      "# size()\n\nSizes.\n\n## Parameters\n\n### role\n\nA role.\n",
  });
  expect(placesOf(pages).map(({ title, href, text }) => [title, href, text])).toEqual([
    ["A", "a.html", "First."],
    ["B", "a.html#b", "Second code."],
    ["size()", "reference/bondmil/functions/size.html", "Sizes. role"],
  ]);
});

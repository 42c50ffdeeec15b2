import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, it } from "vitest";
import { linkFaults } from "../../docs/website/check/links.js";
import { entryPoints } from "../../docs/website/reference/entries.js";
import { useOf } from "../../docs/website/reference/uses.js";
import { writeSite } from "../../docs/website/site.js";
import { folderWith } from "./folder.js";

const root = fileURLToPath(new URL("../../", import.meta.url));
const entries = entryPoints(root);

/** A reference of one name, in place of the whole, which takes minutes. */
const reference = folderWith({
  ...Object.fromEntries(
    entries.map(({ name }) => [`${name}/README.md`, `# ${name}\n\n## Sizing\n\n[x](functions/x.md)\n`]),
  ),
  ...Object.fromEntries(entries.map(({ name }) => [`${name}/functions/x.md`, "# x()\n\nSizes.\n"])),
  "README.md": "# Reference\n",
});

describe("the site of this repository", () => {
  const out = folderWith({});
  let pages: readonly string[] = [];
  beforeAll(() => {
    pages = writeSite({ root, reference, entries, hasTryPage: false }, out);
  });

  it("has every guide and the page of every role", () => {
    const guides = readdirSync(join(root, "docs")).filter((file) => file.endsWith(".md"));
    const roles = readdirSync(join(root, "docs/roles"));
    expect(guides.length).toBeGreaterThan(20);
    for (const file of [...guides, ...roles.map((one) => `roles/${one}`)])
      expect(pages).toContain(file.replace(/\.md$/, ".html"));
  });

  it("has links that all lead somewhere", () => expect(linkFaults(out)).toEqual([]));

  it("leads from each page to each guide", () => {
    const page = readFileSync(join(out, "roles/grounded-conductor.html"), "utf8");
    for (const target of ["../tables.html", "../published-errors.html", "../reference/bondmil/index.html"])
      expect(page).toContain(`href="${target}"`);
    expect(page).toContain('href="grounded-conductor.html" aria-current="page"');
  });

  it("says how each name is imported", () => {
    const page = readFileSync(join(out, "reference/bondmil/corpus/functions/x.html"), "utf8");
    expect(page).toContain("bondmil/corpus&quot;");
  });

  it("brings all that its search loads", () => {
    for (const file of ["minisearch.js", "places.js", "search.js", "site.css"])
      expect(existsSync(join(out, "assets", file))).toBe(true);
  });
});

describe("the page to try", () => {
  it("stands in the navigation where it is there", () => {
    const out = folderWith({ "try/index.html": "" });
    writeSite({ root, reference, entries, hasTryPage: true }, out);
    expect(readFileSync(join(out, "tables.html"), "utf8")).toContain('href="try/index.html"');
    expect(linkFaults(out)).toEqual([]);
  });
});

describe("the reference", () => {
  it("has the import paths of the package", () => {
    expect(entries.map(({ name }) => name)).toEqual(
      expect.arrayContaining(["bondmil", "bondmil/corpus", "bondmil/tables"]),
    );
    expect(entries.map(({ name }) => name)).not.toContain("bondmil/browser");
    for (const { source } of entries) expect(existsSync(join(root, source))).toBe(true);
  });

  it("has no import path that nothing builds", () => {
    const file = {
      name: "p",
      exports: { "./a": { import: { types: "./dist/a.d.ts" } } },
      tsup: [{ dts: { entry: { b: "b.ts" } } }],
    };
    expect(() => entryPoints(folderWith({ "package.json": JSON.stringify(file) }))).toThrow(
      'package.json exports "p/a"',
    );
  });

  it("has a heading for each room that the public face exports from", () => {
    const face = ["index", "sizing.entry"].map((name) => readFileSync(join(root, `src/${name}.ts`), "utf8"));
    const rooms = [...face.join("").matchAll(/from "\.\/([^"]+\/[^"]+)"/g)].map(([, path]) => `src/${path}`);
    expect(rooms.length).toBeGreaterThan(50);
    for (const room of rooms) expect(useOf(room)).not.toBe("");
    expect(() => useOf("src/elsewhere/a.ts")).toThrow("give its folder a heading");
  });
});

import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import MarkdownIt from "markdown-it";
import { expect, it } from "vitest";
import { readLink } from "../../docs/website/paths.js";

const root = fileURLToPath(new URL("../../", import.meta.url));

/** Every target of a link or a picture, in raw HTML too. */
function targetsIn(markdown: string): readonly string[] {
  const tokens = new MarkdownIt({ html: true })
    .parse(markdown, {})
    .flatMap((one) => [one, ...(one.children ?? [])]);
  return tokens.flatMap((token) => [
    ...["href", "src"].map((name) => token.attrGet(name)).filter((target) => target !== null),
    ...(token.type.startsWith("html")
      ? [...token.content.matchAll(/\b(?:href|src)="([^"]*)"/g)].map(([, target]) => target ?? "")
      : []),
  ]);
}

it("every text of the package links only to what the package brings", () => {
  const answer = execFileSync("npm", ["pack", "--dry-run", "--json", "--ignore-scripts"], {
    cwd: root,
    encoding: "utf8",
  });
  const [{ files }] = JSON.parse(answer) as readonly [
    { readonly files: readonly { readonly path: string }[] },
  ];
  const packed = new Set(files.map(({ path }) => path));
  const texts = [...packed].filter((path) => path.endsWith(".md"));
  expect(texts).toContain("README.md");
  const links = texts.flatMap((source) =>
    targetsIn(readFileSync(join(root, source), "utf8")).map((target) => ({
      source,
      link: readLink(source, target),
    })),
  );
  expect(links.filter(({ link }) => link !== undefined).length).toBeGreaterThan(100);
  const lost = links.flatMap(({ source, link }) =>
    link === undefined || packed.has(link.file) ? [] : [`${source}: ${link.file}`],
  );
  expect(lost).toEqual([]);
});

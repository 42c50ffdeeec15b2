import { cpSync, existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { navigationOf } from "./navigation.js";
import type { NavigationGroup, Page } from "./page.js";
import { renderPages } from "./pages.js";
import { sitePathOf } from "./paths.js";
import type { EntryPoint } from "./reference/entries.js";
import { withImport } from "./reference/pages.js";
import { placesOf } from "./search-data.js";
import { searchPage } from "./search-page.js";
import { markdownFiles, readMarkdownBelow } from "./sources.js";
import { layOut } from "./template.js";

/** What the site is made of. */
export interface SiteSources {
  /** The repository. */
  readonly root: string;
  /** The folder with the reference as Markdown. */
  readonly reference: string;
  readonly entries: readonly EntryPoint[];
  /** Whether the folder of the site holds the page on which a visitor sizes an installation. */
  readonly hasTryPage: boolean;
}

/** Writes the whole site, but for the page to try, into a folder; gives the paths of its pages. */
export function writeSite(sources: SiteSources, out: string): readonly string[] {
  const { root, entries } = sources;
  const prose = new Map(markdownFiles(root).map((file) => [file, readFileSync(join(root, file), "utf8")]));
  const reference = new Map(
    [...readMarkdownBelow(sources.reference)].map(([path, text]) => [
      `docs/reference/${path}`,
      withImport(path, text, entries),
    ]),
  );
  const { pages, linked } = renderPages(root, new Map([...prose, ...reference]));
  const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as {
    readonly version: string;
  };
  const frame = { navigation: navigationWith(pages, sources), version };
  const all = [...pages, searchPage];
  for (const page of all) write(out, page.path, layOut(page, frame));
  for (const file of linked) copy(join(root, file), join(out, sitePathOf(file)));
  writeAssets(out, pages);
  return all.map(({ path }) => path);
}

function navigationWith(
  pages: readonly Page[],
  { entries, hasTryPage }: SiteSources,
): readonly NavigationGroup[] {
  const isReference = ({ source }: Page): boolean => source.startsWith("docs/reference/");
  const reference = {
    title: "Reference",
    entries: entries.map(({ name }) => {
      const page = pages.find(({ path }) => path === `reference/${name}/index.html`);
      if (page === undefined) throw new Error(`the reference has no page of ${name}`);
      const below = page.sections
        .filter(({ level }) => level === 2)
        .map(({ id, title }) => ({ title, href: `${page.path}#${id}`, below: [] }));
      return { title: name, href: page.path, below };
    }),
  };
  const groups = navigationOf(
    pages.filter((page) => !isReference(page)),
    reference,
  );
  const [start, ...others] = groups;
  if (!hasTryPage || start === undefined) return groups;
  const tryEntry = { title: "Try it in this browser", href: "try/index.html", below: [] };
  return [{ ...start, entries: [...start.entries, tryEntry] }, ...others];
}

function writeAssets(out: string, pages: readonly Page[]): void {
  cpSync(fileURLToPath(new URL("assets/", import.meta.url)), join(out, "assets"), { recursive: true });
  const engine = createRequire(import.meta.url).resolve("minisearch");
  copy(join(dirname(engine), "../umd/index.js"), join(out, "assets/minisearch.js"));
  write(out, "assets/places.js", `window.bondmilPlaces = ${JSON.stringify(placesOf(pages))};\n`);
}

function write(out: string, path: string, text: string): void {
  const file = join(out, path);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
}

function copy(from: string, to: string): void {
  if (!existsSync(from)) throw new Error(`${from} is not there`);
  mkdirSync(dirname(to), { recursive: true });
  cpSync(from, to, { recursive: true });
}

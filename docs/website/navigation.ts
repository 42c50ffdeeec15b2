import { readFileSync } from "node:fs";
import type { NavigationEntry, NavigationGroup, Page } from "./page.js";

interface Plan {
  readonly groups: readonly {
    readonly title: string;
    readonly pages: readonly string[];
    /** Folder whose pages stand here where no group names them; an empty one is all that is left. */
    readonly rest?: string;
  }[];
  /** Shorter titles than those of the pages. */
  readonly titles: Readonly<Record<string, string>>;
}

const plan = JSON.parse(readFileSync(new URL("navigation.json", import.meta.url), "utf8")) as Plan;

/** The navigation of the site: every page of the repository once, in the order of `navigation.json`, and then the import paths of the reference. */
export function navigationOf(pages: readonly Page[], reference: NavigationGroup): readonly NavigationGroup[] {
  const named = new Set(plan.groups.flatMap(({ pages: sources }) => sources));
  const left = new Map(pages.filter(({ source }) => !named.has(source)).map((page) => [page.source, page]));
  const groups = plan.groups.map(({ title, pages: sources, rest }) => ({
    title,
    entries: [
      ...sources.map((source) => pageOf(pages, source)),
      ...(rest === undefined ? [] : takeOf(left, rest)),
    ].map(entryOf),
  }));
  return [...groups.slice(0, -1), reference, ...groups.slice(-1)];
}

function pageOf(pages: readonly Page[], source: string): Page {
  const found = pages.find((page) => page.source === source);
  if (found === undefined)
    throw new Error(
      `docs/website/navigation.json names ${source}, which is not there; name it anew, or take the line out`,
    );
  return found;
}

/** The pages that stand directly in a folder; all of them for an empty one. */
function takeOf(left: Map<string, Page>, folder: string): readonly Page[] {
  const found = [...left.values()].filter(
    ({ source }) =>
      folder === "" || (source.startsWith(folder) && !source.slice(folder.length).includes("/")),
  );
  for (const { source } of found) left.delete(source);
  return found;
}

function entryOf({ source, title, path }: Page): NavigationEntry {
  return { title: plan.titles[source] ?? title, href: path, below: [] };
}

import type { NavigationEntry, NavigationGroup, Page } from "./page.js";
import { linkTo } from "./paths.js";

/** What every page has around it. */
export interface Frame {
  readonly navigation: readonly NavigationGroup[];
  readonly version: string;
}

/** How many second headings make a page long enough for a list of them. */
const LONG = 3;

/** A page with its navigation, its search and the list of its sections: a whole file of HTML. */
export function layOut(page: Page, { navigation, version }: Frame): string {
  const to = (path: string): string => asHtml(linkTo(page.path, path));
  const title = page.path === "index.html" ? page.title : `${page.title} - bondmil`;
  return `<!doctype html>
<html lang="en-US">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${asHtml(title)}</title>
<link rel="icon" href="${to("assets/mark.svg")}" type="image/svg+xml">
<link rel="stylesheet" href="${to("assets/site.css")}">
${(page.scripts ?? []).map((script) => `<script defer src="${to(script)}"></script>\n`).join("")}</head>
<body>
<a class="skip" href="#content">To the content</a>
<header class="top">
<a class="brand" href="${to("index.html")}"><img src="${to("assets/mark.svg")}" alt="" width="28" height="28"> bondmil</a>
<form action="${to("search.html")}" role="search" aria-label="Search from any page">
<input type="search" name="q" aria-label="Search" placeholder="Search" autocomplete="off">
<button>Search</button>
</form>
</header>
<div class="columns">
<details class="pages">
<summary>Pages</summary>
<nav aria-label="Pages">
${navigation.map((group) => groupOf(group, page.path, to)).join("\n")}
</nav>
</details>
${contentsOf(page)}
<script src="${to("assets/site.js")}"></script>
<main id="content" tabindex="-1">
${page.html}
</main>
</div>
<footer>
<p>bondmil ${asHtml(version)}. Sizes are minimums of the edition that is named. Local amendments and the authority having jurisdiction decide; listed
equipment follows its listing. Work on services is dangerous and belongs to licensed people.</p>
<p>NFPA 70 and NEC are marks of the National Fire Protection Association, with which this project is not affiliated.</p>
</footer>
</body>
</html>
`;
}

function groupOf({ title, entries }: NavigationGroup, here: string, to: (path: string) => string): string {
  if (entries.length === 0) return "";
  const id = `pages-${title.toLowerCase().replaceAll(" ", "-")}`;
  return `<h2 class="group" id="${id}">${asHtml(title)}</h2>\n${listOf(entries, here, to, ` aria-labelledby="${id}"`)}`;
}

function listOf(
  entries: readonly NavigationEntry[],
  here: string,
  to: (path: string) => string,
  attributes = "",
): string {
  const lines = entries.map(({ title, href, below }) => {
    const current = href === here ? ' aria-current="page"' : "";
    const inside = below.length === 0 ? "" : listOf(below, here, to);
    return `<li><a href="${to(href)}"${current}>${asHtml(title)}</a>${inside}</li>`;
  });
  return `<ul${attributes}>\n${lines.join("\n")}\n</ul>`;
}

/** The list of the sections of a long page. */
function contentsOf({ sections }: Page): string {
  const second = sections.filter(({ level }) => level === 2);
  if (second.length < LONG) return "";
  const lines = second.map(({ id, title }) => `<li><a href="#${asHtml(id)}">${asHtml(title)}</a></li>`);
  return `<details class="contents">
<summary>On this page</summary>
<nav aria-label="On this page">
<ul>
${lines.join("\n")}
</ul>
</nav>
</details>`;
}

/** Text as HTML. */
export function asHtml(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}

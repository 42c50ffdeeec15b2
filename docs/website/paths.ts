import { posix } from "node:path";

/** Where a file of the repository stands on the site: guides lose their folder, a README is the first page of its folder. */
export function sitePathOf(file: string): string {
  const inSite = file.startsWith("docs/") ? file.slice("docs/".length) : file;
  if (!inSite.endsWith(".md")) return inSite;
  if (posix.basename(inSite) === "README.md") return posix.join(posix.dirname(inSite), "index.html");
  const page = inSite.replace(/\.md$/, ".html");
  return page.includes("/") ? page : page.toLowerCase();
}

/** A link from one page of the site to another file of it. */
export function linkTo(from: string, to: string): string {
  return posix.relative(posix.dirname(from), to) || posix.basename(to);
}

/** A link of a Markdown file that leads to another file: the file as a path in the repository, and what follows it. */
export interface RepositoryLink {
  readonly file: string;
  readonly anchor: string;
}

/** Reads a link of a Markdown file; nothing for an address with a scheme, or for a place in the same file. */
export function readLink(source: string, href: string): RepositoryLink | undefined {
  if (/^[a-z][a-z0-9+.-]*:/i.test(href) || href.startsWith("#") || href.startsWith("//")) return undefined;
  const [path = "", anchor] = href.split("#");
  const file = posix.normalize(posix.join(posix.dirname(source), decodeURI(path)));
  return { file, anchor: anchor === undefined ? "" : `#${anchor}` };
}

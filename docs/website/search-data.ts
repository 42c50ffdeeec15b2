import type { Page } from "./page.js";

/** A place that the search can find. */
export interface Place {
  readonly id: number;
  readonly page: string;
  readonly title: string;
  readonly href: string;
  readonly text: string;
}

/** Characters of a section that are searched; the long tables would make the file of the search larger than the site. */
const MOST = 1500;

/** The places of all pages: each section of a page, and each name of the reference as a whole; samples of what the library writes say nothing of their own. */
export function placesOf(pages: readonly Page[]): readonly Place[] {
  return pages
    .filter(({ source }) => !source.startsWith("docs/samples/"))
    .flatMap((page) =>
      isReference(page)
        ? [wholeOf(page)]
        : page.sections.map((section, i) => ({
            page: page.title,
            title: section.title,
            href: i === 0 ? page.path : `${page.path}#${section.id}`,
            text: shortened(section.text),
          })),
    )
    .map((place, id) => ({ id, ...place }));
}

function isReference({ path }: Page): boolean {
  return path.startsWith("reference/");
}

function wholeOf({ title, path, sections }: Page): Omit<Place, "id"> {
  const names = sections.filter(({ level }) => level > 2).map((section) => section.title);
  const [first] = sections;
  return { page: "Reference", title, href: path, text: shortened([first?.text, ...names].join(" ")) };
}

function shortened(text: string): string {
  return text.replace(/\s+/g, " ").trim().slice(0, MOST);
}

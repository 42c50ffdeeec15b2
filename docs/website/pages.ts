import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { renderMarkdown } from "./markdown.js";
import type { Page } from "./page.js";
import { linkTo, readLink, sitePathOf } from "./paths.js";

/** Pages, and the files of the repository that they link to. */
export interface Pages {
  readonly pages: readonly Page[];
  readonly linked: ReadonlySet<string>;
}

/**
 * Renders Markdown files, by their paths in the repository. A link to one of them becomes a link to its page; any other file that is linked
 * is to be copied; a link to what is not there throws an error.
 */
export function renderPages(root: string, texts: ReadonlyMap<string, string>): Pages {
  const linked = new Set<string>();
  const faults: string[] = [];
  const pages = [...texts].map(([source, text]): Page => {
    const path = sitePathOf(source);
    const link = (href: string): string => {
      const target = readLink(source, href);
      if (target === undefined) return href;
      if (!texts.has(target.file)) {
        if (existsSync(join(root, target.file))) linked.add(target.file);
        else faults.push(`${source} links to ${target.file}, which is not there`);
      }
      return linkTo(path, sitePathOf(target.file)) + target.anchor;
    };
    const sizeOf = (src: string): readonly [number, number] | undefined => {
      const target = readLink(source, src);
      return target === undefined ? undefined : sizeOfDrawing(join(root, target.file));
    };
    const { html, sections } = renderMarkdown(text, { link, sizeOf });
    const title = sections[0]?.title;
    if (title === undefined) faults.push(`${source} has no title: begin it with a line "# ..."`);
    return { path, source, title: title ?? "", html, sections };
  });
  if (faults.length > 0) throw new Error(faults.join("\n"));
  return { pages, linked };
}

/** Width and height that a drawing gives itself. */
function sizeOfDrawing(file: string): readonly [number, number] | undefined {
  if (!file.endsWith(".svg") || !existsSync(file)) return undefined;
  const [, width, height] =
    /<svg[^>]* width="(\d+)[^>]* height="(\d+)/.exec(readFileSync(file, "utf8")) ?? [];
  return width === undefined || height === undefined ? undefined : [Number(width), Number(height)];
}

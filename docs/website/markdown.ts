import GithubSlugger from "github-slugger";
import hljs from "highlight.js/lib/core";
import bash from "highlight.js/lib/languages/bash";
import json from "highlight.js/lib/languages/json";
import python from "highlight.js/lib/languages/python";
import sql from "highlight.js/lib/languages/sql";
import typescript from "highlight.js/lib/languages/typescript";
import MarkdownIt from "markdown-it";
import type Token from "markdown-it/lib/token.mjs";

const languages = { bash, json, python, sql, typescript };
for (const [name, language] of Object.entries(languages)) hljs.registerLanguage(name, language);
hljs.registerAliases(["ts", "js", "mjs"], { languageName: "typescript" });
hljs.registerAliases(["sh", "shell"], { languageName: "bash" });
hljs.registerAliases(["py"], { languageName: "python" });

/** A heading, and what stands below it up to the next one; the first has the page's title. */
export interface Section {
  readonly level: number;
  readonly id: string;
  readonly title: string;
  readonly text: string;
}

/** A Markdown file as HTML, with its sections. */
export interface Rendered {
  readonly html: string;
  readonly sections: readonly Section[];
}

/** What a renderer has to know beyond the text. */
export interface Surroundings {
  /** Turns the target of a link or of a picture into one of the site. */
  readonly link: (href: string) => string;
  /** Width and height of a picture in pixels, where known. */
  readonly sizeOf: (src: string) => readonly [width: number, height: number] | undefined;
}

/** Characters from which a cell of a table says something that anybody looks for. */
const WORD = 3;

const markdown = new MarkdownIt({ html: true, highlight });
const asHtml = markdown.utils.escapeHtml;

/** Renders a Markdown file. Headings get the ids that repositories give them, so that an anchor holds in both places. */
export function renderMarkdown(text: string, { link, sizeOf }: Surroundings): Rendered {
  const slugger = new GithubSlugger();
  const tokens = markdown.parse(text, {});
  const sections: { level: number; id: string; title: string; text: string }[] = [];
  tokens.forEach((token, i) => {
    if (token.type === "heading_open") {
      const title = plain(tokens[i + 1]);
      const id = slugger.slug(title);
      token.attrSet("id", id);
      sections.push({ level: Number(token.tag.slice(1)), id, title, text: "" });
    } else if (tokens[i - 1]?.type !== "heading_open") {
      const section = sections.at(-1);
      const isMark = tokens[i - 1]?.type === "td_open" && token.content.length < WORD;
      if (section !== undefined && !isMark) section.text += textOf(token);
    }
    for (const one of [token, ...(token.children ?? [])]) relink(one, link);
    if (token.type === "table_open") token.meta = sections.at(-1)?.title ?? "";
    for (const image of (token.children ?? []).filter(({ type }) => type === "image"))
      image.meta = sizeOf(image.attrGet("src") ?? "");
  });
  return { html: markdown.renderer.render(withoutEmptyHeads(tokens), markdown.options, {}), sections };
}

function relink(token: Token, link: (href: string) => string): void {
  for (const name of ["href", "src"]) {
    const target = token.attrGet(name);
    if (target !== null) token.attrSet(name, link(target));
  }
  if (token.type === "html_block" || token.type === "html_inline")
    token.content = token.content.replace(
      /\b(href|src)="([^"]*)"/g,
      (_, name: string, target: string) => `${name}="${asHtml(link(target))}"`,
    );
}

/** An empty head of a column is no head: a reader that names the column of a cell would name nothing. */
function withoutEmptyHeads(tokens: readonly Token[]): Token[] {
  return tokens.map((token, i) => {
    const isEmpty =
      (token.type === "th_open" && tokens[i + 1]?.content === "") ||
      (token.type === "th_close" && tokens[i - 1]?.content === "");
    if (isEmpty) token.tag = "td";
    return token;
  });
}

function plain(inline: Token | undefined): string {
  return (inline?.children ?? [])
    .map(({ type, content }) => (type === "softbreak" ? " " : type === "html_inline" ? "" : content))
    .join("");
}

function textOf(token: Token): string {
  if (token.type === "inline") return `${plain(token)} `;
  return token.type === "fence" ? `${token.content} ` : "";
}

function highlight(code: string, language: string): string {
  return hljs.getLanguage(language) === undefined
    ? asHtml(code)
    : hljs.highlight(code, { language, ignoreIllegals: true }).value;
}

const { rules } = markdown.renderer;

rules["fence"] = (tokens, i) => {
  const { content, info } = tokens[i] as Token;
  return `<pre class="scrolls" tabindex="0"><code>${highlight(content, info.trim())}</code></pre>\n`;
};
rules["code_block"] = rules["fence"];
rules["table_open"] = (tokens, i) =>
  `<div class="scrolls" tabindex="0" role="group" aria-label="Table: ${asHtml(String(tokens[i]?.meta))}"><table>\n`;
rules["table_close"] = () => "</table></div>\n";
rules["heading_close"] = (tokens, i) => {
  const { tag } = tokens[i] as Token;
  const id = tokens[i - 2]?.attrGet("id") ?? "";
  const title = plain(tokens[i - 1]);
  const mark = `<a class="mark" href="#${asHtml(id)}" aria-label="Link to ${asHtml(title)}">#</a>`;
  return `${tag === "h1" ? "" : mark}</${tag}>\n`;
};
rules["image"] = (tokens, i) => {
  const image = tokens[i] as Token;
  const size = image.meta as readonly [number, number] | undefined;
  const measures = size === undefined ? "" : ` width="${size[0]}" height="${size[1]}"`;
  const alt = asHtml(image.content);
  const drawing = `<img src="${asHtml(image.attrGet("src") ?? "")}" alt="${alt}"${measures}>`;
  return `<span class="picture scrolls" tabindex="0" role="group" aria-label="Drawing">${drawing}</span>`;
};

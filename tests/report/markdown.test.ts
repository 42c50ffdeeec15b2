import fc from "fast-check";
import markdownIt from "markdown-it";
import { describe, expect, it } from "vitest";
import { asMarkdown, plainText } from "../../src/report/render/markdown.js";
import { documentWith, places } from "./hostile.js";

/** A reader that makes links of all that looks like an address, and lets HTML through. */
const reader = markdownIt({ html: true, linkify: true });

const hostile = fc
  .array(
    fc.constantFrom(
      ...["http://", "https://", "ftp://", "//", "www.", "mailto:", "example.com", "localhost", ".de", "@"],
      ...[
        "<b>",
        "<!--",
        "&lt;",
        "&#64;",
        "|",
        "\n",
        "\r",
        "\t",
        "`",
        "``",
        "~~~",
        "*",
        "_",
        "[x](y)",
        "![",
        "]",
      ],
      ...["- ", "-", "+ ", "=", "# ", "1. ", "1) ", ":-", "> ", "\\", "$", " ", "a", "B", "7", "é", "\u200b"],
    ),
    { maxLength: 8 },
  )
  .map((parts) => parts.join(""));

/** What a reader sees of a page: kinds of blocks and, in each, the runs of text that are not code. */
function seen(page: string) {
  const tokens = reader.parse(page, {});
  return tokens
    .filter(({ type }) => type === "inline")
    .map(({ children }) => ({
      kinds: new Set((children ?? []).map(({ type }) => type)),
      text: (children ?? []).map(({ content }) => content).join(""),
      runs: (children ?? []).map(({ type, content }) => (type === "text" ? content : "\n")).join(""),
    }));
}

const kindsOf = (page: string): readonly string[] =>
  reader
    .parse(page, {})
    .map(({ type }) => type)
    .filter((type) => type !== "inline");

const harmless = new Set(["text", "code_inline", "strong_open", "strong_close"]);

/** Viewers that know addresses by their text look at each run between other things; an escape does not stop them. */
const linked = [/https?:\/\//i, /ftp:\/\//i, /www\./i, /[\w.+-]@[\w-]/, /\w\.[a-z]{2}/i];

describe.each(places)("what an installation names, in Markdown as %s", (_, of) => {
  it("is read as it was written, and as nothing else", () => {
    const pageOf = (text: string): string => asMarkdown(documentWith(of(text)));
    const wanted = kindsOf(pageOf("plain"));
    fc.assert(
      fc.property(hostile, (text) => {
        const whole = text.replace(/\s+/g, " ").trim();
        fc.pre(whole !== "");
        const page = pageOf(text);
        expect(kindsOf(page)).toEqual(wanted);
        const all = seen(page);
        expect(all.map((one) => one.text)).toEqual(
          seen(pageOf("plain")).map((one) => one.text.replace("plain", () => whole)),
        );
        for (const { kinds, runs } of all) {
          for (const kind of kinds) expect([...harmless]).toContain(kind);
          for (const pattern of linked) expect(runs).not.toMatch(pattern);
        }
      }),
      { numRuns: 300 },
    );
  });
});

describe("a text in Markdown", () => {
  it.each([
    ["see https://example.com/a", "see https`://`example`.`com/a"],
    ["www.example.com", "www`.`example`.`com"],
    ["J. Doe, j.doe@example.com", "J. Doe, j`.`doe`@`example`.`com"],
    ["#2 copper, 250.30(A)(1)", "\\#2 copper, 250.30(A)(1)"],
    ["-6,130 cmil", "-6,130 cmil"],
    ["- a", "\\- a"],
    ["2. a", "2\\. a"],
    ["---", "\\---"],
    ["a\r\nb", "a b"],
  ])("%j is written as %s", (text, written) => {
    expect(plainText(text)).toBe(written);
  });
});

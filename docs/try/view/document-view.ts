import type { Document, DocumentPart } from "bondmil";
import { Fragment, h, type JSX } from "preact";
import { TableView } from "./table-view.js";

/** What a document is shown with. */
export interface DocumentProps {
  readonly document: Document;
  /** Begins the ids of its headings, so that two documents stand on one page. */
  readonly name: string;
  /** Its parts, where some of them stand elsewhere on the page. */
  readonly parts?: readonly DocumentPart[];
}

/** A document of the library. Its texts become texts of the page and never markup, whatever stands in them. */
export function DocumentView({ document, name, parts = document.parts }: DocumentProps): JSX.Element {
  return h(
    "div",
    { class: "document" },
    h(
      "dl",
      { class: "block" },
      document.facts.map(({ name: fact, text }) =>
        h("div", { key: fact }, h("dt", null, fact), h("dd", null, text)),
      ),
    ),
    document.signatures === undefined ? null : h(SignaturesView, document.signatures),
    h(PartsView, { parts, name }),
  );
}

/** Parts of a document without its title block; a drawing is shown by the part of the page that has it. */
export function PartsView({
  parts,
  name,
}: {
  readonly parts: readonly DocumentPart[];
  readonly name: string;
}): JSX.Element {
  return h(
    Fragment,
    null,
    parts.map((part, i) => h(Part, { key: i, part, name })),
  );
}

function Part({ part, name }: { readonly part: DocumentPart; readonly name: string }): JSX.Element | null {
  switch (part.kind) {
    case "heading":
      return h(
        part.level === 2 ? "h3" : "h4",
        { tabIndex: -1, ...(part.mark !== undefined && { id: `${name}:${part.mark}` }) },
        part.text,
      );
    case "text":
      return h(
        "p",
        null,
        part.strong === undefined ? null : h("strong", null, `${part.strong}. `),
        part.text,
      );
    case "list":
      return h(ListView, part);
    case "table":
      return h(TableView, { table: part, name });
    case "drawing":
      return null;
  }
}

/** Ruled lines to be signed by hand, on paper only. */
function SignaturesView({ who, fields }: NonNullable<Document["signatures"]>): JSX.Element {
  const blanks = fields.map((field) => h("td", { key: field }, field));
  return h(
    "table",
    { class: "signatures" },
    h(
      "tbody",
      null,
      who.map((name) => h("tr", { key: name }, h("th", { scope: "row" }, name), blanks)),
    ),
  );
}

/** A list; one that says what its items have in common is folded into that line. */
function ListView({
  folded,
  items,
}: Pick<Extract<DocumentPart, { readonly kind: "list" }>, "folded" | "items">): JSX.Element {
  const list = h(
    "ul",
    null,
    items.map((item, i) => h("li", { key: i }, item)),
  );
  return folded === undefined ? list : h("details", null, h("summary", null, folded), list);
}

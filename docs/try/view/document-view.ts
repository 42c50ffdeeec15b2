import type { Document, DocumentPart } from "bondmil";
import { Fragment, h, type JSX } from "preact";

type Table = Extract<DocumentPart, { readonly kind: "table" }>;
type Cell = Table["rows"][number][number];

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
      return h(
        "ul",
        null,
        part.items.map((item, i) => h("li", { key: i }, item)),
      );
    case "table":
      return part.of === "records"
        ? h(TableView, { table: part, name })
        : h(
            "div",
            {
              class: "sideways",
              tabIndex: 0,
              role: "group",
              "aria-label": `Table of ${part.head[0] ?? "values"}, scrolls sideways`,
            },
            h(TableView, { table: part, name }),
          );
    case "drawing":
      return null;
  }
}

function TableView({
  table: { of, head, rows },
  name,
}: {
  readonly table: Table;
  readonly name: string;
}): JSX.Element {
  return h(
    "table",
    { class: of },
    h(
      "thead",
      null,
      h(
        "tr",
        null,
        head.map((one, i) => h("th", { key: i, scope: "col" }, one)),
      ),
    ),
    h(
      "tbody",
      null,
      rows.map((cells, i) =>
        h(
          "tr",
          { key: i },
          cells.map((cell, n) =>
            h(
              n === 0 ? "th" : "td",
              { key: n, ...(n === 0 && { scope: "row" }), "data-label": head[n] ?? "" },
              h(CellView, { cell, name }),
            ),
          ),
        ),
      ),
    ),
  );
}

/** A cell that leads to a heading does so without touching the address, which carries the installation. */
function CellView({ cell, name }: { readonly cell: Cell; readonly name: string }): JSX.Element {
  if (typeof cell === "string") return h(Fragment, null, cell);
  const goTo = (event: Event): void => {
    event.preventDefault();
    goToPart(`${name}:${cell.to}`);
  };
  return h("a", { href: "#", onClick: goTo }, cell.text);
}

/** Brings a part of the page in view and puts the focus there. */
export function goToPart(id: string): void {
  const part = document.getElementById(id);
  part?.scrollIntoView({ block: "start" });
  part?.focus({ preventScroll: true });
}

import type { DocumentPart } from "bondmil";
import { Fragment, h, type JSX } from "preact";
import { goToPart } from "./go-to-part.js";

/** A table of a document. */
export type Table = Extract<DocumentPart, { readonly kind: "table" }>;
type Cell = Table["rows"][number][number];
type Cells = Table["rows"][number];

/** What a table is shown with; `name` begins the ids of its marks. */
interface TableProps {
  readonly table: Table;
  readonly name: string;
}

/** A table. What is wide scrolls sideways inside its own frame, which the keyboard reaches. */
export function TableView({ table, name }: TableProps): JSX.Element {
  if (table.of === "sheets") return h(SheetsView, { table, name });
  if (table.of === "records") return h(RowsView, { table, name });
  const label = `Table of ${table.head[0] ?? "values"}, scrolls sideways`;
  return h(
    "div",
    { class: "sideways", tabIndex: 0, role: "group", "aria-label": label },
    h(RowsView, { table, name }),
  );
}

function RowsView({ table: { of, head, rows }, name }: TableProps): JSX.Element {
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
    groupsOf(rows, head.length).map((group, g) =>
      h(
        "tbody",
        { key: g },
        group.map((cells, i) =>
          isOver(cells, head.length)
            ? h(
                "tr",
                { key: i, class: "over" },
                h("th", { scope: "rowgroup", colSpan: head.length }, textOf(cells[0] ?? "")),
              )
            : h(RowView, { key: i, cells, head, name }),
        ),
      ),
    ),
  );
}

/** A row of one cell says what the rows below it are of. */
function isOver(cells: Cells, columns: number): boolean {
  return cells.length === 1 && columns > 1;
}

function groupsOf(rows: readonly Cells[], columns: number): readonly (readonly Cells[])[] {
  const starts = [...rows.keys()].filter((i) => i === 0 || isOver(rows[i] ?? [], columns));
  return starts.map((start, i) => rows.slice(start, starts[i + 1]));
}

function RowView({
  cells,
  head,
  name,
}: {
  readonly cells: Cells;
  readonly head: readonly string[];
  readonly name: string;
}): JSX.Element {
  return h(
    "tr",
    null,
    cells.map((cell, i) =>
      h(
        i === 0 ? "th" : "td",
        { key: i, ...(i === 0 && { scope: "row" }), "data-label": head[i] ?? "", ...markOf(cell, name) },
        h(CellView, { cell, name }),
      ),
    ),
  );
}

/** Each row as a small sheet: its first two cells above, each other that says something on a line behind the head of its column. */
function SheetsView({ table: { head, rows }, name }: TableProps): JSX.Element {
  return h(
    Fragment,
    null,
    rows.map(([number = "", title = "", ...rest], i) =>
      h(
        "div",
        { key: i, class: "calculation" },
        h(
          "h4",
          markOf(number, name),
          h(CellView, { cell: number, name }),
          ". ",
          h(CellView, { cell: title, name }),
        ),
        h(
          "dl",
          null,
          rest.map((cell, n) =>
            textOf(cell) === ""
              ? null
              : h("div", { key: n }, h("dt", null, head[n + 2]), h("dd", null, h(CellView, { cell, name }))),
          ),
        ),
      ),
    ),
  );
}

function markOf(cell: Cell, name: string): { readonly id?: string; readonly tabIndex?: number } {
  return typeof cell === "string" || cell.mark === undefined
    ? {}
    : { id: `${name}:${cell.mark}`, tabIndex: -1 };
}

function textOf(cell: Cell): string {
  return typeof cell === "string" ? cell : cell.text;
}

/** A cell that leads to another part does so without touching the address, which carries the installation. */
function CellView({ cell, name }: { readonly cell: Cell; readonly name: string }): JSX.Element {
  if (typeof cell === "string" || cell.to === undefined) return h(Fragment, null, textOf(cell));
  const to = `${name}:${cell.to}`;
  const goTo = (event: Event): void => {
    event.preventDefault();
    goToPart(to);
  };
  return h("a", { href: "#", onClick: goTo }, cell.text);
}

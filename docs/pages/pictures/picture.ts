import { rowsToCsv } from "../../../src/report/render/csv.js";

/** A value in the data behind a picture. */
export type Cell = string | number;

/** A picture made from data, with the data. */
export interface Picture {
  /** Name of its files, without an ending. */
  readonly name: string;
  /** What it shows, in one line. */
  readonly title: string;
  /** What a reader would see in it, for whoever does not see it. */
  readonly description: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
  /** The picture as SVG. */
  readonly svg: string;
}

/** The files of some pictures by their paths. */
export function filesOf(pictures: readonly Picture[]): Readonly<Record<string, string>> {
  return Object.fromEntries(
    pictures.flatMap(({ name, columns, rows, svg }) => [
      [`docs/pictures/${name}.svg`, svg],
      [
        `docs/pictures/${name}.csv`,
        rowsToCsv(rows.map((row) => Object.fromEntries(columns.map((column, i) => [column, row[i] ?? ""])))),
      ],
    ]),
  );
}

/** A picture in a page of docs/, with its data beside. */
export function shown({ name, title }: Pick<Picture, "name" | "title">): string {
  return `![${title}](pictures/${name}.svg)\n\n([data](pictures/${name}.csv))`;
}

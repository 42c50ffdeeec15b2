// Generated from shape.ts by "npm run generate"; do not edit.
import type { Shape } from "../input/shapes.js";

/** What the caller adds to a document. The library never looks at the clock. */
export interface DocumentOptions {
  /** In place of the usual title. */
  readonly title?: string;
  /** Where the installation is, as it is to be read. */
  readonly place?: string;
  /** Who prepared it, as it is to be read. */
  readonly preparedBy?: string;
  /** The date, as it is to be read. */
  readonly date?: string;
}

export const documentOptionsShape: Shape = {
  is: "object",
  members: {
    title: { is: "name", says: "the title" },
    place: { is: "name", says: "the place" },
    preparedBy: { is: "name", says: "who prepared it" },
    date: { is: "name", says: "the date" },
  },
  optional: ["title", "place", "preparedBy", "date"],
};

/** How a drawing is written. */
export interface DrawingOptions {
  /** Id in the schedule of the conductor that stands out; only the sheets that show it are written. */
  readonly highlight?: string;
}

export const drawingOptionsShape: Shape = {
  is: "object",
  members: { highlight: { is: "name", says: "a conductor" } },
  optional: ["highlight"],
};

/** How a document is written. */
export interface RenderOptions {
  /** The format. */
  readonly as: "text" | "markdown" | "html" | "csv";
  /** Letters in a line of text, from 20 to 10,000; 120 by default. Other formats have no lines. */
  readonly width?: number;
}

export const renderOptionsShape: Shape = {
  is: "object",
  members: {
    as: { is: "words", of: ["text", "markdown", "html", "csv"] },
    width: { is: "between", unit: "letters", least: 20, most: 10000 },
  },
  optional: ["width"],
};

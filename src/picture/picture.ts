import type { Marks } from "../input/given-result.js";
import type { SizingResult } from "../rules/result.js";

/** How a conductor is drawn. Each differs in thickness and dashes, so that no color is needed; `context` is what is not sized here. */
export type LineStyle = SizingResult["purpose"] | "context";

/** Symbols in the manner of IEC 60617 and IEEE 315, in a square of 24 pixels. */
export type SymbolKind = "transformer" | "generator" | "source" | "disconnect" | "meter" | "earth" | "frame";

/** A point of a sheet; the origin is its upper left corner. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A rectangle of a sheet. */
export interface Rectangle extends Point {
  readonly width: number;
  readonly height: number;
}

/** A connected line. */
export interface DrawnLine {
  readonly style: LineStyle;
  readonly points: readonly Point[];
  /** Id in the schedule of the conductor that it is. */
  readonly conductor?: string;
}

/** The outline of a place; `elsewhere` stands for one that is drawn in full at another position or on another sheet. */
export interface DrawnBox extends Rectangle {
  readonly kind: "place" | "elsewhere";
}

/** A symbol, by the upper left corner of its square. */
export interface DrawnSymbol extends Point {
  readonly kind: SymbolKind;
}

/** A block of text whose lines are wrapped already; no two of a sheet overlap. */
export interface DrawnLabel extends Rectangle {
  /** Its first `strong` lines stand out. */
  readonly lines: readonly string[];
  readonly strong: number;
  /** Id in the schedule of the conductor that it names. */
  readonly conductor?: string;
}

/** One sheet of a picture: shapes with their coordinates, in CSS pixels at full size. */
export interface Sheet {
  readonly title: string;
  readonly width: number;
  readonly height: number;
  readonly boxes: readonly DrawnBox[];
  readonly lines: readonly DrawnLine[];
  readonly symbols: readonly DrawnSymbol[];
  readonly labels: readonly DrawnLabel[];
  /** What the sheet shows, in sentences, for those who do not see it. */
  readonly description: string;
}

/** The path of a drawing as shapes with coordinates, one sheet for each system. Plain JSON. */
export interface Picture {
  readonly title: string;
  readonly sheets: readonly Sheet[];
}

/** Side of the square of a symbol. */
export const SYMBOL_SIZE = 24;

/** By what a picture is known. */
export const pictureMarks: Marks<Picture> = {
  title: "text",
  sheets: "list",
};

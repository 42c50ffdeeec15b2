import type { Marks } from "../input/given-result.js";
import type { Violation } from "../installation/violation.js";
import type { SizingResult } from "../rules/result.js";

/** How a conductor is drawn. Each differs in thickness and dashes, so that no color is needed; `context` is what is not sized here. */
export type LineStyle = SizingResult["purpose"] | "context";

/** Symbols in the manner of IEC 60617 and IEEE 315, in a square of 24 pixels. */
export type SymbolKind = "transformer" | "generator" | "source" | "disconnect" | "meter" | "earth" | "frame";

/** A point of a sheet; the origin is its upper left corner. */
export interface Point {
  /** Distance from the left edge. */
  readonly x: number;
  /** Distance from the top edge. */
  readonly y: number;
}

/** A rectangle of a sheet. */
export interface Rectangle extends Point {
  /** Width, in the units of the sheet. */
  readonly width: number;
  /** Height, in the units of the sheet. */
  readonly height: number;
}

/** A connected line. */
export interface DrawnLine {
  /** How the line is drawn. */
  readonly style: LineStyle;
  /** Its corners, from start to end. */
  readonly points: readonly Point[];
  /** Id in the schedule of the conductor that it is. */
  readonly conductor?: string;
}

/** The outline of a place; `elsewhere` stands for one that is drawn in full at another position or on another sheet. */
export interface DrawnBox extends Rectangle {
  /** What the box stands for. */
  readonly kind: "place" | "elsewhere";
}

/** A symbol, by the upper left corner of its square. */
export interface DrawnSymbol extends Point {
  /** What the symbol stands for. */
  readonly kind: SymbolKind;
}

/** A block of text whose lines are wrapped already; no two of a sheet overlap. */
export interface DrawnLabel extends Rectangle {
  /** Its first `strong` lines stand out. */
  readonly lines: readonly string[];
  /** Whether it is a heading. */
  readonly strong: number;
  /** Id in the schedule of the conductor that it names. */
  readonly conductor?: string;
}

/** A violation with the mark under which a sheet shows it. */
export interface DrawnViolation {
  /** The mark, alike on every sheet: V and the number in the list of violations, from 1. */
  readonly mark: string;
  /** What is forbidden or missing. */
  readonly violation: Violation;
}

/** One sheet of a picture: shapes with their coordinates, in CSS pixels at full size. */
export interface Sheet {
  /** Title for people. */
  readonly title: string;
  /** Width, in the units of the sheet. */
  readonly width: number;
  /** Height, in the units of the sheet. */
  readonly height: number;
  /** Boxes: enclosures and equipment. */
  readonly boxes: readonly DrawnBox[];
  /** Lines: conductors and connections. */
  readonly lines: readonly DrawnLine[];
  /** Symbols of sources, electrodes and ground. */
  readonly symbols: readonly DrawnSymbol[];
  /** Labels, placed so that none covers another. */
  readonly labels: readonly DrawnLabel[];
  /** Violations that are marked on the sheet, to be listed with it; absent where there are none. */
  readonly violations?: readonly DrawnViolation[];
  /** What the sheet shows, in sentences, for those who do not see it. */
  readonly description: string;
}

/** The path of a drawing as shapes with coordinates, one sheet for each system. Plain JSON. */
export interface Drawing {
  /** Title for people. */
  readonly title: string;
  /** The sheets, one for each system and what hangs on it. */
  readonly sheets: readonly Sheet[];
}

/** Side of the square of a symbol. */
export const SYMBOL_SIZE = 24;

/** By what a picture is known. */
export const drawingMarks: Marks<Drawing> = {
  title: "text",
  sheets: "list",
};

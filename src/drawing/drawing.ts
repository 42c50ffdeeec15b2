import type { Marks } from "../input/given-result.js";
import type { Violation } from "../installation/violation.js";
import type { SizingResult } from "../rules/result.js";

/**
 * How a line is drawn. Each differs in thickness and dashes, so that no color is needed: a conductor by its purpose, `bar` for a bar or terminal and
 * what extends it, `bond` for metal that is connected without a sized conductor, `context` for ungrounded conductors.
 */
export type LineStyle = SizingResult["purpose"] | "bar" | "bond" | "context";

/** Symbols in the manner of IEC 60617 and IEEE 315; each kind has one size. */
export type SymbolKind =
  | "wye"
  | "delta"
  | "corner-grounded-delta"
  | "high-leg-delta"
  | "single-phase"
  | "generator"
  | "source"
  | "disconnect"
  | "meter"
  | "impedance"
  | "rod"
  | "plate"
  | "concrete"
  | "ring"
  | "water-pipe"
  | "electrode"
  | "frame"
  | "pipe"
  | "termination";

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

/** A connected line, in horizontal and vertical parts. It is connected with whatever one of its ends lies on, and with nothing that it only crosses. */
export interface DrawnLine {
  /** How the line is drawn. */
  readonly style: LineStyle;
  /** Its corners, from start to end. */
  readonly points: readonly Point[];
  /** Id in the schedule of the conductor that it is. */
  readonly conductor?: string;
  /** Where it hops over a line that it is not connected with; absent where it crosses none. */
  readonly hops?: readonly Point[];
}

/**
 * The metal of a place: `enclosure` its outline, `raceway` a wall of a metal raceway, `part` a metal part. `elsewhere` stands for what is drawn in full at
 * another position or on another sheet, `assembly` surrounds what one listed assembly holds.
 */
export interface DrawnOutline {
  /** What the outline stands for. */
  readonly kind: "enclosure" | "raceway" | "part" | "elsewhere" | "assembly";
  /** Its corners; the outline of all but a raceway is closed. */
  readonly points: readonly Point[];
  /** Name of the place. */
  readonly of: string;
  /** Where a sheet is divided within it: its edge, which is not closed then, or its area, which has no edge. */
  readonly part?: "edge" | "area";
}

/** The ground line, below which the earth is. */
export interface DrawnGround extends Point {
  /** Width, in the units of the sheet. */
  readonly width: number;
}

/** The way back of a fault to its source, on a conductor of the fault path. */
export interface DrawnArrow extends Point {
  /** Where it points. */
  readonly to: "up" | "down" | "left" | "right";
  /** Id in the schedule of the conductor. */
  readonly conductor?: string;
}

/** A symbol, by the upper left corner of its rectangle. */
export interface DrawnSymbol extends Point {
  /** What the symbol stands for. */
  readonly kind: SymbolKind;
}

/** A block of text whose lines are wrapped already; no two of a sheet overlap, and no line of the sheet runs through one. */
export interface DrawnLabel extends Rectangle {
  /** Its first `strong` lines stand out. */
  readonly lines: readonly string[];
  /** How many of its lines stand out. */
  readonly strong: number;
  /** Id in the schedule of the conductor that it names. */
  readonly conductor?: string;
  /** Set on the mark of a violation, which has a frame. */
  readonly isViolation?: true;
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
  /** Width, in the units of the sheet; at most 900. */
  readonly width: number;
  /** Height, in the units of the sheet. */
  readonly height: number;
  /** Outlines: enclosures, equipment, metal raceways and metal parts. */
  readonly outlines: readonly DrawnOutline[];
  /** Lines: conductors, bars and connections. */
  readonly lines: readonly DrawnLine[];
  /** Where lines are connected that do not simply end in each other. */
  readonly joints: readonly Point[];
  /** The way back of a fault, on the conductors that carry it. */
  readonly arrows: readonly DrawnArrow[];
  /** Symbols of sources, electrodes and equipment. */
  readonly symbols: readonly DrawnSymbol[];
  /** Ground lines above the electrodes. */
  readonly grounds: readonly DrawnGround[];
  /** Labels, placed so that none covers another. */
  readonly labels: readonly DrawnLabel[];
  /** Ids in the schedule of the conductors that it draws or names. */
  readonly conductors: readonly string[];
  /** Violations that are marked on the sheet, to be listed with it; absent where there are none. */
  readonly violations?: readonly DrawnViolation[];
  /** The path as a list, for those who do not see it. */
  readonly description: readonly string[];
}

/** The path of a drawing as shapes with coordinates, the sheets one below another. Plain JSON. */
export interface Drawing {
  /** Title for people. */
  readonly title: string;
  /** The sheets, in the order of the systems; what is too high for a page is divided. */
  readonly sheets: readonly Sheet[];
}

/** Width of every sheet, which letter and A4 paper still show with text of 7 points. */
export const SHEET_WIDTH = 900;

/** Width and height of symbols. */
export const SYMBOL_SIZES: Readonly<Record<SymbolKind, readonly [number, number]>> = {
  wye: [64, 56],
  delta: [64, 56],
  "corner-grounded-delta": [64, 56],
  "high-leg-delta": [64, 56],
  "single-phase": [64, 56],
  generator: [24, 24],
  source: [24, 24],
  disconnect: [24, 24],
  meter: [24, 24],
  impedance: [24, 40],
  rod: [24, 34],
  plate: [24, 34],
  concrete: [24, 34],
  ring: [24, 34],
  "water-pipe": [24, 34],
  electrode: [24, 34],
  frame: [24, 34],
  pipe: [24, 24],
  termination: [24, 24],
};

/** Where the neutral or grounded lead of windings starts, from the left edge of the symbol; it is halfway down. */
export const GROUNDED_LEADS = {
  wye: 30,
  delta: 30,
  "corner-grounded-delta": 52,
  "high-leg-delta": 48,
  "single-phase": 8,
} as const satisfies Partial<Record<SymbolKind, number>>;

/** By what a picture is known. */
export const drawingMarks: Marks<Drawing> = {
  title: "text",
  sheets: "list",
};

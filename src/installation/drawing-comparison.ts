import type { Change, Effect } from "../comparison/comparison.js";
import type { Amendment, EditionYear, Purpose, Readings, Role } from "../edition/index.js";
import type { Marks } from "../input/given-result.js";
import type { Issue } from "../input/input-error.js";
import type { MetalTotal, PlacedCaution, ScheduledConductor } from "./schedule.js";
import type { Violation } from "./violation.js";

/** What a whole drawing is held against. */
export type DrawingComparisonRequest =
  | DrawingOverEditions
  | DrawingOverAmendments
  | DrawingOverReadings
  | DrawingOverArrangements;

/** A drawing under several editions; its own edition is put aside. */
export interface DrawingOverEditions {
  readonly by: "edition";
  /** A drawing, its JSON text, or the value that it would parse to. */
  readonly drawing: unknown;
  /** Editions in the order in which they are wanted; all of them, oldest first, unless told. */
  readonly years?: readonly EditionYear[];
}

/** A drawing under its edition as printed and as amended. */
export interface DrawingOverAmendments {
  readonly by: "amendment";
  readonly drawing: unknown;
  /** Those of the drawing unless told. */
  readonly amendments?: readonly Amendment[];
}

/** A drawing under each other alternative of the open readings that its schedule names. */
export interface DrawingOverReadings {
  readonly by: "reading";
  readonly drawing: unknown;
}

/** A drawing under each other arrangement that it could be drawn with, one changed at a time. */
export interface DrawingOverArrangements {
  readonly by: "arrangement";
  readonly drawing: unknown;
}

/** What one column of a comparison has that the others have not. */
export type VariantChange =
  | { readonly kind: "edition"; readonly year: EditionYear }
  | { readonly kind: "as-printed" }
  | { readonly kind: "as-amended" }
  | { readonly kind: "as-read" }
  | {
      readonly kind: "reading";
      readonly reading: keyof Readings;
      readonly chosen: string;
      readonly alternative: string;
    }
  | {
      readonly kind: "as-drawn";
      /** Derived systems whose drawing leaves the place of the jumper open; here it is at their sources. */
      readonly takenAtSource: readonly string[];
    }
  | {
      readonly kind: "system-jumper";
      readonly of: string;
      readonly at: "source" | "disconnects" | "both-ends";
    }
  | {
      readonly kind: "raceway-jumpers";
      readonly of: string;
      readonly as: "per-raceway" | "common" | "fittings-instead";
    }
  | { readonly kind: "housing"; readonly of: string; readonly as: "separate-enclosures" | "listed-assembly" };

/** One column of a comparison. */
export type DrawingVariant = ScheduledVariant | RefusedVariant;

/** A column with its schedule. */
export interface ScheduledVariant {
  /** Short and without equal: the year of an edition, else a letter. */
  readonly key: string;
  readonly change: VariantChange;
  readonly edition: EditionYear;
  /** That of the schedule. */
  readonly fingerprint: string;
  /** Circular mils of all its conductors together; those of arrangements that the drawing compares are left out. */
  readonly totalArea: number;
  /** Feet of conductor by size and material, of those whose length is given. */
  readonly totals: readonly MetalTotal[];
  /** What is forbidden or missing here, and not in the column that it is held against. */
  readonly newViolations: readonly Violation[];
  /** About the drawing as a whole, and not in the column that it is held against. */
  readonly newCautions: readonly PlacedCaution[];
  readonly refused?: never;
}

/** A column whose edition, amendments or arrangement refuse the drawing. */
export interface RefusedVariant {
  readonly key: string;
  readonly change: VariantChange;
  readonly edition: EditionYear;
  readonly refused: readonly Issue[];
}

/** One conductor in one column. */
export interface ComparedEntry {
  /** `null` where the column has no such conductor, or was refused. */
  readonly conductor: ScheduledConductor | null;
  /** What became of the required area of one conductor. */
  readonly effect: Effect;
  readonly changes: readonly Change[];
}

/** One conductor of a drawing in every column. */
export interface ComparedConductor {
  readonly id: string;
  /** Where the drawing itself compares arrangements, the one that it belongs to. */
  readonly alternative?: string;
  readonly role: Role;
  readonly purpose: Purpose;
  /** Whether its size, number or material differs, or it is missing, between columns that were not refused. */
  readonly differs: boolean;
  /** One for each column, in their order. */
  readonly entries: readonly ComparedEntry[];
}

/** A whole drawing, several ways side by side. Plain JSON. */
export interface DrawingComparison {
  readonly title: string;
  readonly by: DrawingComparisonRequest["by"];
  /** What a column is held against: of editions the last one before it that was not refused, else the first. */
  readonly against: "before" | "first";
  readonly variants: readonly DrawingVariant[];
  readonly conductors: readonly ComparedConductor[];
}

/** By what a comparison of drawings is known. */
export const drawingComparisonMarks: Marks<DrawingComparison> = {
  title: "text",
  by: "text",
  variants: "list",
  conductors: "list",
};

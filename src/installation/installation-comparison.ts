import type { Change, Effect } from "../comparison/comparison.js";
import type { EditionYear, Purpose, Readings } from "../edition/index.js";
import type { Marks } from "../input/given-result.js";
import type { Issue } from "../input/input-error.js";
import type { ConductorIdentity } from "./conductor-identity.js";
import type { InstallationComparisonRequest } from "./questions/shape.generated.js";
import type { MetalTotal, PlacedCaution, ScheduledConductor } from "./schedule.js";
import type { Violation } from "./violation.js";

/** What one column of a comparison has that the others have not. */
export type VariantChange =
  | {
      /** Tells the members of the union apart. */
      readonly kind: "edition";
      /** Year of the edition. */
      readonly year: EditionYear;
    }
  | {
      /** Tells the members of the union apart. */
      readonly kind: "as-printed";
    }
  | {
      /** Tells the members of the union apart. */
      readonly kind: "as-amended";
    }
  | {
      /** Tells the members of the union apart. */
      readonly kind: "as-read";
    }
  | {
      /** Tells the members of the union apart. */
      readonly kind: "reading";
      /** Id of the reading. */
      readonly reading: keyof Readings;
      /** The alternative that is in force. */
      readonly chosen: string;
      /** One of the alternatives of the reading. */
      readonly alternative: string;
    }
  | {
      /** Tells the members of the union apart. */
      readonly kind: "as-drawn";
      /** Derived systems whose drawing leaves the place of the jumper open; here it is at their sources. */
      readonly takenAtSource: readonly string[];
    }
  | {
      /** Tells the members of the union apart. */
      readonly kind: "system-jumper";
      /** What it belongs to. */
      readonly of: string;
      /** Where it is. */
      readonly at: "source" | "disconnects" | "both-ends";
    }
  | {
      /** Tells the members of the union apart. */
      readonly kind: "raceway-jumpers";
      /** What it belongs to. */
      readonly of: string;
      /** The form. */
      readonly as: "per-raceway" | "common" | "fittings-instead";
    }
  | {
      /** Tells the members of the union apart. */
      readonly kind: "housing";
      /** What it belongs to. */
      readonly of: string;
      /** The form. */
      readonly as: "separate-enclosures" | "listed-assembly";
    };

/** One column of a comparison. */
export type InstallationVariant = ScheduledVariant | RefusedVariant;

/** A column with its schedule. */
export interface ScheduledVariant {
  /** Short and without equal: the year of an edition, else a letter. */
  readonly key: string;
  /** What was changed. */
  readonly change: VariantChange;
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** That of the schedule. */
  readonly fingerprint: string;
  /** Circular mils of all its conductors together; those of arrangements that the installation compares are left out. */
  readonly totalArea: number;
  /** Feet of conductor by size and material, of those whose length is given. */
  readonly totals: readonly MetalTotal[];
  /** What is forbidden or missing here; a column with any is no equal of one without. */
  readonly violations: readonly Violation[];
  /** What is forbidden or missing here, and not in the column that it is held against. */
  readonly newViolations: readonly Violation[];
  /** About the installation as a whole, and not in the column that it is held against. */
  readonly newCautions: readonly PlacedCaution[];
  readonly refused?: never;
}

/** A column whose edition, amendments or arrangement refuse the installation. */
export interface RefusedVariant {
  /** Its name among the others. */
  readonly key: string;
  /** What was changed. */
  readonly change: VariantChange;
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** What is wrong with the installation in this variant. */
  readonly refused: readonly Issue[];
}

/** One conductor in one column. */
export interface ComparedEntry {
  /** `null` where the column has no such conductor, or was refused. */
  readonly conductor: ScheduledConductor | null;
  /** What became of the metal of all conductors of the line, their number times the area of their size. */
  readonly effect: Effect;
  /** What changed against the one before. */
  readonly changes: readonly Change[];
}

/** One conductor of an installation in every column. */
export interface ComparedConductor extends ConductorIdentity {
  /** Stable id. */
  readonly id: string;
  /** Which of the systems it belongs to: fault path, electrode system, or equalizing. */
  readonly purpose: Purpose;
  /** Whether its size, number or material differs, or it is missing, between columns that were not refused. */
  readonly differs: boolean;
  /** One for each column, in their order. */
  readonly entries: readonly ComparedEntry[];
}

/** An installation, several ways side by side. Plain JSON. */
export interface InstallationComparison {
  /** Title for people. */
  readonly title: string;
  /** What differs between the variants. */
  readonly over: InstallationComparisonRequest["over"];
  /** What a column is held against: of editions the last one before it that was not refused, else the first. */
  readonly against: "before" | "first";
  /** The variants, in their order. */
  readonly variants: readonly InstallationVariant[];
  /** The conductors, in their order. */
  readonly conductors: readonly ComparedConductor[];
}

/** By what a comparison of installations is known. */
export const installationComparisonMarks: Marks<InstallationComparison> = {
  title: "text",
  over: "text",
  variants: "list",
  conductors: "list",
};

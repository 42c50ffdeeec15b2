import type { SizingResult } from "../rules/result.js";

/** Something that the installation does not tell and on which a line of its schedule hangs, with what is required in each case. Plain JSON. */
export interface OpenQuestion {
  /** What is not known. */
  readonly what: "raceway-material";
  /** What is required in each case; the line itself holds the larger. */
  readonly outcomes: readonly OpenOutcome[];
}

/** What is required in one of the cases of an open question. */
export interface OpenOutcome {
  /** Material of the raceway in this case. */
  readonly if: RacewayCase;
  /** How many conductors then; 0 where none is required. */
  readonly quantity: number;
  /** The result in this case, with its steps. */
  readonly result: SizingResult;
}

/** A material of a raceway, as far as it decides. */
export type RacewayCase = "metal" | "nonmetallic" | "nonflexible-metal" | "flexible-metal-or-nonmetallic";

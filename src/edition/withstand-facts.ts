import type { ConductorColumn } from "../conductor/index.js";
import type { Citation } from "./citation.js";
import type { Evidence } from "./evidence.js";

/** Constants of the short-time withstand, with where they stand. */
export interface WithstandFacts {
  /** Where the formula and its constants stand. */
  readonly formula: Citation;
  /** Where the areas of the sizes stand. */
  readonly sizes: Citation;
  readonly metals: Readonly<Record<ConductorColumn, WithstandMetal>>;
  readonly limits: WithstandLimits;
  readonly crossCheck: WithstandRule;
}

/** Constants of one metal. */
export interface WithstandMetal {
  /** Ampere-squared seconds per squared circular mil and decade. */
  readonly factor: number;
  /** Degrees Celsius below zero at which the resistance would vanish. */
  readonly offset: number;
  /** Degrees Celsius at which the metal melts. */
  readonly highestFinal: number;
}

/** What an input may be; choices of the library. */
export interface WithstandLimits {
  readonly leastSeconds: number;
  readonly mostSeconds: number;
  /** Degrees Celsius. */
  readonly lowestInitial: number;
  /** Degrees Celsius between initial and final temperature. */
  readonly leastRise: number;
  readonly mostAmperes: number;
  /** Circular mils. */
  readonly mostArea: number;
}

/** A rule of thumb that is printed beside the formula. */
export interface WithstandRule {
  readonly metal: ConductorColumn;
  readonly circularMilsPerAmpere: number;
  readonly seconds: number;
  readonly initial: number;
  readonly final: number;
  readonly restsOn: "one-practitioner-source";
  readonly evidence: Evidence;
}

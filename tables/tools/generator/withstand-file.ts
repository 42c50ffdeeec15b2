import type { EditionYear } from "../../../src/edition/edition-year.js";

/** `short-time-withstand.json`. */
export interface WithstandFile {
  /** The formula and what it rests on. */
  readonly basis: {
    /** Where the formula stands. */
    readonly formula: string;
    /** Where the areas of the sizes stand. */
    readonly sizes: string;
    /** Editions, by their years. */
    readonly editions: readonly EditionYear[];
    /** Ids of the sources, as in tables/sources.json. */
    readonly sources: readonly string[];
  };
  /** Constants of the metals. */
  readonly metals: Readonly<
    Record<
      "copper" | "aluminum",
      {
        /** Factor of the formula. */
        readonly factor: number;
        /** Offset of the temperature, in degrees Celsius. */
        readonly offset: number;
        /** Highest final temperature, in degrees Celsius. */
        readonly highestFinal: number;
        /** Ids of the sources, as in tables/sources.json. */
        readonly sources: readonly string[];
      }
    >
  >;
  /** Limits within which the formula is used. */
  readonly limits: {
    /** Shortest duration, in seconds. */
    readonly leastSeconds: number;
    /** Longest duration, in seconds. */
    readonly mostSeconds: number;
    /** Lowest initial temperature, in degrees Celsius. */
    readonly lowestInitial: number;
    /** Smallest rise, in kelvins. */
    readonly leastRise: number;
    /** Largest current, in amperes. */
    readonly mostAmperes: number;
    /** Largest area, in circular mils. */
    readonly mostArea: number;
  };
  /** A rule of thumb, to hold the formula against. */
  readonly crossCheck: {
    /** The metal. */
    readonly metal: "copper" | "aluminum";
    /** Circular mils for one ampere. */
    readonly circularMilsPerAmpere: number;
    /** Duration, in seconds. */
    readonly seconds: number;
    /** Initial temperature, in degrees Celsius. */
    readonly initial: number;
    /** Final temperature, in degrees Celsius. */
    readonly final: number;
    /** What the rule of thumb rests on. */
    readonly restsOn: "one-practitioner-source";
    /** Ids of the sources, as in tables/sources.json. */
    readonly sources: readonly string[];
  };
}

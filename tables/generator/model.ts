import type { EditionYear } from "../../src/edition/edition-year.js";
import type { Evidence } from "../../src/edition/evidence.js";

/** One cell of a table file: a size, a number, a flag, or nothing. */
export type Cell = string | number | boolean | null;

/** A table of the code with what is known of each cell. */
export interface TableFile {
  readonly id: string;
  readonly title: string;
  readonly columns: readonly { readonly id: string; readonly unit: string; readonly says: string }[];
  readonly number: Readonly<Record<EditionYear, string | null>>;
  readonly blocks: readonly { readonly from: EditionYear; readonly rows: readonly (readonly Cell[])[] }[];
  readonly evidence: Readonly<Partial<Record<EditionYear, TableEvidence>>>;
  readonly cells?: readonly CellEvidence[];
}

/** How sure most cells of a table are under an edition, and from where. */
export interface TableEvidence {
  readonly level: Evidence;
  readonly sources: readonly string[];
  readonly note?: string;
}

/** Evidence of one cell where it differs from that of its table. */
export interface CellEvidence {
  readonly edition: EditionYear;
  readonly row: string;
  readonly column: string;
  readonly level: Evidence;
  readonly sources?: readonly string[];
  readonly note?: string;
}

/** A part of a policy: the place in the edition, and the evidence. */
export type BasisPair = readonly [section: string, evidence: Evidence];

/** One policy block of `policies.json`. */
export interface PolicyBlock {
  readonly editions: readonly EditionYear[];
  readonly basis: Readonly<Record<string, BasisPair>>;
  readonly note?: string;
  readonly [field: string]: unknown;
}

/** A size in each column, with its place in the edition. */
export interface LimitBlock {
  readonly copper: string;
  readonly aluminum: string;
  readonly citation: BasisPair;
}

/** `policies.json`: sets of policies, each with an answer for every edition. */
export interface PoliciesFile {
  readonly policies: Readonly<Record<string, readonly PolicyBlock[]>>;
}

/** `roles.json`. */
export interface RolesFile {
  readonly roles: Readonly<
    Record<string, { readonly purpose: string; readonly name: Readonly<Record<EditionYear, string>> }>
  >;
}

/** One open question of `readings.json`. */
export interface ReadingEntry {
  readonly id: string;
  readonly question: string;
  readonly policies: readonly string[];
  readonly editions: readonly EditionYear[];
  readonly alternatives: readonly {
    readonly id: string;
    readonly says: string;
    readonly policy?: Readonly<Record<string, unknown>>;
  }[];
  readonly default: string;
  readonly reason: string;
  readonly sections: readonly string[];
}

/** `readings.json`. */
export interface ReadingsFile {
  readonly readings: readonly ReadingEntry[];
}

/** `sections.json`. */
export interface SectionsFile {
  /** Sources in which each edition was read. */
  readonly readThrough: Readonly<Record<EditionYear, { readonly sources: readonly string[] }>>;
  readonly topics: Readonly<
    Record<string, { readonly says: string; readonly sections: Readonly<Record<EditionYear, BasisPair>> }>
  >;
}

/** `placements.json`. */
export interface PlacementsFile {
  readonly facts: Readonly<
    Record<
      string,
      {
        readonly says: string;
        readonly topic: string;
        readonly values: Readonly<Record<EditionYear, boolean | string>>;
      }
    >
  >;
}

/** `named-sizes.json`: sizes that sections name outright. */
export interface NamedSizesFile {
  readonly sizes: Readonly<
    Record<
      string,
      {
        readonly says: string;
        readonly values: Readonly<
          Record<
            EditionYear,
            { readonly copper: string; readonly aluminum: string | null; readonly citation: BasisPair }
          >
        >;
      }
    >
  >;
}

/** `short-time-withstand.json`. */
export interface WithstandFile {
  readonly basis: {
    readonly formula: BasisPair;
    readonly sizes: BasisPair;
    readonly editions: readonly EditionYear[];
    readonly sources: readonly string[];
  };
  readonly metals: Readonly<
    Record<
      "copper" | "aluminum",
      {
        readonly factor: number;
        readonly offset: number;
        readonly highestFinal: number;
        readonly sources: readonly string[];
      }
    >
  >;
  readonly limits: {
    readonly leastSeconds: number;
    readonly mostSeconds: number;
    readonly lowestInitial: number;
    readonly leastRise: number;
    readonly mostAmperes: number;
    readonly mostArea: number;
  };
  readonly crossCheck: {
    readonly metal: "copper" | "aluminum";
    readonly circularMilsPerAmpere: number;
    readonly seconds: number;
    readonly initial: number;
    readonly final: number;
    readonly standing: "one-practitioner-source";
    readonly level: Evidence;
    readonly sources: readonly string[];
  };
}

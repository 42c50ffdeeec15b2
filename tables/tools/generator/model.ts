import type { EditionYear } from "../../../src/edition/edition-year.js";
import type { Evidence } from "../../../src/edition/evidence.js";
import type { Known } from "./ladder.js";

/** One cell of a table file: a size, a number, a flag, or nothing. */
export type Cell = string | number | boolean | null;

/** A table of the code with what is known of each cell. */
export interface TableFile {
  /** Stable id. */
  readonly id: string;
  /** Title for people. */
  readonly title: string;
  /** The columns, with their units. */
  readonly columns: readonly {
    /** Stable id. */
    readonly id: string;
    /** Unit of its values. */
    readonly unit: string;
    /** What it says, in our own words. */
    readonly says: string;
    /** How it goes from row to row; absent where no order is checked. */
    readonly order?: "rises" | "may-be-alike" | "falls";
  }[];
  /** Number of the table in each edition. */
  readonly number: Readonly<Record<EditionYear, string | null>>;
  /** Values in blocks, each from an edition on. */
  readonly blocks: readonly {
    /** First edition for which it holds. */
    readonly from: EditionYear;
    /** The rows, in the order of the table. */
    readonly rows: readonly (readonly Cell[])[];
  }[];
  /** How sure the texts and values behind it are, weakest first used. */
  readonly evidence: Readonly<Partial<Record<EditionYear, TableEvidence>>>;
  /** The cells. */
  readonly cells?: readonly CellEvidence[];
}

/** How sure most cells of a table are under an edition, and from where. */
export interface TableEvidence {
  /** Level of evidence. */
  readonly level: Evidence;
  /** Ids of the sources, as in tables/sources.json. */
  readonly sources: readonly string[];
  /** Stable code of a remark; its words are rendered from it. */
  readonly note?: string;
}

/** Evidence of one cell where it differs from that of its table. */
export interface CellEvidence {
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** The row. */
  readonly row: string;
  /** The column. */
  readonly column: string;
  /** Level of evidence. */
  readonly level: Evidence;
  /** Ids of the sources, as in tables/sources.json. */
  readonly sources?: readonly string[];
  /** Stable code of a remark; its words are rendered from it. */
  readonly note?: string;
}

/** What is new from an edition on. What an entry does not name stays as before, also inside of an object; the first names everything. */
export interface FromEdition {
  /** First edition for which it holds. */
  readonly from: EditionYear;
}

/** A size in each column, with its place in the edition. */
export interface Limit {
  /** The size in copper. */
  readonly copper: string;
  /** The size in aluminum or copper-clad aluminum. */
  readonly aluminum: string;
  /** Section of the edition. */
  readonly section: string;
}

/** One entry of a set of policies: fields, and the section behind each part. */
export interface PolicyEntry extends FromEdition {
  /** Sections by edition. */
  readonly sections?: Readonly<Record<string, string>>;
  readonly [field: string]: unknown;
}

/** `policies.json` and `rating-policies.json`: sets of policies. */
export interface PoliciesFile {
  /** The newest edition for which every entry was answered. */
  readonly through: EditionYear;
  /** Policies by their id. */
  readonly policies: Readonly<Record<string, readonly PolicyEntry[]>>;
}

/** `roles.json`. */
export interface RolesFile {
  /** The newest edition for which every entry was answered. */
  readonly through: EditionYear;
  /** The roles by their id. */
  readonly roles: Readonly<
    Record<
      string,
      {
        /** Which of the systems it belongs to: fault path, electrode system, or equalizing. */
        readonly purpose: string;
        /** What the editions call it. */
        readonly names: readonly (FromEdition & {
          /** Name for people. */
          readonly name: string;
        })[];
      }
    >
  >;
}

/** One open question of `readings.json`. */
export interface ReadingEntry {
  /** Stable id. */
  readonly id: string;
  /** What the text leaves open. */
  readonly question: string;
  /** Policies by their id. */
  readonly policies: readonly string[];
  /** Editions, by their years. */
  readonly editions: readonly EditionYear[];
  /** The ways to read it. */
  readonly alternatives: readonly {
    /** Stable id. */
    readonly id: string;
    /** What it says, in our own words. */
    readonly says: string;
    /** What the alternative changes in a policy. */
    readonly policy?: Readonly<Record<string, unknown>>;
  }[];
  /** The alternative that is the default. */
  readonly default: string;
  /** Why. */
  readonly reason: string;
  /** Sections by edition. */
  readonly sections: readonly string[];
}

/** `readings.json`. */
export interface ReadingsFile {
  /** The open readings that have a say. */
  readonly readings: readonly ReadingEntry[];
}

/** `sections.json`. */
export interface SectionsFile {
  /** The newest edition for which every entry was answered. */
  readonly through: EditionYear;
  /** Sections by topic. */
  readonly topics: Readonly<
    Record<
      string,
      {
        /** What it says, in our own words. */
        readonly says: string;
        /** The table that the topic is, which is then as sure as the topic. */
        readonly table?: string;
        /** Sections by edition. */
        readonly sections: readonly (FromEdition & {
          /** Section of the edition. */
          readonly section: string;
        })[];
      }
    >
  >;
}

/** `placements.json`. */
export interface PlacementsFile {
  /** The newest edition for which every entry was answered. */
  readonly through: EditionYear;
  /** What is known without asking. */
  readonly facts: Readonly<
    Record<
      string,
      {
        /** What it says, in our own words. */
        readonly says: string;
        /** What it is about. */
        readonly topic: string;
        /** Values by edition. */
        readonly values: readonly (FromEdition & {
          /** The value itself. */
          readonly value: boolean | string;
        })[];
        /** Stable code of a remark; its words are rendered from it. */
        readonly note?: string;
      }
    >
  >;
}

/** One entry of a size that a section names outright; no size where a column has none. */
export interface NamedSizeEntry extends FromEdition {
  /** The size in copper. */
  readonly copper?: string;
  /** The size in aluminum or copper-clad aluminum. */
  readonly aluminum?: string | null;
  /** Section of the edition. */
  readonly section?: string;
}

/** `named-sizes.json`: sizes that sections name outright. */
export interface NamedSizesFile {
  /** The newest edition for which every entry was answered. */
  readonly through: EditionYear;
  /** The sizes. */
  readonly sizes: Readonly<
    Record<
      string,
      {
        /** What it says, in our own words. */
        readonly says: string;
        /** Values by edition. */
        readonly values: readonly NamedSizeEntry[];
      }
    >
  >;
}

/** A file of `evidence/`, generated: how sure the wording behind the file of the same name is, by name and edition. */
export interface EvidenceFile<E extends Known | Readonly<Record<string, Known>> = Known> {
  /** How sure the wording is, and through what. */
  readonly evidence: Readonly<Record<string, Readonly<Record<EditionYear, E>>>>;
}

/** How sure each part of a policy is. */
export type EvidenceByPart = Readonly<Record<string, Known>>;

/** A place in the edition, how surely it was read, and through what. */
export type Cited = readonly [section: string, evidence: Evidence, sources: readonly string[]];

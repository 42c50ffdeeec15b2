/** One entry of the register of sources. */
export interface Source {
  /** Title of the source. */
  readonly title: string;
  /** Who publishes it. */
  readonly publisher: string;
  /** Where it is, if it has an address. */
  readonly url: string | null;
  /** Year, month or day, as far as it is dated. */
  readonly date: string | null;
  /** What kind of source it is. */
  readonly kind:
    | "standard"
    | "official-derivative"
    | "government"
    | "handbook"
    | "textbook"
    | "trade-press"
    | "training"
    | "exam-prep"
    | "question-bank"
    | "homework"
    | "unsigned"
    | "utility"
    | "manufacturer"
    | "forum"
    | "transcription"
    | "software";
  /** The bank, host or author that it belongs to, where the publisher has another name. */
  readonly host?: string;
  /** How it is found where there is no address, or only that of a site; absent where the address leads there. */
  readonly findAgain?: "by-title" | "no";
  /** Id of the source that this one repeats; a copy is no second source. */
  readonly copies: string | null;
  /** Whether the whole was read, or an extract. */
  readonly seen: "whole" | "extract";
  /** Set of a chart, which prints values row by row, as the table does, and answers no question that somebody asked. */
  readonly chart?: true;
  /** A remark. */
  readonly note?: string;
}

/** The register of sources, by id. */
export type Sources = Readonly<Record<string, Source>>;

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
    | "utility"
    | "manufacturer"
    | "forum"
    | "transcription"
    | "software";
  /** Id of the source that this one repeats; a copy is no second source. */
  readonly copies: string | null;
  /** Whether the whole was read, or an extract. */
  readonly seen: "whole" | "extract";
  /** A remark. */
  readonly note?: string;
}

/** The register of sources, by id. */
export type Sources = Readonly<Record<string, Source>>;

import type { CitedEvidence, Code, EditionYear, Readings } from "../edition/index.js";
import type { Marks } from "../input/given-result.js";
import type { Issue } from "../input/input-error.js";
import type { CableTrayResult } from "../roles/equipment-grounding-conductor/cable-tray.js";
import type { SizingResult } from "../rules/result.js";

/** The result of a role, or of a cable tray. */
export type ComparedResult = SizingResult | CableTrayResult;

/** What every role takes: a code, and what it needs beside it. */
export interface CodedInput {
  /** The code that it is held under: an edition, its amendments and readings. */
  readonly code: Code;
}

/** The input of a role without its edition. A code may bring readings and amendments; a year in it is replaced. */
export type InputOfAnyYear<Input extends CodedInput> = Input extends CodedInput
  ? Omit<Input, "code"> & {
      /** Readings and amendments; the edition is set by the comparison. */
      readonly code?: Partial<Code>;
    }
  : never;

/**
 * Why two results differ: another number in a table or in a section (`value`), another rule (`policy`), a text that is open and read
 * differently (`reading`), the same in another place (`place`), another `name`, a text that is known better or worse (`evidence`), or
 * something more to know (`caution`).
 */
export type ChangeKind = "value" | "policy" | "reading" | "place" | "name" | "evidence" | "caution";

/** What of a result changed. */
export type ChangeSubject =
  | "outcome"
  | "quantity"
  | "governs"
  | "required-area"
  | "rule"
  | "sum"
  | "assumed"
  | "assumed-conductor"
  | "row"
  | "row-end"
  | "one-eighth"
  | "threshold"
  | "floor"
  | "cap"
  | "rating-row"
  | "rating-row-end"
  | "increase"
  | "shared"
  | "load"
  | "named-size"
  | "standard-size"
  | "tray-area"
  | "reading"
  | "name"
  | "evidence"
  | "caution";

/** One thing that differs between two results. */
export interface Change {
  /** Why the two differ. */
  readonly kind: ChangeKind;
  /** What of the result changed. */
  readonly what: ChangeSubject;
  /** Which of several: a column, the reason of a floor or cap, a conductor, a reading, the code of a caution. */
  readonly of: string | null;
  /** `null` where there is none. Areas in circular mils. Of a `place` the section. */
  readonly before: string | number | null;
  /** The value after; `null` where there is none. */
  readonly after: string | number | null;
  /** Section before; `null` where there is none. */
  readonly sectionBefore: string | null;
  /** Section after; `null` where there is none. */
  readonly sectionAfter: string | null;
  /** What is known of these places. A change next to `memory` or `carried` may be a gap in what was read. */
  readonly evidenceBefore: CitedEvidence | null;
  /** What is known of the place after. */
  readonly evidenceAfter: CitedEvidence | null;
  /** Of a change that another alternative of an open reading would undo: which. */
  readonly because?: ReadingBehind;
}

/** An alternative under which a change would not be one. */
export interface ReadingBehind {
  /** Id of the reading. */
  readonly reading: keyof Readings;
  /** The edition in which it is open. */
  readonly edition: EditionYear;
  /** The alternative that is in force. */
  readonly chosen: string;
  /** One of the alternatives of the reading. */
  readonly alternative: string;
}

/**
 * What became of the required area. `other-outcome`: required before and not after, refused before and not after, or the other
 * way round.
 */
export type Effect = "first" | "same" | "larger" | "smaller" | "other-outcome";

/** An edition with its result. */
export interface SizedEdition<Result extends ComparedResult> {
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** The result. */
  readonly result: Result;
  readonly refused?: never;
  /** What became of the required area. */
  readonly effect: Effect;
  /** Against the entry before; none for the first. */
  readonly changes: readonly Change[];
}

/** An edition that refuses the input, for example because it does not know a busbar. */
export interface RefusedEdition {
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  readonly result?: never;
  /** What is wrong with the input under this edition; absent where there is a result. */
  readonly refused: readonly Issue[];
  /** What became of the required area. */
  readonly effect: Effect;
  /** What changed against the one before. */
  readonly changes: readonly Change[];
}

/** One edition among several. */
export type EditionEntry<Result extends ComparedResult = ComparedResult> =
  | SizedEdition<Result>
  | RefusedEdition;

/** Editions side by side, in the order given. Plain JSON. */
export type EditionComparison<Result extends ComparedResult = ComparedResult> =
  readonly EditionEntry<Result>[];

/** A result under another alternative of an open reading. */
export interface OtherwiseRead<Result extends ComparedResult> {
  /** Id of the reading. */
  readonly reading: keyof Readings;
  /** The alternative that is in force. */
  readonly chosen: string;
  /** One of the alternatives of the reading. */
  readonly alternative: string;
  /** The result, with its steps. */
  readonly result: Result;
  /** What became of the required area. */
  readonly effect: Effect;
  /** Against the result under the code as given. */
  readonly changes: readonly Change[];
}

/** One input under every open reading that has a say in its result. Plain JSON. */
export interface ReadingComparison<Result extends ComparedResult = ComparedResult> {
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** Under the code as given. */
  readonly result: Result;
  /** In the order in which the result names them; one reading changed at a time. */
  readonly otherwise: readonly OtherwiseRead<Result>[];
}

/** A result under an amendment. */
export interface SizedAmendment<Result extends ComparedResult> {
  /** Jurisdiction and section of the amendment. */
  readonly amendment: string;
  /** The result, with its steps. */
  readonly result: Result;
  readonly refused?: never;
  /** What became of the required area. */
  readonly effect: Effect;
  /** Against the edition as printed. */
  readonly changes: readonly Change[];
}

/** An amendment that does not stand without the others, for example because it alone leaves a table out of order. */
export interface RefusedAmendment {
  /** Jurisdiction and section of the amendment. */
  readonly amendment: string;
  readonly result?: never;
  /** What is wrong with the input under this amendment alone. */
  readonly refused: readonly Issue[];
  /** What became of the required area. */
  readonly effect: Effect;
  /** Against the edition as printed. */
  readonly changes: readonly Change[];
}

/** One amendment among several. */
export type AmendmentEntry<Result extends ComparedResult = ComparedResult> =
  | SizedAmendment<Result>
  | RefusedAmendment;

/** One input under an edition as printed, under each of its amendments alone, and under all of them together. Plain JSON. */
export interface AmendmentComparison<Result extends ComparedResult = ComparedResult> {
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** The result under the edition as printed. */
  readonly asPrinted: Result;
  /** Under each amendment alone. */
  readonly each: readonly AmendmentEntry<Result>[];
  /** Under all amendments together. */
  readonly all: Omit<SizedAmendment<Result>, "amendment" | "refused">;
}

/** By what a comparison of readings is known. */
export const readingComparisonMarks: Marks<ReadingComparison> = {
  edition: "text",
  result: "object",
  otherwise: "list",
};

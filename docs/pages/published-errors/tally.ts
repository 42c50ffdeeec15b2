import { areaOf } from "bondmil";
import {
  type Corpus,
  type Dispute,
  type Entry,
  type Expectation,
  entriesOf,
  type Mistake,
} from "../../../corpus/tools/runner/model.js";

/** A published answer that was held against the text of the code. */
export interface Disputed extends Entry {
  readonly dispute: Dispute;
}

/** A published answer that contradicts the code. */
export interface PublishedError extends Disputed {
  readonly mistake: Mistake;
}

/** The published answers of a corpus, sorted by what the text makes of them. */
export interface Tally {
  /** Every answer that a source of its own prints: neither what we derived nor what repeats another source, nor the guess of somebody who asks. */
  readonly answers: readonly Entry[];
  readonly errors: readonly PublishedError[];
  /** Wrong answers that only somebody who asks gives; not among the errors. */
  readonly asked: readonly PublishedError[];
  /** Answers that the text can be read for and against. */
  readonly open: readonly Disputed[];
}

/** Which way an answer is wrong; `other` where one of the two is no size. */
export type Direction = "smaller" | "larger" | "other";

/** Sorts the published answers of a corpus. */
export function tallyOf(corpus: Corpus): Tally {
  const found = entriesOf(corpus).filter(
    ({ source, check }) =>
      (check.standing === "cited" || check.standing === "disputed") &&
      (corpus.sources[source]?.copies ?? null) === null,
  );
  const answers = found.filter(({ check }) => check.voice !== "asker");
  return {
    answers,
    errors: errorsIn(answers),
    asked: errorsIn(found.filter(({ check }) => check.voice === "asker")),
    open: disputedIn(answers).filter(({ dispute }) => dispute.mistake === null),
  };
}

function disputedIn(entries: readonly Entry[]): readonly Disputed[] {
  return entries.flatMap((entry): readonly Disputed[] => {
    const { dispute } = entry.check;
    return dispute === undefined ? [] : [{ ...entry, dispute }];
  });
}

function errorsIn(entries: readonly Entry[]): readonly PublishedError[] {
  return disputedIn(entries).flatMap((one): readonly PublishedError[] => {
    const { mistake } = one.dispute;
    return mistake === null ? [] : [{ ...one, mistake }];
  });
}

/** Whether a published answer is smaller or larger than what the text requires. */
export function directionOf({ check, dispute }: Disputed): Direction {
  const published = areaIn(check.expect);
  const byText = areaIn(dispute.expectByText);
  if (published === null || byText === null || published === byText) return "other";
  return published < byText ? "smaller" : "larger";
}

function areaIn(expected: Expectation): number | null {
  return "size" in expected ? areaOf(expected.size) : null;
}

/** Number of different sources among some answers. */
export function countSources(entries: readonly Entry[]): number {
  return new Set(entries.map(({ source }) => source)).size;
}

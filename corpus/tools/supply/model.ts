import type { EditionYear } from "../../../src/index.js";
import type { Standing } from "../runner/model.js";

/** A number that a source prints rounded: it may be off by no more than that rounding. */
interface Rounded {
  readonly printed: number;
  readonly within: number;
}

/** A list in which each of these is met by some item. */
interface Some {
  readonly some: readonly Expected[];
}

/** What one place of an answer is to be; members that are left out are not compared. */
export type Expected =
  | string
  | number
  | boolean
  | null
  | readonly Expected[]
  | Rounded
  | Some
  | { readonly [member: string]: Expected };

/** Members of an answer. */
export type ExpectedAnswer = Readonly<Record<string, Expected>>;

/** Why what a source says is not taken as it stands. */
interface Dispute {
  readonly section: string;
  readonly reason: string;
  /** What the text requires. */
  readonly expectByText: ExpectedAnswer;
}

/** A published answer to a question on the way to supply conductors. */
export interface SupplyCheck {
  readonly id: string;
  /** Edition that the source names or is dated by; `null` if it does not say. */
  readonly stated: EditionYear | null;
  /** Editions under which the answer is expected; the stated one alone where there is one. */
  readonly holds: readonly EditionYear[];
  /** The question, but for the edition. */
  readonly input: Readonly<Record<string, unknown>>;
  /** What the source says. */
  readonly expect: ExpectedAnswer;
  readonly locator: string;
  readonly standing: Standing;
  /** What the input has and the source does not say. */
  readonly assumed?: readonly string[];
  readonly note?: string;
  readonly dispute?: Dispute;
}

/** The checks of one question, grouped by source. */
export interface SupplyCheckFile {
  /** The question. */
  readonly id: string;
  readonly topic: string;
  readonly groups: readonly { readonly source: string; readonly checks: readonly SupplyCheck[] }[];
}

/** A check with its question and its source. */
export interface SupplyEntry {
  readonly question: string;
  readonly source: string;
  readonly check: SupplyCheck;
}

/** Every check, in the order of the files. */
export function supplyEntriesOf(files: readonly SupplyCheckFile[]): readonly SupplyEntry[] {
  return files.flatMap(({ id: question, groups }) =>
    groups.flatMap(({ source, checks }) => checks.map((check) => ({ question, source, check }))),
  );
}

/** What a check is judged by: what the source says, or, where it is disputed, what the text requires. */
export function expectedOf({ expect, dispute }: SupplyCheck): ExpectedAnswer {
  return dispute?.expectByText ?? expect;
}

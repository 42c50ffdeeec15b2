import type { EditionYear, Role } from "../../src/index.js";

/** What a check expects, as its schema has it. */
export type Expectation =
  | { readonly size: string; readonly requiredArea?: number }
  | { readonly outcome: string; readonly requiredArea?: number }
  | { readonly error: string };

/** Figures that a source prints on its way to the answer, in circular mils. */
export interface Figures {
  readonly sum?: number;
  readonly assumedSum?: number;
  readonly requiredArea?: number;
}

/** How far a check counts as evidence. */
type Standing = "cited" | "arithmetic" | "common-practice" | "memory" | "disputed";

/** Input of a role without its code; the schema knows its shape, role by role. */
export type CheckInput = Readonly<Record<string, unknown>>;

/** One published answer. */
export interface Check {
  readonly id: string;
  readonly stated: EditionYear | null;
  readonly holds: readonly EditionYear[];
  readonly flags: readonly string[];
  readonly input: CheckInput;
  readonly expect: Expectation;
  readonly figures?: Figures;
  readonly working?: string;
  readonly locator: string;
  readonly standing: Standing;
  readonly note?: string;
  readonly dispute?: Dispute;
}

/** Why a source's answer is not taken as it stands. */
interface Dispute {
  readonly section: string;
  readonly readings: readonly string[];
  readonly reason: string;
  readonly expectByText: Expectation;
}

/** The checks of one role. */
export interface CheckFile {
  readonly role: Role;
  readonly flags: Readonly<
    Record<string, { readonly kind: string; readonly why: string; readonly consequence: string }>
  >;
  readonly groups: readonly { readonly source: string; readonly checks: readonly Check[] }[];
}

/** One entry of the register of sources. */
export interface Source {
  readonly title: string;
  readonly kind: string;
  readonly copies: string | null;
}

/** The register of sources, by id. */
export type Sources = Readonly<Record<string, Source>>;

/** A corpus that passed its validation. */
export interface Corpus {
  readonly files: readonly CheckFile[];
  readonly sources: Sources;
}

/** A check with the role and the source of its place in the files. */
export interface Entry {
  readonly role: Role;
  readonly source: string;
  readonly check: Check;
}

/** Every check of a corpus, in the order of the files. */
export function entriesOf(corpus: Corpus): readonly Entry[] {
  return corpus.files.flatMap(({ role, groups }) =>
    groups.flatMap(({ source, checks }) => checks.map((check) => ({ role, source, check }))),
  );
}

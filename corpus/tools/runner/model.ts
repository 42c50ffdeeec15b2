import type { ConductorSize, EditionYear, Role } from "../../../src/index.js";
import type { Sources } from "../../../tables/tools/source.js";
import type { CheckInputs } from "./check-input.js";

/** What a check expects: a size, an area without one, no conductor, a limit, a floor, or a refusal with this code. Areas in circular mils. */
export type Expectation =
  | {
      /** Trade size of the conductor. */
      readonly size: ConductorSize;
      /** Circular mils required. */
      readonly requiredArea?: number;
    }
  | {
      /** Outcome that is expected where no size is. */
      readonly outcome: "area-only";
      /** Circular mils required. */
      readonly requiredArea: number;
    }
  | {
      /** Outcome that is expected where no size is. */
      readonly outcome: "not-required" | "outside-scope";
      readonly requiredArea?: never;
    }
  | {
      /** A limit: the conductor is not required to be larger. */
      readonly notLargerThan: ConductorSize;
    }
  | {
      /** A floor: the conductor is never smaller. */
      readonly notSmallerThan: ConductorSize;
    }
  | {
      /** Code of the error that is expected. */
      readonly error: string;
    };

/** Figures that a source prints on its way to the answer, in circular mils. */
export interface Figures {
  /** Sum of the installed conductors. */
  readonly sum?: number;
  /** Sum of the conductors of the jumper's material that are assumed in place of the installed ones. */
  readonly assumedSum?: number;
  /** Smallest permitted area, before the step to a standard size. */
  readonly requiredArea?: number;
}

/**
 * How far a check can count as evidence: `cited` (a source outside the code's own tables states it), `arithmetic` (follows from a cited
 * rule, or hangs on what we assumed), `common-practice` (no source), `memory`, `disputed` (the source contradicts the text, or the text has two readings).
 *
 * @example
 * ```ts
 * import { standings } from "bondmil/corpus";
 * standings[0]; // => "cited"
 * ```
 */
export const standings = ["cited", "arithmetic", "common-practice", "memory", "disputed"] as const;

/** One member of {@link standings}. */
export type Standing = (typeof standings)[number];

/**
 * Who says it; the schema of the checks has a sentence on each.
 *
 * @example
 * ```ts
 * import { voices } from "bondmil/corpus";
 * voices[0]; // => "author"
 * ```
 */
export const voices = [
  "author",
  "keyed-answer",
  "reply",
  "asker",
  "generated-text",
  "code",
  "unknown",
] as const;

/** One member of {@link voices}. */
export type Voice = (typeof voices)[number];

/**
 * What went wrong in a published answer; the schema of the checks has a sentence on each.
 *
 * @example
 * ```ts
 * import { mistakes } from "bondmil/corpus";
 * mistakes.includes("wrong-row"); // => true
 * ```
 */
export const mistakes = [
  "wrong-row",
  "wrong-column",
  "wrong-edition",
  "rating-for-conductors",
  "conductors-for-rating",
  "wrong-conductors",
  "one-raceway-or-all",
  "end-of-table",
  "limit-left-out",
  "limit-as-minimum",
  "rule-of-another-conductor",
  "material-converted",
  "increase-left-out",
  "rounded-early",
  "tolerance",
] as const;

/** One member of {@link mistakes}. */
export type Mistake = (typeof mistakes)[number];

/** One published answer. */
export interface Check<R extends Role = Role> {
  /** In words, unique over all files, never reused. */
  readonly id: string;
  /** Edition that the source names or is dated by; `null` if it does not say. */
  readonly stated: EditionYear | null;
  /** Editions under which the answer is expected; the stated one alone where there is one. */
  readonly holds: readonly EditionYear[];
  /** Those of them whose text was not read: the answer is that of the edition before. */
  readonly carried?: readonly EditionYear[];
  /** Keys of the file's dictionary of flags. */
  readonly flags: readonly string[];
  /** The input. */
  readonly input: CheckInputs[R];
  /** What the source says. */
  readonly expect: Expectation;
  /** Intermediate figures. */
  readonly figures?: Figures;
  /** The source's own arithmetic. */
  readonly working?: string;
  /** Where in the source it stands. */
  readonly locator: string;
  /** What stands behind the expectation. */
  readonly standing: Standing;
  /** Who says it. */
  readonly voice: Voice;
  /** Paths in the input of what we added because the source does not say it; empty where the source gives all of it. */
  readonly assumed: readonly string[];
  /** Rating or load in amperes that the source gives where the conductors in `assumed` are ours. */
  readonly amperes?: number;
  /** Stable code of a remark; its words are rendered from it. */
  readonly note?: string;
  /** Present where the standing is `disputed`. */
  readonly dispute?: Dispute;
}

/** Why a source's answer is not taken as it stands. */
export interface Dispute {
  /** Section or table of the code. */
  readonly section: string;
  /** What the source did wrong; `null` where it is not wrong and the text can be read in two ways. */
  readonly mistake: Mistake | null;
  /** First what the source did, then what the text says. */
  readonly readings: readonly string[];
  /** Why the source and the text differ. */
  readonly reason: string;
  /** What the text of the code requires. */
  readonly expectByText: Expectation;
}

/** Why a check exists, and what a user would get wrong if it failed. */
export interface Flag {
  /** Tells the members of the union apart. */
  readonly kind:
    | "basic"
    | "boundary"
    | "threshold"
    | "parallel-sets"
    | "material"
    | "cap"
    | "edition-change"
    | "known-slip"
    | "ambiguous-text"
    | "outside-table";
  /** Why the flag exists. */
  readonly why: string;
  /** What a user would get wrong. */
  readonly consequence: string;
}

/** The checks of one source. */
export interface CheckGroup<R extends Role = Role> {
  /** An id in the register of sources. */
  readonly source: string;
  /** The checks of one source. */
  readonly checks: readonly Check<R>[];
}

/** The checks of one role, as its file has them. */
export interface CheckFile<R extends Role = Role> {
  /** The schema that the file keeps. */
  readonly $schema: "./schema/checks.schema.json";
  /** Version of the format. */
  readonly version: 1;
  /** What the conductor is there for. */
  readonly role: R;
  /** Number of checks in the file, so that one that was cut off shows. */
  readonly count: number;
  /** The dictionary of flags. */
  readonly flags: Readonly<Record<string, Flag>>;
  /** Ids of checks that were withdrawn, each with the reason; no check gets one of them again. */
  readonly withdrawn?: Readonly<Record<string, string>>;
  /** Checks grouped by source. */
  readonly groups: readonly CheckGroup<R>[];
}

/** The files of all roles. */
export type CheckFiles = { readonly [R in Role]: CheckFile<R> };

/** A corpus that passed its validation. */
export interface Corpus {
  readonly files: readonly CheckFile[];
  readonly sources: Sources;
}

/** A check with the role and the source of its place in the files. */
export interface Entry {
  /** What the conductor is there for. */
  readonly role: Role;
  /** The source. */
  readonly source: string;
  /** The check. */
  readonly check: Check;
}

/** Every check of a corpus, in the order of the files. */
export function entriesOf({ files }: Pick<Corpus, "files">): readonly Entry[] {
  return files.flatMap(({ role, groups }) =>
    groups.flatMap(({ source, checks }) => checks.map((check) => ({ role, source, check }))),
  );
}

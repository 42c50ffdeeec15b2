import type { EditionYear, Role } from "../../../src/index.js";
import { mostItems } from "../../../src/input/limits.js";
import type { CheckInputs } from "./check-input.js";

/**
 * The question to an implementation: the conductor of a role, under an edition, for an input. No local amendment applies, every open reading
 * has its default, the conductor is a wire, and conductors of another material are matched in the 75 C column unless the input tells.
 */
export type Question = { readonly [R in Role]: QuestionOf<R> }[Role];

/** A question about one role. */
export interface QuestionOf<R extends Role> {
  /** What the conductor is there for. */
  readonly role: R;
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** The input. */
  readonly input: CheckInputs[R];
}

/**
 * What an implementation shows beside its answer, in circular mils. A figure that it leaves out is not compared, and the row says so;
 * `null` claims that there is none, for example no assumed conductors.
 */
export interface ShownFigures {
  /** Circular mils of the sum; `null` where none is shown. */
  readonly sum?: number | null;
  /** Circular mils of the assumed conductors; `null` where none is shown. */
  readonly assumedSum?: number | null;
  /** Circular mils required. */
  readonly requiredArea?: number | null;
}

/** One conductor of a size, or several where a quantity is given; several never pass for one. */
export interface SizeAnswer extends ShownFigures {
  /** Trade size of the conductor. */
  readonly size: string;
  /** How many such conductors. */
  readonly quantity?: number;
}

/** An area without a size, no conductor, or a question that is refused by name. */
export interface OutcomeAnswer extends ShownFigures {
  /** A size, an area alone, or that none is required. */
  readonly outcome: "area-only" | "not-required" | "outside-scope";
}

/** A refusal, with the codes of everything that was found wrong. */
export interface RefusedAnswer {
  /** Codes of what is wrong. */
  readonly errors: readonly string[];
}

/** What an implementation answers, in the words of the corpus; `null` where it does not size such a conductor. */
export type Answer = SizeAnswer | OutcomeAnswer | RefusedAnswer | null;

/** What is put to the test: a pure function from a question to an answer. */
export type Implementation = (question: Question) => Answer;

/** An answer, or what was thrown instead of one. */
export type Given =
  | Answer
  | {
      /** What the implementation threw. */
      readonly thrown: string;
    };

/** Whether a value is an answer in the words of the corpus, or what was thrown instead of one. */
export function isGiven(value: unknown): value is Given {
  if (value === null) return true;
  if (typeof value !== "object") return false;
  const { size, outcome, errors, thrown } = value as Readonly<Record<string, unknown>>;
  if ([size, outcome, thrown].some((one) => typeof one === "string")) return true;
  // A list that only says to be long never ends.
  return (
    Array.isArray(errors) && errors.length <= mostItems && errors.every((one) => typeof one === "string")
  );
}

/**
 * Asks an implementation; what it throws, or gives in other words, is an answer too, so that one check never stops the others.
 */
export function ask(implementation: Implementation, question: Question): Given {
  try {
    const given: unknown = implementation(question);
    return isGiven(given) ? given : { thrown: `no answer: ${typeof given}` };
  } catch (error) {
    return { thrown: String(error) };
  }
}

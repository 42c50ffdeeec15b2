import { type Code, InputError } from "../../src/index.js";
import type { CheckedResult, Library } from "./library.js";
import type { Entry } from "./model.js";

/** What a library made of a check, in the words of the corpus. */
export type Answer =
  | {
      readonly kind: "result";
      readonly outcome: string;
      readonly size: string | null;
      readonly requiredArea: number;
      readonly sum: number | null;
      readonly assumedSum: number | null;
    }
  | { readonly kind: "refused"; readonly codes: readonly string[] }
  | { readonly kind: "crashed"; readonly message: string };

/** Asks a library; whatever it throws is an answer too, so that one check never stops the others. */
export function ask(library: Library, { role, check }: Entry, code: Code): Answer {
  try {
    return answerOf(library[role](code, check.input));
  } catch (error) {
    return error instanceof InputError
      ? { kind: "refused", codes: error.issues.map((issue) => issue.code) }
      : { kind: "crashed", message: String(error) };
  }
}

function answerOf({ outcome, requiredArea, steps }: CheckedResult): Answer {
  return {
    kind: "result",
    outcome: outcome.kind,
    // A size alone means one conductor of it; several must not pass for it.
    size:
      outcome.kind !== "conductor"
        ? null
        : outcome.quantity === 1
          ? outcome.size
          : `${outcome.quantity} x ${outcome.size}`,
    requiredArea,
    sum: steps.find((step) => step.kind === "sum")?.area ?? null,
    assumedSum: steps.find((step) => step.kind === "assumed")?.area ?? null,
  };
}

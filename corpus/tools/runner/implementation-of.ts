import type { AnyRole, Code, InputError, Role, roles, Sizing, SizingResult } from "../../../src/index.js";
import { checkBesides, checkLibrary } from "../read-arguments.js";
import type { Answer, Implementation, QuestionOf } from "./answer.js";

/** What of the package `bondmil` the checks are put to. */
export interface Library {
  /** The register of roles. */
  readonly roles: typeof roles;
  /** Sizes one of them. */
  size<I, R>(role: Sizing<I, R>, input: I): R;
}

/** What the library is to hold besides the edition of a check. */
export type Besides = Pick<Code, "amendments" | "readings">;

/** The part of a result that a check speaks of. */
type CheckedResult = Pick<SizingResult, "outcome" | "requiredArea" | "steps">;

/**
 * This library as an implementation that the corpus can be put to: as it is, or with a value changed or a text read otherwise, to see who
 * notices. What an edition refuses every check under it misses, so try amendments on the edition with `amend` of `bondmil` before.
 *
 * @param library - the package, or its register of roles and `size`
 * @param besides - amendments and readings that are to hold under every edition
 * @returns what {@link runCorpus} asks
 * @throws `InputError` of `bondmil` naming what is missing, or what holds neither amendments nor readings
 *
 * @example
 * ```ts
 * import * as bondmil from "bondmil";
 * import { implementationOf, runCorpus } from "bondmil/corpus";
 *
 * const rows = runCorpus(implementationOf(bondmil), { role: "main-bonding-jumper" });
 * rows.filter(({ verdict }) => verdict !== "met"); // => []
 * ```
 */
export function implementationOf(library: Library, besides: Besides = {}): Implementation {
  checkLibrary(library);
  checkBesides(besides);
  return (question) => {
    try {
      return answerOf(resultOf(library, besides, question));
    } catch (error) {
      if (!isRefusal(error)) throw error;
      return { errors: error.issues.map(({ code }) => code) };
    }
  };
}

/** What the library throws at bad input, known by its form: the functions may come from another copy of the package. */
function isRefusal(error: unknown): error is InputError {
  return error instanceof Error && "issues" in error && Array.isArray(error.issues);
}

function resultOf<R extends Role>(
  library: Library,
  besides: Besides,
  { role, edition, input }: QuestionOf<R>,
): CheckedResult {
  const code: Code = { ...besides, year: edition };
  // The compiler cannot see that the role and its input belong together.
  const asked: AnyRole = library.roles[role];
  const result: CheckedResult = library.size(asked, { ...input, code });
  return role === "electrode-raceway-bonding-jumper" ? atOneEnd(result) : result;
}

function answerOf({ outcome, requiredArea, steps }: CheckedResult): Answer {
  const figures = {
    requiredArea,
    sum: steps.find((step) => step.kind === "sum")?.area ?? null,
    assumedSum: steps.find((step) => step.kind === "assumed")?.area ?? null,
  };
  return outcome.kind === "conductor"
    ? { size: outcome.size, quantity: outcome.quantity, ...figures }
    : { outcome: outcome.kind, ...figures };
}

/** A raceway is bonded at both ends; a check speaks of the jumper at one of them. */
function atOneEnd(result: CheckedResult): CheckedResult {
  const { outcome } = result;
  return outcome.kind === "conductor" && outcome.quantity === 2
    ? { ...result, outcome: { ...outcome, quantity: 1 } }
    : result;
}

import {
  type AnyRole,
  type Code,
  InputError,
  type Role,
  roles,
  type SizingResult,
  size,
} from "../../../src/index.js";
import type { QuestionOf } from "../runner/answer.js";

/** What another reading of an open sentence gives. */
export interface Acceptable {
  /** Id in `tables/readings.json`. */
  readonly reading: string;
  /** The alternative that gives it. */
  readonly alternative: string;
  /** What it gives, in the forms of an expectation. */
  readonly expected: object;
}

/** What the other alternatives of every reading that has a say in a question give, one reading at a time. */
export function otherReadings<R extends Role>({
  role,
  edition,
  input,
}: QuestionOf<R>): readonly Acceptable[] {
  // The compiler cannot see that the role and its input belong together.
  const asked: AnyRole = roles[role];
  const under = (readings: Code["readings"] = {}): SizingResult =>
    size(asked, { ...input, code: { year: edition, readings } });
  try {
    return under().readings.flatMap(({ id, otherwise }) =>
      otherwise.map(({ alternative }) => {
        const { outcome, requiredArea } = under({ [id]: alternative });
        return { reading: id, alternative, expected: expectedOf(outcome, requiredArea) };
      }),
    );
  } catch (error) {
    if (error instanceof InputError) return [];
    throw error;
  }
}

function expectedOf(outcome: SizingResult["outcome"], requiredArea: SizingResult["requiredArea"]): object {
  if (outcome.kind === "conductor") return { size: outcome.size };
  return outcome.kind === "area-only" ? { outcome: outcome.kind, requiredArea } : { outcome: outcome.kind };
}

import { type Asking, withReading } from "./ask.js";
import { changesBetween, effectOf } from "./changes.js";
import type { CodedInput, ComparedResult, OtherwiseRead, ReadingComparison } from "./comparison.js";
import type { ReadingsRequest } from "./shape.generated.js";

/** What a role takes, to be compared under the alternatives of the open readings. */
export interface OverReadings<Input extends CodedInput> extends ReadingsRequest {
  /** What the role takes. */
  readonly input: Input;
}

/** Compares one input under every alternative of the open readings that its result names, one at a time. */
export function overReadings<Input extends CodedInput, Result extends ComparedResult>(
  ask: Asking<Input, Result>,
  { input }: OverReadings<Input>,
): ReadingComparison<Result> {
  const result = ask(input);
  const open = "readings" in result ? result.readings : [];
  const otherwise = open.flatMap(({ id: reading, chosen, otherwise: others }) =>
    others.map(({ alternative }): OtherwiseRead<Result> => {
      const other = ask(withReading<Input>(input, reading, alternative));
      return {
        reading,
        chosen,
        alternative,
        result: other,
        effect: effectOf(result, other),
        changes: changesBetween(result, other),
      };
    }),
  );
  return { edition: result.edition, result, otherwise };
}

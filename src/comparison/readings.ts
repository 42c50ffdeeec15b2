import { checkRequest, resultOf, withReading } from "./ask.js";
import { changesBetween, effectOf } from "./changes.js";
import type { CodedInput, ComparedResult, OtherwiseRead, ReadingComparison } from "./comparison.js";

/** One input for one sizing function, to be held under every open reading. */
export interface ReadingsRequest<Input extends CodedInput, Result extends ComparedResult> {
  /** A sizing function of the library. */
  readonly size: (input: Input) => Result;
  readonly input: NoInfer<Input>;
}

/**
 * Holds one input under every alternative of the open readings that its result names, one at a time: the whole results side by side,
 * and what each changes in the one under the code as given.
 *
 * @param request - a sizing function and its input
 * @returns the result under the code as given, and one for each other alternative; plain JSON, areas in circular mils
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { compareReadings, sizeMainBondingJumper } from "bondmil";
 * const { result, otherwise } = compareReadings({
 *   size: sizeMainBondingJumper,
 *   input: {
 *     code: { year: "2020" },
 *     supply: { sets: [{ count: 1, size: "10 AWG", material: "copper" }] },
 *     jumper: { material: "copper" },
 *   },
 * });
 * result.requiredArea; // => 10380
 * otherwise.map((one) => [one.reading, one.alternative, one.result.requiredArea, one.effect]);
 * // => [["cap-on-small-supplies", "large-supplies-only", 16510, "larger"]]
 * ```
 */
export function compareReadings<Input extends CodedInput, Result extends ComparedResult>(
  request: ReadingsRequest<Input, Result>,
): ReadingComparison<Result> {
  checkRequest(request, ["size", "input"], () => {});
  const { size, input } = request;
  const result = resultOf(size, input);
  const open = "readings" in result ? result.readings : [];
  const otherwise = open.flatMap(({ id: reading, chosen, otherwise: others }) =>
    others.map(({ alternative }): OtherwiseRead<Result> => {
      const other = resultOf(size, withReading<Input>(input, reading, alternative));
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

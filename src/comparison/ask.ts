import type { Readings } from "../edition/index.js";
import { InputError, type Issue } from "../input/input-error.js";
import type { CodedInput, ComparedResult } from "./comparison.js";

/** One input put to one role. */
export type Asking<Input extends CodedInput, Result extends ComparedResult> = (input: Input) => Result;

/** What a role gives under an edition: a result, or why it refuses. */
export type Answer<Result> =
  | { readonly result: Result; readonly refused?: never }
  | { readonly result?: never; readonly refused: readonly Issue[] };

/** Puts an input to a role; what it refuses is kept too. Anything else that it throws is passed on. */
export function answerOf<Input extends CodedInput, Result extends ComparedResult>(
  ask: Asking<Input, Result>,
  input: Input,
): Answer<Result> {
  try {
    return { result: ask(input) };
  } catch (error) {
    if (error instanceof InputError) return { refused: error.issues };
    throw error;
  }
}

/** The same input under other readings. */
export function withReading<Input extends CodedInput>(
  input: Input,
  reading: keyof Readings,
  alternative: string,
): Input {
  const { code } = input;
  return { ...input, code: { ...code, readings: { ...code.readings, [reading]: alternative } } };
}

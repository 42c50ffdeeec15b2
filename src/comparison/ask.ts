import { type EditionYear, editionYears, type Readings } from "../edition/index.js";
import { InputError, type Issue } from "../input/input-error.js";
import { member, optional, type Reader, readList, readOneOf } from "../input/reader.js";
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

/** Editions side by side; one may be named again. */
const mostEditions = 20;

/** Checks the editions of a request. */
export function readEditions(at: Reader): readonly EditionYear[] | undefined {
  return optional(member(at, "editions"), (years) =>
    readList(years, (one) => readOneOf(one, editionYears), mostEditions),
  );
}

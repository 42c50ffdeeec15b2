import { type EditionYear, editionYears, type Readings } from "../edition/index.js";
import { useResult } from "../input/given-result.js";
import { InputError, type Issue } from "../input/input-error.js";
import {
  member,
  optional,
  type Reader,
  readAll,
  readList,
  readObject,
  readOneOf,
  refuse,
} from "../input/reader.js";
import { type CodedInput, type ComparedResult, comparedResultMarks } from "./comparison.js";

/** A sizing function, as its caller passes it in. */
export type Sizing<Input extends CodedInput, Result extends ComparedResult> = (input: Input) => Result;

/** What an edition answers. */
export type Answer<Result> =
  | { readonly result: Result; readonly refused?: never }
  | { readonly result?: never; readonly refused: readonly Issue[] };

/** Asks a sizing function; what it refuses is an answer too. Anything else that it throws is passed on. */
export function ask<Input extends CodedInput, Result extends ComparedResult>(
  size: Sizing<Input, Result>,
  input: Input,
): Answer<Result> {
  try {
    return { result: resultOf(size, input) };
  } catch (error) {
    if (error instanceof InputError) return { refused: error.issues };
    throw error;
  }
}

/** What a sizing function gives; one that gives something else is no sizing function. */
export function resultOf<Input extends CodedInput, Result extends ComparedResult>(
  size: Sizing<Input, Result>,
  input: Input,
): Result {
  return useResult<ComparedResult, Result>(
    size(input),
    "a sizing function",
    comparedResultMarks,
    (result) => result as Result,
  );
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

/** Refuses a request that no sizing function could be asked with; the function itself checks the rest of its input. */
export function checkRequest(request: object, keys: readonly string[], check: (at: Reader) => void): void {
  readAll(request, (at) => {
    if (!readObject(at, keys)) return undefined;
    if (typeof member(at, "size").value !== "function") {
      refuse(
        member(at, "size"),
        member(at, "size").value === undefined ? "missing" : "wrong-type",
        "a sizing function",
        "pass for example sizeMainBondingJumper",
      );
    }
    check(at);
    return request;
  });
}

/** Editions side by side; one may be named again. */
const mostYears = 20;

/** Checks the editions of a request. */
export function readYears(at: Reader): readonly EditionYear[] | undefined {
  return optional(member(at, "years"), (years) =>
    readList(years, (one) => readOneOf(one, editionYears), mostYears),
  );
}

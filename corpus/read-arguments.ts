import { editionYears, roles } from "../src/index.js";
import {
  member,
  optional,
  type Reader,
  readAll,
  readName,
  readObject,
  readOneOf,
  refuse,
} from "../src/input/reader.js";
import { withOneError } from "./one-error.js";
import { isGiven } from "./runner/answer.js";
import { standings } from "./runner/model.js";

/** Checks what a run is narrowed to. */
export function checkFilter(filter: unknown): void {
  withOneError(() => readAll(filter, (at) => (isFilter(at) ? true : undefined)));
}

function isFilter(at: Reader): boolean {
  if (!readObject(at, ["role", "source", "flag", "standing", "edition"])) return false;
  optional(member(at, "role"), (one) => readOneOf(one, roles));
  optional(member(at, "source"), (one) => readName(one, "a source"));
  optional(member(at, "flag"), (one) => readName(one, "a flag"));
  optional(member(at, "standing"), (one) => readOneOf(one, standings));
  optional(member(at, "edition"), (one) => readOneOf(one, editionYears));
  return true;
}

/** Checks members that are to be functions. */
export function checkFunctions(given: unknown, names: readonly string[]): void {
  withOneError(() =>
    readAll(given, (at) => {
      if (typeof given !== "object" || given === null) {
        return refuse(at, "wrong-type", `an object with ${names.join(", ")}`, "give the package itself");
      }
      for (const name of names) {
        const value: unknown = Reflect.get(given, name);
        const place: Reader = { ...at, value, path: name };
        if (typeof value === "function") continue;
        refuse(place, value === undefined ? "missing" : "wrong-type", "a function", "give this function");
      }
      return true;
    }),
  );
}

/** Checks an answer that is to be judged. */
export function checkGiven(given: unknown): void {
  const expected = "null, or an object with size, outcome, errors or thrown";
  withOneError(() =>
    readAll({ given }, (at) =>
      isGiven(given)
        ? true
        : refuse(member(at, "given"), "wrong-type", expected, "give one of these answers"),
    ),
  );
}

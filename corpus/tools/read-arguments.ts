import { editionYears, roleIds } from "../../src/index.js";
import {
  member,
  optional,
  placeIn,
  type Reader,
  readAll,
  readName,
  readObject,
  readOneOf,
  refuse,
} from "../../src/input/reader.js";
import { withOneError } from "../../tables/tools/one-error.js";
import { isGiven } from "./runner/answer.js";
import { standings, voices } from "./runner/model.js";
import { assumedKinds } from "./runner/select.js";

/** Checks what a run is narrowed to. */
export function checkFilter(filter: unknown): void {
  withOneError(() => readAll(filter, (at) => (isFilter(at) ? true : undefined)));
}

function isFilter(at: Reader): boolean {
  if (!readObject(at, ["role", "source", "flag", "standing", "voice", "assumed", "edition"])) return false;
  optional(member(at, "role"), (one) => readOneOf(one, roleIds));
  optional(member(at, "source"), (one) => readName(one, "a source"));
  optional(member(at, "flag"), (one) => readName(one, "a flag"));
  optional(member(at, "standing"), (one) => readOneOf(one, standings));
  optional(member(at, "voice"), (one) => readOneOf(one, voices));
  optional(member(at, "assumed"), (one) => readOneOf(one, assumedKinds));
  optional(member(at, "edition"), (one) => readOneOf(one, editionYears));
  return true;
}

/** Checks the package, of which the register of roles and a function are used. */
export function checkLibrary(given: unknown): void {
  const kinds = { roles: "object", size: "function" } as const;
  withOneError(() =>
    readAll(given, (at) => {
      if (typeof given !== "object" || given === null) {
        return refuse(at, "wrong-type", "an object with roles and size", "give the package itself");
      }
      for (const [name, kind] of Object.entries(kinds)) {
        const place = placeIn(at, [name], Reflect.get(given, name));
        if (typeof place.value === kind && place.value !== null) continue;
        const code = place.value === undefined ? "missing" : "wrong-type";
        refuse(place, code, `the ${name} of the package`, "give the package itself");
      }
      return true;
    }),
  );
}

/** Checks that what is to hold besides an edition is an object of amendments and readings; both are read with every question. */
export function checkBesides(given: unknown): void {
  const known = ["amendments", "readings"];
  withOneError(() => readAll(given, (at) => readObject(at, known, known) || undefined));
}

/** Checks that an implementation can be asked. */
export function checkImplementation(implementation: unknown): void {
  withOneError(() =>
    readAll({ implementation }, (at) => {
      if (typeof implementation === "function") return true;
      const code = implementation === undefined ? "missing" : "wrong-type";
      return refuse(member(at, "implementation"), code, "a function", "give this function");
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

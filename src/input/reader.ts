import { InputError, type Issue, type IssueCode } from "./input-error.js";
import { mostItems, mostOfACount, mostOfAnAmount } from "./limits.js";
import { nearest } from "./nearest.js";
import { objectWith } from "./object-with.js";
import { oneOf } from "./one-of.js";
import { type Keys, pathOf } from "./place.js";
import { isTrial, refuseUntold, trial } from "./trial.js";

/**
 * A place in an input that is being checked. Collects every issue instead of stopping at the first. The steps to it are put together
 * only where something is wrong.
 */
export interface Reader {
  /** What stands there. */
  readonly value: unknown;
  /** Where issues are noted. */
  readonly issues: Issue[];
  /** The last step to this place, and the place before it; `null` for the input itself. */
  readonly step: {
    /** Name of a member, or place in a list. */
    readonly key: string | number;
    /** The place that it is in. */
    readonly within: Reader;
  } | null;
}

/** Most words that an issue lists. */
const mostWords = 12;

/** Prints a received value short enough for a message; what is inside of it does not matter. */
export function show(value: unknown): string {
  if (value === undefined) return "nothing";
  if (Array.isArray(value)) return value.length === 0 ? "an empty list" : "a list";
  if (typeof value === "object" && value !== null) return "an object";
  if (typeof value === "function" || typeof value === "symbol") return `a ${typeof value}`;
  const text = typeof value === "string" ? JSON.stringify(value) : String(value);
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}

/** The whole of an input. */
export function wholeOf(value: unknown, issues: Issue[] = []): Reader {
  return { value, issues, step: null };
}

/** The steps to a place. */
export function keysOf({ step }: Reader): Keys {
  return step === null ? [] : [...keysOf(step.within), step.key];
}

/** Steps to a place within another, with what stands there. */
export function placeIn(at: Reader, keys: Keys, value: unknown): Reader {
  return keys.reduce<Reader>((within, key) => ({ value, issues: at.issues, step: { key, within } }), {
    ...at,
    value,
  });
}

/** One thing wrong at a place. */
export function issueAt(
  keys: Keys,
  code: IssueCode,
  expected: string,
  received: unknown,
  advice: string,
  alternatives: readonly string[] = [],
): Issue {
  const shown = show(received);
  const found =
    code === "missing" ? `missing, expected ${expected}` : `expected ${expected}, received ${shown}`;
  const message = advice === "" ? found : `${found}; ${advice}`;
  return { code, path: pathOf(keys), keys, expected, alternatives, received: shown, message };
}

/** Notes one issue at the reader's place. */
export function refuse(
  at: Reader,
  code: IssueCode,
  expected: string,
  advice: string,
  alternatives: readonly string[] = [],
): undefined {
  if (isTrial(at)) return refuseUntold(at);
  at.issues.push(issueAt(keysOf(at), code, expected, at.value, advice, alternatives));
  return undefined;
}

/** Notes that a value is missing, or of another type than it should be. */
export function refuseType(
  at: Reader,
  expected: string,
  advice: string,
  alternatives: readonly string[] = [],
): undefined {
  return at.value === undefined
    ? refuse(at, "missing", expected, "", alternatives)
    : refuse(at, "wrong-type", expected, advice, alternatives);
}

/** Runs a check over a whole input and throws everything that it found. A check that may find nothing is run a second time where it found something. */
export function readAll<T>(value: unknown, check: (at: Reader) => T | undefined): T {
  const right = tryAll(value, check);
  if (right !== undefined) return right;
  const at = wholeOf(value);
  const result = check(at);
  if (at.issues.length > 0 || result === undefined) throw new InputError(at.issues);
  return result;
}

/** What a check makes of an input in which nothing is wrong. A check may itself read something, so that one trial can lie within another. */
export function tryAll<T>(value: unknown, check: (at: Reader) => T | undefined): T | undefined {
  const before = trial.length;
  try {
    const result = check(wholeOf(value, trial));
    return trial.length === before ? result : undefined;
  } finally {
    trial.length = before;
  }
}

/** Steps into a member of an object. */
export function member(at: Reader, key: string): Reader {
  const value = isRecord(at.value) && Object.hasOwn(at.value, key) ? at.value[key] : undefined;
  return { value, issues: at.issues, step: { key, within: at } };
}

/** Unknown keys that are listed of one object; further ones wait until these are mended. */
const mostUnknown = 100;

/** Checks that the value is an object with no keys but the known ones. */
export function readObject(at: Reader, known: readonly string[], open: readonly string[] = []): boolean {
  if (!isRecord(at.value)) {
    refuseType(at, objectWith(known, open), "give an object");
    return false;
  }
  const { value } = at;
  const keys = Object.keys(value);
  // Nearly every object has no others, so the lists for the messages wait until one has.
  if (keys.every((key) => known.includes(key))) return true;
  // In JavaScript a member that holds nothing is written as freely as one that is left out.
  const given = keys.filter((key) => value[key] !== undefined);
  const unknown = given.filter((key) => !known.includes(key));
  for (const key of unknown.slice(0, mostUnknown)) refuseKey(member(at, key), key, known, given);
  return true;
}

/** A key that is not known: the near one that is free is meant, else all that are free may be. */
function refuseKey(at: Reader, key: string, known: readonly string[], given: readonly string[]): void {
  if (isTrial(at)) {
    refuseUntold(at);
    return;
  }
  const free = known.filter((one) => !given.includes(one));
  const near = nearest(key, free);
  const rest = free.length === 0 ? "remove it" : `remove it, or use one of ${free.join(", ")}`;
  const advice = near === undefined ? rest : `did you mean "${near}"?`;
  const shown = key.length > 60 ? `${key.slice(0, 57)}...` : key;
  const issue = issueAt(
    keysOf(at),
    "unknown-key",
    near === undefined ? "no such member" : `"${near}"`,
    key,
    advice,
    near === undefined ? free : [near],
  );
  at.issues.push({ ...issue, message: `"${shown}" is not known here; ${advice}` });
}

/** Checks a list and each of its items. */
export function readList<T>(
  at: Reader,
  item: (at: Reader) => T | undefined,
  most = mostItems,
  least = 1,
): readonly T[] | undefined {
  if (!Array.isArray(at.value)) return refuseType(at, "a list", "give a list, even of one item");
  if (at.value.length < least) return refuse(at, "empty-list", "at least one item", "name at least one");
  if (at.value.length > most) {
    const expected = `a list of at most ${most} items, not ${at.value.length}`;
    return refuse(at, "out-of-range", expected, "divide it, or count alike ones together");
  }
  const read = Array.from(at.value, (value: unknown, key) =>
    item({ value, issues: at.issues, step: { key, within: at } }),
  );
  return read.every((one) => one !== undefined) ? (read as T[]) : undefined;
}

/** Checks for one of a closed list of words; of many only the near ones are shown. */
export function readOneOf<const T extends string>(at: Reader, allowed: readonly T[]): T | undefined {
  if (typeof at.value === "string" && (allowed as readonly string[]).includes(at.value)) return at.value as T;
  const expected = oneOf(allowed, mostWords);
  if (at.value === undefined) return refuse(at, "missing", expected, "", allowed);
  const near = typeof at.value === "string" ? nearestWord(at.value, allowed) : undefined;
  const others = allowed.filter((word) => word !== near);
  return near === undefined
    ? refuse(at, "unknown-value", expected, "use one of these words", allowed)
    : refuse(at, "unknown-value", expected, `did you mean "${near}"?`, [near, ...others]);
}

/** A number is never a misspelling of another. */
function nearestWord(word: string, allowed: readonly string[]): string | undefined {
  return /\d/.test(word) ? undefined : nearest(word, allowed);
}

/** Checks for a whole number of at least 1. */
export function readCount(at: Reader, what: string): number | undefined {
  const expected = `a whole number of ${what}, at least 1`;
  if (typeof at.value !== "number") return refuseType(at, expected, "write it as a number");
  if (!Number.isInteger(at.value))
    return refuse(at, "not-a-whole-number", expected, `there are no fractions of ${what}`);
  if (at.value < 1) return refuse(at, "not-positive", expected, "leave the entry out if there is none");
  if (at.value > mostOfACount) {
    return refuse(at, "out-of-range", `${expected} and at most ${mostOfACount}`, "check the number");
  }
  return at.value;
}

/** Checks for one of a closed list of numbers. */
export function readNumberOf(at: Reader, what: string, allowed: readonly number[]): number | undefined {
  if (typeof at.value === "number" && allowed.includes(at.value)) return at.value;
  const written = allowed.map(String);
  const expected = `${written.slice(0, -1).join(", ")} or ${written.at(-1)}`;
  return at.value === undefined
    ? refuse(at, "missing", expected, "", written)
    : refuse(at, "unknown-value", expected, `name the ${what} as a number`, written);
}

/** Checks for a number between two others. */
export function readBetween(
  at: Reader,
  what: string,
  least: number,
  most: number,
  advice = "give a number within these limits",
): number | undefined {
  const { value } = at;
  if (typeof value === "number" && value >= least && value <= most) return value;
  const isBelow = typeof value === "number" && value <= 0 && value < least && least >= 0;
  const wrong = isBelow ? "not-positive" : typeof value === "number" ? "out-of-range" : "wrong-type";
  const expected = `${what} from ${least} to ${most}`;
  return value === undefined ? refuse(at, "missing", expected, "") : refuse(at, wrong, expected, advice);
}

/** Checks for a number above zero, within the limit. */
export function readPositive(at: Reader, what: string): number | undefined {
  const expected = `a positive number of ${what}`;
  if (typeof at.value !== "number") return refuseType(at, expected, "write it as a number");
  if (!isAnAmount(at.value)) return refuse(at, "out-of-range", `${expected}, ${atMost}`, checkUnit);
  if (at.value <= 0) return refuse(at, "not-positive", expected, "give a number above zero");
  return at.value;
}

const atMost = "at most 1,000,000,000";
const checkUnit = "check the unit";

/** Whether a number is finite and within the limit; that of zero is another check. */
export function isAnAmount(value: number): boolean {
  return value <= mostOfAnAmount && value > Number.NEGATIVE_INFINITY;
}

/** Checks for a number that is not negative. */
export function readNotNegative(at: Reader, what: string): number | undefined {
  const expected = `a number of ${what}, zero or more`;
  if (typeof at.value !== "number") return refuseType(at, expected, "write it as a number");
  if (!isAnAmount(at.value)) return refuse(at, "out-of-range", `${expected}, ${atMost}`, checkUnit);
  return at.value >= 0 ? at.value : refuse(at, "not-positive", expected, "give zero if there is none");
}

/** Checks for a text, which may be empty. */
export function readText(at: Reader, what: string): string | undefined {
  return typeof at.value === "string" ? at.value : refuseType(at, `a text for ${what}`, "give it as text");
}

/** Checks for a name that is not empty. */
export function readName(at: Reader, what: string): string | undefined {
  if (typeof at.value === "string" && at.value.trim() !== "") return at.value;
  return refuseType(at, `a name for ${what}`, "give a text that is not empty");
}

/** Checks a member only if it is there. */
export function optional<T>(at: Reader, check: (at: Reader) => T | undefined): T | undefined {
  return at.value === undefined ? undefined : check(at);
}

/** Whether a value is an object with members, and no list. */
export function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** Checks for an object whose members are checked elsewhere. */
export function readRecord(at: Reader): object | undefined {
  return isRecord(at.value) ? at.value : refuseType(at, "an object", "give an object");
}

/** Checks for true or false. */
export function readFlag(at: Reader, what: string): boolean | undefined {
  return typeof at.value === "boolean" ? at.value : refuseType(at, "true or false", `say ${what}`);
}

import { InputError, type Issue, type IssueCode } from "./input-error.js";
import { mostItems, mostOfACount } from "./limits.js";

/**
 * A place in an input that is being checked. Collects every issue instead of stopping at the first.
 */
export interface Reader {
  readonly value: unknown;
  readonly path: string;
  readonly issues: Issue[];
}

/** Prints a received value short enough for a message; what is inside of it does not matter. */
export function show(value: unknown): string {
  if (value === undefined) return "nothing";
  if (Array.isArray(value)) return value.length === 0 ? "an empty list" : "a list";
  if (typeof value === "object" && value !== null) return "an object";
  if (typeof value === "function" || typeof value === "symbol") return `a ${typeof value}`;
  const text = typeof value === "string" ? JSON.stringify(value) : String(value);
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}

/** Notes one issue at the reader's place. */
export function refuse(at: Reader, code: IssueCode, expected: string, advice: string): undefined {
  const received = show(at.value);
  at.issues.push({
    code,
    path: at.path,
    expected,
    received,
    message: `expected ${expected}, received ${received}; ${advice}`,
  });
  return undefined;
}

/** Runs a check over a whole input and throws everything that it found. */
export function readAll<T>(value: unknown, check: (at: Reader) => T | undefined): T {
  const at: Reader = { value, path: "", issues: [] };
  const result = check(at);
  if (at.issues.length > 0 || result === undefined) throw new InputError(at.issues);
  return result;
}

/** Steps into a member of an object. */
export function member(at: Reader, key: string): Reader {
  const value = isRecord(at.value) && Object.hasOwn(at.value, key) ? at.value[key] : undefined;
  return { value, path: at.path === "" ? key : `${at.path}.${key}`, issues: at.issues };
}

/** Unknown keys that are listed of one object; further ones wait until these are mended. */
const mostUnknown = 100;

/** Checks that the value is an object with no keys but the known ones. */
export function readObject(at: Reader, known: readonly string[]): boolean {
  if (!isRecord(at.value)) {
    refuse(
      at,
      at.value === undefined ? "missing" : "wrong-type",
      `an object with ${known.join(", ")}`,
      "give this object",
    );
    return false;
  }
  // In JavaScript a member that holds nothing is written as freely as one that is left out.
  const unknown = Object.entries(at.value).filter(
    ([key, value]) => value !== undefined && !known.includes(key),
  );
  for (const [key] of unknown.slice(0, mostUnknown)) {
    refuse(member(at, key), "unknown-key", `one of ${known.join(", ")}`, `remove or rename ${show(key)}`);
  }
  return true;
}

/** Checks a list and each of its items. */
export function readList<T>(
  at: Reader,
  item: (at: Reader) => T | undefined,
  most = mostItems,
): readonly T[] | undefined {
  if (!Array.isArray(at.value)) {
    return refuse(
      at,
      at.value === undefined ? "missing" : "wrong-type",
      "a list",
      "give a list, even of one item",
    );
  }
  if (at.value.length === 0) return refuse(at, "empty-list", "at least one item", "name at least one");
  if (at.value.length > most) {
    const expected = `a list of at most ${most} items, not ${at.value.length}`;
    return refuse(at, "out-of-range", expected, "divide it, or count alike ones together");
  }
  const read = Array.from(at.value, (value: unknown, index) =>
    item({ value, path: `${at.path}[${index}]`, issues: at.issues }),
  );
  return read.every((one) => one !== undefined) ? (read as T[]) : undefined;
}

/** Checks for one of a closed list of words. */
export function readOneOf<const T extends string>(at: Reader, allowed: readonly T[]): T | undefined {
  if (typeof at.value === "string" && (allowed as readonly string[]).includes(at.value)) return at.value as T;
  const code = at.value === undefined ? "missing" : "unknown-value";
  return refuse(
    at,
    code,
    `one of ${allowed.map((word) => JSON.stringify(word)).join(", ")}`,
    "use one of these words",
  );
}

/** Checks for a whole number of at least 1. */
export function readCount(at: Reader, what: string): number | undefined {
  const expected = `a whole number of ${what}, at least 1`;
  if (typeof at.value !== "number")
    return refuse(at, at.value === undefined ? "missing" : "wrong-type", expected, "write it as a number");
  if (!Number.isInteger(at.value))
    return refuse(at, "not-a-whole-number", expected, `there are no fractions of ${what}`);
  if (at.value < 1) return refuse(at, "not-positive", expected, "leave the entry out if there is none");
  if (at.value > mostOfACount) {
    return refuse(at, "out-of-range", `${expected} and at most ${mostOfACount}`, "check the number");
  }
  return at.value;
}

/** Checks for a number between two others. */
export function readBetween(at: Reader, what: string, least: number, most: number): number | undefined {
  const { value } = at;
  if (typeof value === "number" && value >= least && value <= most) return value;
  const isBelow = typeof value === "number" && value <= 0 && value < least;
  const wrong = isBelow ? "not-positive" : typeof value === "number" ? "out-of-range" : "wrong-type";
  return refuse(
    at,
    value === undefined ? "missing" : wrong,
    `${what} from ${least} to ${most}`,
    "give a number within these limits",
  );
}

/** Checks for a positive finite number. */
export function readPositive(at: Reader, what: string): number | undefined {
  const expected = `a positive number of ${what}`;
  if (typeof at.value !== "number")
    return refuse(at, at.value === undefined ? "missing" : "wrong-type", expected, "write it as a number");
  if (!Number.isFinite(at.value)) return refuse(at, "out-of-range", expected, "give a finite number");
  if (at.value <= 0) return refuse(at, "not-positive", expected, "give a number above zero");
  return at.value;
}

/** Checks for a text, which may be empty. */
export function readText(at: Reader, what: string): string | undefined {
  if (typeof at.value === "string") return at.value;
  return refuse(
    at,
    at.value === undefined ? "missing" : "wrong-type",
    `a text for ${what}`,
    "give it as text",
  );
}

/** Checks for a name that is not empty. */
export function readName(at: Reader, what: string): string | undefined {
  if (typeof at.value === "string" && at.value.trim() !== "") return at.value;
  return refuse(
    at,
    at.value === undefined ? "missing" : "wrong-type",
    `a name for ${what}`,
    "give a text that is not empty",
  );
}

/** Checks a member only if it is there. */
export function optional<T>(at: Reader, check: (at: Reader) => T | undefined): T | undefined {
  return at.value === undefined ? undefined : check(at);
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** Checks for true or false. */
export function readFlag(at: Reader, what: string): boolean | undefined {
  if (typeof at.value === "boolean") return at.value;
  return refuse(at, at.value === undefined ? "missing" : "wrong-type", "true or false", `say ${what}`);
}

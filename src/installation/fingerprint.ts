import { InputError, type IssueCode } from "../input/input-error.js";
import { isPlainObject, isScalar } from "../input/plain-data.js";
import { issueAt, show } from "../input/reader.js";

/** The offset of 64-bit FNV-1a in digits of 16 bits, the lowest first, so that no product leaves the integers that are fast. */
const offset = [0x2325, 0x8422, 0x9ce4, 0xcbf2] as const;

/** The prime of 64-bit FNV-1a is 2^40 and this. */
const prime = 0x1b3;

/** Deepest nesting that is walked: data that holds itself never ends. */
const deepest = 100;

/** Most characters of canonical JSON: what is shared within the data is written again at every place. */
const mostCharacters = 2 ** 27;

/**
 * Short mark of plain data: 64-bit FNV-1a over its canonical JSON (keys sorted, no spaces, UTF-8), as four groups of four
 * hexadecimal digits. It tells two schedules apart; it is no protection against somebody who means to forge one.
 *
 * @param data - plain JSON data
 * @returns for example `af63-dc4c-8601-ec8c`
 * @throws {@link InputError} for what JSON cannot write, naming its place; for more than 100 levels, as of data that holds itself; and for
 *   more than 134,217,728 characters
 *
 * @example
 * ```ts
 * import { fingerprintOf } from "bondmil";
 * fingerprintOf({ b: 1, a: [2] }) === fingerprintOf({ a: [2], b: 1 }); // => true
 * ```
 */
export function fingerprintOf(data: unknown): string {
  const hash: Hash = { digits: offset, characters: 0, waiting: "" };
  writeCanonical(data, [], (text) => take(hash, text));
  mix(hash);
  const digits = [...hash.digits].reverse().map((one) => one.toString(16).padStart(4, "0"));
  return digits.join("-");
}

interface Hash {
  digits: readonly [number, number, number, number];
  characters: number;
  /** Text that is not mixed in yet, so that many short pieces go as one. */
  waiting: string;
}

const fewPieces = 65_536;

const encoder = /* @__PURE__ */ new TextEncoder();

function take(hash: Hash, text: string): void {
  hash.characters += text.length;
  if (hash.characters > mostCharacters) {
    throw refusal("out-of-range", [], `data of at most ${mostCharacters} characters`, "more of them");
  }
  hash.waiting += text;
  if (hash.waiting.length > fewPieces) mix(hash);
}

function mix(hash: Hash): void {
  let [first, second, third, fourth] = hash.digits;
  for (const byte of encoder.encode(hash.waiting)) {
    first ^= byte;
    const low = first * prime;
    const next = second * prime + (low >>> 16);
    const high = third * prime + (first << 8) + (next >>> 16);
    fourth = (fourth * prime + (second << 8) + (high >>> 16)) & 0xffff;
    [first, second, third] = [low & 0xffff, next & 0xffff, high & 0xffff];
  }
  hash.digits = [first, second, third, fourth];
  hash.waiting = "";
}

type Keys = readonly (string | number)[];

/** Writes JSON with keys sorted and no spaces, piece by piece. */
function writeCanonical(value: unknown, at: Keys, write: (text: string) => void): void {
  if (at.length > deepest) throw refusal("out-of-range", [], `at most ${deepest} levels`, "deeper nesting");
  if (Array.isArray(value)) {
    write("[");
    for (let i = 0; i < value.length; i += 1) {
      if (i > 0) write(",");
      writeCanonical(value[i], [...at, i], write);
    }
    write("]");
  } else if (isPlainObject(value)) {
    write("{");
    const entries = Object.entries(value).filter(([, one]) => one !== undefined);
    for (const [i, [key, one]] of entries.sort(([a], [b]) => (a < b ? -1 : 1)).entries()) {
      write(`${i > 0 ? "," : ""}${JSON.stringify(key)}:`);
      writeCanonical(one, [...at, key], write);
    }
    write("}");
  } else if (isScalar(value)) {
    write(JSON.stringify(value));
  } else throw refusal("wrong-type", at, "plain data that JSON can write", shown(value));
}

function shown(value: unknown): string {
  return typeof value === "object" ? "an object of a class" : show(value);
}

function refusal(code: IssueCode, at: Keys, expected: string, received: string): InputError {
  const issue = issueAt(at, code, expected, undefined, "");
  return new InputError([
    { ...issue, received, message: `expected ${expected}, received ${received}; give plain JSON data` },
  ]);
}

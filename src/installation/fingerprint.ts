import { InputError, type IssueCode } from "../input/input-error.js";
import { isPlainObject, isScalar } from "../input/plain-data.js";
import { show } from "../input/reader.js";

/** The offset and the prime of 64-bit FNV-1a, in two halves of 32 bits; the prime is 2^40 + `low`. */
const offset = { high: 0xcbf29ce4, low: 0x84222325 } as const;
const low = 0x1b3;
const half = 0x1_0000_0000;

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
  const hash: Hash = { high: offset.high, low: offset.low, characters: 0, waiting: "" };
  writeCanonical(data, [], (text) => take(hash, text));
  mix(hash);
  const digits = [hash.high, hash.low].map((one) => one.toString(16).padStart(8, "0")).join("");
  return [0, 4, 8, 12].map((at) => digits.slice(at, at + 4)).join("-");
}

interface Hash {
  high: number;
  low: number;
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
  for (const byte of encoder.encode(hash.waiting)) {
    const mixed = (hash.low ^ byte) >>> 0;
    const product = mixed * low;
    hash.low = product >>> 0;
    hash.high = (hash.high * low + Math.floor(product / half) + mixed * 0x100) % half;
  }
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
  const path = at
    .map((key) => (typeof key === "number" ? `[${key}]` : `.${key}`))
    .join("")
    .replace(/^\./, "");
  const message = `expected ${expected}, received ${received}; give plain JSON data`;
  return new InputError([{ code, path, expected, received, message }]);
}

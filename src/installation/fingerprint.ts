import { InputError, type IssueCode } from "../input/input-error.js";
import type { Keys } from "../input/place.js";
import { isPlainObject, isScalar } from "../input/plain-data.js";
import { issueAt, show } from "../input/reader.js";

/** The offset of 64-bit FNV-1a in halves of 32 bits, so that every product stays among the integers that are fast. */
const offset = { low: 0x84222325 | 0, high: 0xcbf29ce4 | 0 };

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
  const hash: Hash = { ...offset, characters: 0, waiting: "", names: new Map() };
  writeCanonical(hash, "", data, null);
  mix(hash);
  const digits = [hash.high >>> 16, hash.high & 0xffff, hash.low >>> 16, hash.low & 0xffff];
  return digits.map((one) => one.toString(16).padStart(4, "0")).join("-");
}

interface Hash {
  low: number;
  high: number;
  characters: number;
  /** Text that is not mixed in yet, so that many short pieces go as one. */
  waiting: string;
  /** Names of members as JSON writes them; there are few, and each stands at many places. */
  readonly names: Map<string, string>;
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
  let { low, high } = hash;
  for (const byte of encoder.encode(hash.waiting)) {
    low ^= byte;
    const lower = (low & 0xffff) * prime;
    const upper = (low >>> 16) * prime + (lower >>> 16);
    high = (Math.imul(high, prime) + (low << 8) + (upper >>> 16)) | 0;
    low = (upper << 16) | (lower & 0xffff);
  }
  Object.assign(hash, { low, high, waiting: "" });
}

/** Where something stands in the data; the steps to it are put together only where it cannot be written. */
interface Place {
  readonly key: string | number;
  readonly within: Place | null;
  /** How many steps lead to it. */
  readonly level: number;
}

/** Writes JSON with keys sorted and no spaces, after what leads to it, piece by piece. */
function writeCanonical(hash: Hash, lead: string, value: unknown, place: Place | null): void {
  const level = (place?.level ?? 0) + 1;
  if (level > deepest + 1) throw refusal("out-of-range", [], `at most ${deepest} levels`, "deeper nesting");
  if (isScalar(value)) {
    take(hash, lead + JSON.stringify(value));
    return;
  }
  if (Array.isArray(value)) {
    take(hash, `${lead}[`);
    for (let i = 0; i < value.length; i += 1) {
      writeCanonical(hash, i > 0 ? "," : "", value[i], { key: i, within: place, level });
    }
    take(hash, "]");
  } else if (isPlainObject(value)) {
    let before = `${lead}{`;
    for (const key of Object.keys(value).sort()) {
      const one = (value as Readonly<Record<string, unknown>>)[key];
      if (one === undefined) continue;
      writeCanonical(hash, before + nameOf(hash, key), one, { key, within: place, level });
      before = ",";
    }
    take(hash, before === "," ? "}" : `${before}}`);
  } else throw refusal("wrong-type", keysTo(place), "plain data that JSON can write", shown(value));
}

function nameOf({ names }: Hash, key: string): string {
  const known = names.get(key) ?? `${JSON.stringify(key)}:`;
  names.set(key, known);
  return known;
}

function keysTo(place: Place | null): Keys {
  return place === null ? [] : [...keysTo(place.within), place.key];
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

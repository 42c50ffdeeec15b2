import { InputError, type IssueCode } from "../input/input-error.js";
import type { Keys } from "../input/place.js";
import { isPlainObject, isScalar } from "../input/plain-data.js";
import { issueAt, show } from "../input/reader.js";

/** The offset of 64-bit FNV-1a in halves of 32 bits, so that every product stays among the integers that are fast. */
const offset = { low: 0x84222325 | 0, high: 0xcbf29ce4 | 0 };

/** Deepest nesting that is walked: data that holds itself never ends. */
const deepest = 100;

/** Most bytes of canonical JSON: what is shared within the data is written again at every place. */
const mostBytes = 134_217_728;

/**
 * Short mark of plain data: 64-bit FNV-1a over its canonical JSON (keys sorted, no spaces, UTF-8), as four groups of four
 * hexadecimal digits. It tells two schedules apart; it is no protection against somebody who means to forge one.
 *
 * @param data - plain JSON data
 * @returns for example `af63-dc4c-8601-ec8c`
 * @throws {@link InputError} for what JSON cannot write, naming its place; for more than 100 levels, as of data that holds itself; and for
 *   more than 134,217,728 bytes
 *
 * @example
 * ```ts
 * import { fingerprintOf } from "bondmil";
 * fingerprintOf({ b: 1, a: [2] }) === fingerprintOf({ a: [2], b: 1 }); // => true
 * ```
 */
export function fingerprintOf(data: unknown): string {
  const { low, high } = offset;
  const hash: Hash = { low, high, bytes: 0, waiting: "", texts: new Map(), orders: new Map() };
  writeCanonical(hash, data, "", null);
  mixIn(hash);
  const digits = [hash.high >>> 16, hash.high & 0xffff, hash.low >>> 16, hash.low & 0xffff];
  return digits.map((one) => one.toString(16).padStart(4, "0")).join("-");
}

interface Hash {
  low: number;
  high: number;
  bytes: number;
  /** Canonical JSON that is not mixed in yet: many pieces are mixed in faster as one. */
  waiting: string;
  /** Texts as JSON writes them; most stand at many places. */
  readonly texts: Map<string, string>;
  /** Orders of members by the name of the first. */
  readonly orders: Map<string | undefined, Order[]>;
}

/** Members in the order in which they stand, and in that of their names. */
interface Order {
  readonly keys: readonly string[];
  readonly sorted: readonly SortedMember[];
}

/** A member, and how its name is written before its value: as the first of its object, and after another. */
interface SortedMember {
  readonly key: string;
  readonly first: string;
  readonly further: string;
}

/** Characters that wait before they are mixed in. */
const enough = 65_536;

function write(hash: Hash, text: string): void {
  hash.waiting += text;
  if (hash.waiting.length > enough) mixIn(hash);
}

const encoder = /* @__PURE__ */ new TextEncoder();

function mixIn(hash: Hash): void {
  const bytes = encoder.encode(hash.waiting);
  hash.waiting = "";
  hash.bytes += bytes.length;
  if (hash.bytes > mostBytes) {
    throw refusal("out-of-range", [], `data of at most ${mostBytes} bytes`, "more of them");
  }
  // The prime of 64-bit FNV-1a is 2^40 and this. It stands here because bundlers turn the constants of a module into variables, which are
  // slower to multiply by: 12 percent of the time of a fingerprint.
  const prime = 0x1b3;
  let { low, high } = hash;
  for (let i = 0; i < bytes.length; i += 1) {
    low ^= bytes[i] as number;
    const carried = (low >>> 16) * prime + (((low & 0xffff) * prime) >>> 16);
    high = (Math.imul(high, prime) + (low << 8) + (carried >>> 16)) | 0;
    low = Math.imul(low, prime);
  }
  hash.low = low;
  hash.high = high;
}

/** Where something stands in the data, within nothing if it is the data; the steps are put together only where it cannot be written. */
interface Place {
  readonly key: string | number;
  readonly within: Place | null;
  /** How deep it stands; the data itself has 1. */
  readonly level: number;
}

/** Writes JSON with keys sorted and no spaces; a place is only put together for what has places within. */
function writeCanonical(hash: Hash, value: unknown, key: string | number, within: Place | null): void {
  if (typeof value === "string") write(hash, quoted(hash, value));
  else if (isScalar(value)) write(hash, String(value));
  else writeWhole(hash, value, { key, within, level: (within?.level ?? 0) + 1 });
}

function writeWhole(hash: Hash, value: unknown, place: Place): void {
  if (place.level > deepest) {
    throw refusal("out-of-range", [], `at most ${deepest} levels`, "deeper nesting");
  }
  if (Array.isArray(value)) {
    write(hash, "[");
    for (let i = 0; i < value.length; i += 1) {
      if (i > 0) write(hash, ",");
      writeCanonical(hash, value[i], i, place);
    }
    write(hash, "]");
  } else if (isPlainObject(value)) {
    let isFirst = true;
    for (const { key, first, further } of sortedMembers(hash, value)) {
      const one = (value as Readonly<Record<string, unknown>>)[key];
      if (one === undefined) continue;
      write(hash, isFirst ? first : further);
      writeCanonical(hash, one, key, place);
      isFirst = false;
    }
    write(hash, isFirst ? "{}" : "}");
  } else throw refusal("wrong-type", keysTo(place), "plain data that JSON can write", shown(value));
}

/** The members of an object by name. Objects of one kind have the same members, so that they are sorted once. */
function sortedMembers(hash: Hash, value: object): readonly SortedMember[] {
  const keys = Object.keys(value);
  const [first] = keys;
  let orders = hash.orders.get(first);
  if (orders === undefined) {
    orders = [];
    hash.orders.set(first, orders);
  }
  let order = orders.find((one) => areSame(one.keys, keys));
  if (order === undefined) {
    order = { keys, sorted: [...keys].sort().map((key) => sortedMember(quoted(hash, key), key)) };
    orders.push(order);
  }
  return order.sorted;
}

function areSame(some: readonly string[], others: readonly string[]): boolean {
  return some.length === others.length && some.every((one, i) => one === others[i]);
}

function sortedMember(name: string, key: string): SortedMember {
  return { key, first: `{${name}:`, further: `,${name}:` };
}

function quoted({ texts }: Hash, text: string): string {
  let written = texts.get(text);
  if (written === undefined) {
    written = JSON.stringify(text);
    texts.set(text, written);
  }
  return written;
}

function keysTo({ key, within }: Place): Keys {
  return within === null ? [] : [...keysTo(within), key];
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

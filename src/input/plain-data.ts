import type { Keys } from "./place.js";

/** Items of a list that are walked; one that only says to be longer never ends. */
const longest = 1_000_000;

/** An object without a class of its own, from whichever realm. */
export function isPlainObject(value: unknown): value is object {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return false;
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === null || Object.getPrototypeOf(prototype) === null;
}

/** What JSON writes as it is: a text, a finite number, true, false or null. */
export function isScalar(value: unknown): boolean {
  return value === null || typeof value === "string" || typeof value === "boolean" || Number.isFinite(value);
}

interface Place {
  readonly value: unknown;
  readonly key: string | number;
  readonly within: Place | null;
}

/** Something that plain JSON data cannot hold, with the steps to it; `null` if there is none. What is shared is looked at once. */
export function notPlainIn(data: unknown): { readonly keys: Keys; readonly value: unknown } | null {
  const seen = new Set<unknown>();
  const waiting: Place[] = [{ value: data, key: "", within: null }];
  for (let place = waiting.pop(); place !== undefined; place = waiting.pop()) {
    const within = place;
    const { value } = within;
    if (value === undefined || isScalar(value) || seen.has(value)) continue;
    seen.add(value);
    const isList = Array.isArray(value);
    if (isList ? value.length > longest : !isPlainObject(value)) return { keys: keysTo(within), value };
    for (const [key, inner] of Object.entries(value as object)) {
      waiting.push({ value: inner, key: isList ? Number(key) : key, within });
    }
  }
  return null;
}

function keysTo({ key, within }: Place): Keys {
  return within === null ? [] : [...keysTo(within), key];
}

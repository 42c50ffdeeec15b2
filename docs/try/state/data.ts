/** What JSON can hold. The state of the page is such a value: the installation itself, whole or not yet. */
export type Json = string | number | boolean | null | readonly Json[] | JsonObject;

/** An object of JSON. */
export interface JsonObject {
  readonly [name: string]: Json;
}

/** The place of a value: names of members and places in lists, as an issue of the library has them. */
export type Keys = readonly (string | number)[];

export function isObject(value: Json | undefined): value is JsonObject {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

export function isList(value: Json | undefined): value is readonly Json[] {
  return Array.isArray(value);
}

/** The value at a place; nothing where there is none. */
export function valueAt(value: Json | undefined, [first, ...rest]: Keys): Json | undefined {
  if (first === undefined) return value;
  if (isList(value)) return typeof first === "number" ? valueAt(value[first], rest) : undefined;
  if (!isObject(value) || !Object.hasOwn(value, first)) return undefined;
  return valueAt(value[first], rest);
}

/** The same with another value at a place; objects and lists on the way that are missing are made. */
export function withValue(value: Json | undefined, [first, ...rest]: Keys, wanted: Json): Json {
  if (first === undefined) return wanted;
  if (typeof first === "number") {
    const list = isList(value) ? value : [];
    const item = withValue(list[first], rest, wanted);
    return first < list.length ? list.map((one, i) => (i === first ? item : one)) : [...list, item];
  }
  const object = isObject(value) ? value : {};
  const inner = Object.hasOwn(object, first) ? object[first] : undefined;
  return { ...object, [first]: withValue(inner, rest, wanted) };
}

/** The same without the member or item at a place. */
export function without(value: Json, keys: Keys): Json {
  const last = keys.at(-1);
  const outer = valueAt(value, keys.slice(0, -1));
  if (typeof last === "number" && isList(outer)) {
    const rest = outer.filter((_, i) => i !== last);
    return withValue(value, keys.slice(0, -1), rest);
  }
  if (typeof last !== "string" || !isObject(outer) || !Object.hasOwn(outer, last)) return value;
  const { [last]: _gone, ...others } = outer;
  return withValue(value, keys.slice(0, -1), others);
}

/** The same with an item more in the list at a place, behind the others or behind the one that is named. */
export function withItem(value: Json, keys: Keys, item: Json, behind?: number): Json {
  const outer = valueAt(value, keys);
  const list = isList(outer) ? outer : [];
  const at = behind === undefined ? list.length : behind + 1;
  return withValue(value, keys, [...list.slice(0, at), item, ...list.slice(at)]);
}

/** A place as one text without equal. */
export function pathOf(keys: Keys): string {
  return keys.map((key) => (typeof key === "number" ? `[${key}]` : key)).join(".");
}

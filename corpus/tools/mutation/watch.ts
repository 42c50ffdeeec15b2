import { workOutAnew } from "../../../src/edition/kept-code.js";

/** Where a value stands in a table of the library: the keys on the way to it. */
export type Place = readonly (string | number)[];

/** A place as text, to be found again. */
export function placeKey(place: Place): string {
  return place.join("/");
}

/** A view of some data that tells of every value that is read through it. */
export function watched<T>(data: T, onRead: (place: string) => void, place: Place = []): T {
  if (typeof data !== "object" || data === null) return data;
  return new Proxy(data, {
    get: (target, key, receiver): unknown => {
      const value: unknown = Reflect.get(target, key, receiver);
      if (typeof key === "symbol" || typeof value === "function") return value;
      const there = [...place, key];
      onRead(placeKey(there));
      return watched(value, onRead, there);
    },
  });
}

/** Runs something while one value of some data is another, and puts the old one back. */
export function withValue<R>(data: object, place: Place, value: unknown, run: () => R): R {
  const [key, ...rest] = place;
  if (key === undefined) throw new TypeError("a place has at least one key");
  const inside: unknown = Reflect.get(data, key);
  if (rest.length > 0 && typeof inside === "object" && inside !== null)
    return withValue(inside, rest, value, run);
  if (!Object.hasOwn(data, key)) throw new TypeError(`nothing stands at ${placeKey(place)}`);
  Reflect.set(data, key, value);
  workOutAnew();
  try {
    return run();
  } finally {
    Reflect.set(data, key, inside);
    workOutAnew();
  }
}

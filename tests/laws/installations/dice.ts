/** Draws that one number decides, so that a drawing can be had again from its seed alone. */
export interface Dice {
  /** A whole number from the first through the last. */
  readonly between: (first: number, last: number) => number;
  /** Whether something of so many in a hundred happens. */
  readonly chance: (inHundred: number) => boolean;
  readonly pick: <T>(list: readonly T[]) => T;
  readonly shuffled: <T>(list: readonly T[]) => T[];
}

/** Dice from a seed (mulberry32). */
export function diceOf(seed: number): Dice {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 0x1_0000_0000;
  };
  const between = (first: number, last: number): number => first + Math.floor(next() * (last - first + 1));
  const pick = <T>(list: readonly T[]): T => {
    if (list.length === 0) throw new RangeError("nothing to pick from");
    return list[between(0, list.length - 1)] as T;
  };
  return {
    between,
    pick,
    chance: (inHundred) => next() * 100 < inHundred,
    shuffled: (list) => {
      const left = [...list];
      return list.map(() => left.splice(between(0, left.length - 1), 1)[0] as (typeof left)[number]);
    },
  };
}

/** A list of so many, made one by one. */
export function several<T>(count: number, make: (i: number) => T): T[] {
  return Array.from({ length: count }, (_, i) => make(i));
}

/** A source of random numbers with a seed, small and fast: mulberry32. */
export interface Random {
  /** A number from 0 to below 1. */
  readonly next: () => number;
  /** A whole number from 0 to below `end`. */
  readonly below: (end: number) => number;
  readonly pick: <T>(from: readonly T[]) => T;
}

export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (end: number): number => Math.floor(next() * end);
  return { next, below, pick: <T>(from: readonly T[]) => from[below(from.length)] as T };
}

import type { Json } from "./data.js";

/** A value with those before it and those that were taken back. */
export interface History {
  readonly past: readonly Json[];
  readonly now: Json;
  readonly future: readonly Json[];
  /** The place that was changed last; changes of one place in a row are one step. */
  readonly place?: string | undefined;
}

const mostSteps = 200;

export function begin(now: Json): History {
  return { past: [], now, future: [] };
}

/** The history with another value. Typing in one field is one step, so that it is taken back at once. */
export function changed(history: History, now: Json, place?: string): History {
  if (now === history.now) return history;
  const isSameStep = place !== undefined && place === history.place;
  const past = isSameStep ? history.past : [...history.past, history.now].slice(-mostSteps);
  return { past, now, future: [], place };
}

export function undone({ past, now, future }: History): History {
  const before = past.at(-1);
  if (before === undefined) return { past, now, future };
  return { past: past.slice(0, -1), now: before, future: [now, ...future] };
}

export function redone({ past, now, future }: History): History {
  const [next, ...rest] = future;
  if (next === undefined) return { past, now, future };
  return { past: [...past, now], now: next, future: rest };
}

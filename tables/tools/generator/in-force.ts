import type { FromEdition } from "./model.js";

/** What entries say in an edition, each later one laid over those before it; nothing before the first. */
export function inForce<E extends FromEdition>(entries: readonly E[], edition: string): E | undefined {
  // Years are texts of four digits, so that their order is that of texts.
  const holding = entries.filter(({ from }) => from <= edition);
  return holding.length === 0
    ? undefined
    : (holding.reduce<Record<string, unknown>>(laidOver, {}) as unknown as E);
}

function laidOver(before: Record<string, unknown>, entry: object): Record<string, unknown> {
  const changed = Object.entries(entry).map(([field, value]) => {
    const old = before[field];
    return [field, isRecord(old) && isRecord(value) ? laidOver(old, value) : value];
  });
  return { ...before, ...Object.fromEntries(changed) };
}

/** Faults of entries: not every edition answered, out of order, or one that says nothing new. */
export function entryFaults(entries: readonly FromEdition[], years: readonly string[]): readonly string[] {
  const starts = entries.map(({ from }) => from);
  const faults = starts[0] === years[0] ? [] : [`nothing holds in ${years[0]}`];
  if (starts.some((start, i) => i > 0 && start <= (starts[i - 1] ?? "")))
    faults.push("not in order of edition");
  const idle = starts.filter((start, i) => {
    const before = inForce(entries.slice(0, i), start);
    const now = inForce(entries.slice(0, i + 1), start);
    return JSON.stringify({ ...before, from: start }) === JSON.stringify({ ...now, from: start });
  });
  return [...faults, ...idle.map((start) => `${start} says nothing new; leave it out`)];
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

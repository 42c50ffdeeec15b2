import type { Installation } from "./document.js";
import { type Fault, fault, type Keys } from "./fault.js";

interface Hanging {
  readonly id: string;
  readonly from: string;
}

/** A thing with the keys of what it hangs on. */
export interface Tied extends Hanging {
  readonly keys: Keys;
}

/** Electrodes that hang on themselves, over others, whatever lists they stand in: one fault for each circle, with its way. */
export function electrodeCycles(tied: readonly Tied[]): readonly Fault[] {
  const next = new Map<string, Tied[]>();
  for (const one of tied) {
    const after = next.get(one.from);
    if (after === undefined) next.set(one.from, [one]);
    else after.push(one);
  }
  const seen = new Set<string>();
  return tied.flatMap((one) => {
    const way = seen.has(one.id) ? undefined : wayBack(next, one);
    if (way === undefined) return [];
    for (const id of way) seen.add(id);
    const advice = `an electrode cannot hang on itself, as in ${[...way, one.id].map((id) => `"${id}"`).join(", then ")}; start one of them from a place`;
    return [fault("cycle", one.keys, "a way back to a source", one.from, advice)];
  });
}

/** The ids from a thing over what hangs on it to what it hangs on itself; `undefined` where none leads there. */
function wayBack(
  next: ReadonlyMap<string, readonly Tied[]>,
  { id, from }: Tied,
): readonly string[] | undefined {
  const before = new Map<string, string | undefined>([[id, undefined]]);
  for (const at of before.keys()) {
    if (at === from) {
      const way = [at];
      for (let back = before.get(at); back !== undefined; back = before.get(back)) way.unshift(back);
      return way;
    }
    for (const one of next.get(at) ?? []) if (!before.has(one.id)) before.set(one.id, at);
  }
  return undefined;
}

/** Circuits that feed each other in a circle, over panels, buildings and derived systems. */
export function circuitCycles({
  circuits = [],
  buildings = [],
  derivedSystems = [],
}: Installation): readonly Fault[] {
  const feeds = new Map<string, string>();
  for (const { id } of circuits) feeds.set(id, id);
  for (const { id, to } of circuits) if (!feeds.has(to)) feeds.set(to, id);
  for (const { id, circuit } of buildings) if (circuit !== undefined) feeds.set(id, circuit);
  for (const { id, source, disconnects } of derivedSystems) {
    const feeder = feeds.get(source.id) ?? feeds.get(id);
    for (const disconnect of disconnects) if (feeder !== undefined) feeds.set(disconnect.id, feeder);
  }
  for (const { id, disconnect } of buildings) {
    const feeder = disconnect === undefined ? undefined : feeds.get(disconnect);
    if (feeder !== undefined) feeds.set(id, feeder);
  }
  const before = new Map(circuits.map(({ id, from }) => [id, feeds.get(from) ?? from]));
  return cycleFaults(circuits, before, ["circuits"], "a circuit cannot feed itself");
}

/** Runs whose end leads back to their start. */
export function runCycles(
  runs: readonly { readonly from: string; readonly to: string }[],
  at: Keys,
): readonly Fault[] {
  const next = grouped(runs);
  return runs.flatMap(({ from, to }, i) =>
    leads(next, to, from)
      ? [fault("cycle", [...at, "runs", i, "to"], "a place ahead", to, "a run cannot lead back to its start")]
      : [],
  );
}

function grouped(
  runs: readonly { readonly from: string; readonly to: string }[],
): ReadonlyMap<string, readonly string[]> {
  const next = new Map<string, string[]>();
  for (const { from, to } of runs) {
    const ends = next.get(from);
    if (ends === undefined) next.set(from, [to]);
    else ends.push(to);
  }
  return next;
}

function leads(next: ReadonlyMap<string, readonly string[]>, start: string, end: string): boolean {
  const reached = new Set([start]);
  for (const place of reached) for (const one of next.get(place) ?? []) reached.add(one);
  return reached.has(end);
}

function cycleFaults(
  items: readonly Hanging[],
  before: ReadonlyMap<string, string>,
  at: Keys,
  advice: string,
): readonly Fault[] {
  const circular = membersOfCycles(before);
  return items.flatMap(({ id, from }, i) =>
    circular.has(id) ? [fault("cycle", [...at, i, "from"], "a way back to a source", from, advice)] : [],
  );
}

/** Ids that a walk along `before` comes back to; each id is walked once. */
function membersOfCycles(before: ReadonlyMap<string, string>): ReadonlySet<string> {
  const members = new Set<string>();
  const done = new Set<string>();
  for (const start of before.keys()) {
    const walk = new Set<string>();
    let at: string | undefined = start;
    while (at !== undefined && !walk.has(at) && !done.has(at)) {
      walk.add(at);
      at = before.get(at);
    }
    if (at !== undefined && walk.has(at)) {
      const ids = [...walk];
      for (const id of ids.slice(ids.indexOf(at))) members.add(id);
    }
    for (const id of walk) done.add(id);
  }
  return members;
}

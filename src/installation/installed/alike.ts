import { idsOfEnd } from "../conductor-identity.js";
import type { ScheduledConductor } from "../schedule.js";
import type { Lines } from "./lines.js";
import type { Purposed } from "./purposed.js";
import { areaFound } from "./purposed.js";

/** Something found with the conductors of the schedule that it may be. */
export interface Tried {
  readonly purpose: Purposed;
  readonly candidates: readonly Lines[];
}

/**
 * Whether conductors of several systems run between the same two places, such as those of a derived system and of the building that it supplies,
 * so that nobody can tell which of them a found one is.
 */
export function areAlike(candidates: readonly Lines[]): boolean {
  const ends = candidates.map(({ all }) => new Set(all.map(endsOf)));
  const [first] = ends.flatMap((one) => [...one]);
  return (
    candidates.length > 1 && ends.every((one) => one.size === 1 && first !== undefined && one.has(first))
  );
}

function endsOf({ role, part, subject, from, to }: ScheduledConductor): string {
  return JSON.stringify([role, part, subject, idsOfEnd(from), idsOfEnd(to)]);
}

/** Gives what was found of conductors that are alike to them, the largest to the one that requires most. */
export function sharedOut(tried: readonly Tried[]): ReadonlyMap<Purposed, readonly Lines[]> {
  const groups = new Map<string, Tried[]>();
  for (const one of tried) {
    if (!areAlike(one.candidates)) continue;
    const key = JSON.stringify(one.candidates.map(({ key }) => key));
    const known = groups.get(key);
    if (known === undefined) groups.set(key, [one]);
    else known.push(one);
  }
  return new Map([...groups.values()].flatMap(sharedOutInGroup));
}

function sharedOutInGroup(group: readonly Tried[]): readonly (readonly [Purposed, readonly Lines[]])[] {
  const [{ candidates } = { candidates: [] }] = group;
  const wanted = [...candidates]
    .sort((a, b) => requiredBy(b) - requiredBy(a))
    .flatMap((lines) => Array<Lines>(neededBy(lines)).fill(lines));
  const last = wanted.at(-1) ?? candidates[0];
  const largest = [...group].sort((a, b) => areaOf(b) - areaOf(a));
  let at = 0;
  return largest.map(({ purpose }) => {
    const taken = wanted.slice(at, at + (purpose.found.quantity ?? 1));
    at += taken.length;
    return [purpose, taken.length > 0 ? [...new Set(taken)] : last === undefined ? [] : [last]] as const;
  });
}

function requiredBy({ all }: Lines): number {
  return Math.max(...all.map(({ result }) => result.requiredArea));
}

function neededBy({ all }: Lines): number {
  return Math.max(1, ...all.map(({ quantity }) => quantity));
}

/** What stands in place of a conductor is given out last. */
function areaOf({ purpose: { found } }: Tried): number {
  return areaFound(found) ?? 0;
}

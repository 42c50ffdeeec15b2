import type { NotRequiredReason } from "../../rules/result.js";
import { type Alternative, idsOfEnd } from "../conductor-identity.js";
import { roleName } from "../conductor-words.js";
import { idsMeant } from "../dangling.js";
import type { Installation } from "../document.js";
import { type Fault, fault } from "../fault.js";
import type { Schedule, ScheduledConductor } from "../schedule.js";
import { areAlike, sharedOut } from "./alike.js";
import { isConnection, type LineIndex, type Lines } from "./lines.js";
import { type Purposed, purposesOf } from "./purposed.js";

/** What was found, each with the conductor of the schedule that it is; `null` for something besides. */
export interface Matched {
  readonly purpose: Purposed;
  readonly lines: Lines | null;
}

/** What was found held against the schedule, or what does not tell which conductor is meant. */
export interface Match {
  readonly matched: readonly Matched[];
  readonly faults: readonly Fault[];
  /** Of each system whose arrangements are compared, the one that was begun. */
  readonly begun: ReadonlyMap<string, Alternative>;
}

/** Finds for everything that was found the conductor of the schedule, by role, by what it serves and by place. */
export function matchOf({ installed = {} }: Installation, schedule: Schedule, index: LineIndex): Match {
  const purposes = (installed.found ?? []).flatMap(purposesOf);
  const begun = begunOf(schedule, [
    ...purposes.map((one) => candidatesOf(one, index, () => true)),
    ...touchedBy(installed.asScheduled ?? [], index),
  ]);
  if (installed.rest !== undefined) beginAll(schedule, begun);
  const isBegun = ({ all }: Lines): boolean => all.some((line) => !isOfOther(line, begun));
  const tried = purposes.map((purpose) => {
    const candidates = candidatesOf(purpose, index, isBegun);
    const required = candidates.filter(({ all }) => all.some(({ quantity }) => quantity > 0));
    const isPlaced = purpose.of !== undefined || purpose.at !== undefined;
    const meant = isPlaced ? required : candidates.filter(({ all }) => !all.every(isNamedForNone));
    return { purpose, candidates: meant.length > 0 ? meant : candidates };
  });
  const named = new Set(tried.flatMap(({ candidates }) => (candidates.length === 1 ? candidates : [])));
  const placed = tried.map(({ purpose, candidates }) => {
    const isOpen = candidates.length === 0 && purpose.of !== undefined && !isConnection(purpose.role);
    if (!isOpen) return { purpose, candidates };
    const { at: _, ...anywhere } = purpose;
    const left = candidatesOf(anywhere, index, isBegun).filter((one) => !named.has(one));
    // Of several conductors to one electrode, what starts elsewhere is the one that nothing else was found of.
    return { purpose, candidates: left.length === 1 ? left : [] };
  });
  const shared = sharedOut(placed);
  return {
    begun,
    matched: placed.flatMap(({ purpose, candidates }) =>
      (shared.get(purpose) ?? [candidates[0] ?? null]).map((lines) => ({ purpose, lines })),
    ),
    faults: placed.flatMap(({ purpose, candidates }) => unclear(purpose, candidates)),
  };
}

/** Places that the schedule names only to say that nothing is looked for there, so that what has no place is not meant. */
const placesWithout: readonly NotRequiredReason[] = [
  "nonmetallic-raceway",
  "not-service-equipment",
  "bonded-with-its-wiring",
  "bonded-by-its-raceway",
  "jumper-of-other-system-serves",
  "electrode-conductor-of-other-system-serves",
  "no-conductors-ahead-of-the-device",
  "grounded-conductor-kept-apart",
  "supply-side-jumper-instead",
  "no-grounded-conductor",
];

function isNamedForNone({ result: { outcome } }: ScheduledConductor): boolean {
  return outcome.kind === "not-required" && placesWithout.includes(outcome.why);
}

/** Conductors of the schedule that are meant: those that `of` names most closely, and among them those at the place. */
function candidatesOf(
  { role, of, at }: Purposed,
  index: LineIndex,
  isBegun: (lines: Lines) => boolean,
): readonly Lines[] {
  const known = index.of(role);
  if (known === undefined) return [];
  const { bySubject, byEnd, bySystem } = known;
  const inArrangement = (all: readonly Lines[] = []): readonly Lines[] => {
    const begun = all.filter(isBegun);
    // A connection at the place of another arrangement is a second one, and is found there.
    return begun.length > 0 || !isConnection(role) ? begun : all;
  };
  if (of === undefined) {
    if (at === undefined) return inArrangement(known.all);
    const there = inArrangement(bySubject.get(at) ?? byEnd.get(at));
    if (there.length > 0 || isConnection(role)) return there;
    const all = inArrangement(known.all);
    return all.length === 1 ? all : [];
  }
  const meant = inArrangement(bySubject.get(of) ?? byEnd.get(of) ?? bySystem.get(of));
  if (at === undefined) return meant;
  const there = meant.filter(
    (one) => (bySubject.get(at) ?? []).includes(one) || (byEnd.get(at) ?? []).includes(one),
  );
  if (there.length > 0) return there;
  return isConnection(role) || meant.length > 1 ? [] : meant;
}

/** One issue for what may be several conductors, or for something found without a place. */
function unclear({ role, of, at, keys }: Purposed, candidates: readonly Lines[]): readonly Fault[] {
  const what = roleName(role);
  if (candidates.length === 0) {
    if (of !== undefined || at !== undefined) return [];
    const advice = `the schedule has no ${what}, so say where this one was found`;
    return [fault("missing", [...keys, "at"], "the place where it was found", undefined, advice)];
  }
  if (candidates.length === 1 || areAlike(candidates)) return [];
  const lines = candidates.flatMap(({ all: [first] }) => first ?? []);
  const subjects = [...new Set(lines.map(({ subject }) => subject))];
  const key = subjects.length > 1 ? "of" : "at";
  const names =
    key === "of" ? subjects : [...new Set(lines.flatMap(({ place, from }) => place ?? idsOfEnd(from)))];
  const given = key === "of" ? of : at;
  const advice = `the schedule has ${candidates.length} such conductors (${what}); say which one it is`;
  const code = given === undefined ? "missing" : "unknown-value";
  return [fault(code, [...keys, key], idsMeant(names), given, advice, names)];
}

/** Of each system whose arrangements are compared, the first of which anything is installed that no other has. */
function begunOf(schedule: Schedule, touched: readonly (readonly Lines[])[]): Map<string, Alternative> {
  const telling = new Set(
    touched.flatMap((groups) => {
      const lines = groups.flatMap(({ all }) => all).filter(({ alternative }) => alternative !== undefined);
      return new Set(lines.map(({ alternative }) => alternative)).size === 1 ? lines : [];
    }),
  );
  const begun = new Map<string, Alternative>();
  const unclear = new Set(touched.flatMap((groups) => groups.flatMap(({ all }) => all)));
  for (const among of [telling, unclear]) {
    for (const line of schedule.conductors) {
      const { system, alternative } = line;
      if (system !== undefined && alternative !== undefined && among.has(line) && !begun.has(system))
        begun.set(system, alternative);
    }
  }
  return begun;
}

function beginAll({ conductors }: Schedule, begun: Map<string, Alternative>): void {
  for (const { system, alternative } of conductors) {
    if (system !== undefined && alternative !== undefined && !begun.has(system))
      begun.set(system, alternative);
  }
}

/** The conductors of each id that is listed as scheduled. */
function touchedBy(ids: readonly string[], { all }: LineIndex): readonly (readonly Lines[])[] {
  const byId = new Map<string, Lines[]>(ids.map((id) => [id, []]));
  for (const lines of all) for (const id of new Set(lines.all.flatMap(listedBy))) byId.get(id)?.push(lines);
  return [...byId.values()];
}

/** Arrangements exclude each other: whether a conductor belongs to another than the one that was begun. */
export function isOfOther(
  { system, alternative }: ScheduledConductor,
  begun: ReadonlyMap<string, Alternative>,
): boolean {
  const chosen = begun.get(system ?? "");
  return alternative !== undefined && chosen !== undefined && chosen !== alternative;
}

/** The ids by which a conductor is listed as scheduled: of what it belongs to, of its system, of a common electrode conductor. */
export function listedBy({ subject, system, role, from, to }: ScheduledConductor): readonly string[] {
  const ends = role === "grounding-electrode-conductor" ? [from, to] : [];
  return [
    subject,
    ...(system === undefined ? [] : [system]),
    ...ends.flatMap((end) => (end.kind === "place" ? [end.id] : [])),
  ];
}

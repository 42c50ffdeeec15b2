import type { Role } from "../../edition/index.js";
import { keyOf } from "../conductor-identity.js";
import type { Installation } from "../document.js";
import type { Schedule, ScheduledConductor } from "../schedule.js";
import { endIds } from "./places.js";

/** A conductor of the schedule, in each of the arrangements that are compared if there are several. */
export interface Lines {
  readonly key: string;
  readonly all: readonly ScheduledConductor[];
}

/** The conductors of a schedule by what people call them by. */
export interface LineIndex {
  readonly all: readonly Lines[];
  /** Those of a role, by how closely an id names them: what they serve, one of their ends, their system. */
  readonly of: (role: Role) => LinesOfRole | undefined;
  /** Those of any role that serve something or end at it. */
  readonly near: (id: string) => readonly Lines[];
}

/** The conductors of a role, or of roles that are the same thing in another system. */
export interface LinesOfRole {
  readonly all: readonly Lines[];
  readonly bySubject: ById;
  readonly byEnd: ById;
  readonly bySystem: ById;
}

type ById = ReadonlyMap<string, readonly Lines[]>;

/** Roles that connect the grounded conductor to metal are one thing, whatever it is called. */
export function isConnection(role: Role): boolean {
  return role === "main-bonding-jumper" || role === "system-bonding-jumper";
}

/** Puts the conductors of a schedule in order for look-up. */
export function lineIndex(installation: Installation, schedule: Schedule): LineIndex {
  const endsOf = endIds(installation, schedule);
  const groups = groupsOf(schedule);
  const roles = new Map<string, Lines[]>();
  for (const group of groups) for (const [first] of [group.all]) add(roles, classOf(first?.role), group);
  const made = new Map([...roles].map(([role, all]) => [role, ofRole(all, endsOf)] as const));
  return {
    all: groups,
    of: (role) => made.get(classOf(role)),
    near: (id) =>
      [...made.values()].flatMap(({ bySubject, byEnd }) => bySubject.get(id) ?? byEnd.get(id) ?? []),
  };
}

function groupsOf({ conductors }: Schedule): readonly Lines[] {
  const groups = new Map<string, ScheduledConductor[]>();
  for (const line of conductors) {
    const { role, part, subject, place } = line;
    const identity = { role, subject, ...(part && { part }), ...(place !== undefined && { place }) };
    add(groups, keyOf(identity), line);
  }
  return [...groups].map(([key, all]) => ({ key, all }));
}

function ofRole(all: readonly Lines[], endsOf: (line: ScheduledConductor) => readonly string[]): LinesOfRole {
  const by = (idsOf: (line: ScheduledConductor) => readonly string[]): ById => {
    const map = new Map<string, Lines[]>();
    for (const group of all) for (const id of new Set(group.all.flatMap(idsOf))) add(map, id, group);
    return map;
  };
  return {
    all,
    bySubject: by(({ subject }) => [subject]),
    byEnd: by(endsOf),
    bySystem: by(({ system }) => (system === undefined ? [] : [system])),
  };
}

function classOf(role: Role | undefined): string {
  return role === undefined || isConnection(role) ? "connection" : role;
}

function add<T>(map: Map<string, T[]>, key: string, one: T): void {
  const known = map.get(key);
  if (known === undefined) map.set(key, [one]);
  else known.push(one);
}

import { conductorName, type Schedule, type ScheduledConductor, scheduleOf } from "bondmil";
import { askedOf, type Built, built, nameOf } from "../built.js";
import { phaseByPhase, runByRun, setBySet } from "../changes/redraw.js";
import { renamed, reordered, withoutUsual, writtenOut } from "../changes/rewrite.js";
import type { Law } from "./law.js";

/** Other names change nothing but names. */
export const namesAreNames: Law = {
  name: "renaming changes nothing but names",
  breaches: ({ installation, schedule }) => {
    const { installation: other, before } = renamed(installation);
    const [was, is] = [unmarked(schedule), before(unmarked(scheduleOf(other)))];
    return is === was ? [] : [firstDifference(was, is)];
  },
};

/** A schedule as text, without its marks. */
function unmarked(schedule: Schedule): string {
  return JSON.stringify(schedule, (key, value) => (/fingerprint$/i.test(key) ? undefined : value));
}

/** Another order of the lists changes nothing but the order. */
export const orderIsOrder: Law = {
  name: "reordering changes nothing but the order",
  breaches: (before, dice) => unlike(before, built(reordered(before.installation, dice)), isAnywhere),
};

/** A usual value, written out or left out, is the same. */
export const usualIsUsual: Law = {
  name: "a usual value may be written out or left out",
  breaches: (before) => [
    ...unlike(before, built(writtenOut(before.installation)), isAnywhere),
    ...unlike(before, built(withoutUsual(before.installation)), isAnywhere),
  ],
};

/** The same conductors, written as other sets, give the same sizes. */
export const setsAreSets: Law = {
  name: "sets may be written one by one, uniform or phase by phase",
  breaches: (before) => [
    ...unlike(before, built(setBySet(before.installation)), isAnywhere),
    ...unlike(before, built(phaseByPhase(before.installation)), isAnywhere),
  ],
};

/** The same raceways as one run or as several give the same sizes to all that is not in the run itself. */
export const runsAreRuns: Law = {
  name: "several raceways may be one run or several",
  breaches: (before) => unlike(before, built(runByRun(before.installation)), isOutsideRuns),
};

function isAnywhere(): boolean {
  return true;
}

/** A conductor in a run, or at its raceways, has rules for several in parallel that single runs do not have. */
function isOutsideRuns({ installation }: Built, { id, role }: ScheduledConductor): boolean {
  const systems = [...(installation.services ?? []), ...(installation.derivedSystems ?? [])];
  const subject = id.slice(role.length + 1).replace(/ \(.*\)$/, "");
  return !systems.some(({ runs }) => runs.some((run) => run.id === subject));
}

/** Conductors that are asked for otherwise, or only in one of two schedules. Among equals any tap may be the one. */
function unlike(
  before: Built,
  after: Built,
  isCompared: (one: Built, conductor: ScheduledConductor) => boolean,
): readonly string[] {
  const [was, is] = [before, after].map((one) => {
    const compared = one.schedule.conductors.filter((conductor) => isCompared(one, conductor));
    return compared.map((conductor) => `${placeless(conductor)} is ${askedOf(conductor)}`).sort();
  });
  const [gone, come] = [lacking(was ?? [], is ?? []), lacking(is ?? [], was ?? [])];
  return gone.length + come.length === 0 ? [] : [`before: ${gone.join("; ")}; after: ${come.join("; ")}`];
}

/** What starts at the first of several enclosures starts at another one in another order. */
function placeless(conductor: ScheduledConductor): string {
  if (conductor.part === "tap") return "grounding-electrode-tap";
  return conductor.alternative === undefined ? nameOf(conductor) : conductorName(withoutPlace(conductor));
}

function withoutPlace({ place: _, ...rest }: ScheduledConductor): Omit<ScheduledConductor, "place"> {
  return rest;
}

function lacking(list: readonly string[], other: readonly string[]): readonly string[] {
  const left = [...other];
  return list.filter((one) => {
    const i = left.indexOf(one);
    if (i >= 0) left.splice(i, 1);
    return i < 0;
  });
}

function firstDifference(one: string, other: string): string {
  const i = [...one].findIndex((_, at) => one.slice(0, at + 1) !== other.slice(0, at + 1));
  return `before: ${one.slice(Math.max(0, i - 60), i + 60)}; after: ${other.slice(Math.max(0, i - 60), i + 60)}`;
}

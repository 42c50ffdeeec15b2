import type { ScheduledConductor } from "bondmil";
import { type Built, named, nameOf } from "../built.js";

/**
 * A larger installation never makes a conductor smaller that serves what it served before. Not concerned: conductors with a load of
 * their own; the limits that name a size for particular electrodes, which a further electrode can bring; and conductors that now
 * serve less, because others serve the rest. Nor the fixed size of a common conductor that one system taps once, as one of several systems
 * would; with several jumpers it is known to be that system's, and goes by its conductors; and the jumper of a raceway around it. Nor a
 * jumper of piping that is an electrode, once the conductor to the electrode is as large as it, which its caution said beforehand.
 */
export function neverSmaller(before: Built, after: Built): readonly string[] {
  const { readings = {}, amendments = [] } = before.schedule.code;
  const isGivenUp = JSON.stringify([readings, amendments]).includes("parallel-only");
  // One alternative gives containment up by its own words.
  if (isGivenUp) return [];
  const loaded = loadedRuns(before);
  const larger = named(after.schedule);
  return before.schedule.conductors.flatMap((one) => {
    const other = larger.get(nameOf(one));
    if (other === undefined || other.result.requiredArea >= one.result.requiredArea) return [];
    if (loaded.has(nameOf(one)) || servesLess(one, other) || isLimited(one, other)) return [];
    const inside = before.schedule.conductors.filter((conductor) => isAround(one, conductor));
    if ([one, ...inside].some((conductor) => isOfOneSystemNow(conductor, larger.get(nameOf(conductor)))))
      return [];
    if (isServedByElectrodeConductor(one, other)) return [];
    const [was, is] = [one, other].map(({ result }) => `${result.requiredArea} (${result.governs})`);
    return [`${nameOf(one)} was ${was}, is ${is}`];
  });
}

function isAround({ from }: ScheduledConductor, { role, subject }: ScheduledConductor): boolean {
  return from.kind === "raceway" && from.around?.role === role && from.around.subject === subject;
}

function isOfOneSystemNow(before: ScheduledConductor, after: ScheduledConductor | undefined): boolean {
  const isInferred = after?.result.cautions.some(({ code }) => code === "common-conductor-inferred");
  const isNamed = before.result.steps.some(({ kind }) => kind === "named-size");
  return isNamed && isInferred === true;
}

function isServedByElectrodeConductor(before: ScheduledConductor, after: ScheduledConductor): boolean {
  const { outcome } = after.result;
  const isAnnounced = before.result.cautions.some(
    ({ code }) => code === "electrode-conductor-of-sufficient-size",
  );
  return isAnnounced && outcome.kind === "not-required" && outcome.why === "part-is-the-electrode";
}

function servesLess(before: ScheduledConductor, after: ScheduledConductor): boolean {
  const [was, is] = [before.by, after.by];
  return is.length > 0 && is.length < was.length && is.every((id) => was.includes(id));
}

/** Whether the limit of a particular electrode now holds where none was known. */
function isLimited(before: ScheduledConductor, after: ScheduledConductor): boolean {
  return after.quantity > 0 && hasElectrodeLimit(after) && !hasElectrodeLimit(before);
}

function hasElectrodeLimit({ result }: ScheduledConductor): boolean {
  return result.steps.some((step) => step.kind === "cap" && step.why === "electrode");
}

/** Grounded conductors that carry a load, by name. */
function loadedRuns({ installation, schedule }: Built): ReadonlySet<string> {
  const systems = [...(installation.services ?? []), ...(installation.derivedSystems ?? [])];
  const runs = systems.flatMap((one) => one.runs.filter((run) => run.load !== undefined));
  const ids = new Set(runs.map(({ id }) => id));
  return new Set(
    schedule.conductors
      .filter(({ role, id }) => role === "grounded-conductor" && ids.has(id.split(" ")[1] ?? ""))
      .map(nameOf),
  );
}

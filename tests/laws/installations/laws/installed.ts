import { checkOf, type ScheduledConductor, type ViolationCode } from "bondmil";
import { eachItsOwn, type Listed, listedAsScheduled, oneAlternative } from "../as-scheduled.js";
import { type Built, idAt } from "../built.js";
import type { InstalledChange } from "../changes/installed.js";
import { findingsIn, findingsOf } from "../findings.js";
import type { Law } from "./law.js";

/** What the schedule names, listed exactly so, has no finding; nor has the rest as scheduled, whatever is forbidden in the drawing. */
export const nothingFound: Law = {
  name: "what the schedule names, installed exactly so, has no finding",
  breaches: (built, dice) => {
    const { installation } = built;
    const rest = findingsIn(checkOf({ ...installation, installed: { rest: "as-scheduled" } }));
    const ofRest = rest
      .filter((one) => !isLeftOpen(built, one))
      .map((one) => `${one}, though the rest is as scheduled`);
    if (isForbiddenAsDrawn(built)) return ofRest;
    const isAtSource = dice.chance(50);
    const chosen = dice.pick([oneAlternative(isAtSource), eachItsOwn(installation, isAtSource)]);
    const listed = listedAsScheduled(built, chosen);
    if (listed.length === 0) return ofRest;
    const found = findingsOf(
      installation,
      listed.map((one) => one.found),
    );
    const wrong = found
      .filter((one) => !isForbidden(built, one) && !isLeftOpen(built, one))
      .map((one) => `${one}, installed as scheduled`);
    return [...ofRest, ...wrong];
  },
};

/** What is worse than the schedule asks for is found. */
export function isFound(built: Built, { what, conductor, installed }: InstalledChange): readonly string[] {
  const changed = installed();
  if (changed === undefined || changed.length === 0) return [];
  const found = findingsOf(built.installation, changed);
  const isSaid = alikeTo(built, conductor).some((id) => found.some((one) => one.startsWith(`${id}: `)));
  return isSaid ? [] : [`${what}: nothing found of it`];
}

/** A conductor and those of other systems between the same places; which of them is the one that was changed, nobody can tell. */
function alikeTo({ schedule: { conductors } }: Built, id: string): readonly string[] {
  const ends = ({ role, subject, from, to }: ScheduledConductor): string =>
    JSON.stringify([role, subject, idAt(from), idAt(to)]);
  const own = conductors.find((one) => one.id === id);
  if (own === undefined || idAt(own.from) === undefined) return [id];
  return conductors.filter((one) => ends(one) === ends(own)).map((one) => one.id);
}

/** What is lawful is not found, where the drawing itself is without fault. */
export function isNotFound(built: Built, { what, conductor, installed }: InstalledChange): readonly string[] {
  const changed = isForbiddenAsDrawn(built) ? undefined : installed();
  if (changed === undefined) return [];
  const found = findingsOf(built.installation, changed).filter((one) => one.startsWith(`${conductor}: `));
  return found.map((one) => `${what}: found ${one}`);
}

/** Whether a conductor of the schedule itself may not be where it is drawn, or of its material. */
function isForbiddenAsDrawn({ schedule }: Built): boolean {
  return schedule.violations.some(({ code }) => ofConductors.includes(code));
}

const ofConductors: readonly ViolationCode[] = [
  "jumper-not-permitted-here",
  "electrode-conductor-not-at-jumper",
  "electrode-conductor-not-at-impedance",
  "material-forbidden",
];

/** A conductor of a material that is forbidden as drawn. */
function isForbidden({ schedule }: Built, finding: string): boolean {
  const id = finding.slice(0, finding.lastIndexOf(": "));
  return schedule.conductors.some(
    (one) => one.id === id && one.result.cautions.some(({ code }) => code === "material-forbidden"),
  );
}

/** A conductor of which the drawing leaves open what is required, found open. */
function isLeftOpen({ schedule }: Built, finding: string): boolean {
  return schedule.conductors.some((one) => one.open !== undefined && finding === `${one.id}: open`);
}

/** What is listed as found, to be changed: that of one alternative throughout. */
export function toBeChanged(built: Built): readonly Listed[] {
  return listedAsScheduled(built, oneAlternative(true));
}

import { eachItsOwn, installedAsScheduled, oneAlternative } from "../as-scheduled.js";
import type { Built } from "../built.js";
import type { InstalledChange } from "../changes/installed.js";
import { findingsOf } from "../findings.js";
import type { Law } from "./law.js";

/** What the schedule names, installed exactly so, has no finding. */
export const nothingFound: Law = {
  name: "what the schedule names, installed exactly so, has no finding",
  breaches: (built, dice) => {
    if (built.schedule.violations.length > 0) return [];
    const { installation } = built;
    const isAtSource = dice.chance(50);
    const chosen = dice.pick([oneAlternative(isAtSource), eachItsOwn(installation, isAtSource)]);
    const found = findingsOf(installation, installedAsScheduled(built, chosen));
    return found.filter((one) => !isOpen(built, one)).map((one) => `${one}, installed as scheduled`);
  },
};

/** What is worse than the schedule asks for is found. */
export function isFound(
  { installation }: Built,
  { what, conductor, installed }: InstalledChange,
): readonly string[] {
  const changed = installed();
  if (changed === undefined) return [];
  const found = findingsOf(installation, changed);
  return found.some((one) => one.startsWith(`${conductor}: `)) ? [] : [`${what}: nothing found of it`];
}

/** What is lawful is not found, where the drawing itself is without fault. */
export function isNotFound(built: Built, { what, conductor, installed }: InstalledChange): readonly string[] {
  const changed = built.schedule.violations.length > 0 ? undefined : installed();
  if (changed === undefined) return [];
  const found = findingsOf(built.installation, changed).filter((one) => one.startsWith(`${conductor}: `));
  return found.map((one) => `${what}: found ${one}`);
}

/** A conductor that no single size can be, or of a material that is forbidden as drawn. */
function isOpen({ schedule }: Built, finding: string): boolean {
  const id = finding.slice(0, finding.lastIndexOf(": "));
  return schedule.conductors.some(
    (one) =>
      one.id === id &&
      (one.result.outcome.kind === "area-only" ||
        one.result.cautions.some(({ code }) => code === "material-forbidden")),
  );
}

/** Installed conductors to change: those of one alternative throughout. */
export function toBeChanged(built: Built): ReturnType<typeof installedAsScheduled> {
  return installedAsScheduled(built, oneAlternative(true));
}

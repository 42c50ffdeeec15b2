import type { Material } from "../../conductor/index.js";
import type { Citation, EditionYear } from "../../edition/index.js";
import { systemJumperPlace } from "../../edition/tables/sections.generated.js";
import { InputError } from "../../input/input-error.js";
import type { NotRequiredReason } from "../../rules/result.js";
import { type ConductorIdentity, keyOf } from "../conductor-identity.js";
import type { Installation } from "../document.js";
import { readInstallation } from "../read-installation.js";
import { type Requirement, requirementsIn } from "../requirement.js";
import type { Schedule, ScheduledConductor } from "../schedule.js";
import { scheduleOfRead } from "../schedule-of.js";
import type { JudgedBy } from "./finding.js";

/** An installation under the edition that judges, with its schedule and what follows if it is drawn a little otherwise. */
export interface Context {
  readonly judgedBy: JudgedBy;
  readonly installation: Installation;
  readonly schedule: Schedule;
  /** The conductor of this schedule that another schedule of the installation has; none where this one has not. */
  readonly lineOf: (conductor: ConductorIdentity) => ScheduledConductor | undefined;
  /** What is required of a conductor of a material; `null` where it may not be of it. */
  readonly requirementOf: (conductor: ScheduledConductor, material: Material) => Requirement | null;
  /** What forbids a conductor where it is drawn. */
  readonly forbidden: (conductor: ScheduledConductor) => Forbidden | undefined;
  /** The same installation drawn otherwise, under a name of its own; `null` where it cannot be. */
  readonly drawn: (name: string, change: (installation: Installation) => Installation) => Context | null;
}

/** Why a conductor may not be where it is. */
export interface Forbidden {
  readonly kind: "not-permitted" | "wrong-place";
  readonly citation: Citation;
}

/** The context in which an installation judges itself. */
export function contextOf(
  installation: Installation,
  schedule: Schedule,
  judgedBy: JudgedBy = { edition: schedule.edition, of: "installation" },
): Context {
  const lines = once(() => new Map(schedule.conductors.map((one) => [keyOf(one), one])));
  const others = new Map<string, Context | null>();
  const forbidden = once(() => forbiddenPlaces(schedule));
  const requirementOf = requirementsIn(installation, schedule);
  return {
    judgedBy,
    installation,
    schedule,
    lineOf: (conductor) => lines().get(keyOf(conductor)),
    requirementOf,
    forbidden: (conductor) => forbidden()(conductor),
    drawn: (name, change) => {
      const known = others.get(name);
      if (known !== undefined) return known;
      const made = readOtherwise(change(installation), judgedBy);
      others.set(name, made);
      return made;
    },
  };
}

/** Gives for each edition that something was built under its context, made once; `null` where that edition refuses the installation. */
export function contextsOf(own: Context): (edition: EditionYear | undefined) => Context | null {
  const known = new Map<EditionYear, Context | null>();
  return (edition) => {
    if (edition === undefined) return own;
    const made = known.get(edition);
    if (made !== undefined) return made;
    const other = readOtherwise(
      { ...own.installation, code: { year: edition } },
      { edition, of: "conductor" },
    );
    known.set(edition, other);
    return other;
  };
}

function readOtherwise(changed: Installation, judgedBy: JudgedBy): Context | null {
  try {
    const installation = readInstallation(changed);
    return contextOf(installation, scheduleOfRead(installation), judgedBy);
  } catch (error) {
    if (error instanceof InputError) return null;
    throw error;
  }
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** Systems that have no jumper of their own to be found, and places beyond the one jumper of theirs. */
const mayHaveNone: readonly NotRequiredReason[] = [
  "ungrounded-system",
  "impedance-grounded",
  "jumper-of-other-system-serves",
  "grounded-conductor-kept-apart",
];

/** Conductors that stand in the schedule as drawn, though they may not be where they are drawn. */
function forbiddenPlaces(schedule: Schedule): (conductor: ScheduledConductor) => Forbidden | undefined {
  const of = (code: Schedule["violations"][number]["code"]): ReadonlyMap<string, string> =>
    new Map(
      schedule.violations
        .filter((one) => one.code === code)
        .flatMap(({ at, section }) => at.map((id) => [id, section])),
    );
  const jumpers = of("jumper-not-permitted-here");
  const electrodes = new Map([
    ...of("electrode-conductor-not-at-jumper"),
    ...of("electrode-conductor-not-at-impedance"),
  ]);
  return ({ role, subject, quantity, result: { citation, outcome } }) => {
    const { evidence } = citation;
    if (quantity === 0) {
      const isNone = outcome.kind === "not-required" && mayHaveNone.includes(outcome.why);
      return isNone ? { kind: "not-permitted", citation } : undefined;
    }
    const jumper = role === "system-bonding-jumper" ? jumpers.get(subject) : undefined;
    if (jumper !== undefined) return { kind: "not-permitted", citation: { section: jumper, evidence } };
    const electrode = role === "grounding-electrode-conductor" ? electrodes.get(subject) : undefined;
    return electrode === undefined
      ? undefined
      : { kind: "wrong-place", citation: { section: electrode, evidence } };
  };
}

/** Where the jumper of a derived system may be. */
export function jumperPlaceIn({ schedule }: Context): Citation {
  return systemJumperPlace[schedule.edition];
}

import {
  type ConductorEnd,
  type Installation,
  type Schedule,
  type ScheduledConductor,
  scheduleOf,
} from "bondmil";

/** A drawing with its schedule. */
export interface Built {
  readonly installation: Installation;
  readonly schedule: Schedule;
}

export function built(installation: Installation): Built {
  return { installation, schedule: scheduleOf(installation) };
}

/** What tells a conductor from the others of its schedule. */
export function nameOf({ id, alternative }: Pick<ScheduledConductor, "id" | "alternative">): string {
  return alternative === undefined ? id : `${id} [${alternative}]`;
}

/** The id of the place where a conductor starts or ends; `undefined` at a part without one. */
export function idAt(end: ConductorEnd): string | undefined {
  return end.kind === "place" ? end.id : undefined;
}

/** Conductors of a schedule by their names. */
export function named({ conductors }: Schedule): ReadonlyMap<string, ScheduledConductor> {
  return new Map(conductors.map((one) => [nameOf(one), one]));
}

/** What is asked for of a conductor: how many, and which. */
export function askedOf({ quantity, result }: ScheduledConductor): string {
  const { outcome, requiredArea, material } = result;
  const what = outcome.kind === "conductor" ? outcome.size : outcome.kind;
  return quantity === 0 ? "none" : `${quantity} x ${what} ${material} (${requiredArea})`;
}

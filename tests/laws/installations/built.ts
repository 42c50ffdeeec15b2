import { buildSchedule, type Drawing, type Schedule, type ScheduledConductor } from "bondmil";

/** A drawing with its schedule. */
export interface Built {
  readonly drawing: Drawing;
  readonly schedule: Schedule;
}

export function built(drawing: Drawing): Built {
  return { drawing, schedule: buildSchedule(drawing) };
}

/** What tells a conductor from the others of its schedule. */
export function nameOf({ id, alternative }: Pick<ScheduledConductor, "id" | "alternative">): string {
  return alternative === undefined ? id : `${id} [${alternative}]`;
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

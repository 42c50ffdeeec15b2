import type { Schedule, ScheduledConductor } from "../installation/schedule.js";
import type { Marked } from "./group.js";

/** Where in a picture a conductor belongs. */
export type SlotKind =
  /** Along a run, a circuit or from a generator. */
  | "along"
  /** Inside an enclosure, between the grounded conductor and the metal. */
  | "inside"
  /** To an electrode. */
  | "to-electrode"
  /** A jumper of the raceway around the conductor to an electrode. */
  | "around"
  /** From a place to a common electrode conductor. */
  | "tap"
  /** From a place towards electrodes that the drawing does not name. */
  | "to-electrodes"
  /** To a grounding impedance. */
  | "to-impedance"
  /** From a metal part or a termination. */
  | "of-metal";

/** The conductors of a schedule by the place where a picture shows them. */
export interface Slots {
  /** Conductors of a slot: those of every arrangement, and those of the one that is named. */
  readonly take: (kind: SlotKind, of: string, alternative?: string) => readonly Marked[];
  /** The arrangements that the conductors of these slots belong to. */
  readonly alternatives: (of: readonly string[]) => readonly string[];
  /** Conductors that nobody took. */
  readonly left: () => readonly Marked[];
}

/** Sorts the conductors of a schedule by where they are drawn, and remembers which were taken. */
export function slotsOf({ conductors }: Schedule): Slots {
  const slots = new Map<string, Marked[]>();
  const placed = new Map<string, Set<string>>();
  conductors.forEach((one, i) => {
    const { kind, of } = slotOf(one);
    const entry = { conductor: one, mark: i + 1 };
    const same = slots.get(keyOf(kind, of));
    if (same === undefined) slots.set(keyOf(kind, of), [entry]);
    else same.push(entry);
    if (one.alternative === undefined) return;
    const known = placed.get(of);
    if (known === undefined) placed.set(of, new Set([one.alternative]));
    else known.add(one.alternative);
  });
  const taken = new Set<number>();
  return {
    take: (kind, of, alternative) =>
      (slots.get(keyOf(kind, of)) ?? [])
        .filter(({ conductor: one }) => one.alternative === undefined || one.alternative === alternative)
        .map((one) => {
          taken.add(one.mark);
          return one;
        }),
    alternatives: (of) => [...new Set(of.flatMap((one) => [...(placed.get(one) ?? [])]))],
    left: () =>
      conductors.map((conductor, i) => ({ conductor, mark: i + 1 })).filter(({ mark }) => !taken.has(mark)),
  };
}

/** The slot of a conductor, by its role and what it belongs to; names that people give cannot mislead it. */
function slotOf(conductor: ScheduledConductor): { readonly kind: SlotKind; readonly of: string } {
  const { id, role, from, to } = conductor;
  const subject = subjectOf(conductor);
  switch (role) {
    case "main-bonding-jumper":
      return { kind: "inside", of: subject };
    case "system-bonding-jumper":
      return { kind: "inside", of: to };
    case "supply-side-bonding-jumper":
      return { kind: subject === to ? "inside" : "along", of: subject };
    case "grounded-conductor":
    case "equipment-grounding-conductor":
    case "equipment-bonding-jumper":
      return { kind: "along", of: subject };
    case "impedance-grounding-conductor":
      return { kind: "to-impedance", of: subject };
    case "impedance-bonding-jumper":
      return { kind: "inside", of: impedanceKey(subject) };
    case "grounding-electrode-conductor":
      if (id.startsWith("grounding-electrode-tap ")) return { kind: "tap", of: from };
      return to === "electrodes" ? { kind: "to-electrodes", of: from } : { kind: "to-electrode", of: to };
    case "electrode-bonding-jumper":
      return { kind: "to-electrode", of: to };
    case "electrode-raceway-bonding-jumper":
      return { kind: "around", of: subject };
    case "water-piping-bonding-jumper":
    case "other-piping-bonding-jumper":
    case "structural-metal-bonding-jumper":
    case "intersystem-bonding-conductor":
      return { kind: "of-metal", of: subject };
  }
}

/** Key of the impedance of a system, apart from every id, none of which has a line break. */
export function impedanceKey(system: string): string {
  return `${system}\nimpedance`;
}

/** What a conductor belongs to: its id without the role and the arrangement. */
export function subjectOf({ id, alternative }: ScheduledConductor): string {
  const end = alternative === undefined ? "" : ` (${alternative})`;
  const subject = id.slice(id.indexOf(" ") + 1);
  return end !== "" && subject.endsWith(end) ? subject.slice(0, -end.length) : subject;
}

function keyOf(kind: SlotKind, of: string): string {
  return `${kind}\n${of}`;
}

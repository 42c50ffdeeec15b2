import type { ConductorEnd, ConductorIdentity } from "../installation/conductor-identity.js";
import { numbered } from "../installation/numbered.js";
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
  /** From a grounding impedance to the equipment grounding conductors. */
  | "from-impedance"
  /** From a metal part or a termination. */
  | "of-metal";

type Alternative = ConductorIdentity["alternative"];

/** The conductors of a schedule by the place where a picture shows them. */
export interface Slots {
  /** Conductors of a slot: those of every arrangement, and those of the one that is named; of these, those that are meant. */
  readonly take: (
    kind: SlotKind,
    of: string,
    alternative?: Alternative,
    isMeant?: (conductor: ScheduledConductor) => boolean,
  ) => readonly Marked[];
  /** The arrangements that the conductors of these slots belong to. */
  readonly alternatives: (of: readonly string[]) => readonly NonNullable<Alternative>[];
  /** Conductors that nobody took. */
  readonly left: () => readonly Marked[];
}

/** Sorts the conductors of a schedule by where they are drawn, and remembers which were taken. */
export function slotsOf({ conductors }: Schedule): Slots {
  const slots = new Map<string, Marked[]>();
  const placed = new Map<string, Set<NonNullable<Alternative>>>();
  const all = numbered(conductors);
  const marks = new Map(all.map(({ conductor, mark }) => [conductor, mark]));
  for (const one of conductors) {
    const { kind, of } = slotOf(one);
    const entry = { conductor: one, mark: marks.get(one) ?? 0 };
    const same = slots.get(keyOf(kind, of));
    if (same === undefined) slots.set(keyOf(kind, of), [entry]);
    else same.push(entry);
    if (one.alternative === undefined) continue;
    const known = placed.get(of);
    if (known === undefined) placed.set(of, new Set([one.alternative]));
    else known.add(one.alternative);
  }
  const taken = new Set<number>();
  return {
    take: (kind, of, alternative, isMeant = () => true) =>
      (slots.get(keyOf(kind, of)) ?? [])
        .filter(({ conductor: one }) => one.alternative === undefined || one.alternative === alternative)
        .filter(({ conductor: one }) => isMeant(one))
        .map((one) => {
          taken.add(one.mark);
          return one;
        }),
    alternatives: (of) => [...new Set(of.flatMap((one) => [...(placed.get(one) ?? [])]))],
    left: () => all.filter(({ mark }) => !taken.has(mark)),
  };
}

/** The slot of a conductor, by its role, what it belongs to and where it ends. */
function slotOf(conductor: ScheduledConductor): { readonly kind: SlotKind; readonly of: string } {
  const { role, part, subject, from, to } = conductor;
  switch (role) {
    case "main-bonding-jumper":
      return { kind: "inside", of: subject };
    case "system-bonding-jumper":
      return { kind: "inside", of: idAt(to, subject) };
    case "supply-side-bonding-jumper":
      return { kind: to.kind === "assembly" || idAt(to) === subject ? "inside" : "along", of: subject };
    case "grounded-conductor":
    case "equipment-grounding-conductor":
    case "equipment-bonding-jumper":
      return { kind: "along", of: subject };
    case "impedance-grounding-conductor":
      return { kind: "to-impedance", of: subject };
    case "impedance-bonding-jumper":
      return { kind: "from-impedance", of: subject };
    case "grounding-electrode-conductor":
      if (part === "tap") return { kind: "tap", of: idAt(from, subject) };
      return to.kind === "electrodes"
        ? { kind: "to-electrodes", of: idAt(from, subject) }
        : { kind: "to-electrode", of: subject };
    case "electrode-bonding-jumper":
      return { kind: "to-electrode", of: subject };
    case "electrode-raceway-bonding-jumper":
      return { kind: "around", of: aroundOf(conductor) };
    case "water-piping-bonding-jumper":
    case "other-piping-bonding-jumper":
    case "structural-metal-bonding-jumper":
    case "intersystem-bonding-conductor":
      return { kind: "of-metal", of: subject };
  }
}

/** What tells the conductors to an electrode apart, so that each has the jumpers of its own raceway. */
export function aroundOf({ subject, place }: ConductorIdentity): string {
  return JSON.stringify([subject, place]);
}

/** The id of a place; of a part without one, what is given instead. */
function idAt(end: ConductorEnd, instead?: string): string {
  return end.kind === "place" ? end.id : (instead ?? "");
}

function keyOf(kind: SlotKind, of: string): string {
  return `${kind}\n${of}`;
}

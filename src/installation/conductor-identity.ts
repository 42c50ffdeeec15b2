import type { Role } from "../edition/index.js";

/** An arrangement of a system whose drawing leaves the place of its jumper open, so that several are put side by side. */
export type Alternative = "jumper-at-source" | "jumper-in-each-enclosure";

/** What tells a conductor of an installation from every other one. Plain JSON. */
export interface ConductorIdentity {
  /** What the conductor is there for. */
  readonly role: Role;
  /** A tap of a common grounding electrode conductor; absent of every other conductor. */
  readonly part?: "tap";
  /** Id in the installation of what it belongs to or serves: an enclosure, a run, a circuit, an electrode, a metal part. */
  readonly subject: string;
  /** Id of the place where it starts, given where several of one arrangement serve the same subject. */
  readonly place?: string;
  /** Where several arrangements are put side by side, the one that it belongs to. */
  readonly alternative?: Alternative;
}

/**
 * What a wire lands on at a place. A bar is in an enclosure, a bus in an assembly, a terminal at a source; the grounded conductor is one that
 * passes through a box.
 */
export type Landing =
  | "neutral-bar"
  | "grounded-phase-bar"
  | "grounding-bar"
  | "neutral-bus"
  | "grounded-phase-bus"
  | "grounding-bus"
  | "neutral-terminal"
  | "grounded-phase-terminal"
  | "grounded-conductor"
  | "enclosure";

/**
 * Where a conductor starts or ends: at something that the installation names, or at a part that has no id of its own; {@link endName} says it in words.
 */
export type ConductorEnd =
  | {
      /** Tells the members of the union apart. */
      readonly kind: "place";
      /** Id of the place. */
      readonly id: string;
      /** What the wire lands on there; absent where only the place is known. */
      readonly on?: Landing;
    }
  /** The listed assembly of a service. */
  | {
      /** Tells the members of the union apart. */
      readonly kind: "assembly";
      /** Id of the service whose disconnects it holds. */
      readonly of: string;
      /** What the wire lands on there; absent where only the assembly is known. */
      readonly on?: Landing;
    }
  /** The neutral point of a source. */
  | {
      /** Tells the members of the union apart. */
      readonly kind: "neutral-point";
      /** What it belongs to. */
      readonly of: string;
    }
  /** Where the electrode conductor of a derived system is connected, if its arrangements differ in it. */
  | {
      /** Tells the members of the union apart. */
      readonly kind: "electrode-connection";
      /** What it belongs to. */
      readonly of: string;
    }
  /** The grounding impedance of a system. */
  | {
      /** Tells the members of the union apart. */
      readonly kind: "impedance";
      /** What it belongs to. */
      readonly of: string;
    }
  /** The fittings at which the raceways of a run end. */
  | {
      /** Tells the members of the union apart. */
      readonly kind: "raceway-fitting";
      /** Id of the run. */
      readonly of: string;
    }
  /** A metal water pipe on one side of something that is likely to be taken out of it. */
  | {
      /** Tells the members of the union apart. */
      readonly kind: "pipe-side";
      /** Id of the pipe. */
      readonly of: string;
      /** Id of what may be taken out. */
      readonly fitting: string;
      /** Which side of it; nobody says which is the street's. */
      readonly side: "one" | "other";
    }
  /** The ferrous raceway around a conductor. */
  | {
      /** Tells the members of the union apart. */
      readonly kind: "raceway";
      /** The conductor that the raceway is around. */
      readonly around: ConductorIdentity;
    }
  | {
      /** Tells the members of the union apart. */
      readonly kind: UnnamedEnd;
    };

/** Parts that each system, or the installation as a whole, has once. */
export type UnnamedEnd =
  | "grounded-conductor"
  | "grounding-electrode-conductor"
  | "equipment-grounding-conductors"
  | "electrodes"
  | "source"
  | "first-disconnect"
  | "panel-of-occupancy"
  | "conductor-inside";

/** The name by which programs refer to a conductor, for example `main-bonding-jumper D1`. It is printed and never read back. */
export function idOf({ role, part, subject, place, alternative }: ConductorIdentity): string {
  const from = place === undefined ? "" : ` from ${place}`;
  // Where a system bonding jumper is tells its arrangement.
  const isSaid = alternative === undefined || role === "system-bonding-jumper";
  return `${part === "tap" ? "grounding-electrode-tap" : role} ${subject}${from}${isSaid ? "" : ` (${alternative})`}`;
}

/** A text that no other conductor has, whatever the installation's ids are; for look-up only. */
export function keyOf({ role, part, subject, place, alternative }: ConductorIdentity): string {
  return JSON.stringify([role, part, subject, place, alternative]);
}

/** The identity of a conductor without anything else. */
export function identityOf({
  role,
  part,
  subject,
  place,
  alternative,
}: ConductorIdentity): ConductorIdentity {
  return {
    role,
    ...(part && { part }),
    subject,
    ...(place === undefined ? {} : { place }),
    ...(alternative && { alternative }),
  };
}

/** The ids of an installation by which an end may be named, whatever the wire lands on there; none of a part that has no id. */
export function idsOfEnd(end: ConductorEnd): readonly string[] {
  switch (end.kind) {
    case "place":
      return [end.id];
    case "assembly":
    case "neutral-point":
    case "impedance":
    case "raceway-fitting":
      return [end.of];
    case "pipe-side":
      return [end.of, end.fitting];
    case "raceway":
      return [end.around.subject];
    default:
      return [];
  }
}

/** Whether an end is the place with an id. */
export function isAt(end: ConductorEnd, id: string): boolean {
  return end.kind === "place" && end.id === id;
}

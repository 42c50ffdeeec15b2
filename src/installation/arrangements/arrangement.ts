import { areaOf } from "../../conductor/index.js";
import type { Citation, EditionYear } from "../../edition/index.js";
import type { Marks } from "../../input/given-result.js";
import type { SizingResult } from "../../rules/result.js";
import { keyOf } from "../conductor-identity.js";
import type { PlacedCaution, ScheduledConductor } from "../schedule.js";
import type { Violation } from "../violation.js";

/** Which choice: where the jumper or the jumpers are, or how the electrode conductors run. */
export type ArrangementId =
  | "jumper-in-each-enclosure"
  | "one-jumper-in-listed-assembly"
  | "jumper-at-source"
  | "jumpers-at-source-and-disconnect"
  | "common-electrode-conductor"
  | "individual-electrode-conductors"
  | "electrode-conductor-at-one-place"
  | "jumper-in-each-raceway"
  | "one-common-raceway-jumper";

/** What is connected. */
export type ConnectionKind =
  | "grounded-conductor"
  | "grounding-electrode-conductor"
  | "supply-side-bonding-jumper"
  | "second-connection-supply-side"
  | "second-connection-load-side"
  | "second-connection-at-source"
  | "second-connection-at-disconnect";

/** How the code regards a connection: it must be there, may be there, or is a fault. */
export type ConnectionStatus = "required" | "permitted" | "fault";

/** A connection that an arrangement requires, permits or forbids. */
export interface Connection {
  /** What is connected. */
  readonly kind: ConnectionKind;
  /** Whether it is required, permitted, or a fault. */
  readonly status: ConnectionStatus;
  /** Ids of the places; empty where the rule names no single place. */
  readonly at: readonly string[];
  /** Stable code of a remark; its words are rendered from it. */
  readonly note: ConnectionNote;
  /** Where the edition says so. */
  readonly citation: Citation;
}

/** Stable code of what there is to say about a connection; its words are rendered from it. */
export type ConnectionNote =
  | "bonded-in-each-enclosure"
  | "bonded-at-assembly-terminal"
  | "anywhere-on-supply-side"
  | "common-individual-or-one-place"
  | "several-on-supply-side-are-normal"
  | "none-beyond-the-disconnect"
  | "by-jumper-or-grounded-conductor"
  | "table-minimum-applies"
  | "sized-for-its-load-only"
  | "at-the-jumper"
  | "at-each-jumper"
  | "at-one-jumper"
  | "at-the-source"
  | "tap-into-each-enclosure"
  | "from-each-enclosure"
  | "at-one-place-ahead"
  | "frame-may-serve-as-common"
  | "from-source-to-each-enclosure"
  | "not-required-with-both-jumpers"
  | "only-one-point-per-system"
  | "at-least-the-jumper";

/** Whether an arrangement is legal as it stands. */
export type ArrangementStatus = "permitted" | "permitted-without-parallel-path" | "not-permitted";

/** One whole choice. */
export interface Arrangement {
  /** Stable id. */
  readonly id: ArrangementId;
  /** Whether the edition permits it. */
  readonly status: ArrangementStatus;
  /** Where the edition says so. */
  readonly citation: Citation;
  /** As the schedule of an installation has them; `by` names the places whose conductors decide. */
  readonly conductors: readonly ScheduledConductor[];
  /** Circular mils of all its conductors together: of the standard sizes, or of the areas for a bus. */
  readonly totalArea: number;
  /** Where the parts are connected, and which further connections are normal or a fault. */
  readonly connections: readonly Connection[];
  /** What the edition forbids in it. */
  readonly violations: readonly Violation[];
  /** About the arrangement as a whole. */
  readonly cautions: readonly PlacedCaution[];
}

/** What can differ between two arrangements. */
export type Difference =
  | "sizes"
  | "total-metal"
  | "grounded-conductor"
  | "grounding-electrode-conductor"
  | "second-connections";

/** The choices side by side, in the order in which they are described; none is preferred. */
export interface ArrangementComparison {
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** The arrangements, in a stable order. */
  readonly arrangements: readonly Arrangement[];
  /** What differs among the arrangements. */
  readonly differences: readonly Difference[];
}

/** Puts arrangements side by side and says in what they differ. */
export function compareArrangements(
  edition: EditionYear,
  arrangements: readonly Arrangement[],
): ArrangementComparison {
  const views: Readonly<Record<Difference, (one: Arrangement) => unknown>> = {
    sizes: (one) => one.conductors.map(({ result, ...rest }) => [keyOf(rest), result.outcome]),
    "total-metal": (one) => one.totalArea,
    "grounded-conductor": (one) => connectionsOf(one, (kind) => kind === "grounded-conductor"),
    "grounding-electrode-conductor": (one) =>
      connectionsOf(one, (kind) => kind === "grounding-electrode-conductor"),
    "second-connections": (one) => connectionsOf(one, (kind) => kind.startsWith("second-connection")),
  };
  const differences = (Object.keys(views) as Difference[]).filter(
    (difference) => new Set(arrangements.map((one) => JSON.stringify(views[difference](one)))).size > 1,
  );
  return { edition, arrangements, differences };
}

/** An arrangement with the metal of its conductors added. */
export function arrangementOf({ conductors, ...rest }: Omit<Arrangement, "totalArea">): Arrangement {
  const totalArea = conductors.reduce((sum, { quantity, result }) => sum + quantity * metalOf(result), 0);
  const { id, status, citation, ...more } = rest;
  return { id, status, citation, conductors, totalArea, ...more };
}

function metalOf({ outcome, requiredArea }: SizingResult): number {
  return outcome.kind === "conductor" ? areaOf(outcome.size) : requiredArea;
}

function connectionsOf(one: Arrangement, wanted: (kind: ConnectionKind) => boolean): unknown {
  return one.connections
    .filter(({ kind }) => wanted(kind))
    .map(({ kind, status, at, note }) => [kind, status, at, note]);
}

/** By what a comparison of arrangements is known. */
export const arrangementMarks: Marks<ArrangementComparison> = {
  edition: "text",
  arrangements: "list",
  differences: "list",
};

import type { ConductorColumn, ConductorSize, Material } from "../conductor/index.js";
import type { Role } from "./role.js";
import type { Readings } from "./tables/readings.generated.js";

/**
 * Kinds of grounding electrodes (250.52).
 *
 * @example
 * ```ts
 * import { electrodeKinds } from "bondmil";
 * electrodeKinds.includes("ring"); // => true
 * ```
 */
export const electrodeKinds = [
  "rod",
  "pipe",
  "plate",
  "concrete-encased",
  "metal-water-pipe",
  "structural-metal",
  "other",
  "ring",
] as const;

/** Kind of a grounding electrode. */
export type ElectrodeKind = (typeof electrodeKinds)[number];

/** Tables of which a cell can be amended. */
export type AmendableTable = "electrode-conductor" | "bonding-conductor" | "equipment-grounding";

/** Where an amendment stands. */
export interface AmendmentCitation {
  /** Who enforces it, for example a city or a state. */
  readonly jurisdiction: string;
  /** Section or ordinance. */
  readonly section: string;
  /** Address of the text, if there is one. */
  readonly url?: string;
}

/** When an amendment applies; without a condition always. Every member that is given must hold. */
export interface AmendmentCondition {
  /** Length of the circuit or run in feet below which it applies. */
  readonly lengthBelowFeet?: number;
  /** Length in feet from which it applies. */
  readonly lengthFromFeet?: number;
  /** Location to which it is limited. */
  readonly location?: string;
  /** Rating of the service in amperes from which it applies. */
  readonly serviceFromAmperes?: number;
  /** Rating of the service in amperes through which it applies. */
  readonly serviceThroughAmperes?: number;
}

interface AnyAmendment {
  readonly citation: AmendmentCitation;
  readonly when?: AmendmentCondition;
}

/** Another value in a cell of a table. */
export interface CellAmendment extends AnyAmendment {
  readonly kind: "cell";
  readonly table: AmendableTable;
  /** The row: its largest copper supply size, its device rating in amperes, or `last` for the open last row. */
  readonly row: string | number;
  readonly column: ConductorColumn;
  readonly size: ConductorSize;
}

/** A size below which a role may not fall. A material without a size of its own is not concerned. */
export interface FloorAmendment extends AnyAmendment {
  readonly kind: "floor";
  readonly role: Role;
  readonly copper?: ConductorSize;
  readonly aluminum?: ConductorSize;
}

/**
 * Another basis for a role: no increase in proportion (of equipment grounding conductors, which takes the load-side jumpers along, or of
 * those jumpers alone), no ceiling for particular electrodes (of electrode conductors, which takes the jumpers to electrodes along, or of
 * those jumpers alone), or the table of equipment grounding conductors by the service's rating in place of the role's own table of
 * supply areas.
 */
export interface BasisAmendment extends AnyAmendment {
  readonly kind: "basis";
  readonly role: Role;
  readonly use: "no-increase" | "no-electrode-ceiling" | "equipment-grounding-table";
  /** For `no-electrode-ceiling`, the kind of electrode whose ceiling is lifted; every kind unless told. */
  readonly electrode?: ElectrodeKind;
}

/** A reading that the jurisdiction enforces. */
export interface ReadingAmendment extends AnyAmendment {
  readonly kind: "reading";
  readonly reading: keyof Readings;
  readonly alternative: string;
}

/** A material that may not be used, for a role or for all, at any size or below one. */
export interface MaterialAmendment extends AnyAmendment {
  readonly kind: "material";
  readonly role: Role | "every-role";
  readonly material: Material;
  /** Smallest size of this material that is allowed; none is unless told. */
  readonly allowedFrom?: ConductorSize;
}

/** A wire is always required where the code would let something else serve. */
export interface AlwaysWireAmendment extends AnyAmendment {
  readonly kind: "always-wire";
  readonly role: Role;
}

/** A change that a jurisdiction makes to an edition, or that a proposal would make. Plain JSON, of a closed set of kinds. */
export type Amendment =
  | CellAmendment
  | FloorAmendment
  | BasisAmendment
  | ReadingAmendment
  | MaterialAmendment
  | AlwaysWireAmendment;

/** What is known of the place and the run, for amendments under a condition. */
export interface Circumstances {
  /** Length of the circuit or run in feet. */
  readonly lengthFeet?: number;
  readonly location?: string;
  /** Rating of the service in amperes. */
  readonly serviceAmperes?: number;
}

/** Whether a condition holds; `unknown` where it asks for something that is not told. */
export type Holds = "yes" | "no" | "unknown";

/** Whether an amendment applies under what is known. */
export function holds({ when = {} }: Amendment, known: Circumstances = {}): Holds {
  const tests: readonly Holds[] = [
    compare(when.lengthBelowFeet, known.lengthFeet, (limit, length) => length < limit),
    compare(when.lengthFromFeet, known.lengthFeet, (limit, length) => length >= limit),
    compare(when.location, known.location, (wanted, location) => wanted === location),
    compare(when.serviceFromAmperes, known.serviceAmperes, (limit, amperes) => amperes >= limit),
    compare(when.serviceThroughAmperes, known.serviceAmperes, (limit, amperes) => amperes <= limit),
  ];
  if (tests.includes("no")) return "no";
  return tests.includes("unknown") ? "unknown" : "yes";
}

/** A code, as far as its amendments go. */
export interface Amended {
  readonly amendments?: readonly Amendment[];
  readonly circumstances?: Circumstances;
}

/** The amendments of a kind that apply under a code. */
export function amendmentsInForce<K extends Amendment["kind"]>(
  { amendments = [], circumstances }: Amended,
  kind: K,
): readonly Extract<Amendment, { readonly kind: K }>[] {
  return amendments.filter(
    (one): one is Extract<Amendment, { readonly kind: K }> =>
      one.kind === kind && holds(one, circumstances) === "yes",
  );
}

/** How an amendment is cited in a result. */
export function citeAmendment({ citation }: Amendment): string {
  return `${citation.jurisdiction}, ${citation.section}`;
}

function compare<T>(
  limit: T | undefined,
  known: T | undefined,
  test: (limit: T, known: T) => boolean,
): Holds {
  if (limit === undefined) return "yes";
  if (known === undefined) return "unknown";
  return test(limit, known) ? "yes" : "no";
}

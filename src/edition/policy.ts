import type { ConductorColumn, ConductorSize } from "../conductor/index.js";
import type { Citation } from "./citation.js";
import type { ByEdition } from "./supply-area-table.js";

/**
 * Which sum of several sets counts: the largest phase-by-phase sum over the sets (`corresponding`), or each set's largest
 * conductor added (`largest`). With unlike phases the two differ. `largest-conductor` is a reading: the one largest conductor.
 */
export type SumRule = "corresponding" | "largest" | "largest-conductor";

/** Which table of supply areas a role enters. */
export type SupplyAreaTableId = "electrode-conductor" | "bonding-conductor";

/**
 * When a supply of another material is replaced by assumed conductors of the sized conductor's own material with the same
 * ampacity. `larger-of-both` stands where the text has no sentence: above the threshold both ways are taken. `larger-through-threshold` stands
 * where it is open whether there is a threshold: through it both ways are taken, above it the conductors are replaced.
 */
export type OtherMaterialRule =
  | "never"
  | "above-threshold"
  | "parallel-above-threshold"
  | "always"
  | "larger-of-both"
  | "larger-through-threshold";

/** A size in each column, with its place in the edition. */
export interface Limit extends Readonly<Record<ConductorColumn, ConductorSize>> {
  /** Where the edition says so. */
  readonly citation: Citation;
}

/** A size that a section names outright; no aluminum where none is named. */
export interface NamedSize {
  readonly copper: ConductorSize;
  readonly aluminum: ConductorSize | null;
  readonly citation: Citation;
}

/**
 * How one role is sized in one edition, as data. What differs between editions is a row like this or a table value.
 */
export interface Policy {
  /** Table of supply areas. */
  readonly table: SupplyAreaTableId;
  /** Sum that enters the table. */
  readonly sum: SumRule;
  /** Whether 12.5 percent of the sum governs above the table's last bounded row. */
  readonly oneEighth: boolean;
  /** Whether the table's last row stays as a floor beside the 12.5 percent rule. */
  readonly lastRowFloor: boolean;
  /** Whether the result need not exceed the ungrounded conductors in parallel (`set`) or one of them (`conductor`). */
  readonly cap: "none" | "set" | "conductor";
  /** Size above which the result is not required to rise. */
  readonly ceiling: Limit | null;
  /** Size below which the result may not fall. */
  readonly floor: Limit | null;
  /** When conductors of another material are replaced by assumed ones. */
  readonly otherMaterial: OtherMaterialRule;
  /** Whether the edition names aluminum and copper-clad aluminum among the materials of this conductor. */
  readonly namesAluminum: boolean;
  /** Where the edition says so. */
  readonly basis: PolicyBasis;
}

/** The place in the edition for each part of a {@link Policy}. */
export interface PolicyBasis {
  /** The rule that sends the role to its table. */
  readonly rule: Citation;
  /** The table's rows. */
  readonly row: Citation;
  /** The 12.5 percent sentence. */
  readonly oneEighth: Citation;
  /** The sentence that limits the size. */
  readonly cap: Citation;
  /** The sentence on different materials. */
  readonly otherMaterial: Citation;
  /** The sentence on the conductor's own material. */
  readonly material: Citation;
  /** The sentence on several sets. */
  readonly sum: Citation;
}

/** A role's policies, one per edition, under a stable name. A role may have several sets, for example by kind of system. */
export interface PolicySet<P = Policy> {
  /** Stable id. */
  readonly id: string;
  /** The policy of each edition. */
  readonly byEdition: ByEdition<P>;
}

import type { Material } from "../conductor/index.js";
import type { Citation, Code, PolicySet, Role } from "../edition/index.js";
import type { Governing, Step } from "../sizing/index.js";
import type { Caution } from "./caution.js";
import type { ConductorForm } from "./result.js";

/** A required area with its steps, ready to become a result. */
export interface Decided {
  readonly role: Role;
  readonly code: Code;
  readonly material: Material;
  /** A wire unless told. */
  readonly form?: ConductorForm;
  readonly steps: readonly Step[];
  readonly governs: Governing;
  readonly requiredArea: number;
  /** How many such conductors; 1 unless told. */
  readonly quantity?: number;
  /** The rule that sends the role to its table or size. */
  readonly citation: Citation;
  /** The policies whose open readings may have a say; none unless told. */
  readonly policies?: Pick<PolicySet, "id">;
  readonly cautions?: readonly Caution[];
}

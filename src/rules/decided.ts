import type { Material } from "../conductor/index.js";
import type { Citation, Code, PolicySet, Role, RoleFacts } from "../edition/index.js";
import type { Governing, Step } from "../sizing/index.js";
import type { Caution } from "./caution.js";
import type { ConductorForm } from "./result.js";

/** A required area with its steps, ready to become a result. */
export interface Decided<Id extends Role = Role> {
  readonly facts: RoleFacts<Id>;
  readonly code: Code;
  readonly material: Material;
  /** A wire by default. */
  readonly form?: ConductorForm;
  readonly steps: readonly Step[];
  readonly governs: Governing;
  readonly requiredArea: number;
  /** How many such conductors; 1 by default. */
  readonly quantity?: number;
  /** The rule that sends the role to its table or size. */
  readonly citation: Citation;
  /** The policies whose open readings may have a say; none by default. */
  readonly policies?: Pick<PolicySet, "id">;
  /** What there is to say; asked only of the decision that becomes the result, not of those that are compared with it. */
  readonly cautions?: () => readonly Caution[];
}

/** A decision with more to say. */
export function saying<D extends Decided>(decided: D, more: () => readonly Caution[]): D {
  return { ...decided, cautions: () => [...(decided.cautions?.() ?? []), ...more()] };
}

import type { Evidence } from "./evidence.js";

/** A place in the edition that a result names, and how surely its wording or value is known. */
export interface Citation {
  /** Section, table or note, for example `Table 250.102(C)(1) note 1`. */
  readonly section: string;
  /** How sure the library is of what stands there in this edition. */
  readonly evidence: Evidence;
}

import type { Input, Role, roles } from "../../../src/index.js";

/** An input of bondmil without its code; of a union, each member without it. */
export type Uncoded<I> = I extends unknown ? Omit<I, "code"> : never;

/**
 * What the checks of each role give an implementation: the input that bondmil takes for that role, less the code, which is
 * the edition of the question. Areas are in circular mils, currents in amperes.
 */
export type CheckInputs = { readonly [R in Role]: Uncoded<Input<(typeof roles)[R]>> };

/** Input of any check. */
export type CheckInput = CheckInputs[Role];

import { type Reader, readAll } from "../input/reader.js";
import { checkRole } from "./check-role.js";

/** Something that sizes: the value of a role, or {@link cableTrayAsEquipmentGroundingConductor}. */
export interface Sizing<Input, Result> {
  /** Checks an input; everything wrong is noted. */
  read(at: Reader): Input | undefined;
  /** Sizes, the input being checked. */
  decide(input: Input): Result;
}

/**
 * Sizes a conductor: checks the input once, and decides.
 *
 * @param role - the value of a role, for example {@link mainBondingJumper}
 * @param input - what the role takes; always a code, with the edition that the jurisdiction enforces
 * @returns the size, or the area for a bus, or why no conductor is required, with every step; areas in circular mils. Plain JSON that
 *   shares nothing with the input
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { mainBondingJumper, size } from "bondmil";
 * const jumper = size(mainBondingJumper, {
 *   code: { year: "2020" },
 *   supply: { sets: [{ count: 2, size: "500 kcmil", material: "copper" }] },
 *   conductor: { material: "copper" },
 * });
 * jumper.outcome; // => { kind: "conductor", size: "2/0 AWG", quantity: 1 }
 * jumper.citation.section; // => "250.28(D)(1)"
 * ```
 */
export function size<Input, Result>(role: Sizing<Input, Result>, input: NoInfer<Input>): Result {
  checkRole(role);
  return role.decide(readAll<Input>(input, (at) => role.read(at)));
}

import { mainBondingJumperPolicies } from "../edition/tables/policies.generated.js";
import { type JumperRole, sizeJumper } from "./jumper.js";
import type { JumperInput } from "./jumper-input.js";
import { type Prepared, type PreparedRequest, prepareJumper } from "./prepare.js";
import type { SizingResult } from "./result.js";

const mainBondingJumper: JumperRole = { role: "main-bonding-jumper", policies: mainBondingJumperPolicies };

/**
 * Sizes a main bonding jumper: the connection, inside the enclosure of a service disconnect, between the grounded conductor
 * and the enclosure with its equipment grounding conductors (250.28(D)(1); 250.28(D)(2) where a service has several
 * enclosures, each by the ungrounded conductors to it).
 *
 * @param input - the code, the ungrounded conductors to the enclosure, and the jumper's material and form
 * @returns the size, or the area for a bus, with every step; areas in circular mils
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { explain, sizeMainBondingJumper } from "bondmil";
 * const jumper = sizeMainBondingJumper({
 *   code: { year: "2023" },
 *   supply: { sets: [{ count: 3, size: "600 kcmil", material: "copper" }] },
 *   jumper: { material: "copper" },
 * });
 * jumper.outcome; // => { kind: "conductor", size: "250 kcmil", quantity: 1 }
 * jumper.governs; // => "one-eighth"
 * ```
 */
export function sizeMainBondingJumper(input: JumperInput): SizingResult {
  return sizeJumper(mainBondingJumper, input);
}

/**
 * Prepares the sizing of a main bonding jumper for a loop: the same kernel, area in, required area out, without steps.
 *
 * @param request - the code and the materials
 * @returns a function of areas in circular mils; where the materials differ it also wants the assumed area
 * @throws {@link InputError} listing everything that is wrong in the request
 *
 * @example
 * ```ts
 * import { prepareMainBondingJumper } from "bondmil";
 * const prepared = prepareMainBondingJumper({ code: { year: "2023" }, supply: "copper", jumper: "copper" });
 * prepared.kind === "by-area" && prepared.requiredArea(1800000); // => 225000
 * ```
 */
export function prepareMainBondingJumper(request: PreparedRequest): Prepared {
  return prepareJumper(mainBondingJumper, request);
}

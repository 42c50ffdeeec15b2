import { systemBondingJumperPolicies } from "../edition/tables/policies.generated.js";
import { type JumperRole, sizeJumper } from "./jumper.js";
import type { JumperInput } from "./jumper-input.js";
import { type Prepared, type PreparedRequest, prepareJumper } from "./prepare.js";
import type { SizingResult } from "./result.js";

const systemBondingJumper: JumperRole = {
  role: "system-bonding-jumper",
  policies: systemBondingJumperPolicies,
};

/**
 * Sizes a system bonding jumper: the connection between the grounded conductor of a separately derived system and its
 * supply-side bonding jumper or equipment grounding conductors (250.28(D)(1); 250.28(D)(3) where the system feeds several
 * enclosures). For a jumper in an enclosure the supply is the feeder to it; for one at the source, all feeders together.
 *
 * @param input - the code, the derived ungrounded conductors, and the jumper's material and form
 * @returns the size, or the area for a bus, with every step; areas in circular mils
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { sizeSystemBondingJumper } from "bondmil";
 * const jumper = sizeSystemBondingJumper({
 *   code: { year: "2020" },
 *   supply: { sets: [{ count: 1, size: "4/0 AWG", material: "copper" }] },
 *   jumper: { material: "copper" },
 * });
 * jumper.outcome; // => { kind: "conductor", size: "2 AWG", quantity: 1 }
 * ```
 */
export function sizeSystemBondingJumper(input: JumperInput): SizingResult {
  return sizeJumper(systemBondingJumper, input);
}

/**
 * Prepares the sizing of a system bonding jumper for a loop: the same kernel, area in, required area out, without steps.
 *
 * @param request - the code and the materials
 * @returns a function of areas in circular mils; where the materials differ it also wants the assumed area
 * @throws {@link InputError} listing everything that is wrong in the request
 *
 * @example
 * ```ts
 * import { prepareSystemBondingJumper } from "bondmil";
 * const prepared = prepareSystemBondingJumper({ code: { year: "2023" }, supply: "copper", jumper: "copper" });
 * prepared.kind === "by-area" && prepared.requiredArea(1800000); // => 225000
 * ```
 */
export function prepareSystemBondingJumper(request: PreparedRequest): Prepared {
  return prepareJumper(systemBondingJumper, request);
}

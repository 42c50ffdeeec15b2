import { supplySideBondingJumperPolicies } from "../edition/tables/policies.generated.js";
import { type JumperRole, sizeJumper } from "./jumper.js";
import type { JumperInput } from "./jumper-input.js";
import { type Prepared, type PreparedRequest, prepareJumper } from "./prepare.js";
import type { SizingResult } from "./result.js";

const supplySideBondingJumper: JumperRole = {
  role: "supply-side-bonding-jumper",
  policies: supplySideBondingJumperPolicies,
};

/**
 * Sizes a supply-side bonding jumper, which bonds metal raceways, wireways and boxes ahead of the first overcurrent device
 * (250.102(C)). The supply is the ungrounded conductors that the jumper serves: those in one raceway for a jumper of that
 * raceway, all of them for one jumper in common or for a wireway.
 *
 * @param input - the code, the ungrounded conductors that the jumper serves, and its material and form
 * @returns the size, or the area for a bus, with every step; areas in circular mils
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { sizeSupplySideBondingJumper } from "bondmil";
 * const inOneRaceway = sizeSupplySideBondingJumper({
 *   code: { year: "2017" },
 *   supply: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] },
 *   jumper: { material: "copper" },
 * });
 * inOneRaceway.outcome; // => { kind: "conductor", size: "1/0 AWG", quantity: 1 }
 * ```
 */
export function sizeSupplySideBondingJumper(input: JumperInput): SizingResult {
  return sizeJumper(supplySideBondingJumper, input);
}

/**
 * Prepares the sizing of a supply side bonding jumper for a loop: the same kernel, area in, required area out, without steps.
 *
 * @param request - the code and the materials
 * @returns a function of areas in circular mils; where the materials differ it also wants the assumed area
 * @throws {@link InputError} listing everything that is wrong in the request
 *
 * @example
 * ```ts
 * import { prepareSupplySideBondingJumper } from "bondmil";
 * const prepared = prepareSupplySideBondingJumper({ code: { year: "2023" }, supply: "copper", jumper: "copper" });
 * prepared.kind === "by-area" && prepared.requiredArea(1800000); // => 225000
 * ```
 */
export function prepareSupplySideBondingJumper(request: PreparedRequest): Prepared {
  return prepareJumper(supplySideBondingJumper, request);
}

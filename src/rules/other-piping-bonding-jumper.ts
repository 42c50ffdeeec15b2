import type { Material } from "../conductor/index.js";
import { type Code, readCode } from "../edition/index.js";
import { otherPiping } from "../edition/tables/sections.generated.js";
import { member, type Reader, readAll, readObject } from "../input/reader.js";
import { isAlwaysWire } from "./amendment-effects.js";
import type { Caution } from "./caution.js";
import { finish } from "./finish.js";
import { readConductorMaterial } from "./impedance-grounding-conductor.js";
import { decideByDevice } from "./piping-by-device.js";
import { readRating } from "./protected-circuit.js";
import type { SizingResult } from "./result.js";

/** A bonding jumper to metal piping that is not water piping and is likely to become energized, gas piping among them. */
export interface OtherPipingInput {
  readonly code: Code;
  /** Rating in amperes of the device of the circuit that is likely to energize the piping. */
  readonly deviceAmperes: number;
  readonly jumper: { readonly material: Material };
}

/**
 * Sizes the bonding jumper of other metal piping by the circuit that is likely to energize it (250.104(B), Table 250.122). The
 * equipment grounding conductor of that circuit may serve in its place.
 *
 * @param input - the code, the device of the circuit, and the jumper's material
 * @returns the size with its row as a step; areas in circular mils
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { sizeOtherPipingBondingJumper } from "bondmil";
 * const jumper = sizeOtherPipingBondingJumper({
 *   code: { year: "2020" },
 *   deviceAmperes: 20,
 *   jumper: { material: "copper" },
 * });
 * jumper.outcome; // => { kind: "conductor", size: "12 AWG", quantity: 1 }
 * ```
 */
export function sizeOtherPipingBondingJumper(input: OtherPipingInput): SizingResult {
  const { code, deviceAmperes, jumper } = readAll(input, readInput);
  const rule = otherPiping[code.year];
  const mayServe: readonly Caution[] = isAlwaysWire(code, role)
    ? []
    : [{ code: "equipment-grounding-conductor-may-serve", section: rule.section }];
  return finish(code, (under) => {
    const decided = decideByDevice(role, under, jumper.material, deviceAmperes, rule);
    return { ...decided, cautions: [...mayServe, ...decided.cautions] };
  });
}

const role = "other-piping-bonding-jumper";

function readInput(at: Reader): OtherPipingInput | undefined {
  if (!readObject(at, ["code", "deviceAmperes", "jumper"])) return undefined;
  const code = readCode(member(at, "code"));
  const deviceAmperes = readRating(member(at, "deviceAmperes"), code);
  const jumper = readConductorMaterial(member(at, "jumper"));
  if (code === undefined || deviceAmperes === undefined || jumper === undefined) return undefined;
  return { code, deviceAmperes, jumper };
}

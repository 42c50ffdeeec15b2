import type { Material } from "../conductor/index.js";
import { type Code, readCode } from "../edition/index.js";
import { equipmentBondingJumperPolicies } from "../edition/tables/rating-policies.generated.js";
import { member, type Reader, readAll, readObject } from "../input/reader.js";
import { readRequest } from "./equipment-grounding-conductor-input.js";
import { finish } from "./finish.js";
import { type ProtectedCircuit, readCircuits } from "./protected-circuit.js";
import { decideByRating, type RatedRole } from "./rated-conductor.js";
import type { SizingResult } from "./result.js";

/** An equipment bonding jumper on the load side of an overcurrent device, to be sized. */
export interface EquipmentBondingJumperInput {
  readonly code: Code;
  /** The circuit in the raceway or enclosure that it bonds, or all those in the raceways that one jumper bonds in common. */
  readonly circuits: readonly ProtectedCircuit[];
  readonly jumper: { readonly material: Material };
}

const equipmentBondingJumper: RatedRole = {
  role: "equipment-bonding-jumper",
  policies: equipmentBondingJumperPolicies,
};

/**
 * Sizes an equipment bonding jumper on the load side of an overcurrent device, as an equipment grounding conductor (250.102(D));
 * one jumper in common for several raceways goes by the largest device. In 2008 not below 14 AWG and not required larger than
 * the largest ungrounded circuit conductor. On the supply side it is a supply-side bonding jumper and goes by the conductors.
 *
 * @param input - the code, the circuits with their devices, and the jumper's material
 * @returns the size with every step; areas in circular mils
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { sizeEquipmentBondingJumper } from "bondmil";
 * const inCommon = sizeEquipmentBondingJumper({
 *   code: { year: "2017" },
 *   circuits: [
 *     { device: { amperes: 400 } },
 *     { device: { amperes: 600 } },
 *     { device: { amperes: 1200 } },
 *   ],
 *   jumper: { material: "copper" },
 * });
 * inCommon.outcome; // => { kind: "conductor", size: "3/0 AWG", quantity: 1 }
 * ```
 */
export function sizeEquipmentBondingJumper(input: EquipmentBondingJumperInput): SizingResult {
  const { code, circuits, jumper } = readAll(input, readInput);
  return finish(code, (under) =>
    decideByRating(equipmentBondingJumper, { code: under, circuits, conductor: jumper }),
  );
}

function readInput(at: Reader): EquipmentBondingJumperInput | undefined {
  if (!readObject(at, ["code", "circuits", "jumper"])) return undefined;
  const code = readCode(member(at, "code"));
  const circuits = readCircuits(member(at, "circuits"), code);
  const jumper = readRequest(member(at, "jumper"));
  return code && circuits && jumper && { code, circuits, jumper };
}

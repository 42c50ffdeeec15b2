import type { TemperatureColumn } from "../ampacity/index.js";
import { areaOf, columnOf, type Material } from "../conductor/index.js";
import { type Code, readCode } from "../edition/index.js";
import { impedanceConductorLeast } from "../edition/tables/named-sizes.generated.js";
import { impedanceAmpacity } from "../edition/tables/sections.generated.js";
import { member, optional, type Reader, readAll, readObject, readPositive } from "../input/reader.js";
import type { FloorStep } from "../sizing/index.js";
import { floorStep, limited } from "../sizing/limits.js";
import { readColumn } from "../supply/for-load.js";
import { readMaterial } from "../supply/read.js";
import { finish } from "./finish.js";
import { loadStep } from "./load.js";
import type { SizingResult } from "./result.js";

/** A conductor from the neutral point of a system to its grounding impedance. */
export interface ImpedanceConductorInput {
  readonly code: Code;
  /** Largest current that the impedance lets through, in amperes. */
  readonly impedanceAmperes: number;
  readonly conductor: { readonly material: Material };
  /** Temperature column of its ampacity; 60 C unless told. */
  readonly temperature?: TemperatureColumn;
}

/**
 * Sizes the conductor from the neutral point of a high-impedance grounded system, 480 V to 1000 V, to its impedance: at least the
 * impedance's largest current, never below 8 AWG copper or 6 AWG aluminum (250.36(B)).
 *
 * @param input - the code, the impedance's current, and the conductor's material
 * @returns the size with both requirements as steps; areas in circular mils
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { sizeImpedanceGroundingConductor } from "bondmil";
 * const conductor = sizeImpedanceGroundingConductor({
 *   code: { year: "2020" },
 *   impedanceAmperes: 5,
 *   conductor: { material: "copper" },
 * });
 * conductor.outcome; // => { kind: "conductor", size: "8 AWG", quantity: 1 }
 * conductor.governs; // => "floor"
 * ```
 */
export function sizeImpedanceGroundingConductor(input: ImpedanceConductorInput): SizingResult {
  const { code, impedanceAmperes, conductor, temperature = 60 } = readAll(input, readInput);
  const { year } = code;
  const { material } = conductor;
  const load = loadStep(
    year,
    impedanceAmperes,
    material,
    temperature,
    impedanceAmpacity[year],
    "impedanceAmperes",
  );
  const floor = impedanceConductorFloor(code, material);
  return finish(code, () => ({
    role: "impedance-grounding-conductor",
    code,
    material,
    steps: [load, floor],
    ...limited({ requiredArea: areaOf(load.size), governs: load.kind }, [], [floor]),
    citation: impedanceAmpacity[year],
  }));
}

function readInput(at: Reader): ImpedanceConductorInput | undefined {
  if (!readObject(at, ["code", "impedanceAmperes", "conductor", "temperature"])) return undefined;
  const code = readCode(member(at, "code"));
  const impedanceAmperes = readPositive(member(at, "impedanceAmperes"), "amperes");
  const conductor = readConductorMaterial(member(at, "conductor"));
  const temperature = optional(member(at, "temperature"), readColumn);
  if (code === undefined || impedanceAmperes === undefined || conductor === undefined) return undefined;
  return { code, impedanceAmperes, conductor, ...(temperature && { temperature }) };
}

/** The least size of such a conductor in a material; the jumper that equals it has the same. */
export function impedanceConductorFloor({ year }: Code, material: Material): FloorStep {
  const { copper, aluminum, citation } = impedanceConductorLeast[year];
  const size = columnOf(material) === "copper" ? copper : (aluminum ?? copper);
  return floorStep(size, citation, "least-size");
}

/** Checks a conductor of which only the material is chosen. */
export function readConductorMaterial(at: Reader): { readonly material: Material } | undefined {
  if (!readObject(at, ["material"])) return undefined;
  const material = readMaterial(member(at, "material"));
  return material && { material };
}

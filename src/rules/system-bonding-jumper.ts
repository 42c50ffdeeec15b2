import { ampacityOf, smallestConductorFor } from "../ampacity/index.js";
import { areaOf, columnOf, compareSizes, type Material } from "../conductor/index.js";
import type { Code } from "../edition/index.js";
import { controlCircuitJumperLeast } from "../edition/tables/named-sizes.generated.js";
import { systemBondingJumperPolicies } from "../edition/tables/policies.generated.js";
import { noServiceConductors, parallelMinimum } from "../edition/tables/sections.generated.js";
import { member, optional, type Reader, readAll, readFlag, readObject } from "../input/reader.js";
import type { FloorStep, NamedSizeStep } from "../sizing/index.js";
import { floorStep, limited } from "../sizing/limits.js";
import { conductorsOf } from "../supply/sums.js";
import type { Caution, CautionCode } from "./caution.js";
import { finish } from "./finish.js";
import { type JumperRole, sizeCheckedJumper } from "./jumper.js";
import { hasSmallParallelSets, sameSizeInAluminum } from "./jumper-cautions.js";
import { type JumperInput, jumperKeys, readJumperMembers } from "./jumper-input.js";
import { type Prepared, type PreparedRequest, prepareJumper } from "./prepare.js";
import type { SizingResult } from "./result.js";
import { refuseLargeControlTransformer } from "./small-supplies.js";

const systemBondingJumper: JumperRole = {
  role: "system-bonding-jumper",
  policies: systemBondingJumperPolicies,
};

/** A system bonding jumper to be sized. */
export interface SystemJumperInput extends JumperInput {
  /**
   * Whether the source is a transformer of at most 1000 VA for Class 1, 2 or 3 circuits: its jumper need only be as large as the
   * derived ungrounded conductors, not below 14 AWG copper or 12 AWG aluminum. Conductors for more than 100 A belong to no such
   * transformer and are refused.
   */
  readonly controlTransformer?: boolean;
}

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
export function sizeSystemBondingJumper(input: SystemJumperInput): SizingResult {
  const { controlTransformer = false, ...jumper } = readAll(input, readInput);
  return controlTransformer ? ofControlTransformer(jumper) : sizeCheckedJumper(systemBondingJumper, jumper);
}

/** As large as the derived ungrounded conductors, not below the least size that the exception names. */
function ofControlTransformer({ code, supply, jumper }: JumperInput): SizingResult {
  const { citation } = controlCircuitJumperLeast[code.year];
  const installed = conductorsOf(supply);
  const largest = installed.reduce((so, one) => (compareSizes(one.size, so.size) > 0 ? one : so));
  const step: NamedSizeStep = {
    kind: "named-size",
    from: "other-conductor",
    size: largest.size,
    requiredArea: areaOf(largest.size),
    citation,
  };
  const floor = controlTransformerFloor(code, jumper.material);
  const required = limited({ requiredArea: step.requiredArea, governs: step.kind }, [], [floor]);
  return finish(code, () => ({
    role: systemBondingJumper.role,
    code,
    material: jumper.material,
    form: jumper.form ?? "wire",
    steps: [step, floor],
    ...required,
    citation,
    cautions: controlTransformerCautions({ code, supply, jumper }, required.governs === step.kind),
  }));
}

/**
 * The least size of the exception. Before 2017 it names none for aluminum, which then carries at least as much as the copper that it
 * names.
 */
function controlTransformerFloor({ year }: Code, material: Material): FloorStep {
  const { copper, aluminum, citation } = controlCircuitJumperLeast[year];
  if (columnOf(material) === "copper") return floorStep(copper, citation, "least-size");
  if (aluminum !== null) return floorStep(aluminum, citation, "least-size");
  const { amperes } = ampacityOf(year, copper, "copper", 75);
  const alike = amperes === null ? null : smallestConductorFor(year, amperes, material, 75);
  return floorStep(alike ?? copper, { ...citation, evidence: "memory" }, "least-size");
}

function controlTransformerCautions(
  { code: { year }, supply, jumper }: JumperInput,
  isAsLargeAsSupply: boolean,
): readonly Caution[] {
  const { basis, namesAluminum } = systemBondingJumperPolicies.byEdition[year];
  const isAluminum = jumper.material !== "copper";
  const { citation } = controlCircuitJumperLeast[year];
  const found: readonly (readonly [boolean, CautionCode, string | null])[] = [
    [
      supply.requiredForAmperes !== undefined,
      "conductors-required-for-load",
      noServiceConductors[year].section,
    ],
    [hasSmallParallelSets(supply), "parallel-below-1-0", parallelMinimum[year].section],
    [isAluminum && !namesAluminum, "material-not-named", basis.material.section],
    [true, "listed-equipment", null],
  ];
  return [
    ...(isAsLargeAsSupply ? sameSizeInAluminum(jumper.material, conductorsOf(supply), citation) : []),
    ...found.filter(([holds]) => holds).map(([, code, section]) => ({ code, section })),
  ];
}

function readInput(at: Reader): SystemJumperInput | undefined {
  if (!readObject(at, [...jumperKeys, "controlTransformer"])) return undefined;
  const jumper = readJumperMembers(at);
  const controlTransformer = optional(member(at, "controlTransformer"), (one) =>
    readFlag(one, "whether the source is a small control transformer"),
  );
  if (jumper === undefined) return undefined;
  if (controlTransformer === true) refuseLargeControlTransformer(at, jumper.supply, jumper.code.year);
  return { ...jumper, ...(controlTransformer === undefined ? {} : { controlTransformer }) };
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

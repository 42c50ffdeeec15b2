import { ampacityIn, smallestConductorIn } from "../../ampacity/raceway.js";
import { areaOf, columnOf, compareSizes, type Material } from "../../conductor/index.js";
import type { Code } from "../../edition/index.js";
import { controlCircuitJumperLeast } from "../../edition/tables/named-sizes.generated.js";
import { systemBondingJumperPolicies } from "../../edition/tables/policies.generated.js";
import { systemBondingJumperFacts } from "../../edition/tables/roles.generated.js";
import { noServiceConductors, parallelMinimum } from "../../edition/tables/sections.generated.js";
import { hasSmallParallelSets, sameSizeInAluminum } from "../../rules/by-supply-cautions.js";
import type { BySupplyInput } from "../../rules/by-supply-input.js";
import type { Caution, CautionCode } from "../../rules/caution.js";
import { finish } from "../../rules/finish.js";
import type { SizedResult } from "../../rules/result.js";
import type { FloorStep, NamedSizeStep } from "../../sizing/index.js";
import { floorStep, limited } from "../../sizing/limits.js";
import { conductorsOf } from "../../supply/sums.js";

/** As large as the derived ungrounded conductors, not below the minimum size that the exception names. */
export function ofControlTransformer({
  code,
  supply,
  conductor,
}: BySupplyInput): SizedResult<"system-bonding-jumper"> {
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
  const floor = controlTransformerFloor(code, conductor.material);
  const required = limited({ requiredArea: step.requiredArea, governs: step.kind }, [], [floor]);
  return finish(code, () => ({
    facts: systemBondingJumperFacts,
    code,
    material: conductor.material,
    form: conductor.form ?? "wire",
    steps: [step, floor],
    ...required,
    citation,
    cautions: () => controlTransformerCautions({ code, supply, conductor }, required.governs === step.kind),
  }));
}

/**
 * The minimum size of the exception. Before 2017 it names none for aluminum, which then carries at least as much as the copper that it
 * names.
 */
function controlTransformerFloor({ year }: Code, material: Material): FloorStep {
  const { copper, aluminum, citation } = controlCircuitJumperLeast[year];
  if (columnOf(material) === "copper") return floorStep(copper, citation, "least-size");
  if (aluminum !== null) return floorStep(aluminum, citation, "least-size");
  const { amperes } = ampacityIn(year, copper, "copper", 75);
  const alike = amperes === null ? null : smallestConductorIn(year, amperes, material, 75);
  return floorStep(alike ?? copper, { ...citation, evidence: "memory" }, "least-size");
}

function controlTransformerCautions(
  { code: { year }, supply, conductor }: BySupplyInput,
  isAsLargeAsSupply: boolean,
): readonly Caution[] {
  const { basis, namesAluminum } = systemBondingJumperPolicies.byEdition[year];
  const isAluminum = conductor.material !== "copper";
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
    ...(isAsLargeAsSupply ? sameSizeInAluminum(conductor.material, conductorsOf(supply), citation) : []),
    ...found.filter(([holds]) => holds).map(([, code, section]) => ({ code, section })),
  ];
}

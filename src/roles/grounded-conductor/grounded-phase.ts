import { areaOf, columnOf } from "../../conductor/index.js";
import { type Citation, weakestEvidence } from "../../edition/index.js";
import { groundedConductorFacts } from "../../edition/tables/roles.generated.js";
import {
  deltaGroundedConductor,
  deltaGroundedConductorDerived,
  noServiceConductors,
  parallelMinimum,
} from "../../edition/tables/sections.generated.js";
import { hasSmallParallelSets } from "../../rules/by-supply-cautions.js";
import type { Caution, CautionCode } from "../../rules/caution.js";
import type { Decided } from "../../rules/decided.js";
import { loadStep } from "../../rules/load.js";
import type { LoadStep, NamedSizeStep } from "../../sizing/index.js";
import { type AssumedConductor, assumedIn } from "../../supply/equal-ampacity.js";
import type { Conductor, Supply } from "../../supply/index.js";
import { conductorsOf, countSets } from "../../supply/sums.js";
import type { GroundedConductorInput } from "./input.js";

/**
 * The grounded conductor of a corner-grounded delta (three-phase, three-wire): as much ampacity as the largest ungrounded conductor, which within one
 * material is the same size; one for each set.
 */
export function groundedPhase(input: GroundedConductorInput): Decided<"grounded-conductor"> {
  const { code, system, supply, conductor, temperature = 75 } = input;
  const { year } = code;
  const { material } = conductor;
  const citation = (system === "service" ? deltaGroundedConductor : deltaGroundedConductorDerived)[year];
  const matched = assumedIn(year, supply, material, temperature);
  const alike = conductorsOf(supply).filter((one) => columnOf(one.material) === columnOf(material));
  const steps = [
    ...alike.map((one): PhaseStep => sameSize(one, citation)),
    ...matched.map(
      (one): PhaseStep =>
        one.assumed === null
          ? equalConductance(one, citation)
          : loadStep(year, one.installedAmperes, material, temperature, citation, ["supply"]),
    ),
  ];
  const [governing] = [...steps].sort((a, b) => b.requiredArea - a.requiredArea);
  if (governing === undefined) throw new TypeError("a supply has at least one conductor");
  return {
    facts: groundedConductorFacts,
    code,
    material,
    form: conductor.form ?? "wire",
    steps: [governing],
    governs: governing.kind,
    requiredArea: governing.requiredArea,
    quantity: countSets(supply),
    citation,
    cautions: () => cautionsOf(supply, year, governing, citation),
  };
}

type PhaseStep = LoadStep | NamedSizeStep;

function sameSize({ size }: Conductor, citation: Citation): NamedSizeStep {
  return { kind: "named-size", from: "other-conductor", size, requiredArea: areaOf(size), citation };
}

/** Where no single conductor of the other material carries as much, it has the area of equal conductance. */
function equalConductance({ area, citation: cell }: AssumedConductor, citation: Citation): NamedSizeStep {
  const evidence = weakestEvidence([citation.evidence, cell.evidence]);
  const section = `${citation.section}, ${cell.section}`;
  return {
    kind: "named-size",
    from: "other-conductor",
    size: null,
    requiredArea: area,
    citation: { section, evidence },
  };
}

function cautionsOf(
  supply: Supply,
  year: keyof typeof parallelMinimum,
  governing: PhaseStep,
  { section }: Citation,
): readonly Caution[] {
  const hasNoEqual = governing.size === null;
  const found: readonly (readonly [boolean, CautionCode, string])[] = [
    [hasNoEqual, "no-single-conductor-of-equal-ampacity", section],
    [
      supply.requiredForAmperes !== undefined,
      "conductors-required-for-load",
      noServiceConductors[year].section,
    ],
    [hasSmallParallelSets(supply), "parallel-below-1-0", parallelMinimum[year].section],
  ];
  return found.filter(([holds]) => holds).map(([, code, place]) => ({ code, section: place }));
}

import { type Citation, chosenReading, type PolicySet } from "../edition/index.js";
import { commonConductorOfDerivedSystems } from "../edition/tables/named-sizes.generated.js";
import {
  commonConductorForFeeders,
  commonDerivedExceptionExists,
} from "../edition/tables/placements.generated.js";
import {
  groundingElectrodeConductorBuildingPolicies,
  groundingElectrodeConductorCommonFromDropPolicies,
  groundingElectrodeConductorCommonPolicies,
  groundingElectrodeConductorDerivedPolicies,
  groundingElectrodeConductorServicePolicies,
} from "../edition/tables/policies.generated.js";
import {
  branchCircuitRating,
  buildingOnBranchCircuit,
  commonDerivedException,
  controlTransformerElectrode,
  controlTransformerTap,
  serviceElectrodeSeveralEnclosures,
  serviceUngroundedElectrode,
  ungroundedDerivedElectrode,
} from "../edition/tables/sections.generated.js";
import { readAll } from "../input/reader.js";
import type { CapStep } from "../sizing/index.js";
import type { Caution } from "./caution.js";
import type { Decided } from "./decided.js";
import { electrodeCap, electrodeCautions } from "./electrode.js";
import { finish, notRequired } from "./finish.js";
import {
  type ElectrodeConductorInput,
  readElectrodeConductorInput,
} from "./grounding-electrode-conductor-input.js";
import { decideBySupply } from "./jumper.js";
import { readingsUsed } from "./readings-used.js";
import type { SizingResult } from "./result.js";
import { carriesMoreThan, mostSharedBranchCircuitAmperes } from "./small-supplies.js";

/**
 * Sizes a grounding electrode conductor by the ungrounded supply conductors (Table 250.66): of a service, of a separately derived
 * system or of a building on a feeder; as the one conductor, as the common conductor of several enclosures (each set's largest
 * conductor added, 250.64(D)(1)), or as the tap of one enclosure or system. It stops at the table's last row, 3/0 AWG copper or
 * 250 kcmil aluminum, and need not exceed the size for the electrodes that it serves (250.66(A) to (C)). It clears no fault. An
 * ungrounded system has one by the same table.
 *
 * @param input - the code, what it belongs to, the supply, its material, and the electrodes on it
 * @returns the size with every step, or why none is required; areas in circular mils
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { sizeGroundingElectrodeConductor } from "bondmil";
 * const supply = { sets: [{ count: 2, size: "350 kcmil", material: "copper" }] } as const;
 * const to = (electrodes: readonly { kind: "metal-water-pipe" | "rod" }[]) =>
 *   sizeGroundingElectrodeConductor({
 *     code: { year: "2020" },
 *     of: "service",
 *     supply,
 *     conductor: { material: "copper" },
 *     electrodes,
 *   }).outcome;
 * to([{ kind: "metal-water-pipe" }, { kind: "rod" }]); // => { kind: "conductor", size: "2/0 AWG", quantity: 1 }
 * to([{ kind: "rod" }, { kind: "rod" }]); // => { kind: "conductor", size: "6 AWG", quantity: 1 }
 * ```
 */
export function sizeGroundingElectrodeConductor(input: ElectrodeConductorInput): SizingResult {
  const read = readAll(input, readElectrodeConductorInput);
  const { code, conductor, part = "only" } = read;
  const { material } = conductor;
  if (read.controlTransformer === true) {
    const { [code.year]: citation } = part === "tap" ? controlTransformerTap : controlTransformerElectrode;
    return notRequired(role, code, material, "control-transformer", citation);
  }
  if (read.onSingleBranchCircuit === true) {
    const citation = buildingOnBranchCircuit[code.year];
    const isLarge = carriesMoreThan(read.supply, mostSharedBranchCircuitAmperes, code.year);
    const { section } = branchCircuitRating[code.year];
    const cautions = isLarge ? [{ code: "larger-than-shared-branch-circuit", section } as const] : [];
    return notRequired(role, code, material, "building-on-one-branch-circuit", citation, cautions);
  }
  return finish(code, (under) => decide({ ...read, code: under }));
}

const role = "grounding-electrode-conductor";

function decide(input: ElectrodeConductorInput): Decided {
  const policies = policiesFor(input);
  const decided = decideSize(input, policies);
  return {
    ...decided,
    citation: ruleOf(input) ?? decided.citation,
    readings: readingsUsed(
      input.code,
      policies,
      decided.requiredArea,
      (code) => decideSize({ ...input, code }, policies).requiredArea,
    ),
    cautions: [...(decided.cautions ?? []), ...cautionsFor(input)],
  };
}

function decideSize(input: ElectrodeConductorInput, policies: PolicySet): Decided {
  const { code, supply, conductor } = input;
  const cap = capFor(input);
  const caps = cap === null ? [] : [cap];
  return decideBySupply({ role, policies, caps }, { code, supply, jumper: conductor });
}

function policiesFor({ of, part, fromDrop = false }: ElectrodeConductorInput): PolicySet {
  if (part !== "common") return policySets[of];
  return fromDrop
    ? groundingElectrodeConductorCommonFromDropPolicies
    : groundingElectrodeConductorCommonPolicies;
}

const policySets: Readonly<Record<ElectrodeConductorInput["of"], PolicySet>> = {
  service: groundingElectrodeConductorServicePolicies,
  "separately-derived": groundingElectrodeConductorDerivedPolicies,
  building: groundingElectrodeConductorBuildingPolicies,
};

/** The size for the electrodes, where it limits this conductor. A tap of a derived system has a sentence of its own since 2020. */
function capFor({ code, of, part = "only", electrodes, conductor }: ElectrodeConductorInput): CapStep | null {
  const cap = electrodeCap(code, electrodes, conductor.material);
  if (cap === null || part === "only") return cap;
  if (of === "separately-derived" && commonDerivedExceptionExists[code.year])
    return { ...cap, citation: commonDerivedException[code.year] };
  return chosenReading(code, "electrode-ceiling-on-common-conductor") === "applies" ? cap : null;
}

/** The rule of a tap and of an ungrounded system, which have another than that of their policies. */
function ruleOf({ code: { year }, of, part, ungrounded }: ElectrodeConductorInput): Citation | null {
  if (part === "tap")
    return of === "separately-derived"
      ? commonConductorOfDerivedSystems[year].citation
      : groundingElectrodeConductorCommonPolicies.byEdition[year].basis.rule;
  if (part === "common" || ungrounded !== true) return null;
  if (of === "building") return null;
  return of === "service" ? serviceUngroundedElectrode[year] : ungroundedDerivedElectrode[year];
}

function cautionsFor({
  code,
  of,
  part = "only",
  electrodes,
  conductor,
}: ElectrodeConductorInput): readonly Caution[] {
  const servicesOnly = of === "building" && part !== "only" && !commonConductorForFeeders[code.year];
  const { section } = serviceElectrodeSeveralEnclosures[code.year];
  return [
    ...electrodeCautions(code, electrodes, conductor.material),
    ...(servicesOnly ? [{ code: "common-conductor-of-services-only", section } as const] : []),
  ];
}

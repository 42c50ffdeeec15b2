import { terminationColumn } from "../../ampacity/termination-column.js";
import { columnOf } from "../../conductor/index.js";
import { type Citation, type Code, type PolicySet, weakestEvidence } from "../../edition/index.js";
import {
  groundedConductorDerivedPolicies,
  groundedConductorDerivedRacewayPolicies,
  groundedConductorPolicies,
  groundedConductorRacewayPolicies,
} from "../../edition/tables/policies.generated.js";
import { groundedConductorFacts } from "../../edition/tables/roles.generated.js";
import {
  derivedGroundedConductor,
  equipmentGroundingByDevice,
  feederGroundedConductor,
  neutralLoad,
  parallelMinimum,
  rebondedBuilding,
  terminations,
} from "../../edition/tables/sections.generated.js";
import { decideBySupply } from "../../rules/by-supply.js";
import { hasSmallParallelSets } from "../../rules/by-supply-cautions.js";
import type { BySupplyInput } from "../../rules/by-supply-input.js";
import type { Caution } from "../../rules/caution.js";
import { type Decided, saying } from "../../rules/decided.js";
import { finish, notRequired } from "../../rules/finish.js";
import { loadStep } from "../../rules/load.js";
import { equipmentGroundingArea } from "../../rules/rating-table.js";
import type { NotRequiredResult, SizedResult } from "../../rules/result.js";
import type { NeutralLoad, SystemKind } from "../../rules/shape.generated.js";
import type { CapStep, LoadStep, RatingRowStep } from "../../sizing/index.js";
import { floorStep } from "../../sizing/limits.js";
import { smallestParallel } from "../../supply/parallel-minimum.js";
import { columnOfSupply, sumOf } from "../../supply/sums.js";
import { groundedPhase } from "./grounded-phase.js";
import type { GroundedConductorInput } from "./input.js";

type Id = "grounded-conductor";

const facts = groundedConductorFacts;

/** Sizes a grounded conductor, or says that the one of a system with its jumper at the source has no minimum size. */
export function decide(input: GroundedConductorInput): SizedResult<Id> | NotRequiredResult<Id> {
  const result = decideAny(input);
  const { jumperAt, feederDeviceAmperes, rebondedAtBuildingWithDevice } = input;
  const isBehind = jumperAt === "source" || feederDeviceAmperes !== undefined;
  const carriesFault = !isBehind || rebondedAtBuildingWithDevice !== undefined;
  return carriesFault ? result : { ...result, purpose: "load" };
}

function decideAny(input: GroundedConductorInput): SizedResult<Id> | NotRequiredResult<Id> {
  const { code, conductor, grounded, jumperAt, load, rebondedAtBuildingWithDevice } = input;
  const isAlone = !hasLoad(load) && rebondedAtBuildingWithDevice === undefined && grounded !== "phase";
  if (jumperAt === "source" && isAlone) {
    const citation = derivedGroundedConductor[code.year];
    const cautions = load === undefined ? [notCounted(code)] : [];
    return notRequired(facts, code, conductor.material, "jumper-at-source", citation, cautions);
  }
  return finish(code, (under) => decideUnder({ ...input, code: under }));
}

function decideUnder(input: GroundedConductorInput): Decided<Id> {
  const { year } = input.code;
  const further = furtherSteps(input);
  const isRebonded = input.rebondedAtBuildingWithDevice !== undefined;
  if (input.feederDeviceAmperes !== undefined) return ofFeeder(input, input.feederDeviceAmperes);
  if (input.grounded === "phase") {
    const phase = groundedPhase(input);
    const decided = further.reduce(withStep, inParallel(input) ? aboveParallelMinimum(phase) : phase);
    return isRebonded ? { ...decided, citation: rebondedBuilding[year] } : decided;
  }
  if (isRebonded) {
    const rebonded = withoutTable(input, further, rebondedBuilding[year]);
    return aboutLoad(input, rebonded);
  }
  if (input.jumperAt === "source") return withoutTable(input, further, derivedGroundedConductor[year]);
  const bySupply = decideBySupply({ facts, policies: policiesOf(input) }, bySupplyInputOf(input));
  return further.reduce(withStep, aboutLoad(input, bySupply));
}

const policySets: Readonly<Record<SystemKind, Readonly<Record<"raceway" | "all", PolicySet>>>> = {
  service: { raceway: groundedConductorRacewayPolicies, all: groundedConductorPolicies },
  "separately-derived": {
    raceway: groundedConductorDerivedRacewayPolicies,
    all: groundedConductorDerivedPolicies,
  },
};

function policiesOf({ system, scope = "all" }: GroundedConductorInput): PolicySet {
  return policySets[system][scope];
}

function bySupplyInputOf(input: GroundedConductorInput): BySupplyInput {
  const { code, supply, conductor, temperature } = input;
  return { code, supply, conductor, temperature };
}

function inParallel({ scope }: GroundedConductorInput): boolean {
  return scope === "raceway";
}

/**
 * The grounded conductor of a feeder: at least an equipment grounding conductor's size, which the circuit conductors limit; in parallel the
 * minimum size for parallel conductors (215.2(A)). That of a corner-grounded delta carries as much as the others.
 */
function ofFeeder(input: GroundedConductorInput, device: number): Decided<Id> {
  const { code, grounded, conductor } = input;
  const citation = feederGroundedConductor[code.year];
  const steps = [...(inParallel(input) ? [] : deviceSteps(input, device)), ...furtherSteps(input)];
  if (grounded === "phase") {
    const phase = steps.reduce(withStep, groundedPhase(input));
    return { ...(inParallel(input) ? aboveParallelMinimum(phase) : phase), citation };
  }
  const start: Decided<Id> = {
    facts,
    code,
    material: conductor.material,
    form: conductor.form ?? "wire",
    steps: [],
    governs: "rating-row",
    requiredArea: 0,
    citation,
    cautions: () => smallSetCautions(input),
  };
  const decided = steps.reduce(withStep, start);
  const limited = inParallel(input) ? aboveParallelMinimum(decided) : decided;
  return aboutLoad(input, limited);
}

function deviceSteps(
  { code, conductor, supply }: GroundedConductorInput,
  device: number,
): readonly FurtherStep[] {
  const read = columnOf(conductor.material);
  const { step } = equipmentGroundingArea(code, device, read);
  const area = sumOf(supply, "corresponding");
  if (columnOfSupply(supply) !== read || area >= step.requiredArea) return [step];
  const citation = equipmentGroundingByDevice[code.year];
  return [step, { kind: "cap", why: "circuit-conductors", requiredArea: area, citation }];
}

type FurtherStep = LoadStep | RatingRowStep | CapStep;

/** Requirements beside the table's: the load, and the device of a re-bonded building. */
function furtherSteps(input: GroundedConductorInput): readonly FurtherStep[] {
  const { code, conductor, load, rebondedAtBuildingWithDevice: device } = input;
  const { year } = code;
  const steps: FurtherStep[] = [];
  if (hasLoad(load)) {
    const column = terminationColumn(load.circuitAmperes, load.listedFor75 ?? false);
    const citation = both(neutralLoad[year], terminations[year]);
    const keys = ["load", "amperes"];
    const { amperes, circuitAmperes } = load;
    steps.push(loadStep(year, amperes, conductor.material, column, citation, keys, circuitAmperes));
  }
  if (device !== undefined) {
    const { step } = equipmentGroundingArea(code, device, columnOf(conductor.material));
    steps.push(step);
  }
  return steps;
}

/** Whether a load is given that requires a conductor; one that is stated as zero requires none. */
function hasLoad(load: GroundedConductorInput["load"]): load is NeutralLoad {
  return load !== undefined && load.amperes > 0;
}

/** The table knows the fault path only; the load stands in another article. Where none is given or it is zero, the result says so. */
function aboutLoad({ load, code }: GroundedConductorInput, decided: Decided<Id>): Decided<Id> {
  if (hasLoad(load)) return decided;
  const caution: Caution =
    load === undefined ? notCounted(code) : { code: "no-load-stated", section: decided.citation.section };
  return saying(decided, () => [caution]);
}

function notCounted({ year }: Code): Caution {
  return { code: "load-not-counted", section: neutralLoad[year].section };
}

/** Two places that a step needs, as strong as the weaker one. */
function both(one: Citation, other: Citation): Citation {
  return {
    section: `${one.section}, ${other.section}`,
    evidence: weakestEvidence([one.evidence, other.evidence]),
  };
}

function withStep(decided: Decided<Id>, step: FurtherStep): Decided<Id> {
  const larger =
    step.kind === "cap" ? step.requiredArea < decided.requiredArea : step.requiredArea > decided.requiredArea;
  return {
    ...decided,
    steps: [...decided.steps, step],
    ...(larger && { governs: step.kind, requiredArea: step.requiredArea }),
  };
}

/**
 * A conductor that the table of supply areas has nothing to say of: with the system bonding jumper at the source, and in a
 * re-bonded building, whose section names its own minimum sizes.
 */
function withoutTable(
  input: GroundedConductorInput,
  further: readonly FurtherStep[],
  citation: Citation,
): Decided<Id> {
  const { code, conductor } = input;
  const [first, ...rest] = further;
  if (first === undefined) throw new TypeError("nothing decides this conductor");
  const start: Decided<Id> = {
    facts,
    code,
    material: conductor.material,
    form: conductor.form ?? "wire",
    steps: [first],
    governs: first.kind,
    requiredArea: first.requiredArea,
    citation,
    cautions: () => smallSetCautions(input),
  };
  const decided = rest.reduce(withStep, start);
  return inParallel(input) ? aboveParallelMinimum(decided) : decided;
}

function smallSetCautions({ code, supply }: GroundedConductorInput): readonly Caution[] {
  return hasSmallParallelSets(supply)
    ? [{ code: "parallel-below-1-0", section: parallelMinimum[code.year].section }]
    : [];
}

/** Conductors in parallel have a minimum size of their own, whatever else requires less (310.10). */
function aboveParallelMinimum(decided: Decided<Id>): Decided<Id> {
  const floor = floorStep(smallestParallel, parallelMinimum[decided.code.year], "least-size");
  const larger = floor.requiredArea > decided.requiredArea;
  return {
    ...decided,
    steps: [...decided.steps, floor],
    ...(larger && { governs: floor.kind, requiredArea: floor.requiredArea }),
  };
}

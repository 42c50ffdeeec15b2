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
  neutralLoad,
  parallelMinimum,
  rebondedBuilding,
  terminations,
} from "../../edition/tables/sections.generated.js";
import { decideBySupply } from "../../rules/by-supply.js";
import { hasSmallParallelSets } from "../../rules/by-supply-cautions.js";
import type { BySupplyInput } from "../../rules/by-supply-input.js";
import type { Caution } from "../../rules/caution.js";
import type { Decided } from "../../rules/decided.js";
import { finish, notRequired } from "../../rules/finish.js";
import { loadStep, terminationColumn } from "../../rules/load.js";
import { equipmentGroundingArea } from "../../rules/rating-table.js";
import type { NotRequiredResult, SizedResult } from "../../rules/result.js";
import type { SystemKind } from "../../rules/shape.generated.js";
import type { LoadStep, RatingRowStep } from "../../sizing/index.js";
import { floorStep } from "../../sizing/limits.js";
import { groundedPhase } from "./grounded-phase.js";
import type { GroundedConductorInput } from "./input.js";

type Id = "grounded-conductor";

const facts = groundedConductorFacts;

/** Sizes a grounded conductor, or says that the one of a system with its jumper at the source has no minimum size. */
export function decide(input: GroundedConductorInput): SizedResult<Id> | NotRequiredResult<Id> {
  const result = decideAny(input);
  const carriesFault = input.jumperAt !== "source" || input.rebondedAtBuildingWithDevice !== undefined;
  return carriesFault ? result : { ...result, purpose: "load" };
}

function decideAny(input: GroundedConductorInput): SizedResult<Id> | NotRequiredResult<Id> {
  const { code, conductor, grounded, jumperAt, load, rebondedAtBuildingWithDevice } = input;
  const isAlone = load === undefined && rebondedAtBuildingWithDevice === undefined && grounded !== "phase";
  if (jumperAt === "source" && isAlone) {
    const citation = derivedGroundedConductor[code.year];
    return notRequired(facts, code, conductor.material, "jumper-at-source", citation, [notCounted(code)]);
  }
  return finish(code, (under) => decideUnder({ ...input, code: under }));
}

function decideUnder(input: GroundedConductorInput): Decided<Id> {
  const { year } = input.code;
  const further = furtherSteps(input);
  const isRebonded = input.rebondedAtBuildingWithDevice !== undefined;
  if (input.grounded === "phase") {
    const phase = groundedPhase(input);
    const decided = further.reduce(withStep, inParallel(input) ? aboveParallelMinimum(phase) : phase);
    return isRebonded ? { ...decided, citation: rebondedBuilding[year] } : decided;
  }
  if (isRebonded) {
    const rebonded = withoutTable(input, further, rebondedBuilding[year]);
    return input.load === undefined ? withoutLoad(rebonded) : rebonded;
  }
  if (input.jumperAt === "source") return withoutTable(input, further, derivedGroundedConductor[year]);
  const bySupply = decideBySupply({ facts, policies: policiesOf(input) }, bySupplyInputOf(input));
  return further.reduce(withStep, input.load === undefined ? withoutLoad(bySupply) : bySupply);
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
  return { code, supply, conductor, ...(temperature && { temperature }) };
}

function inParallel({ scope }: GroundedConductorInput): boolean {
  return scope === "raceway";
}

type FurtherStep = LoadStep | RatingRowStep;

/** Requirements beside the table's: the load, and the device of a re-bonded building. */
function furtherSteps(input: GroundedConductorInput): readonly FurtherStep[] {
  const { code, conductor, load, rebondedAtBuildingWithDevice: device } = input;
  const { year } = code;
  const steps: FurtherStep[] = [];
  if (load !== undefined) {
    const column = terminationColumn(load.circuitAmperes, load.listedFor75 ?? false);
    const citation = both(neutralLoad[year], terminations[year]);
    steps.push(loadStep(year, load.amperes, conductor.material, column, citation, ["load", "amperes"]));
  }
  if (device !== undefined) {
    const { step } = equipmentGroundingArea(code, device, columnOf(conductor.material));
    steps.push({ ...step, citation: both(rebondedBuilding[year], step.citation) });
  }
  return steps;
}

/** The table knows the fault path only; the load stands in another article. */
function withoutLoad(decided: Decided<Id>): Decided<Id> {
  return { ...decided, cautions: [...(decided.cautions ?? []), notCounted(decided.code)] };
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
  const larger = step.requiredArea > decided.requiredArea;
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
  const { code, conductor, supply } = input;
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
    cautions: hasSmallParallelSets(supply)
      ? [{ code: "parallel-below-1-0", section: parallelMinimum[code.year].section }]
      : [],
  };
  const decided = rest.reduce(withStep, start);
  return inParallel(input) ? aboveParallelMinimum(decided) : decided;
}

/** Conductors in parallel have a minimum size of their own, whatever else requires less (310.10). */
function aboveParallelMinimum(decided: Decided<Id>): Decided<Id> {
  const floor = floorStep("1/0 AWG", parallelMinimum[decided.code.year], "least-size");
  const larger = floor.requiredArea > decided.requiredArea;
  return {
    ...decided,
    steps: [...decided.steps, floor],
    ...(larger && { governs: floor.kind, requiredArea: floor.requiredArea }),
  };
}

import { columnOf } from "../conductor/index.js";
import { type Citation, type Code, type PolicySet, weakestEvidence } from "../edition/index.js";
import {
  groundedConductorDerivedPolicies,
  groundedConductorDerivedRacewayPolicies,
  groundedConductorPolicies,
  groundedConductorRacewayPolicies,
} from "../edition/tables/policies.generated.js";
import {
  derivedGroundedConductor,
  neutralLoad,
  parallelMinimum,
  rebondedBuilding,
  terminations,
} from "../edition/tables/sections.generated.js";
import { readAll } from "../input/reader.js";
import type { LoadStep, RatingRowStep } from "../sizing/index.js";
import { floorStep } from "../sizing/limits.js";
import type { Caution } from "./caution.js";
import type { Decided } from "./decided.js";
import { finish, notRequired } from "./finish.js";
import { type GroundedConductorInput, readGroundedConductorInput } from "./grounded-conductor-input.js";
import { groundedPhase } from "./grounded-phase.js";
import { decideBySupply } from "./jumper.js";
import { hasSmallParallelSets } from "./jumper-cautions.js";
import { loadStep, terminationColumn } from "./load.js";
import { equipmentGroundingArea } from "./rating-table.js";
import type { SizingResult } from "./result.js";
import type { SystemKind } from "./system-kind.js";

/**
 * Sizes a grounded conductor as part of the fault path: the least size of the table, by the ungrounded conductors that run
 * with it (250.24(C), since 2023 250.24(D); 250.30(A)(3) in a separately derived system whose jumper is not at the source),
 * not below 1/0 AWG in each of several parallel raceways. Where its load is given, the conductor that carries it stands beside
 * the table's, and the larger governs. A grounded phase carries as much as the ungrounded ones, in an existing separate building too
 * whose grounded conductor stays the fault path; there the table has no say, and an equipment grounding conductor's size stands beside.
 *
 * @param input - the code, the system, the ungrounded conductors, the conductor's material, and its load
 * @returns the size with every step; areas in circular mils. A grounded phase comes in as many as there are sets
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { sizeGroundedConductor } from "bondmil";
 * const inEachRaceway = sizeGroundedConductor({
 *   code: { year: "2023" },
 *   system: "service",
 *   supply: { sets: [{ count: 1, size: "350 kcmil", material: "copper" }] },
 *   scope: "raceway",
 *   conductor: { material: "copper" },
 *   load: { amperes: 60, circuitAmperes: 600 },
 * });
 * inEachRaceway.outcome; // => { kind: "conductor", size: "1/0 AWG", quantity: 1 }
 * inEachRaceway.governs; // => "floor"
 * ```
 */
export function sizeGroundedConductor(input: GroundedConductorInput): SizingResult {
  const read = readAll(input, readGroundedConductorInput);
  const { code, conductor, grounded, jumperAt, load, rebondedAtBuildingWithDevice } = read;
  const isAlone = load === undefined && rebondedAtBuildingWithDevice === undefined && grounded !== "phase";
  if (jumperAt === "source" && isAlone) {
    const citation = derivedGroundedConductor[code.year];
    return notRequired(role, code, conductor.material, "jumper-at-source", citation, [notCounted(code)]);
  }
  return finish(code, (under) => decide({ ...read, code: under }));
}

function decide(input: GroundedConductorInput): Decided {
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
  const bySupply = decideBySupply({ role, policies: policiesOf(input) }, jumperInputOf(input));
  return further.reduce(withStep, input.load === undefined ? withoutLoad(bySupply) : bySupply);
}

const role = "grounded-conductor";

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

function jumperInputOf(input: GroundedConductorInput): Parameters<typeof decideBySupply>[1] {
  const { code, supply, conductor, temperature } = input;
  return { code, supply, jumper: conductor, ...(temperature && { temperature }) };
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
    steps.push(loadStep(year, load.amperes, conductor.material, column, citation, "load.amperes"));
  }
  if (device !== undefined) {
    const { step } = equipmentGroundingArea(code, device, columnOf(conductor.material));
    steps.push({ ...step, citation: both(rebondedBuilding[year], step.citation) });
  }
  return steps;
}

/** The table knows the fault path only; the load stands in another article. */
function withoutLoad(decided: Decided): Decided {
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

function withStep(decided: Decided, step: FurtherStep): Decided {
  const larger = step.requiredArea > decided.requiredArea;
  return {
    ...decided,
    steps: [...decided.steps, step],
    ...(larger && { governs: step.kind, requiredArea: step.requiredArea }),
  };
}

/**
 * A conductor that the table of supply areas has nothing to say of: with the system bonding jumper at the source, and in a
 * re-bonded building, whose section names its own least sizes.
 */
function withoutTable(
  input: GroundedConductorInput,
  further: readonly FurtherStep[],
  citation: Citation,
): Decided {
  const { code, conductor, supply } = input;
  const [first, ...rest] = further;
  if (first === undefined) throw new TypeError("nothing decides this conductor");
  const start: Decided = {
    role,
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

/** Conductors in parallel have a least size of their own, whatever else asks for less (310.10). */
function aboveParallelMinimum(decided: Decided): Decided {
  const floor = floorStep("1/0 AWG", parallelMinimum[decided.code.year], "least-size");
  const larger = floor.requiredArea > decided.requiredArea;
  return {
    ...decided,
    steps: [...decided.steps, floor],
    ...(larger && { governs: floor.kind, requiredArea: floor.requiredArea }),
  };
}

import { areaOf } from "../../conductor/index.js";
import { impedanceBondingJumperPolicies } from "../../edition/tables/policies.generated.js";
import { impedanceBondingJumperFacts } from "../../edition/tables/roles.generated.js";
import { impedanceJumperAtDisconnect } from "../../edition/tables/sections.generated.js";
import { decideBySupply } from "../../rules/by-supply.js";
import { finish } from "../../rules/finish.js";
import { impedanceConductorFloor } from "../../rules/impedance-floor.js";
import type { SizedResult } from "../../rules/result.js";
import type { NamedSizeStep } from "../../sizing/index.js";
import { limited } from "../../sizing/limits.js";
import type { ImpedanceBondingJumperInput } from "./input.js";

const facts = impedanceBondingJumperFacts;
const rule = { facts, policies: impedanceBondingJumperPolicies };

/** Sizes the jumper from the equipment grounding conductors to the grounded side of an impedance. */
export function decide(input: ImpedanceBondingJumperInput): SizedResult<"impedance-bonding-jumper"> {
  const { code, conductor } = input;
  if (input.electrodeConductorAt === "impedance") {
    const { supply } = input;
    return finish(code, (under) => decideBySupply(rule, { code: under, supply, conductor }));
  }
  const size = input.impedanceConductor;
  const citation = impedanceJumperAtDisconnect[code.year];
  const step: NamedSizeStep = {
    kind: "named-size",
    from: "other-conductor",
    size,
    requiredArea: areaOf(size),
    citation,
  };
  const floor = impedanceConductorFloor(code, conductor.material);
  return finish(code, () => ({
    facts,
    code,
    material: conductor.material,
    steps: [step, floor],
    ...limited({ requiredArea: step.requiredArea, governs: step.kind }, [], [floor]),
    citation,
  }));
}

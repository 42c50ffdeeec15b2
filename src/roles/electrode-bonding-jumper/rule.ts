import { areaOf, type Material } from "../../conductor/index.js";
import type { Code } from "../../edition/index.js";
import { supplementalRodCeiling } from "../../edition/tables/named-sizes.generated.js";
import { electrodeBondingJumperPolicies } from "../../edition/tables/policies.generated.js";
import { electrodeBondingJumperFacts } from "../../edition/tables/roles.generated.js";
import { isWithoutCeiling } from "../../rules/amendment-effects.js";
import { decideBySupply } from "../../rules/by-supply.js";
import type { Decided } from "../../rules/decided.js";
import { type Electrode, electrodeCap, electrodeCautions, namedLimit } from "../../rules/electrode.js";
import { finish } from "../../rules/finish.js";
import type { SizedResult } from "../../rules/result.js";
import type { CapStep } from "../../sizing/index.js";
import type { ElectrodeBondingJumperInput } from "./input.js";

type Id = "electrode-bonding-jumper";

const facts = electrodeBondingJumperFacts;

/** Sizes a bonding jumper between grounding electrodes. */
export function decide(input: ElectrodeBondingJumperInput): SizedResult<Id> {
  return finish(input.code, (code) => decideUnder(code, input));
}

function decideUnder(code: Code, input: Omit<ElectrodeBondingJumperInput, "code">): Decided<Id> {
  const { supply, conductor, electrodes, supplemental = false } = input;
  const sole = supplemental ? supplementalCap(code, electrodes, conductor.material) : null;
  const cap = sole ?? electrodeCap(code, facts.role, electrodes, conductor.material);
  const caps = cap === null ? [] : [cap];
  const rule = {
    facts,
    policies: electrodeBondingJumperPolicies,
    caps,
    cautions: () => electrodeCautions(code, facts.role, electrodes, conductor.material),
  };
  return decideBySupply(rule, { code, supply, conductor });
}

/** The limit for the sole connection to one supplemental rod, pipe or plate; several of them follow 250.66(A). */
function supplementalCap(code: Code, electrodes: readonly Electrode[], material: Material): CapStep | null {
  const named = supplementalRodCeiling[code.year];
  const size = namedLimit(code, named, material);
  const [only, ...others] = electrodes;
  const isRod = only !== undefined && ["rod", "pipe", "plate"].includes(only.kind);
  return isRod && others.length === 0 && size !== null && !isWithoutCeiling(code, facts.role, only.kind)
    ? { kind: "cap", why: "electrode", requiredArea: areaOf(size), citation: named.citation }
    : null;
}

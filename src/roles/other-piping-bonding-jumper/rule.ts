import { otherPipingBondingJumperFacts } from "../../edition/tables/roles.generated.js";
import { otherPiping } from "../../edition/tables/sections.generated.js";
import { isAlwaysWire } from "../../rules/amendment-effects.js";
import type { Caution } from "../../rules/caution.js";
import { finish } from "../../rules/finish.js";
import { decideByDevice } from "../../rules/piping-by-device.js";
import type { SizedResult } from "../../rules/result.js";
import type { OtherPipingBondingJumperInput } from "./input.js";

type Id = "other-piping-bonding-jumper";

const facts = otherPipingBondingJumperFacts;

/** Sizes the bonding jumper of other metal piping. */
export function decide({ code, deviceAmperes, conductor }: OtherPipingBondingJumperInput): SizedResult<Id> {
  const rule = otherPiping[code.year];
  const mayServe: readonly Caution[] = isAlwaysWire(code, facts.role)
    ? []
    : [{ code: "equipment-grounding-conductor-may-serve", section: rule.section }];
  return finish(code, (under) => {
    const decided = decideByDevice(facts, under, conductor.material, deviceAmperes, rule);
    return { ...decided, cautions: () => [...mayServe, ...(decided.cautions?.() ?? [])] };
  });
}

import { areaOf } from "../../conductor/index.js";
import { inferred } from "../../edition/index.js";
import { intersystemLeast } from "../../edition/tables/named-sizes.generated.js";
import {
  busbarFollowsElectrodeConductor,
  intersystemExcusedWhereUnlikely,
} from "../../edition/tables/placements.generated.js";
import { intersystemBondingConductorFacts } from "../../edition/tables/roles.generated.js";
import {
  intersystemBusbar,
  intersystemExcuse,
  intersystemTermination,
} from "../../edition/tables/sections.generated.js";
import { isAlwaysWire } from "../../rules/amendment-effects.js";
import { finish, notRequired } from "../../rules/finish.js";
import type { NotRequiredResult, SizedResult } from "../../rules/result.js";
import type { NamedSizeStep } from "../../sizing/index.js";
import { floorStep, limited } from "../../sizing/limits.js";
import type { IntersystemBondingConductorInput } from "./input.js";

type Id = "intersystem-bonding-conductor";

const facts = intersystemBondingConductorFacts;

/** Sizes the conductor to an intersystem bonding termination, or says why none is required. */
export function decide(input: IntersystemBondingConductorInput): SizedResult<Id> | NotRequiredResult<Id> {
  const { code, termination, electrodeConductorOnBusbar, communicationsUnlikely } = input;
  const { year } = code;
  const citation = termination === "busbar" ? intersystemBusbar[year] : intersystemTermination[year];
  if (communicationsUnlikely === true && intersystemExcusedWhereUnlikely[year]) {
    return notRequired(facts, code, "copper", "communications-unlikely", intersystemExcuse[year]);
  }
  if (termination === "on-enclosure" && !isAlwaysWire(code, facts.role))
    return notRequired(facts, code, "copper", "termination-on-enclosure", citation);
  const least = intersystemLeast[year];
  const isInferred = termination === "busbar" && !busbarFollowsElectrodeConductor[year];
  const step: NamedSizeStep = {
    kind: "named-size",
    from: "code",
    size: least.copper,
    requiredArea: areaOf(least.copper),
    citation: isInferred ? inferred(least.citation) : least.citation,
  };
  const followed = busbarFollowsElectrodeConductor[year] ? electrodeConductorOnBusbar : undefined;
  const floors = followed === undefined ? [] : [floorStep(followed, intersystemBusbar[year], "least-size")];
  const isUnlikely = communicationsUnlikely === true;
  return finish(code, () => ({
    facts,
    code,
    material: "copper",
    steps: [step, ...floors],
    ...limited({ requiredArea: step.requiredArea, governs: step.kind }, [], floors),
    citation,
    cautions: () => [
      ...(isInferred ? [{ code: "busbar-tie-inferred", section: citation.section } as const] : []),
      ...(isUnlikely ? [{ code: "not-excused-in-this-edition", section: citation.section } as const] : []),
    ],
  }));
}

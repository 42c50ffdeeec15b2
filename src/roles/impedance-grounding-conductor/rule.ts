import { areaOf } from "../../conductor/index.js";
import { impedanceGroundingConductorFacts } from "../../edition/tables/roles.generated.js";
import { impedanceAmpacity } from "../../edition/tables/sections.generated.js";
import { finish } from "../../rules/finish.js";
import { impedanceConductorFloor } from "../../rules/impedance-floor.js";
import { loadStep } from "../../rules/load.js";
import type { SizedResult } from "../../rules/result.js";
import { limited } from "../../sizing/limits.js";
import type { ImpedanceGroundingConductorInput } from "./input.js";

/** Sizes the conductor from the neutral point of a system to its grounding impedance. */
export function decide(
  input: ImpedanceGroundingConductorInput,
): SizedResult<"impedance-grounding-conductor"> {
  const { code, impedanceAmperes, conductor, temperature = 60 } = input;
  const { material } = conductor;
  const citation = impedanceAmpacity[code.year];
  const load = loadStep(code.year, impedanceAmperes, material, temperature, citation, ["impedanceAmperes"]);
  const floor = impedanceConductorFloor(code, material);
  return finish(code, () => ({
    facts: impedanceGroundingConductorFacts,
    code,
    material,
    steps: [load, floor],
    ...limited({ requiredArea: areaOf(load.size), governs: load.kind }, [], [floor]),
    citation,
  }));
}

import type { NotRequiredResult, SizedResult } from "../../rules/result.js";
import { commonOfDerivedSystems } from "./common-of-derived-systems.js";
import type { GroundingElectrodeConductorInput } from "./input.js";
import { ofSupply } from "./of-supply.js";

/** Sizes a grounding electrode conductor, or says why none is required. */
export function decide(
  input: GroundingElectrodeConductorInput,
): SizedResult<"grounding-electrode-conductor"> | NotRequiredResult<"grounding-electrode-conductor"> {
  return input.supply === undefined ? commonOfDerivedSystems(input) : ofSupply(input);
}

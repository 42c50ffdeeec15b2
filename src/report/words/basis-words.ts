import { shortMaterials } from "../../drawing/write.js";
import type { SizingResult } from "../../rules/result.js";
import type { Step } from "../../sizing/index.js";
import { writeSupply } from "../../supply/index.js";

/** By what a conductor is sized, as an order would name it: `4 x 500 kcmil Al`, `100 A device`. */
export function basisWords({ steps }: Pick<SizingResult, "steps">): string {
  return [...new Set(steps.flatMap(givenIn))].join("; ");
}

function givenIn(step: Step): readonly string[] {
  switch (step.kind) {
    case "sum":
      return [shortMaterials(writeSupply(step.supply))];
    case "rating-row":
      return [`${step.amperes} A device`];
    case "load":
      return [`${step.amperes} A load`];
    case "named-size":
      return [step.from === "code" ? "named size" : "other conductor"];
    default:
      return [];
  }
}

import { columnOf, isStandardSize, type Material } from "../conductor/index.js";
import type { Citation, Code, Role, RoleFacts } from "../edition/index.js";
import type { Caution } from "./caution.js";
import type { Decided } from "./decided.js";
import { equipmentGroundingArea, ratingTable } from "./rating-table.js";

/** Decides a jumper to piping by the device of a circuit, from the table of equipment grounding conductors. */
export function decideByDevice<Id extends Role>(
  facts: RoleFacts<Id>,
  code: Code,
  material: Material,
  amperes: number,
  rule: Citation,
): Decided<Id> {
  const { step, requiredArea } = equipmentGroundingArea(code, amperes, columnOf(material));
  const cautions = (): readonly Caution[] =>
    isStandardSize(step.size) ? [] : [{ code: "table-size-not-standard", section: ratingTable(code).number }];
  return { facts, code, material, steps: [step], governs: step.kind, requiredArea, citation: rule, cautions };
}

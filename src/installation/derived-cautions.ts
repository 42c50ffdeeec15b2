import { systemJumperBothEnds } from "../edition/tables/sections.generated.js";
import { type DerivedInCode, mayHaveBothEnds } from "./derived-system.js";
import type { PlacedCaution } from "./schedule.js";
import { hasGroundedConductor } from "./supplies.js";

/** What to know of a derived system as a whole. */
export function derivedCautions(at: DerivedInCode): readonly PlacedCaution[] {
  const { system, code } = at;
  const hasBothEnds = system.jumperAt === "both-ends" && hasGroundedConductor(system);
  if (!hasBothEnds || !mayHaveBothEnds(at)) return [];
  const { section } = systemJumperBothEnds[code.year];
  return [{ code: "only-without-parallel-path", section, at: system.source.id }];
}

import {
  outdoorSource,
  systemJumperBothEnds,
  systemJumperPlace,
} from "../edition/tables/sections.generated.js";
import { type DerivedInCode, isBoundToSource, mayHaveBothEnds } from "./derived-system.js";
import type { PlacedCaution } from "./schedule.js";
import { hasGroundedConductor } from "./supplies.js";

/** What to know of a derived system as a whole. */
export function derivedCautions(at: DerivedInCode): readonly PlacedCaution[] {
  const { system, code } = at;
  if (!hasGroundedConductor(system)) return [];
  const { id, outdoors, factoryJumper } = system.source;
  const isAtSource = system.jumperAt !== "disconnects" || isBoundToSource(at);
  const found: readonly (readonly [boolean, PlacedCaution])[] = [
    [outdoors, { code: "outdoor-source", section: outdoorSource[code.year].section, at: id }],
    [
      system.jumperAt === "both-ends" && mayHaveBothEnds(at),
      { code: "only-without-parallel-path", section: systemJumperBothEnds[code.year].section, at: id },
    ],
    [
      factoryJumper === "in-place" && isAtSource,
      { code: "factory-jumper-serves", section: systemJumperPlace[code.year].section, at: id },
    ],
  ];
  return found.flatMap(([holds, caution]) => (holds ? [caution] : []));
}

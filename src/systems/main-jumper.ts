import type { Citation, Code } from "../edition/index.js";
import { supplySideSourceIsServiceLike } from "../edition/tables/placements.generated.js";
import { mainJumperImpedance, serviceUngroundedElectrode } from "../edition/tables/sections.generated.js";
import type { Grounding } from "./shape.generated.js";

/** Why a service has no main bonding jumper whatever its disconnects are marked as; `null` if it has one. */
export function serviceWithoutMainJumper(
  { year }: Code,
  grounding: Grounding,
): readonly ["ungrounded-system" | "impedance-grounded", Citation] | null {
  if (grounding === "ungrounded") return ["ungrounded-system", serviceUngroundedElectrode[year]];
  return grounding === "impedance" ? ["impedance-grounded", mainJumperImpedance[year]] : null;
}

/** Whether a source that is connected ahead of the service disconnect is bonded as a service is. */
export function isSourceLikeService({ year }: Code): boolean {
  return supplySideSourceIsServiceLike[year];
}

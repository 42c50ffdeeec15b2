import type { ConductorSize, Material } from "../conductor/index.js";
import { idsOfEnd } from "./conductor-identity.js";
import type { Installation } from "./document.js";
import type { ScheduledConductor } from "./schedule.js";

/** The conductors with a trade size that were found of a conductor of the schedule; none where it is not listed. */
export function foundOf(
  { installed }: Installation,
  { role, subject, from }: ScheduledConductor,
): readonly { readonly size: ConductorSize; readonly material: Material }[] {
  return (installed?.found ?? []).flatMap((one) => {
    const { of = subject, at, size, material } = one;
    const isThis = of === subject && (at === undefined || [subject, ...idsOfEnd(from)].includes(at));
    return one.role === role && isThis && size && material ? [{ size, material }] : [];
  });
}

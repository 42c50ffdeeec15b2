import { compareSizes, type Material, materials, type StandardSize } from "../conductor/index.js";
import type { MetalTotal, ScheduledConductor } from "./schedule.js";

/** Feet of conductor by material and size, of the conductors whose length is given; alternatives are left out. */
export function totalsOf(conductors: readonly ScheduledConductor[]): readonly MetalTotal[] {
  const feet = new Map<
    string,
    { readonly size: StandardSize; readonly material: Material; readonly feet: number }
  >();
  for (const { result, quantity, lengthFeet, alternative } of conductors) {
    if (lengthFeet === undefined || alternative !== undefined || result.outcome.kind !== "conductor")
      continue;
    const { size } = result.outcome;
    const key = `${result.material} ${size}`;
    const before = feet.get(key)?.feet ?? 0;
    feet.set(key, { size, material: result.material, feet: before + quantity * lengthFeet });
  }
  return [...feet.values()].sort(
    (a, b) => materials.indexOf(a.material) - materials.indexOf(b.material) || compareSizes(a.size, b.size),
  );
}

import { columnOf, type Material } from "../conductor/index.js";
import type { Code } from "../edition/index.js";
import { impedanceConductorLeast } from "../edition/tables/named-sizes.generated.js";
import type { FloorStep } from "../sizing/index.js";
import { floorStep } from "../sizing/limits.js";

/** The minimum size of a conductor to an impedance in a material; the jumper that equals it has the same (250.36). */
export function impedanceConductorFloor({ year }: Code, material: Material): FloorStep {
  const { copper, aluminum, citation } = impedanceConductorLeast[year];
  const size = columnOf(material) === "copper" ? copper : (aluminum ?? copper);
  return floorStep(size, citation, "least-size");
}

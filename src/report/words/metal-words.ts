import type { ConductorSize } from "../../conductor/index.js";
import { poundsPer1000Feet } from "../../engineering/metal-mass/metal-mass.js";
import type { MetalTotal } from "../../installation/schedule.js";

/** Feet and pounds of the conductors whose length is given, by size; then the metal of all. */
export function metalLines(totals: readonly MetalTotal[]): readonly string[] {
  if (totals.length === 0) return [];
  const lines = totals.map(
    ({ size, material, feet }) =>
      `${size} ${material}: ${feetWords(feet)}${poundsBehind(size, material, feet)}`,
  );
  return [...lines, `In all: ${metalWords(totals)}`];
}

/** The metal of conductors in feet and pounds, by material. */
export function metalWords(totals: readonly MetalTotal[]): string {
  const metals = [...new Set(totals.map(({ material }) => material))].map((material) => {
    const own = totals.filter((one) => one.material === material);
    const feet = own.reduce((sum, one) => sum + one.feet, 0);
    const pounds = poundsOf(own);
    return `${feetWords(feet)} of ${material}${pounds === null ? "" : `, ${poundsWords(pounds)}`}`;
  });
  return metals.join("; ");
}

/** Pounds of bare metal; `null` where it is of a material whose density is not held. */
export function poundsOf(totals: readonly MetalTotal[]): number | null {
  let pounds = 0;
  for (const { size, material, feet } of totals) {
    if (material !== "copper" && material !== "aluminum") return null;
    pounds += (poundsPer1000Feet(size as ConductorSize, material) * feet) / 1000;
  }
  return pounds;
}

function poundsBehind(size: string, material: string, feet: number): string {
  const pounds = poundsOf([{ size, material, feet }]);
  return pounds === null ? "" : `, ${poundsWords(pounds)}`;
}

function feetWords(feet: number): string {
  return `${Math.round(feet * 100) / 100} ft`;
}

/** Pounds as they are read: a decimal below 100. */
export function poundsWords(pounds: number): string {
  return `${pounds < 100 ? Math.round(pounds * 10) / 10 : Math.round(pounds)} lb`;
}

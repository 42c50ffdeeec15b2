import { areaOf, type ConductorSize } from "../../conductor/index.js";
import { poundsOfArea, poundsPer1000Feet } from "../../engineering/metal-mass/metal-mass.js";
import type { MetalTotal, ScheduledConductor } from "../../installation/schedule.js";
import { withCommas } from "../../units/area.js";

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
  return `${withCommas(Math.round(feet * 100) / 100)} ft`;
}

/** Pounds as they are read: a decimal below 100. */
export function poundsWords(pounds: number): string {
  return `${withCommas(pounds < 100 ? Math.round(pounds * 10) / 10 : Math.round(pounds))} lb`;
}

/** Feet that each conductor of a choice counts where no length is given. */
const assumedFeet = 100;

/** Head of what {@link assumedMetalWords} says. */
export function assumedMetalName(): string {
  return `metal, if each conductor is ${assumedFeet} ft long`;
}

/** The metal of a choice whose conductors are equally long. */
export interface AssumedMetal {
  readonly feet: number;
  readonly area: number;
  /** `null` where one is of a material whose density is not held. */
  readonly pounds: number | null;
}

/** The metal of a choice, each conductor being equally long; a bus has its required area. */
export function assumedMetalOf(conductors: readonly ScheduledConductor[]): AssumedMetal {
  const all = { feet: 0, area: 0, pounds: 0 as number | null };
  for (const { quantity, result } of conductors) {
    const { outcome, material, requiredArea } = result;
    if (outcome.kind === "not-required") continue;
    const isBus = outcome.kind === "area-only";
    const area = quantity * (isBus ? requiredArea : areaOf(outcome.size));
    const isHeld = material === "copper" || material === "aluminum";
    all.feet += quantity * assumedFeet;
    all.area += area;
    all.pounds =
      all.pounds === null || !isHeld
        ? null
        : all.pounds + (poundsOfArea(area, material, isBus) * assumedFeet) / 1000;
  }
  return all;
}

/** Such metal in feet and pounds, and whether it is more than that of another choice. */
export function assumedMetalWords(own: AssumedMetal, base?: AssumedMetal, than = ""): string {
  const weight = own.pounds === null ? "" : `, ${poundsWords(own.pounds)}`;
  return `${feetWords(own.feet)}${weight}${base === undefined ? "" : `; ${effectOfMetal(own, base)} ${than}`}`;
}

function effectOfMetal(own: AssumedMetal, base: AssumedMetal): string {
  const more = own.pounds === null || base.pounds === null ? own.area - base.area : own.pounds - base.pounds;
  // Sums of the same weights in another order differ in their last digits.
  if (Math.abs(more) < 1e-6) return "the same as";
  return more > 0 ? "larger than" : "smaller than";
}

import { areaOf, type ConductorSize, conductorSizes, type Material, materials } from "bondmil";
import { type Dice, several } from "../dice.js";
import type { DrawnSet, DrawnSupply } from "../parts.js";

/** What the conductors of a run may be. */
export interface SupplyShape {
  /** How many raceways share them. */
  readonly raceways: number;
  /** Phases of the sets that list them, alike in one system. */
  readonly phases: number;
  /** The one material that they may have; any unless told. */
  readonly only?: Material;
  /** Whether their ampacity must be met by one conductor of any material, as that of a grounded phase must. */
  readonly matched?: boolean;
}

const smallest = areaOf("14 AWG");
const largestMatched = areaOf("500 kcmil");
const all = conductorSizes.filter((size) => areaOf(size) >= smallest);
const usual = all.filter((size) => areaOf(size) >= areaOf("4 AWG") && areaOf(size) <= areaOf("750 kcmil"));

/** Sets of every kind, or the load for which none are chosen. */
export function drawSupply(dice: Dice, shape: SupplyShape): DrawnSupply {
  const material = shape.only ?? dice.pick(materials);
  if (dice.chance(8) && shape.matched !== true) return drawLoad(dice, shape.raceways, material);
  return { sets: drawSets(dice, { ...shape, only: dice.chance(12) ? shape.only : material }) };
}

/** One to three entries of sets that the raceways share evenly. */
export function drawSets(
  dice: Dice,
  { only, ...shape }: Omit<SupplyShape, "only"> & { readonly only: Material | undefined },
): DrawnSet[] {
  const entries = dice.chance(70) ? 1 : dice.between(2, 3);
  return several(entries, () => drawSet(dice, only === undefined ? shape : { ...shape, only }));
}

function drawSet(dice: Dice, shape: SupplyShape): DrawnSet {
  const { raceways, phases, only } = shape;
  const count = raceways * (dice.chance(70) ? 1 : dice.between(2, 5));
  const conductor = (): { size: ConductorSize; material: Material } => ({
    size: drawSize(dice, shape),
    material: only ?? dice.pick(materials),
  });
  if (dice.chance(75)) return { count, ...conductor() };
  const left = dice.between(-2, phases - 1);
  return { count, phases: several(phases, (i) => (i === left && phases > 1 ? null : conductor())) };
}

function drawSize(dice: Dice, { matched = false }: SupplyShape): ConductorSize {
  const sizes = dice.chance(75) ? usual : all;
  return dice.pick(matched ? sizes.filter((size) => areaOf(size) <= largestMatched) : sizes);
}

function drawLoad(dice: Dice, sets: number, material: Material): DrawnSupply {
  const each = sets === 1 ? dice.between(15, 300) : dice.between(180, 300);
  const amperes = each * sets;
  const rating = dice.chance(30) ? { circuitAmperes: amperes + dice.between(0, 60) } : {};
  return { forLoad: { amperes, ...rating, material, sets } };
}

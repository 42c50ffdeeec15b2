export { type AssumedConductor, assumedConductors } from "./equal-ampacity.js";
export { type LoadRequirement, suppliesForLoad } from "./for-load.js";
export { correspondingSum, sumOfLargest } from "./sums.js";
export type { Conductor, PhasedSet, Supply, SupplySet, UniformSet } from "./supply.js";
export { type TransformerRating, transformerCurrent } from "./transformer-current.js";
export { writeSupply } from "./write-supply.js";

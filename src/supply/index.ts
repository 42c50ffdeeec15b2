export { type AssumedConductor, assumedConductors } from "./equal-ampacity.js";
export { requiredForLoad } from "./for-load.js";
export type { Conductor, Supply, SupplySet } from "./shape.generated.js";
export { correspondingSum, sumOfLargest } from "./sums.js";
export { type TransformerRating, transformerCurrent } from "./transformer-current.js";
export { writeSupply } from "./write-supply.js";

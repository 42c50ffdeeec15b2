export { type Ampacity, ampacityOf, smallestConductorFor } from "./raceway.js";
export type { TemperatureColumn } from "./read.js";

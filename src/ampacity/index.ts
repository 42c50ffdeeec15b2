export {
  type Ampacity,
  ampacityIn,
  ampacityOf,
  smallestConductorFor,
  smallestConductorIn,
} from "./raceway.js";
export type { TemperatureColumn } from "./shape.generated.js";

export { ampacityOf } from "./ampacity-of.js";
export type {
  AmpacityCaution,
  AmpacityStep,
  ConductorAmpacity,
} from "./ampacity-result.js";
export { amperesUnder, type Conditions, conditionsIn } from "./conditions.js";
export { type RequiredByLoad, requiredByLoad } from "./continuous-load.js";
export { type CountedCircuit, type CurrentCarrying, currentCarryingConductors } from "./current-carrying.js";
export {
  type DeviceAnswer,
  type DeviceCaution,
  deviceFor,
  deviceIn,
  neighborsOf,
  type Protected,
  ratingsIn,
} from "./device-for.js";
export { type DwellingConductor, dwellingConductor } from "./dwelling.js";
export { insulationTypes } from "./insulation-type.js";
export {
  type Ampacity,
  ampacityIn,
  smallestConductorFor,
  smallestConductorIn,
  tableAmpacity,
} from "./raceway.js";
export type { ConditionsOfUse, InsulationType, TemperatureColumn } from "./shape.generated.js";
export { terminationColumn } from "./termination-column.js";

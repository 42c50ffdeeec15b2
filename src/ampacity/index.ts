export { type Ampacity, ampacityOf, smallestConductorFor, type TemperatureColumn } from "./raceway.js";

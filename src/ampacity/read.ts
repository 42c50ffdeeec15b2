import { type Reader, refuse } from "../input/reader.js";

/** Temperature column of the ampacity table, degrees Celsius. */
export type TemperatureColumn = 60 | 75 | 90;

/** Checks a temperature column in an input. */
export function readColumn(at: Reader): TemperatureColumn | undefined {
  const { value } = at;
  if (value === 60 || value === 75 || value === 90) return value;
  return refuse(at, "unknown-value", "60, 75 or 90", "name the column in degrees Celsius");
}

import { type Reader, refuse } from "../input/reader.js";
import type { TemperatureColumn } from "./raceway.js";

/** Checks a temperature column in an input. */
export function readColumn(at: Reader): TemperatureColumn | undefined {
  const { value } = at;
  if (value === 60 || value === 75 || value === 90) return value;
  return refuse(at, "unknown-value", "60, 75 or 90", "name the column in degrees Celsius");
}

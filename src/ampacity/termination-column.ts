import type { TemperatureColumn } from "./shape.generated.js";

/** Temperature at which a termination is used: 60 C through 100 A unless listed otherwise, 75 C above (110.14(C)(1)). */
export function terminationColumn(circuitAmperes: number, listedFor75: boolean): TemperatureColumn {
  return circuitAmperes <= 100 && !listedFor75 ? 60 : 75;
}

import type { Temperature } from "./shape.generated.js";

/**
 * A temperature as five times its degrees Fahrenheit: of whole degrees of either scale a whole number, so that a limit of a band is met
 * exactly whatever the unit.
 */
export function fifthsOf(temperature: Temperature): number {
  return temperature.fahrenheit === undefined
    ? fifthsOfCelsius(temperature.celsius)
    : 5 * temperature.fahrenheit;
}

/** The same of degrees Celsius. */
export function fifthsOfCelsius(celsius: number): number {
  return 9 * celsius + 160;
}

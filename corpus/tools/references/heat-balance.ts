/** Degrees Celsius of a conductor and of what is around it. */
interface Temperatures {
  readonly conductor: number;
  readonly ambient: number;
}

/**
 * The ampacity at one pair of temperatures as a part of that at another, the thermal resistance being the same (Equation 310.14(B)): heat that leaves the
 * conductor goes with the difference, heat that arises with the resistance. `coefficient` is that of the resistance at the temperature that is left.
 */
export function ampacityRatio(from: Temperatures, to: Temperatures, coefficient: number): number {
  const heat = (to.conductor - to.ambient) / (from.conductor - from.ambient);
  const resistance = 1 + coefficient * (to.conductor - from.conductor);
  return Math.sqrt(heat / resistance);
}

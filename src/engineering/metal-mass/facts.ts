import type { Evidence } from "../../edition/index.js";

/** What the weight of a bare conductor follows from. */
interface MetalFacts {
  /** Pounds per cubic inch. */
  readonly density: number;
  readonly evidence: Evidence;
}

/**
 * Copper: ASTM B496, and four makers' lists agree to half a percent. Aluminum: the value is from memory; it gives the weights of ASTM B231, of the
 * Aluminum Electrical Conductor Handbook and of a maker's list to 0.3 percent.
 */
export const metalFacts: Readonly<Record<"copper" | "aluminum", MetalFacts>> = {
  copper: { density: 0.32117, evidence: "single" },
  aluminum: { density: 0.0975, evidence: "memory" },
};

/** Strands that are laid round the middle are longer than the conductor: 2 percent through 2000 kcmil (ASTM B496, B231). */
export const layFactor = 1.02;

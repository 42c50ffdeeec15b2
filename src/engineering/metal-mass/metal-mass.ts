import { areaOf, type ConductorSize } from "../../conductor/index.js";
import { type Evidence, weakestEvidence } from "../../edition/index.js";
import { readShape } from "../../input/read-shape.js";
import { readAll } from "../../input/reader.js";
import { toSquareInches } from "../../units/area.js";
import { layFactor, metalFacts } from "./facts.js";
import { type MetalMassQuestion, metalMassQuestionShape, type WeighedConductors } from "./shape.generated.js";

export type { MetalMassQuestion };

/** Weight of the bare metal of some conductors. Plain JSON. */
export interface MetalMass {
  /** Pounds of copper. */
  readonly copper: number;
  /** Pounds of aluminum. */
  readonly aluminum: number;
  /** Weakest evidence of the densities used. */
  readonly evidence: Evidence;
}

/**
 * Nominal weight of the bare metal of conductors, without insulation: area of Table 8, density of the metal, and 2 percent for the lay of strands
 * (ASTM B496, B231). No part of the code.
 *
 * @param question - the conductors, and their length in feet, 1000 by default
 * @returns pounds of copper and of aluminum, not rounded
 * @throws {@link InputError} listing everything that is wrong in the question
 *
 * @example
 * ```ts
 * import { metalMass } from "bondmil";
 * const { copper } = metalMass({ conductors: [{ count: 1, size: "1/0 AWG", material: "copper" }] });
 * copper.toFixed(0); // => "326"
 * ```
 */
export function metalMass(question: MetalMassQuestion): MetalMass {
  const { conductors, feet = 1000 } = readAll(question, (at) =>
    readShape<MetalMassQuestion>(at, metalMassQuestionShape),
  );
  const pounds = (metal: Weighed): number =>
    conductors
      .filter(({ material }) => material === metal)
      .reduce((sum, { count, size, solid }) => sum + count * poundsPer1000Feet(size, metal, solid), 0) *
    (feet / 1000);
  return {
    copper: pounds("copper"),
    aluminum: pounds("aluminum"),
    evidence: weakestEvidence(conductors.map(({ material }) => metalFacts[material].evidence)),
  };
}

const inchesIn1000Feet = 12_000;

/** Pounds of the metal of 1000 ft of one conductor, the arguments being checked. */
export function poundsPer1000Feet(size: ConductorSize, metal: Weighed, solid = false): number {
  return poundsOfArea(areaOf(size), metal, solid);
}

type Weighed = WeighedConductors["material"];

/** Pounds of 1000 ft of metal of an area in circular mils. */
export function poundsOfArea(area: number, metal: Weighed, solid: boolean): number {
  return toSquareInches(area) * inchesIn1000Feet * metalFacts[metal].density * (solid ? 1 : layFactor);
}

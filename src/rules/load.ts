import { ampacityIn, smallestConductorIn } from "../ampacity/raceway.js";
import type { TemperatureColumn } from "../ampacity/shape.generated.js";
import { leastOfCircuit } from "../ampacity/small-conductors.js";
import { areaOf, type Material } from "../conductor/index.js";
import { type Citation, type EditionYear, weakestEvidence } from "../edition/index.js";
import { InputError } from "../input/input-error.js";
import type { Keys } from "../input/place.js";
import { issueAt } from "../input/reader.js";
import type { LoadStep } from "../sizing/index.js";

/** The smallest conductor that carries a current, and that the device of its circuit may protect where its rating is given, as a step. */
export function loadStep(
  year: EditionYear,
  amperes: number,
  material: Material,
  temperature: TemperatureColumn,
  asked: Citation,
  keys: Keys,
  circuitAmperes?: number,
): LoadStep {
  const carrying = smallestConductorIn(year, amperes, material, temperature);
  if (carrying === null) throw tooLarge(amperes, keys);
  const least = circuitAmperes === undefined ? null : leastOfCircuit(year, circuitAmperes, material);
  const isSmall = least !== null && areaOf(least.size) > areaOf(carrying);
  const size = isSmall ? least.size : carrying;
  const { citation } = ampacityIn(year, size, material, temperature);
  const places = [asked, ...(isSmall ? [least.citation] : []), citation];
  return {
    kind: "load",
    amperes,
    ...(isSmall && circuitAmperes !== undefined && { circuitAmperes }),
    temperature,
    size,
    requiredArea: areaOf(size),
    citation: {
      section: places.map(({ section }) => section).join(", "),
      evidence: weakestEvidence(places.map(({ evidence }) => evidence)),
    },
  };
}

function tooLarge(amperes: number, keys: Keys): InputError {
  const expected = "a current that one conductor of the ampacity table can carry";
  return new InputError([
    issueAt(keys, "out-of-range", expected, amperes, "give the share of one conductor"),
  ]);
}

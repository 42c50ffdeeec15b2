import { ampacityIn, smallestConductorIn, type TemperatureColumn } from "../ampacity/index.js";
import { areaOf, type Material } from "../conductor/index.js";
import { type Citation, type EditionYear, weakestEvidence } from "../edition/index.js";
import { InputError } from "../input/input-error.js";
import type { Keys } from "../input/place.js";
import { issueAt } from "../input/reader.js";
import type { LoadStep } from "../sizing/index.js";

/** The smallest conductor that carries a current, as a step. */
export function loadStep(
  year: EditionYear,
  amperes: number,
  material: Material,
  temperature: TemperatureColumn,
  asked: Citation,
  keys: Keys,
): LoadStep {
  const size = smallestConductorIn(year, amperes, material, temperature);
  if (size === null) throw tooLarge(amperes, keys);
  const { citation } = ampacityIn(year, size, material, temperature);
  return {
    kind: "load",
    amperes,
    temperature,
    size,
    requiredArea: areaOf(size),
    citation: {
      section: `${asked.section}, ${citation.section}`,
      evidence: weakestEvidence([asked.evidence, citation.evidence]),
    },
  };
}

/** Temperature at which a termination is used: 60 C through 100 A unless listed otherwise, 75 C above (110.14(C)(1)). */
export function terminationColumn(circuitAmperes: number, listedFor75: boolean): TemperatureColumn {
  return circuitAmperes <= 100 && !listedFor75 ? 60 : 75;
}

function tooLarge(amperes: number, keys: Keys): InputError {
  const expected = "a current that one conductor of the ampacity table can carry";
  return new InputError([
    issueAt(keys, "out-of-range", expected, amperes, "give the share of one conductor"),
  ]);
}

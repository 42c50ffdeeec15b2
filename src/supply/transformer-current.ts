import { member, type Reader, readAll, readBetween, readObject, refuse } from "../input/reader.js";

/** What stands on the nameplate of a transformer. */
export interface TransformerRating {
  /** Apparent power in kilovolt-amperes, from 0.001 to 10,000,000. */
  readonly kva: number;
  /** Volts of the side whose current is to be found, from line to line; from 1 to 1,000,000. */
  readonly volts: number;
  /** Phases of the transformer. */
  readonly phases: 1 | 3;
}

/**
 * The line current of a transformer at its rating: kVA by volts, in three phases by volts and the root of three. What
 * {@link suppliesForLoad} requires where a derived system has no conductors yet and its load is not known more closely. The code has no
 * sentence on it, and the overcurrent protection of the secondary may require larger conductors.
 *
 * @param rating - apparent power, voltage of the side whose current is to be found, and phases
 * @returns amperes, not rounded
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { suppliesForLoad, transformerCurrent } from "bondmil";
 * const amperes = transformerCurrent({ kva: 112.5, volts: 208, phases: 3 });
 * amperes.toFixed(1); // => "312.3"
 * suppliesForLoad({ edition: "2023", amperes, material: "copper" })[0]?.sets[0];
 * // => { count: 1, size: "400 kcmil", material: "copper" }
 * ```
 */
export function transformerCurrent(rating: TransformerRating): number {
  const { kva, volts, phases } = readAll(rating, readRating);
  return (1000 * kva) / (volts * Math.sqrt(phases));
}

function readRating(at: Reader): TransformerRating | undefined {
  if (!readObject(at, ["kva", "volts", "phases"])) return undefined;
  const kva = readBetween(member(at, "kva"), "kilovolt-amperes", 0.001, 10_000_000);
  const volts = readBetween(member(at, "volts"), "volts", 1, 1_000_000);
  const phases = readPhases(member(at, "phases"));
  if (kva === undefined || volts === undefined || phases === undefined) return undefined;
  return { kva, volts, phases };
}

function readPhases(at: Reader): TransformerRating["phases"] | undefined {
  const { value } = at;
  if (value === 1 || value === 3) return value;
  const code = value === undefined ? "missing" : "unknown-value";
  return refuse(at, code, "1 or 3", "name the phases of the transformer as a number");
}

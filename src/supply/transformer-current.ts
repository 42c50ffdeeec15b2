import { readShape } from "../input/read-shape.js";
import { readAll } from "../input/reader.js";
import { type TransformerRating, transformerRatingShape } from "./questions/shape.generated.js";

export type { TransformerRating };

/**
 * The line current of a transformer at its rating: kVA by volts, in three phases by volts and the root of three. The
 * code has no sentence on it; what the overcurrent protection makes of it is for {@link transformerSecondary}.
 *
 * @param rating - apparent power, voltage of the side whose current is to be found, and phases
 * @returns amperes, not rounded
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { transformerCurrent } from "bondmil";
 * const amperes = transformerCurrent({ kva: 112.5, volts: 208, phases: 3 });
 * amperes.toFixed(1); // => "312.3"
 * ```
 */
export function transformerCurrent(rating: TransformerRating): number {
  return lineCurrent(readAll(rating, (at) => readShape<TransformerRating>(at, transformerRatingShape)));
}

/** The same, the arguments being checked. */
export function lineCurrent({ kva, volts, phases }: TransformerRating): number {
  return (1000 * kva) / (volts * Math.sqrt(phases));
}

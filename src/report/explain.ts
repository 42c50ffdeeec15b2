import { editionWords } from "./frame.js";
import { type AnyResult, useAnyResult } from "./told/results.js";
import { remarksOf, sentencesOf } from "./told/told.js";

/**
 * Says in sentences how a result came about: every step with its numbers and its section, then what the outcome is, which open readings
 * have a say in it, and its cautions. Rendered from the steps that decided, so it cannot say anything else.
 *
 * @param result - a sized conductor, or what {@link cableTrayAsEquipmentGroundingConductor}, {@link shortTimeWithstand},
 *   {@link racewayFill}, {@link voltageDrop}, {@link bondingAtDesignation}, {@link classifySource},
 *   {@link ampacityOf}, {@link currentCarryingConductors}, {@link deviceFor}, {@link dwellingConductor}, {@link requiredByLoad},
 *   {@link feederTap} or {@link transformerSecondary} gives
 * @returns one paragraph
 * @throws {@link InputError} for anything but such a result
 *
 * @example
 * ```ts
 * import { explain, mainBondingJumper, size } from "bondmil";
 * const jumper = size(mainBondingJumper, {
 *   code: { year: "2023" },
 *   supply: { sets: [{ count: 1, size: "4/0 AWG", material: "aluminum" }] },
 *   conductor: { material: "copper" },
 * });
 * explain(jumper).startsWith("1 x 4/0 AWG aluminum: 211,600 cmil"); // => true
 * ```
 */
export function explain(result: AnyResult): string {
  return useAnyResult(result, (told) =>
    [
      sentencesOf(told),
      ...told.beside,
      ...remarksOf(told).map((one) => (/[.\]]$/.test(one) ? one : `${one}.`)),
      ...(told.editions.length === 0 ? [] : [`By ${editionWords(told.editions)}.`]),
    ].join(" "),
  );
}

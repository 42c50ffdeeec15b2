/**
 * Stable codes of what to know beside conductors whose protection is at their far end.
 *
 * @example
 * ```ts
 * import { tapCautionCodes } from "bondmil";
 * tapCautionCodes[0]; // => "never-next-rating"
 * ```
 */
export const tapCautionCodes = [
  "never-next-rating",
  "no-tap-from-a-tap",
  "protect-from-damage",
  "device-beside-disconnect",
  "no-rule-holds",
  "load-not-given",
  "device-above-permitted",
  "largest-device-assumed",
  "grouped-devices-as-one",
  "thermally-protected-transformer",
  "terminations-by-rating",
] as const;

/** One of {@link tapCautionCodes}. */
export type TapCautionCode = (typeof tapCautionCodes)[number];

/** Something to know beside conductors whose protection is at their far end. */
export interface TapCaution {
  /** Stable code. */
  readonly code: TapCautionCode;
  /** The section that it rests on; `null` for a remark of the library's own. */
  readonly section: string | null;
}

/** The cautions whose condition is met, in their order. */
export function tapCautions(
  found: readonly (readonly [boolean, TapCautionCode, string | null])[],
): readonly TapCaution[] {
  return found.filter(([isThere]) => isThere).map(([, code, section]) => ({ code, section }));
}

/**
 * Letters of insulation that the table of insulation has, of single conductors and of NM and UF cable.
 *
 * @example
 * ```ts
 * import { insulationTypes } from "bondmil";
 * insulationTypes.includes("THWN-2"); // => true
 * ```
 */
export const insulationTypes = [
  "TW",
  "THW",
  "THW-2",
  "THHW",
  "THHN",
  "THWN",
  "THWN-2",
  "XHH",
  "XHHW",
  "XHHW-2",
  "RHH",
  "RHW",
  "RHW-2",
  "USE",
  "USE-2",
  "UF",
  "NM",
] as const;

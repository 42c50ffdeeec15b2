import { readAll } from "../input/reader.js";
import { readCode } from "./read-code.js";
import type { Amendment, Code } from "./shape.generated.js";

/**
 * Adds local amendments, or proposals for the next edition, to a code. The result is new plain data that every role takes;
 * results that an amendment decides cite it, and one whose condition is unknown or not met, or that does not act, becomes a caution. A
 * code whose amendments were written by hand is checked in the same way by every function that takes it.
 *
 * @param code - the code to amend
 * @param amendments - what changes, each with its citation, of the closed set of kinds
 * @returns the amended code; the given one is left alone
 * @throws {@link InputError} for bad input, a row or table that the edition lacks, or a cell that breaks its table's order
 *
 * @example
 * ```ts
 * import { amend, groundingElectrodeConductor, size } from "bondmil";
 * const code = amend(
 *   { year: "2023" },
 *   {
 *     kind: "floor",
 *     role: "grounding-electrode-conductor",
 *     copper: "6 AWG",
 *     citation: { jurisdiction: "Example County", section: "Sec. 12-3" },
 *   },
 * );
 * const conductor = size(groundingElectrodeConductor, {
 *   code,
 *   system: "service",
 *   supply: { sets: [{ count: 1, size: "2 AWG", material: "copper" }] },
 *   conductor: { material: "copper" },
 *   electrodes: [{ kind: "metal-water-pipe" }],
 * });
 * conductor.outcome; // => { kind: "conductor", size: "6 AWG", quantity: 1 }
 * conductor.steps.at(-2)?.citation.section; // => "Example County, Sec. 12-3"
 * ```
 */
export function amend(code: Code, ...amendments: readonly Amendment[]): Code {
  const before: unknown = code?.amendments ?? [];
  const all = Array.isArray(before) ? [...before, ...amendments] : before;
  const isRecord = typeof code === "object" && code !== null && !Array.isArray(code);
  return readAll(isRecord ? { ...code, amendments: all } : code, readCode);
}

import { areaOf, columnOf } from "../conductor/index.js";
import { member, type Reader, readAll, readObject, refuse, show } from "../input/reader.js";
import type { SizingResult } from "../rules/result.js";
import type { Conductor } from "../supply/index.js";
import { readConductor, readMaterial } from "../supply/read.js";

/** An installed conductor and what is required of it. */
export interface ReserveInput {
  /** The conductor that is there. */
  readonly installed: Conductor;
  /** The result that it is held against, of the same material; each of several conductors for itself. */
  readonly result: SizingResult;
}

/** What an installed conductor has beyond what is required. */
export interface Reserve {
  /** Circular mils installed. */
  readonly area: number;
  /** Circular mils required. */
  readonly requiredArea: number;
  /** Circular mils beyond the requirement; negative if it falls short. */
  readonly reserve: number;
  /** The reserve in percent of the requirement, not rounded; `null` where none is required. */
  readonly percent: number | null;
  /** Whether the conductor is large enough. */
  readonly meets: boolean;
}

/**
 * How far an installed conductor lies above or below what a result requires. Compared by area, before the step to a standard
 * size, so that a conductor is not blamed for a gap between sizes.
 *
 * @param input - the installed conductor, and the result for the same material
 * @returns the reserve in circular mils and percent, negative if short
 * @throws {@link InputError} listing everything that is wrong in the input; `unknown-value` if the result is for another material
 *
 * @example
 * ```ts
 * import { mainBondingJumper, reserveOf, size } from "bondmil";
 * const result = size(mainBondingJumper, {
 *   code: { year: "2023" },
 *   supply: { sets: [{ count: 3, size: "600 kcmil", material: "copper" }] },
 *   conductor: { material: "copper" },
 * });
 * const { reserve, percent } = reserveOf({ installed: { size: "4/0 AWG", material: "copper" }, result });
 * reserve; // => -13400
 * percent?.toFixed(1); // => "-6.0"
 * ```
 */
export function reserveOf(input: ReserveInput): Reserve {
  const { installed, requiredArea } = readAll(input, readReserve);
  const area = areaOf(installed.size);
  const reserve = area - requiredArea;
  return {
    area,
    requiredArea,
    reserve,
    percent: requiredArea === 0 ? null : (reserve * 100) / requiredArea,
    meets: reserve >= 0,
  };
}

interface ReadReserve {
  readonly installed: Conductor;
  readonly requiredArea: number;
}

function readReserve(at: Reader): ReadReserve | undefined {
  if (!readObject(at, ["installed", "result"])) return undefined;
  const installed = readConductor(member(at, "installed"));
  const result = member(at, "result");
  const material = readMaterial(member(result, "material"));
  const requiredArea = readRequiredArea(member(result, "requiredArea"));
  if (installed === undefined || material === undefined || requiredArea === undefined) return undefined;
  if (columnOf(installed.material) === columnOf(material)) return { installed, requiredArea };
  return refuse(
    member(member(at, "installed"), "material"),
    "unknown-value",
    `${show(material)}, as in the result`,
    "size the conductor again for the material that is installed",
  );
}

function readRequiredArea(at: Reader): number | undefined {
  const area = at.value;
  if (typeof area === "number" && Number.isSafeInteger(area) && area >= 0) return area;
  return refuse(
    at,
    area === undefined ? "missing" : "wrong-type",
    "whole circular mils",
    "give a result of this library",
  );
}

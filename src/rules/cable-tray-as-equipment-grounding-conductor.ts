import {
  type Citation,
  type Code,
  type EditionYear,
  readCode,
  type TrayArea,
  type TrayMetal,
} from "../edition/index.js";
import { trayAsEquipmentGrounding } from "../edition/tables/sections.generated.js";
import { trayAsConductor } from "../edition/tables/tray-as-conductor.generated.js";
import { member, type Reader, readAll, readObject, readOneOf, readPositive } from "../input/reader.js";
import type { Caution } from "./caution.js";

/** A metal cable tray that is to serve as equipment grounding conductor. */
export interface CableTrayInput {
  readonly code: Code;
  /** Largest fuse or breaker, or relay setting for ground-fault protection, of any circuit in the tray. */
  readonly amperes: number;
  readonly metal: TrayMetal;
}

/** Whether the tray may serve, and with how much metal. Plain JSON. */
export interface CableTrayResult {
  readonly edition: EditionYear;
  readonly amperes: number;
  readonly metal: TrayMetal;
  readonly outcome: CableTrayOutcome;
  readonly citation: Citation;
  /** What else must hold. */
  readonly cautions: readonly Caution[];
}

/** The least metal, or the largest rating that the metal is permitted for. */
export type CableTrayOutcome = CableTrayPermitted | CableTrayNotPermitted;

/** The tray may serve. */
export interface CableTrayPermitted {
  readonly kind: "permitted";
  /** Amperes through which the row holds. */
  readonly through: number;
  /** Least cross section of metal, of both rails of a ladder or trough, or of a one-piece tray, as the table prints it. */
  readonly least: TrayArea;
}

/** The tray may not serve. */
export interface CableTrayNotPermitted {
  readonly kind: "not-permitted";
  /** Amperes up to which this metal is permitted. */
  readonly largestAmperes: number;
}

const metals: readonly TrayMetal[] = ["steel", "aluminum"];

/**
 * The cross section of metal that a steel or aluminum cable tray must have to serve as equipment grounding conductor
 * (Table 392.60(A), since 2020 392.60(B)). Steel serves up to 600 A, aluminum up to 2000 A.
 *
 * @param input - the code, the largest rating of any circuit in the tray, and the tray's metal
 * @returns the least area in square inches and square millimetres, as printed, and what else must hold
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { cableTrayAsEquipmentGroundingConductor } from "bondmil";
 * const tray = (amperes: number, metal: "steel" | "aluminum") =>
 *   cableTrayAsEquipmentGroundingConductor({ code: { year: "2023" }, amperes, metal }).outcome;
 * tray(225, "aluminum"); // => { kind: "permitted", through: 400, least: { squareInches: 0.4, squareMillimetres: 258 } }
 * tray(800, "steel"); // => { kind: "not-permitted", largestAmperes: 600 }
 * ```
 */
export function cableTrayAsEquipmentGroundingConductor(input: CableTrayInput): CableTrayResult {
  const { code, amperes, metal } = readAll(input, readInput);
  const { number, rows, evidence } = trayAsConductor[code.year];
  const { section } = trayAsEquipmentGrounding[code.year];
  const permitted = rows.flatMap((row): readonly CableTrayPermitted[] => {
    const least = row[metal];
    return least === null ? [] : [{ kind: "permitted", through: row.through, least: { ...least } }];
  });
  const row = permitted.find(({ through }) => amperes <= through);
  return {
    edition: code.year,
    amperes,
    metal,
    outcome: row ?? { kind: "not-permitted", largestAmperes: permitted.at(-1)?.through ?? 0 },
    citation: { section: number, evidence },
    cautions: [
      { code: "tray-by-qualified-persons", section },
      { code: "tray-identified-and-marked", section },
      { code: "tray-bonded", section },
    ],
  };
}

function readInput(at: Reader): CableTrayInput | undefined {
  if (!readObject(at, ["code", "amperes", "metal"])) return undefined;
  const code = readCode(member(at, "code"));
  const amperes = readPositive(member(at, "amperes"), "amperes");
  const metal = readOneOf(member(at, "metal"), metals);
  if (code === undefined || amperes === undefined || metal === undefined) return undefined;
  return { code, amperes, metal };
}

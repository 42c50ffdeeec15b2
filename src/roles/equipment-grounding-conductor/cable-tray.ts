import type { Citation, Code, EditionYear, TrayArea, TrayMetal } from "../../edition/index.js";
import { trayAsEquipmentGrounding } from "../../edition/tables/sections.generated.js";
import { trayAsConductor } from "../../edition/tables/tray-as-conductor.generated.js";
import { readShape } from "../../input/read-shape.js";
import type { Reader } from "../../input/reader.js";
import { amendmentCautions } from "../../rules/amendment-cautions.js";
import { isAlwaysWire } from "../../rules/amendment-effects.js";
import type { Sought } from "../../rules/amendments-that-matter.js";
import type { Caution } from "../../rules/caution.js";
import { type CableTrayInput, cableTrayInputShape } from "./shape.generated.js";

export type { CableTrayInput };

/** Whether the tray may serve, and with how much metal. Plain JSON. */
export interface CableTrayResult {
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** Rating in amperes. */
  readonly amperes: number;
  /** Metal of the tray. */
  readonly metal: TrayMetal;
  /** The least metal, or that the tray is not permitted. */
  readonly outcome: CableTrayOutcome;
  /** Where the edition says so. */
  readonly citation: Citation;
  /** What else must hold. */
  readonly cautions: readonly Caution[];
}

/** The least metal, or the largest rating that the metal is permitted for. */
export type CableTrayOutcome = CableTrayPermitted | CableTrayNotPermitted;

/** The tray may serve. */
export interface CableTrayPermitted {
  /** Tells the members of the union apart. */
  readonly kind: "permitted";
  /** Amperes through which the row holds. */
  readonly through: number;
  /** Least cross section of metal, of both rails of a ladder or trough, or of a one-piece tray, as the table prints it. */
  readonly least: TrayArea;
}

/** The tray may not serve. */
export interface CableTrayNotPermitted {
  /** Tells the members of the union apart. */
  readonly kind: "not-permitted";
  /** Amperes up to which this metal is permitted; 0 where an amendment always requires a wire. */
  readonly largestAmperes: number;
}

/**
 * The cross section of metal that a steel or aluminum cable tray must have to serve as equipment grounding conductor
 * (Table 392.60(A), since 2020 392.60(B)), as printed, in square inches and square millimeters. Steel serves up to 600 A, aluminum up to 2000 A.
 *
 * @example
 * ```ts
 * import { cableTrayAsEquipmentGroundingConductor, size } from "bondmil";
 * const tray = (amperes: number, metal: "steel" | "aluminum") =>
 *   size(cableTrayAsEquipmentGroundingConductor, { code: { year: "2023" }, amperes, metal }).outcome;
 * tray(225, "aluminum"); // => { kind: "permitted", through: 400, least: { squareInches: 0.4, squareMillimeters: 258 } }
 * tray(800, "steel"); // => { kind: "not-permitted", largestAmperes: 600 }
 * ```
 */
export const cableTrayAsEquipmentGroundingConductor: CableTray = { read: readInput, decide };

/** A tray is sized like a role, but it is no conductor of its own. */
interface CableTray {
  /** Checks an input; everything wrong is noted. */
  read(at: Reader): CableTrayInput | undefined;
  /** Decides, the input being checked. */
  decide(input: CableTrayInput): CableTrayResult;
}

function decide({ code, amperes, metal }: CableTrayInput): CableTrayResult {
  const { number, rows, evidence } = trayAsConductor[code.year];
  const { section } = trayAsEquipmentGrounding[code.year];
  const permitted = rows.flatMap((row): readonly CableTrayPermitted[] => {
    const least = row[metal];
    return least === null ? [] : [{ kind: "permitted", through: row.through, least: { ...least } }];
  });
  const alwaysWire = isAlwaysWire(code, role);
  const row = alwaysWire ? undefined : permitted.find(({ through }) => amperes <= through);
  const largestAmperes = alwaysWire ? 0 : (permitted.at(-1)?.through ?? 0);
  return {
    edition: code.year,
    amperes,
    metal,
    outcome: row ?? { kind: "not-permitted", largestAmperes },
    citation: { section: number, evidence },
    cautions: [
      { code: "tray-by-qualified-persons", section },
      { code: "tray-identified-and-marked", section },
      { code: "tray-bonded", section },
      ...amendmentCautions(trayUnder(code, metal), { acting: [], superseded: [] }, []),
    ],
  };
}

const role = "equipment-grounding-conductor";

/** The tray as a conductor of its metal: of the amendments, that a wire is required and that a metal is forbidden concern it too. */
function trayUnder(code: Code, metal: TrayMetal): Sought {
  const amendments = (code.amendments ?? []).filter(
    (one) =>
      one.kind === "always-wire" ||
      (one.kind === "material" && one.allowedFrom === undefined && one.material === metal),
  );
  return { code: { ...code, amendments }, role, material: "aluminum" };
}

function readInput(at: Reader): CableTrayInput | undefined {
  return readShape<CableTrayInput>(at, cableTrayInputShape);
}

import type { ConductorSize, Material } from "../conductor/index.js";
import { type Citation, type EditionYear, evidenceOfCell } from "../edition/index.js";
import { ambientCorrection } from "../edition/tables/ambient-correction.generated.js";
import { conductorCountAdjustment } from "../edition/tables/conductor-count-adjustment.generated.js";
import { insulationTypes } from "../edition/tables/insulation-types.generated.js";
import { rooftopAdder } from "../edition/tables/rooftop-adder.generated.js";
import {
  ambientEquation,
  nonmetallicCableAmpacity,
  shortRaceway,
  terminations as terminationSection,
  undergroundFeederCableAmpacity,
} from "../edition/tables/sections.generated.js";
import { amperesIn } from "./raceway.js";
import type {
  ConditionsOfUse,
  InsulationType,
  PlaceOfUse,
  Temperature,
  TemperatureColumn,
  Terminations,
} from "./shape.generated.js";
import { fifthsOf, fifthsOfCelsius } from "./temperature.js";
import { terminationColumn } from "./termination-column.js";

/** Ambient temperature on which the ampacity table is based, in degrees Celsius. */
export const tableAmbient = 30;

/** Length in inches through which a raceway is short. */
const shortRacewayInches = 24;

/** The correction for the ambient temperature: a percentage, or the ratio whose root is the factor. */
export type Correction =
  | {
      readonly method: "table";
      readonly percent: number;
      readonly through: number;
      readonly isColder: boolean;
    }
  | { readonly method: "equation"; readonly above: number; readonly base: number };

/** Conditions of use, read from the tables once, for conductors of any size. */
export interface Conditions {
  readonly year: EditionYear;
  readonly insulation: InsulationType;
  readonly location: PlaceOfUse["location"];
  readonly column: { readonly temperature: TemperatureColumn; readonly citation: Citation };
  readonly rooftop: {
    readonly inchesAboveRoof: number;
    readonly added: Temperature | null;
    readonly because?: "height" | "insulation";
    readonly citation: Citation;
  } | null;
  /** `null` where the ambient temperature is that of the table and nothing was said of it. */
  readonly ambient: (Correction & { readonly at: Temperature; readonly citation: Citation }) | null;
  readonly adjustment: {
    readonly conductors: number;
    readonly percent: number;
    readonly because?: "short-raceway";
    readonly citation: Citation;
  } | null;
  readonly cable: Citation | null;
  readonly terminations: {
    readonly temperature: TemperatureColumn;
    readonly isMarked: boolean;
    readonly citation: Citation;
  };
}

/** The temperature that insulation is rated for; `null` where it is not for the place. */
export function ratingOf(
  year: EditionYear,
  insulation: InsulationType,
  location: PlaceOfUse["location"],
): TemperatureColumn | null {
  const row = insulationTypes[year].rows.find(({ type }) => type === insulation);
  // The generated rows hold numbers; the ratings of these types are those of the three columns.
  return (row?.[location] ?? null) as TemperatureColumn | null;
}

/** Reads conditions that hold in the edition; `null` where the insulation is not for the place, or too hot to carry anything. */
export function conditionsIn(
  year: EditionYear,
  { insulation, place, terminations }: ConditionsOfUse,
): Conditions | null {
  const temperature = ratingOf(year, insulation, place.location);
  if (temperature === null) return null;
  const types = insulationTypes[year];
  const evidence = evidenceOfCell(types, insulation, place.location);
  const rooftop = rooftopIn(year, insulation, place);
  const at = sumOf(place.ambient ?? { celsius: tableAmbient }, rooftop?.added ?? null);
  const ambient = place.ambient === undefined ? null : correctionIn(year, temperature, at, place.method);
  if (ambient === undefined) return null;
  return {
    year,
    insulation,
    location: place.location,
    column: { temperature, citation: { section: types.number, evidence } },
    rooftop,
    ambient,
    adjustment: adjustmentIn(year, place),
    cable: cableLimit(year, insulation),
    terminations: { ...terminationsOf(terminations), citation: terminationSection[year] },
  };
}

function terminationsOf(given: Terminations): Pick<Conditions["terminations"], "temperature" | "isMarked"> {
  return given.marked === undefined
    ? { temperature: terminationColumn(given.circuitAmperes, false), isMarked: false }
    : { temperature: given.marked, isMarked: true };
}

function rooftopIn(
  year: EditionYear,
  insulation: InsulationType,
  { inchesAboveRoof, ambient }: PlaceOfUse,
): Conditions["rooftop"] {
  if (inchesAboveRoof === undefined) return null;
  const { number, rows, ...table } = rooftopAdder[year];
  const row = rows.find(({ height, reaches }) =>
    reaches === "through" ? inchesAboveRoof <= height : inchesAboveRoof < height,
  );
  const cited = row ?? rows.at(-1);
  const unit = ambient?.fahrenheit === undefined ? "addCelsius" : "addFahrenheit";
  const citation = {
    section: number,
    evidence: evidenceOfCell(table, cited?.height ?? "", row === undefined ? "reaches" : unit),
  };
  if (row === undefined) return { inchesAboveRoof, added: null, because: "height", citation };
  if (row.except === insulation) {
    const exempt = { ...citation, evidence: evidenceOfCell(table, row.height, "except") };
    return { inchesAboveRoof, added: null, because: "insulation", citation: exempt };
  }
  const added = unit === "addCelsius" ? { celsius: row.addCelsius } : { fahrenheit: row.addFahrenheit };
  return { inchesAboveRoof, added, citation };
}

/** Adds what the roof adds, in its own unit: the two are printed apart, and one is not the other converted. */
function sumOf(ambient: Temperature, added: Temperature | null): Temperature {
  if (added === null) return ambient;
  return ambient.fahrenheit === undefined
    ? { celsius: ambient.celsius + (added.celsius ?? 0) }
    : { fahrenheit: ambient.fahrenheit + (added.fahrenheit ?? 0) };
}

/** The correction for an ambient temperature; `undefined` where nothing is left to carry. */
function correctionIn(
  year: EditionYear,
  rated: TemperatureColumn,
  at: Temperature,
  method: PlaceOfUse["method"] = "table",
): Conditions["ambient"] | undefined {
  const fifths = fifthsOf(at);
  if (method === "equation") {
    const above = fifthsOfCelsius(rated) - fifths;
    const base = fifthsOfCelsius(rated) - fifthsOfCelsius(tableAmbient);
    return above > 0 ? { method, above, base, at, citation: ambientEquation[year] } : undefined;
  }
  const table = ambientCorrection[year];
  // Between two whole degrees there is no band, so that the hotter one holds; below the coldest it holds as well.
  const row = table.rows.find(({ through }) => fifths <= fifthsOfCelsius(through));
  const column = `factor${rated}` as const;
  const percent = row?.[column] ?? null;
  if (row === undefined || percent === null) return undefined;
  const evidence = evidenceOfCell(table, row.through, column);
  const isColder = row.from !== null && row === table.rows[0] && fifths < fifthsOfCelsius(row.from);
  return {
    method,
    percent,
    through: row.through,
    isColder,
    at,
    citation: { section: table.number, evidence },
  };
}

function adjustmentIn(
  year: EditionYear,
  { currentCarrying = 3, racewayInches }: PlaceOfUse,
): Conditions["adjustment"] {
  if (currentCarrying <= 3) return null;
  if (racewayInches !== undefined && racewayInches <= shortRacewayInches) {
    const citation = shortRaceway[year];
    return { conductors: currentCarrying, percent: 100, because: "short-raceway", citation };
  }
  const table = conductorCountAdjustment[year];
  const row = table.rows.find(({ through }) => through === null || currentCarrying <= through);
  if (row === undefined) throw new TypeError("the adjustment table has an end");
  const evidence = evidenceOfCell(table, row.through ?? "last", "percent");
  return { conductors: currentCarrying, percent: row.percent, citation: { section: table.number, evidence } };
}

function cableLimit(year: EditionYear, insulation: InsulationType): Citation | null {
  if (insulation === "NM") return nonmetallicCableAmpacity[year];
  return insulation === "UF" ? undergroundFeederCableAmpacity[year] : null;
}

/** The column that cable of a kind has its ampacity by, whatever its insulation (334.80, 340.80). */
export const cableColumn = 60;

/** Amperes of a conductor under conditions, not rounded; `null` where the table has no value for it. For loops. */
export function amperesUnder(conditions: Conditions, size: ConductorSize, material: Material): number | null {
  const { year, column, cable, terminations } = conditions;
  const own = amperesIn(year, size, material, column.temperature);
  const limit = amperesIn(year, size, material, terminations.temperature);
  const ofCable = cable === null ? limit : amperesIn(year, size, material, cableColumn);
  if (own === null || limit === null || ofCable === null) return null;
  return Math.min(correctedAmperes(conditions, own), limit, ofCable);
}

/** A value of the table after its correction and its adjustment: one division of whole numbers, or one root. */
export function correctedAmperes({ ambient, adjustment }: Conditions, amperes: number): number {
  return adjusted(ambient, adjustment?.percent ?? 100, amperes);
}

/** The same with another adjustment. */
export function adjusted(ambient: Conditions["ambient"], percent: number, amperes: number): number {
  if (ambient === null) return (amperes * percent) / 100;
  if (ambient.method === "table") return (amperes * ambient.percent * percent) / 10_000;
  return (Math.sqrt((amperes * amperes * ambient.above) / ambient.base) * percent) / 100;
}

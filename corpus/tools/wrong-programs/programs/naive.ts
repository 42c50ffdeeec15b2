import {
  areaOf,
  type ConductorSize,
  type EditionYear,
  type Role,
  standardSizeFor,
} from "../../../../src/index.js";
import { type AnyInput, type Decided, type Wrong, withSize } from "../program.js";
import { conductorFor, phasesOf } from "../supplies.js";

const rows: readonly (readonly [number, ConductorSize])[] = [
  [66_360, "8 AWG"],
  [105_600, "6 AWG"],
  [167_800, "4 AWG"],
  [350_000, "2 AWG"],
  [600_000, "1/0 AWG"],
  [1_100_000, "2/0 AWG"],
];
const ratings: readonly (readonly [number, ConductorSize])[] = [
  [15, "14 AWG"],
  [20, "12 AWG"],
  [60, "10 AWG"],
  [100, "8 AWG"],
  [200, "6 AWG"],
  [300, "4 AWG"],
  [400, "3 AWG"],
  [500, "2 AWG"],
  [600, "1 AWG"],
  [800, "1/0 AWG"],
  [1000, "2/0 AWG"],
  [1200, "3/0 AWG"],
  [1600, "4/0 AWG"],
  [2000, "250 kcmil"],
  [2500, "350 kcmil"],
  [3000, "400 kcmil"],
  [4000, "500 kcmil"],
  [5000, "700 kcmil"],
  [6000, "800 kcmil"],
];
const withEighth: readonly Role[] = [
  "main-bonding-jumper",
  "system-bonding-jumper",
  "supply-side-bonding-jumper",
  "grounded-conductor",
];

/** The twelve lines, and the two tables above: copper, one kind of set, one device, no limits and no editions. */
const naiveSize = (role: Role, year: EditionYear, input: AnyInput): ConductorSize => {
  const device = input.circuits?.[0]?.device;
  const amperes =
    input.deviceAmperes ?? (device !== undefined && "amperes" in device ? device.amperes : null);
  if (amperes !== null) return ratings.find(([through]) => amperes <= through)?.[1] ?? "800 kcmil";
  if (input.impedanceAmperes !== undefined)
    return conductorFor(year, input.impedanceAmperes, "copper") ?? "2000 kcmil";
  const [set] = input.supply?.sets ?? [];
  const size = set === undefined ? input.enclosed?.[0]?.size : phasesOf(set)[0]?.size;
  if (role === "electrode-raceway-bonding-jumper" || size === undefined) return size ?? "6 AWG";
  const area = areaOf(size) * (set?.count ?? 1);
  const row = rows.find(([through]) => area <= through);
  if (row !== undefined) return row[1];
  return withEighth.includes(role) ? (standardSizeFor(area / 8) ?? "2000 kcmil") : "3/0 AWG";
};

/** A program that somebody writes in an afternoon. */
export const naive: Wrong =
  () =>
  ({ role, year, input }): Decided =>
    withSize(naiveSize(role, year, input));

import {
  equipmentGroundingConductor,
  type Material,
  materials,
  size,
  standardSizes,
} from "../../../src/index.js";
import type { Check } from "../runner/model.js";
import { valueAt, withValueAt } from "./places.js";
import { type Conductors, canCarry, suppliesFor } from "./supplies.js";

/** A value that could stand at a place that a source leaves open; `undefined` leaves the member out. */
export interface Alternative {
  readonly value: unknown;
  /** Why the source's silence excludes it after all: the code itself says what holds where nothing is said. */
  readonly settledBy?: Settled;
}

/**
 * What the code says of silence. `unnamed-material`: by 110.5, a size without a material is of copper. `unnamed-electrode`: by 250.66 the
 * table holds, and its paragraphs are limits for electrodes that are named. `unnamed-reason`: by 250.122(B) every increase counts but for one
 * reason that has to be named.
 */
export type Settled = "unnamed-material" | "unnamed-electrode" | "unnamed-reason";

const sets = [1, 2, 3, 4, 6, 8, 12];
const currents = [1, 5, 15, 20, 30, 40, 60, 100, 200, 400, 800, 1600, 3000];
const electrodes = ["metal-water-pipe", "structural-metal", "concrete-encased", "rod"] as const;
const withoutLimit: readonly string[] = electrodes.slice(0, 2);
const reasons: readonly Alternative[] = [
  { value: "voltage-drop" },
  { value: "other" },
  { value: "temperature-or-number", settledBy: "unnamed-reason" },
];

/** What could stand at an assumed place instead, as far as the rest of the check leaves it open. */
export function alternativesAt(check: Check, path: string): readonly Alternative[] {
  const { input, amperes } = check;
  const last = path.split(".").at(-1) ?? "";
  const free = (values: readonly unknown[]): readonly Alternative[] => values.map((value) => ({ value }));
  switch (last) {
    case "supply":
    case "conductors":
      return free(suppliesFor(amperes));
    case "material":
      return materialsAt(check, path);
    case "size":
      return free(sizesAt(check, path));
    case "count":
      return free(sets.filter((value) => isCarried(check, path, value)));
    case "electrodes":
      return electrodes.map((kind) => ({
        value: [{ kind }],
        ...(withoutLimit.includes(kind) ? {} : { settledBy: "unnamed-electrode" as const }),
      }));
    case "conductor":
      return free(["2 AWG", "1/0 AWG", "4/0 AWG"]);
    case "enclosed":
      return free(["6 AWG", "2 AWG", "250 kcmil"].map((one) => [{ size: one, material: "copper" }]));
    case "ferrous":
      return free([true, false]);
    case "increasedFrom":
      return free([undefined, ...baselinesAt(input, path)]);
    case "reason":
      return reasons;
    case "system":
      return free(["service", "separately-derived", "building"]);
    case "jumperAt":
      return free(["source", "enclosure"]);
    case "amperes":
      return free(ratingsOfRow(valueAt(input, path)));
    case "deviceAmperes":
    case "impedanceAmperes":
      return free(currents);
    default:
      // A member of a list, such as a second rod.
      if (/^[0-9]+$/.test(last)) return free([undefined, valueAt(input, path)]);
      throw new Error(`${check.id}: nothing is known of what could stand at ${path}`);
  }
}

/** Every size, or, where the source names amperes, the smallest that carry them. */
function sizesAt({ input, amperes }: Check, path: string): readonly unknown[] {
  if (amperes === undefined) return standardSizes;
  const material = valueAt(input, path.replace(/size$/, "material")) as Material;
  return suppliesFor(amperes).flatMap(({ sets: [set] }) =>
    set?.count === 1 && set.material === material ? [set.size] : [],
  );
}

function materialsAt(check: Check, path: string): readonly Alternative[] {
  const isCopper = valueAt(check.input, path) === "copper";
  return materials
    .filter((material) => isCarried(check, path, material))
    .map((value) => ({ value, ...(isCopper ? { settledBy: "unnamed-material" as const } : {}) }));
}

/** Whether the conductors with this value still carry the amperes that the source names. */
function isCarried({ input, amperes }: Check, path: string, value: unknown): boolean {
  const [owner] = path.split(".sets.");
  const conductors = valueAt(withValueAt(input, path, value), owner ?? path) as
    | Partial<Conductors>
    | undefined;
  return (
    amperes === undefined || conductors?.sets === undefined || canCarry(conductors as Conductors, amperes)
  );
}

/** The conductors as installed and the two sizes below, as what they were increased from. */
function baselinesAt(input: unknown, path: string): readonly unknown[] {
  const installed = valueAt(input, path.replace(/increasedFrom$/, "conductors.sets.0.size"));
  const from = valueAt(input, path) as object;
  const index = standardSizes.indexOf(installed as (typeof standardSizes)[number]);
  return standardSizes
    .slice(Math.max(0, index - 2), index + 1)
    .map((one) => withValueAt(from, "conductors.sets.0.size", one));
}

/** The ratings that have the same row of Table 250.122, which is what a source tells that names the size before an increase. */
function ratingsOfRow(amperes: unknown): readonly number[] {
  const row = rowOf(amperes as number);
  return ratings.filter((rating) => rowOf(rating) === row);
}

const ratings = [
  15, 20, 25, 30, 40, 50, 60, 70, 90, 100, 110, 125, 150, 175, 200, 225, 300, 350, 400, 500, 600,
];

function rowOf(amperes: number): string | null {
  const { outcome } = size(equipmentGroundingConductor, {
    circuits: [{ device: { amperes } }],
    conductor: { material: "copper" },
    code: { year: "2017" },
  });
  return outcome.kind === "conductor" ? outcome.size : null;
}

import { areaOf, type Material } from "../conductor/index.js";
import { type Citation, type EditionYear, type Evidence, evidenceOfCell } from "../edition/index.js";
import {
  deviceAbove800,
  nextStandardRating,
  tapConductors,
  transformerSecondaryConductors,
} from "../edition/tables/sections.generated.js";
import { standardRatings } from "../edition/tables/standard-ratings.generated.js";
import { readShape } from "../input/read-shape.js";
import { readAll } from "../input/reader.js";
import { together } from "./ampacity-of.js";
import { type DeviceQuestion, deviceQuestionShape } from "./shape.generated.js";
import { smallConductorDevice } from "./small-conductors.js";

export type { DeviceQuestion };

/** Rating in amperes above which a device has at most the ampacity of its conductors. */
const mostRoundedUp = 800;

/** A place whose evidence is a level of its own. */
export type SureCitation = Citation & {
  /** How surely it is known. */
  readonly evidence: Evidence;
};

/** Largest device that conductors of an ampacity may have. */
export interface PermittedDevice {
  /** Most amperes that its rating may have. */
  readonly most: number;
  /** Largest standard rating within it; `null` below the first one. */
  readonly standard: number | null;
  /** What decides it. */
  readonly limitedBy: "ampacity" | "next-standard-rating" | "small-conductor";
  /** Where the edition says so, and how surely it is known. */
  readonly citation: SureCitation;
}

/** Stable code of what to mind about a device. */
export type DeviceCaution = "rating-off-the-list" | "load-within-ampacity";

/** The device that may protect conductors. */
export interface DeviceAnswer extends PermittedDevice {
  /** Tells results apart. */
  readonly kind: "device";
  /** Edition. */
  readonly edition: EditionYear;
  /** Ampacity of the conductors together, in amperes. */
  readonly ampacity: number;
  /** Whether the rating in question is permitted; `null` where none was given. */
  readonly permitted: boolean | null;
  /** Standard ratings next to one that is none: the one below, and the one above. */
  readonly neighbors: readonly number[];
  /** Stable codes of what to mind. */
  readonly cautions: readonly DeviceCaution[];
  /** The weakest that it rests on. */
  readonly evidence: Evidence;
}

/**
 * The overcurrent device that may protect conductors: up to their ampacity, or the next standard rating above it through 800 A, but never so for
 * taps, conductors from a transformer's secondary and branch circuits of several receptacles (240.4(B), (C), 240.21); small conductors have limits
 * of their own (240.4(D)).
 *
 * @param question - edition, the conductors with the ampacity of one in its place, what they are, the kind of device, and perhaps its rating
 * @returns the most that the rating may be, the largest standard rating within it, and of a rating in question whether it is permitted
 * @throws {@link InputError} listing everything that is wrong in the question
 *
 * @example
 * ```ts
 * import { deviceFor } from "bondmil";
 * const conductors = { size: "500 kcmil", material: "copper", sets: 2, amperes: 380 } as const;
 * const feeder = { edition: "2023", conductors, serves: "service-or-feeder", device: "circuit-breaker" } as const;
 * deviceFor(feeder).standard; // => 800
 * deviceFor({ ...feeder, serves: "transformer-secondary" }).standard; // => 700
 * deviceFor({ ...feeder, rating: 750 }).neighbors; // => [700, 800]
 * ```
 */
export function deviceFor(question: DeviceQuestion): DeviceAnswer {
  const { edition, conductors, serves, device, rating } = readAll(question, (at) =>
    readShape<DeviceQuestion>(at, deviceQuestionShape),
  );
  const { size, material, sets, amperes } = conductors;
  const ampacity = sets * amperes;
  const permitted = deviceIn(edition, { ampacity, area: areaOf(size), material, serves, device });
  const ratings = ratingsIn(edition, device);
  const neighbors = rating === undefined ? [] : neighborsOf(rating, ratings);
  return {
    kind: "device",
    edition,
    ampacity,
    ...permitted,
    permitted: rating === undefined ? null : rating <= permitted.most,
    neighbors,
    cautions: [
      ...(neighbors.length > 0 ? (["rating-off-the-list"] as const) : []),
      ...(permitted.limitedBy === "next-standard-rating" ? (["load-within-ampacity"] as const) : []),
    ],
    evidence: permitted.citation.evidence,
  };
}

/** What decides the device of conductors. */
export interface Protected {
  /** Ampacity of all sets together. */
  readonly ampacity: number;
  /** Circular mils of one conductor. */
  readonly area: number;
  readonly material: Material;
  readonly serves: DeviceQuestion["serves"];
  readonly device: DeviceQuestion["device"];
}

/** The same, the arguments being checked. */
export function deviceIn(year: EditionYear, conductors: Protected): PermittedDevice {
  const { ampacity, area, material, serves, device } = conductors;
  const ratings = ratingsIn(year, device);
  const next = ratings.find((one) => one >= ampacity) ?? null;
  const small = smallConductorDevice(year, area, material);
  const isRoundedUp = next !== null && next > ampacity && next <= mostRoundedUp && mayRoundUp(serves);
  const most = isRoundedUp ? next : ampacity;
  if (small !== null && small.amperes < most) {
    const { amperes, citation } = small;
    return { most: amperes, ...standardIn(year, amperes, ratings, citation), limitedBy: "small-conductor" };
  }
  const limitedBy = isRoundedUp ? "next-standard-rating" : "ampacity";
  return { most, ...standardIn(year, most, ratings, ruleOf(year, serves, ampacity)), limitedBy };
}

function mayRoundUp(serves: DeviceQuestion["serves"]): boolean {
  return serves === "service-or-feeder" || serves === "branch-circuit";
}

function ruleOf(year: EditionYear, serves: DeviceQuestion["serves"], ampacity: number): Citation {
  if (serves === "tap") return tapConductors[year];
  if (serves === "transformer-secondary") return transformerSecondaryConductors[year];
  return ampacity > mostRoundedUp ? deviceAbove800[year] : nextStandardRating[year];
}

function standardIn(
  year: EditionYear,
  most: number,
  ratings: readonly number[],
  rule: Citation,
): Pick<PermittedDevice, "standard" | "citation"> {
  const standard = ratings.filter((one) => one <= most).at(-1) ?? null;
  const table = standardRatings[year];
  const evidence = evidenceOfCell(table, standard ?? ratings[0] ?? 0, "amperes");
  return { standard, citation: together([rule, { section: table.number, evidence }]) };
}

/** Standard ratings of a kind of device in amperes, smallest first. */
export function ratingsIn(year: EditionYear, device: DeviceQuestion["device"]): readonly number[] {
  const rows = standardRatings[year].rows.filter((row) => device === "fuse" || row.device === "any");
  return rows.map(({ amperes }) => amperes);
}

/** The ratings of a list below and above one that is not on it; none of one that is. */
export function neighborsOf(rating: number, ratings: readonly number[]): readonly number[] {
  if (ratings.includes(rating)) return [];
  const below = ratings.filter((one) => one < rating).at(-1);
  const above = ratings.find((one) => one > rating);
  return [below, above].filter((one) => one !== undefined);
}

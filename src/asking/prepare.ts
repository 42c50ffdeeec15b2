import { areaOf, columnOf } from "../conductor/index.js";
import { type Amendment, policyUnder } from "../edition/index.js";
import { type Members, readShape } from "../input/read-shape.js";
import { member, type Reader, readAll, refuse } from "../input/reader.js";
import type { RoleByRating, RoleBySupply } from "../roles/definition.js";
import { largestRating, ratingTable } from "../rules/rating-table.js";
import { tableOf } from "../rules/tables.js";
import {
  areaByFlatRatings,
  areaByFlatRule,
  type FlatDecision,
  flatDecisions,
  flatLimits,
  flatRatings,
  flatRule,
  limitedFlatly,
} from "../sizing/flat-rule.js";
import { checkRole } from "./check-role.js";
import {
  type PreparedRatingRequest,
  type PreparedRequest,
  preparedRatingRequestShape,
  preparedRequestShape,
} from "./shape.generated.js";

/** Sizing by the rating of a device: amperes in, required area out, no objects. */
export interface PreparedByRating {
  /** Tells the members of the union apart. */
  readonly kind: "by-rating";
  /** Amperes to circular mils required; throws an {@link InputError} for a rating that the table has no row for. */
  readonly requiredArea: (amperes: number) => number;
}

/** Sizing by area alone, where supply and conductor are of one material: area in, required area out, no objects. */
export interface PreparedByArea {
  /** Tells the members of the union apart. */
  readonly kind: "by-area";
  /** Whole circular mils of the supply to circular mils required; throws an {@link InputError} for anything else. */
  readonly requiredArea: (supplyArea: number) => number;
}

/**
 * Sizing by area where supply and conductor differ in material: the installed area decides whether assumed conductors count, and the
 * area of the assumed conductors then decides the size, so both are needed.
 */
export interface PreparedByAssumedArea {
  /** Tells the members of the union apart. */
  readonly kind: "by-assumed-area";
  /**
   * Whether assumed conductors count for an installed area in whole circular mils, in so many sets; throws an {@link InputError} for
   * anything else.
   */
  readonly needsAssumedArea: (supplyArea: number, sets: number) => boolean;
  /**
   * Whole circular mils installed, those of the assumed conductors (0 where they do not count), and sets, to circular mils required;
   * throws an {@link InputError} for anything else.
   */
  readonly requiredArea: (supplyArea: number, assumedArea: number, sets: number) => number;
}

/** A sizing prepared for a loop. */
export type Prepared = PreparedByArea | PreparedByAssumedArea;

/** Amendments that the full path lays over a result, which a loop over areas cannot. */
const beyondAreas: readonly Amendment["kind"][] = ["floor", "basis", "material", "always-wire"];

const wholeArea = "whole circular mils, at least 1";

/** Whether a number is positive and whole, and its eighth exact. */
function isPositiveWhole(value: number): boolean {
  return Number.isSafeInteger(value) && value >= 1;
}

/** Refuses an argument of a prepared function. */
function refuseArgument(name: string, expected: string, value: unknown): never {
  return readAll<never>({ [name]: value }, (at) =>
    refuse(member(at, name), "out-of-range", expected, "give such a number"),
  );
}

/**
 * Prepares the plainest question of a role for a loop: the same kernel, area or amperes in, required area out, without steps.
 *
 * @param role - a role that goes by its supply or by a device
 * @param request - the code and the materials
 * @returns a function of areas in circular mils (where the materials differ it also takes the assumed area), or of amperes
 * @throws {@link InputError} listing everything that is wrong in the request, and for amendments that {@link size} lays over a result
 *
 * @example
 * ```ts
 * import { equipmentGroundingConductor, mainBondingJumper, prepare } from "bondmil";
 * const code = { year: "2023" } as const;
 * const conductor = { material: "copper" } as const;
 * const jumper = prepare(mainBondingJumper, { code, supplyMaterial: "copper", conductor });
 * jumper.kind === "by-area" && jumper.requiredArea(1800000); // => 225000
 * prepare(equipmentGroundingConductor, { code, conductor }).requiredArea(400); // => 52620
 * ```
 */
export function prepare(role: RoleBySupply, request: PreparedRequest): Prepared;
export function prepare(role: RoleByRating, request: PreparedRatingRequest): PreparedByRating;
export function prepare(
  role: RoleBySupply | RoleByRating,
  request: PreparedRequest | PreparedRatingRequest,
): Prepared | PreparedByRating {
  checkRole(role, "supply", "rating");
  return readAll(request, (at) => {
    if (role.by === "rating") {
      const read = readShape<PreparedRatingRequest>(at, preparedRatingRequestShape, refuseBeyondAreas);
      return read && preparedByRating(role, read);
    }
    const read = readShape<PreparedRequest>(at, preparedRequestShape, refuseBeyondAreas);
    return read && prepareChecked(role, read);
  });
}

function refuseBeyondAreas(at: Reader, { code }: Members<PreparedRatingRequest>): void {
  if (!(code?.amendments ?? []).some(({ kind }) => beyondAreas.includes(kind))) return;
  const expected = "amendments of cells and readings only";
  const amendments = member(member(at, "code"), "amendments");
  refuse(amendments, "unknown-value", expected, "size with the full path under this code");
}

function preparedByRating(
  { policies }: RoleByRating,
  { code, conductor }: PreparedRatingRequest,
): PreparedByRating {
  const read = columnOf(conductor.material);
  const rows = flatRatings(ratingTable(code), read);
  const floor = policies === null ? null : policyUnder(code, policies).floor;
  const least = floor === null ? 0 : areaOf(floor[read]);
  const most = largestRating(code);
  return {
    kind: "by-rating",
    requiredArea: (amperes) => {
      if (!(Number.isFinite(amperes) && amperes > 0 && amperes <= most)) {
        refuseArgument("amperes", `a rating above 0 A and at most ${most} A, where the table ends`, amperes);
      }
      const required = areaByFlatRatings(rows, amperes);
      return Math.max(required, least);
    },
  };
}

/** Prepares a role, the request being checked. What only the full path lays over a result is left out. */
export function prepareChecked(
  { policies }: Pick<RoleBySupply, "policies">,
  { code, supplyMaterial, conductor }: PreparedRequest,
): Prepared {
  const policy = policyUnder(code, policies);
  const rule = { table: tableOf(policy, code), policy, read: columnOf(conductor.material) };
  const column = columnOf(supplyMaterial);
  const limits = flatLimits(rule, column);
  const installed = flatRule(rule, column);
  if (column === rule.read) {
    return {
      kind: "by-area",
      requiredArea: (area) => {
        if (!isPositiveWhole(area)) refuseArgument("supplyArea", wholeArea, area);
        return limitedFlatly(limits, areaByFlatRule(installed, area), area, area > installed.threshold);
      },
    };
  }
  const assumed = flatRule(rule, rule.read);
  const decisions = flatDecisions(rule, column);
  const decision = (area: number, sets: number): FlatDecision => {
    if (!isPositiveWhole(sets)) refuseArgument("sets", "a whole number of sets, at least 1", sets);
    return decisions(area > installed.threshold, sets === 1);
  };
  return {
    kind: "by-assumed-area",
    needsAssumedArea: (area, sets) => {
      if (!isPositiveWhole(area)) refuseArgument("supplyArea", wholeArea, area);
      return decision(area, sets).assumed;
    },
    requiredArea: (area, assumedArea, sets) => {
      if (!isPositiveWhole(area)) refuseArgument("supplyArea", wholeArea, area);
      if (assumedArea !== 0 && !isPositiveWhole(assumedArea)) {
        refuseArgument("assumedArea", `${wholeArea}, or 0 where none counts`, assumedArea);
      }
      const by = decision(area, sets);
      const byInstalled = by.installed ? areaByFlatRule(installed, area) : 0;
      const byAssumed = by.assumed ? areaByFlatRule(assumed, assumedArea) : 0;
      const isAbove = area > installed.threshold || (by.assumed && assumedArea > assumed.threshold);
      return limitedFlatly(limits, Math.max(byInstalled, byAssumed), area, isAbove);
    },
  };
}

import { areaOf, columnOf } from "../conductor/index.js";
import { type Amendment, policyUnder } from "../edition/index.js";
import { type Members, readShape } from "../input/read-shape.js";
import { member, type Reader, readAll, refuse } from "../input/reader.js";
import type { RoleByRating, RoleBySupply } from "../roles/definition.js";
import { largestRating, ratingTable } from "../rules/rating-table.js";
import { tableOf } from "../rules/tables.js";
import { type DecidedBy, decidedBy } from "../sizing/assumption.js";
import { areaByRule, capArea, hasLastRowFloor, lastRowArea } from "../sizing/required-area.js";
import { ratingRowStep } from "../sizing/size-by-rating.js";
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
function refuseUnless(isRight: boolean, name: string, expected: string, value: unknown): void {
  if (isRight) return;
  readAll({ [name]: value }, (at) =>
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
  const table = ratingTable(code);
  const read = columnOf(conductor.material);
  const floor = policies === null ? null : policyUnder(code, policies).floor;
  const least = floor === null ? 0 : areaOf(floor[read]);
  const most = largestRating(code);
  const expected = `a rating above 0 A and at most ${most} A, where the table ends`;
  return {
    kind: "by-rating",
    requiredArea: (amperes) => {
      refuseUnless(Number.isFinite(amperes) && amperes > 0 && amperes <= most, "amperes", expected, amperes);
      return Math.max(least, ratingRowStep(table, amperes, read).requiredArea);
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
  const least = policy.floor === null ? 0 : areaOf(policy.floor[rule.read]);
  const most = policy.ceiling === null ? Number.POSITIVE_INFINITY : areaOf(policy.ceiling[rule.read]);
  const lastRow = lastRowArea(rule.table, rule.read);

  const limited = (area: number, required: number, assumed = 0): number => {
    const cap = Math.min(most, capArea(rule, { column, area, largest: area, sets: 1 }));
    const atTableEnd = hasLastRowFloor(rule, column, area) || hasLastRowFloor(rule, rule.read, assumed);
    const floor = atTableEnd ? Math.max(least, lastRow) : least;
    return Math.max(floor, Math.min(cap, required));
  };
  if (column === rule.read) {
    return {
      kind: "by-area",
      requiredArea: (area) => {
        refuseUnless(isPositiveWhole(area), "supplyArea", wholeArea, area);
        return limited(area, areaByRule(rule, column, area));
      },
    };
  }
  const by = (area: number, sets: number): DecidedBy =>
    decidedBy(policy.otherMaterial, rule.table, { column, area, sets }, rule.read);
  return {
    kind: "by-assumed-area",
    needsAssumedArea: (area, sets) => {
      refuseUnless(isPositiveWhole(area), "supplyArea", wholeArea, area);
      refuseUnless(isPositiveWhole(sets), "sets", "a whole number of sets, at least 1", sets);
      return by(area, sets) !== "installed";
    },
    requiredArea: (area, assumed, sets) => {
      refuseUnless(isPositiveWhole(area), "supplyArea", wholeArea, area);
      refuseUnless(
        assumed === 0 || isPositiveWhole(assumed),
        "assumedArea",
        `${wholeArea}, or 0 where none counts`,
        assumed,
      );
      refuseUnless(isPositiveWhole(sets), "sets", "a whole number of sets, at least 1", sets);
      const decides = by(area, sets);
      const byInstalled = decides === "assumed" ? 0 : areaByRule(rule, column, area);
      const byAssumed = decides === "installed" ? 0 : areaByRule(rule, rule.read, assumed);
      return limited(area, Math.max(byInstalled, byAssumed), decides === "installed" ? 0 : assumed);
    },
  };
}

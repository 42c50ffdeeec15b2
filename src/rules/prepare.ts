import { areaOf, columnOf, type Material } from "../conductor/index.js";
import { type Amendment, type Code, policyUnder, readCode } from "../edition/index.js";
import { member, readAll, readObject, refuse } from "../input/reader.js";
import { type DecidedBy, decidedBy } from "../sizing/assumption.js";
import { areaByRule, capArea, hasLastRowFloor, lastRowArea } from "../sizing/required-area.js";
import { readMaterial } from "../supply/read.js";
import type { JumperRole } from "./jumper.js";
import { tableOf } from "./tables.js";

/** What is fixed before a loop over areas: the code and the materials. The supply is of one material. */
export interface PreparedRequest {
  readonly code: Code;
  /** Material of the supply, the same throughout. */
  readonly supply: Material;
  /** Material of the jumper. */
  readonly jumper: Material;
}

/** Sizing by area alone, where supply and jumper are of one material: area in, required area out, no objects. */
export interface PreparedByArea {
  readonly kind: "by-area";
  /** Whole circular mils of the supply to circular mils required; throws an {@link InputError} for anything else. */
  readonly requiredArea: (supplyArea: number) => number;
}

/**
 * Sizing by area where supply and jumper differ: the installed area decides whether assumed conductors count, and the
 * area of the assumed conductors then decides the size, so both are wanted.
 */
export interface PreparedByAssumedArea {
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

/** Prepares a role for a loop over areas. The same kernel as the full path, without steps. */
export function prepareJumper(role: JumperRole, given: PreparedRequest): Prepared {
  const checked = readAll(given, (at) => {
    if (!readObject(at, ["code", "supply", "jumper"])) return undefined;
    const code = readCode(member(at, "code"));
    if ((code?.amendments ?? []).some(({ kind }) => beyondAreas.includes(kind))) {
      const expected = "amendments of cells and readings only";
      refuse(
        member(member(at, "code"), "amendments"),
        "unknown-value",
        expected,
        "size with the full path under this code",
      );
    }
    const supply = readMaterial(member(at, "supply"));
    const jumper = readMaterial(member(at, "jumper"));
    return code && supply && jumper && { code, supply, jumper };
  });
  return prepareChecked(role, checked);
}

/** Prepares a role, the request being checked. What only the full path lays over a result is left out. */
export function prepareChecked(
  { policies }: JumperRole,
  { code, supply, jumper }: PreparedRequest,
): Prepared {
  const policy = policyUnder(code, policies);
  const rule = { table: tableOf(policy, code), policy, read: columnOf(jumper) };
  const column = columnOf(supply);
  const least = policy.floor === null ? 0 : areaOf(policy.floor[rule.read]);
  const most = policy.ceiling === null ? Number.POSITIVE_INFINITY : areaOf(policy.ceiling[rule.read]);
  const lastRow = lastRowArea(rule.table, rule.read);

  const limited = (area: number, required: number): number => {
    const cap = Math.min(most, capArea(rule, { column, area, largest: area, sets: 1 }));
    const floor = hasLastRowFloor(rule, column, area) ? Math.max(least, lastRow) : least;
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
      return limited(area, Math.max(byInstalled, byAssumed));
    },
  };
}

import type { Policy, RatingPolicy } from "../../../src/edition/index.js";
import type { PolicySet } from "../../../src/edition/policy.js";
import type { RatingRow } from "../../../src/edition/rating-table.js";
import type { ReadingFacts } from "../../../src/edition/reading.js";
import type { SupplyAreaRow, SupplyAreaTable } from "../../../src/edition/supply-area-table.js";
import { bondingConductor } from "../../../src/edition/tables/bonding-conductor.generated.js";
import { electrodeConductor } from "../../../src/edition/tables/electrode-conductor.generated.js";
import { equipmentGrounding } from "../../../src/edition/tables/equipment-grounding.generated.js";
import * as policySets from "../../../src/edition/tables/policies.generated.js";
import { racewayAmpacity } from "../../../src/edition/tables/raceway-ampacity.generated.js";
import * as ratingPolicySets from "../../../src/edition/tables/rating-policies.generated.js";
import { readingFacts } from "../../../src/edition/tables/readings.generated.js";
import type { ConductorColumn, ConductorSize, EditionYear } from "../../../src/index.js";
import { withValue } from "../mutation/watch.js";
import type { Asked, Wrong } from "./program.js";

/** A value of the running library that is another while one question is decided. */
export interface Change {
  readonly data: object;
  readonly key: string;
  readonly value: unknown;
}

/** Data of the running library is changed while a question is decided, and put back. */
export function inMemory(changes: (asked: Asked) => readonly Change[]): Wrong {
  return (right) => (asked) => during(changes(asked), () => right(asked));
}

function during<R>([first, ...rest]: readonly Change[], run: () => R): R {
  if (first === undefined) return run();
  return withValue(first.data, [first.key], first.value, () => during(rest, run));
}

/** Members of an object that become others. */
export function changed(data: object, members: object): readonly Change[] {
  return Object.entries(members).map(([key, value]) => ({ data, key, value }));
}

/** Every policy by supply of an edition, changed, with the readings that would lay the old value over it again. */
export function policies(year: EditionYear, change: (policy: Policy) => Partial<Policy>): readonly Change[] {
  const sets: readonly PolicySet[] = Object.values(policySets);
  return withReadings(year, sets, change);
}

/** Every policy by rating of an edition, changed, with its readings. */
export function ratingPolicies(
  year: EditionYear,
  change: (policy: RatingPolicy) => Partial<RatingPolicy>,
): readonly Change[] {
  const sets: readonly PolicySet<RatingPolicy>[] = Object.values(ratingPolicySets);
  return withReadings(year, sets, change);
}

function withReadings<P extends object>(
  year: EditionYear,
  sets: readonly PolicySet<P>[],
  change: (policy: P) => Partial<P>,
): readonly Change[] {
  const facts: readonly ReadingFacts<string>[] = Object.values(readingFacts);
  return sets.flatMap(({ id, byEdition: { [year]: policy } }) => {
    const readings = facts.filter((one) => one.editions.includes(year) && one.policies.includes(id));
    const laid = readings.flatMap((one) => Object.values(one.policy));
    return [
      ...changed(policy, change(policy)),
      ...laid.flatMap((over) =>
        changed(over, change({ ...policy, ...over })).filter(({ key }) => Object.hasOwn(over, key)),
      ),
    ];
  });
}

/** Both tables of supply areas of an edition, changed. */
export function supplyTables(
  year: EditionYear,
  change: (table: SupplyAreaTable) => Partial<SupplyAreaTable>,
): readonly Change[] {
  const tables = [bondingConductor[year], electrodeConductor[year]].filter((table) => table !== null);
  return tables.flatMap((table) => changed(table, change(table)));
}

/** The areas at which the rows stop, the threshold with the last of them. */
export function movedEnds(
  table: SupplyAreaTable,
  move: (area: number, column: ConductorColumn, place: number, row: SupplyAreaRow) => number,
): Partial<SupplyAreaTable> {
  const rows = table.rows.map((row, place) => ({
    ...row,
    through: {
      copper: move(row.through.copper, "copper", place, row),
      aluminum: move(row.through.aluminum, "aluminum", place, row),
    },
  }));
  return { rows, threshold: rows.at(-1)?.through ?? table.threshold };
}

/** Rows of the table of ratings of an edition. */
export function ratingRows(year: EditionYear): readonly RatingRow[] {
  return equipmentGrounding[year].rows;
}

/** The table of ratings of an edition with other rows. */
export function ratingTable(
  year: EditionYear,
  change: (row: RatingRow, place: number, rows: readonly RatingRow[]) => RatingRow,
): readonly Change[] {
  const rows = ratingRows(year);
  return changed(equipmentGrounding[year], { rows: rows.map((row, place) => change(row, place, rows)) });
}

/** Ampacities of a size: copper at 60, 75 and 90 C, then aluminum. */
export type Ampacities = readonly (number | null)[];

/** The table of ampacities of an edition with other rows. */
export function ampacities(
  year: EditionYear,
  change: (amperes: Ampacities, size: ConductorSize, next: Ampacities | undefined) => Ampacities,
): readonly Change[] {
  const rows = Object.entries(racewayAmpacity[year].rows) as [ConductorSize, Ampacities][];
  const others = rows.map(([size, amperes], place) => [size, change(amperes, size, rows[place + 1]?.[1])]);
  return changed(racewayAmpacity[year], { rows: Object.fromEntries(others) });
}

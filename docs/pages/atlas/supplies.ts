import {
  areaOf,
  assumedConductors,
  type ConductorColumn,
  conductorColumns,
  type EditionYear,
  type Prepared,
  type Readings,
  type StandardSize,
  standardSizes,
  tableAmpacity,
} from "bondmil";
import { prepareChecked } from "../../../src/asking/prepare.js";
import { policyUnder } from "../../../src/edition/code.js";
import type { Policy, PolicySet } from "../../../src/edition/policy.js";
import * as policyModule from "../../../src/edition/tables/policies.generated.js";
import { defaultReadings, readingFacts } from "../../../src/edition/tables/readings.generated.js";
import { type Case, type TallyRow, tallyOf } from "./tally.js";

/** Sets of policies of conductors that go by their supply, by id. */
export const supplyPolicies: ReadonlyMap<string, PolicySet> = new Map(
  Object.values(policyModule).map((set) => [set.id, set]),
);

/** A uniform supply of the grid. */
export interface GridSupply {
  readonly size: StandardSize;
  readonly sets: number;
  readonly material: ConductorColumn;
}

const mostSets = 20;

/** Every standard size, 1 to 20 sets, copper and aluminum. */
export const gridSupplies: readonly GridSupply[] = conductorColumns.flatMap((material) =>
  standardSizes.flatMap((size) =>
    Array.from({ length: mostSets }, (_, i) => ({ size, sets: i + 1, material })),
  ),
);

/** A supply in words. */
export function supplyName({ sets, size, material }: GridSupply): string {
  return `${sets} x ${size} ${material}`;
}

/** Conductors that have an ampacity, and if in parallel then at most six sets that may be. */
export function isOrdinary({ size, sets, material }: GridSupply, year: EditionYear): boolean {
  if (tableAmpacity({ edition: year, size, material, temperature: 75 }).amperes === null) return false;
  return sets === 1 || (sets <= 6 && areaOf(size) >= areaOf("1/0 AWG"));
}

/** What each other alternative of a reading changes, over the whole grid, for every set of policies that it patches. */
export function supplyRows(reading: keyof Readings): readonly TallyRow[] {
  const { policies, editions, policy } = readingFacts[reading];
  const alternatives = Object.keys(policy).filter((one) => one !== defaultReadings[reading]);
  return policies.flatMap((id) => {
    const set = supplyPolicies.get(id);
    if (set === undefined) return [];
    return editions.flatMap((edition) =>
      alternatives.map((alternative): TallyRow => {
        const tally = tallyOf(casesOf(set, edition, { [reading]: alternative }));
        return { of: id, edition, alternative, tally };
      }),
    );
  });
}

/** Whether a reading changes a policy of a conductor that goes by its supply. */
export function patchesSupplyPolicies(reading: keyof Readings): boolean {
  const { policies, policy } = readingFacts[reading];
  const patched = Object.values(policy).some((patch) => Object.keys(patch).length > 0);
  return patched && policies.some((id) => supplyPolicies.has(id));
}

function casesOf(set: PolicySet, year: EditionYear, readings: Partial<Readings>): readonly Case[] {
  return conductorColumns.flatMap((jumper) => {
    const before = requiredAreas(set, year, {}, jumper);
    const after = requiredAreas(set, year, readings, jumper);
    return gridSupplies.map((supply, i): Case => {
      const name = `${supplyName(supply)}, ${jumper} conductor`;
      const [old, now] = [before[i] ?? 0, after[i] ?? 0];
      return { name, before: old, after: now, count: 1, ordinary: isOrdinary(supply, year) };
    });
  });
}

/** Circular mils required for every supply of the grid, through the prepared path. */
export function requiredAreas(
  policies: PolicySet,
  year: EditionYear,
  readings: Partial<Readings>,
  jumper: ConductorColumn,
): readonly number[] {
  const code = { year, readings };
  const policy = policyUnder(code, policies);
  const prepared = new Map(
    conductorColumns.map((supply) => [
      supply,
      prepareChecked({ policies }, { code, supplyMaterial: supply, conductor: { material: jumper } }),
    ]),
  );
  return gridSupplies.map((supply) => {
    const by = prepared.get(supply.material);
    if (by === undefined) throw new TypeError(`nothing is prepared for ${supply.material}`);
    return requiredArea(by, policy, supply, assumedArea(year, supply, jumper));
  });
}

/** One reading counts the one largest conductor, however many sets there are. */
function requiredArea(
  prepared: Prepared,
  { sum }: Policy,
  { sets, size }: GridSupply,
  assumed: number,
): number {
  const counted = sum === "largest-conductor" ? 1 : sets;
  const area = counted * areaOf(size);
  return prepared.kind === "by-area"
    ? prepared.requiredArea(area)
    : prepared.requiredArea(area, counted * assumed, sets);
}

const assumedAreas = new Map<string, number>();

function assumedArea(year: EditionYear, { size, material }: GridSupply, jumper: ConductorColumn): number {
  const key = `${year} ${size} ${material} ${jumper}`;
  const known = assumedAreas.get(key);
  if (known !== undefined) return known;
  const [assumed] = assumedConductors({
    edition: year,
    supply: { sets: [{ count: 1, size, material }] },
    material: jumper,
    temperature: 75,
  });
  const area = assumed?.area ?? areaOf(size);
  assumedAreas.set(key, area);
  return area;
}

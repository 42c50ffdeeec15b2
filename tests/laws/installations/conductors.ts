import type { Installation, Supply, SupplySet } from "bondmil";
import { requiredForLoad } from "../../../src/supply/for-load.js";
import type { DrawnSupply } from "./parts.js";

/** The ungrounded conductors that a drawing gives, or those that its load requires. */
export function supplyOf(drawn: DrawnSupply, { code: { year } }: Installation): Supply {
  if ("sets" in drawn) return { sets: drawn.sets };
  const found = drawn.forLoad === undefined ? null : requiredForLoad(year, drawn.forLoad);
  if (found === null) throw new RangeError("the drawing has no conductors");
  return found;
}

/** The ungrounded conductors of everything that has an id and such conductors. */
export function suppliesOf(installation: Installation): ReadonlyMap<string, Supply> {
  const { services = [], derivedSystems = [], generators = [], circuits = [] } = installation;
  return new Map([
    ...[...services, ...derivedSystems]
      .flatMap(({ runs }) => runs)
      .map(({ id, supply }): [string, Supply] => [id, supplyOf(supply, installation)]),
    ...generators.map(({ id, supply }): [string, Supply] => [id, supplyOf(supply, installation)]),
    ...circuits.flatMap(({ id, conductors }): [string, Supply][] => (conductors ? [[id, conductors]] : [])),
  ]);
}

/** Several supplies as one. */
export function together(supplies: readonly Supply[]): Supply {
  const loads = supplies.flatMap(({ requiredForAmperes }) => requiredForAmperes ?? []);
  const sets = supplies.flatMap((one) => one.sets);
  return loads.length === 0
    ? { sets }
    : { sets, requiredForAmperes: loads.reduce((sum, one) => sum + one, 0) };
}

/** What runs in one of so many raceways. */
export function inOneOf(raceways: number, supply: Supply): Supply {
  return { ...supply, sets: supply.sets.map((set): SupplySet => ({ ...set, count: set.count / raceways })) };
}

/** The sets of a supply, in no order: how many of each. */
export function countedSets({ sets }: Supply): string {
  const counts = new Map<string, number>();
  for (const { count, ...set } of sets) {
    const key = JSON.stringify("phases" in set ? set.phases.map(plain) : plain(set));
    counts.set(key, (counts.get(key) ?? 0) + count);
  }
  return JSON.stringify([...counts].sort(([a], [b]) => (a < b ? -1 : 1)));
}

function plain(one: { readonly size: string; readonly material: string } | null): string {
  return one === null ? "none" : `${one.size} ${one.material}`;
}

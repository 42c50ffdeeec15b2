import {
  correspondingSum,
  type EditionYear,
  type Material,
  type SizingResult,
  type StandardSize,
  sumOfLargest,
  type TemperatureColumn,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { openDatabase, rowsOf } from "../../corpus/tools/sql/database.js";
import { byPolicy, withTemperature } from "./by-policy.js";
import { listedSupplies, phasesOf } from "./listed-supplies.js";

/** The whole grid is asked in `npm run proof`; in `npm test` every so manieth supply, coprime to editions, sizes, sets and metals. */
const isWhole = process.env["WHOLE_GRID"] === "true";
const everyNth = isWhole ? 1 : 11;
const listed = listedSupplies(isWhole ? 600 : 60);
const database = await openDatabase(phasesOf(listed));
database.exec(`delete from supply where size is not null and rowid % ${everyNth} <> 0`);

const sizeOf = ({ outcome }: SizingResult): string | null =>
  outcome.kind === "conductor" ? outcome.size : null;

describe("the rules written again in SQL", () => {
  it("cover every policy by supply", () => {
    const policies = [...rowsOf(database, "select distinct policy from policies order by 1")].flat();
    expect(Object.keys(byPolicy).sort()).toEqual(policies);
  });

  it.each(Object.keys(byPolicy))("agree with the library on %s", (policy) => {
    const ask = byPolicy[policy] ?? expect.fail(policy);
    const columns = withTemperature.includes(policy) ? "" : "and celsius = 75";
    const query = `select edition, supply, size, sets, metal, read, celsius, area, named from answer
      where policy = '${policy}' ${columns}`;
    const wrong: object[] = [];
    let grid = 0;
    const supplies = new Set<number>();
    for (const row of rowsOf(database, query)) {
      const [year, number, size, count, metal, material, temperature, area, named] = row as unknown as Cell;
      if (number === null) grid += 1;
      else supplies.add(number);
      const supply = number === null ? { sets: [{ count, size, material: metal }] } : listed[number];
      if (supply === undefined) expect.fail(`no supply ${number}`);
      const input = { code: { year }, supply, material, temperature };
      const result = ask(input);
      const library = [result.requiredArea, sizeOf(result)];
      if (library[0] !== area || library[1] !== named)
        wrong.push({ input: JSON.stringify(input), sql: [area, named], library });
    }
    const whole = 7 * 30 * 20 * (withTemperature.includes(policy) ? 8 : 4);
    expect(Math.abs(grid - whole / everyNth)).toBeLessThan(isWhole ? 1 : whole / everyNth / 20);
    expect(supplies.size).toBe(listed.length);
    expect(wrong.slice(0, 5)).toEqual([]);
  });

  it("agree on both sums of every listed supply", () => {
    const query = "select distinct supply, corresponding, largest from sums where whole";
    const sums = new Map([...rowsOf(database, query)].map(([supply, ...both]) => [supply, both]));
    const ours = listed.map((supply) => [correspondingSum(supply), sumOfLargest(supply)]);
    expect(ours.filter(([one, other]) => one !== other).length).toBeGreaterThan(listed.length / 4);
    const wrong = listed.filter((_, i) => String(sums.get(i)) !== String(ours[i]));
    expect(wrong.slice(0, 3)).toEqual([]);
  });
});

type Cell = readonly [
  EditionYear,
  number | null,
  StandardSize,
  number,
  Material,
  Material,
  TemperatureColumn,
  number,
  string | null,
];

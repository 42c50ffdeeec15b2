import {
  areaOf,
  correspondingSum,
  type EditionYear,
  type Material,
  type SizingResult,
  type StandardSize,
  type Supply,
  sizeEquipmentBondingJumper,
  sizeEquipmentGroundingConductor,
  sumOfLargest,
  type TemperatureColumn,
} from "bondmil";
import { beforeAll, describe, expect, it } from "vitest";
import { fill, openDatabase, rowsOf } from "../../corpus/sql/database.js";
import { byPolicy, withTemperature } from "./by-policy.js";

const database = await openDatabase();
/** The whole grid is asked in `npm run proof`; every so manieth cell, coprime to sizes, sets and metals, in `npm test`. */
const everyNth = process.env["WHOLE_GRID"] === "true" ? 1 : 7;

const sizeOf = ({ outcome }: SizingResult): string | null =>
  outcome.kind === "conductor" ? outcome.size : null;

describe("the rules written again in SQL", () => {
  it("cover every policy by supply", () => {
    const policies = [...rowsOf(database, "select distinct policy from policies order by 1")].flat();
    expect(Object.keys(byPolicy).sort()).toEqual(policies);
  });

  it.each(Object.keys(byPolicy))("agree with the library on %s", { timeout: 600_000 }, (policy) => {
    const ask = byPolicy[policy] ?? expect.fail(policy);
    const columns = withTemperature.includes(policy) ? "" : "and celsius = 75";
    const query = `select edition, size, sets, metal, read, celsius, area, named from answer where policy = '${policy}' ${columns}`;
    const wrong: object[] = [];
    let asked = 0;
    for (const row of rowsOf(database, query)) {
      asked += 1;
      if (asked % everyNth !== 0) continue;
      const [year, size, count, metal, read, celsius, area, named] = row as unknown as Cell;
      const result = ask({
        code: { year },
        supply: { sets: [{ count, size, material: metal }] },
        material: read,
        temperature: celsius,
      });
      if (result.requiredArea !== area || sizeOf(result) !== named)
        wrong.push({
          year,
          size,
          count,
          metal,
          read,
          celsius,
          sql: [area, named],
          library: [result.requiredArea, sizeOf(result)],
        });
    }
    expect(asked).toBe(7 * 30 * 20 * (withTemperature.includes(policy) ? 8 : 4));
    expect(wrong.slice(0, 5)).toEqual([]);
  });

  it("agree on both sums of sets with unlike phases", () => {
    const sizes = ["4 AWG", "250 kcmil", "500 kcmil"] as const;
    const supplies = unlikeSupplies(sizes);
    const rows = supplies.flatMap(({ sets }, supply) =>
      sets.flatMap((set, number) =>
        "phases" in set
          ? set.phases.map((one, phase) => [
              supply,
              number,
              set.count,
              phase,
              one === null ? 0 : areaOf(one.size),
            ])
          : [],
      ),
    );
    fill(database, "phase_of_set", ["supply", "setNumber", "count", "phase", "area"], rows);
    const sums = new Map(
      [...rowsOf(database, "select * from sums")].map(([supply, ...both]) => [supply, both]),
    );
    expect(supplies.length).toBe(4 * 3 ** 6);
    const wrong = supplies.filter(
      (supply, i) => String(sums.get(i)) !== String([correspondingSum(supply), sumOfLargest(supply)]),
    );
    expect(wrong.slice(0, 3)).toEqual([]);
  });
});

type Cell = readonly [
  EditionYear,
  StandardSize,
  number,
  Material,
  Material,
  TemperatureColumn,
  number,
  string | null,
];

/** Two sets of three phases, each phase of any of the sizes, once or twice. */
function unlikeSupplies(sizes: readonly StandardSize[]): readonly Supply[] {
  const trios = sizes.flatMap((a) => sizes.flatMap((b) => sizes.map((c) => [a, b, c] as const)));
  const setOf = (trio: (typeof trios)[number], count: number) => ({
    count,
    phases: trio.map((size) => ({ size, material: "copper" as const })),
  });
  return [1, 2].flatMap((one) =>
    [1, 2].flatMap((other) =>
      trios.flatMap((first) => trios.map((second) => ({ sets: [setOf(first, one), setOf(second, other)] }))),
    ),
  );
}

describe("the rows of Table 250.122 and their limit, written again in SQL", () => {
  beforeAll(() => {
    const ends = [...rowsOf(database, "select distinct through from rated order by 1")].map(([end]) =>
      Number(end),
    );
    const ratings = [...new Set(ends.flatMap((end) => [end - 1, end, end + 1]))].filter((one) => one <= 6000);
    fill(
      database,
      "device",
      ["amperes"],
      ratings.map((one) => [one]),
    );
    database.exec(`create table circuit as
      select edition, size, sets, own, total, metal from supply where metal = read and sets in (1, 2, 5)`);
  });

  it.each(["equipment-grounding-conductor", "equipment-bonding-jumper"])(
    "agree on %s",
    { timeout: 600_000 },
    (policy) => {
      const query = `select edition, amperes, metal, size, sets, area from equipment where policy = '${policy}'`;
      const wrong: object[] = [];
      let asked = 0;
      for (const row of rowsOf(database, query)) {
        asked += 1;
        if (asked % everyNth !== 0) continue;
        const [year, amperes, material, size, count, area] = row as unknown as RatedCell;
        const circuits = [{ device: { amperes }, conductors: { sets: [{ count, size, material }] } }];
        const { requiredArea } =
          policy === "equipment-bonding-jumper"
            ? sizeEquipmentBondingJumper({ code: { year }, circuits, jumper: { material } })
            : sizeEquipmentGroundingConductor({ code: { year }, circuits, conductor: { material } });
        if (requiredArea !== area)
          wrong.push({ year, amperes, material, size, count, sql: area, library: requiredArea });
      }
      expect(asked).toBeGreaterThan(50_000);
      expect(wrong.slice(0, 5)).toEqual([]);
    },
  );
});

type RatedCell = readonly [EditionYear, number, Material, StandardSize, number, number];

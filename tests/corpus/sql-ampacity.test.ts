import {
  ampacityOf,
  deviceFor,
  dwellingConductor,
  type EditionYear,
  InputError,
  type InsulationType,
  type Material,
  type StandardSize,
  type TemperatureColumn,
} from "bondmil";
import { expect, it } from "vitest";
import { openDatabase, rowsOf } from "../../corpus/tools/sql/database.js";

/** The whole grid is asked in `npm run proof`; in `npm test` every so manieth ambient temperature, coprime to editions and columns. */
const isWhole = process.env["WHOLE_GRID"] === "true";
const everyNth = isWhole ? 1 : 37;
const database = await openDatabase([]);
database.exec(
  `create table ambient_thinned as select * from ambient_percent where rowid % ${everyNth} = 0;
  create index cell_of on ampacity_cell (edition, size, metal)`,
);

/** A type of each rating, for dry places. */
const typeRated: Readonly<Record<TemperatureColumn, InsulationType>> = { 60: "TW", 75: "THW", 90: "THHN" };

it("agree with the library on ampacities corrected, adjusted and limited by terminations", () => {
  const wrong: object[] = [];
  let asked = 0;
  const query = `select * from ampacity_answer
    where (edition, ambient, rated) in (select edition, ambient, celsius from ambient_thinned)`;
  for (const cells of rowsOf(database, query)) {
    asked += 1;
    const [edition, size, material, rated, celsius, currentCarrying, marked, expected] = cells as unknown as [
      EditionYear,
      StandardSize,
      Material,
      TemperatureColumn,
      number,
      number,
      TemperatureColumn,
      number,
    ];
    const { amperes } = ampacityOf({
      edition,
      conductor: { size, material, insulation: typeRated[rated] },
      place: { location: "dry", ambient: { celsius }, currentCarrying },
      terminations: { marked },
    });
    if (Math.abs(amperes * 10_000 - expected) > 1e-6 * expected) wrong.push({ cells, amperes });
  }
  expect(wrong.slice(0, 3)).toEqual([]);
  expect(asked).toBeGreaterThan(1_000_000 / everyNth);
}, 600_000);

it("agree with the library on the places that are too hot", () => {
  const query = `select a.ambient, e.edition, c.celsius, p.percent from ambient_asked as a
    cross join (select distinct edition from ambient_band) as e
    cross join (select 60 as celsius union select 75 union select 90) as c
    left join ambient_percent as p on p.edition = e.edition and p.ambient = a.ambient and p.celsius = c.celsius`;
  const hot = [...rowsOf(database, query)].map(([ambient, year, column, percent]) => {
    const [celsius, edition, rated] = [ambient, year, column] as unknown as [
      number,
      EditionYear,
      TemperatureColumn,
    ];
    return { isLeft: percent !== null, library: isAnswered(edition, typeRated[rated], celsius) };
  });
  expect(hot.filter(({ isLeft }) => !isLeft).length).toBeGreaterThan(100);
  expect(hot.filter(({ isLeft, library }) => isLeft !== library)).toEqual([]);
});

function isAnswered(edition: EditionYear, insulation: InsulationType, celsius: number): boolean {
  const conductor = { size: "4 AWG", material: "copper", insulation } as const;
  const place = { location: "dry", ambient: { celsius } } as const;
  try {
    return ampacityOf({ edition, conductor, place, terminations: { marked: 90 } }).amperes > 0;
  } catch (error) {
    if (error instanceof InputError) return false;
    throw error;
  }
}

it("agree with the library on the largest device, rounded up and not", () => {
  const wrong: object[] = [];
  let asked = 0;
  for (const cells of rowsOf(database, "select * from device_answer")) {
    const [edition, device, amperes, below, rounded] = cells as unknown as [
      EditionYear,
      "fuse" | "circuit-breaker",
      number,
      number | null,
      number | null,
    ];
    asked += 1;
    const conductors = { size: "2000 kcmil", material: "copper", sets: 1, amperes } as const;
    const standard = (serves: "service-or-feeder" | "tap") =>
      deviceFor({ edition, conductors, serves, device }).standard;
    const library = [standard("tap"), standard("service-or-feeder")];
    if (library[0] !== below || library[1] !== rounded) wrong.push({ cells, library });
  }
  expect(wrong.slice(0, 3)).toEqual([]);
  expect(asked).toBeGreaterThan(2000);
});

it("agree with the library on the conductors of dwellings", () => {
  const wrong: object[] = [];
  let asked = 0;
  for (const cells of rowsOf(database, "select * from dwelling_answer")) {
    const [edition, material, amperes, size] = cells as unknown as [EditionYear, Material, number, string];
    asked += 1;
    const own = dwellingConductor({ edition, amperes, material, system: "120/240-three-wire" });
    if (own.size !== size) wrong.push({ cells, own: own.size });
  }
  expect(wrong.slice(0, 3)).toEqual([]);
  expect(asked).toBe(7 * 2 * 301);
});

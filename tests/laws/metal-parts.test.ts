/* Laws of water-piping-bonding-jumper, structural-metal-bonding-jumper and other-piping-bonding-jumper. */
import {
  areaOf,
  type ConductorColumn,
  type ConductorSize,
  type EditionYear,
  editionYears,
  otherPipingBondingJumper,
  type SizingResult,
  type StandardSize,
  type Supply,
  size,
  standardSizeFor,
  standardSizes,
  structuralMetalBondingJumper,
  waterPipingBondingJumper,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spelledOut, supply, withLarger, year } from "./arbitraries.js";

type Sizer = (year: EditionYear, supply: Supply, material: ConductorColumn) => SizingResult;

const water =
  (system: "service" | "separately-derived" | "building"): Sizer =>
  (edition, conductors, own) =>
    size(waterPipingBondingJumper, {
      code: { year: edition },
      system,
      supply: conductors,
      conductor: { material: own },
    });
const frame =
  (system: "service" | "separately-derived" | "building"): Sizer =>
  (edition, conductors, own) =>
    size(structuralMetalBondingJumper, {
      code: { year: edition },
      system,
      supply: conductors,
      conductor: { material: own },
    });

/** Every place that is sized by the conductors; water piping of a building is without a device here. */
const places: readonly (readonly [string, Sizer])[] = [
  ["water-piping-bonding-jumper of a service", water("service")],
  ["water-piping-bonding-jumper of a derived system", water("separately-derived")],
  ["water-piping-bonding-jumper of a building", water("building")],
  ["structural-metal-bonding-jumper of a service", frame("service")],
  ["structural-metal-bonding-jumper of a building", frame("building")],
  ["structural-metal-bonding-jumper of a derived system", frame("separately-derived")],
];
const columns: readonly ConductorColumn[] = ["copper", "aluminum"];
const counts = [1, 2, 3, 4, 6, 8, 12, 20];
const column = fc.constantFrom(...columns);

/** Row ends and answers as both tables print them. */
const rows: readonly (readonly [number, number, ConductorSize, ConductorSize])[] = [
  [66360, 105600, "8 AWG", "6 AWG"],
  [105600, 167800, "6 AWG", "4 AWG"],
  [167800, 250000, "4 AWG", "2 AWG"],
  [350000, 500000, "2 AWG", "1/0 AWG"],
  [600000, 900000, "1/0 AWG", "3/0 AWG"],
  [1100000, 1750000, "2/0 AWG", "4/0 AWG"],
];
const largestSize = { copper: areaOf("3/0 AWG"), aluminum: areaOf("250 kcmil") };

/** What an edition asks for where supply and jumper are of one material. */
function expected(edition: EditionYear, own: ConductorColumn, sum: number, one: number, ofBuilding: boolean) {
  const place = own === "copper" ? 0 : 1;
  const row = rows.find((ends) => sum <= ends[place]);
  const eighth = Math.ceil(sum / 8);
  const last = Number(edition) <= 2014 ? largestSize[own] : eighth;
  const asked = row === undefined ? last : areaOf(row[place + 2] as ConductorSize);
  if (ofBuilding) return Math.min(asked, one);
  return Number(edition) >= 2020 ? Math.min(asked, largestSize[own]) : asked;
}

interface Cell {
  readonly edition: EditionYear;
  readonly supplied: ConductorColumn;
  readonly own: ConductorColumn;
  readonly size: StandardSize;
  readonly count: number;
  readonly area: number;
}

describe.each(places)("the grid of the %s", (name, sized) => {
  const cells: readonly Cell[] = editionYears.flatMap((edition) =>
    columns.flatMap((supplied) =>
      columns.flatMap((own) =>
        counts.flatMap((count) =>
          standardSizes.map((size) => {
            const { requiredArea } = sized(edition, { sets: [{ count, size, material: supplied }] }, own);
            return { edition, supplied, own, size, count, area: requiredArea };
          }),
        ),
      ),
    ),
  );
  const ofBuilding = name.startsWith("water") && name.endsWith("building");
  const keyOf = ({ edition, supplied, size, count }: Cell): string =>
    `${edition} ${supplied} ${size} ${count}`;

  it("agrees with a second reckoning where all is of one material", () => {
    const wrong = cells.filter(
      ({ edition, supplied, own, size, count, area }) =>
        supplied === own && area !== expected(edition, own, count * areaOf(size), areaOf(size), ofBuilding),
    );
    expect(wrong.slice(0, 3)).toEqual([]);
  });

  it("never falls with the next size or with more sets", () => {
    const lines = new Map<string, number[]>();
    for (const { edition, supplied, own, size, count, area } of cells) {
      for (const line of [`${count} sets`, size]) {
        const key = `${edition} ${supplied} ${own} ${line}`;
        lines.set(key, [...(lines.get(key) ?? []), area]);
      }
    }
    const falling = [...lines].filter(([, areas]) => areas.some((area, i) => area < (areas[i - 1] ?? 0)));
    expect(falling.slice(0, 3)).toEqual([]);
  });

  it("asks for no more than the largest size, save in 2017 and in a building", () => {
    if (ofBuilding) return;
    const above = cells.filter(({ edition, own, area }) => edition !== "2017" && area > largestSize[own]);
    expect(above).toEqual([]);
    expect(cells.some(({ edition, own, area }) => edition === "2017" && area > largestSize[own])).toBe(true);
  });

  it("asks for at least as much aluminum as copper, where the feeder's cap has no say", () => {
    if (ofBuilding) return;
    const aluminum = new Map(
      cells.filter(({ own }) => own === "aluminum").map((cell) => [keyOf(cell), cell.area]),
    );
    const smaller = cells.filter(
      (cell) => cell.own === "copper" && (aluminum.get(keyOf(cell)) ?? 0) < cell.area,
    );
    expect(smaller).toEqual([]);
  });
});

describe.each(places)("the %s", (_name, sized) => {
  it("never gets smaller with a larger supply", () => {
    fc.assert(
      fc.property(year, column, withLarger(supply), (edition, own, { small, large }) => {
        expect(sized(edition, large, own).requiredArea).toBeGreaterThanOrEqual(
          sized(edition, small, own).requiredArea,
        );
      }),
    );
  });

  it("does not mind the order of sets, nor how they are written", () => {
    fc.assert(
      fc.property(year, column, supply, (edition, own, conductors) => {
        const { requiredArea } = sized(edition, conductors, own);
        const turned = { sets: [...conductors.sets].reverse() };
        expect(sized(edition, turned, own).requiredArea).toBe(requiredArea);
        expect(sized(edition, spelledOut(conductors), own).requiredArea).toBe(requiredArea);
      }),
    );
  });

  it("is plain data, names the deciding step and the next standard size", () => {
    fc.assert(
      fc.property(year, column, supply, (edition, own, conductors) => {
        const before = JSON.stringify(conductors);
        const result = sized(edition, conductors, own);
        expect(JSON.stringify(conductors)).toBe(before);
        expect(JSON.parse(JSON.stringify(result))).toEqual(result);
        expect(result.steps).toContainEqual(
          expect.objectContaining({ kind: result.governs, requiredArea: result.requiredArea }),
        );
        const size = standardSizeFor(result.requiredArea);
        if (size !== null) expect(result.outcome).toEqual({ kind: "conductor", size, quantity: 1 });
      }),
    );
  });
});

describe("the jumpers that go by a device", () => {
  const amperes = fc.oneof(
    fc.integer({ min: 1, max: 6000 }),
    fc.double({ min: 0.5, max: 6000, noNaN: true }),
  );
  const area = (edition: EditionYear, device: number, own: ConductorColumn) =>
    size(otherPipingBondingJumper, {
      code: { year: edition },
      deviceAmperes: device,
      conductor: { material: own },
    }).requiredArea;

  it("never get smaller with a larger device, nor copper larger than aluminum", () => {
    fc.assert(
      fc.property(year, amperes, amperes, (edition, one, other) => {
        const [small, large] = [Math.min(one, other), Math.max(one, other)];
        for (const own of columns)
          expect(area(edition, large, own)).toBeGreaterThanOrEqual(area(edition, small, own));
        expect(area(edition, large, "aluminum")).toBeGreaterThanOrEqual(area(edition, large, "copper"));
      }),
    );
  });

  it("are alike for other piping, an occupancy and, up to the feeder conductor, a building since 2020", () => {
    fc.assert(
      fc.property(year, amperes, column, supply, (edition, device, own, conductors) => {
        const asked = area(edition, device, own);
        const occupancy = size(waterPipingBondingJumper, {
          code: { year: edition },
          system: "occupancy",
          deviceAmperes: device,
          conductor: { material: own },
        });
        expect(occupancy.requiredArea).toBe(asked);
        const building = size(waterPipingBondingJumper, {
          code: { year: edition },
          system: "building",
          supply: conductors,
          deviceAmperes: device,
          conductor: { material: own },
        });
        if (Number(edition) < 2020) {
          expect(building).toEqual(water("building")(edition, conductors, own));
          return;
        }
        const feeder = conductors.sets.flatMap((set) => ("phases" in set ? set.phases : [set]));
        const ofOther = (one: (typeof feeder)[number]) =>
          one !== null && (one.material === "copper") !== (own === "copper");
        const largest = Math.max(...feeder.map((one) => (one === null ? 0 : areaOf(one.size))));
        expect(building.requiredArea).toBe(feeder.some(ofOther) ? asked : Math.min(asked, largest));
      }),
    );
  });
});

/* Laws of grounded-conductor. */
import {
  areaOf,
  type Code,
  type Conductor,
  type ConductorColumn,
  type ConductorSize,
  columnOf,
  type EditionYear,
  editionYears,
  evidenceLevels,
  groundedConductor,
  type Input,
  type Material,
  type SizingResult,
  type StandardSize,
  type Supply,
  size,
  standardSizeFor,
  standardSizes,
  tableAmpacity,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  material,
  ofColumn,
  spelledOut,
  supply,
  supplyOf,
  temperature,
  withLarger,
  year,
} from "./arbitraries.js";

/** The four texts that size a neutral from its supply. */
const texts = [
  { name: "a service, alone", where: { system: "service" } },
  { name: "a service, one of several raceways", where: { system: "service", scope: "raceway" } },
  { name: "a derived system, alone", where: { system: "separately-derived", jumperAt: "enclosure" } },
  {
    name: "a derived system, one of several raceways",
    where: { system: "separately-derived", jumperAt: "enclosure", scope: "raceway" },
  },
] as const;
type Where = (typeof texts)[number]["where"];

const columns: readonly ConductorColumn[] = ["copper", "aluminum"];
const mostSets = 20;
const least = areaOf("1/0 AWG");
const isRaceway = (where: Where) => "scope" in where;

function sized(where: Where, code: Code, conductors: Supply, own: Material, more: object = {}): SizingResult {
  return size(groundedConductor, {
    code,
    ...where,
    supply: conductors,
    conductor: { material: own },
    ...more,
  } as Input<typeof groundedConductor>);
}

/** Row ends and answers as both tables print them, and the last row of the older one. */
const rows: readonly (readonly [number, number, ConductorSize, ConductorSize])[] = [
  [66360, 105600, "8 AWG", "6 AWG"],
  [105600, 167800, "6 AWG", "4 AWG"],
  [167800, 250000, "4 AWG", "2 AWG"],
  [350000, 500000, "2 AWG", "1/0 AWG"],
  [600000, 900000, "1/0 AWG", "3/0 AWG"],
  [1100000, 1750000, "2/0 AWG", "4/0 AWG"],
];
const last = { copper: 167800, aluminum: 250000 };

/** What an edition asks for where supply and grounded conductor are of one material. */
function expected(where: Where, edition: EditionYear, own: ConductorColumn, sum: number): number {
  const place = own === "copper" ? 0 : 1;
  const row = rows.find((ends) => sum <= ends[place]);
  const asked =
    row === undefined
      ? Math.max(Math.ceil(sum / 8), Number(edition) <= 2011 ? last[own] : 0)
      : Math.min(sum, areaOf(row[place + 2] as ConductorSize));
  return isRaceway(where) ? Math.max(asked, least) : asked;
}

interface Cell {
  readonly edition: EditionYear;
  readonly supplied: ConductorColumn;
  readonly own: ConductorColumn;
  readonly one: StandardSize;
  readonly count: number;
  readonly area: number;
}

describe.each(texts)("the grid of the grounded-conductor of $name", ({ where }) => {
  const cells: readonly Cell[] = editionYears.flatMap((edition) =>
    columns.flatMap((supplied) =>
      columns.flatMap((own) =>
        standardSizes.flatMap((one) =>
          Array.from({ length: mostSets }, (_, i) => i + 1).map((count) => {
            const conductors = { sets: [{ count, size: one, material: supplied }] };
            const { requiredArea } = sized(where, { year: edition }, conductors, own);
            return { edition, supplied, own, one, count, area: requiredArea };
          }),
        ),
      ),
    ),
  );

  it("agrees with a second reckoning where all is of one material", () => {
    const wrong = cells.filter(
      ({ edition, supplied, own, one, count, area }) =>
        supplied === own && area !== expected(where, edition, own, count * areaOf(one)),
    );
    expect(wrong.slice(0, 3)).toEqual([]);
  });

  it("contains: never smaller with one more set or with the next size up", () => {
    const lines = new Map<string, number[]>();
    for (const { edition, supplied, own, one, count, area } of cells) {
      for (const line of [`${count} sets`, one]) {
        const key = `${edition} ${supplied} ${own} ${line}`;
        lines.set(key, [...(lines.get(key) ?? []), area]);
      }
    }
    const falling = [...lines].filter(([, areas]) => areas.some((area, i) => area < (areas[i - 1] ?? 0)));
    expect(falling.slice(0, 3)).toEqual([]);
  });

  it("is never below 1/0 AWG in a raceway, and sometimes alone", () => {
    const below = cells.filter(({ area }) => area < least);
    if (isRaceway(where)) expect(below.slice(0, 3)).toEqual([]);
    else expect(below.length).toBeGreaterThan(0);
  });

  it("is never below one eighth of a large supply of its own material, whatever limits the row", () => {
    const below = cells.filter(({ supplied, own, one, count, area }) => {
      const sum = count * areaOf(one);
      return supplied === own && sum > (own === "copper" ? 1100000 : 1750000) && 8 * area < sum;
    });
    expect(below.slice(0, 3)).toEqual([]);
  });

  it("asks for at least as much aluminum as copper, save where the ungrounded conductors limit it", () => {
    const key = ({ edition, supplied, one, count }: Cell) => `${edition} ${supplied} ${one} ${count}`;
    const aluminum = new Map(cells.filter(({ own }) => own === "aluminum").map((cell) => [key(cell), cell]));
    const smaller = cells.filter((cell) => {
      const other = aluminum.get(key(cell));
      const limited = other !== undefined && other.area === cell.count * areaOf(cell.one);
      return cell.own === "copper" && !limited && (other?.area ?? 0) < cell.area;
    });
    expect(smaller.slice(0, 3)).toEqual([]);
  });

  it.each([
    ["copper", "aluminum"],
    ["aluminum", "copper"],
  ] as const)("contains a supply of %s that is joined by a set of %s", (first, second) => {
    const wrong = cells
      .filter(({ supplied, count }) => supplied === first && [1, 2, 3, 5, 9, 20].includes(count))
      .filter(({ edition, own, one, count, area }) => {
        const alone = { count, size: one, material: first };
        const joined = { sets: [alone, { count: 1, size: "18 AWG", material: second } as const] };
        return sized(where, { year: edition }, joined, own).requiredArea < area;
      });
    expect(wrong.slice(0, 3)).toEqual([]);
  });
});

/** Every choice of readings under which containment holds; one alternative gives it up by its own words. */
const code: fc.Arbitrary<Code> = fc.record({
  year,
  readings: fc.record(
    {
      "cap-on-small-supplies": fc.constantFrom("every-supply", "large-supplies-only"),
      "cap-on-small-derived-supplies-in-2017": fc.constantFrom("every-supply", "large-supplies-only"),
      "grounded-conductor-other-material-in-2014": fc.constantFrom("larger-of-both", "as-in-2017"),
    },
    { requiredKeys: [] },
  ),
});
const amperes = fc.integer({ min: 1, max: 500 });
const levels: readonly string[] = evidenceLevels;
const rank = (evidence: string) => levels.indexOf(evidence);

describe.each(texts)("the grounded-conductor of $name", ({ where }) => {
  it("is never smaller if every conductor of its supply is matched by one as large", () => {
    fc.assert(
      fc.property(
        withLarger(supply),
        code,
        material,
        temperature,
        ({ small, large }, chosen, own, column) => {
          const required = (one: Supply) =>
            sized(where, chosen, one, own, { temperature: column }).requiredArea;
          expect(required(large)).toBeGreaterThanOrEqual(required(small));
        },
      ),
      { numRuns: 2000 },
    );
  });

  it("does not mind the order of sets, nor how they are written, and is plain data", () => {
    fc.assert(
      fc.property(supply, code, material, (conductors, chosen, own) => {
        const before = JSON.stringify(conductors);
        const result = sized(where, chosen, conductors, own);
        expect(JSON.stringify(conductors)).toBe(before);
        expect(JSON.parse(JSON.stringify(result))).toEqual(result);
        const turned = { sets: [...conductors.sets].reverse() };
        expect(sized(where, chosen, turned, own).requiredArea).toBe(result.requiredArea);
        expect(sized(where, chosen, spelledOut(conductors), own).requiredArea).toBe(result.requiredArea);
      }),
    );
  });

  it("never falls as its load rises, and carries it", () => {
    fc.assert(
      fc.property(supply, code, fc.constantFrom(...columns), amperes, amperes, amperes, (...drawn) => {
        const [conductors, chosen, own, one, other, circuitAmperes] = drawn;
        const required = (load: number) =>
          sized(where, chosen, conductors, own, { load: { amperes: load, circuitAmperes } }).requiredArea;
        const [low, high] = [Math.min(one, other, 380), Math.min(Math.max(one, other), 380)];
        const without = sized(where, chosen, conductors, own).requiredArea;
        expect(required(low)).toBeGreaterThanOrEqual(without);
        expect(required(high)).toBeGreaterThanOrEqual(required(low));
        const named = standardSizeFor(required(high));
        if (named === null) return;
        const column = circuitAmperes <= 100 ? 60 : 75;
        expect(
          tableAmpacity({ edition: chosen.year, size: named, material: own, temperature: column }).amperes,
        ).toBeGreaterThanOrEqual(high);
      }),
    );
  });

  it("says which step decided, and its evidence is none stronger than what it cites", () => {
    fc.assert(
      fc.property(supply, code, material, amperes, (conductors, chosen, own, load) => {
        const more = { load: { amperes: Math.min(load, 300), circuitAmperes: 400 } };
        const { steps, governs, requiredArea, evidence, citation } = sized(
          where,
          chosen,
          conductors,
          own,
          more,
        );
        expect(steps).toContainEqual(expect.objectContaining({ kind: governs, requiredArea }));
        for (const one of [citation, ...steps.map((step) => step.citation)])
          expect(rank(evidence)).toBeLessThanOrEqual(rank(one.evidence));
      }),
    );
  });
});

/** Every conductor of a supply. */
function conductorsOf({ sets }: Supply): readonly Conductor[] {
  return sets.flatMap((set) => ("phases" in set ? set.phases.filter((one) => one !== null) : [set]));
}

describe.each(["service", "separately-derived"] as const)("a grounded phase of a %s", (system) => {
  const where = system === "service" ? texts[0].where : texts[2].where;

  it("is never smaller than an ungrounded conductor of its material", () => {
    fc.assert(
      fc.property(supply, year, material, (conductors, edition, own) => {
        const { requiredArea } = sized(where, { year: edition }, conductors, own, { grounded: "phase" });
        for (const one of conductorsOf(conductors)) {
          if (columnOf(one.material) === columnOf(own))
            expect(requiredArea).toBeGreaterThanOrEqual(areaOf(one.size));
        }
      }),
    );
  });

  it.each(columns)("never has less ampacity than an ungrounded conductor, in %s", (own) => {
    const wrong = editionYears.flatMap((edition) =>
      columns.flatMap((supplied) =>
        standardSizes.filter((one) => {
          const conductors = { sets: [{ count: 2, size: one, material: supplied }] };
          const result = sized(where, { year: edition }, conductors, own, { grounded: "phase" });
          const found = result.outcome.kind === "conductor" ? result.outcome.size : null;
          const asked =
            tableAmpacity({ edition, size: one, material: supplied, temperature: 75 }).amperes ?? 0;
          const carried =
            found === null
              ? null
              : tableAmpacity({ edition, size: found, material: own, temperature: 75 }).amperes;
          // Beyond the largest conductor of the other material the area of equal conductance decides.
          if (supplied !== own && (found === null || (carried ?? 0) < asked)) {
            return result.requiredArea < areaOf(one) * 1.6;
          }
          return supplied === own ? found !== one : (carried ?? 0) < asked;
        }),
      ),
    );
    expect(wrong).toEqual([]);
  });

  it("contains, and comes in as many as there are sets", () => {
    fc.assert(
      fc.property(
        withLarger(supplyOf({ materials: ofColumn("copper") })),
        year,
        ({ small, large }, edition) => {
          const phase = (one: Supply) =>
            sized(where, { year: edition }, one, "copper", { grounded: "phase" });
          expect(phase(large).requiredArea).toBeGreaterThanOrEqual(phase(small).requiredArea);
          const count = small.sets.reduce((sum, set) => sum + set.count, 0);
          expect(phase(small).outcome).toMatchObject({ quantity: count });
        },
      ),
    );
  });

  it("is never below 1/0 AWG in a raceway", () => {
    for (const one of standardSizes) {
      const conductors: Supply = { sets: [{ count: 1, size: one, material: "copper" }] };
      const more = { grounded: "phase", scope: "raceway" };
      expect(sized(where, { year: "2020" }, conductors, "copper", more).requiredArea).toBe(
        Math.max(areaOf(one), least),
      );
    }
  });
});

describe("a grounded conductor that stays the fault path of a building", () => {
  const devices = [15, 60, 100, 200, 400, 800, 1200, 2000, 4000] as const;
  const counts = [1, 2, 5, 20] as const;
  const rebonded = (conductors: Supply, edition: EditionYear, own: Material, more: object) =>
    sized(texts[0].where, { year: edition }, conductors, own, more);
  const walk = (visit: (conductors: Supply, edition: EditionYear, own: ConductorColumn) => void): void => {
    for (const edition of editionYears)
      for (const own of columns)
        for (const supplied of columns)
          for (const one of standardSizes)
            for (const count of counts)
              visit({ sets: [{ count, size: one, material: supplied }] }, edition, own);
  };

  it("over the whole grid: a phase is the larger of what a phase and what a neutral needs, one for each set", () => {
    walk((conductors, edition, own) => {
      const phase = rebonded(conductors, edition, own, { grounded: "phase" });
      for (const device of devices) {
        const at = { rebondedAtBuildingWithDevice: device };
        const neutral = rebonded(conductors, edition, own, at);
        const both = rebonded(conductors, edition, own, { ...at, grounded: "phase" });
        if (both.requiredArea !== Math.max(phase.requiredArea, neutral.requiredArea))
          expect({ conductors, edition, own, device }).toBe("the larger of both");
        if (both.outcome.kind === "conductor" && both.outcome.quantity !== conductors.sets[0]?.count)
          expect({ conductors, edition, own, device }).toBe("one for each set");
      }
    });
  });

  it("never falls by a larger device or supply, is not smaller in aluminum, and not below 1/0 AWG in a raceway", () => {
    fc.assert(
      fc.property(
        withLarger(supply),
        year,
        fc.constantFrom("neutral", "phase"),
        fc.constantFrom(...devices),
        fc.constantFrom(...devices),
        fc.constantFrom("raceway", "all"),
        ({ small, large }, edition, grounded, one, other, scope) => {
          const required = (conductors: Supply, device: number, own: Material) =>
            rebonded(conductors, edition, own, { grounded, scope, rebondedAtBuildingWithDevice: device })
              .requiredArea;
          const [low, high] = [Math.min(one, other), Math.max(one, other)];
          for (const own of columns) {
            expect(required(large, high, own)).toBeGreaterThanOrEqual(required(small, low, own));
            if (scope === "raceway") expect(required(small, low, own)).toBeGreaterThanOrEqual(least);
          }
          if (grounded === "neutral")
            expect(required(small, low, "aluminum")).toBeGreaterThanOrEqual(required(small, low, "copper"));
        },
      ),
      { numRuns: 1000 },
    );
  });

  it("says that no load is counted exactly where none is given and it is no phase, in every form", () => {
    const forms = [
      {},
      { rebondedAtBuildingWithDevice: 200 },
      { system: "separately-derived", jumperAt: "source" },
    ];
    for (const form of forms) {
      for (const grounded of ["neutral", "phase"] as const) {
        for (const load of [{}, { load: { amperes: 20, circuitAmperes: 200 } }]) {
          const conductors: Supply = { sets: [{ count: 1, size: "3/0 AWG", material: "copper" }] };
          const { cautions } = rebonded(conductors, "2023", "copper", { ...form, grounded, ...load });
          const isSaid = cautions.some(({ code: one }) => one === "load-not-counted");
          expect(isSaid).toBe(grounded === "neutral" && !("load" in load));
        }
      }
    }
  });
});

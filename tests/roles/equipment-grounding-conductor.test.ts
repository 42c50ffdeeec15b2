import {
  areaOf,
  type ConductorSize,
  type EditionYear,
  editionYears,
  equipmentGroundingConductor,
  explain,
  type Input,
  InputError,
  type Material,
  type ProtectedCircuit,
  type Supply,
  size,
  standardSizes,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { IncreaseReason } from "../../src/rules/shape.generated.js";

const sets = (count: number, size: ConductorSize, material: Material = "copper"): Supply => ({
  sets: [{ count, size, material }],
});
const increased = (
  from: ConductorSize,
  to: ConductorSize,
  reason: IncreaseReason = "voltage-drop",
): Omit<ProtectedCircuit, "device"> => ({
  conductors: sets(1, to),
  increasedFrom: { conductors: sets(1, from), reason },
});
const sized = (
  year: EditionYear,
  circuits: readonly ProtectedCircuit[],
  rest: Partial<Input<typeof equipmentGroundingConductor>> = {},
) =>
  size(equipmentGroundingConductor, { code: { year }, circuits, conductor: { material: "copper" }, ...rest });
const aluminum = { conductor: { material: "aluminum" } } as const;
const codes = ({ cautions }: ReturnType<typeof sized>) => cautions.map(({ code }) => code);

/** The table as the book has it, by hand: rating, copper, aluminum. */
const rows: readonly (readonly [number, ConductorSize, ConductorSize])[] = [
  [15, "14 AWG", "12 AWG"],
  [20, "12 AWG", "10 AWG"],
  [60, "10 AWG", "8 AWG"],
  [100, "8 AWG", "6 AWG"],
  [200, "6 AWG", "4 AWG"],
  [300, "4 AWG", "2 AWG"],
  [400, "3 AWG", "1 AWG"],
  [500, "2 AWG", "1/0 AWG"],
  [600, "1 AWG", "2/0 AWG"],
  [800, "1/0 AWG", "3/0 AWG"],
  [1000, "2/0 AWG", "4/0 AWG"],
  [1200, "3/0 AWG", "250 kcmil"],
  [1600, "4/0 AWG", "350 kcmil"],
  [2000, "250 kcmil", "400 kcmil"],
  [2500, "350 kcmil", "600 kcmil"],
  [3000, "400 kcmil", "600 kcmil"],
];

describe.each(editionYears)("the table in %s", (year) => {
  it.each(rows)("%d A: %s copper, %s aluminum", (amperes, copper, other) => {
    expect(sized(year, [{ device: { amperes } }]).outcome).toEqual({
      kind: "conductor",
      size: copper,
      quantity: 1,
    });
    expect(sized(year, [{ device: { amperes } }], aluminum).requiredArea).toBe(areaOf(other));
  });

  it("takes the next row above each rating", () => {
    for (const [i, [amperes]] of rows.entries()) {
      const next = rows[i + 1]?.[1] ?? "500 kcmil";
      expect(sized(year, [{ device: { amperes: amperes + 0.5 } }]).requiredArea).toBe(areaOf(next));
    }
  });

  it("takes copper-clad aluminum for aluminum", () => {
    const clad = sized(year, [{ device: { amperes: 400 } }], {
      conductor: { material: "copper-clad aluminum" },
    });
    expect(clad.requiredArea).toBe(areaOf("1 AWG"));
    expect(codes(clad)).toContain("aluminum-grounding-restrictions");
  });

  it("ends at 6000 A", () => {
    expect(sized(year, [{ device: { amperes: 6000 } }]).requiredArea).toBe(800000);
    expect(() => sized(year, [{ device: { amperes: 6000.01 } }])).toThrow(InputError);
  });
});

describe("the aluminum cells that changed", () => {
  it.each<[EditionYear, number, number, number]>([
    ["2008", 800, 1200, 1200],
    ["2011", 750, 1200, 1200],
    ["2014", 750, 1200, 1200],
    ["2017", 750, 1200, 1200],
    ["2020", 750, 1250, 1250],
    ["2023", 750, 1250, 1250],
    ["2026", 750, 1250, 1250],
  ])("%s: %d, %d, %d kcmil", (year, ...kcmil) => {
    const found = [4000, 5000, 6000].map((amperes) => sized(year, [{ device: { amperes } }], aluminum));
    expect(found.map((one) => one.requiredArea)).toEqual(kcmil.map((one) => one * 1000));
  });

  it("offers a standard size for 1200 kcmil, which keeps its name in the step", () => {
    const old = sized("2017", [{ device: { amperes: 5000 } }], aluminum);
    expect(old.steps[0]).toMatchObject({ size: "1200 kcmil", requiredArea: 1200000 });
    expect(old.outcome).toEqual({ kind: "conductor", size: "1250 kcmil", quantity: 1 });
    expect(codes(old)).toContain("table-size-not-standard");
    expect(codes(sized("2020", [{ device: { amperes: 5000 } }], aluminum))).not.toContain(
      "table-size-not-standard",
    );
  });

  it("are as sure as their own cell", () => {
    const evidence = (year: EditionYear, amperes: number) =>
      sized(year, [{ device: { amperes } }], aluminum).steps[0]?.citation.evidence;
    expect(evidence("2008", 4000)).toBe("memory");
    expect(evidence("2008", 3000)).toBe("bracketed");
    expect(evidence("2011", 100)).toBe("bracketed");
    expect(evidence("2011", 200)).toBe("single");
    expect(evidence("2020", 5000)).toBe("carried");
    expect(evidence("2020", 4000)).toBe("bracketed");
  });
});

describe("the increase in proportion", () => {
  it("keeps the larger size two circular mils above a smaller one", () => {
    const found = sized("2023", [{ device: { amperes: 50 }, ...increased("8 AWG", "4 AWG") }]);
    expect(found).toMatchObject({ requiredArea: 26243, governs: "increase" });
    expect(found.outcome).toMatchObject({ size: "4 AWG" });
    expect(codes(found)).toContain("short-by-rounding");
  });

  it("does not speak of rounding where a size is clearly missed", () => {
    const found = sized("2023", [{ device: { amperes: 150 }, ...increased("1/0 AWG", "350 kcmil") }]);
    expect(found).toMatchObject({ requiredArea: 86970, outcome: { size: "1/0 AWG" } });
    expect(codes(found)).not.toContain("short-by-rounding");
  });

  it("tells the rounding of the gauge from a gap between sizes", () => {
    // Six gauge numbers up from 8 AWG are 2 AWG exactly; the table's areas miss it by 83 cmil, 1.2 in a thousand.
    const byGauge = sized("2023", [{ device: { amperes: 100 }, ...increased("6 AWG", "1/0 AWG") }]);
    expect(byGauge.requiredArea).toBe(66443);
    expect(codes(byGauge)).toContain("short-by-rounding");
    const gap = sized("2023", [{ device: { amperes: 200 }, ...increased("4 AWG", "400 kcmil") }]);
    expect(gap.requiredArea).toBe(251462);
    expect(codes(gap)).not.toContain("short-by-rounding");
  });

  it("counts a parallel set by its total area", () => {
    const found = sized("2020", [
      {
        device: { amperes: 800 },
        conductors: sets(6, "500 kcmil"),
        increasedFrom: { conductors: sets(2, "600 kcmil"), reason: "voltage-drop" },
      },
    ]);
    expect(found.requiredArea).toBe(264000);
    expect(found.steps.map(({ kind }) => kind)).toEqual(["sum", "rating-row", "increase", "standard-size"]);
  });

  it("starts from the table's own area, standard or not", () => {
    const conductors = { sets: [{ count: 12, size: "1000 kcmil", material: "aluminum" } as const] };
    const from = { sets: [{ count: 10, size: "1000 kcmil", material: "aluminum" } as const] };
    const circuit = {
      device: { amperes: 5000 },
      conductors,
      increasedFrom: { conductors: from, reason: "other" },
    } as const;
    expect(sized("2017", [circuit], aluminum).requiredArea).toBe(1440000);
  });

  it("is never lowered by a decrease, and says so", () => {
    const found = sized("2023", [{ device: { amperes: 200 }, ...increased("3/0 AWG", "2/0 AWG") }]);
    expect(found.requiredArea).toBe(areaOf("6 AWG"));
    expect(codes(found)).toContain("smaller-than-baseline");
  });

  it("is not counted without a baseline, and says so", () => {
    const circuit = { device: { amperes: 200 }, conductors: sets(1, "500 kcmil") };
    expect(sized("2023", [circuit]).requiredArea).toBe(areaOf("6 AWG"));
    expect(codes(sized("2023", [circuit]))).toEqual(["no-baseline-given"]);
    expect(codes(sized("2023", [{ device: { amperes: 200 } }]))).toEqual([]);
  });

  it.each<[EditionYear, number, string]>([
    ["2008", 10380, "baseline-before-increase"],
    ["2011", 10380, "baseline-before-increase"],
    ["2014", 10380, "baseline-before-increase"],
    ["2017", 6530, "baseline-minimum-for-installation"],
    ["2020", 6530, "baseline-by-temperature-and-number"],
    ["2023", 6530, "baseline-by-temperature-and-number"],
    ["2026", 6530, "baseline-by-temperature-and-number"],
  ])("%s: for temperature or number %d cmil", (year, area, baseline) => {
    const device = { amperes: 20 };
    const forced = sized(year, [{ device, ...increased("12 AWG", "10 AWG", "temperature-or-number") }]);
    expect(forced.requiredArea).toBe(area);
    expect(codes(forced)).toContain(baseline);
    expect(codes(forced).includes("no-increase-for-temperature-or-number")).toBe(area === 6530);
    expect(sized(year, [{ device, ...increased("12 AWG", "10 AWG") }]).requiredArea).toBe(10380);
  });

  it("may be left to a qualified person from 2020", () => {
    const told = editionYears.filter((year) =>
      codes(sized(year, [{ device: { amperes: 20 }, ...increased("12 AWG", "10 AWG") }])).includes(
        "qualified-person-may-size",
      ),
    );
    expect(told).toEqual(["2020", "2023", "2026"]);
  });

  it("has a reading in 2014", () => {
    const circuits = [{ device: { amperes: 20 }, ...increased("12 AWG", "10 AWG", "temperature-or-number") }];
    expect(sized("2014", circuits).readings).toEqual([
      {
        id: "increase-in-2014",
        chosen: "any-increase",
        otherwise: [{ alternative: "as-in-2017", requiredArea: 6530 }],
      },
    ]);
    const code = { year: "2014", readings: { "increase-in-2014": "as-in-2017" } } as const;
    expect(sized("2014", circuits, { code }).requiredArea).toBe(6530);
  });
});

describe("the limit at the circuit conductors", () => {
  it("acts after the increase", () => {
    const found = sized("2023", [
      { device: { aheadOfFeeder: { amperes: 400 } }, ...increased("8 AWG", "6 AWG") },
    ]);
    expect(found).toMatchObject({ requiredArea: 26240, governs: "cap" });
    expect(codes(found)).toContain("limited-to-circuit-conductors");
    expect(found.steps.map(({ kind }) => kind)).toEqual([
      "sum",
      "rating-row",
      "increase",
      "cap",
      "standard-size",
    ]);
  });

  it("is the whole set, and one conductor as a reading", () => {
    const circuits = [{ device: { aheadOfFeeder: { amperes: 1600 } }, conductors: sets(4, "1/0 AWG") }];
    for (const year of editionYears) {
      const id = year === "2026" ? "equipment-grounding-limit-in-2026" : "equipment-grounding-limit";
      const found = sized(year, circuits);
      expect(found.requiredArea).toBe(211600);
      expect(found.readings).toEqual([
        { id, chosen: "whole-set", otherwise: [{ alternative: "one-conductor", requiredArea: 105600 }] },
      ]);
      expect(
        sized(year, circuits, { code: { year, readings: { [id]: "one-conductor" } } }).requiredArea,
      ).toBe(105600);
    }
  });

  it("does not act across materials, and says so where it would", () => {
    const conductors = sets(1, "2 AWG", "aluminum");
    const found = sized("2023", [{ device: { aheadOfFeeder: { amperes: 600 } }, conductors }]);
    expect(found.requiredArea).toBe(areaOf("1 AWG"));
    expect(codes(found)).toContain("no-cap-across-materials");
    const inTime = sized("2023", [{ device: { amperes: 100 }, conductors }]);
    expect(codes(inTime)).not.toContain("no-cap-across-materials");
  });

  it("of a tap is the tap conductors, by its own section", () => {
    const found = sized("2023", [
      { device: { aheadOfFeeder: { amperes: 150 } }, conductors: sets(1, "14 AWG") },
    ]);
    expect(found).toMatchObject({ requiredArea: 4110, citation: { section: "250.122(G)" } });
    expect(found.steps.find(({ kind }) => kind === "cap")?.citation.section).toBe("250.122(G)");
    const own = sized("2023", [{ device: { amperes: 150 }, conductors: sets(1, "14 AWG") }]);
    expect(own.steps.find(({ kind }) => kind === "cap")?.citation.section).toBe("250.122(A)");
  });
});

describe("several circuits", () => {
  it("go by the largest device", () => {
    const found = sized(
      "2023",
      [30, 20, 60].map((amperes) => ({ device: { amperes } })),
    );
    expect(found.outcome).toMatchObject({ size: "10 AWG" });
    expect(found.steps[1]).toEqual({
      kind: "shared",
      circuits: [
        { amperes: 30, requiredArea: 10380 },
        { amperes: 20, requiredArea: 6530 },
        { amperes: 60, requiredArea: 10380 },
      ],
      decides: 2,
      citation: { section: "250.122(C)", evidence: "single" },
    });
  });

  it("go by an increased circuit where it requires more, with the largest device as a reading", () => {
    const circuits = [
      { device: { amperes: 20 }, ...increased("12 AWG", "4 AWG") },
      { device: { amperes: 60 } },
    ];
    const found = sized("2023", circuits);
    expect(found).toMatchObject({ requiredArea: 41740, governs: "increase" });
    expect(codes(found)).toContain("increased-circuit-decides");
    expect(found.readings).toMatchObject([
      { id: "shared-equipment-grounding", otherwise: [{ requiredArea: 10380 }] },
    ]);
  });
});

describe("motors", () => {
  it.each<[string, ProtectedCircuit["device"], string]>([
    [
      "short-circuit device",
      { motor: { kind: "inverse-time-or-fuse", deviceAmperes: 225 } },
      "250.122(D)(1)",
    ],
    ["fuse", { motor: { kind: "instantaneous-trip", dualElementFuseAmperes: 225 } }, "250.122(D)(2)"],
  ])("go by the %s", (_, device, section) => {
    const found = sized("2020", [{ device }]);
    expect(found.requiredArea).toBe(areaOf("4 AWG"));
    expect(found.citation).toEqual({ section, evidence: "single" });
    expect(codes(found)).toEqual(section.endsWith("(2)") ? ["motor-fuse-rating-given"] : []);
  });
});

describe("the way of running", () => {
  const parallel = [{ device: { amperes: 600 }, conductors: sets(2, "350 kcmil") }];

  it("has one conductor of full size in each raceway or cable", () => {
    for (const kind of ["parallel-raceways", "parallel-cables"] as const) {
      const found = sized("2017", parallel, { run: { kind } });
      expect(found.outcome).toEqual({ kind: "conductor", size: "1 AWG", quantity: 1 });
      expect(codes(found)).toContain("full-size-in-each");
    }
    expect(codes(sized("2017", parallel))).toContain("full-size-in-each");
    expect(codes(sized("2017", parallel, { run: { kind: "single" } }))).not.toContain("full-size-in-each");
  });

  it("lets cables combine their own conductors from 2017", () => {
    const told = editionYears.filter((year) =>
      codes(sized(year, parallel, { run: { kind: "parallel-cables" } })).includes(
        "cable-conductors-may-be-combined",
      ),
    );
    expect(told).toEqual(["2017", "2020", "2023", "2026"]);
  });

  it("holds a single conductor in a tray at 4 AWG, of any material, above the limit", () => {
    const tray = { run: { kind: "tray", conductor: "single" } } as const;
    for (const rest of [tray, { ...tray, ...aluminum }]) {
      const found = sized("2023", [{ device: { amperes: 60 } }], rest);
      expect(found).toMatchObject({ requiredArea: 41740, governs: "floor" });
      expect(found.steps.at(-2)).toMatchObject({
        kind: "floor",
        size: "4 AWG",
        citation: { section: "392.10(B)(1)(c)" },
      });
    }
    const limited = sized("2023", [{ device: { amperes: 400 }, conductors: sets(1, "6 AWG") }], tray);
    expect(limited.requiredArea).toBe(41740);
    expect(sized("2023", [{ device: { amperes: 400 } }], tray).governs).toBe("rating-row");
    const inCable = { run: { kind: "tray", conductor: "in-cable" } } as const;
    expect(sized("2023", [{ device: { amperes: 60 } }], inCable).requiredArea).toBe(10380);
  });
});

describe("the input", () => {
  const refused = (input: unknown) => {
    try {
      size(equipmentGroundingConductor, input as Input<typeof equipmentGroundingConductor>);
    } catch (error) {
      if (error instanceof InputError) return error.issues.map(({ code, path }) => `${code} ${path}`);
    }
    return [];
  };
  const code = { year: "2023" };
  const conductor = { material: "copper" };
  const withCircuit = (circuit: unknown) => refused({ code, conductor, circuits: [circuit] });

  it.each<[unknown, string]>([
    [{ device: { amperes: 0 } }, "not-positive circuits[0].device.amperes"],
    [{ device: { amperes: 6001 } }, "out-of-range circuits[0].device.amperes"],
    [
      { device: { aheadOfFeeder: { amperes: 6001 } } },
      "out-of-range circuits[0].device.aheadOfFeeder.amperes",
    ],
    [{ device: { amperes: "200" } }, "wrong-type circuits[0].device.amperes"],
    [{ device: {} }, "missing circuits[0].device.amperes"],
    [{}, "missing circuits[0].device"],
    [{ device: { amperes: 20, aheadOfFeeder: { amperes: 20 } } }, "unknown-key circuits[0].device.amperes"],
    [{ device: { motor: { kind: "fuse", amperes: 20 } } }, "unknown-value circuits[0].device.motor.kind"],
    [
      { device: { motor: { kind: "instantaneous-trip", amperes: 20, dualElementFuseAmperes: 20 } } },
      "unknown-key circuits[0].device.motor.amperes",
    ],
    [
      { device: { amperes: 20 }, increasedFrom: { conductors: sets(1, "12 AWG"), reason: "voltage-drop" } },
      "missing circuits[0].conductors",
    ],
    [
      {
        device: { amperes: 20 },
        conductors: sets(1, "10 AWG", "aluminum"),
        increasedFrom: { conductors: sets(1, "12 AWG"), reason: "voltage-drop" },
      },
      "unlike-materials circuits[0].increasedFrom.conductors",
    ],
    [
      {
        device: { amperes: 20 },
        conductors: sets(1, "10 AWG"),
        increasedFrom: { conductors: sets(1, "12 AWG"), reason: "length" },
      },
      "unknown-value circuits[0].increasedFrom.reason",
    ],
  ])("%j is refused: %s", (circuit, issue) => expect(withCircuit(circuit)).toEqual([issue]));

  it("is refused with everything that is wrong", () => {
    expect(refused({ code: {}, circuits: [], conductor: {}, run: { kind: "tray" }, extra: 1 })).toEqual([
      "unknown-key extra",
      "missing code.year",
      "empty-list circuits",
      "missing conductor.material",
      "missing run.conductor",
    ]);
  });
});

describe("laws", () => {
  const year = fc.constantFrom(...editionYears);
  const material = fc.constantFrom<Material>("copper", "aluminum", "copper-clad aluminum");
  const amperes = fc.double({ min: 1, max: 6000, noNaN: true });
  const supply = (of: Material) =>
    fc
      .record({ count: fc.integer({ min: 1, max: 12 }), size: fc.constantFrom(...standardSizes) })
      .map(({ count, size: one }) => sets(count, one, of));
  const circuit: fc.Arbitrary<ProtectedCircuit> = material.chain((of) =>
    fc.record(
      {
        device: fc.oneof<fc.Arbitrary<ProtectedCircuit["device"]>[]>(
          amperes.map((one) => ({ amperes: one })),
          amperes.map((one) => ({ aheadOfFeeder: { amperes: one } })),
        ),
        conductors: supply(of),
        increasedFrom: fc.record({
          conductors: supply(of),
          reason: fc.constantFrom<IncreaseReason>("voltage-drop", "temperature-or-number", "other"),
        }),
      },
      { requiredKeys: ["device", "conductors"] },
    ),
  );
  const run = fc.constantFrom<NonNullable<Input<typeof equipmentGroundingConductor>["run"]>>(
    { kind: "single" },
    { kind: "parallel-raceways" },
    { kind: "tray", conductor: "single" },
  );
  const input: fc.Arbitrary<Input<typeof equipmentGroundingConductor>> = fc.record({
    code: fc.record({ year }),
    circuits: fc.array(circuit, { minLength: 1, maxLength: 4 }),
    conductor: fc.record({ material }),
    run,
  });
  const area = (one: Input<typeof equipmentGroundingConductor>) =>
    size(equipmentGroundingConductor, one).requiredArea;

  it("a larger device never requires less", () => {
    fc.assert(
      fc.property(year, material, amperes, amperes, (of, metal, a, b) => {
        const [small, large] = [Math.min(a, b), Math.max(a, b)].map((one) =>
          sized(of, [{ device: { amperes: one } }], { conductor: { material: metal } }),
        );
        expect(large?.requiredArea).toBeGreaterThanOrEqual(small?.requiredArea ?? 0);
      }),
    );
  });

  it("larger conductors on the same baseline never require less", () => {
    fc.assert(
      fc.property(input, fc.nat(5), (one, more) => {
        const larger = one.circuits.map((each) => ({
          ...each,
          conductors: {
            sets: (each.conductors?.sets ?? []).map((set) => ({ ...set, count: set.count + more })),
          },
        }));
        expect(area({ ...one, circuits: larger })).toBeGreaterThanOrEqual(area(one));
      }),
    );
  });

  it("the order of circuits does not matter, and one more never requires less", () => {
    fc.assert(
      fc.property(input, circuit, (one, another) => {
        expect(area({ ...one, circuits: [...one.circuits].reverse() })).toBe(area(one));
        expect(area({ ...one, circuits: [...one.circuits, another] })).toBeGreaterThanOrEqual(area(one));
      }),
    );
  });

  it("the result is the steps' own arithmetic and never above the circuit conductors but by a floor", () => {
    fc.assert(
      fc.property(input, (one) => {
        const { steps, requiredArea, governs } = size(equipmentGroundingConductor, one);
        const deciding = steps.find(({ kind }) => kind === governs);
        expect(deciding).toMatchObject({ requiredArea });
        const grown = steps.find((step) => step.kind === "increase");
        if (grown?.kind === "increase") {
          const product = BigInt(grown.area) * BigInt(grown.installedArea);
          const base = BigInt(grown.baselineArea);
          expect(BigInt(grown.requiredArea)).toBe((product + base - 1n) / base);
        }
      }),
    );
  });

  it("is plain data and leaves its input alone", () => {
    fc.assert(
      fc.property(input, (one) => {
        const before = structuredClone(one);
        const result = size(equipmentGroundingConductor, one);
        expect(one).toEqual(before);
        expect(JSON.parse(JSON.stringify(result))).toEqual(result);
        expect(explain(result)).not.toContain("undefined");
      }),
    );
  });
});

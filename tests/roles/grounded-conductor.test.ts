import {
  type EditionYear,
  editionYears,
  groundedConductor,
  type Input,
  InputError,
  type Material,
  type StandardSize,
  type Supply,
  size,
} from "bondmil";
import { describe, expect, it } from "vitest";

const sets = (count: number, size: StandardSize, material: Material = "copper"): Supply => ({
  sets: [{ count, size, material }],
});
const ask = (supply: Supply, change: Partial<Input<typeof groundedConductor>> = {}) =>
  size(groundedConductor, {
    code: { year: "2023" },
    system: "service",
    supply,
    conductor: { material: "copper" },
    ...change,
  });
const inEdition = (
  year: EditionYear,
  supply: Supply,
  change: Partial<Input<typeof groundedConductor>> = {},
) => ask(supply, { code: { year }, ...change });

describe("the table", () => {
  it("is entered by the supply, with 12.5 percent above it", () => {
    expect(ask(sets(1, "350 kcmil")).outcome).toMatchObject({ size: "2 AWG" });
    expect(ask(sets(1, "400 kcmil")).outcome).toMatchObject({ size: "1/0 AWG" });
    expect(ask(sets(3, "500 kcmil"))).toMatchObject({ requiredArea: 187_500, governs: "one-eighth" });
  });

  it("says where the load would stand when none is given", () => {
    const cautions = (year: EditionYear, change: Partial<Input<typeof groundedConductor>> = {}) =>
      inEdition(year, sets(1, "350 kcmil"), change).cautions;
    expect(cautions("2023")).toEqual([{ code: "load-not-counted", section: "220.61" }]);
    expect(cautions("2026")).toEqual([{ code: "load-not-counted", section: "120.61" }]);
    expect(cautions("2023", { load: { amperes: 40, circuitAmperes: 400 } })).toEqual([]);
    expect(cautions("2023", { grounded: "phase" })).toEqual([]);
  });

  it("stands for a conductor whose load is stated as zero, and says so", () => {
    const noLoad = { load: { amperes: 0, circuitAmperes: 400 } };
    expect(ask(sets(1, "350 kcmil"), noLoad)).toMatchObject({
      outcome: { size: "2 AWG" },
      cautions: [{ code: "no-load-stated", section: "250.24(D)(1)" }],
    });
    expect(ask(sets(1, "350 kcmil"), noLoad).steps).toEqual(ask(sets(1, "350 kcmil")).steps);
    const derived = { system: "separately-derived", ...noLoad } as const;
    expect(ask(sets(1, "500 kcmil"), { ...derived, jumperAt: "source" })).toMatchObject({
      outcome: { kind: "not-required", why: "jumper-at-source" },
      cautions: [],
    });
    expect(ask(sets(1, "500 kcmil"), { ...derived, jumperAt: "enclosure" }).cautions).toEqual([
      { code: "no-load-stated", section: "250.30(A)(3)" },
    ]);
    expect(() => ask(sets(1, "350 kcmil"), { load: { amperes: -1, circuitAmperes: 400 } })).toThrow(
      /zero or more/,
    );
  });

  it("stands in another section by edition and scope", () => {
    const sections = (change: Partial<Input<typeof groundedConductor>>) =>
      editionYears.map((year) => inEdition(year, sets(1, "500 kcmil"), change).citation.section);
    expect(sections({})).toEqual([
      ...Array.from({ length: 5 }, () => "250.24(C)(1)"),
      "250.24(D)(1)",
      "250.24(D)(1)",
    ]);
    expect(sections({ scope: "raceway" }).at(-1)).toBe("250.24(D)(2)");
    expect(sections({ system: "separately-derived", jumperAt: "enclosure" })).toEqual([
      "250.30(A)(8)",
      ...Array.from({ length: 6 }, () => "250.30(A)(3)"),
    ]);
  });

  it("keeps its last row as a floor through 2011, visible for a bus", () => {
    const bus = { conductor: { material: "copper", form: "bus" } } as const;
    expect(inEdition("2011", sets(1, "1250 kcmil"), bus)).toMatchObject({
      requiredArea: 167_800,
      governs: "floor",
    });
    expect(inEdition("2017", sets(1, "1250 kcmil"), bus)).toMatchObject({
      requiredArea: 156_250,
      governs: "one-eighth",
    });
  });
});

describe("parallel raceways", () => {
  it("each by what runs in it, not below 1/0 AWG in either metal", () => {
    expect(ask(sets(1, "2/0 AWG"), { scope: "raceway" })).toMatchObject({
      requiredArea: 105_600,
      governs: "floor",
    });
    const aluminum = ask(sets(1, "4/0 AWG", "aluminum"), {
      scope: "raceway",
      conductor: { material: "aluminum" },
    });
    expect(aluminum.outcome).toMatchObject({ size: "1/0 AWG" });
    expect(ask(sets(1, "750 kcmil"), { scope: "raceway" }).outcome).toMatchObject({ size: "2/0 AWG" });
  });

  it("adds the largest conductor of each set that shares a raceway, from 2023", () => {
    const big = { size: "500 kcmil", material: "copper" } as const;
    const small = { size: "250 kcmil", material: "copper" } as const;
    const supply: Supply = {
      sets: [
        { count: 1, phases: [big, small, small] },
        { count: 1, phases: [small, big, small] },
      ],
    };
    const area = (year: EditionYear) => inEdition(year, supply, { scope: "raceway" }).steps[0];
    expect([area("2020"), area("2023")]).toMatchObject([{ area: 750_000 }, { area: 1_000_000 }]);
  });
});

describe("another material above the threshold", () => {
  it("takes the larger of two ways through 2014, the assumed conductors from 2017", () => {
    const area = (year: EditionYear) => inEdition(year, sets(4, "600 kcmil", "aluminum")).requiredArea;
    expect(editionYears.map(area)).toEqual([300_000, 300_000, 300_000, 250_000, 250_000, 250_000, 250_000]);
  });

  it("leaves 2014 to a reading", () => {
    const [used] = inEdition("2014", sets(4, "600 kcmil", "aluminum")).readings.filter(
      ({ id }) => id === "grounded-conductor-other-material-in-2014",
    );
    expect(used?.otherwise).toEqual([{ alternative: "as-in-2017", requiredArea: 250_000 }]);
  });
});

describe("the cap at the ungrounded conductors", () => {
  it("acts on a small supply of the same metal, in every edition", () => {
    for (const year of editionYears) {
      expect(inEdition(year, sets(1, "10 AWG"))).toMatchObject({ requiredArea: 10_380, governs: "cap" });
      expect(inEdition(year, sets(1, "10 AWG"), { conductor: { material: "aluminum" } }).requiredArea).toBe(
        26_240,
      );
    }
  });

  it("is the set, so that it never lies below the 12.5 percent of parallel conductors", () => {
    for (const year of editionYears) {
      expect(inEdition(year, sets(5, "8 AWG")).requiredArea).toBe(26_240);
      expect(inEdition(year, sets(12, "1/0 AWG")).requiredArea).toBeGreaterThanOrEqual(158_400);
    }
  });
});

describe("12.5 percent through 2011", () => {
  it("stands beside the limit at the ungrounded conductors, which never takes from it", () => {
    for (const year of ["2008", "2011"] as const) {
      // 12.5 percent of 5000 kcmil against conductors of 250 kcmil.
      expect(inEdition(year, sets(20, "250 kcmil"))).toMatchObject({
        outcome: { size: "700 kcmil" },
        requiredArea: 625_000,
        governs: "one-eighth",
      });
      expect(inEdition(year, sets(12, "2/0 AWG"))).toMatchObject({
        outcome: { size: "4/0 AWG" },
        requiredArea: 199_650,
        governs: "one-eighth",
      });
    }
  });
});

describe("the cap of a small derived system", () => {
  const small = (year: EditionYear, readings: object = {}) =>
    inEdition(year, sets(1, "10 AWG"), {
      code: { year, readings },
      system: "separately-derived",
      jumperAt: "enclosure",
    });

  it("stands in a sentence of its own save in 2017, where it is a reading", () => {
    for (const year of editionYears) {
      const { requiredArea, readings } = small(year);
      expect(requiredArea).toBe(10_380);
      expect(readings.map(({ id }) => id)).toEqual(
        year === "2017" ? ["cap-on-small-derived-supplies-in-2017"] : [],
      );
    }
    const other = { "cap-on-small-derived-supplies-in-2017": "large-supplies-only" };
    expect(small("2017", other)).toMatchObject({ requiredArea: 16_510, governs: "row" });
    expect(small("2020", other).requiredArea).toBe(10_380);
  });

  it("cites the note in 2017 and the section from 2020", () => {
    const section = (year: EditionYear) =>
      small(year).steps.find(({ kind }) => kind === "cap")?.citation.section;
    expect([section("2011"), section("2017"), section("2020")]).toEqual([
      "250.30(A)(3)",
      "Table 250.102(C)(1) note 1",
      "250.30(A)(3)",
    ]);
  });
});

describe("its load", () => {
  const load = (amperes: number, circuitAmperes: number, listedFor75?: boolean) => ({
    load: { amperes, circuitAmperes, ...(listedFor75 === undefined ? {} : { listedFor75 }) },
  });

  it("governs where it requires more, both being shown", () => {
    const result = ask(sets(1, "3/0 AWG"), load(200, 200));
    expect(result).toMatchObject({ requiredArea: 167_800, governs: "load" });
    expect(result.steps.map(({ kind }) => kind)).toEqual(["sum", "row", "load", "standard-size"]);
    expect(ask(sets(1, "3/0 AWG"), load(20, 200))).toMatchObject({ requiredArea: 41_740, governs: "row" });
  });

  it("is taken at 60 C through 100 A unless listed, at 75 C above", () => {
    const step = (amperes: number, circuit: number, listed?: boolean) =>
      ask(sets(1, "2 AWG"), load(amperes, circuit, listed)).steps.find(({ kind }) => kind === "load");
    expect(step(90, 100)).toMatchObject({ temperature: 60, size: "2 AWG" });
    expect(step(90, 100, true)).toMatchObject({ temperature: 75, size: "3 AWG" });
    expect(step(90, 101)).toMatchObject({ temperature: 75, size: "3 AWG" });
  });

  it("is carried by no conductor that is too small for the circuit's device (240.4(D))", () => {
    const atSource = (amperes: number, circuitAmperes: number) =>
      size(groundedConductor, {
        code: { year: "2008" },
        system: "separately-derived",
        jumperAt: "source",
        supply: sets(1, "2 AWG"),
        conductor: { material: "copper" },
        load: { amperes, circuitAmperes },
      });
    // 20 A is what the 2008 table lets 14 AWG carry.
    expect(atSource(20, 20)).toMatchObject({ outcome: { size: "12 AWG" }, requiredArea: 6530 });
    expect(atSource(20, 20).steps[0]).toMatchObject({
      circuitAmperes: 20,
      citation: { section: "220.61, 110.14(C)(1), 240.4(D), Table 310.16", evidence: "memory" },
    });
    expect(atSource(15, 15)).toMatchObject({ outcome: { size: "14 AWG" } });
    expect(atSource(15, 15).steps[0]).not.toHaveProperty("circuitAmperes");
    expect(atSource(8, 60)).toMatchObject({ outcome: { size: "8 AWG" } });
  });

  it("cites where loads stand, which moved in 2026", () => {
    const section = (year: EditionYear) =>
      inEdition(year, sets(1, "2 AWG"), load(90, 100)).steps.find(({ kind }) => kind === "load")?.citation
        .section;
    expect(section("2023")).toBe("220.61, 110.14(C)(1), Table 310.16");
    expect(section("2026")).toBe("120.61, 110.14(C)(1), Table 310.16");
  });
});

describe("its evidence", () => {
  it("is that of the weakest place, of the load and of its terminations too", () => {
    const of = (year: EditionYear, change: Partial<Input<typeof groundedConductor>>) =>
      inEdition(year, sets(1, "3/0 AWG"), change).evidence;
    const load = { load: { amperes: 60, circuitAmperes: 200 } };
    expect([of("2014", {}), of("2014", load)]).toEqual(["carried", "carried"]);
    expect([of("2017", {}), of("2017", load)]).toEqual(["single", "single"]);
    expect(of("2026", load)).toBe("memory");
  });

  it("is memory through 2011 where materials differ above the table, and was read in 2017", () => {
    expect(inEdition("2008", sets(4, "600 kcmil", "aluminum")).evidence).toBe("memory");
    expect(inEdition("2011", sets(4, "600 kcmil", "aluminum")).evidence).toBe("memory");
    expect(inEdition("2017", sets(4, "600 kcmil", "aluminum")).evidence).not.toBe("memory");
  });
});

describe("a separately derived system", () => {
  const derived = { system: "separately-derived", jumperAt: "source" } as const;

  it("requires no minimum size where the jumper is at the source", () => {
    expect(ask(sets(1, "500 kcmil"), derived)).toMatchObject({
      outcome: { kind: "not-required", why: "jumper-at-source" },
      requiredArea: 0,
      cautions: [{ code: "load-not-counted", section: "220.61" }],
    });
    expect(
      ask(sets(1, "500 kcmil"), { ...derived, load: { amperes: 55, circuitAmperes: 400 } }),
    ).toMatchObject({
      requiredArea: 16_510 + 9730,
      governs: "load",
    });
  });
});

describe("a grounded phase", () => {
  it("is as large as the ungrounded conductors, one for each set", () => {
    const phase = ask(sets(2, "500 kcmil"), { grounded: "phase" });
    expect(phase.outcome).toEqual({ kind: "conductor", size: "500 kcmil", quantity: 2 });
    expect(phase.citation.section).toBe("250.24(D)(3)");
  });

  it("in one of several raceways is not below 1/0 AWG, nor below its load", () => {
    const inRaceway = (change: Partial<Input<typeof groundedConductor>> = {}) =>
      ask(sets(1, "2 AWG"), { grounded: "phase", scope: "raceway", ...change });
    expect(inRaceway()).toMatchObject({ requiredArea: 105_600, governs: "floor" });
    expect(inRaceway({ load: { amperes: 170, circuitAmperes: 400 } })).toMatchObject({
      outcome: { size: "2/0 AWG" },
      governs: "load",
    });
    expect(ask(sets(1, "2 AWG"), { grounded: "phase" }).requiredArea).toBe(66_360);
  });

  it("stands in another section for a derived system, and by edition", () => {
    const section = (year: EditionYear, change: Partial<Input<typeof groundedConductor>> = {}) =>
      inEdition(year, sets(1, "3/0 AWG"), { grounded: "phase", ...change }).citation.section;
    expect([section("2008"), section("2011"), section("2020"), section("2023")]).toEqual([
      "250.24(C)(1)",
      "250.24(C)(3)",
      "250.24(C)(3)",
      "250.24(D)(3)",
    ]);
    expect(section("2020", { system: "separately-derived", jumperAt: "enclosure" })).toBe("250.30(A)(3)(c)");
  });

  it("goes by the largest conductor of unlike ones", () => {
    const supply: Supply = {
      sets: [
        {
          count: 1,
          phases: [
            { size: "3/0 AWG", material: "copper" },
            { size: "350 kcmil", material: "aluminum" },
          ],
        },
      ],
    };
    // 350 kcmil aluminum carries 250 A, as 250 kcmil copper (255 A) does and 4/0 AWG does not.
    expect(ask(supply, { grounded: "phase" })).toMatchObject({ outcome: { size: "250 kcmil" } });
  });

  it("has the area of equal conductance where no single conductor of its metal carries as much", () => {
    const phase = (one: StandardSize) =>
      ask(sets(1, one), { grounded: "phase", conductor: { material: "aluminum" } });
    // 1,250,000 / 0.61, more than the largest conductor.
    expect(phase("1250 kcmil")).toMatchObject({
      outcome: { kind: "area-only", requiredArea: 2_049_181 },
      governs: "named-size",
    });
    expect(phase("1250 kcmil").cautions.map(({ code }) => code)).toEqual([
      "no-single-conductor-of-equal-ampacity",
      "above-largest-standard-size",
    ]);
    expect(phase("1000 kcmil")).toMatchObject({ outcome: { size: "1750 kcmil" }, governs: "load" });
    const places = (["2008", "2014", "2023"] as const).map(
      (year) =>
        inEdition(year, sets(1, "1250 kcmil"), { grounded: "phase", conductor: { material: "aluminum" } })
          .steps[0]?.citation.evidence,
    );
    expect(places).toEqual(["memory", "bracketed", "single"]);
  });

  it("counts a size that the ampacity table leaves out as the next larger", () => {
    const supply: Supply = { sets: [{ count: 1, size: "1200 kcmil", material: "copper" }] };
    const { requiredArea } = ask(supply, { grounded: "phase", conductor: { material: "aluminum" } });
    expect(requiredArea).toBe(1_967_214);
  });

  it("says that ungrounded conductors are too small to be in parallel, or only required for a load", () => {
    const codes = (supply: Supply) => ask(supply, { grounded: "phase" }).cautions.map(({ code }) => code);
    expect(codes(sets(2, "1 AWG"))).toEqual(["parallel-below-1-0"]);
    expect(codes({ ...sets(1, "3/0 AWG"), requiredForAmperes: 200 })).toEqual([
      "conductors-required-for-load",
    ]);
    expect(codes(sets(2, "1/0 AWG"))).toEqual([]);
  });

  it("of another metal carries as much", () => {
    const phase = ask(sets(1, "3/0 AWG"), { grounded: "phase", conductor: { material: "aluminum" } });
    expect(phase).toMatchObject({ outcome: { size: "250 kcmil" }, governs: "load" });
  });
});

describe("an existing building whose grounded conductor stays the fault path", () => {
  it("has one not smaller than an equipment grounding conductor", () => {
    const result = inEdition("2020", sets(1, "3 AWG"), { rebondedAtBuildingWithDevice: 300 });
    expect(result).toMatchObject({ requiredArea: 41_740, governs: "rating-row" });
  });

  it("goes by its device and its load alone, the table having no say", () => {
    const at = (change: Partial<Input<typeof groundedConductor>> = {}) =>
      inEdition("2020", sets(1, "3/0 AWG"), { rebondedAtBuildingWithDevice: 200, ...change });
    expect(at()).toMatchObject({
      outcome: { size: "6 AWG" },
      citation: { section: "250.32(B)(1) Exception No. 1" },
    });
    expect(at().steps.map(({ kind }) => kind)).toEqual(["rating-row", "standard-size"]);
    expect(at({ load: { amperes: 110, circuitAmperes: 200 } })).toMatchObject({
      outcome: { size: "2 AWG" },
      governs: "load",
    });
    expect(at({ scope: "raceway" })).toMatchObject({ requiredArea: 105_600, governs: "floor" });
  });

  const rebonded = (supply: Supply, change: Partial<Input<typeof groundedConductor>> = {}) =>
    inEdition("2020", supply, { rebondedAtBuildingWithDevice: 200, ...change });
  const codes = (...asked: Parameters<typeof rebonded>) =>
    rebonded(...asked).cautions.map(({ code }) => code);

  it("says that its load may require more where none is given, and that sets are too small", () => {
    expect(rebonded(sets(1, "3/0 AWG")).cautions).toEqual([{ code: "load-not-counted", section: "220.61" }]);
    expect(codes(sets(1, "3/0 AWG"), { load: { amperes: 60, circuitAmperes: 200 } })).toEqual([]);
    expect(codes(sets(2, "1 AWG"))).toEqual(["parallel-below-1-0", "load-not-counted"]);
    expect(codes(sets(1, "3/0 AWG"), { grounded: "phase" })).toEqual([]);
  });

  it("that is a phase carries as much as the ungrounded conductors, one for each set", () => {
    const phase = rebonded(sets(2, "3/0 AWG"), { grounded: "phase" });
    expect(phase).toMatchObject({
      outcome: { size: "3/0 AWG", quantity: 2 },
      governs: "named-size",
      citation: { section: "250.32(B)(1) Exception No. 1" },
    });
    expect(phase.steps.map(({ kind }) => kind)).toEqual(["named-size", "rating-row", "standard-size"]);
    expect(phase.steps.map(({ citation }) => citation.section)[0]).toBe("250.24(C)(3)");
  });

  it("that is a phase is not below the equipment grounding conductor, its load or 1/0 AWG in a raceway", () => {
    const small = (change: Partial<Input<typeof groundedConductor>>) =>
      rebonded(sets(1, "8 AWG"), { grounded: "phase", ...change });
    expect(small({})).toMatchObject({ outcome: { size: "6 AWG" }, governs: "rating-row" });
    expect(small({ load: { amperes: 110, circuitAmperes: 200 } })).toMatchObject({
      outcome: { size: "2 AWG" },
      governs: "load",
    });
    expect(small({ scope: "raceway" })).toMatchObject({ requiredArea: 105_600, governs: "floor" });
  });
});

describe("a conductor of a feeder", () => {
  it("need not be larger than conductors that are smaller than the table requires", () => {
    const found = ask(sets(1, "8 AWG"), { feederDeviceAmperes: 200 });
    expect(found).toMatchObject({ outcome: { size: "8 AWG" }, governs: "cap" });
  });
});

describe("a conductor with the jumper at the source", () => {
  const atSource = { system: "separately-derived", jumperAt: "source" } as const;

  it("is required where it is a phase, or stays the fault path of a building", () => {
    const outcome = (change: Partial<Input<typeof groundedConductor>> = {}) =>
      ask(sets(1, "500 kcmil"), { ...atSource, ...change }).outcome;
    expect(outcome()).toMatchObject({ kind: "not-required" });
    expect(outcome({ grounded: "phase" })).toMatchObject({ size: "500 kcmil" });
    expect(outcome({ rebondedAtBuildingWithDevice: 200 })).toMatchObject({ size: "6 AWG" });
  });
});

describe("bad input", () => {
  it.each([
    [{ system: "separately-derived" }, "missing", "jumperAt"],
    [{ jumperAt: "source" }, "unknown-key", "jumperAt"],
    [
      { system: "separately-derived", feederDeviceAmperes: 200, jumperAt: "source" },
      "unknown-key",
      "jumperAt",
    ],
    [{ load: { amperes: -1, circuitAmperes: 100 } }, "not-positive", "load.amperes"],
    [{ load: { amperes: 900, circuitAmperes: 1200 } }, "out-of-range", "load.amperes"],
    [{ load: { amperes: 9, circuitAmperes: 100, listedFor75: "yes" } }, "wrong-type", "load.listedFor75"],
    [{ scope: "conduit" }, "unknown-value", "scope"],
    [{ rebondedAtBuildingWithDevice: 7000 }, "out-of-range", "rebondedAtBuildingWithDevice"],
    [{ neutral: true }, "unknown-key", "neutral"],
  ])("%j is %s at %s", (change, code, path) => {
    let issues: unknown;
    try {
      ask(sets(1, "3/0 AWG"), change as never);
    } catch (error) {
      if (error instanceof InputError) issues = error.issues;
    }
    expect(issues).toMatchObject([{ code, path }]);
  });
});

import {
  amend,
  type EditionYear,
  editionYears,
  type Input,
  InputError,
  type mainBondingJumper,
  size,
  supplySideBondingJumper,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { describeJumper } from "./jumper/describe-jumper.js";
import { inEveryEdition } from "./jumper/facts.js";
import { ask, brief, cautionsOf, kinds, phases, sectionOf, sets, sizeIn, step } from "./jumper/supplies.js";

describeJumper(supplySideBondingJumper, {
  role: "supply-side-bonding-jumper",
  name: {
    ...inEveryEdition("supply-side bonding jumper"),
    "2008": "equipment bonding jumper on the supply side of the service",
  },
  rule: { ...inEveryEdition("250.102(C)(1)"), "2008": "250.102(C)" },
  oneEighth: {
    ...inEveryEdition("Table 250.102(C)(1) note 1"),
    "2008": "250.102(C)",
    "2011": "250.102(C)(1)",
  },
  otherMaterial: {
    ...inEveryEdition("Table 250.102(C)(1) note 2"),
    "2008": "250.102(C)",
    "2011": "250.102(C)(3)",
  },
  sum: {
    ...inEveryEdition("Table 250.102(C)(1)"),
    "2008": "Table 250.66",
    "2011": "Table 250.66",
    "2023": "250.102(C)(2)",
    "2026": "250.102(C)(2)",
  },
  material: "250.102(A)",
  namesAluminumFrom: "2017",
  replacedAtAnySize: ["2011"],
  openThreshold: ["2014"],
  mayComeWithEquipment: false,
});

const copperOn250Aluminum = (year: EditionYear, alternative?: "at-any-size" | "above-threshold") => {
  const id = year === "2011" ? "supply-side-other-material-in-2011" : "supply-side-other-material-in-2014";
  return size(
    supplySideBondingJumper,
    ask(
      year,
      sets(1, "250 kcmil", "aluminum"),
      "copper",
      alternative === undefined ? {} : { readings: { [id]: alternative } },
    ),
  );
};

describe("supply-side bonding jumper of another material below the threshold", () => {
  it.each(["2011", "2014"] as const)("replaces the conductors in %s", (year) => {
    const result = copperOn250Aluminum(year);
    // 250 kcmil aluminum carries 205 A; 4/0 AWG is the smallest copper with as much.
    expect(step(result, "assumed")).toMatchObject({
      area: 211600,
      conductors: [{ installedAmperes: 205, assumed: "4/0 AWG", area: 211600 }],
    });
    expect(brief(result)).toEqual(["2 AWG", 66360, "row"]);
    // Whether 2014 had a threshold is open, so that the row of what is installed stands beside.
    expect(kinds(result)).toEqual([
      "sum",
      ...(year === "2014" ? ["row"] : []),
      "assumed",
      "row",
      "standard-size",
    ]);
    expect(cautionsOf(result)).toEqual(["assumed-conductors"]);
    expect(sectionOf(result, "assumed-conductors")).toBe(
      year === "2011" ? "250.102(C)(3)" : "Table 250.102(C)(1) note 2",
    );
    expect(result.readings).toEqual([
      {
        id: `supply-side-other-material-in-${year}`,
        chosen: year === "2011" ? "at-any-size" : "larger-of-both",
        otherwise: [
          ...(year === "2014" ? [{ alternative: "at-any-size", requiredArea: 66360 }] : []),
          { alternative: "above-threshold", requiredArea: 41740 },
        ],
      },
    ]);
    expect(result.evidence).toBe(year === "2011" ? "single" : "memory");
  });

  it.each(["2011", "2014"] as const)("stays in the table in %s by the other reading", (year) => {
    const result = copperOn250Aluminum(year, "above-threshold");
    expect(brief(result)).toEqual(["4 AWG", 41740, "row"]);
    expect(kinds(result)).toEqual(["sum", "row", "standard-size"]);
    expect(cautionsOf(result)).toEqual([]);
    expect(result.readings).toEqual([
      {
        id: `supply-side-other-material-in-${year}`,
        chosen: "above-threshold",
        otherwise: [...(year === "2014" ? ["larger-of-both"] : []), "at-any-size"].map((alternative) => ({
          alternative,
          requiredArea: 66360,
        })),
      },
    ]);
  });

  it.each(["2008", "2017", "2020", "2023", "2026"] as const)("stays in the table in %s", (year) => {
    const result = copperOn250Aluminum(year);
    expect(brief(result)).toEqual(["4 AWG", 41740, "row"]);
    expect(result.readings).toEqual([]);
  });

  // One end of each row, worked from the ampacities at 75 C.
  it.each([
    ["1/0 AWG", "aluminum", "copper", "1 AWG", "6 AWG"],
    ["3/0 AWG", "aluminum", "copper", "2/0 AWG", "4 AWG"],
    ["250 kcmil", "aluminum", "copper", "4/0 AWG", "2 AWG"],
    ["500 kcmil", "aluminum", "copper", "350 kcmil", "2 AWG"],
    ["900 kcmil", "aluminum", "copper", "700 kcmil", "2/0 AWG"],
    ["1750 kcmil", "aluminum", "copper", "1000 kcmil", "2/0 AWG"],
    ["2 AWG", "copper", "aluminum", "1/0 AWG", "6 AWG"],
    ["1/0 AWG", "copper", "aluminum", "3/0 AWG", "4 AWG"],
    ["3/0 AWG", "copper", "aluminum", "250 kcmil", "2 AWG"],
    ["350 kcmil", "copper", "aluminum", "500 kcmil", "1/0 AWG"],
    ["600 kcmil", "copper", "aluminum", "900 kcmil", "3/0 AWG"],
    ["1000 kcmil", "copper", "aluminum", "1750 kcmil", "4/0 AWG"],
  ] as const)("at any size in 2011 and 2014: %s %s with a %s jumper counts as %s", (...example) => {
    const [installed, supply, jumper, assumed, answer] = example;
    const readings = { "supply-side-other-material-in-2014": "at-any-size" } as const;
    for (const year of ["2011", "2014"] as const) {
      const more = year === "2014" ? { readings } : {};
      const result = size(supplySideBondingJumper, ask(year, sets(1, installed, supply), jumper, more));
      expect(step(result, "assumed").conductors[0]?.assumed).toBe(assumed);
      expect(step(result, "row")).toMatchObject({ entered: jumper, read: jumper });
      expect(sizeIn(result)).toBe(answer);
    }
  });

  it("takes the larger of the two readings in 2014, for at any size is not always the larger", () => {
    // 3 x 300 kcmil aluminum are assumed: 900 kcmil, the end of a row; the table alone puts 634.8 kcmil copper one row further.
    const supply = sets(3, "4/0 AWG", "copper");
    const in2011 = size(supplySideBondingJumper, ask("2011", supply, "aluminum"));
    expect(brief(in2011)).toEqual(["3/0 AWG", 167800, "row"]);
    expect(in2011.readings[0]?.otherwise).toEqual([{ alternative: "above-threshold", requiredArea: 211600 }]);
    const in2014 = size(supplySideBondingJumper, ask("2014", supply, "aluminum"));
    expect(brief(in2014)).toEqual(["4/0 AWG", 211600, "row"]);
    expect(in2014.readings).toEqual([
      {
        id: "supply-side-other-material-in-2014",
        chosen: "larger-of-both",
        otherwise: [
          { alternative: "at-any-size", requiredArea: 167800 },
          { alternative: "above-threshold", requiredArea: 211600 },
        ],
      },
    ]);
    expect(brief(size(supplySideBondingJumper, ask("2017", supply, "aluminum")))).toEqual([
      "4/0 AWG",
      211600,
      "row",
    ]);
  });

  it("keeps the last row as a floor in 2011 by what is assumed too, which shows on a bus", () => {
    // 1600 kcmil aluminum, no more than 1750; 4 x 300 kcmil copper are assumed: 1200 kcmil, more than 1100.
    const supply = { sets: [sets(4, "400 kcmil", "aluminum")] };
    const asked = (form: "bus" | "wire") =>
      size(supplySideBondingJumper, {
        code: { year: "2011" },
        supply,
        conductor: { material: "copper", form },
      });
    expect(step(asked("bus"), "one-eighth").requiredArea).toBe(150_000);
    expect(brief(asked("bus"))).toEqual(["area-only", 167_800, "floor"]);
    expect(brief(asked("wire"))).toEqual(["3/0 AWG", 167_800, "floor"]);
  });

  it("adds corresponding conductors from 2023 where all sets share a single raceway, each set's largest across several", () => {
    const unlike = [
      phases(["500 kcmil", "250 kcmil", "250 kcmil"], "copper"),
      phases(["250 kcmil", "500 kcmil", "250 kcmil"], "copper"),
    ];
    const sum = (year: EditionYear, scope: "single-raceway" | "all") => {
      const asked = { ...ask(year, unlike, "copper"), scope };
      const { area, rule, citation } = step(size(supplySideBondingJumper, asked), "sum");
      return [area, rule, citation.section];
    };
    expect(sum("2023", "single-raceway")).toEqual([750_000, "corresponding", "Table 250.102(C)(1)"]);
    expect(sum("2023", "all")).toEqual([1_000_000, "largest", "250.102(C)(2)"]);
    for (const year of ["2011", "2017", "2020"] as const) {
      expect(sum(year, "single-raceway")).toEqual(sum(year, "all"));
    }
  });

  it("counts a conductor that the ampacity table leaves out as the next larger", () => {
    const result = size(supplySideBondingJumper, ask("2011", sets(1, "14 AWG", "aluminum"), "copper"));
    expect(step(result, "assumed").conductors).toMatchObject([
      { installedAmperes: 20, assumed: "14 AWG", area: 4110 },
    ]);
    expect(sizeIn(result)).toBe("8 AWG");
  });
});

describe("supply-side bonding jumper for sets with unlike phases", () => {
  const supply = [
    phases(["500 kcmil", "250 kcmil", "250 kcmil"], "copper"),
    phases(["250 kcmil", "500 kcmil", "250 kcmil"], "copper"),
  ];
  const twice = supply.map((set) => ({ ...set, count: 2 }));

  it.each(["2008", "2011", "2014", "2017", "2020"] as const)(
    "adds corresponding conductors in %s",
    (year) => {
      const once = size(supplySideBondingJumper, ask(year, supply, "copper"));
      expect(step(once, "sum")).toMatchObject({ rule: "corresponding", area: 750000 });
      expect(brief(size(supplySideBondingJumper, ask(year, twice, "copper")))).toEqual([
        "4/0 AWG",
        187500,
        "one-eighth",
      ]);
    },
  );

  it.each(["2023", "2026"] as const)("adds the largest of each set in %s", (year) => {
    const once = size(supplySideBondingJumper, ask(year, supply, "copper"));
    expect(step(once, "sum")).toMatchObject({ rule: "largest", area: 1000000 });
    expect(step(once, "sum").citation.section).toBe("250.102(C)(2)");
    expect(brief(size(supplySideBondingJumper, ask(year, twice, "copper")))).toEqual([
      "250 kcmil",
      250000,
      "one-eighth",
    ]);
  });
});

describe("supply-side bonding jumper of one raceway", () => {
  it.each(editionYears)(
    "may be smaller than 1/0 AWG in %s: the floor is for parallel grounded conductors",
    (year) => {
      expect(sizeIn(size(supplySideBondingJumper, ask(year, sets(1, "4/0 AWG", "copper"), "copper")))).toBe(
        "2 AWG",
      );
    },
  );

  it.each(editionYears)("takes both sets that share the raceway in %s", (year) => {
    expect(sizeIn(size(supplySideBondingJumper, ask(year, sets(2, "500 kcmil", "copper"), "copper")))).toBe(
      "2/0 AWG",
    );
  });
});

const inRaceway = (input: Input<typeof mainBondingJumper>) =>
  size(supplySideBondingJumper, { ...input, scope: "raceway" });
const derived = (input: Input<typeof mainBondingJumper>, scope: "raceway" | "all" = "all") =>
  size(supplySideBondingJumper, { ...input, system: "separately-derived", scope });

describe("supply-side bonding jumper by scope", () => {
  it.each(editionYears)("cites the paragraph on single raceways in %s", (year) => {
    const result = inRaceway(ask(year, sets(1, "500 kcmil", "copper"), "copper"));
    expect(brief(result)).toEqual(["1/0 AWG", 105600, "row"]);
    const section = year === "2008" ? "250.102(C)" : "250.102(C)(2)";
    expect(result.citation.section).toBe(section);
    expect(step(result, "sum").citation.section).toBe(section);
  });

  it.each(editionYears)("is for all by default in %s", (year) => {
    const input = ask(year, sets(5, "500 kcmil", "copper"), "copper");
    expect(size(supplySideBondingJumper, { ...input, scope: "all", system: "service" })).toEqual(
      size(supplySideBondingJumper, input),
    );
  });

  it.each(editionYears)("takes 12.5 percent of what is in the raceway in %s", (year) => {
    expect(brief(inRaceway(ask(year, sets(3, "500 kcmil", "copper"), "copper")))).toEqual([
      "4/0 AWG",
      187500,
      "one-eighth",
    ]);
  });

  it("ends a raceway's jumper at the table in 2011 by the other reading", () => {
    const input = (readings: object) => ask("2011", sets(3, "500 kcmil", "copper"), "copper", { readings });
    expect(inRaceway(input({})).readings).toEqual([
      {
        id: "jumper-per-raceway-in-2011",
        chosen: "one-eighth-too",
        otherwise: [{ alternative: "table-alone", requiredArea: 167800 }],
      },
    ]);
    const alone = inRaceway(input({ "jumper-per-raceway-in-2011": "table-alone" }));
    expect(brief(alone)).toEqual(["3/0 AWG", 167800, "row"]);
    expect(step(alone, "row").through).toBeNull();
    // The common jumper has a paragraph of its own.
    const common = size(supplySideBondingJumper, input({ "jumper-per-raceway-in-2011": "table-alone" }));
    expect(brief(common)).toEqual(["4/0 AWG", 187500, "one-eighth"]);
  });

  it.each(["2023", "2026"] as const)(
    "counts one conductor of several sets by the other reading in %s",
    (year) => {
      const readings = { "several-sets-in-a-raceway": "largest-conductor" } as const;
      const input = ask(year, sets(2, "500 kcmil", "copper"), "copper");
      expect(brief(inRaceway(input))).toEqual(["2/0 AWG", 133100, "row"]);
      expect(inRaceway(input).readings).toEqual([
        {
          id: "several-sets-in-a-raceway",
          chosen: "sum-of-sets",
          otherwise: [{ alternative: "largest-conductor", requiredArea: 105600 }],
        },
      ]);
      const one = inRaceway({ ...input, code: { year, readings } });
      expect(brief(one)).toEqual(["1/0 AWG", 105600, "row"]);
      expect(step(one, "sum")).toMatchObject({ rule: "largest-conductor", area: 500000 });
      expect(brief(size(supplySideBondingJumper, { ...input, code: { year, readings } }))).toEqual([
        "2/0 AWG",
        133100,
        "row",
      ]);
    },
  );
});

describe("supply-side bonding jumper of a separately derived system", () => {
  it.each(editionYears)("cites its own rule in %s", (year) => {
    const input = ask(year, sets(2, "500 kcmil", "copper"), "copper");
    expect(derived(input).citation.section).toBe("250.30(A)(2)");
    expect(derived(input, "raceway").citation.section).toBe(year === "2008" ? "250.102(C)" : "250.102(C)(2)");
    for (const scope of ["all", "raceway"] as const)
      expect(brief(derived(input, scope))).toEqual(["2/0 AWG", 133100, "row"]);
  });

  it.each(editionYears.slice(1))(
    "is not required above the derived conductors in %s, by a sentence of its own",
    (year) => {
      for (const scope of ["all", "raceway"] as const) {
        const result = derived(ask(year, sets(1, "10 AWG", "copper"), "copper"), scope);
        expect(brief(result)).toEqual(["10 AWG", 10380, "cap"]);
        expect(step(result, "cap").citation.section).toBe("250.30(A)(2)");
        // The readings on the table's sentence have no say here.
        expect(result.readings).toEqual([]);
      }
      expect(brief(derived(ask(year, sets(3, "14 AWG", "copper"), "copper")))).toEqual([
        "8 AWG",
        12330,
        "cap",
      ]);
    },
  );

  it("has no cap in 2008, where it is not established", () => {
    for (const scope of ["all", "raceway"] as const) {
      const result = derived(ask("2008", sets(1, "10 AWG", "copper"), "copper"), scope);
      expect(brief(result)).toEqual(["8 AWG", 16510, "row"]);
    }
  });

  it.each(editionYears)("has no cap across materials in %s", (year) => {
    const result = derived(ask(year, sets(1, "10 AWG", "aluminum"), "copper"));
    expect(brief(result)).toEqual(["8 AWG", 16510, "row"]);
    expect(cautionsOf(result).includes("no-cap-across-materials")).toBe(year !== "2008");
  });

  it.each(["2011", "2014"] as const)("replaces conductors of another material at any size in %s", (year) => {
    const result = derived(ask(year, sets(1, "250 kcmil", "aluminum"), "copper"));
    expect(brief(result)).toEqual(["2 AWG", 66360, "row"]);
    const { id, otherwise = [] } = result.readings[0] ?? {};
    expect(id).toBe(`supply-side-other-material-in-${year}`);
    expect(otherwise).toContainEqual({ alternative: "above-threshold", requiredArea: 41740 });
  });

  it("rests on what was read, and through 2008 on what follows from it", () => {
    const evidenceIn = (year: EditionYear) =>
      derived(ask(year, sets(2, "500 kcmil", "copper"), "copper")).evidence;
    expect(editionYears.map(evidenceIn)).toEqual([
      "carried",
      "single",
      "carried",
      "single",
      "bracketed",
      "bracketed",
      "carried",
    ]);
  });
});

describe("what bonds in place of a supply-side bonding jumper", () => {
  const input = ask("2020", sets(2, "500 kcmil", "copper"), "copper");

  it.each(editionYears)("is the grounded conductor at a service in %s", (year) => {
    const code = { year };
    const result = size(supplySideBondingJumper, { ...input, code, instead: "grounded-conductor" });
    expect(result.outcome).toMatchObject({
      kind: "not-required",
      why: "grounded-conductor-serves",
      citation: { section: "250.92(B)(1)" },
    });
  });

  it.each([
    ["service", "250.92(A)"],
    ["separately-derived", "250.30(A)(2)"],
  ] as const)("is a nonflexible metal raceway at a %s", (system, section) => {
    const result = size(supplySideBondingJumper, { ...input, system, instead: "nonflexible-metal-raceway" });
    expect(result.outcome).toMatchObject({ why: "metal-raceway-serves", citation: { section } });
    expect(result).toMatchObject({ requiredArea: 0, steps: [], governs: null });
  });

  it("is fittings at a raceway of a service, but not around impaired knockouts", () => {
    const result = size(supplySideBondingJumper, { ...input, instead: "bonding-fittings" });
    expect(result.outcome).toMatchObject({
      why: "bonding-fittings-serve",
      citation: { section: "250.92(B)" },
    });
    expect(result.cautions).toEqual([{ code: "impaired-knockouts-need-jumpers", section: "250.92(B)" }]);
  });

  it.each(["grounded-conductor", "bonding-fittings"] as const)("is not %s in a derived system", (instead) => {
    expect(() => size(supplySideBondingJumper, { ...input, system: "separately-derived", instead })).toThrow(
      'instead: expected "nonflexible-metal-raceway"',
    );
  });

  it("is nothing where an amendment requires a wire", () => {
    const code = amend(
      { year: "2020" },
      {
        kind: "always-wire",
        role: "supply-side-bonding-jumper",
        citation: { jurisdiction: "Example County", section: "Sec. 1" },
      },
    );
    for (const instead of ["nonflexible-metal-raceway", "grounded-conductor", "bonding-fittings"] as const) {
      const sized = size(supplySideBondingJumper, { ...input, code, instead });
      expect(brief(sized)).toEqual(["2/0 AWG", 133100, "row"]);
      expect(sized.cautions).toContainEqual({ code: "always-wire", section: "Example County, Sec. 1" });
    }
  });

  it("is refused where it cannot serve, with everything else that is wrong", () => {
    const issues = (more: object): readonly string[] => {
      try {
        size(supplySideBondingJumper, { ...input, ...more } as Input<typeof supplySideBondingJumper>);
      } catch (error) {
        if (error instanceof InputError) return error.issues.map(({ code, path }) => `${code} ${path}`);
      }
      return [];
    };
    expect(issues({ system: "separately-derived", instead: "grounded-conductor" })).toEqual([
      "unknown-value instead",
    ]);
    expect(issues({ system: "building", scope: "conduit", instead: "earth", conductor: {} })).toEqual([
      "missing conductor.material",
      "unknown-value system",
      "unknown-value scope",
      "unknown-value instead",
    ]);
  });
});

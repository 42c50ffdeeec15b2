import {
  type ArrangementsInput,
  arrangementsOf,
  InputError,
  type Supply,
  supplySideBondingJumper,
} from "bondmil";
import { describe, expect, it } from "vitest";

const supply: Supply = { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] };
const base: ArrangementsInput<"supply-side-bonding-jumper"> = {
  code: { year: "2023" },
  raceways: ["A", "B", "C"].map((id) => ({ id, supply })),
  conductor: { material: "copper" },
};

describe("several metal raceways", () => {
  it("have a jumper each, by what runs in it, or one in common, by all", () => {
    const { arrangements, differences } = arrangementsOf(supplySideBondingJumper, base);
    expect(arrangements.map(({ id, totalArea }) => [id, totalArea])).toEqual([
      ["jumper-in-each-raceway", 3 * 105_600],
      ["one-common-raceway-jumper", 211_600],
    ]);
    expect(differences).toEqual(["sizes", "total-metal"]);
  });

  it("cite the paragraph on several raceways for a jumper in each", () => {
    const [each] = arrangementsOf(supplySideBondingJumper, { ...base, code: { year: "2017" } }).arrangements;
    expect(each?.citation.section).toBe("250.102(C)(2)");
  });

  it("are capped at the conductors in the raceway in a derived system sooner than in a service", () => {
    const supply: Supply = { sets: [{ count: 1, size: "10 AWG", material: "copper" }] };
    const area = (
      year: "2014" | "2017",
      system: ArrangementsInput<"supply-side-bonding-jumper">["system"] & string,
    ) =>
      arrangementsOf(supplySideBondingJumper, {
        ...base,
        code: { year },
        system,
        raceways: [{ id: "A", supply }],
      }).arrangements[0]?.conductors[0]?.result.requiredArea;
    expect([area("2014", "service"), area("2014", "separately-derived")]).toEqual([16_510, 10_380]);
    expect([area("2017", "service"), area("2017", "separately-derived")]).toEqual([10_380, 10_380]);
  });

  it("are named by their raceway, or by all, and cite the section on what is to be bonded", () => {
    const { arrangements } = arrangementsOf(supplySideBondingJumper, base);
    expect(arrangements.map(({ conductors }) => conductors.map(({ id, subject }) => [id, subject]))).toEqual([
      ["A", "B", "C"].map((id) => [`supply-side-bonding-jumper ${id}`, id]),
      [["supply-side-bonding-jumper all raceways", "all raceways"]],
    ]);
    for (const { connections, conductors, status } of arrangements) {
      expect(status).toBe("permitted");
      for (const { insteadPermitted } of conductors) expect(insteadPermitted?.by).toBe("bonding-fittings");
      expect(connections).toMatchObject([
        {
          kind: "supply-side-bonding-jumper",
          status: "required",
          at: ["A", "B", "C"],
          citation: { section: "250.92(A)" },
        },
      ]);
    }
  });

  it("of a derived system cite its own section, and fittings do not serve for its jumper", () => {
    const [each] = arrangementsOf(supplySideBondingJumper, {
      ...base,
      system: "separately-derived",
    }).arrangements;
    expect(each?.cautions).toEqual([]);
    expect(each?.connections[0]?.citation.section).toBe("250.30(A)(2)");
  });

  it("compare ampacities in the column that is told", () => {
    const aluminum: Supply = { sets: [{ count: 4, size: "750 kcmil", material: "aluminum" }] };
    const area = (temperature?: 60 | 75) =>
      arrangementsOf(supplySideBondingJumper, {
        ...base,
        raceways: [{ id: "A", supply: aluminum }],
        ...(temperature && { temperature }),
      }).arrangements[0]?.conductors[0]?.result.requiredArea;
    expect([area(), area(75), area(60)]).toEqual([300_000, 300_000, 250_000]);
  });

  it("refuse phases that cannot be matched across raceways", () => {
    const one = { size: "3/0 AWG", material: "copper" } as const;
    const raceways = [
      { id: "A", supply: { sets: [{ count: 1, phases: [one, one, one] }] } },
      { id: "B", supply: { sets: [{ count: 1, phases: [one, one] }] } },
    ];
    expect(() => arrangementsOf(supplySideBondingJumper, { ...base, raceways })).toThrow(
      /raceways: .*same number of phases/,
    );
  });

  it("have one way if there is one", () => {
    expect(
      arrangementsOf(supplySideBondingJumper, { ...base, raceways: base.raceways.slice(0, 1) }).arrangements,
    ).toHaveLength(1);
  });

  it.each([
    [{ raceways: [] }, "empty-list", "raceways"],
    [{ raceways: [...base.raceways, { id: "B", supply }] }, "duplicate-id", "raceways[3].id"],
    [{ system: "feeder" }, "unknown-value", "system"],
    [{ temperature: 70 }, "unknown-value", "temperature"],
    [{ conductor: undefined }, "missing", "conductor"],
    [{ code: undefined }, "missing", "code"],
    [{ enclosures: [] }, "unknown-key", "enclosures"],
  ])("%j is %s at %s", (change, code, path) => {
    let issues: unknown;
    try {
      arrangementsOf(supplySideBondingJumper, { ...base, ...change } as never);
    } catch (error) {
      if (error instanceof InputError) issues = error.issues;
    }
    expect(issues).toMatchObject([{ code, path }]);
  });
});

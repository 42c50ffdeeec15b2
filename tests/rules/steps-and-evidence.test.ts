import {
  equipmentGroundingConductor,
  groundedConductor,
  type Input,
  intersystemBondingConductor,
  largestSupply,
  mainBondingJumper,
  type SizingResult,
  size,
  supplySideBondingJumper,
  systemBondingJumper,
} from "bondmil";
import { describe, expect, it } from "vitest";

const kinds = ({ steps }: SizingResult) => steps.map(({ kind }) => kind);
const code = { year: "2020" } as const;

describe("the steps of conductors that no table of supplies sizes", () => {
  it("show the size that a section names", () => {
    const found = size(intersystemBondingConductor, { code, termination: "apart" });
    expect(kinds(found)).toEqual(["named-size", "standard-size"]);
  });

  it("show the largest derived conductor of a control transformer, wherever it stands", () => {
    const [large, small] = [
      { size: "10 AWG", material: "copper" },
      { size: "12 AWG", material: "copper" },
    ] as const;
    for (const phases of [
      [large, small, small],
      [small, large, small],
      [small, small, large],
    ]) {
      const found = size(systemBondingJumper, {
        code,
        supply: { sets: [{ count: 1, phases }] },
        conductor: { material: "copper" },
        controlTransformer: true,
      });
      expect(found.outcome).toMatchObject({ size: "10 AWG" });
      expect(kinds(found)).toEqual(["named-size", "floor", "standard-size"]);
    }
  });

  it("show what a grounded phase equals", () => {
    const found = size(groundedConductor, {
      code,
      system: "service",
      supply: { sets: [{ count: 1, size: "3/0 AWG", material: "copper" }] },
      conductor: { material: "copper" },
      grounded: "phase",
    });
    expect(kinds(found)).toEqual(["named-size", "standard-size"]);
    expect(found.cautions.map((one) => one.code)).not.toContain("no-single-conductor-of-equal-ampacity");
  });

  it("show the minimum size in parallel beside a load that requires more", () => {
    const found = size(groundedConductor, {
      code,
      system: "separately-derived",
      jumperAt: "source",
      scope: "raceway",
      supply: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] },
      conductor: { material: "copper" },
      load: { amperes: 300, circuitAmperes: 800 },
    });
    expect(found).toMatchObject({ governs: "load", outcome: { size: "350 kcmil" } });
    expect(kinds(found)).toContain("floor");
  });
});

describe("the evidence of the largest supply that a jumper serves", () => {
  const evidence = (
    role: typeof mainBondingJumper | typeof supplySideBondingJumper,
    supplyMaterial: "copper" | "aluminum",
  ) =>
    largestSupply(role, {
      code: { year: "2014" },
      conductor: { size: "4 AWG", material: "copper" },
      supplyMaterial,
    }).evidence;

  it("leaves out a limit that the edition has not, and the other metal where there is none", () => {
    expect(evidence(mainBondingJumper, "copper")).toBe("carried");
    expect(evidence(supplySideBondingJumper, "copper")).toBe("carried");
    expect(evidence(supplySideBondingJumper, "aluminum")).toBe("memory");
  });

  it("counts the limit where a reading has it", () => {
    const under = (reading: "absent" | "as-in-2017") =>
      largestSupply(mainBondingJumper, {
        code: { year: "2014", readings: { "cap-in-2014": reading } },
        conductor: { size: "4 AWG", material: "copper" },
        supplyMaterial: "copper",
      }).evidence;
    expect([under("absent"), under("as-in-2017")]).toEqual(["carried", "memory"]);
  });
});

describe("a full size in each", () => {
  type Request = Input<typeof equipmentGroundingConductor>;
  const parallel = {
    device: { amperes: 400 },
    conductors: { sets: [{ count: 2, size: "3/0 AWG", material: "copper" }] },
  } as const;
  const single = { device: { amperes: 60 } } as const;
  const codes = (circuits: Request["circuits"], run?: Request["run"]) =>
    size(equipmentGroundingConductor, {
      code,
      circuits,
      conductor: { material: "copper" },
      ...(run && { run }),
    }).cautions.map((one) => one.code);

  it("is said where any circuit has parallel sets, in raceways and in cables of a tray", () => {
    const said = "full-size-in-each";
    expect(codes([single, parallel])).toContain(said);
    expect(codes([single])).not.toContain(said);
    expect(codes([parallel], { kind: "tray", conductor: "in-cable" })).toContain(said);
    expect(codes([single], { kind: "tray", conductor: "in-cable" })).not.toContain(said);
    expect(codes([parallel], { kind: "tray", conductor: "single" })).not.toContain(said);
    expect(codes([single], { kind: "parallel-raceways" })).toContain(said);
  });
});

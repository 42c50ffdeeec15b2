import { InputError, sizeImpedanceBondingJumper } from "bondmil";
import { describe, expect, it } from "vitest";

const code = { year: "2020" } as const;
const jumper = { material: "copper" } as const;

describe("the jumper from a grounding impedance", () => {
  it("goes by the electrode conductor table at the impedance, without 12.5 percent", () => {
    const at = (count: number) =>
      sizeImpedanceBondingJumper({
        code,
        electrodeConductorAt: "impedance",
        supply: { sets: [{ count, size: "500 kcmil", material: "copper" }] },
        jumper,
      });
    expect(at(1)).toMatchObject({ outcome: { size: "1/0 AWG" }, citation: { section: "250.36(G)(1)" } });
    expect(at(8)).toMatchObject({ outcome: { size: "3/0 AWG" }, governs: "row" });
  });

  it("equals the conductor to the impedance at the first disconnect", () => {
    const result = sizeImpedanceBondingJumper({
      code,
      electrodeConductorAt: "first-disconnect",
      impedanceConductor: "6 AWG",
      jumper,
    });
    expect(result).toMatchObject({
      outcome: { size: "6 AWG" },
      governs: "named-size",
      citation: { section: "250.36(G)(2)" },
    });
  });

  it("is in its own metal not below the least size of that conductor", () => {
    const size = (material: "copper" | "aluminum") =>
      sizeImpedanceBondingJumper({
        code,
        electrodeConductorAt: "first-disconnect",
        impedanceConductor: "8 AWG",
        jumper: { material },
      });
    expect(size("copper")).toMatchObject({ outcome: { size: "8 AWG" }, governs: "named-size" });
    expect(size("aluminum")).toMatchObject({ outcome: { size: "6 AWG" }, governs: "floor" });
    expect(size("copper").steps.map(({ kind, citation }) => [kind, citation.section])).toEqual([
      ["named-size", "250.36(G)(2)"],
      ["floor", "250.36(B)"],
      ["standard-size", "Chapter 9 Table 8"],
    ]);
  });

  it("enters the supply's column and reads its own", () => {
    const result = sizeImpedanceBondingJumper({
      code,
      electrodeConductorAt: "impedance",
      supply: { sets: [{ count: 8, size: "500 kcmil", material: "copper" }] },
      jumper: { material: "aluminum" },
    });
    expect(result).toMatchObject({ outcome: { size: "250 kcmil" }, governs: "row" });
    expect(result.steps.some(({ kind }) => kind === "assumed" || kind === "one-eighth")).toBe(false);
  });

  it.each([
    [null, [["", "wrong-type"]]],
    [
      { code: { year: "1999" }, electrodeConductorAt: "source", supply: {}, jumper: {} },
      [
        ["electrodeConductorAt", "unknown-value"],
        ["code.year", "unknown-value"],
        ["jumper.material", "missing"],
      ],
    ],
    [
      { code, electrodeConductorAt: "impedance", impedanceConductor: "8 AWG", jumper },
      [
        ["impedanceConductor", "unknown-key"],
        ["supply", "missing"],
      ],
    ],
  ])("%j has all its faults named at once", (input, faults) => {
    let issues: InputError["issues"] = [];
    try {
      sizeImpedanceBondingJumper(input as never);
    } catch (error) {
      if (error instanceof InputError) issues = error.issues;
    }
    expect(issues.map((one) => [one.path, one.code])).toEqual(faults);
  });

  it.each([
    [{ electrodeConductorAt: "source" }, "unknown-value", "electrodeConductorAt"],
    [{ electrodeConductorAt: "first-disconnect" }, "missing", "impedanceConductor"],
    [{ electrodeConductorAt: "impedance" }, "missing", "supply"],
  ])("%j is %s at %s", (change, wanted, path) => {
    let issues: unknown;
    try {
      sizeImpedanceBondingJumper({ code, jumper, ...change } as never);
    } catch (error) {
      if (error instanceof InputError) issues = error.issues;
    }
    expect(issues).toMatchObject([{ code: wanted, path }]);
  });
});

import { InputError, impedanceBondingJumper, size } from "bondmil";
import { describe, expect, it } from "vitest";

const code = { year: "2020" } as const;
const conductor = { material: "copper" } as const;

describe("the jumper from a grounding impedance", () => {
  it("goes by the electrode conductor table at the impedance, without 12.5 percent", () => {
    const at = (count: number) =>
      size(impedanceBondingJumper, {
        code,
        electrodeConductorAt: "impedance",
        supply: { sets: [{ count, size: "500 kcmil", material: "copper" }] },
        conductor,
      });
    expect(at(1)).toMatchObject({ outcome: { size: "1/0 AWG" }, citation: { section: "250.36(G)(1)" } });
    expect(at(8)).toMatchObject({ outcome: { size: "3/0 AWG" }, governs: "row" });
  });

  it("equals the conductor to the impedance at the first disconnect", () => {
    const result = size(impedanceBondingJumper, {
      code,
      electrodeConductorAt: "first-disconnect",
      impedanceConductor: "6 AWG",
      conductor,
    });
    expect(result).toMatchObject({
      outcome: { size: "6 AWG" },
      governs: "named-size",
      citation: { section: "250.36(G)(2)" },
    });
  });

  it("is in its own metal not below the minimum size of that conductor", () => {
    const sized = (material: "copper" | "aluminum") =>
      size(impedanceBondingJumper, {
        code,
        electrodeConductorAt: "first-disconnect",
        impedanceConductor: "8 AWG",
        conductor: { material },
      });
    expect(sized("copper")).toMatchObject({ outcome: { size: "8 AWG" }, governs: "named-size" });
    expect(sized("aluminum")).toMatchObject({ outcome: { size: "6 AWG" }, governs: "floor" });
    expect(sized("copper").steps.map(({ kind, citation }) => [kind, citation.section])).toEqual([
      ["named-size", "250.36(G)(2)"],
      ["floor", "250.36(B)"],
      ["standard-size", "Chapter 9 Table 8"],
    ]);
  });

  it("enters the supply's column and reads its own", () => {
    const result = size(impedanceBondingJumper, {
      code,
      electrodeConductorAt: "impedance",
      supply: { sets: [{ count: 8, size: "500 kcmil", material: "copper" }] },
      conductor: { material: "aluminum" },
    });
    expect(result).toMatchObject({ outcome: { size: "250 kcmil" }, governs: "row" });
    expect(result.steps.some(({ kind }) => kind === "assumed" || kind === "one-eighth")).toBe(false);
  });

  it.each([
    [null, [["", "wrong-type"]]],
    [
      { code: { year: "1999" }, electrodeConductorAt: "source", supply: {}, conductor: {} },
      [
        ["electrodeConductorAt", "unknown-value"],
        ["code.year", "unknown-value"],
        ["conductor.material", "missing"],
      ],
    ],
    [
      { code, electrodeConductorAt: "impedance", impedanceConductor: "8 AWG", conductor },
      [
        ["impedanceConductor", "unknown-key"],
        ["supply", "missing"],
      ],
    ],
  ])("%j has all its faults named at once", (input, faults) => {
    let issues: InputError["issues"] = [];
    try {
      size(impedanceBondingJumper, input as never);
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
      size(impedanceBondingJumper, { code, conductor, ...change } as never);
    } catch (error) {
      if (error instanceof InputError) issues = error.issues;
    }
    expect(issues).toMatchObject([{ code: wanted, path }]);
  });
});

import { editionYears, InputError, impedanceGroundingConductor, size } from "bondmil";
import { describe, expect, it } from "vitest";

const sized = (
  impedanceAmperes: number,
  material: "copper" | "aluminum" = "copper",
  temperature?: 60 | 75 | 90,
) =>
  size(impedanceGroundingConductor, {
    code: { year: "2020" },
    impedanceAmperes,
    conductor: { material },
    ...(temperature && { temperature }),
  });

describe("the conductor to a grounding impedance", () => {
  it("has a minimum size in each metal, and shows both requirements", () => {
    expect(sized(5)).toMatchObject({ outcome: { size: "8 AWG" }, governs: "floor" });
    expect(sized(5, "aluminum").outcome).toMatchObject({ size: "6 AWG" });
    expect(sized(5).steps.map(({ kind }) => kind)).toEqual(["load", "floor", "standard-size"]);
  });

  it("carries the impedance's current, at 60 C by default", () => {
    expect(sized(40).outcome).toMatchObject({ size: "8 AWG" });
    expect(sized(41)).toMatchObject({ outcome: { size: "6 AWG" }, governs: "load" });
    expect(sized(50, "copper", 75).outcome).toMatchObject({ size: "8 AWG" });
  });

  it("has another name from 2023", () => {
    const names = editionYears.map(
      (year) =>
        size(impedanceGroundingConductor, {
          code: { year },
          impedanceAmperes: 5,
          conductor: { material: "copper" },
        }).name,
    );
    expect(new Set(names.slice(0, 5)).size).toBe(1);
    expect(names.slice(5)).toEqual(["impedance grounding conductor", "impedance grounding conductor"]);
  });

  it.each([
    [{ impedanceAmperes: 0 }, "not-positive", "impedanceAmperes"],
    [{ impedanceAmperes: 9000 }, "out-of-range", "impedanceAmperes"],
    [{ conductor: {} }, "missing", "conductor.material"],
    [{ ohms: 55 }, "unknown-key", "ohms"],
  ])("%j is %s at %s", (change, code, path) => {
    let issues: unknown;
    try {
      size(impedanceGroundingConductor, {
        code: { year: "2020" },
        impedanceAmperes: 5,
        conductor: { material: "copper" },
        ...change,
      } as never);
    } catch (error) {
      if (error instanceof InputError) issues = error.issues;
    }
    expect(issues).toMatchObject([{ code, path }]);
  });
});

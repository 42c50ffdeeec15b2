import { cableTrayAsEquipmentGroundingConductor, editionYears, InputError, size } from "bondmil";
import { describe, expect, it } from "vitest";
import type { CableTrayInput } from "../../src/roles/equipment-grounding-conductor/cable-tray.js";

const tray = (amperes: number, metal: "steel" | "aluminum", year: CableTrayInput["code"]["year"] = "2023") =>
  size(cableTrayAsEquipmentGroundingConductor, { code: { year }, amperes, metal });

describe("a cable tray as equipment grounding conductor", () => {
  it.each([
    [60, 0.2, 0.2],
    [100, 0.4, 0.2],
    [200, 0.7, 0.2],
    [400, 1, 0.4],
    [600, 1.5, 0.4],
    [1000, null, 0.6],
    [1200, null, 1],
    [1600, null, 1.5],
    [2000, null, 2],
  ])("%d A: steel %s in2, aluminum %s in2, in every edition", (amperes, steel, aluminum) => {
    for (const year of editionYears) {
      const { outcome } = tray(amperes, "steel", year);
      expect(outcome.kind === "permitted" ? outcome.least.squareInches : null).toBe(steel);
      expect(tray(amperes, "aluminum", year).outcome).toMatchObject({
        kind: "permitted",
        through: amperes,
        least: { squareInches: aluminum },
      });
    }
  });

  it("takes the next row between two ratings", () => {
    expect(tray(61, "steel").outcome).toMatchObject({ through: 100, least: { squareMillimeters: 258 } });
  });

  it("ends at 600 A for steel and at 2000 A for aluminum", () => {
    expect(tray(600.5, "steel").outcome).toEqual({ kind: "not-permitted", largestAmperes: 600 });
    expect(tray(2001, "aluminum").outcome).toEqual({ kind: "not-permitted", largestAmperes: 2000 });
  });

  it("names its table and its conditions by edition", () => {
    expect(tray(60, "steel", "2017").citation).toEqual({ section: "Table 392.60(A)", evidence: "single" });
    expect(tray(60, "steel", "2020").citation).toEqual({ section: "Table 392.60(B)", evidence: "bracketed" });
    expect(tray(60, "steel").cautions.map(({ code }) => code)).toEqual([
      "tray-by-qualified-persons",
      "tray-identified-and-marked",
      "tray-bonded",
    ]);
  });

  it("gives a copy of the table's cell", () => {
    expect(tray(60, "steel").outcome).not.toBe(tray(60, "steel").outcome);
    expect(JSON.parse(JSON.stringify(tray(60, "steel")))).toEqual(tray(60, "steel"));
  });

  it.each([
    [{ amperes: -1 }, "not-positive amperes"],
    [{ metal: "copper" }, "unknown-value metal"],
    [{ amperes: Number.NaN }, "out-of-range amperes"],
  ])("refuses %j", (part, issue) => {
    const input = { code: { year: "2023" }, amperes: 60, metal: "steel", ...part } as CableTrayInput;
    try {
      size(cableTrayAsEquipmentGroundingConductor, input);
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(InputError);
      if (error instanceof InputError) {
        expect(error.issues.map(({ code, path }) => `${code} ${path}`)).toEqual([issue]);
      }
    }
  });
});

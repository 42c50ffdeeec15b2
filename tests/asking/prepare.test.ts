import {
  amend,
  editionYears,
  equipmentBondingJumper,
  equipmentGroundingConductor,
  InputError,
  mainBondingJumper,
  otherPipingBondingJumper,
  prepare,
  supplySideBondingJumper,
  systemBondingJumper,
} from "bondmil";
import { describe, expect, it } from "vitest";

function refused(action: () => unknown): readonly string[] {
  try {
    action();
  } catch (error) {
    if (error instanceof InputError) return error.issues.map(({ path, code }) => `${path}: ${code}`);
    throw error;
  }
  throw new Error("nothing was refused");
}

describe.each([mainBondingJumper, systemBondingJumper, supplySideBondingJumper] as const)("$id", (role) => {
  const fine = { code: { year: "2023" }, supplyMaterial: "copper", conductor: { material: "aluminum" } };

  it("takes the request from which the bad ones are made", () => {
    expect(prepare(role, fine as never).kind).toBe("by-assumed-area");
  });

  it.each([
    ["nothing", undefined, [": missing"]],
    ["null", null, [": wrong-type"]],
    ["an empty object", {}, ["code: missing", "supplyMaterial: missing", "conductor: missing"]],
    ["a key too many", { ...fine, temperature: 75 }, ["temperature: unknown-key"]],
    [
      "a whole supply",
      { ...fine, supplyMaterial: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] } },
      ["supplyMaterial: unknown-value"],
    ],
    [
      "three faults at once",
      { code: { year: "2022" }, supplyMaterial: "tin", conductor: { material: "lead" } },
      ["code.year: unknown-value", "supplyMaterial: unknown-value", "conductor.material: unknown-value"],
    ],
  ])("refuses %s", (_what, request, expected) => {
    expect(refused(() => prepare(role, request as never))).toEqual(expected);
  });
});

describe.each([equipmentGroundingConductor, equipmentBondingJumper, otherPipingBondingJumper] as const)(
  "$id",
  (role) => {
    const fine = { code: { year: "2023" }, conductor: { material: "copper" } } as const;

    it("gives the row of a rating, at its end and just above", () => {
      const { kind, requiredArea } = prepare(role, fine);
      expect(kind).toBe("by-rating");
      expect([requiredArea(60), requiredArea(60.5), requiredArea(100)]).toEqual([10_380, 16_510, 16_510]);
    });

    it.each([
      ["nothing", undefined, [": missing"]],
      ["an empty object", {}, ["code: missing", "conductor: missing"]],
      ["a material of a supply", { ...fine, supplyMaterial: "copper" }, ["supplyMaterial: unknown-key"]],
    ])("refuses %s", (_what, request, expected) => {
      expect(refused(() => prepare(role, request as never))).toEqual(expected);
    });

    it("refuses ratings that the table has no row for, and what only the full path lays over a result", () => {
      const { requiredArea } = prepare(role, fine);
      const noNumbers = ["20", Object.create(null), { valueOf: () => 20 }] as never[];
      for (const amperes of [0, -1, 6001, Number.NaN, ...noNumbers])
        expect(refused(() => requiredArea(amperes))).toEqual(["amperes: out-of-range"]);
      const citation = { jurisdiction: "Nowhere", section: "Sec. 1" };
      const code = amend(fine.code, { kind: "floor", role: role.id, copper: "6 AWG", citation });
      expect(refused(() => prepare(role, { ...fine, code }))).toEqual(["code.amendments: unknown-value"]);
    });
  },
);

describe("the minimum size of a jumper on the load side", () => {
  it("was 14 AWG in 2008, and the first row of the table requires no less", () => {
    for (const year of editionYears) {
      const { requiredArea } = prepare(equipmentBondingJumper, {
        code: { year },
        conductor: { material: "copper" },
      });
      expect(requiredArea(15)).toBe(4110);
    }
  });
});

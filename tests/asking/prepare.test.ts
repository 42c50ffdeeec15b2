import {
  amend,
  editionYears,
  equipmentBondingJumper,
  equipmentGroundingConductor,
  InputError,
  largestDevice,
  mainBondingJumper,
  otherPipingBondingJumper,
  prepare,
  size,
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

  it("counts where an amendment goes below it", () => {
    const citation = { jurisdiction: "Nowhere", section: "Sec. 1" };
    const cell = {
      kind: "cell",
      table: "equipment-grounding",
      row: 15,
      column: "copper",
      size: "16 AWG",
    } as const;
    const conductor = { material: "copper", size: "16 AWG" } as const;
    const under = (year: "2008" | "2011") => {
      const code = amend({ year }, { ...cell, citation });
      const prepared = prepare(equipmentBondingJumper, { code, conductor: { material: "copper" } });
      return [prepared.requiredArea(15), largestDevice(equipmentBondingJumper, { code, conductor }).amperes];
    };
    expect(under("2008")).toEqual([4110, null]);
    expect(under("2011")).toEqual([2580, 15]);
  });
});

describe("a prepared function of areas", () => {
  const code = { year: "2023" } as const;
  const conductor = { material: "copper" } as const;

  it("has the last row of 2011 where the installed conductors alone are above the one before", () => {
    const asked = { code: { year: "2011" }, conductor: { material: "aluminum" } } as const;
    // Seven of 3/0 AWG copper are 1,174,600 circular mils; assumed in aluminum they are 250 kcmil each, 1,750,000, where the row before ends.
    const supply = { sets: [{ count: 7, size: "3/0 AWG", material: "copper" }] } as const;
    const full = size(mainBondingJumper, { ...asked, supply });
    expect(full).toMatchObject({ governs: "floor", requiredArea: 250_000 });
    const prepared = prepare(mainBondingJumper, { ...asked, supplyMaterial: "copper" });
    expect(prepared.kind === "by-assumed-area" && prepared.requiredArea(1_174_600, 1_750_000, 7)).toBe(
      250_000,
    );
  });

  it.each([0, -1, 0.5, Number.NaN, 2 ** 53, "500000", undefined])(
    "refuses %j where an area belongs",
    (area) => {
      const alike = prepare(mainBondingJumper, { code, supplyMaterial: "copper", conductor });
      const unlike = prepare(mainBondingJumper, { code, supplyMaterial: "aluminum", conductor });
      if (alike.kind !== "by-area" || unlike.kind !== "by-assumed-area") throw new Error("another kind");
      const wrong = area as number;
      expect(refused(() => alike.requiredArea(wrong))).toEqual(["supplyArea: out-of-range"]);
      expect(refused(() => unlike.needsAssumedArea(wrong, 1))).toEqual(["supplyArea: out-of-range"]);
      expect(refused(() => unlike.requiredArea(wrong, 0, 1))).toEqual(["supplyArea: out-of-range"]);
      expect(refused(() => unlike.needsAssumedArea(500_000, wrong))).toEqual(["sets: out-of-range"]);
      if (area === 0) return;
      expect(refused(() => unlike.requiredArea(500_000, wrong, 1))).toEqual(["assumedArea: out-of-range"]);
    },
  );
});

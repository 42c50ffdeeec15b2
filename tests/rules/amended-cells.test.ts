import {
  type Amendment,
  amend,
  arrangementsOf,
  cableTrayAsEquipmentGroundingConductor,
  equipmentGroundingConductor,
  groundingElectrodeConductor,
  InputError,
  largestDevice,
  mainBondingJumper,
  prepare,
  size,
  systemBondingJumper,
} from "bondmil";
import { describe, expect, it } from "vitest";

/** Every amendment here is invented. */
const citation = { jurisdiction: "Nowhere", section: "Sec. 1" };
const year = "2020";
const electrodeResult = (amendment?: Amendment, sets = 3) =>
  size(groundingElectrodeConductor, {
    code: amendment === undefined ? { year } : amend({ year }, amendment),
    system: "service",
    supply: { sets: [{ count: sets, size: "500 kcmil", material: "copper" }] },
    conductor: { material: "copper" },
    electrodes: [{ kind: "metal-water-pipe" }],
  });
const electrode = (amendment?: Amendment, sets?: number) => electrodeResult(amendment, sets).outcome;
const cell = (row: string | number, size: string, table = "electrode-conductor"): Amendment =>
  ({ kind: "cell", table, row, column: "copper", size, citation }) as unknown as Amendment;
const refused = (...amendments: readonly Amendment[]): readonly unknown[] => {
  try {
    amend({ year }, ...amendments);
  } catch (error) {
    if (error instanceof InputError) return error.issues.map(({ code, path }) => [code, path]);
    throw error;
  }
  return [];
};

describe("an amended cell", () => {
  it("changes its row and no other", () => {
    expect(electrode()).toMatchObject({ size: "3/0 AWG" });
    expect(electrode(cell("last", "4/0 AWG"))).toMatchObject({ size: "4/0 AWG" });
    expect(electrode(cell("last", "4/0 AWG"), 2)).toEqual(electrode(undefined, 2));
    expect(electrode(cell("1100 kcmil", "3/0 AWG"), 2)).toMatchObject({ size: "3/0 AWG" });
    expect(electrode(cell("1100 kcmil", "3/0 AWG"), 1)).toEqual(electrode(undefined, 1));
  });

  it("is cited where its row decides", () => {
    const sectionOf = (amendment: Amendment, sets?: number) =>
      electrodeResult(amendment, sets).steps.find(({ kind }) => kind === "row")?.citation.section;
    const asAmended = "Table 250.66 as amended by Nowhere, Sec. 1";
    expect(sectionOf(cell("last", "4/0 AWG"))).toBe(asAmended);
    expect(sectionOf(cell("last", "4/0 AWG"), 2)).toBe("Table 250.66");
    expect(sectionOf(cell("1100 kcmil", "3/0 AWG"), 2)).toBe(asAmended);
  });

  it("of one table leaves the other alone", () => {
    expect(electrode(cell("1100 kcmil", "3/0 AWG", "bonding-conductor"), 2)).toEqual(electrode(undefined, 2));
  });

  it("of a rating changes that rating alone", () => {
    const code = amend({ year }, cell(60, "8 AWG", "equipment-grounding"));
    const sized = (amperes: number) =>
      size(equipmentGroundingConductor, {
        code,
        circuits: [{ device: { amperes } }],
        conductor: { material: "copper" },
      }).outcome;
    expect([sized(60), sized(20), sized(100), sized(200)]).toMatchObject([
      { size: "8 AWG" },
      { size: "12 AWG" },
      { size: "8 AWG" },
      { size: "6 AWG" },
    ]);
  });

  it("of a rating is cited where it decides", () => {
    const code = amend({ year }, cell(60, "8 AWG", "equipment-grounding"));
    const sectionAt = (amperes: number) =>
      size(equipmentGroundingConductor, {
        code,
        circuits: [{ device: { amperes } }],
        conductor: { material: "copper" },
      }).steps[0]?.citation.section;
    expect(sectionAt(60)).toBe("Table 250.122 as amended by Nowhere, Sec. 1");
    expect(sectionAt(100)).toBe("Table 250.122");
  });

  it("is refused where it names no row, or breaks the order of the table", () => {
    expect(refused(cell("5 AWG", "4 AWG"))).toEqual([["unknown-value", "amendments[0].row"]]);
    expect(refused(cell("last", "4/0 AWG", "bonding-conductor"))).toEqual([
      ["unknown-value", "amendments[0].row"],
    ]);
    expect(refused(cell("last", "2 AWG"))).toHaveLength(1);
    expect(refused(cell("2 AWG", "4 AWG"))).toHaveLength(1);
    expect(refused(cell("last", "4/0 AWG"))).toEqual([]);
  });

  it("is refused where the row is named by more than a size, or by nothing", () => {
    const named = (row: unknown) => refused(cell(row as string, "4/0 AWG", "bonding-conductor"));
    for (const row of ["250 kcmil and more", "about 250 kcmil", null])
      expect(named(row)).toEqual([["unknown-value", "amendments[0].row"]]);
    expect(named(undefined)).toEqual([["missing", "amendments[0].row"]]);
  });

  it("is refused where the row of a rating is named by a size, and the other way round", () => {
    expect(refused(cell("6 AWG", "8 AWG", "equipment-grounding"))[0]).toEqual([
      "wrong-type",
      "amendments[0].row",
    ]);
    expect(refused(cell(100, "4 AWG"))[0]).toEqual(["unknown-value", "amendments[0].row"]);
  });

  it("is refused with its code where that is none", () => {
    const codeOf = (code: unknown) => {
      try {
        amend(code as never, cell("last", "4/0 AWG"));
        return "taken";
      } catch (error) {
        return error instanceof InputError ? error.issues.map((one) => [one.code, one.path]) : error;
      }
    };
    expect(codeOf(null)).toEqual([["wrong-type", ""]]);
    expect(codeOf(undefined)).toEqual([["missing", ""]]);
    expect(codeOf([])).toEqual([["wrong-type", ""]]);
    expect(codeOf("2020")).toEqual([["wrong-type", ""]]);
    expect(codeOf({ year, amendments: 5 })).toEqual([["wrong-type", "amendments"]]);
  });

  it("is refused at the first of two that clash, in whichever order they are given", () => {
    const low = cell("350 kcmil", "3/0 AWG", "bonding-conductor");
    const high = cell("600 kcmil", "2/0 AWG", "bonding-conductor");
    expect(refused(low, high)).toEqual([["out-of-order", "amendments[0].size"]]);
    expect(refused(high, low)).toEqual([["out-of-order", "amendments[0].size"]]);
  });

  it("is refused wherever it stands among others", () => {
    const floor: Amendment = { kind: "floor", role: "main-bonding-jumper", copper: "2 AWG", citation };
    const missing = cell("4 AWG", "4 AWG");
    expect(refused(floor, missing)).toEqual([["unknown-value", "amendments[1].row"]]);
    expect(refused(missing, floor, missing)).toEqual([
      ["unknown-value", "amendments[0].row"],
      ["unknown-value", "amendments[2].row"],
    ]);
    expect(refused(cell("1100 kcmil", "3/0 AWG"), missing, cell("last", "2 AWG"))).toEqual([
      ["out-of-order", "amendments[0].size"],
      ["unknown-value", "amendments[1].row"],
    ]);
  });

  it("is refused once for each column that does not rise, also under a condition", () => {
    const inAluminum = { ...cell("2 AWG", "2 AWG"), column: "aluminum" } as Amendment;
    const onRoofs = { ...cell("last", "2 AWG"), when: { location: "rooftop" } } as Amendment;
    expect(refused(cell("2 AWG", "1 AWG"), onRoofs, inAluminum)).toEqual([
      ["out-of-order", "amendments[0].size"],
      ["out-of-order", "amendments[2].size"],
    ]);
    expect(refused(onRoofs)).toEqual([["out-of-order", "amendments[0].size"]]);
    expect(refused(cell(60, "6 AWG", "equipment-grounding"), cell("2 AWG", "1 AWG"))).toHaveLength(2);
  });
});

describe("amended cells under conditions", () => {
  const when = (amendment: Amendment, location: string): Amendment => ({ ...amendment, when: { location } });

  it("are taken where no two that clash can apply together", () => {
    const inVaults = (row: string, size: string) => when(cell(row, size), "vault");
    expect(
      refused(
        when(cell("350 kcmil", "2/0 AWG"), "rooftop"),
        inVaults("350 kcmil", "2 AWG"),
        cell("600 kcmil", "2/0 AWG"),
        inVaults("600 kcmil", "1/0 AWG"),
      ),
    ).toEqual([]);
  });

  it("are refused where one of them alone would break the order", () => {
    const larger = cell("600 kcmil", "2/0 AWG");
    const smaller = cell("350 kcmil", "2/0 AWG");
    expect(refused(smaller, larger)).toEqual([]);
    expect(refused(when(smaller, "rooftop"), when(larger, "rooftop"))).toEqual([]);
    expect(refused(when(smaller, "rooftop"), larger)).toEqual([]);
    expect(refused(smaller, when(larger, "rooftop"))).toEqual([["out-of-order", "amendments[0].size"]]);
    expect(refused(when(smaller, "rooftop"), when(larger, "vault"))).toHaveLength(1);
  });

  it("count from the last one without a condition on", () => {
    const broken = cell("350 kcmil", "2/0 AWG");
    const mended = cell("350 kcmil", "1 AWG");
    expect(refused(broken, mended)).toEqual([]);
    expect(refused(mended, broken)).toEqual([["out-of-order", "amendments[1].size"]]);
    expect(refused(broken, when(mended, "rooftop"))).toHaveLength(1);
  });
});

describe("cells written by hand", () => {
  const backwards = [cell("last", "8 AWG")];
  const supply = { sets: [{ count: 1, size: "1000 kcmil", material: "copper" }] } as const;
  const conductor = { material: "copper" } as const;

  it("are refused by every function that takes a code", () => {
    const code = { year, amendments: backwards } as const;
    const asked = [
      () => size(mainBondingJumper, { code, supply, conductor }),
      () => prepare(mainBondingJumper, { code, supplyMaterial: "copper", conductor: { material: "copper" } }),
      () => size(cableTrayAsEquipmentGroundingConductor, { code, amperes: 100, metal: "steel" }),
      () =>
        largestDevice(equipmentGroundingConductor, {
          code,
          conductor: { size: "4 AWG", material: "copper" },
        }),
      () =>
        arrangementsOf(systemBondingJumper, {
          code,
          source: { id: "T1", outdoors: false },
          enclosures: [{ id: "P1", supply }],
          conductor,
        }),
    ];
    for (const ask of asked) expect(ask).toThrow(/^code\.amendments\[0\]\.size: /);
  });

  it("may be changed after a call without a trace in the next one", () => {
    const amendments = [{ ...cell("1100 kcmil", "3/0 AWG") }] as { size: string }[];
    const sized = () =>
      size(groundingElectrodeConductor, {
        code: { year, amendments: amendments as unknown as readonly Amendment[] },
        system: "service",
        supply,
        conductor,
        electrodes: [{ kind: "metal-water-pipe" }],
      }).outcome;
    expect(sized()).toMatchObject({ size: "3/0 AWG" });
    for (const one of amendments) one.size = "8 AWG";
    expect(sized).toThrow(InputError);
  });
});

describe("the prepared path", () => {
  const prepared = (amendment: Amendment) => () =>
    prepare(mainBondingJumper, {
      code: amend({ year }, amendment),
      supplyMaterial: "copper",
      conductor: { material: "copper" },
    });

  it("takes amended cells, and refuses what only the full path lays over a result", () => {
    const path = prepared(cell("1100 kcmil", "3/0 AWG", "bonding-conductor"))();
    expect(path.kind === "by-area" && path.requiredArea(1_000_000)).toBe(167_800);
    const role = "main-bonding-jumper";
    const beyond: readonly Amendment[] = [
      { kind: "floor", role, copper: "2 AWG", citation },
      { kind: "material", role, material: "aluminum", citation },
      { kind: "always-wire", role: "equipment-grounding-conductor", citation },
      { kind: "basis", role: "grounded-conductor", use: "equipment-grounding-table", citation },
    ];
    for (const one of beyond) expect(prepared(one)).toThrow(InputError);
  });
});

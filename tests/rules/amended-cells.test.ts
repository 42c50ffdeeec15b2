import {
  type Amendment,
  amend,
  InputError,
  prepareMainBondingJumper,
  sizeEquipmentGroundingConductor,
  sizeGroundingElectrodeConductor,
} from "bondmil";
import { describe, expect, it } from "vitest";

/** Every amendment here is invented. */
const citation = { jurisdiction: "Nowhere", section: "Sec. 1" };
const year = "2020";
const electrode = (amendment?: Amendment, sets = 3) =>
  sizeGroundingElectrodeConductor({
    code: amendment === undefined ? { year } : amend({ year }, amendment),
    of: "service",
    supply: { sets: [{ count: sets, size: "500 kcmil", material: "copper" }] },
    conductor: { material: "copper" },
    electrodes: [{ kind: "metal-water-pipe" }],
  }).outcome;
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

  it("of one table leaves the other alone", () => {
    expect(electrode(cell("1100 kcmil", "3/0 AWG", "bonding-conductor"), 2)).toEqual(electrode(undefined, 2));
  });

  it("of a rating changes that rating alone", () => {
    const code = amend({ year }, cell(60, "8 AWG", "equipment-grounding"));
    const size = (amperes: number) =>
      sizeEquipmentGroundingConductor({
        code,
        circuits: [{ device: { amperes } }],
        conductor: { material: "copper" },
      }).outcome;
    expect([size(60), size(20), size(100), size(200)]).toMatchObject([
      { size: "8 AWG" },
      { size: "12 AWG" },
      { size: "8 AWG" },
      { size: "6 AWG" },
    ]);
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

describe("the prepared path", () => {
  const prepared = (amendment: Amendment) => () =>
    prepareMainBondingJumper({ code: amend({ year }, amendment), supply: "copper", jumper: "copper" });

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

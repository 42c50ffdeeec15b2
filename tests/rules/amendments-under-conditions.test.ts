import {
  type Amendment,
  amend,
  type Code,
  type EditionYear,
  largestSupplyFor,
  type Material,
  type SizingResult,
  type StandardSize,
  sizeElectrodeBondingJumper,
  sizeEquipmentGroundingConductor,
  sizeGroundedConductor,
  sizeGroundingElectrodeConductor,
  sizeMainBondingJumper,
  sizeSupplySideBondingJumper,
} from "bondmil";
import { describe, expect, it } from "vitest";

/** Every amendment here is invented. */
const citation = { jurisdiction: "Nowhere", section: "Sec. 1" };
const cited = "Nowhere, Sec. 1";
const onRoofs = { location: "rooftop" } as const;
const sets = (count: number, size: StandardSize, material: Material = "copper") => ({
  sets: [{ count, size, material }],
});
const unknown = [{ code: "amendment-condition-unknown", section: cited }];
const notMet = [{ code: "amendment-condition-not-met", section: cited }];
const inForce = [{ code: "amended", section: cited }];
const said = ({ cautions }: Pick<SizingResult, "cautions">) =>
  cautions.filter(({ section }) => section === cited);

const jumper = (code: Code, count: number, size: StandardSize, material: Material = "copper") =>
  sizeMainBondingJumper({ code, supply: sets(count, size), jumper: { material } });
const equipment = (code: Code, amperes: number, material: Material = "copper") =>
  sizeEquipmentGroundingConductor({ code, circuits: [{ device: { amperes } }], conductor: { material } });
const electrode = (code: Code, count: number, size: StandardSize) =>
  sizeGroundingElectrodeConductor({
    code,
    of: "service",
    supply: sets(count, size),
    conductor: { material: "copper" },
    electrodes: [{ kind: "metal-water-pipe" }],
  });

describe("a cell under a condition", () => {
  const cell = (table: string, row: string | number, size: string, year: EditionYear = "2020"): Code =>
    amend({ year }, {
      kind: "cell",
      table,
      row,
      column: "copper",
      size,
      when: onRoofs,
      citation,
    } as unknown as Amendment);
  const at = (code: Code, location: string): Code => ({ ...code, circumstances: { location } });

  it("leaves the result as printed and says so, where the row is read", () => {
    const code = cell("bonding-conductor", "350 kcmil", "1/0 AWG");
    const open = jumper(code, 1, "250 kcmil");
    expect(open.outcome).toMatchObject({ size: "2 AWG" });
    expect(said(open)).toEqual(unknown);
    expect(said(jumper(at(code, "indoors"), 1, "250 kcmil"))).toEqual(notMet);
    const met = jumper(at(code, "rooftop"), 1, "250 kcmil");
    expect(met.outcome).toMatchObject({ size: "1/0 AWG" });
    expect(said(met)).toEqual([]);
  });

  it("has nothing to say of other rows, of the other metal, or of another table", () => {
    const code = cell("bonding-conductor", "350 kcmil", "1/0 AWG");
    expect(said(jumper(code, 1, "3/0 AWG"))).toEqual([]);
    expect(said(jumper(code, 1, "500 kcmil"))).toEqual([]);
    expect(said(jumper(code, 3, "500 kcmil"))).toEqual([]);
    expect(said(jumper(code, 1, "250 kcmil", "aluminum"))).toEqual([]);
    expect(said(electrode(code, 1, "250 kcmil"))).toEqual([]);
    expect(said(equipment(code, 400))).toEqual([]);
    expect(said(electrode(cell("electrode-conductor", "350 kcmil", "1/0 AWG"), 1, "250 kcmil"))).toEqual(
      unknown,
    );
  });

  it("is seen by the column that the supply enters", () => {
    const code = cell("bonding-conductor", "350 kcmil", "1/0 AWG");
    const onAluminum = (size: StandardSize) =>
      said(
        sizeMainBondingJumper({
          code,
          supply: sets(1, size, "aluminum"),
          jumper: { material: "copper" },
        }),
      );
    expect(onAluminum("500 kcmil")).toEqual(unknown);
    expect(onAluminum("250 kcmil")).toEqual([]);
  });

  it("is seen where another amendment has changed the same cell, or another one", () => {
    const first = { jurisdiction: "Nowhere", section: "Sec. 0" };
    for (const row of ["350 kcmil", "600 kcmil"]) {
      const other = {
        kind: "cell",
        table: "bonding-conductor",
        row,
        column: "copper",
        size: "1/0 AWG",
        citation: first,
      } as const;
      const code = amend(
        { year: "2020" },
        other,
        ...(cell("bonding-conductor", "350 kcmil", "1/0 AWG").amendments ?? []),
      );
      expect(said(jumper(code, 1, "250 kcmil"))).toEqual(unknown);
    }
  });

  it("of the open last row is seen where that row, or the floor from it, is read", () => {
    const last = (year: EditionYear) => cell("electrode-conductor", "last", "4/0 AWG", year);
    expect(said(electrode(last("2020"), 3, "500 kcmil"))).toEqual(unknown);
    expect(said(electrode(last("2020"), 2, "500 kcmil"))).toEqual([]);
    // Through 2011 the jumpers go by the same table, whose last row is a floor under 12.5 percent.
    expect(said(jumper(last("2011"), 3, "500 kcmil"))).toEqual(unknown);
    expect(said(jumper(last("2011"), 2, "500 kcmil"))).toEqual([]);
    const bounded = cell("electrode-conductor", "1100 kcmil", "3/0 AWG", "2011");
    expect(said(jumper(bounded, 3, "500 kcmil"))).toEqual([]);
    expect(said(jumper(bounded, 2, "500 kcmil"))).toEqual(unknown);
  });

  it("is not taken for a least size that another sentence names", () => {
    const neutral = sizeGroundedConductor({
      code: cell("electrode-conductor", "last", "4/0 AWG"),
      system: "service",
      scope: "raceway",
      supply: sets(1, "3/0 AWG"),
      conductor: { material: "copper" },
    });
    expect(neutral.steps.map(({ kind }) => kind)).toContain("floor");
    expect(said(neutral)).toEqual([]);
  });

  it("of a table that the edition lacks has nothing to say", () => {
    const { amendments } = cell("bonding-conductor", "350 kcmil", "1/0 AWG");
    expect(said(jumper({ year: "2011", ...(amendments && { amendments }) }, 1, "250 kcmil"))).toEqual([]);
  });

  it("of a rating is seen beside an increase", () => {
    const found = sizeEquipmentGroundingConductor({
      code: cell("equipment-grounding", 60, "8 AWG"),
      circuits: [
        {
          device: { amperes: 60 },
          conductors: sets(1, "4 AWG"),
          increasedFrom: { conductors: sets(1, "6 AWG"), reason: "voltage-drop" },
        },
      ],
      conductor: { material: "copper" },
    });
    expect(found.steps.length).toBeGreaterThan(2);
    expect(said(found)).toEqual(unknown);
  });

  it("of a rating is seen at that rating alone", () => {
    const code = cell("equipment-grounding", 400, "2 AWG");
    expect(said(equipment(code, 350))).toEqual(unknown);
    expect(said(equipment(code, 300))).toEqual([]);
    expect(said(equipment(code, 350, "aluminum"))).toEqual([]);
    expect(said(jumper(code, 1, "250 kcmil"))).toEqual([]);
  });
});

describe("a reading that a jurisdiction enforces", () => {
  const reading = (alternative: string, when?: object, more: Partial<Code> = {}): Code => ({
    ...amend({ year: "2020" }, {
      kind: "reading",
      reading: "cap-on-small-supplies",
      alternative,
      ...(when && { when }),
      citation,
    } as Amendment),
    ...more,
  });
  const small = (code: Code) => jumper(code, 1, "10 AWG");

  it("is cited where it decides, and nowhere else", () => {
    const code = reading("large-supplies-only");
    expect(small(code)).toMatchObject({ requiredArea: 16_510 });
    expect(said(small(code))).toEqual(inForce);
    expect(said(jumper(code, 1, "250 kcmil"))).toEqual([]);
    expect(said(equipment(code, 60))).toEqual([]);
  });

  it("is said to be open where its condition is not told and would change the answer", () => {
    const code = reading("large-supplies-only", onRoofs);
    expect(small(code)).toMatchObject({ requiredArea: 10_380 });
    expect(said(small(code))).toEqual(unknown);
    expect(said(small({ ...code, circumstances: { location: "indoors" } }))).toEqual(notMet);
    expect(said(jumper(code, 1, "250 kcmil"))).toEqual([]);
  });

  it("has nothing to say where it would choose what is chosen anyway", () => {
    expect(said(small(reading("every-supply", onRoofs)))).toEqual([]);
  });

  it("has nothing to say where another reading decides", () => {
    const code = amend(
      { year: "2020" },
      {
        kind: "reading",
        reading: "copper-clad-to-rods",
        alternative: "as-aluminum",
        when: onRoofs,
        citation,
      },
    );
    expect(small(code).readings.map(({ id }) => id)).toEqual(["cap-on-small-supplies"]);
    expect(said(small(code))).toEqual([]);
  });

  it("has nothing to say where the code chooses for itself", () => {
    const readings = { "cap-on-small-supplies": "every-supply" } as const;
    expect(said(small(reading("large-supplies-only", undefined, { readings })))).toEqual([]);
    expect(said(small(reading("large-supplies-only", onRoofs, { readings })))).toEqual([]);
  });

  it("yields to a later one", () => {
    const code = amend(reading("large-supplies-only"), {
      kind: "reading",
      reading: "cap-on-small-supplies",
      alternative: "every-supply",
      citation: { jurisdiction: "Nowhere", section: "Sec. 2" },
    });
    expect(said(small(code))).toEqual([]);
    expect(small(code).cautions).toContainEqual({ code: "amended", section: "Nowhere, Sec. 2" });
  });
});

describe("the largest supply under amendments of tables and readings", () => {
  const largest = (amendment: Amendment, size: StandardSize, circumstances?: Code["circumstances"]) =>
    largestSupplyFor({
      code: { ...amend({ year: "2020" }, amendment), ...(circumstances && { circumstances }) },
      role: "main-bonding-jumper",
      jumper: { size, material: "copper" },
      supplyMaterial: "copper",
    });
  const cell = {
    kind: "cell",
    table: "bonding-conductor",
    row: "350 kcmil",
    column: "copper",
    size: "1/0 AWG",
    citation,
  } as const;

  it("says which of them decide, or would", () => {
    expect(largest(cell, "2 AWG")).toMatchObject({ largest: 167_800, cautions: inForce });
    const open = { ...cell, when: onRoofs };
    expect(largest(open, "2 AWG")).toMatchObject({ largest: 350_000, cautions: unknown });
    expect(largest(open, "2 AWG", { location: "indoors" }).cautions).toEqual(notMet);
    expect(largest(open, "4 AWG").cautions).toEqual([]);
    expect(largest(cell, "4 AWG").cautions).toEqual([]);
  });

  it("says so of a reading too", () => {
    const reading = {
      kind: "reading",
      reading: "cap-on-small-supplies",
      alternative: "large-supplies-only",
      citation,
    } as const;
    expect(largest(reading, "10 AWG")).toMatchObject({ largest: null, cautions: inForce });
    expect(largest({ ...reading, when: onRoofs }, "10 AWG")).toMatchObject({
      largest: 10_380,
      cautions: unknown,
    });
    expect(largest(reading, "2 AWG").cautions).toEqual([]);
  });

  it("says it once for an amendment of a role", () => {
    const floor = { kind: "floor", role: "main-bonding-jumper", copper: "4 AWG", citation } as const;
    expect(largest(floor, "6 AWG").cautions).toEqual(inForce);
  });

  it("leaves the other amendments in force while it tries one", () => {
    const other = { ...cell, row: "600 kcmil", citation: { jurisdiction: "Nowhere", section: "Sec. 2" } };
    const found = largestSupplyFor({
      code: amend({ year: "2020" }, cell, other),
      role: "main-bonding-jumper",
      jumper: { size: "2 AWG", material: "copper" },
      supplyMaterial: "copper",
    });
    expect(found.cautions).toEqual(inForce);
  });
});

describe("amendments of one section", () => {
  it("are each said: one that is not met is not silenced by one that is", () => {
    const floors = amend(
      { year: "2020", circumstances: { location: "rooftop" } },
      { kind: "floor", role: "main-bonding-jumper", copper: "1/0 AWG", when: onRoofs, citation },
      {
        kind: "floor",
        role: "main-bonding-jumper",
        copper: "2/0 AWG",
        when: { location: "vault" },
        citation,
      },
    );
    expect(said(jumper(floors, 1, "3/0 AWG"))).toEqual(notMet);
  });
});

describe("amendments of another role", () => {
  it("lift no increase and require no wire", () => {
    const basis = (role: "equipment-grounding-conductor" | "main-bonding-jumper", use: "no-increase") =>
      amend({ year: "2020" }, { kind: "basis", role, use, citation });
    const increased = (code: Code) =>
      sizeEquipmentGroundingConductor({
        code,
        circuits: [
          {
            device: { amperes: 60 },
            conductors: sets(1, "4 AWG"),
            increasedFrom: { conductors: sets(1, "6 AWG"), reason: "voltage-drop" },
          },
        ],
        conductor: { material: "copper" },
      }).governs;
    expect(increased(basis("main-bonding-jumper", "no-increase"))).toBe("increase");
    const onOtherTable = amend(
      { year: "2020" },
      {
        kind: "basis",
        role: "equipment-grounding-conductor",
        use: "equipment-grounding-table",
        citation,
      },
    );
    expect(increased(onOtherTable)).toBe("increase");
  });

  it("leave a metal raceway to serve", () => {
    const serves = (role: "supply-side-bonding-jumper" | "equipment-grounding-conductor") =>
      sizeSupplySideBondingJumper({
        code: amend({ year: "2020" }, { kind: "always-wire", role, citation }),
        supply: sets(1, "3/0 AWG"),
        jumper: { material: "copper" },
        instead: "nonflexible-metal-raceway",
      }).outcome.kind;
    expect(serves("equipment-grounding-conductor")).toBe("not-required");
    expect(serves("supply-side-bonding-jumper")).toBe("conductor");
  });

  it("lift the ceiling of a supplemental rod where they name it", () => {
    const lifted = (kind?: "rod" | "plate") =>
      sizeElectrodeBondingJumper({
        code: amend(
          { year: "2020" },
          {
            kind: "basis",
            role: "electrode-bonding-jumper",
            use: "no-electrode-ceiling",
            ...(kind && { electrode: kind }),
            citation,
          },
        ),
        supply: sets(1, "500 kcmil"),
        jumper: { material: "copper" },
        to: [{ kind: "rod" }],
        supplemental: true,
      }).outcome;
    expect(lifted("plate")).toMatchObject({ size: "6 AWG" });
    expect(lifted("rod")).toMatchObject({ size: "1/0 AWG" });
    expect(lifted()).toMatchObject({ size: "1/0 AWG" });
  });
});

import {
  type Amendment,
  amend,
  type Code,
  type EditionYear,
  equipmentBondingJumper,
  equipmentGroundingConductor,
  groundedConductor,
  groundingElectrodeConductor,
  largestSupply,
  type Material,
  mainBondingJumper,
  type SizingResult,
  type StandardSize,
  size,
  waterPipingBondingJumper,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { one } from "../roles/electrode/asked.js";

/** Every amendment here is invented. */
const citation = { jurisdiction: "Nowhere", section: "Sec. 1" };
const cited = "Nowhere, Sec. 1";
const onRoofs = { location: "rooftop" } as const;
const unknown = [{ code: "amendment-condition-unknown", section: cited }];
const notMet = [{ code: "amendment-condition-not-met", section: cited }];
const inForce = [{ code: "amended", section: cited }];
const said = ({ cautions }: Pick<SizingResult, "cautions">) =>
  cautions.filter(({ section }) => section === cited);

const jumper = (code: Code, count: number, installed: StandardSize, material: Material = "copper") =>
  size(mainBondingJumper, { code, supply: one(count, installed), conductor: { material } });
const equipment = (code: Code, amperes: number, material: Material = "copper") =>
  size(equipmentGroundingConductor, { code, circuits: [{ device: { amperes } }], conductor: { material } });
const electrode = (code: Code, count: number, installed: StandardSize) =>
  size(groundingElectrodeConductor, {
    code,
    system: "service",
    supply: one(count, installed),
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
    const onAluminum = (installed: StandardSize) =>
      said(
        size(mainBondingJumper, {
          code,
          supply: one(1, installed, "aluminum"),
          conductor: { material: "copper" },
        }),
      );
    expect(onAluminum("500 kcmil")).toEqual(unknown);
    expect(onAluminum("250 kcmil")).toEqual([]);
  });

  it.each([
    ["350 kcmil", "1 AWG", unknown],
    ["350 kcmil", "1/0 AWG", []],
    ["600 kcmil", "1/0 AWG", unknown],
  ] as const)("is seen where it would change what another made of %s, %s", (row, size, expected) => {
    const other = {
      kind: "cell",
      table: "bonding-conductor",
      row,
      column: "copper",
      size,
      citation: { jurisdiction: "Nowhere", section: "Sec. 0" },
    } as const;
    const { amendments = [] } = cell("bonding-conductor", "350 kcmil", "1/0 AWG");
    expect(said(jumper(amend({ year: "2020" }, other, ...amendments), 1, "250 kcmil"))).toEqual(expected);
  });

  it("has nothing to say where a limit decides, with it or without", () => {
    const underFeeder = (feeder: StandardSize) =>
      size(waterPipingBondingJumper, {
        code: cell("equipment-grounding", 200, "4 AWG"),
        system: "building",
        supply: one(1, feeder),
        deviceAmperes: 200,
        conductor: { material: "copper" },
      });
    expect(said(underFeeder("6 AWG"))).toEqual([]);
    expect(said(underFeeder("3/0 AWG"))).toEqual(unknown);
  });

  it("is seen in what a grounded conductor owes to a device beside the table", () => {
    const neutral = (device: number) =>
      size(groundedConductor, {
        code: cell("equipment-grounding", 400, "2 AWG"),
        system: "service",
        supply: one(1, "3/0 AWG"),
        conductor: { material: "copper" },
        rebondedAtBuildingWithDevice: device,
      });
    expect(said(neutral(400))).toEqual(unknown);
    expect(said(neutral(300))).toEqual([]);
  });

  it("is seen in a circuit that would decide if it were in force", () => {
    const increased = (amperes: number, size: StandardSize, from: StandardSize) =>
      ({
        device: { amperes },
        conductors: one(1, size),
        increasedFrom: { conductors: one(1, from), reason: "voltage-drop" },
      }) as const;
    const found = size(equipmentGroundingConductor, {
      code: cell("equipment-grounding", 60, "8 AWG"),
      circuits: [{ device: { amperes: 100 } }, increased(60, "6 AWG", "8 AWG")],
      conductor: { material: "copper" },
    });
    // 8 AWG of the 100 A circuit decides; 8 AWG times 26,240 / 16,510 would be more.
    expect(found.outcome).toMatchObject({ size: "8 AWG" });
    expect(said(found)).toEqual(unknown);
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

  it("is not taken for a minimum size that another sentence names", () => {
    const neutral = size(groundedConductor, {
      code: cell("electrode-conductor", "last", "4/0 AWG"),
      system: "service",
      scope: "raceway",
      supply: one(1, "3/0 AWG"),
      conductor: { material: "copper" },
    });
    expect(neutral.steps.map(({ kind }) => kind)).toContain("floor");
    expect(said(neutral)).toEqual([]);
  });

  it("of a table that the edition lacks is refused", () => {
    const { amendments } = cell("bonding-conductor", "350 kcmil", "1/0 AWG");
    const under2011 = () => jumper({ year: "2011", ...(amendments && { amendments }) }, 1, "250 kcmil");
    expect(under2011).toThrow(/code.amendments\[0\].row: .*bonding-conductor table of 2011/);
  });

  it("of a rating is seen beside an increase", () => {
    const found = size(equipmentGroundingConductor, {
      code: cell("equipment-grounding", 60, "8 AWG"),
      circuits: [
        {
          device: { amperes: 60 },
          conductors: one(1, "4 AWG"),
          increasedFrom: { conductors: one(1, "6 AWG"), reason: "voltage-drop" },
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

  it("wins over what the code chooses, and says so", () => {
    const readings = { "cap-on-small-supplies": "every-supply" } as const;
    const conflict = small(reading("large-supplies-only", undefined, { readings }));
    expect(conflict).toMatchObject({ requiredArea: 16_510, readings: [] });
    expect(said(conflict)).toEqual([
      ...inForce,
      { code: "enforced-reading-overrules-chosen", section: cited },
    ]);
    const large = jumper(reading("large-supplies-only", undefined, { readings }), 1, "250 kcmil");
    expect(said(large)).toEqual([]);
    const floor = { kind: "floor", role: "main-bonding-jumper", copper: "3/0 AWG", citation } as const;
    const other = { ...citation, section: "Sec. 2" };
    const raised = jumper(
      amend(reading("large-supplies-only", undefined, { readings }), { ...floor, citation: other }),
      1,
      "250 kcmil",
    );
    expect(raised).toMatchObject({ governs: "floor", requiredArea: 167_800 });
    expect(said(raised)).toEqual([]);
    const open = small(reading("large-supplies-only", onRoofs, { readings }));
    expect(open).toMatchObject({ requiredArea: 10_380, readings: [{ chosen: "every-supply" }] });
    expect(said(open)).toEqual(unknown);
  });

  it("yields to a later one that chooses as the edition does", () => {
    const code = amend(reading("large-supplies-only"), {
      kind: "reading",
      reading: "cap-on-small-supplies",
      alternative: "every-supply",
      citation: { jurisdiction: "Nowhere", section: "Sec. 2" },
    });
    expect(small(code)).toMatchObject({ requiredArea: 10_380, readings: [] });
    expect(said(small(code))).toEqual([{ code: "amendment-superseded", section: cited }]);
  });

  it("is cited once where two jurisdictions enforce it, by the later", () => {
    const { amendments = [] } = reading("large-supplies-only");
    const earlier = { jurisdiction: "Nowhere", section: "Sec. 0" };
    const code = amend(
      { year: "2020" },
      ...amendments.map((one) => ({ ...one, citation: earlier })),
      ...amendments,
    );
    expect(small(code).cautions.filter(({ code: what }) => what === "amended")).toEqual(inForce);
  });
});

describe("the largest supply under amendments of tables and readings", () => {
  const largest = (amendment: Amendment, size: StandardSize, circumstances?: Code["circumstances"]) =>
    largestSupply(mainBondingJumper, {
      code: { ...amend({ year: "2020" }, amendment), ...(circumstances && { circumstances }) },
      conductor: { size, material: "copper" },
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
    const found = largestSupply(mainBondingJumper, {
      code: amend({ year: "2020" }, cell, other),
      conductor: { size: "2 AWG", material: "copper" },
      supplyMaterial: "copper",
    });
    expect(found.cautions).toEqual(inForce);
  });
});

describe("a cell of the table that another amendment sends a role to", () => {
  it("is seen there and not at another rating", () => {
    const code = amend(
      { year: "2020" },
      {
        kind: "basis",
        role: "main-bonding-jumper",
        use: "equipment-grounding-table",
        citation: { jurisdiction: "Nowhere", section: "Sec. 0" },
      },
      {
        kind: "cell",
        table: "equipment-grounding",
        row: 400,
        column: "copper",
        size: "2 AWG",
        when: onRoofs,
        citation,
      },
    );
    const found = (serviceAmperes: number) =>
      jumper({ ...code, circumstances: { serviceAmperes } }, 1, "3/0 AWG");
    expect(found(400)).toMatchObject({ outcome: { size: "3 AWG" } });
    expect(said(found(400))).toEqual(unknown);
    expect(said(found(300))).toEqual([]);
  });
});

describe("an amendment", () => {
  it("is tried with the others as they are", () => {
    const code = amend(
      { year: "2020" },
      {
        kind: "floor",
        role: "main-bonding-jumper",
        copper: "2/0 AWG",
        citation: { jurisdiction: "Nowhere", section: "Sec. 0" },
      },
      {
        kind: "cell",
        table: "bonding-conductor",
        row: "350 kcmil",
        column: "copper",
        size: "1/0 AWG",
        when: onRoofs,
        citation,
      },
    );
    expect(said(jumper(code, 1, "250 kcmil"))).toEqual([]);
  });

  it("takes away with it none that stands at another place", () => {
    const earlier = { jurisdiction: "Nowhere", section: "Sec. 0" };
    const cell = {
      kind: "cell",
      table: "bonding-conductor",
      row: "350 kcmil",
      column: "copper",
      size: "1/0 AWG",
    } as const;
    const reading = {
      kind: "reading",
      reading: "cap-on-small-supplies",
      alternative: "large-supplies-only",
    } as const;
    const floor = { kind: "floor", role: "main-bonding-jumper", copper: "2/0 AWG" } as const;
    const pairs: readonly (readonly [object, object, StandardSize])[] = [
      [cell, { ...cell, table: "electrode-conductor" }, "250 kcmil"],
      [cell, { ...cell, column: "aluminum" }, "250 kcmil"],
      [cell, { ...cell, row: "600 kcmil" }, "250 kcmil"],
      [floor, { ...cell, row: "600 kcmil" }, "250 kcmil"],
      [reading, { kind: "reading", reading: "copper-clad-to-rods", alternative: "as-aluminum" }, "10 AWG"],
    ];
    for (const [first, second, size] of pairs) {
      const amendments = [
        { ...first, citation: earlier },
        { ...second, citation },
      ] as unknown as readonly Amendment[];
      expect(said(jumper(amend({ year: "2020" }, ...amendments), 1, size))).toEqual([]);
    }
  });

  it("of another role is said where the result hangs on it", () => {
    const jumperOf = (amendments: NonNullable<Code["amendments"]>) =>
      size(equipmentBondingJumper, {
        code: { year: "2020", amendments },
        circuits: [
          {
            device: { amperes: 60 },
            conductors: one(1, "4 AWG"),
            increasedFrom: { conductors: one(1, "6 AWG"), reason: "voltage-drop" },
          },
        ],
        conductor: { material: "copper" },
      });
    const basis = {
      kind: "basis",
      role: "equipment-grounding-conductor",
      use: "no-increase",
      citation,
    } as const;
    expect(jumperOf([]).governs).toBe("increase");
    expect(jumperOf([basis]).governs).toBe("rating-row");
    expect(said(jumperOf([basis]))).toEqual(inForce);
    expect(said(jumperOf([{ ...basis, when: onRoofs }]))).toEqual(unknown);
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

import {
  type Amendment,
  amend,
  type Code,
  equipmentGroundingConductor,
  groundedConductor,
  groundingElectrodeConductor,
  InputError,
  type Material,
  mainBondingJumper,
  type StandardSize,
  type Supply,
  size,
  supplySideBondingJumper,
} from "bondmil";
import { describe, expect, it } from "vitest";

const sets = (count: number, size: StandardSize, material: Material = "copper"): Supply => ({
  sets: [{ count, size, material }],
});
const codesOf = ({ cautions }: { readonly cautions: readonly { readonly code: string }[] }) =>
  cautions.map(({ code }) => code);
const electrode = (
  code: Code,
  supply: Supply,
  kind: "concrete-encased" | "metal-water-pipe" | "rod" = "metal-water-pipe",
) =>
  size(groundingElectrodeConductor, {
    code,
    system: "service",
    supply,
    conductor: { material: "copper" },
    electrodes: [{ kind }],
  });
const upsized = (code: Code) =>
  size(equipmentGroundingConductor, {
    code,
    circuits: [
      {
        device: { amperes: 50 },
        conductors: sets(1, "4 AWG"),
        increasedFrom: { conductors: sets(1, "8 AWG"), reason: "voltage-drop" },
      },
    ],
    conductor: { material: "copper" },
  });

/** Local amendments as printed on the pages named; whether they are in force is for the reader to find out. */
const anchorage: Amendment = {
  kind: "basis",
  role: "equipment-grounding-conductor",
  use: "no-increase",
  when: { lengthBelowFeet: 100 },
  citation: {
    jurisdiction: "Anchorage",
    section: "AMC 23.30.250.122",
    url: "http://anchorage-ak.elaws.us/code/coor_title23_ch23.30_sec23.30.250.122",
  },
};
const thousandOaks: readonly Amendment[] = [
  {
    kind: "basis",
    role: "grounding-electrode-conductor",
    use: "no-electrode-ceiling",
    electrode: "concrete-encased",
    citation: { jurisdiction: "Thousand Oaks", section: "Sec. 8-10.07" },
  },
  {
    kind: "floor",
    role: "grounding-electrode-conductor",
    copper: "4 AWG",
    citation: { jurisdiction: "Thousand Oaks", section: "Sec. 8-10.07" },
  },
];
const henrietta: Amendment = {
  kind: "floor",
  role: "grounding-electrode-conductor",
  copper: "6 AWG",
  citation: { jurisdiction: "Henrietta", section: "Sec. 7-19(f)" },
};
const hagerstown: readonly Amendment[] = [
  {
    kind: "floor",
    role: "grounded-conductor",
    copper: "4 AWG",
    when: { serviceThroughAmperes: 100 },
    citation: { jurisdiction: "Hagerstown", section: "Ord. 7-1992" },
  },
  {
    kind: "floor",
    role: "grounded-conductor",
    copper: "2 AWG",
    when: { serviceFromAmperes: 200 },
    citation: { jurisdiction: "Hagerstown", section: "Ord. 7-1992" },
  },
];
const vancouver: Amendment = {
  kind: "always-wire",
  role: "equipment-grounding-conductor",
  when: { location: "rooftop" },
  citation: { jurisdiction: "Vancouver", section: "VMC 17.16.120" },
};
const texasCity: Amendment = {
  kind: "material",
  role: "every-role",
  material: "aluminum",
  allowedFrom: "2 AWG",
  citation: { jurisdiction: "A Texas city", section: "Ord. 11-3541" },
};
const lakeForest: Amendment = {
  kind: "material",
  role: "grounded-conductor",
  material: "aluminum",
  citation: { jurisdiction: "Lake Forest", section: "Sec. 150.296" },
};
const dunbar: Amendment = {
  kind: "basis",
  role: "supply-side-bonding-jumper",
  use: "equipment-grounding-table",
  citation: { jurisdiction: "Dunbar", section: "Ord. 564" },
};

describe("amendments that jurisdictions have made", () => {
  it("Anchorage: no increase in proportion below 100 ft", () => {
    const code = amend({ year: "2014" }, anchorage);
    const at = (lengthFeet: number) => upsized({ ...code, circumstances: { lengthFeet } });
    expect(at(90)).toMatchObject({ requiredArea: 10_380 });
    expect(codesOf(at(90))).toContain("amended");
    expect(at(110)).toMatchObject({ outcome: { size: "4 AWG" } });
    expect(codesOf(at(110))).toContain("amendment-condition-not-met");
    expect(upsized(code)).toMatchObject({ outcome: { size: "4 AWG" } });
    expect(codesOf(upsized(code))).toContain("amendment-condition-unknown");
  });

  it("Thousand Oaks: a concrete-encased electrode by the table, not below 4 AWG", () => {
    const code = amend({ year: "2020" }, ...thousandOaks);
    expect(electrode(code, sets(1, "600 kcmil"), "concrete-encased").outcome).toMatchObject({
      size: "1/0 AWG",
    });
    expect(electrode(code, sets(1, "2 AWG"), "concrete-encased")).toMatchObject({
      outcome: { size: "4 AWG" },
      governs: "floor",
    });
    expect(electrode(code, sets(1, "600 kcmil"), "rod").outcome).toMatchObject({ size: "4 AWG" });
  });

  it("Henrietta: not below 6 AWG, citing the section", () => {
    const result = electrode(amend({ year: "2017" }, henrietta), sets(1, "2 AWG"));
    expect(result).toMatchObject({ outcome: { size: "6 AWG" }, governs: "floor" });
    expect(result.steps.find(({ kind }) => kind === "floor")?.citation.section).toBe(
      "Henrietta, Sec. 7-19(f)",
    );
    expect(codesOf(result)).not.toContain("amended");
  });

  it("Hagerstown: a larger neutral by the rating of the service", () => {
    const code = amend({ year: "2008" }, ...hagerstown);
    const neutral = (serviceAmperes: number) =>
      size(groundedConductor, {
        code: { ...code, circumstances: { serviceAmperes } },
        system: "service",
        supply: sets(1, serviceAmperes === 200 ? "3/0 AWG" : "4 AWG"),
        conductor: { material: "copper" },
      }).outcome;
    expect([neutral(100), neutral(200)]).toMatchObject([{ size: "4 AWG" }, { size: "2 AWG" }]);
  });

  it("Vancouver: a wire in every conduit on a roof", () => {
    const code = amend({ year: "2017" }, vancouver);
    expect(codesOf(upsized({ ...code, circumstances: { location: "rooftop" } }))).toContain("always-wire");
    expect(codesOf(upsized({ ...code, circumstances: { location: "basement" } }))).toContain(
      "amendment-condition-not-met",
    );
  });

  it("a Texas city: aluminum from 2 AWG only", () => {
    const code = amend({ year: "2014" }, texasCity);
    const jumper = (material: Material) =>
      size(mainBondingJumper, { code, supply: sets(1, "1/0 AWG"), conductor: { material } });
    expect(jumper("aluminum")).toMatchObject({ outcome: { size: "2 AWG" }, governs: "floor" });
    expect(jumper("copper").outcome).toMatchObject({ size: "6 AWG" });
  });

  it("Lake Forest: no aluminum, said and sized", () => {
    const code = amend({ year: "2008" }, lakeForest);
    const neutral = (material: Material) =>
      size(groundedConductor, {
        code,
        system: "service",
        supply: sets(1, "3/0 AWG"),
        conductor: { material },
      });
    expect(codesOf(neutral("aluminum"))).toContain("material-forbidden");
    expect(codesOf(neutral("copper"))).not.toContain("material-forbidden");
  });

  it("Dunbar: the jumper of a service conduit by the table of equipment grounding conductors", () => {
    const code = amend({ year: "2008" }, dunbar);
    const jumper = (known: Code) =>
      size(supplySideBondingJumper, {
        code: known,
        supply: sets(1, "3/0 AWG"),
        conductor: { material: "copper" },
      });
    const known = jumper({ ...code, circumstances: { serviceAmperes: 200 } });
    expect(known).toMatchObject({
      outcome: { size: "6 AWG" },
      governs: "rating-row",
      citation: { section: "Dunbar, Ord. 564" },
    });
    expect(jumper(code).outcome).toMatchObject({ size: "4 AWG" });
    expect(codesOf(jumper(code))).toContain("amendment-condition-unknown");
  });
});

describe("other kinds", () => {
  const citation = { jurisdiction: "Example County", section: "Sec. 1" };

  it("a wire in place of a metal raceway on the supply side", () => {
    const code = amend(
      { year: "2020" },
      { kind: "always-wire", role: "supply-side-bonding-jumper", citation },
    );
    const jumper = (known: Code) =>
      size(supplySideBondingJumper, {
        code: known,
        supply: sets(1, "3/0 AWG"),
        conductor: { material: "copper" },
        instead: "nonflexible-metal-raceway",
      }).outcome.kind;
    expect([jumper({ year: "2020" }), jumper(code)]).toEqual(["not-required", "conductor"]);
  });

  it("a cell, cited by the row that reads it", () => {
    const code = amend(
      { year: "2023" },
      { kind: "cell", table: "electrode-conductor", row: "2 AWG", column: "copper", size: "6 AWG", citation },
    );
    const result = electrode(code, sets(1, "4 AWG"));
    expect(result.outcome).toMatchObject({ size: "6 AWG" });
    expect(result.steps.find(({ kind }) => kind === "row")?.citation.section).toBe(
      "Table 250.66 as amended by Example County, Sec. 1",
    );
    const rated = amend(
      { year: "2023" },
      { kind: "cell", table: "equipment-grounding", row: 400, column: "copper", size: "2 AWG", citation },
    );
    const grounding = size(equipmentGroundingConductor, {
      code: rated,
      circuits: [{ device: { amperes: 350 } }],
      conductor: { material: "copper" },
    });
    expect(grounding.outcome).toMatchObject({ size: "2 AWG" });
  });

  it("a reading", () => {
    const code = amend(
      { year: "2020" },
      { kind: "reading", reading: "cap-on-small-supplies", alternative: "large-supplies-only", citation },
    );
    const jumper = (known: Code) =>
      size(mainBondingJumper, { code: known, supply: sets(1, "10 AWG"), conductor: { material: "copper" } })
        .requiredArea;
    expect([jumper({ year: "2020" }), jumper(code)]).toEqual([10_380, 16_510]);
  });

  it("leaves the given code alone", () => {
    const before: Code = Object.freeze({ year: "2020" });
    expect(amend(before, henrietta).amendments).toHaveLength(1);
    expect(before).toEqual({ year: "2020" });
    expect(amend(amend(before, henrietta), vancouver).amendments).toHaveLength(2);
  });
});

describe("amendments that are refused", () => {
  const citation = { jurisdiction: "X", section: "1" };
  it.each([
    [
      { kind: "cell", table: "electrode-conductor", row: "2 AWG", column: "copper", size: "1 AWG", citation },
      "out-of-order",
      "amendments[0].size",
    ],
    [
      {
        kind: "cell",
        table: "electrode-conductor",
        row: "5 kcmil",
        column: "copper",
        size: "8 AWG",
        citation,
      },
      "unknown-value",
      "amendments[0].row",
    ],
    [
      { kind: "cell", table: "equipment-grounding", row: 401, column: "copper", size: "2 AWG", citation },
      "unknown-value",
      "amendments[0].row",
    ],
    [
      { kind: "cell", table: "bonding-conductor", row: "last", column: "copper", size: "3/0 AWG", citation },
      "unknown-value",
      "amendments[0].row",
    ],
    [{ kind: "floor", role: "grounded-conductor", citation }, "missing", "amendments[0]"],
    [{ kind: "floor", role: "neutral", copper: "4 AWG", citation }, "unknown-value", "amendments[0].role"],
    [{ kind: "ban", citation }, "unknown-value", "amendments[0].kind"],
    [{ kind: "always-wire", role: "grounded-conductor" }, "missing", "amendments[0].citation"],
    [
      { kind: "always-wire", role: "grounded-conductor", citation, when: { floor: 3 } },
      "unknown-key",
      "amendments[0].when.floor",
    ],
    [
      { kind: "reading", reading: "cap-in-2014", alternative: "perhaps", citation },
      "unknown-value",
      "amendments[0].alternative",
    ],
    [
      { kind: "basis", role: "main-bonding-jumper", use: "no-increase", citation },
      "unknown-value",
      "amendments[0].role",
    ],
    [
      { kind: "basis", role: "grounded-conductor", use: "no-electrode-ceiling", citation },
      "unknown-value",
      "amendments[0].role",
    ],
    [
      { kind: "basis", role: "equipment-grounding-conductor", use: "equipment-grounding-table", citation },
      "unknown-value",
      "amendments[0].role",
    ],
    [
      {
        kind: "basis",
        role: "grounding-electrode-conductor",
        use: "no-electrode-ceiling",
        electrode: "metal-water-pipe",
        citation,
      },
      "unknown-value",
      "amendments[0].electrode",
    ],
    [
      {
        kind: "basis",
        role: "grounding-electrode-conductor",
        use: "equipment-grounding-table",
        electrode: "rod",
        citation,
      },
      "unknown-key",
      "amendments[0].electrode",
    ],
    [
      { kind: "material", role: "intersystem-bonding-conductor", material: "aluminum", citation },
      "unknown-value",
      "amendments[0].material",
    ],
    [
      { kind: "floor", role: "intersystem-bonding-conductor", aluminum: "4 AWG", citation },
      "unknown-value",
      "amendments[0].aluminum",
    ],
  ])("%j is %s at %s", (amendment, code, path) => {
    let issues: unknown;
    try {
      amend({ year: "2017" }, amendment as never);
    } catch (error) {
      if (error instanceof InputError) issues = error.issues;
    }
    expect(issues).toMatchObject([{ code, path }]);
  });

  it("refuses a service beyond the end of the table that an amendment in force goes by", () => {
    const at = (serviceAmperes: number, when?: Amendment["when"]) =>
      amend({ year: "2020", circumstances: { serviceAmperes } }, { ...dunbar, ...(when && { when }) });
    expect(() => at(6001)).toThrow(/^circumstances\.serviceAmperes: expected at most 6000 A/);
    expect(at(6000).amendments).toHaveLength(1);
    expect(at(7000, { serviceThroughAmperes: 400 }).amendments).toHaveLength(1);
  });

  it("refuses more than anybody makes, and what is no code", () => {
    expect(() => amend({ year: "2020" }, ...Array<Amendment>(101).fill(henrietta))).toThrow(
      /at most 100 items/,
    );
    for (const none of [undefined, null, 3, []]) expect(() => amend(none as never)).toThrow(InputError);
    expect(() => amend({ year: "2020", amendments: 3 as never }, henrietta)).toThrow(/^amendments: /);
  });

  it("keeps one of two alike, the later", () => {
    const { amendments } = amend({ year: "2020" }, henrietta, vancouver, { ...henrietta });
    expect(amendments).toEqual([vancouver, henrietta]);
  });

  it("refuses a table that the edition lacks", () => {
    const cell: Amendment = {
      kind: "cell",
      table: "bonding-conductor",
      row: "2 AWG",
      column: "copper",
      size: "6 AWG",
      citation,
    };
    expect(() => amend({ year: "2011" }, cell)).toThrow(/bonding-conductor table of 2011/);
  });
});

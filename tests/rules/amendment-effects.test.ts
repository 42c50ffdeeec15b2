import {
  type Amendment,
  amend,
  type Code,
  electrodeBondingJumper,
  equipmentBondingJumper,
  equipmentGroundingConductor,
  groundedConductor,
  groundingElectrodeConductor,
  InputError,
  type Material,
  mainBondingJumper,
  requireEvidence,
  type SizingResult,
  type StandardSize,
  size,
  supplySideBondingJumper,
} from "bondmil";
import { describe, expect, it } from "vitest";

/** Every amendment here is invented. */
const citation = { jurisdiction: "Nowhere", section: "Sec. 1" };
const cited = "Nowhere, Sec. 1";
const year = "2020";
const sets = (count: number, size: StandardSize, material: Material = "copper") => ({
  sets: [{ count, size, material }],
});

const jumper = (code: Code, material: Material = "copper") =>
  size(mainBondingJumper, { code, supply: sets(1, "3/0 AWG"), conductor: { material } });
const equipment = (code: Code) =>
  size(equipmentGroundingConductor, {
    code,
    circuits: [
      {
        device: { amperes: 60 },
        conductors: sets(1, "4 AWG"),
        increasedFrom: { conductors: sets(1, "6 AWG"), reason: "voltage-drop" },
      },
    ],
    conductor: { material: "copper" },
  });
const neutral = (code: Code) =>
  size(groundedConductor, {
    code,
    system: "service",
    supply: sets(1, "4 AWG"),
    conductor: { material: "copper" },
  });
const electrode = (code: Code) =>
  size(groundingElectrodeConductor, {
    code,
    system: "service",
    supply: sets(1, "500 kcmil"),
    conductor: { material: "copper" },
    electrodes: [{ kind: "concrete-encased" }],
  });

const under = (amendment: Amendment, more: Partial<Code> = {}): Code => ({
  ...amend({ year }, amendment),
  ...more,
});
const sections = ({ steps }: SizingResult) => steps.map((step) => step.citation.section);
const cautions = (result: SizingResult) => result.cautions.filter(({ section }) => section === cited);

describe("an amendment of one role", () => {
  const ofOthers: readonly Amendment[] = [
    { kind: "floor", role: "electrode-bonding-jumper", copper: "500 kcmil", citation },
    {
      kind: "material",
      role: "electrode-bonding-jumper",
      material: "copper",
      allowedFrom: "500 kcmil",
      citation,
    },
    { kind: "material", role: "electrode-bonding-jumper", material: "copper", citation },
    { kind: "always-wire", role: "electrode-bonding-jumper", citation },
    { kind: "basis", role: "grounded-conductor", use: "equipment-grounding-table", citation },
  ];
  it.each(ofOthers.map((one) => [one.kind, one] as const))(
    "leaves the others as they are: %s",
    (_, amendment) => {
      const code = under(amendment, { circumstances: { serviceAmperes: 400 } });
      for (const size of [jumper, equipment, electrode]) expect(size(code)).toEqual(size({ year }));
    },
  );

  it("lifts the increase of that role alone", () => {
    const without = equipment(
      under({ kind: "basis", role: "equipment-grounding-conductor", use: "no-increase", citation }),
    );
    expect(equipment({ year }).governs).toBe("increase");
    expect(without.governs).not.toBe("increase");
    const ofJumpers = equipment(
      under({ kind: "basis", role: "equipment-bonding-jumper", use: "no-increase", citation }),
    );
    expect(ofJumpers.governs).toBe("increase");
  });

  it("leaves a metal raceway to serve in place of another's wire", () => {
    const serves = (role: "supply-side-bonding-jumper" | "equipment-grounding-conductor") =>
      size(supplySideBondingJumper, {
        code: under({ kind: "always-wire", role, citation }),
        supply: sets(1, "3/0 AWG"),
        conductor: { material: "copper" },
        instead: "nonflexible-metal-raceway",
      }).outcome.kind;
    expect(serves("equipment-grounding-conductor")).toBe("not-required");
    expect(serves("supply-side-bonding-jumper")).toBe("conductor");
  });

  it("lifts the ceiling of a supplemental rod where it names it", () => {
    const lifted = (kind?: "rod" | "plate") =>
      size(electrodeBondingJumper, {
        code: under({
          kind: "basis",
          role: "electrode-bonding-jumper",
          use: "no-electrode-ceiling",
          ...(kind && { electrode: kind }),
          citation,
        }),
        supply: sets(1, "500 kcmil"),
        conductor: { material: "copper" },
        electrodes: [{ kind: "rod" }],
        supplemental: true,
      }).outcome;
    expect(lifted("plate")).toMatchObject({ size: "6 AWG" });
    expect(lifted("rod")).toMatchObject({ size: "1/0 AWG" });
    expect(lifted()).toMatchObject({ size: "1/0 AWG" });
  });

  it("leaves the ceiling of electrodes where it only names another table, for a service of unknown rating", () => {
    const byTable = under({
      kind: "basis",
      role: "grounding-electrode-conductor",
      use: "equipment-grounding-table",
      citation,
    });
    expect(electrode(byTable).outcome).toMatchObject({ size: "4 AWG" });
  });

  it("lifts the ceiling of electrodes, and not the increase", () => {
    const noCeiling = under({
      kind: "basis",
      role: "grounding-electrode-conductor",
      use: "no-electrode-ceiling",
      citation,
    });
    expect(electrode({ year }).outcome).toMatchObject({ size: "4 AWG" });
    expect(electrode(noCeiling).outcome).toMatchObject({ size: "1/0 AWG" });
    expect(equipment(noCeiling)).toEqual(equipment({ year }));
  });
});

describe("the equipment grounding table as another basis", () => {
  const basis: Amendment = {
    kind: "basis",
    role: "grounded-conductor",
    use: "equipment-grounding-table",
    citation,
  };

  it("goes by the rating of the service, and shows its row", () => {
    const result = neutral(under(basis, { circumstances: { serviceAmperes: 200 } }));
    expect(result.steps.map(({ kind }) => kind)).toEqual(["rating-row", "standard-size"]);
    expect(result).toMatchObject({ governs: "rating-row", requiredArea: 26240 });
    expect(sections(result)[0]).toBe("Table 250.122");
    expect(result.citation).toEqual({ section: cited, evidence: "vouched" });
    expect(cautions(result)).toEqual([]);
  });

  it("leaves the load of a neutral and the minimum size of parallel runs beside it", () => {
    const parallel = (amperes: number, circumstances: Code["circumstances"]) =>
      size(groundedConductor, {
        code: under(basis, circumstances && { circumstances }),
        system: "service",
        supply: sets(1, "3/0 AWG"),
        scope: "raceway",
        conductor: { material: "copper" },
        load: { amperes, circuitAmperes: 400 },
      });
    expect(parallel(60, { serviceAmperes: 200 })).toMatchObject({
      governs: "floor",
      outcome: { size: "1/0 AWG" },
      citation: { section: cited },
    });
    const loaded = parallel(180, { serviceAmperes: 200 });
    expect(loaded).toMatchObject({ governs: "load", outcome: { size: "3/0 AWG" } });
    expect(loaded.steps.map(({ kind }) => kind)).toEqual(["rating-row", "floor", "load", "standard-size"]);
    expect(parallel(60, { serviceAmperes: 2000 })).toMatchObject({
      governs: "rating-row",
      outcome: { size: "250 kcmil" },
    });
  });

  it("goes no further than its table, in what is tried neither", () => {
    const small = { ...basis, when: { serviceThroughAmperes: 400 } };
    const beyond = neutral({ year, amendments: [small], circumstances: { serviceAmperes: 7000 } });
    expect(beyond.requiredArea).toBe(neutral({ year }).requiredArea);
    expect(cautions(beyond)).toEqual([{ code: "amendment-condition-not-met", section: cited }]);
    const refused = () => neutral({ year, amendments: [basis], circumstances: { serviceAmperes: 7000 } });
    expect(refused).toThrow(/^code\.circumstances\.serviceAmperes: expected at most 6000 A/);
  });

  it("acts on no conductor that enters no table of supply areas", () => {
    const phase = (code: Code) =>
      size(groundedConductor, {
        code,
        system: "service",
        supply: sets(1, "4 AWG"),
        conductor: { material: "copper" },
        grounded: "phase",
      });
    const result = phase(under(basis, { circumstances: { serviceAmperes: 2000 } }));
    expect(result.steps).toEqual(phase({ year }).steps);
    expect(cautions(result)).toEqual([{ code: "amendment-without-effect", section: cited }]);
  });

  it("is said to be open where the rating is not told, and only there", () => {
    const open = neutral(under(basis));
    expect(cautions(open)).toEqual([{ code: "amendment-condition-unknown", section: cited }]);
    expect(open.steps).toEqual(neutral({ year }).steps);
  });
});

describe("evidence", () => {
  const issuesOf = (result: SizingResult): readonly string[] => {
    try {
      requireEvidence(result, "confirmed");
    } catch (error) {
      if (error instanceof InputError) return error.issues.map(({ path }) => path);
    }
    return [];
  };

  it("of an amendment is vouched for by whoever wrote it: neither weaker nor stronger than the edition", () => {
    const printed = jumper({ year: "2008" });
    const code = {
      year: "2008",
      amendments: [{ kind: "floor", role: "main-bonding-jumper", copper: "1/0 AWG", citation }],
    } as const;
    const result = jumper(code);
    expect(result).toMatchObject({ governs: "floor", evidence: printed.evidence });
    const at = result.steps.findIndex(({ kind }) => kind === "floor");
    expect(result.steps[at]?.citation.evidence).toBe("vouched");
    expect(issuesOf(result)).toHaveLength(issuesOf(printed).length);
    expect(issuesOf(result)).not.toContain(`steps[${at}]`);
  });

  it("of an amended cell is that of its table, which still says where the row ends", () => {
    const cell = {
      kind: "cell",
      table: "equipment-grounding",
      row: 60,
      column: "copper",
      size: "8 AWG",
      citation,
    } as const;
    const row = (amendments: readonly Amendment[]) =>
      equipment({ year, amendments }).steps.find(({ kind }) => kind === "rating-row")?.citation;
    expect(row([cell])).toEqual({
      section: `Table 250.122 as amended by ${cited}`,
      evidence: row([])?.evidence,
    });
  });

  it("of the row that another basis goes by is its own", () => {
    const basis = {
      kind: "basis",
      role: "grounded-conductor",
      use: "equipment-grounding-table",
      citation,
    } as const;
    const of2008 = neutral({ year: "2008", amendments: [basis], circumstances: { serviceAmperes: 200 } });
    expect(of2008.steps[0]?.citation).toMatchObject({ section: "Table 250.122" });
    expect(issuesOf(of2008)).toContain("steps[0]");
    expect(issuesOf(of2008)).not.toContain("citation");
  });
});

describe("an amendment in force that does not act", () => {
  it.each<readonly [string, Amendment]>([
    [
      "a floor of another material",
      { kind: "floor", role: "main-bonding-jumper", aluminum: "1/0 AWG", citation },
    ],
    [
      "a floor of another material",
      { kind: "floor", role: "main-bonding-jumper", aluminum: "12 AWG", citation },
    ],
  ])("says so: %s", (_, amendment) => {
    expect(cautions(jumper(under(amendment)))).toEqual([
      { code: "amendment-without-effect", section: cited },
    ]);
  });

  it("says so beside one of the same section that acts", () => {
    const floors: readonly Amendment[] = [
      { kind: "floor", role: "main-bonding-jumper", copper: "1/0 AWG", citation },
      { kind: "floor", role: "main-bonding-jumper", aluminum: "1/0 AWG", citation },
    ];
    const result = jumper(amend({ year }, ...floors));
    expect(result).toMatchObject({ outcome: { size: "1/0 AWG" }, governs: "floor" });
    expect(cautions(result)).toEqual([{ code: "amendment-without-effect", section: cited }]);
  });

  it("says so where nothing was increased, and where another electrode is served", () => {
    const effect = [{ code: "amendment-without-effect", section: cited }];
    const plain = size(equipmentGroundingConductor, {
      code: under({ kind: "basis", role: "equipment-grounding-conductor", use: "no-increase", citation }),
      circuits: [{ device: { amperes: 60 } }],
      conductor: { material: "copper" },
    });
    expect(cautions(plain)).toEqual(effect);
    const ofRods = under({
      kind: "basis",
      role: "grounding-electrode-conductor",
      use: "no-electrode-ceiling",
      electrode: "rod",
      citation,
    });
    expect(cautions(electrode(ofRods))).toEqual(effect);
  });

  it("is none of two that lift the same", () => {
    const lifts = { kind: "basis", role: "equipment-grounding-conductor", use: "no-increase" } as const;
    const other = { jurisdiction: "Nowhere", section: "Sec. 2" };
    const found = equipment({
      year,
      amendments: [
        { ...lifts, citation },
        { ...lifts, citation: other },
      ],
    });
    expect(found.cautions.filter(({ code }) => code.startsWith("amend"))).toEqual([
      { code: "amended", section: cited },
      { code: "amended", section: "Nowhere, Sec. 2" },
    ]);
  });

  it("is one that a later cell of its place replaced", () => {
    const cell = { kind: "cell", table: "bonding-conductor", row: "3/0 AWG", column: "copper" } as const;
    const later = { jurisdiction: "Nowhere", section: "Sec. 2" };
    const found = jumper({
      year,
      amendments: [
        { ...cell, size: "3 AWG", citation },
        { ...cell, size: "2 AWG", citation: later },
      ],
    });
    expect(found.outcome).toMatchObject({ size: "2 AWG" });
    expect(cautions(found)).toEqual([{ code: "amendment-superseded", section: cited }]);
  });
});

describe("no increase for load-side jumpers alone", () => {
  it("leaves the equipment grounding conductors their increase", () => {
    const code = under({ kind: "basis", role: "equipment-bonding-jumper", use: "no-increase", citation });
    const sized = size(equipmentBondingJumper, {
      code,
      circuits: [
        {
          device: { amperes: 60 },
          conductors: sets(1, "4 AWG"),
          increasedFrom: { conductors: sets(1, "6 AWG"), reason: "voltage-drop" },
        },
      ],
      conductor: { material: "copper" },
    });
    expect(sized.governs).toBe("rating-row");
    expect(cautions(sized)).toEqual([{ code: "amended", section: cited }]);
    expect(equipment(code).governs).toBe("increase");
  });

  it("and no ceiling for jumpers to electrodes alone leaves that of the electrode conductor", () => {
    const code = under({
      kind: "basis",
      role: "electrode-bonding-jumper",
      use: "no-electrode-ceiling",
      citation,
    });
    expect(electrode(code)).toEqual(electrode({ year }));
  });
});

describe("a floor", () => {
  it("that is met exactly is shown and does not decide", () => {
    const result = jumper(under({ kind: "floor", role: "main-bonding-jumper", copper: "4 AWG", citation }));
    expect(result.governs).toBe("row");
    expect(sections(result)).toContain(cited);
    expect(cautions(result)).toEqual([]);
  });
});

describe("a material that is allowed from a size up", () => {
  const from = (role: Extract<Amendment, { kind: "material" }>["role"]): Code =>
    under({ kind: "material", role, material: "aluminum", allowedFrom: "1/0 AWG", citation });

  it.each(["main-bonding-jumper", "every-role"] as const)("has that size as its floor for %s", (role) => {
    const result = jumper(from(role), "aluminum");
    expect(result).toMatchObject({ governs: "floor", outcome: { size: "1/0 AWG" } });
    expect(cautions(result)).toEqual([]);
    expect(jumper(from(role))).toEqual(jumper({ year }));
  });

  it("is forbidden where no size is named", () => {
    const forbidden = under({ kind: "material", role: "every-role", material: "aluminum", citation });
    expect(cautions(jumper(forbidden, "aluminum"))).toEqual([{ code: "material-forbidden", section: cited }]);
    expect(jumper(forbidden)).toEqual(jumper({ year }));
  });
});

describe("a condition", () => {
  it("that is not met or not known is a caution of its own", () => {
    const onRoofs: Amendment = {
      kind: "floor",
      role: "main-bonding-jumper",
      copper: "1/0 AWG",
      when: { location: "rooftop" },
      citation,
    };
    expect(cautions(jumper(under(onRoofs)))).toEqual([
      { code: "amendment-condition-unknown", section: cited },
    ]);
    const inside = under(onRoofs, { circumstances: { location: "indoors" } });
    expect(cautions(jumper(inside))).toEqual([{ code: "amendment-condition-not-met", section: cited }]);
  });
});

import {
  type Amendment,
  type Check,
  type CheckVerdict,
  checkOf,
  type EditionYear,
  type Installation,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { copper, demo, derived, installation, refused, service, setsOf } from "./installations.js";

type Installed = NonNullable<Installation["installed"]>;

const jumper = "main-bonding-jumper D1";
const piece = (conductor: string, size: string, parts: object = {}): Installed[number] =>
  ({ conductor, size, material: "copper", ...parts }) as Installed[number];

function check(installed: Installed, year: EditionYear = "2017"): Check {
  return checkOf({ ...installation({ services: [service({ electrodes: [] })] }, year), installed });
}

function verdicts({ conductors }: Check): readonly (readonly [string, CheckVerdict, number | null])[] {
  return conductors.map(({ id, verdict, reserve }) => [id, verdict, reserve]);
}

/** The first verdict, which is on the main bonding jumper of 1/0 AWG. */
function first(
  installed: Installed,
  year?: EditionYear,
): readonly [string, CheckVerdict, number | null] | undefined {
  return verdicts(check(installed, year))[0];
}

describe("a check of what is installed", () => {
  it("finds everything missing where nothing is installed", () => {
    expect(verdicts(checkOf(installation({ services: [service()] })))).toEqual([
      [jumper, "missing", null],
      ["grounded-conductor R1", "missing", null],
      ["grounding-electrode-conductor E1", "missing", null],
    ]);
  });

  it("finds what is sufficient, and sufficient on values that are not confirmed", () => {
    expect(first([piece(jumper, "1/0 AWG")])).toEqual([jumper, "sufficient", 0]);
    expect(first([piece(jumper, "1/0 AWG")], "2026")).toEqual([
      jumper,
      "sufficient-on-unconfirmed-values",
      0,
    ]);
  });

  it("does not let the electrode conductor of all enclosures start in one of them", () => {
    const ids = ["D1", "D2"];
    const data = installation(
      {
        services: [
          service({
            boxes: [{ id: "W1", kind: "wireway", bondedBy: "grounded-conductor" }],
            disconnects: ids.map((id) => ({ id, designation: "service-disconnect" as const, amperes: 400 })),
            runs: [
              { id: "R0", from: "U1", to: "W1", supply: setsOf(2, "500 kcmil") },
              ...ids.map((id) => ({ id: `R${id}`, from: "W1", to: id, supply: setsOf(1, "500 kcmil") })),
            ] as never,
            electrodes: [{ id: "E1", kind: "metal-water-pipe", from: "W1" }],
          }),
        ],
      },
      "2017",
    );
    const id = "grounding-electrode-conductor E1";
    const found = (at: string) =>
      verdicts(checkOf({ ...data, installed: [piece(id, "2/0 AWG", { at })] })).at(-1)?.[1];
    expect([found("W1"), found("D1")]).toEqual(["sufficient", "wrong-place"]);
  });

  it("names the arrangement of what is missing only where none is begun", () => {
    const data = installation({ derivedSystems: [derived({ jumperAt: "compare", electrodes: [] })] }, "2017");
    const missing = (installed: Installed) =>
      checkOf({ ...data, installed })
        .conductors.filter(({ verdict }) => verdict === "missing")
        .map(({ alternative }) => alternative);
    const [source, each] = ["jumper-at-source", "jumper-in-each-enclosure"];
    expect(missing([])).toEqual([source, each, undefined, each]);
    expect(missing([piece("system-bonding-jumper P1", "1/0 AWG")])).toEqual([undefined, undefined]);
  });

  it("takes what is only known from the editions beside it for not confirmed", () => {
    const { conductors, schedule } = check([piece(jumper, "1/0 AWG")], "2020");
    expect(schedule.conductors[0]?.result.evidence).toBe("bracketed");
    expect(conductors[0]?.verdict).toBe("sufficient-on-unconfirmed-values");
  });

  it("finds what is short and by how much, and what is larger than needed", () => {
    expect(first([piece(jumper, "1 AWG")])).toEqual([jumper, "short", -21_910]);
    expect(first([piece(jumper, "2/0 AWG")])).toEqual([jumper, "larger-than-needed", 27_500]);
    const eighth = {
      ...service({ electrodes: [] }),
      runs: [{ ...service().runs[0], supply: setsOf(3, "600 kcmil") }],
    };
    const installed = [piece(jumper, "250 kcmil")];
    const { conductors } = checkOf({ ...installation({ services: [eighth as never] }, "2017"), installed });
    // The next standard size above an eighth is what is needed, not larger than it.
    expect(conductors[0]).toMatchObject({ verdict: "sufficient", reserve: 25_000, requiredArea: 225_000 });
  });

  it("finds too few, and adds several entries of one conductor", () => {
    const raceways = { count: 3, kind: "nonmetallic" as const };
    const runs = [{ ...service().runs[0], supply: setsOf(3, "500 kcmil"), raceways }];
    const data = (installed: Installed) =>
      verdicts(
        checkOf({
          ...installation({ services: [service({ runs: runs as never, electrodes: [] })] }, "2017"),
          installed: [piece(jumper, "3/0 AWG"), ...installed],
        }),
      ).slice(1);
    const id = "grounded-conductor R1";
    expect(data([piece(id, "1/0 AWG", { quantity: 2 })])).toEqual([[id, "too-few", 0]]);
    expect(data([piece(id, "1/0 AWG", { quantity: 3 })])).toEqual([[id, "sufficient", 0]]);
    expect(data([piece(id, "1/0 AWG", { quantity: 2 }), piece(id, "1 AWG")])).toEqual([
      [id, "sufficient", 0],
      [id, "short", -21_910],
    ]);
  });

  it("judges another metal by what is asked of it", () => {
    const found = (size: string, material: string) => first([piece(jumper, size, { material })]);
    expect(found("2/0 AWG", "aluminum")).toEqual([jumper, "short", -34_700]);
    expect(found("3/0 AWG", "aluminum")).toEqual([jumper, "sufficient", 0]);
    expect(found("3/0 AWG", "copper-clad aluminum")).toEqual([jumper, "sufficient", 0]);
    // The code names copper for this conductor.
    const termination = { id: "I1", at: "D1", termination: "apart" as const };
    const conductor = "intersystem-bonding-conductor I1";
    const { conductors } = checkOf({
      ...installation({ services: [service()], intersystem: [termination] }, "2017"),
      installed: [piece(conductor, "4 AWG", { material: "aluminum" })],
    });
    expect(conductors.find(({ id }) => id === conductor)?.verdict).toBe("wrong-material");
    const data = installation({ services: [service({ electrodes: [] })] }, "2017");
    const aluminum = { ...data, materials: { ...data.materials, bondingJumpers: "aluminum" as const } };
    const installed = [piece(jumper, "3/0 AWG", { material: "copper-clad aluminum" })];
    // Aluminum and copper-clad aluminum share a column.
    expect(verdicts(checkOf({ ...aluminum, installed }))[0]).toEqual([jumper, "sufficient", 0]);
  });

  it("finds a material that a rule treats otherwise than the one that is drawn", () => {
    const rod = service({ electrodes: [{ id: "E1", kind: "rod", from: "D1" }] });
    const data = installation({ services: [rod] }, "2017");
    const id = "grounding-electrode-conductor E1";
    const found = (size: string, material: string) =>
      verdicts(
        checkOf({
          ...data,
          materials: { ...data.materials, electrodeConductors: "aluminum" },
          installed: [piece(id, size, { material })],
        }),
      ).at(-1);
    expect(found("4 AWG", "aluminum")).toEqual([id, "sufficient", 0]);
    // Through 2020 the limit for rods names aluminum and not copper-clad aluminum.
    expect(found("4 AWG", "copper-clad aluminum")).toEqual([id, "short", -126_060]);
    expect(found("3/0 AWG", "copper-clad aluminum")).toEqual([id, "sufficient", 0]);
  });

  it("finds a material that an amendment forbids, in what is drawn and in what is installed", () => {
    const amendment: Amendment = {
      kind: "material",
      role: "main-bonding-jumper",
      material: "aluminum",
      citation: { jurisdiction: "Example County", section: "Sec. 12-3" },
    };
    const data = installation({ services: [service({ electrodes: [] })] }, "2017");
    const amended = { ...data, code: { year: "2017" as const, amendments: [amendment] as never } };
    const found = checkOf({
      ...amended,
      installed: [piece(jumper, "250 kcmil", { material: "aluminum" })],
    });
    expect(found.schedule.violations).toEqual([]);
    expect(found.conductors[0]).toMatchObject({
      verdict: "wrong-material",
      citation: { section: "Example County, Sec. 12-3" },
    });
    const drawn = checkOf({
      ...amended,
      materials: { ...data.materials, bondingJumpers: "aluminum" },
    });
    expect(drawn.schedule.violations).toEqual([
      {
        code: "material-forbidden",
        section: "Example County, Sec. 12-3",
        at: [jumper],
        conductors: [{ role: "main-bonding-jumper", subject: "D1" }],
      },
    ]);
  });

  it("judges an electrode conductor at another lawful place by the conductors there", () => {
    const run = (id: string, from: string, to: string, size: string) =>
      ({ id, from, to, supply: setsOf(1, size) }) as never;
    const data = installation(
      {
        services: [
          service({
            boxes: [{ id: "M1", kind: "meter", bondedBy: "grounded-conductor" }],
            runs: [run("R1", "U1", "M1", "500 kcmil"), run("R2", "M1", "D1", "2 AWG")],
            electrodes: [{ id: "E1", kind: "metal-water-pipe", from: "D1" }],
          }),
        ],
      },
      "2017",
    );
    const id = "grounding-electrode-conductor E1";
    const found = (size: string, at: string) =>
      verdicts(checkOf({ ...data, installed: [piece(id, size, { at })] })).at(-1);
    expect(found("8 AWG", "D1")).toEqual([id, "sufficient", 0]);
    expect(found("8 AWG", "M1")).toEqual([id, "short", -89_090]);
    expect(found("1/0 AWG", "M1")).toEqual([id, "sufficient", 0]);
    expect(found("1/0 AWG", "roof")).toEqual([id, "wrong-place", 89_090]);
  });

  it("does not let the electrode conductor of one enclosure serve from another", () => {
    const ids = ["D1", "D2"];
    const data = installation(
      {
        services: [
          service({
            disconnects: ids.map((id) => ({ id, designation: "service-disconnect" as const, amperes: 400 })),
            runs: ids.map((id) => ({
              id: `R${id}`,
              from: "U1",
              to: id,
              supply: setsOf(1, "500 kcmil"),
            })) as never,
            electrodes: ids.map((from) => ({ id: `E${from}`, kind: "metal-water-pipe" as const, from })),
          }),
        ],
      },
      "2017",
    );
    const installed = [piece("grounding-electrode-conductor ED1", "1/0 AWG", { at: "D2" })];
    const found = verdicts(checkOf({ ...data, installed }));
    expect(found).toContainEqual(["grounding-electrode-conductor ED1", "wrong-place", 0]);
  });

  it("takes any disconnect of an assembly for its jumper and its electrode conductor, and any place of an owner for its metal", () => {
    const data = installation(
      {
        services: [
          service({
            disconnects: ["D1", "D2"].map((id) => ({
              id,
              designation: "service-disconnect" as const,
              amperes: 400,
            })),
            runs: ["D1", "D2"].map((id) => ({
              id: `R${id}`,
              from: "U1",
              to: id,
              supply: setsOf(1, "500 kcmil"),
            })) as never,
            housing: "listed-assembly",
            electrodes: [{ id: "E1", kind: "metal-water-pipe", from: "D1" }],
          }),
        ],
        structuralMetal: [{ id: "F1", of: "S1" }],
      },
      "2017",
    );
    const found = (conductor: string, at: string) =>
      verdicts(checkOf({ ...data, installed: [piece(conductor, "2/0 AWG", { at })] })).find(
        ([id]) => id === conductor,
      )?.[1];
    expect(found("main-bonding-jumper S1", "D2")).toBe("sufficient");
    expect(found("grounding-electrode-conductor E1", "D2")).toBe("sufficient");
    expect(found("structural-metal-bonding-jumper F1", "D2")).toBe("sufficient");
    expect(found("structural-metal-bonding-jumper F1", "E1")).toBe("sufficient");
    expect(found("structural-metal-bonding-jumper F1", "roof")).toBe("wrong-place");
    expect(found("grounded-conductor RD1", "RD1")).toBe("larger-than-needed");
  });

  it("finds a jumper where none may be, as drawn and as found", () => {
    const outdoors = { id: "T1", kind: "transformer" as const, outdoors: true };
    const astray = checkOf({
      ...installation(
        { derivedSystems: [derived({ source: outdoors, jumperAt: "disconnects", electrodes: [] })] },
        "2017",
      ),
      installed: [piece("system-bonding-jumper P1", "1/0 AWG")],
    });
    expect(astray.schedule.violations.map(({ code, at }) => [code, ...at])).toEqual([
      ["jumper-not-permitted-here", "P1"],
    ]);
    expect(astray.conductors[0]).toMatchObject({
      verdict: "not-permitted",
      citation: { section: "250.30(C)" },
    });
    const ungrounded = checkOf({
      ...installation({ derivedSystems: [derived({ grounding: "ungrounded" })] }, "2017"),
      installed: [piece("system-bonding-jumper X1", "1/0 AWG")],
    });
    expect(verdicts(ungrounded)).toContainEqual(["system-bonding-jumper X1", "not-permitted", null]);
  });

  it("finds an electrode conductor where it is drawn astray, and not where it should be", () => {
    const data = installation(
      {
        derivedSystems: [
          derived({ electrodes: [{ id: "G1", kind: "structural-metal" as const, from: "P1" }] }),
        ],
      },
      "2017",
    );
    const id = "grounding-electrode-conductor G1";
    const found = (parts: object) =>
      verdicts(checkOf({ ...data, installed: [piece(id, "1/0 AWG", parts)] })).at(-1)?.[1];
    expect(found({})).toBe("wrong-place");
    expect(found({ at: "P1" })).toBe("wrong-place");
    expect(found({ at: "T1" })).toBe("sufficient");
  });

  it("finds what is at the wrong place", () => {
    expect(first([piece(jumper, "1/0 AWG", { at: "W1" })])).toEqual([jumper, "wrong-place", 0]);
    expect(first([piece(jumper, "1/0 AWG", { at: "D1" })])).toEqual([jumper, "sufficient", 0]);
    const grounded = [piece("grounded-conductor R1", "1/0 AWG", { at: "U1" })];
    expect(verdicts(check(grounded))[1]).toEqual(["grounded-conductor R1", "sufficient", 0]);
  });

  it("finds what is not in the schedule; a second jumper with the section that forbids it", () => {
    const { conductors } = check([
      piece("main-bonding-jumper panel 2", "6 AWG", { role: "main-bonding-jumper" }),
      piece("system-bonding-jumper T9", "6 AWG", { role: "system-bonding-jumper" }),
      piece("equipment-grounding-conductor C9", "6 AWG"),
    ]);
    expect(conductors.slice(-3).map(({ id, verdict, citation }) => [id, verdict, citation?.section])).toEqual(
      [
        ["main-bonding-jumper panel 2", "not-in-schedule", "250.24(A)(5)"],
        ["system-bonding-jumper T9", "not-in-schedule", "250.30(A)(1)"],
        ["equipment-grounding-conductor C9", "not-in-schedule", undefined],
      ],
    );
  });

  it("finds what is not required, and does not miss it", () => {
    const runs = [
      {
        id: "Y1",
        from: "T1",
        to: "P1",
        supply: { sets: [...copper.sets] },
        raceways: { count: 1, kind: "nonflexible-metal" as const },
      },
    ];
    const data = installation({ derivedSystems: [derived({ runs })] }, "2017");
    const id = "supply-side-bonding-jumper Y1";
    expect(verdicts(checkOf(data)).map(([name]) => name)).not.toContain(id);
    expect(verdicts(checkOf({ ...data, installed: [piece(id, "4 AWG")] }))).toContainEqual([
      id,
      "not-required",
      null,
    ]);
  });

  it("takes of compared arrangements the one that was begun, and marks a jumper of the other", () => {
    const data = (installed: Installed) =>
      verdicts(
        checkOf({
          ...installation({ derivedSystems: [derived({ jumperAt: "compare", electrodes: [] })] }, "2017"),
          installed,
        }),
      );
    const [source, enclosure] = ["system-bonding-jumper T1", "system-bonding-jumper P1"];
    // Where none is begun each of them misses its own.
    expect(data([])).toEqual([
      [source, "missing", null],
      [enclosure, "missing", null],
      ["supply-side-bonding-jumper Y1", "missing", null],
      ["grounded-conductor Y1 (jumper-in-each-enclosure)", "missing", null],
    ]);
    expect(data([piece(enclosure, "1/0 AWG")])).toEqual([
      [enclosure, "sufficient", 0],
      ["supply-side-bonding-jumper Y1", "missing", null],
      ["grounded-conductor Y1 (jumper-in-each-enclosure)", "missing", null],
    ]);
    expect(data([piece(source, "1/0 AWG"), piece(enclosure, "1/0 AWG")]).slice(0, 2)).toEqual([
      [source, "sufficient", 0],
      [enclosure, "wrong-place", 0],
    ]);
  });

  it("takes of each system the arrangement that was begun there", () => {
    const other = derived({
      id: "X2",
      jumperAt: "compare",
      source: { id: "T2", kind: "transformer", outdoors: false },
      runs: [{ id: "Y2", from: "T2", to: "P2", supply: { sets: [...copper.sets] } }],
      disconnects: [{ id: "P2", amperes: 400 }],
      electrodes: [],
    });
    const both = [derived({ jumperAt: "compare", electrodes: [] }), other];
    const installed = ["system-bonding-jumper T1", "system-bonding-jumper P2"].map((id) =>
      piece(id, "1/0 AWG"),
    );
    const found = checkOf({ ...installation({ derivedSystems: both }, "2017"), installed });
    expect(verdicts(found).filter(([id]) => id.startsWith("system"))).toEqual([
      ["system-bonding-jumper T1", "sufficient", 0],
      ["system-bonding-jumper P2", "sufficient", 0],
    ]);
  });

  it("finds the faults of the demo drawing", () => {
    const { conductors } = checkOf(demo("print-works"));
    const faults = conductors.filter(({ verdict }) => !verdict.startsWith("sufficient"));
    expect(faults.map(({ id, verdict }) => [verdict, id])).toEqual([
      ["short", "main-bonding-jumper PV"],
      ["short", "supply-side-bonding-jumper CT cabinet"],
      ["too-few", "grounded-conductor lateral"],
      ["wrong-place", "grounding-electrode-conductor frame"],
      ["missing", "electrode-bonding-jumper water pipe"],
      ["short", "system-bonding-jumper LP2"],
      ["too-few", "equipment-grounding-conductor F3"],
      ["short", "equipment-grounding-conductor F4"],
      ["larger-than-needed", "equipment-grounding-conductor F5"],
      ["missing", "other-piping-bonding-jumper compressed air"],
      ["not-in-schedule", "system bonding jumper T2 case"],
    ]);
  });

  it("refuses what a schedule refuses", () => {
    expect(refused({ ...installation({}), installed: [{ ...piece(jumper, "4 AWG"), quantity: 0 }] })).toEqual(
      [["not-positive", "installed[0].quantity"]],
    );
  });
});

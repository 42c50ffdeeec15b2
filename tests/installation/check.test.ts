import { type Amendment, checkOf, type EditionYear, type FoundConductor } from "bondmil";
import { describe, expect, it } from "vitest";
import { checkFound, checkRest, findings, foundAsScheduled, piece, verdict } from "./found.js";
import { copper, demo, demoNames, derived, installation, service, setsOf } from "./installations.js";

const jumper = "main-bonding-jumper D1";
const bare = (year: EditionYear = "2017") => installation({ services: [service({ electrodes: [] })] }, year);
const only = (found: readonly FoundConductor[], year?: EditionYear) => checkRest(bare(year), found);

describe("a check", () => {
  it("says that nothing is listed where nothing is, and does not call it missing", () => {
    for (const installed of [{}, { found: [] }, { asScheduled: [] }]) {
      const check = checkOf({ ...bare(), installed });
      expect([check.isListed, check.findings, check.conductors]).toEqual([false, [], []]);
    }
    expect(checkOf(bare()).isListed).toBe(false);
  });

  it("finds everything missing that is not listed", () => {
    const check = checkFound(bare(), [piece(jumper, "1/0 AWG")]);
    expect(findings(check)).toEqual([["grounded-conductor R1", "missing"]]);
    expect(check.findings[0]).toMatchObject({
      todo: "install",
      found: null,
      required: { quantity: 1, size: "1/0 AWG", material: "copper", requiredArea: 105_600 },
      citation: { section: "250.24(C)(1)" },
    });
  });

  it("takes what starts at another lawful place for the one of several conductors to an electrode that is left", () => {
    const raceways = { count: 1, kind: "nonmetallic" } as const;
    const drawn = service({
      boxes: ["M0", "M1"].map((id) => ({ id, kind: "meter", bondedBy: "grounded-conductor" })),
      runs: [
        { id: "R", from: "U1", to: "M0", supply: copper, raceways },
        { id: "R0", from: "M0", to: "M1", supply: copper, raceways },
        { id: "R1", from: "M1", to: "D1", supply: copper, raceways },
      ],
      electrodes: [
        { id: "E1", kind: "concrete-encased", from: "M1" },
        { electrode: "E1", from: "D1" },
      ],
    });
    const from = (...places: readonly string[]) => {
      const found = places.map((at) => piece("grounding-electrode-conductor E1", "1/0 AWG", { at }));
      return findings(checkRest(installation({ services: [drawn] }), found));
    };
    expect([from("M1", "D1"), from("M0", "D1"), from("M1", "M0")]).toEqual([[], [], []]);
    expect(from("U1", "D1")).toHaveLength(1);
    // Of two that start elsewhere nobody can tell which is which.
    expect(from("M0", "M0").map(([id]) => id)).toEqual([
      "grounding-electrode-conductor at M0",
      "grounding-electrode-conductor at M0",
    ]);
  });

  it.each(demoNames)(
    "has no finding where the rest is as scheduled, and none where all is listed: %s",
    (name) => {
      const { installed: _, ...drawn } = demo(name);
      const rest = checkOf({ ...drawn, installed: { rest: "as-scheduled" } });
      expect([rest.isListed, rest.findings]).toEqual([true, []]);
      expect(new Set(rest.conductors.map((one) => one.verdict))).toEqual(new Set(["as-scheduled"]));
      expect(findings(checkFound(drawn, foundAsScheduled(drawn)))).toEqual([]);
    },
  );

  it("takes whole runs as scheduled, and misses what is not among them", () => {
    const data = installation({ services: [service()] }, "2017");
    const check = checkOf({ ...data, installed: { asScheduled: ["R1", "E1"] } });
    expect(findings(check)).toEqual([[jumper, "missing"]]);
    const whole = checkOf({ ...data, installed: { asScheduled: ["S1"] } });
    expect(findings(whole)).toEqual([]);
  });

  it("lets what was found stand before what is taken as scheduled", () => {
    expect(findings(only([piece(jumper, "1 AWG")]))).toEqual([[jumper, "short", 21_910]]);
  });

  it("gives the exact reserve of what is enough", () => {
    expect(verdict(only([piece(jumper, "1/0 AWG")]), jumper)).toEqual(["as-required", 0]);
    expect(verdict(only([piece(jumper, "2/0 AWG")]), jumper)).toEqual(["as-required", 27_500]);
    const runs = [{ ...service().runs[0], supply: setsOf(3, "600 kcmil") }];
    const eighth = installation({ services: [service({ electrodes: [], runs: runs as never })] }, "2017");
    const check = checkRest(eighth, [piece(jumper, "250 kcmil")]);
    expect(verdict(check, jumper)).toEqual(["as-required", 25_000]);
    const bus = { size: undefined, busArea: 225_000 };
    const { size: _, ...asBus } = { ...piece(jumper, "", bus) };
    expect(verdict(checkRest(eighth, [asBus]), jumper)).toEqual(["as-required", 0]);
    expect(findings(checkRest(eighth, [{ ...asBus, busArea: 224_999 }]))).toEqual([[jumper, "short", 1]]);
  });

  it("says what is required, how many more, and what can be done", () => {
    const raceways = { count: 5, kind: "nonmetallic" as const };
    const runs = [{ ...service().runs[0], supply: setsOf(5, "500 kcmil"), raceways }];
    const data = installation({ services: [service({ runs: runs as never, electrodes: [] })] }, "2017");
    const id = "grounded-conductor R1";
    const check = checkRest(data, [piece(id, "1/0 AWG", { quantity: 4 })]);
    expect(check.findings).toMatchObject([
      {
        todo: "install",
        kind: "too-few",
        id,
        required: { quantity: 5, size: "1/0 AWG" },
        more: 1,
        remedies: [{ do: "install", conductor: { quantity: 1, size: "1/0 AWG", material: "copper" } }],
      },
    ]);
    expect(findings(checkRest(data, [piece(id, "1/0 AWG", { quantity: 5 })]))).toEqual([]);
    const mixed = [piece(id, "1/0 AWG", { quantity: 4 }), piece(id, "1 AWG")];
    expect(findings(checkRest(data, mixed))).toEqual([[id, "short", 21_910]]);
  });

  it("lets no finding hide another", () => {
    const data = installation(
      {
        services: [service({ electrodes: [{ id: "E1", kind: "metal-water-pipe", from: "D1" }] })],
        existing: [{ id: "roof" }],
        intersystem: [{ id: "I1", at: "D1", termination: "apart" }],
      },
      "2017",
    );
    const id = "grounding-electrode-conductor E1";
    expect(findings(checkRest(data, [piece(id, "1 AWG", { at: "roof" })]))).toEqual([
      [id, "wrong-place"],
      [id, "short", 21_910],
    ]);
    const tie = "intersystem-bonding-conductor I1";
    const aluminum = piece(tie, "8 AWG", { material: "aluminum" });
    expect(findings(checkRest(data, [aluminum]))).toEqual([
      [tie, "wrong-material"],
      [tie, "short", 9_730],
    ]);
    const raceways = { count: 3, kind: "nonmetallic" as const };
    const runs = [{ ...service().runs[0], supply: setsOf(3, "500 kcmil"), raceways }];
    const several = installation({ services: [service({ runs: runs as never, electrodes: [] })] }, "2017");
    const few = piece("grounded-conductor R1", "1 AWG", { quantity: 2 });
    expect(findings(checkRest(several, [few]))).toEqual([
      ["grounded-conductor R1", "short", 21_910],
      ["grounded-conductor R1", "too-few", 1],
    ]);
  });

  it("puts findings in the order of what is to be done", () => {
    const { findings: all } = checkOf(demo("print-works"));
    expect(all.map(({ todo, kind, id }) => [todo, kind, id])).toEqual([
      ["remove", "not-permitted", "old jumper behind the cover at T2 case"],
      ["move", "wrong-place", "grounding-electrode-conductor frame"],
      ["replace", "short", "main-bonding-jumper PV"],
      ["replace", "short", "supply-side-bonding-jumper CT cabinet"],
      ["replace", "short", "system-bonding-jumper LP2"],
      ["replace", "short", "equipment-grounding-conductor F4"],
      ["install", "too-few", "grounded-conductor lateral"],
      ["install", "missing", "electrode-bonding-jumper water pipe"],
      ["install", "too-few", "equipment-grounding-conductor F3"],
      ["install", "missing", "other-piping-bonding-jumper compressed air"],
    ]);
  });
});

describe("a found conductor of another material", () => {
  it("is judged by what is required of it", () => {
    const found = (size: string, material: string) => only([piece(jumper, size, { material })]);
    expect(findings(found("2/0 AWG", "aluminum"))).toEqual([[jumper, "short", 34_700]]);
    expect(found("2/0 AWG", "aluminum").findings[0]?.remedies).toMatchObject([
      { do: "replace", conductor: { size: "3/0 AWG", material: "aluminum" } },
      { do: "replace", conductor: { size: "1/0 AWG", material: "copper" } },
    ]);
    expect(findings(found("3/0 AWG", "aluminum"))).toEqual([]);
    expect(findings(found("3/0 AWG", "copper-clad aluminum"))).toEqual([]);
  });

  it("goes by what a rule says of that material only", () => {
    const rod = service({ electrodes: [{ id: "E1", kind: "rod", from: "D1" }] });
    const data = installation({ services: [rod] }, "2017");
    const id = "grounding-electrode-conductor E1";
    const aluminum = { ...data, materials: { ...data.materials, electrodeConductors: "aluminum" as const } };
    const found = (size: string, material: string) =>
      findings(checkRest(aluminum, [piece(id, size, { material })]));
    expect(found("4 AWG", "aluminum")).toEqual([]);
    // Through 2020 the limit for rods names aluminum and not copper-clad aluminum.
    expect(found("4 AWG", "copper-clad aluminum")).toEqual([[id, "short", 126_060]]);
    expect(found("3/0 AWG", "copper-clad aluminum")).toEqual([]);
  });

  it("is found where an amendment forbids it", () => {
    const amendment: Amendment = {
      kind: "material",
      role: "main-bonding-jumper",
      material: "aluminum",
      citation: { jurisdiction: "Example County", section: "Sec. 12-3" },
    };
    const amended = { ...bare(), code: { year: "2017" as const, amendments: [amendment] as never } };
    const check = checkRest(amended, [piece(jumper, "250 kcmil", { material: "aluminum" })]);
    expect(check.schedule.violations.map(({ code }) => code)).toEqual(["electrode-conductor-missing"]);
    expect(check.findings).toMatchObject([
      {
        kind: "wrong-material",
        citation: { section: "Example County, Sec. 12-3" },
        remedies: [{ do: "replace", conductor: { size: "1/0 AWG", material: "copper" } }],
      },
    ]);
  });
});

describe("the place of a found conductor", () => {
  const id = "grounding-electrode-conductor E1";
  const run = (name: string, from: string, to: string, size: string) =>
    ({ id: name, from, to, supply: setsOf(1, size), raceways: { count: 1, kind: "nonmetallic" } }) as never;

  it("may be another lawful one, and the conductors there then decide", () => {
    const data = installation(
      {
        services: [
          service({
            boxes: [{ id: "M1", kind: "meter", bondedBy: "grounded-conductor" }],
            runs: [run("R1", "U1", "M1", "500 kcmil"), run("R2", "M1", "D1", "2 AWG")],
            electrodes: [{ id: "E1", kind: "metal-water-pipe", from: "D1" }],
          }),
        ],
        existing: [{ id: "roof" }],
      },
      "2017",
    );
    const found = (size: string, at: string) => checkRest(data, [piece(id, size, { at })]);
    expect(findings(found("8 AWG", "D1"))).toEqual([]);
    expect(findings(found("8 AWG", "M1"))).toEqual([[id, "short", 89_090]]);
    expect(findings(found("1/0 AWG", "M1"))).toEqual([]);
    const astray = found("1/0 AWG", "roof");
    expect(findings(astray)).toEqual([[id, "wrong-place"]]);
    expect(astray.findings[0]?.remedies).toEqual([
      {
        do: "move",
        to: [
          { kind: "place", id: "M1" },
          { kind: "place", id: "D1" },
        ],
      },
    ]);
  });

  it("is not the enclosure of another", () => {
    const ids = ["D1", "D2"];
    const data = installation(
      {
        services: [
          service({
            disconnects: ids.map((one) => ({
              id: one,
              designation: "service-disconnect" as const,
              amperes: 400,
            })),
            runs: ids.map((one) => run(`R${one}`, "U1", one, "500 kcmil")),
            electrodes: ids.map((from) => ({ id: `E${from}`, kind: "metal-water-pipe" as const, from })),
          }),
        ],
      },
      "2017",
    );
    const astray = piece("grounding-electrode-conductor ED1", "1/0 AWG", { at: "D2" });
    expect(findings(checkRest(data, [astray]))).toEqual([
      ["grounding-electrode-conductor ED1", "wrong-place"],
    ]);
  });

  it("may be any disconnect of an assembly, and any place of the owner of metal", () => {
    const ids = ["D1", "D2"];
    const data = installation(
      {
        services: [
          service({
            disconnects: ids.map((one) => ({
              id: one,
              designation: "service-disconnect" as const,
              amperes: 400,
            })),
            runs: ids.map((one) => run(`R${one}`, "U1", one, "500 kcmil")),
            housing: "listed-assembly",
            electrodes: [{ id: "E1", kind: "metal-water-pipe", from: "D1" }],
          }),
        ],
        structuralMetal: [{ id: "F1", of: "S1" }],
        existing: [{ id: "roof" }],
      },
      "2017",
    );
    const found = (name: string, at: string) => findings(checkRest(data, [piece(name, "2/0 AWG", { at })]));
    expect(found("main-bonding-jumper S1", "D2")).toEqual([]);
    expect(found(id, "D2")).toEqual([]);
    expect(found("structural-metal-bonding-jumper F1", "D2")).toEqual([]);
    expect(found("structural-metal-bonding-jumper F1", "E1")).toEqual([]);
    expect(found("structural-metal-bonding-jumper F1", "roof")).toEqual([
      ["structural-metal-bonding-jumper F1", "wrong-place"],
    ]);
  });

  it("is where the jumper of a derived system is, also where the installation draws it astray", () => {
    const electrodes = [{ id: "G1", kind: "structural-metal" as const, from: "P1" }];
    const data = installation({ derivedSystems: [derived({ electrodes })] }, "2017");
    const found = (parts: object) =>
      checkRest(data, [piece("grounding-electrode-conductor G1", "1/0 AWG", parts)]);
    for (const parts of [{}, { at: "P1" }]) {
      expect(found(parts).findings).toMatchObject([
        { kind: "wrong-place", remedies: [{ do: "move", to: [{ kind: "place", id: "T1" }] }] },
      ]);
    }
    expect(findings(found({ at: "T1" }))).toEqual([]);
  });
});

describe("what is found without being required", () => {
  it("is no finding where it may stay", () => {
    const raceways = { count: 1, kind: "nonflexible-metal" as const };
    const runs = [{ id: "Y1", from: "T1", to: "P1", supply: { sets: [...copper.sets] }, raceways }];
    const data = installation({ derivedSystems: [derived({ runs })] }, "2017");
    const id = "supply-side-bonding-jumper Y1";
    expect(verdict(checkRest(data, []), id)).toEqual([undefined, undefined]);
    const check = checkRest(data, [piece(id, "4 AWG")]);
    expect([findings(check), verdict(check, id)]).toEqual([[], ["not-required", null]]);
  });

  it("is a jumper that may not be, as drawn and as found", () => {
    const outdoors = { id: "T1", kind: "transformer" as const, outdoors: true };
    const astray = checkRest(
      installation(
        { derivedSystems: [derived({ source: outdoors, jumperAt: "disconnects", electrodes: [] })] },
        "2017",
      ),
      [piece("system-bonding-jumper P1", "1/0 AWG")],
    );
    expect(astray.schedule.violations.map(({ code, at }) => [code, ...at])).toEqual([
      ["jumper-not-permitted-here", "P1"],
      ["electrode-conductor-missing", "X1"],
    ]);
    expect(astray.findings).toMatchObject([
      { kind: "not-permitted", citation: { section: "250.30(C)" }, remedies: [{ do: "remove" }] },
    ]);
    const ungrounded = checkRest(
      installation({ derivedSystems: [derived({ grounding: "ungrounded" })] }, "2017"),
      [piece("system-bonding-jumper X1", "1/0 AWG")],
    );
    expect(findings(ungrounded)).toEqual([["system-bonding-jumper X1", "not-permitted"]]);
  });

  it("is a second connection of the grounded conductor, whatever it is called", () => {
    const data = installation(
      {
        services: [service({ electrodes: [] })],
        derivedSystems: [derived({ jumperAt: "source", electrodes: [] })],
        circuits: [
          { id: "C1", from: "D1", to: "panel", device: { amperes: 100 }, wiring: "raceway" },
          { id: "C2", from: "P1", to: "press", device: { amperes: 60 }, wiring: "raceway" },
        ],
      },
      "2023",
    );
    const second = (role: string, at: string, parts: object = {}) =>
      checkRest(data, [
        { role, at, size: "6 AWG", material: "copper", ...parts } as FoundConductor,
      ]).findings.map(({ kind, citation }) => [kind, citation?.section]);
    expect(second("main-bonding-jumper", "panel")).toEqual([["not-permitted", "250.24(B)"]]);
    expect(second("system-bonding-jumper", "panel")).toEqual([["not-permitted", "250.24(B)"]]);
    expect(second("system-bonding-jumper", "press")).toEqual([["not-permitted", "250.30(A)"]]);
    expect(second("main-bonding-jumper", "P1")).toEqual([["not-permitted", "250.30(A)"]]);
    const connects = { connectsGroundedConductor: true };
    expect(second("equipment-bonding-jumper", "panel", connects)).toEqual([["not-permitted", "250.24(B)"]]);
    expect(second("equipment-grounding-conductor", "panel", connects)).toEqual([
      ["not-permitted", "250.24(B)"],
    ]);
    // Ahead of the service disconnect the grounded conductor may bond metal at several points.
    expect(second("main-bonding-jumper", "U1")).toEqual([]);
  });

  it("is something unknown, with the conductors that may be meant", () => {
    const data = installation(
      {
        services: [service({ electrodes: [] })],
        circuits: [{ id: "C1", from: "D1", to: "panel", device: { amperes: 100 }, wiring: "raceway" }],
      },
      "2017",
    );
    const { findings: all } = checkRest(data, [
      piece("equipment-bonding-jumper C1", "6 AWG", { name: "green wire" }),
    ]);
    expect(all).toMatchObject([
      {
        todo: "settle",
        kind: "not-in-schedule",
        id: "green wire at C1",
        identity: null,
        required: null,
        citation: null,
        remedies: [{ do: "draw", near: [{ role: "equipment-grounding-conductor", subject: "C1" }] }],
      },
    ]);
  });
});

describe("arrangements of a derived system", () => {
  const compared = installation(
    { derivedSystems: [derived({ jumperAt: "compare", electrodes: [] })] },
    "2017",
  );
  const [source, enclosure] = ["system-bonding-jumper T1", "system-bonding-jumper P1"];

  it("are judged by the one that was begun, and a jumper of the other is a second one", () => {
    expect(findings(checkFound(compared, [piece(enclosure, "1/0 AWG")]))).toEqual([
      ["supply-side-bonding-jumper Y1", "missing"],
      ["grounded-conductor Y1 (jumper-in-each-enclosure)", "missing"],
    ]);
    const both = checkFound(compared, [piece(source, "1/0 AWG"), piece(enclosure, "1/0 AWG")]);
    expect(findings(both)).toEqual([
      [enclosure, "not-permitted"],
      ["supply-side-bonding-jumper Y1", "missing"],
    ]);
    expect(verdict(both, source)).toEqual(["as-required", 0]);
  });

  it("are named with what is missing where none was begun", () => {
    const other = installation(
      {
        derivedSystems: [derived({ jumperAt: "compare", electrodes: [] })],
        circuits: [{ id: "C1", from: "P1", to: "press", device: { amperes: 60 }, wiring: "raceway" }],
      },
      "2017",
    );
    const check = checkFound(other, [piece("equipment-grounding-conductor C1", "10 AWG")]);
    expect(check.findings.map(({ id, alternative }) => [id, alternative])).toEqual([
      [source, "jumper-at-source"],
      [enclosure, "jumper-in-each-enclosure"],
      ["supply-side-bonding-jumper Y1", undefined],
      ["grounded-conductor Y1 (jumper-in-each-enclosure)", "jumper-in-each-enclosure"],
    ]);
  });

  it("are begun in each system for itself", () => {
    const other = derived({
      id: "X2",
      jumperAt: "compare",
      source: { id: "T2", kind: "transformer", outdoors: false },
      runs: [
        {
          id: "Y2",
          from: "T2",
          to: "P2",
          supply: { sets: [...copper.sets] },
          raceways: { count: 1, kind: "nonmetallic" },
        },
      ],
      disconnects: [{ id: "P2", amperes: 400 }],
      electrodes: [],
    });
    const data = installation(
      { derivedSystems: [derived({ jumperAt: "compare", electrodes: [] }), other] },
      "2017",
    );
    const second = "system-bonding-jumper P2";
    const check = checkFound(data, [piece(source, "1/0 AWG"), piece(second, "1/0 AWG")]);
    expect([verdict(check, source), verdict(check, second)]).toEqual([
      ["as-required", 0],
      ["as-required", 0],
    ]);
  });

  it("may be the other lawful one than drawn, and then decide what else is required", () => {
    const data = installation({ derivedSystems: [derived({ jumperAt: "source", electrodes: [] })] }, "2017");
    const check = checkFound(data, [
      piece(enclosure, "1/0 AWG"),
      piece("supply-side-bonding-jumper Y1", "1/0 AWG"),
    ]);
    expect(check.arrangedAsFound).toEqual(["X1"]);
    expect(findings(check)).toEqual([["grounded-conductor Y1", "missing"]]);
    // Where the drawn one is there too, it is a second one.
    const second = checkRest(data, [
      piece("system-bonding-jumper T1", "1/0 AWG"),
      { ...piece(jumper, "1/0 AWG"), of: "P1" },
    ]);
    expect([second.arrangedAsFound, second.findings.map(({ kind }) => kind)]).toEqual([
      [],
      ["not-permitted"],
    ]);
  });
});

describe("a conductor that is found where none of its kind is required", () => {
  const data = (circuits: readonly string[]) =>
    installation(
      {
        services: [service({ electrodes: [{ id: "E1", kind: "rod", from: "D1" }] })],
        circuits: circuits.map((id) => ({
          id,
          from: "D1",
          to: `load of ${id}`,
          device: { amperes: 100 },
          wiring: "raceway" as const,
        })),
      },
      "2017",
    );
  const found = {
    role: "equipment-grounding-conductor",
    at: "E1",
    size: "8 AWG",
    material: "copper",
  } as const satisfies FoundConductor;

  it("is the only one of its kind at a wrong place, and of several it is none", () => {
    expect(findings(checkRest(data(["C1"]), [found]))).toEqual([
      ["equipment-grounding-conductor C1", "wrong-place"],
    ]);
    expect(findings(checkRest(data(["C1", "C2"]), [found]))).toEqual([
      ["equipment-grounding-conductor at E1", "not-in-schedule"],
    ]);
  });
});

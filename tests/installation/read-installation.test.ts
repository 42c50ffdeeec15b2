import { InputError, type Installation, readInstallation } from "bondmil";
import { describe, expect, it } from "vitest";
import { nearest } from "../../src/input/nearest.js";
import { copper, demo, demoNames, derived, installation, refused, service, setsOf } from "./installations.js";

const circuit = (id: string, from: string, to = `${id} load`) =>
  ({ id, from, to, device: { amperes: 20 }, wiring: "raceway" }) as const;

const [run] = service().runs as [NonNullable<Installation["services"]>[number]["runs"][number]];

describe("reading an installation", () => {
  it.each(demoNames)("reads %s from text and from data alike, and shares nothing with it", (name) => {
    const data = demo(name);
    const copy = structuredClone(data);
    const read = readInstallation(data);
    expect(read).toEqual(data);
    expect(data).toEqual(copy);
    expect(readInstallation(JSON.stringify(data))).toEqual(data);
    expect(read.services?.[0]?.runs[0]).not.toBe(data.services?.[0]?.runs[0]);
  });

  it.each([
    ["truncated text", JSON.stringify(demo("shop")).slice(0, 900), "wrong-type"],
    ["no text", "", "wrong-type"],
    ["fifty million characters", " ".repeat(50_000_000), "out-of-range"],
    ["a hundred thousand brackets", "[".repeat(100_000) + "]".repeat(100_000), "out-of-range"],
    ["deep data", Array.from({ length: 60 }).reduce((inner) => [inner], 0), "out-of-range"],
    [
      "a million objects",
      JSON.stringify({ services: Array.from({ length: 1_000_000 }, () => 0).map(() => ({})) }),
      "out-of-range",
    ],
  ] as const)("refuses %s at once", (_, source, code) => {
    expect(refused(source)).toEqual([[code, ""]]);
  });

  it("ends on data that refers to itself", () => {
    const loop: unknown[] = [];
    loop.push(loop, loop);
    expect(refused({ ...installation({}), circuits: loop }).length).toBeGreaterThan(0);
  });

  it.each(["undefined", "null", "7", "[]", '"text"', "true"])("refuses %s for an installation", (text) => {
    const value = text === "undefined" ? undefined : (JSON.parse(text) as unknown);
    expect(refused(value).length).toBeGreaterThan(0);
  });

  it("refuses keys that every object inherits, and takes nothing over from them", () => {
    const text = JSON.stringify(installation({})).replace(
      "{",
      '{"__proto__":{"polluted":1},"constructor":1,',
    );
    expect(refused(text)).toEqual([
      ["unknown-key", "__proto__"],
      ["unknown-key", "constructor"],
    ]);
    const inReadings = JSON.stringify({ ...installation({}), code: { year: "2023", readings: {} } });
    expect(refused(inReadings.replace('"readings":{', '"readings":{"__proto__":"x"'))).toEqual([
      ["unknown-key", "code.readings.__proto__"],
    ]);
    expect("polluted" in {}).toBe(false);
  });

  it("refuses a newer format by name", () => {
    expect(() => readInstallation({ ...installation({}), format: 2 })).toThrow(/newer format/);
    expect(refused({ ...installation({}), format: 2, more: 1 })).toEqual([["unknown-value", "format"]]);
    expect(refused({ ...installation({}), format: 0 })).toEqual([["unknown-value", "format"]]);
    expect(refused({ ...installation({}), format: "1" })).toEqual([["unknown-value", "format"]]);
  });

  it("says what a missing member is", () => {
    const { housing: _, ...lacking } = service();
    expect(messages(installation({ services: [{ ...lacking, intersystem: [] } as never] }))).toEqual([
      'services[0].intersystem: "intersystem" is not known here; remove it, or use one of impedance, boxes, boxesWithoutSupply, buses, sharedRaceways, housing, assembly, commonElectrodeConductor, electrodesNotConnected, materials',
      'services[0].housing: missing, expected one of "separate-enclosures", "listed-assembly"',
    ]);
  });

  it("never assumes what a run lies in, and says the choices in one issue", () => {
    const { raceways: _, ...bare } = service().runs[0] ?? run;
    const system = (parts: object) => installation({ services: [service(parts as never)] });
    const path = "services[0].runs[0]";
    expect(refused(system({ runs: [bare] }))).toEqual([["missing", `${path}.raceways`]]);
    const [message] = messages(system({ runs: [bare] }));
    for (const kind of ["nonflexible-metal", "flexible-metal", "nonmetallic", "unknown"])
      expect(message).toContain(`"${kind}"`);
    expect(
      refused(installation({ derivedSystems: [derived({ runs: [{ ...bare, from: "T1", to: "P1" }] })] })),
    ).toEqual([["missing", "derivedSystems[0].runs[0].raceways"]]);
    const sharedRaceways = [{ id: "N1", kind: "nonmetallic" }];
    const inShared = { ...bare, in: "N1" };
    expect(refused(system({ runs: [inShared], sharedRaceways }))).toEqual([]);
    expect(refused(system({ runs: [inShared] }))).toEqual([["dangling-reference", `${path}.in`]]);
    expect(refused(system({ runs: [run], sharedRaceways }))).toEqual([
      ["dangling-reference", "services[0].sharedRaceways[0].id"],
    ]);
    expect(refused(system({ runs: [{ ...run, in: "N1" }], sharedRaceways }))).toEqual([
      ["unknown-key", `${path}.raceways`],
    ]);
    expect(refused(system({ runs: [{ ...inShared, racewayJumpers: "common" }], sharedRaceways }))).toEqual([
      ["unknown-key", `${path}.racewayJumpers`],
    ]);
    const byFittings = [{ id: "N1", kind: "nonmetallic", bondedBy: "fittings" }];
    expect(refused(system({ runs: [inShared], sharedRaceways: byFittings }))).toEqual([
      ["unknown-value", "services[0].sharedRaceways[0].bondedBy"],
    ]);
  });

  it("names the known key nearest to an unknown one, and lists all of an object", () => {
    const data = { ...installation({}), servces: [], bildings: [], zzz: 1 };
    expect(refused(data)).toEqual([
      ["unknown-key", "servces"],
      ["unknown-key", "bildings"],
      ["unknown-key", "zzz"],
    ]);
    expect(messages(data)).toEqual([
      'servces: "servces" is not known here; did you mean "services"?',
      'bildings: "bildings" is not known here; did you mean "buildings"?',
      'zzz: "zzz" is not known here; remove it, or use one of $schema, existing, services, derivedSystems, generators, transferSwitches, circuits, loadSideJumpers, buildings, loadSideConnections, piping, structuralMetal, intersystem, installed',
    ]);
    const inRun = { ...service().runs[0], lenghtFeet: 5 };
    expect(messages(installation({ services: [service({ runs: [inRun] as never })] }))).toEqual([
      'services[0].runs[0].lenghtFeet: "lenghtFeet" is not known here; did you mean "lengthFeet"?',
    ]);
  });

  it("says within alternatives what is wrong, not that none fits", () => {
    const withSet = (set: unknown) =>
      installation({
        services: [service({ runs: [{ ...service().runs[0], supply: { sets: [set] } }] as never })],
      });
    const path = "services[0].runs[0].supply.sets[0]";
    expect(refused(withSet({ count: 1, size: "5/0 AWG", material: "copper" }))).toEqual([
      ["unknown-size", `${path}.size`],
    ]);
    expect(refused(withSet({ count: 1, size: "4 AWG" }))).toEqual([["missing", `${path}.material`]]);
    expect(refused(withSet({ count: 1.5, size: "4 AWG", material: "copper" }))).toEqual([
      ["not-a-whole-number", `${path}.count`],
    ]);
    expect(refused(withSet({ count: 0, size: "4 AWG", material: "copper" }))).toEqual([
      ["not-positive", `${path}.count`],
    ]);
    expect(refused(withSet({ count: 1, phases: [{ size: "4 AWG", material: "lead" }] }))).toEqual([
      ["unknown-value", `${path}.phases[0].material`],
    ]);
    expect(refused(withSet({ count: 1, size: "4 AWG", material: "copper", colour: "red" }))).toEqual([
      ["unknown-key", `${path}.colour`],
    ]);
    expect(refused(withSet("4 AWG"))).toEqual([["wrong-type", path]]);
    const motor = {
      ...circuit("C1", "P"),
      device: { motor: { kind: "inverse-time-or-fuse", deviceAmperes: "20" } },
    };
    expect(refused({ ...installation({ existing: [{ id: "P" }] }), circuits: [motor] })).toEqual([
      ["wrong-type", "circuits[0].device.motor.deviceAmperes"],
    ]);
  });

  it("never suggests the opposite of what was said", () => {
    const [run] = service().runs;
    const bonded = installation({ services: [service({ grounding: "grounded" as never })] });
    expect(messages(bonded)[0]).not.toContain("did you mean");
    const flexible = installation({
      services: [service({ runs: [{ ...run, raceways: { count: 1, kind: "metallic" } }] as never })],
    });
    expect(messages(flexible)[0]).not.toContain("did you mean");
    expect(nearest("groundd", ["ungrounded", "impedance"])).toBeUndefined();
    expect(nearest("ungrounded", ["grounded"])).toBeUndefined();
    expect(nearest("ungroundd", ["ungrounded"])).toBe("ungrounded");
    expect(nearest("ngrounded", ["ungrounded"])).toBe("ungrounded");
    expect(nearest("nonmetalic", ["nonmetallic"])).toBe("nonmetallic");
  });

  it("has no room for a motor's full-load current where the rating of its device belongs", () => {
    const motor = {
      ...circuit("C1", "P"),
      device: { motor: { kind: "inverse-time-or-fuse", amperes: 28 } },
    };
    const data = { ...installation({ existing: [{ id: "P" }] }), circuits: [motor] };
    expect(refused(data)).toEqual([
      ["unknown-key", "circuits[0].device.motor.amperes"],
      ["missing", "circuits[0].device.motor.deviceAmperes"],
    ]);
  });

  it("suggests the nearest word of a list", () => {
    const data = installation({ services: [service({ grounding: "solidly grounded" as never })] });
    expect(messages(data)[0]).toMatch(/did you mean "solidly-grounded"\?$/);
  });

  it("reports everything at once", () => {
    const data = installation({
      services: [
        service({ disconnects: [{ id: "D1", designation: "service-disconnect", amperes: -5 }] }),
        { ...service(), housing: "shed" as never },
      ],
      circuits: [{ ...circuit("C1", "D1"), raceways: 1.5 }],
    });
    expect(refused({ ...data, title: "", extra: 1 })).toEqual([
      ["unknown-key", "extra"],
      ["wrong-type", "title"],
      ["not-positive", "services[0].disconnects[0].amperes"],
      ["unknown-value", "services[1].housing"],
      ["not-a-whole-number", "circuits[0].raceways"],
    ]);
  });
});

function messages(data: unknown): readonly string[] {
  try {
    readInstallation(data);
    return [];
  } catch (error) {
    if (error instanceof InputError) return error.message.split("\n");
    throw error;
  }
}

describe("references of an installation", () => {
  it("hold each of three parts of one id against the first", () => {
    const existing = [{ id: "A" }, { id: "A" }, { id: "A" }];
    const said =
      /existing\[1\].*existing\[0\]\.id has it already.*\n.*existing\[2\].*existing\[0\]\.id has it already/;
    expect(() => readInstallation(installation({ existing }))).toThrow(said);
  });

  it("are explained of piping, where it has no owner, and of nothing else", () => {
    const circuits = [{ ...circuit("C1", "D1"), of: "S1" }];
    expect(() =>
      readInstallation(installation({ services: [service()], circuits: circuits as never })),
    ).toThrow(/^circuits\[0\]\.of: "of" is not known here(?!.*piping)/s);
  });

  it("refuses ids that are given twice, wherever they stand", () => {
    const other = service({
      id: "S2",
      utility: { id: "U2", outdoorTransformer: false },
      runs: [
        {
          id: "R1",
          from: "U2",
          to: "D1",
          supply: copper as never,
          raceways: { count: 1, kind: "nonmetallic" as const },
        },
      ],
    });
    expect(
      refused(installation({ services: [service(), other], structuralMetal: [{ id: "S1", of: "S1" }] })),
    ).toEqual([
      ["duplicate-id", "services[1].runs[0].id"],
      ["duplicate-id", "services[1].disconnects[0].id"],
      ["duplicate-id", "services[1].electrodes[0].id"],
      ["duplicate-id", "structuralMetal[0].id"],
    ]);
  });

  it("lets several derived systems name one common conductor, but nothing else of that id", () => {
    const common = { commonElectrodeConductor: { id: "riser" } };
    const first = derived({ ...common, electrodes: [{ id: "G1", kind: "structural-metal", from: "riser" }] });
    const second = derived({
      ...common,
      id: "X2",
      source: { id: "T2", kind: "transformer", outdoors: false },
      runs: [
        {
          id: "Y2",
          from: "T2",
          to: "P2",
          supply: copper as never,
          raceways: { count: 1, kind: "nonmetallic" as const },
        },
      ],
      disconnects: [{ id: "P2", amperes: 100 }],
      electrodes: [],
    });
    expect(refused(installation({ derivedSystems: [first, second] }))).toEqual([]);
    expect(refused(installation({ derivedSystems: [first, second], existing: [{ id: "riser" }] }))).toEqual([
      ["duplicate-id", "derivedSystems[0].commonElectrodeConductor.id"],
    ]);
  });

  it("refuses references to nothing", () => {
    const data = installation({
      services: [
        service({
          runs: [
            {
              id: "R1",
              from: "U1",
              to: "D1",
              supply: copper as never,
              raceways: { count: 1, kind: "nonmetallic" as const },
            },
            {
              id: "R2",
              from: "D1",
              to: "X",
              supply: copper as never,
              raceways: { count: 1, kind: "nonmetallic" as const },
            },
          ],
          electrodes: [{ id: "E1", kind: "rod", from: "T1" }],
        }),
      ],
      derivedSystems: [derived({ electrodes: [{ id: "G1", kind: "rod", from: "D1" }] })],
      circuits: [circuit("C1", "E1"), circuit("C2", "P1"), circuit("C3", "C2 load")],
      buildings: [{ id: "B1", circuit: "C9", onSingleBranchCircuit: true }],
      piping: [{ id: "W1", of: "D1", kind: "water" }],
      structuralMetal: [{ id: "M1", of: "C1" }],
      intersystem: [{ id: "I1", at: "E1", termination: "apart" }],
    });
    expect(refused(data)).toEqual([
      ["dangling-reference", "services[0].runs[1].from"],
      ["dangling-reference", "services[0].runs[1].to"],
      ["dangling-reference", "services[0].electrodes[0].from"],
      ["dangling-reference", "derivedSystems[0].electrodes[0].from"],
      ["dangling-reference", "circuits[0].from"],
      ["dangling-reference", "buildings[0].circuit"],
      ["dangling-reference", "piping[0].of"],
      ["dangling-reference", "structuralMetal[0].of"],
      ["dangling-reference", "intersystem[0].at"],
    ]);
  });

  it("suggests the nearest id", () => {
    const data = installation({ existing: [{ id: "panel A" }], circuits: [circuit("C1", "panel B")] });
    expect(messages(data)).toEqual([
      'circuits[0].from: expected "panel A", received "panel B"; name something that is there',
    ]);
  });

  it("refuses places that no run reaches", () => {
    const boxes = [{ id: "W1", kind: "wireway", bondedBy: "jumper" } as const];
    expect(refused(installation({ services: [service({ boxes })] }))).toEqual([
      ["dangling-reference", "services[0].boxes[0].id"],
    ]);
  });

  it("lets a run start at a disconnect that is not service equipment, and at no other", () => {
    const ahead = (designation: "meter-disconnect" | "service-disconnect") =>
      installation({
        services: [
          service({
            disconnects: [
              {
                id: "D0",
                designation,
                amperes: 200,
                ...(designation === "meter-disconnect" && { bondedBy: "grounded-conductor" as const }),
              },
              { id: "D1", designation: "service-disconnect", amperes: 200 },
            ],
            runs: [
              {
                id: "R0",
                from: "U1",
                to: "D0",
                supply: copper as never,
                raceways: { count: 1, kind: "nonmetallic" as const },
              },
              {
                id: "R1",
                from: "D0",
                to: "D1",
                supply: copper as never,
                raceways: { count: 1, kind: "nonmetallic" as const },
              },
            ],
          }),
        ],
      });
    expect(refused(ahead("meter-disconnect"))).toEqual([]);
    expect(refused(ahead("service-disconnect"))).toEqual([
      ["dangling-reference", "services[0].runs[1].from"],
    ]);
  });

  it("refuses circles of runs, electrodes and circuits", () => {
    const run = (id: string, from: string, to: string) => ({
      id,
      from,
      to,
      supply: copper as never,
      raceways: { count: 1, kind: "nonmetallic" as const },
    });
    const boxes = ["W1", "W2"].map((id) => ({ id, kind: "wireway" as const, bondedBy: "jumper" as const }));
    const runs = [run("R1", "U1", "W1"), run("R2", "W1", "W2"), run("R3", "W2", "W1"), run("R4", "W2", "D1")];
    expect(refused(installation({ services: [service({ boxes, runs })] }))).toEqual([
      ["cycle", "services[0].runs[1].to"],
      ["cycle", "services[0].runs[2].to"],
    ]);
    const electrode = (id: string, from: string) => ({ id, from, kind: "rod" as const });
    const electrodes = [
      electrode("E1", "E2"),
      electrode("E2", "E3"),
      electrode("E3", "E2"),
      electrode("E4", "E4"),
    ];
    expect(refused(installation({ services: [service({ electrodes })] }))).toEqual([
      ["cycle", "services[0].electrodes[1].from"],
      ["cycle", "services[0].electrodes[3].from"],
    ]);
    const data = installation({
      circuits: [
        circuit("C1", "panel 2", "panel 1"),
        circuit("C2", "panel 1", "panel 2"),
        circuit("C3", "C1"),
      ],
    });
    expect(refused(data)).toEqual([
      ["cycle", "circuits[0].from"],
      ["cycle", "circuits[1].from"],
    ]);
    const byBuilding = installation({
      circuits: [circuit("C1", "B1")],
      buildings: [{ id: "B1", circuit: "C1", onSingleBranchCircuit: true }],
    });
    expect(refused(byBuilding)).toEqual([["cycle", "circuits[0].from"]]);
    const bySystem = installation({ derivedSystems: [derived()], circuits: [circuit("C1", "P1", "T1")] });
    expect(refused(bySystem)).toEqual([["cycle", "circuits[0].from"]]);
  });

  it("does not hang on long chains and many references", () => {
    const chain = Array.from({ length: 2000 }, (_, i) => circuit(`C${i}`, i === 1999 ? "C0" : `C${i + 1}`));
    expect(refused(installation({ circuits: chain })).length).toBe(2000);
    const lost = Array.from({ length: 2000 }, (_, i) => circuit(`C${i}`, `lost panel number ${i}`));
    expect(refused(installation({ circuits: lost })).length).toBe(2000);
  });
});

describe("contradictions in an installation", () => {
  const system = (parts: Parameters<typeof service>[0]): Installation =>
    installation({ services: [service(parts)] });
  const impedance = { amperes: 5, electrodeConductorAt: "impedance" } as const;
  const run = (parts: object) => [{ ...service().runs[0], ...parts }] as never;

  it.each([
    [
      "an impedance without impedance grounding",
      system({ impedance }),
      "unknown-key",
      "services[0].impedance",
    ],
    [
      "impedance grounding without impedance",
      system({ grounding: "impedance" }),
      "missing",
      "services[0].impedance",
    ],
    [
      "a phase grounded in a wye",
      system({ grounding: "grounded-phase" }),
      "unknown-value",
      "services[0].grounding",
    ],
    [
      "a solidly grounded delta",
      system({ connection: "three-phase-delta" }),
      "unknown-value",
      "services[0].grounding",
    ],
    [
      "a ring without conductor",
      system({ electrodes: [{ id: "E1", kind: "ring", from: "D1" }] }),
      "missing",
      "services[0].electrodes[0].ringConductor",
    ],
    [
      "a rod with a ring's conductor",
      system({ electrodes: [{ id: "E1", kind: "rod", ringConductor: "2 AWG", from: "D1" }] }),
      "unknown-key",
      "services[0].electrodes[0].ringConductor",
    ],
    [
      "a thin ring",
      system({ electrodes: [{ id: "E1", kind: "ring", ringConductor: "4 AWG", from: "D1" }] }),
      "out-of-range",
      "services[0].electrodes[0].ringConductor",
    ],
    [
      "raceways that share unevenly",
      system({ runs: run({ supply: setsOf(3, "500 kcmil"), raceways: { count: 2, kind: "nonmetallic" } }) }),
      "unlike-raceways",
      "services[0].runs[0].raceways.count",
    ],
    [
      "a load without grounded conductor",
      system({ grounding: "ungrounded", runs: run({ load: { amperes: 50, circuitAmperes: 100 } }) }),
      "unknown-key",
      "services[0].runs[0].load",
    ],
    [
      "bonding by a grounded conductor that is not there",
      system({
        grounding: "ungrounded",
        boxes: [{ id: "W1", kind: "gutter", bondedBy: "grounded-conductor" }],
        runs: [
          ...service().runs,
          {
            id: "R2",
            from: "U1",
            to: "W1",
            supply: copper as never,
            raceways: { count: 1, kind: "nonmetallic" as const },
          },
        ],
      }),
      "unknown-value",
      "services[0].boxes[0].bondedBy",
    ],
    [
      "a service disconnect with bonding of its own",
      system({
        disconnects: [{ id: "D1", designation: "service-disconnect", amperes: 100, bondedBy: "jumper" }],
      }),
      "unknown-key",
      "services[0].disconnects[0].bondedBy",
    ],
    [
      "no service disconnect",
      system({ disconnects: [{ id: "D1", designation: "supply-side-source", amperes: 100 }] }),
      "missing",
      "services[0].disconnects",
    ],
    [
      "phases that are not alike",
      system({
        runs: run({
          supply: {
            sets: [
              { count: 1, phases: [{ size: "4 AWG", material: "copper" }] },
              { count: 1, phases: [null, { size: "4 AWG", material: "copper" }] },
            ],
          },
        }),
      }),
      "unlike-phases",
      "services[0].runs[0].supply.sets",
    ],
    [
      "a set without conductors",
      system({ runs: run({ supply: { sets: [{ count: 1, phases: [null, null] }] } }) }),
      "empty-list",
      "services[0].runs[0].supply.sets[0].phases",
    ],
    [
      "a load that so many sets do not carry",
      system({ runs: run({ supply: { forLoad: { amperes: 3000, material: "copper", sets: 4 } } }) }),
      "out-of-range",
      "services[0].runs[0].supply.forLoad.sets",
    ],
    [
      "a load above the rating of its circuit",
      system({
        runs: run({ supply: { forLoad: { amperes: 100, circuitAmperes: 90, material: "copper", sets: 1 } } }),
      }),
      "out-of-range",
      "services[0].runs[0].supply.forLoad.circuitAmperes",
    ],
    [
      "a grounded conductor's load beyond the table",
      system({ runs: run({ load: { amperes: 2000, circuitAmperes: 2000 } }) }),
      "out-of-range",
      "services[0].runs[0].load.amperes",
    ],
    [
      "an impedance's current beyond the table",
      system({ grounding: "impedance", impedance: { ...impedance, amperes: 5000 } }),
      "out-of-range",
      "services[0].impedance.amperes",
    ],
    [
      "a control transformer that is none",
      installation({
        derivedSystems: [
          derived({ source: { id: "T1", kind: "generator", outdoors: false, controlTransformer: true } }),
        ],
      }),
      "unknown-value",
      "derivedSystems[0].source.controlTransformer",
    ],
    [
      "a generator with integral device but no rating",
      installation({
        generators: [{ id: "N", supply: copper as never, to: "T", integralOvercurrentDevice: true }],
      }),
      "missing",
      "generators[0].deviceAmperes",
    ],
    [
      "a device beyond the table",
      installation({
        existing: [{ id: "P" }],
        circuits: [{ ...circuit("C1", "P"), device: { amperes: 6001 } }],
      }),
      "out-of-range",
      "circuits[0].device",
    ],
    [
      "parallel raceways without number",
      installation({
        existing: [{ id: "P" }],
        circuits: [{ ...circuit("C1", "P"), wiring: "parallel-raceways" }],
      }),
      "missing",
      "circuits[0].raceways",
    ],
    [
      "several single raceways",
      installation({ existing: [{ id: "P" }], circuits: [{ ...circuit("C1", "P"), raceways: 2 }] }),
      "unknown-value",
      "circuits[0].raceways",
    ],
    [
      "an increase of nothing",
      installation({
        existing: [{ id: "P" }],
        circuits: [
          {
            ...circuit("C1", "P"),
            increasedFrom: { conductors: setsOf(1, "4 AWG") as never, reason: "other" },
          },
        ],
      }),
      "missing",
      "circuits[0].conductors",
    ],
    [
      "an increase from another material",
      installation({
        existing: [{ id: "P" }],
        circuits: [
          {
            ...circuit("C1", "P"),
            conductors: copper as never,
            increasedFrom: { conductors: setsOf(1, "4 AWG", "aluminum") as never, reason: "other" },
          },
        ],
      }),
      "unlike-materials",
      "circuits[0].increasedFrom.conductors",
    ],
    [
      "a building's electrode without feeder conductors",
      installation({
        existing: [{ id: "P" }],
        circuits: [circuit("C1", "P")],
        buildings: [
          {
            id: "B1",
            circuit: "C1",
            onSingleBranchCircuit: false,
            electrodes: [{ id: "E1", kind: "rod", from: "B1" }],
          },
        ],
      }),
      "missing",
      "buildings[0].circuit",
    ],
    [
      "a building's piping without feeder conductors",
      installation({
        existing: [{ id: "P" }],
        circuits: [circuit("C1", "P")],
        buildings: [{ id: "B1", circuit: "C1", onSingleBranchCircuit: true }],
        piping: [{ id: "W", of: "B1", kind: "water" }],
      }),
      "missing",
      "piping[0].of",
    ],
    [
      "the piping of a control transformer as electrode",
      {
        ...installation({
          derivedSystems: [
            derived({
              source: { id: "T1", kind: "transformer", outdoors: false, controlTransformer: true },
              runs: [
                {
                  id: "Y1",
                  from: "T1",
                  to: "P1",
                  supply: setsOf(1, "14 AWG"),
                  raceways: { count: 1, kind: "nonmetallic" },
                },
              ],
              disconnects: [{ id: "P1", amperes: 15 }],
              electrodes: [],
            }),
          ],
        }),
        piping: [{ id: "W", of: "X1", kind: "water", isElectrode: true }],
      },
      "unknown-value",
      "piping[0].isElectrode",
    ],
    [
      "a busbar's conductor without busbar",
      {
        ...system({}),
        intersystem: [{ id: "I", at: "D1", termination: "apart", electrodeConductorOnBusbar: "4 AWG" }],
      },
      "unknown-key",
      "intersystem[0].electrodeConductorOnBusbar",
    ],
    [
      "a busbar before its edition",
      { ...system({}), code: { year: "2014" }, intersystem: [{ id: "I", at: "D1", termination: "busbar" }] },
      "unknown-value",
      "intersystem[0].termination",
    ],
    [
      "an unknown reading",
      { ...system({}), code: { year: "2014", readings: { "cap-in-2015": "absent" } } },
      "unknown-key",
      "code.readings.cap-in-2015",
    ],
    [
      "an unknown alternative",
      { ...system({}), code: { year: "2014", readings: { "cap-in-2014": "perhaps" } } },
      "unknown-value",
      "code.readings.cap-in-2014",
    ],
  ] as const)("refuses %s", (_, data, code, path) => {
    expect(refused(data)).toEqual([[code, path]]);
  });

  it("refuses a grounded phase that no conductor of its material equals", () => {
    const large = system({
      grounding: "grounded-phase",
      connection: "three-phase-delta",
      runs: run({ supply: setsOf(1, "2000 kcmil") }),
    });
    expect(refused(large)).toEqual([]);
    const aluminum = { ...large, materials: { ...large.materials, groundedConductors: "aluminum" as const } };
    expect(refused(aluminum)).toEqual([["out-of-range", "services[0].runs[0].supply"]]);
  });
});

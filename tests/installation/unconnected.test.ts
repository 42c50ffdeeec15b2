import { endName, InputError, type Installation, issuesSoFar, readInstallation, scheduleOf } from "bondmil";
import { describe, expect, it } from "vitest";
import { derived, installation, refused, service } from "./installations.js";

const violations = (drawn: Installation) =>
  scheduleOf(drawn).violations.map(({ code, section, at }) => [code, section, ...at]);

describe("a system without any electrode conductor", () => {
  const building = {
    id: "B1",
    circuit: "C1",
    onSingleBranchCircuit: false,
  };
  const circuits = [
    {
      id: "C1",
      from: "D1",
      to: "P9",
      device: { amperes: 100 },
      conductors: { sets: [{ count: 1, size: "3 AWG", material: "copper" }] },
      wiring: "raceway",
    },
  ] as const;

  it.each([
    [
      "a service",
      { services: [service({ electrodes: [] })] },
      ["electrode-conductor-missing", "250.24(E)", "S1"],
    ],
    [
      "a derived system",
      { services: [service()], derivedSystems: [derived({ electrodes: [] })] },
      ["electrode-conductor-missing", "250.30(A)(5)", "X1"],
    ],
    [
      "a building",
      { services: [service()], circuits, buildings: [building] },
      ["electrode-conductor-missing", "250.32(A)", "B1"],
    ],
  ] as const)("is a violation of %s", (_, parts, expected) => {
    expect(violations(installation(parts as Partial<Installation>))).toEqual([expected]);
  });

  it("bonds water piping of a building on one branch circuit, which has to have no electrode", () => {
    const drawn = (onSingleBranchCircuit: boolean) =>
      installation({
        services: [service()],
        circuits,
        buildings: [{ ...building, onSingleBranchCircuit }],
        piping: [{ id: "W1", of: "B1", kind: "water", isElectrode: true }],
      });
    const outcomeOf = (one: Installation) =>
      scheduleOf(one).conductors.find(({ id }) => id === "water-piping-bonding-jumper W1")?.result.outcome;
    expect(outcomeOf(drawn(true))).toMatchObject({ kind: "conductor", size: "8 AWG" });
    expect(violations(drawn(true))).toEqual([]);
    expect(outcomeOf(drawn(false))).toMatchObject({ kind: "not-required", why: "part-is-the-electrode" });
    expect(violations(drawn(false)).map(([code]) => code)).toContain("electrode-not-connected");
  });

  it.each([
    ["2008", "250.24(D)", "250.30(A)(3)"],
    ["2020", "250.24(D)", "250.30(A)(5)"],
    ["2023", "250.24(E)", "250.30(A)(5)"],
  ] as const)("has the sections of its edition: %s", (year, ofService, ofDerived) => {
    const drawn = installation(
      { services: [service({ electrodes: [] })], derivedSystems: [derived({ electrodes: [] })] },
      year,
    );
    expect(violations(drawn)).toEqual([
      ["electrode-conductor-missing", ofService, "S1"],
      ["electrode-conductor-missing", ofDerived, "X1"],
    ]);
  });

  it("has those of an ungrounded system where it is one", () => {
    const grounding = "ungrounded";
    const drawn = installation({
      services: [service({ grounding, electrodes: [] })],
      derivedSystems: [derived({ grounding, electrodes: [] })],
    });
    expect(violations(drawn)).toEqual([
      ["electrode-conductor-missing", "250.24(F)", "S1"],
      ["electrode-conductor-missing", "250.30(B)(1)", "X1"],
    ]);
  });

  it("has that of the impedance where it is grounded through one", () => {
    const impedance = { id: "Z1", amperes: 10, electrodeConductorAt: "impedance" } as const;
    const drawn = installation({
      services: [service({ grounding: "impedance", impedance, electrodes: [] })],
    });
    expect(violations(drawn)).toContainEqual(["electrode-conductor-missing", "250.36(F)", "S1"]);
  });

  it.each([
    [
      "a common conductor",
      { services: [service({ electrodes: [], commonElectrodeConductor: { id: "C" } })] },
    ],
    [
      "a building on one branch circuit",
      { services: [service()], circuits, buildings: [{ ...building, onSingleBranchCircuit: true }] },
    ],
  ])("is none with %s", (_, parts) => {
    expect(violations(installation(parts as Partial<Installation>))).toEqual([]);
  });
});

describe("a frame that is said to be an electrode", () => {
  const drawn = (electrodes: object[], of = "S1") =>
    installation({
      services: [service({ electrodes: electrodes as never })],
      derivedSystems: [derived()],
      structuralMetal: [{ id: "M1", of, isElectrode: true }],
    });
  const footing = { id: "E1", kind: "concrete-encased", from: "D1" };

  it("is not connected where no list of electrodes names it", () => {
    expect(violations(drawn([footing]))).toEqual([["electrode-not-connected", "250.50", "M1"]]);
  });

  it("is connected by a conductor to it, or may be the one of its kind under another id", () => {
    expect(violations(drawn([footing, { electrode: "M1", from: "D1" }]))).toEqual([]);
    expect(violations(drawn([{ id: "E2", kind: "structural-metal", from: "D1" }]))).toEqual([]);
    expect(violations(drawn([footing], "X1"))).toEqual([]);
  });
});

describe("the equipment grounding conductor of a circuit", () => {
  const circuit = {
    id: "C1",
    from: "D1",
    to: "pump",
    device: { amperes: 60 },
    wiring: "raceway",
    racewayServes: true,
  };
  const line = (year: "2020" | "2023", parts: object = {}) =>
    scheduleOf(
      installation({ services: [service()], circuits: [{ ...circuit, ...parts } as never] }, year),
    ).conductors.find(({ role }) => role === "equipment-grounding-conductor");

  it("is not required where the metal raceway serves, by the section of the edition", () => {
    const none = { kind: "not-required", why: "metal-raceway-serves" };
    expect(line("2020")).toMatchObject({
      quantity: 0,
      result: { outcome: { ...none, citation: { section: "250.118" } } },
    });
    expect(line("2023")).toMatchObject({
      quantity: 0,
      result: { outcome: { ...none, citation: { section: "250.118(A)" } } },
    });
    expect(line("2023", { racewayServes: false })).toMatchObject({ quantity: 1 });
  });

  it("serves in raceways alone", () => {
    const parts = { services: [service()], circuits: [{ ...circuit, wiring: "tray-cable" } as never] };
    expect(refused(installation(parts))).toEqual([["unknown-value", "circuits[0].racewayServes"]]);
  });
});

describe("water piping that continues a water pipe among the electrodes", () => {
  const jumper = (bondedTo?: string) =>
    scheduleOf(
      installation({
        services: [
          service({
            electrodes: [
              { id: "E1", kind: "metal-water-pipe", from: "D1" },
              { id: "E2", kind: "concrete-encased", from: "D1" },
            ],
          }),
        ],
        piping: [{ id: "W1", of: "S1", kind: "water", ...(bondedTo && { bondedTo }) }],
      }),
    ).conductors.find(({ subject }) => subject === "W1");

  it("is bonded by the electrode conductor where it names the electrode", () => {
    expect(jumper("E1")).toMatchObject({
      quantity: 0,
      to: { kind: "place", id: "E1" },
      result: {
        outcome: {
          kind: "not-required",
          why: "part-is-the-electrode",
          citation: { section: "250.104(A)(1)" },
        },
      },
    });
  });

  it("has a jumper and a caution where nothing says that they are one pipe", () => {
    expect(jumper()?.quantity).toBe(1);
    expect(jumper()?.result.cautions.map(({ code }) => code)).toContain("piping-may-continue-electrode");
  });

  it("names no electrode of another kind", () => {
    expect(() => jumper("E2")).toThrow(InputError);
  });
});

it("leads the jumper around a meter from the pipe on one side to the pipe on the other", () => {
  const { conductors } = scheduleOf(
    installation({
      services: [service()],
      piping: [{ id: "W1", of: "S1", kind: "water", removable: [{ id: "M1", kind: "meter" }] }],
    }),
  );
  const around = conductors.find(({ subject }) => subject === "M1");
  expect(around && [endName(around.from), endName(around.to)]).toEqual([
    "W1 on one side of M1",
    "W1 on the other side of M1",
  ]);
});

describe("bad input", () => {
  const messages = (source: unknown): readonly string[] => {
    try {
      readInstallation(source);
      return [];
    } catch (error) {
      if (error instanceof InputError) return error.issues.map(({ message }) => message);
      throw error;
    }
  };

  it("says of an owner of other piping by what it is sized", () => {
    const drawn = installation({
      services: [service()],
      piping: [{ id: "G", kind: "other", of: "S1", deviceAmperes: 20 } as never],
    });
    expect(messages(drawn)).toEqual([expect.stringContaining("deviceAmperes")]);
    expect(issuesSoFar(drawn).map(({ message }) => message)).toEqual(messages(drawn));
  });

  it("says once that something was copied whole, and no circle where two things have one id", () => {
    expect(refused(installation({ services: [service(), service()] }))).toEqual([
      ["duplicate-id", "services[1].id"],
    ]);
    const [run] = service().runs;
    const drawn = service({
      boxes: [{ id: "D1", kind: "meter", bondedBy: "jumper" }],
      runs: [
        { ...run, id: "R1", from: "U1", to: "D1" } as never,
        { ...run, id: "R2", from: "D1", to: "D1" } as never,
      ],
    });
    expect(refused(installation({ services: [drawn] }))).toEqual([
      ["duplicate-id", "services[0].disconnects[0].id"],
    ]);
  });
});

import { type Installation, render, reportDocument, scheduleOf } from "bondmil";
import { describe, expect, it } from "vitest";
import { derived, installation, refused, service, setsOf } from "./installations.js";

type Service = NonNullable<Installation["services"]>[number];

const meter = { id: "M1", kind: "meter" } as const;
const around = (data: Installation) =>
  scheduleOf(data).conductors.filter(({ subject }) => subject === meter.id);

describe("a meter in a water pipe", () => {
  const pipe = { id: "E1", kind: "metal-water-pipe", from: "D1", removable: [meter] } as const;

  it("has a jumper around it of the size of the electrode conductor where the pipe is the electrode", () => {
    const data = installation({ services: [service({ electrodes: [pipe] })] });
    // 500 kcmil copper: 1/0 AWG copper by Table 250.66.
    expect(around(data)).toMatchObject([
      {
        role: "electrode-bonding-jumper",
        from: { kind: "pipe-side", of: "E1", fitting: "M1", side: "one" },
        to: { kind: "pipe-side", of: "E1", fitting: "M1", side: "other" },
        quantity: 1,
        result: { outcome: { size: "1/0 AWG" } },
      },
    ]);
    expect(scheduleOf(data).cautions).toContainEqual({
      code: "jumper-around-removable",
      section: "250.53(D)(1), 250.68(B)",
      at: "M1",
    });
    expect(render(reportDocument(data), { as: "text" }).replaceAll(/\s+/g, " ")).toContain(
      "can be taken out with the jumper in place",
    );
  });

  it("has one of the size of the bonding jumper where the pipe is bonded", () => {
    const data = installation({
      services: [service({ runs: [{ ...run, supply: setsOf(4, "600 kcmil") }] })],
      piping: [{ id: "W1", of: "S1", kind: "water", removable: [meter] }],
    });
    const [jumper] = scheduleOf(data).conductors.filter(({ subject }) => subject === "W1");
    expect(around(data).map(({ result }) => result)).toEqual([jumper?.result]);
  });

  it("has one as for an electrode where the pipe is a derived system's own", () => {
    const data = installation({
      derivedSystems: [derived()],
      piping: [{ id: "W1", of: "X1", kind: "water", isElectrode: true, removable: [meter] }],
    });
    expect(around(data)).toMatchObject([{ role: "electrode-bonding-jumper", quantity: 1 }]);
  });

  it("has one as for an electrode where the pipe is that of one building, and needs a smaller jumper at another", () => {
    const feeder = (to: string, amperes: number, size: "600 kcmil" | "3/0 AWG") => ({
      ...{ id: `to ${to}`, from: "main panel", to, device: { amperes }, wiring: "raceway" as const },
      conductors: { sets: [{ count: 1, size, material: "copper" as const }] },
    });
    const data = installation({
      code: { year: "2023" },
      materials: {
        ...{ bondingJumpers: "aluminum", groundedConductors: "copper" },
        ...{ electrodeConductors: "copper", equipmentGrounding: "copper" },
      },
      existing: [{ id: "main panel" }],
      circuits: [feeder("A", 400, "600 kcmil"), feeder("B", 600, "3/0 AWG")],
      buildings: ["A", "B"].map((id) => ({ id, circuit: `to ${id}`, onSingleBranchCircuit: false })),
      piping: [{ id: "W1", kind: "water", of: ["A", "B"], isElectrode: true, removable: [meter] }],
    });
    const jumpers = scheduleOf(data).conductors.filter(({ subject }) => subject === "W1");
    // Table 250.122: 2/0 AWG aluminum for 600 A, larger than the electrode conductor of 3/0 AWG copper, 2 AWG aluminum by Table 250.66.
    expect(jumpers.map(({ result: { outcome } }) => outcome)).toMatchObject([
      { kind: "not-required", why: "part-is-the-electrode" },
      { kind: "conductor", size: "2/0 AWG" },
    ]);
    // Table 250.66: 1/0 AWG copper for 600 kcmil, or 3/0 AWG aluminum, which is larger than 2/0 AWG.
    expect(around(data)).toMatchObject([
      { role: "electrode-bonding-jumper", result: { material: "copper", outcome: { size: "1/0 AWG" } } },
    ]);
  });

  it("has one as for an electrode where the pipe serves one system as electrode conductor, and is bonded to another", () => {
    const other = derived({
      id: "X2",
      source: { id: "T2", kind: "transformer", outdoors: false },
      runs: [
        {
          ...{ id: "Y2", from: "T2", to: "P2", supply: setsOf(1, "4 AWG") },
          raceways: { count: 1, kind: "nonmetallic" },
        },
      ],
      disconnects: [{ id: "P2", amperes: 60 }],
      electrodes: [],
    });
    const data = installation({
      derivedSystems: [derived({ commonElectrodeConductor: { id: "W1" } }), other],
      piping: [{ id: "W1", kind: "water", of: ["X1", "X2"], removable: [meter] }],
    });
    // Table 250.66: 1/0 AWG copper for 500 kcmil; 8 AWG would do for X2 alone.
    expect(around(data)).toMatchObject([
      { role: "electrode-bonding-jumper", result: { outcome: { size: "1/0 AWG" } } },
    ]);
  });

  it("is no part of another electrode, and has an id of its own", () => {
    const of = (electrodes: unknown) =>
      refused(installation({ services: [service({ electrodes } as never)] }));
    expect(of([{ ...pipe, kind: "rod" }])).toEqual([["unknown-key", "services[0].electrodes[0].removable"]]);
    expect(of([{ ...pipe, removable: [{ ...meter, id: "D1" }] }])).toEqual([
      ["duplicate-id", "services[0].electrodes[0].removable[0].id"],
    ]);
  });
});

const [run] = service().runs as unknown as [Service["runs"][number]];

describe("a box without supply conductors", () => {
  const withBox = (parts: object = {}) =>
    installation({
      services: [
        service({
          boxesWithoutSupply: [
            {
              id: "CT meter",
              kind: "meter",
              beside: "D1",
              bondedBy: "equipment-grounding-conductor",
              ...parts,
            },
          ],
        }),
      ],
    });

  it("needs no run, and a line says by what it is bonded", () => {
    expect(scheduleOf(withBox()).conductors.filter(({ subject }) => subject === "CT meter")).toMatchObject([
      {
        role: "supply-side-bonding-jumper",
        from: { kind: "place", id: "D1" },
        to: { kind: "place", id: "CT meter" },
        quantity: 0,
        result: { outcome: { kind: "not-required", why: "bonded-with-its-wiring" } },
      },
    ]);
    const [other] = scheduleOf(withBox({ bondedBy: "metal-raceway" })).conductors.filter(
      ({ subject }) => subject === "CT meter",
    );
    expect(other?.result.outcome).toMatchObject({ why: "bonded-by-its-raceway" });
    expect(refused(withBox({ beside: "D9" }))).toEqual([
      ["dangling-reference", "services[0].boxesWithoutSupply[0].beside"],
    ]);
  });
});

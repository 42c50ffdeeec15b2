import { scheduleOf } from "bondmil";
import { describe, expect, it } from "vitest";
import { checkRest, findings, piece } from "./found.js";
import { derived, installation, service } from "./installations.js";

describe("conductors of two systems between the same places", () => {
  const drawn = installation({
    derivedSystems: [derived({ jumperAt: "disconnects", electrodes: [{ electrode: "G1", from: "P1" }] })],
    buildings: [
      {
        id: "B1",
        disconnect: "P1",
        onSingleBranchCircuit: false,
        electrodes: [{ id: "G1", kind: "structural-metal", from: "B1" }],
      },
    ],
  });
  const name = "grounding-electrode-conductor G1";
  const ids = [name, `${name} from P1`];

  it("are two in the schedule", () => {
    const { conductors } = scheduleOf(drawn);
    const electrode = conductors.filter(({ role }) => role === "grounding-electrode-conductor");
    expect(electrode.map(({ id }) => id).sort()).toEqual(ids);
  });

  it.each([
    ["one by one", [piece(name, "1/0 AWG"), piece(name, "1/0 AWG")], []],
    ["in one entry", [piece(name, "1/0 AWG", { quantity: 2 })], []],
    ["with one too small", [piece(name, "2 AWG"), piece(name, "1/0 AWG")], ["short"]],
    [
      "with one as both",
      [piece(name, "1/0 AWG", { servesAlso: [{ role: "grounding-electrode-conductor", of: "G1" }] })],
      [],
    ],
  ] as const)("are found %s", (_, found, expected) => {
    expect(findings(checkRest(drawn, found)).map(([, kind]) => kind)).toEqual(expected);
  });

  it("give the larger one found to the line that requires more", () => {
    // The transformer's conductor is of all its sets, that of the building of those that go there.
    const two = installation({
      ...drawn,
      derivedSystems:
        drawn.derivedSystems?.map((one) => ({
          ...one,
          runs: [...one.runs, ...one.runs.map((run) => ({ ...run, id: "Y2", to: "P2" }))],
          disconnects: [...one.disconnects, { id: "P2", amperes: 400 }],
          jumperAt: "source" as const,
          electrodes: [{ electrode: "G1", from: "P1" }],
        })) ?? [],
    });
    const required = Object.fromEntries(
      scheduleOf(two).conductors.map(({ id, result }) => [id, result.requiredArea]),
    );
    expect(ids.map((id) => required[id])).toEqual([105_600, 133_100]);
    for (const found of [
      [piece(name, "1/0 AWG"), piece(name, "2/0 AWG")],
      [piece(name, "2/0 AWG"), piece(name, "1/0 AWG")],
    ]) {
      const kinds = findings(checkRest(two, found)).filter(([, kind]) => kind === "short");
      expect(kinds).toEqual([]);
    }
  });
});

describe("an electrode that an arrangement reaches by a moved conductor and by a drawn one", () => {
  it("has the one that is drawn there, with its own material", () => {
    const { conductors } = scheduleOf(
      installation({
        derivedSystems: [
          derived({
            jumperAt: "compare",
            electrodes: [
              { id: "G1", kind: "structural-metal", from: "T1" },
              { electrode: "G1", from: "P1", materials: { electrodeConductors: "aluminum" } },
            ],
          }),
        ],
      }),
    );
    const electrode = conductors.filter(({ role }) => role === "grounding-electrode-conductor");
    expect(electrode.map(({ alternative, result: { material } }) => [alternative, material])).toEqual([
      ["jumper-at-source", "copper"],
      ["jumper-in-each-enclosure", "aluminum"],
    ]);
  });
});

describe("a pipe that a control transformer has among its electrodes", () => {
  const drawn = (controlTransformer: boolean) =>
    installation({
      services: [service()],
      derivedSystems: [
        derived({
          source: { id: "T1", kind: "transformer", outdoors: false, controlTransformer },
          runs: [
            {
              id: "Y1",
              from: "T1",
              to: "P1",
              supply: { sets: [{ count: 1, size: "12 AWG", material: "copper" }] },
              raceways: { count: 1, kind: "nonmetallic" },
            },
          ],
          disconnects: [{ id: "P1", amperes: 5 }],
          electrodes: [{ electrode: "W1", from: "T1" }],
        }),
      ],
      piping: [{ id: "W1", kind: "water", of: "X1" }],
    });

  it("is bonded by a jumper, for no electrode conductor is required there", () => {
    const jumper = (of: boolean) =>
      scheduleOf(drawn(of)).conductors.find(({ role }) => role === "water-piping-bonding-jumper")?.result
        .outcome;
    expect(jumper(false)).toMatchObject({ kind: "not-required", why: "part-is-the-electrode" });
    expect(jumper(true)).toMatchObject({ kind: "conductor" });
  });
});

import type { FoundConductor, Installation } from "bondmil";
import { describe, expect, it } from "vitest";
import { checkFound, checkRest, findings, foundAsScheduled, piece } from "./found.js";
import { copper, installation, service, setsOf } from "./installations.js";

const jumper = (at: string, role = "main-bonding-jumper") =>
  ({ role, at, size: "4/0 AWG", material: "copper" }) as FoundConductor;
const kinds = (data: Installation, at: string) =>
  checkRest(data, [jumper(at)]).findings.map(({ kind, citation }) => [kind, citation?.section]);
const panel = (parts: Partial<Installation>) =>
  installation(
    {
      services: [service({ electrodes: [] })],
      circuits: [
        {
          id: "F1",
          from: "D1",
          to: "panel",
          device: { amperes: 200 },
          wiring: "raceway",
          conductors: copper,
        },
      ],
      ...parts,
    },
    "2017",
  );

describe("a connection of the grounded conductor beyond the jumper of its system", () => {
  it("may stay ahead of the service disconnect, in a box that the schedule names for it", () => {
    const raceways = { count: 1, kind: "nonmetallic" } as const;
    const run = (id: string, from: string, to: string) => ({ id, from, to, supply: copper, raceways });
    const box = { id: "W1", kind: "wireway", bondedBy: "jumper" } as const;
    const runs = [run("R1", "U1", "W1"), run("R2", "W1", "D1")];
    const data = installation({ services: [service({ boxes: [box], runs, electrodes: [] })] }, "2017");
    expect(kinds(data, "W1")).toEqual([]);
    const { at: _, ...anywhere } = jumper("W1");
    expect(findings(checkRest(data, [anywhere as FoundConductor]))).toEqual([]);
  });

  it("is permitted under the exception that it is drawn with, and forbidden without", () => {
    const exception = {
      kind: "meter-enclosure",
      besideServiceDisconnect: true,
      groundFaultProtection: false,
      groundedConductor: { size: "6 AWG", material: "copper" },
    } as const;
    const drawn = (parts: object) => panel({ loadSideConnections: [{ id: "L1", at: "panel", ...parts }] });
    expect(kinds(drawn({ exception }), "panel")).toEqual([]);
    expect(kinds(drawn({ exception: { ...exception, besideServiceDisconnect: false } }), "panel")).toEqual([
      ["not-permitted", "250.142(B) Exception No. 2"],
    ]);
    expect(kinds(drawn({}), "panel")).toEqual([["not-permitted", "250.24(A)(5)"]]);
    expect(kinds(panel({}), "panel")).toEqual([["not-permitted", "250.24(A)(5)"]]);
  });

  it("stays at an existing building whose grounded conductor may, and nowhere else", () => {
    const none = { equipmentGroundingConductor: false, continuousMetalPath: false };
    const at = (groundFaultProtection: boolean) =>
      panel({
        circuits: [
          {
            id: "F1",
            from: "D1",
            to: "panel",
            device: { amperes: 200 },
            wiring: "raceway",
            conductors: copper,
            groundedConductor: {},
          },
        ],
        buildings: [
          {
            id: "barn",
            circuit: "F1",
            onSingleBranchCircuit: false,
            existingGroundedConductor: { ...none, groundFaultProtection },
          },
        ],
      });
    for (const place of ["barn", "panel"]) {
      expect(kinds(at(false), place)).toEqual([]);
      expect(kinds(at(true), place)).toEqual([["not-permitted", "250.32(B)(1) Exception No. 1"]]);
    }
  });

  it("is not permitted at a generator that is not separately derived", () => {
    const generator = { id: "N1", supply: copper, to: "ATS", deviceAmperes: 400 };
    const data = panel({
      generators: [{ ...generator, integralOvercurrentDevice: true }],
      transferSwitches: [{ id: "ATS", groundedConductor: "carried-through" }],
    });
    expect(kinds(data, "N1").map(([kind]) => kind)).toEqual(["not-permitted"]);
    expect(findings(checkFound(data, foundAsScheduled(data)))).toEqual([]);
  });
});

describe("what is listed as scheduled", () => {
  it("takes along the fittings of its water pipes", () => {
    const electrode = { id: "E1", kind: "metal-water-pipe", from: "D1" } as const;
    const removable = [{ id: "M1", kind: "meter" }] as const;
    const data = installation({ services: [service({ electrodes: [{ ...electrode, removable }] })] });
    for (const id of ["S1", "E1"])
      expect(
        findings(checkFound(data, [], { asScheduled: [id] })).filter(([one]) => one.endsWith(" M1")),
      ).toEqual([]);
    const other = checkFound(data, [], { asScheduled: ["D1"] });
    expect(findings(other)).toContainEqual(["electrode-bonding-jumper M1", "missing"]);
  });
});

describe("a raceway that several runs share", () => {
  it("may be bonded by fittings", () => {
    const run = (id: string, to: string) => ({
      id,
      from: "U1",
      to,
      supply: setsOf(1, "500 kcmil"),
      in: "N1",
    });
    const data = installation({
      services: [
        service({
          runs: [run("R1", "D1"), run("R2", "D2")],
          sharedRaceways: [{ id: "N1", kind: "nonflexible-metal" }],
          disconnects: ["D1", "D2"].map((id) => ({ id, designation: "service-disconnect", amperes: 400 })),
        }),
      ],
    });
    const { size: _, material: __, ...instead } = piece("supply-side-bonding-jumper N1", "4 AWG");
    const fittings = { ...instead, instead: "bonding-fittings" } as FoundConductor;
    expect(findings(checkRest(data, [fittings]))).toEqual([]);
  });
});

import { checkOf, InputError, type Installation, readInstallation, scheduleOf } from "bondmil";
import { describe, expect, it } from "vitest";
import { derived, installation, refused, service, setsOf } from "./installations.js";

/** The material of each conductor of a schedule, by its id. */
function materials(drawn: Installation): Readonly<Record<string, string>> {
  return Object.fromEntries(scheduleOf(drawn).conductors.map(({ id, result }) => [id, result.material]));
}

const shop = installation({
  existing: [{ id: "P9" }],
  services: [
    service({
      boxes: [{ id: "W1", kind: "wireway", bondedBy: "jumper", materials: { bondingJumpers: "aluminum" } }],
      runs: [
        {
          id: "R1",
          from: "U1",
          to: "W1",
          supply: setsOf(1, "500 kcmil"),
          raceways: { count: 1, kind: "nonmetallic" },
          materials: { groundedConductors: "aluminum" },
        },
        {
          id: "R2",
          from: "W1",
          to: "D1",
          supply: setsOf(1, "500 kcmil"),
          raceways: { count: 1, kind: "flexible-metal" },
          materials: { bondingJumpers: "copper-clad aluminum" },
        },
      ],
      disconnects: [
        {
          id: "D1",
          designation: "service-disconnect",
          amperes: 400,
          materials: { electrodeConductors: "aluminum" },
        },
      ],
      electrodes: [
        { id: "E1", kind: "metal-water-pipe", from: "D1" },
        {
          id: "E2",
          kind: "rod",
          from: "D1",
          ferrousRaceway: true,
          materials: { electrodeConductors: "copper" },
        },
      ],
      materials: { electrodeConductors: "copper-clad aluminum" },
    }),
  ],
  circuits: [
    {
      id: "C1",
      from: "P9",
      to: "P8",
      device: { amperes: 100 },
      wiring: "raceway",
      materials: { equipmentGrounding: "aluminum" },
    },
  ],
  piping: [{ id: "gas", kind: "other", deviceAmperes: 20, materials: { bondingJumpers: "aluminum" } }],
});

describe("materials of single conductors", () => {
  it("are those of the nearest thing that names one, and else the installation's", () => {
    expect(materials(shop)).toEqual({
      "main-bonding-jumper D1": "copper",
      "main-bonding-jumper W1": "copper",
      "supply-side-bonding-jumper R1": "copper",
      "supply-side-bonding-jumper W1": "aluminum",
      "supply-side-bonding-jumper R2": "copper-clad aluminum",
      "grounded-conductor R1": "aluminum",
      "grounded-conductor R2": "copper",
      "grounding-electrode-conductor E1": "aluminum",
      "grounding-electrode-conductor E2": "copper",
      "electrode-raceway-bonding-jumper E2": "copper",
      "equipment-grounding-conductor C1": "aluminum",
      "other-piping-bonding-jumper gas": "aluminum",
    });
  });

  it("size what they are named for and nothing else", () => {
    const area = (drawn: Installation) =>
      Object.fromEntries(scheduleOf(drawn).conductors.map(({ id, result }) => [id, result.requiredArea]));
    const { piping: _, ...plain } = shop;
    const changed = area({ ...plain, piping: [{ id: "gas", kind: "other", deviceAmperes: 20 }] });
    const before = area(shop);
    const moved = Object.keys(before).filter((id) => before[id] !== changed[id]);
    expect(moved).toEqual(["other-piping-bonding-jumper gas"]);
  });

  it("are those of the disconnect that a tap starts from", () => {
    const [run] = service().runs;
    const disconnects = ["D1", "D2"].map((id) => {
      return { id, designation: "service-disconnect" as const, amperes: 400 };
    });
    const [first, second] = disconnects;
    const taps = service({
      disconnects: [first, { ...second, materials: { electrodeConductors: "aluminum" } }] as never,
      runs: disconnects.flatMap(({ id }) => (run === undefined ? [] : [{ ...run, id: `R ${id}`, to: id }])),
      commonElectrodeConductor: { id: "CG" },
      electrodes: [{ id: "E1", kind: "other", from: "CG" }],
    });
    expect(materials(installation({ services: [taps] }))).toMatchObject({
      "grounding-electrode-tap D1": "copper",
      "grounding-electrode-tap D2": "aluminum",
    });
  });

  it("are of every tap and common conductor too", () => {
    const common = { id: "CG", materials: { electrodeConductors: "aluminum" } } as const;
    const drawn = installation({
      derivedSystems: [
        derived({
          commonElectrodeConductor: common,
          electrodes: [{ id: "G1", kind: "structural-metal", from: "CG" }],
        }),
        derived({
          id: "X2",
          source: { id: "T2", kind: "transformer", outdoors: false },
          runs: [
            {
              id: "Y2",
              from: "T2",
              to: "P2",
              supply: setsOf(1, "3/0 AWG"),
              raceways: { count: 1, kind: "nonmetallic" },
            },
          ],
          disconnects: [{ id: "P2", amperes: 200 }],
          commonElectrodeConductor: { id: "CG" },
          electrodes: [],
          materials: { electrodeConductors: "copper-clad aluminum" },
        }),
      ],
    });
    expect(materials(drawn)).toMatchObject({
      "grounding-electrode-conductor G1": "aluminum",
      "grounding-electrode-tap T1": "copper",
      "grounding-electrode-tap T2": "copper-clad aluminum",
    });
    const [first, second] = drawn.derivedSystems ?? [];
    const unlike = {
      ...drawn,
      derivedSystems: [
        first,
        { ...second, commonElectrodeConductor: { id: "CG", materials: { electrodeConductors: "copper" } } },
      ],
    };
    expect(refused(unlike)).toEqual([
      ["unlike-materials", "derivedSystems[1].commonElectrodeConductor.materials.electrodeConductors"],
    ]);
    expect(messageOf(unlike)).toContain("derivedSystems[0].commonElectrodeConductor.materials");
  });

  it("are held against what is installed in its own material", () => {
    const { conductors } = checkOf({
      ...shop,
      installed: {
        found: [
          { role: "supply-side-bonding-jumper", of: "W1", size: "3/0 AWG", material: "aluminum" },
          { role: "grounding-electrode-conductor", of: "E1", size: "1/0 AWG", material: "copper" },
          { role: "grounding-electrode-conductor", of: "E2", size: "4 AWG", material: "aluminum" },
        ],
      },
    });
    const reserves = Object.fromEntries(conductors.map(({ id, reserve }) => [id, reserve]));
    expect(reserves).toMatchObject({
      "supply-side-bonding-jumper W1": 0,
      "grounding-electrode-conductor E1": 0,
      "grounding-electrode-conductor E2": 0,
    });
  });

  it("are refused where a thing has no such conductor", () => {
    const [circuit] = shop.circuits ?? [];
    const odd = { ...shop, circuits: [{ ...circuit, materials: { electrodeConductors: "copper" } }] };
    expect(refused(odd)).toEqual([["unknown-key", "circuits[0].materials.electrodeConductors"]]);
  });
});

function messageOf(source: unknown): string {
  try {
    readInstallation(source);
    return "";
  } catch (error) {
    return error instanceof InputError ? error.message : "";
  }
}

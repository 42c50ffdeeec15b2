import { type EditionYear, InputError, type Installation, readInstallation, scheduleOf } from "bondmil";
import { describe, expect, it } from "vitest";
import { derived, installation, refused, service } from "./installations.js";

function messageOf(source: unknown): string {
  try {
    readInstallation(source);
  } catch (error) {
    if (error instanceof InputError) return error.issues.map(({ message }) => message).join("; ");
    throw error;
  }
  return "";
}

const jumpersOf = (drawn: Installation) =>
  scheduleOf(drawn).conductors.filter(({ role }) => role === "system-bonding-jumper");

describe("a system bonding jumper in a disconnect", () => {
  const at = (ids: readonly string[]) =>
    installation({
      derivedSystems: [
        derived({
          jumperAt: "disconnects",
          disconnects: ids.map((id) => ({ id, amperes: 200 })),
          runs: ids.map((id) => ({
            id: `to ${id}`,
            from: "T1",
            to: id,
            supply: { sets: [{ count: 1, size: "4/0 AWG", material: "copper" }] },
            raceways: { count: 1, kind: "nonmetallic" },
          })),
          electrodes: [{ id: "G1", kind: "structural-metal", from: "P1" }],
        }),
      ],
    });

  it("is sized by the rule for several enclosures only where there are several", () => {
    expect(jumpersOf(at(["P1"])).map(({ sizing }) => sizing)).toEqual([undefined]);
    expect(jumpersOf(at(["P1", "P2"])).map(({ sizing }) => sizing?.section)).toEqual([
      "250.28(D)(3)",
      "250.28(D)(3)",
    ]);
  });
});

describe("a factory jumper where the system has none", () => {
  const section = (parts: object) =>
    scheduleOf(
      installation({
        derivedSystems: [
          derived({
            source: { id: "T1", kind: "transformer", outdoors: false, factoryJumper: "in-place" },
            ...parts,
          }),
        ],
      }),
    ).violations.find(({ code }) => code === "factory-jumper-to-be-removed")?.section;

  it("is forbidden by the section of its system", () => {
    const impedance = { amperes: 10, electrodeConductorAt: "first-disconnect" };
    const through = section({
      grounding: "impedance",
      impedance,
      electrodes: [{ id: "G1", kind: "structural-metal", from: "P1" }],
    });
    const without = section({ grounding: "ungrounded", connection: "three-phase-delta" });
    expect(through).toMatch(/^250\.36/);
    expect(without).toMatch(/^250\.30\(B\)/);
  });
});

describe("metal that is said to be an electrode and is not connected", () => {
  const sections = (of: string) =>
    scheduleOf(
      installation({
        services: [service()],
        derivedSystems: [derived({ electrodes: [{ id: "G1", kind: "concrete-encased", from: "T1" }] })],
        structuralMetal: [{ id: "M1", of, isElectrode: true }],
      }),
    )
      .violations.filter(({ code }) => code === "electrode-not-connected")
      .map(({ section }) => section);

  it("is forbidden by the section of what it belongs to", () => {
    expect(sections("S1")).toEqual(["250.50"]);
    expect(sections("X1")).toEqual(["250.30(A)(5)"]);
  });
});

describe("an aluminum electrode conductor that ends near the earth", () => {
  const remedies = (year: EditionYear, outdoorEnd: object) => {
    const rod = { id: "E1", kind: "rod", from: "D1", route: { outdoorEnd } };
    const drawn = installation({ services: [service({ electrodes: [rod] as never })] }, year);
    return scheduleOf({ ...drawn, materials: { ...drawn.materials, electrodeConductors: "aluminum" } })
      .violations.filter(({ code }) => code === "aluminum-not-permitted-here")
      .map((violation) => violation.remedies.map(({ code }) => code));
  };

  it("may be of copper or end higher, and from 2023 in a listed enclosure", () => {
    const low = { inchesAboveEarth: 12 };
    expect(remedies("2017", low)).toEqual([["copper-conductor", "end-higher"]]);
    expect(remedies("2023", low)).toEqual([["copper-conductor", "end-higher", "end-in-listed-enclosure"]]);
    expect(remedies("2017", { inchesAboveEarth: 18 })).toEqual([]);
    expect(remedies("2023", { ...low, inListedEnclosure: true })).toEqual([]);
    expect(remedies("2017", { ...low, inListedEnclosure: true })).toHaveLength(1);
  });
});

describe("a reference to what is not there", () => {
  const rods = (count: number) =>
    Array.from({ length: count }, (_, i) => ({ id: `E${i + 1}`, kind: "rod", from: "D1" }));
  const astray = (count: number) =>
    installation({
      services: [
        service({ electrodes: [...rods(count), { id: "last", kind: "rod", from: "far away" }] as never }),
      ],
    });

  it("names six that are, and how many more there are", () => {
    expect(messageOf(astray(1))).toContain('expected one of "D1", "R1", "E1", "last", received "far away"');
    expect(messageOf(astray(9))).toContain(
      'expected one of "D1", "R1", "E1", "E2", "E3", "E4" or 6 more, received',
    );
  });
});

it("a load-side connection may be in a disconnect of a system with its jumper at the source", () => {
  const loadSideConnections = [{ id: "L1", at: "P1" }] as const;
  expect(
    refused(installation({ derivedSystems: [derived()], loadSideConnections: [...loadSideConnections] })),
  ).toEqual([]);
});

import { checkOf, InputError, type Installation, scheduleOf } from "bondmil";
import { describe, expect, it } from "vitest";
import { derived, installation, refused, service, setsOf } from "../../installation/installations.js";
import { findingsIn } from "./findings.js";
import type { Installed, Service } from "./parts.js";

/** Faults that whole installations once had, each where it is drawn. */
const run = (id: string, from: string, to: string, supply: ReturnType<typeof setsOf>) => ({
  id,
  from,
  to,
  supply,
  raceways: { count: 1, kind: "nonmetallic" as const },
});
const disconnect = (id: string, amperes = 400) =>
  ({ id, designation: "service-disconnect", amperes }) as Service["disconnects"][number];

function sizes(data: Installation): Readonly<Record<string, string>> {
  const entries = scheduleOf(data).conductors.map(({ id, result: { outcome } }) => [
    id,
    outcome.kind === "conductor" ? outcome.size : outcome.kind,
  ]);
  return Object.fromEntries(entries);
}

/** Whether a drawing is refused, or has a violation or a caution at a place. */
function isSaid(data: Installation, ...places: readonly string[]): boolean {
  if (refused(data).length > 0) return true;
  const schedule = scheduleOf(data);
  const at = [...schedule.violations.flatMap((one) => one.at), ...schedule.cautions.map((one) => one.at)];
  return at.some((place) => places.includes(place));
}

const threeAtOnce = {
  runs: ["D1", "D2", "D3"].map((to) => run(`R ${to}`, "U1", to, setsOf(1, "500 kcmil"))),
  disconnects: ["D1", "D2", "D3"].map((id) => disconnect(id)),
};

describe("what once went unsaid", () => {
  it("is not too small from one disconnect of a listed assembly", () => {
    const data = installation({
      services: [
        service({
          ...threeAtOnce,
          housing: "listed-assembly",
          electrodes: [{ id: "E1", kind: "metal-water-pipe", from: "D1" }],
        }),
      ],
    });
    expect(sizes(data)["grounding-electrode-conductor E1"]).toBe("3/0 AWG");
  });

  it("says that an enclosure of several has no electrode conductor", () => {
    const { violations } = scheduleOf(installation({ services: [service(threeAtOnce)] }));
    const missing = violations.filter(({ code }) => code === "electrode-conductor-missing");
    expect(missing.flatMap(({ at }) => at)).toEqual(expect.arrayContaining(["D2", "D3"]));
  });

  it("goes by the larger of the conductors ahead of a meter and beyond it", () => {
    const data = installation({
      services: [
        service({
          boxes: [{ id: "B1", kind: "meter", bondedBy: "jumper" }],
          runs: [
            run("drop", "U1", "B1", setsOf(1, "2 AWG", "aluminum")),
            run("entrance", "B1", "D1", setsOf(1, "4/0 AWG", "aluminum")),
          ],
          electrodes: [
            { id: "E1", kind: "metal-water-pipe", from: "B1" },
            { id: "E2", kind: "structural-metal", from: "E1" },
          ],
        }),
      ],
      piping: [{ id: "W1", of: "S1", kind: "water" }],
      structuralMetal: [{ id: "M1", of: "S1" }],
    });
    expect(sizes(data)).toMatchObject({
      "supply-side-bonding-jumper B1": "4 AWG",
      "grounding-electrode-conductor E1": "4 AWG",
      "electrode-bonding-jumper E2": "4 AWG",
      "water-piping-bonding-jumper W1": "4 AWG",
      "structural-metal-bonding-jumper M1": "4 AWG",
    });
  });

  it("goes by all conductors with one electrode connection among several enclosures", () => {
    const system = derived({
      runs: ["P1", "P2"].map((to) => run(`Y ${to}`, "T1", to, setsOf(1, "500 kcmil"))),
      disconnects: [
        { id: "P1", amperes: 400 },
        { id: "P2", amperes: 400 },
      ],
      jumperAt: "disconnects",
      electrodes: [{ id: "G1", kind: "structural-metal", from: "P1" }],
    });
    const readings = { "electrode-connection-with-several-jumpers": "at-one-jumper" } as const;
    const data = { ...installation({ derivedSystems: [system] }), code: { year: "2023" as const, readings } };
    expect(sizes(data)["grounding-electrode-conductor G1"]).toBe("2/0 AWG");
    const compared = scheduleOf({ ...data, derivedSystems: [{ ...system, jumperAt: "compare" }] });
    const both = compared.conductors.filter(({ role }) => role === "grounding-electrode-conductor");
    expect(both.map(({ alternative }) => alternative)).toEqual([
      "jumper-at-source",
      "jumper-in-each-enclosure",
    ]);
  });

  it("misses every conductor of arrangements of which none was begun", () => {
    const check = checkOf({
      ...installation({
        derivedSystems: [derived({ jumperAt: "compare" })],
        circuits: [{ id: "C1", from: "P1", to: "press", device: { amperes: 60 }, wiring: "raceway" }],
      }),
      installed: { asScheduled: ["C1"] },
    });
    const found = findingsIn(check).join("; ");
    expect(found).toContain("system-bonding-jumper");
    expect(found).toContain("grounded-conductor");
  });

  it("judges copper-clad aluminum by its own limit", () => {
    const data: Installation = {
      ...installation(
        { services: [service({ ...threeAtOnce, electrodes: [{ id: "E1", kind: "rod", from: "D1" }] })] },
        "2017",
      ),
    };
    const materials = { ...data.materials, electrodeConductors: "aluminum" as const };
    const found = (material: "aluminum" | "copper-clad aluminum"): string => {
      const installed: Installed[] = [
        { role: "grounding-electrode-conductor", of: "E1", size: "4 AWG", material },
      ];
      return findingsIn(checkOf({ ...data, materials, installed: { found: installed } })).join("; ");
    };
    expect(found("aluminum")).not.toContain("grounding-electrode-conductor E1");
    expect(found("copper-clad aluminum")).toContain("grounding-electrode-conductor E1");
  });

  it("finds a jumper at the place of another arrangement, and a forbidden material", () => {
    const data = installation({
      derivedSystems: [derived()],
      services: [service()],
      intersystem: [{ id: "I1", at: "D1", termination: "apart" }],
    });
    const installed: Installed[] = [
      { role: "system-bonding-jumper", at: "T1", size: "4/0 AWG", material: "copper" },
      { role: "system-bonding-jumper", at: "P1", size: "4/0 AWG", material: "copper" },
      { role: "intersystem-bonding-conductor", of: "I1", size: "4/0 AWG", material: "aluminum" },
    ];
    const found = findingsIn(checkOf({ ...data, installed: { found: installed } })).join("; ");
    expect(found).toContain("system-bonding-jumper at P1");
    expect(found).toContain("intersystem-bonding-conductor I1");
  });

  it("takes an enforced reading before a chosen one", () => {
    const electrodes: Service["electrodes"] = [
      { id: "E1", kind: "rod", from: "D1" },
      { id: "E2", kind: "concrete-encased", from: "E1" },
    ];
    const reading = "electrode-ceiling-for-several";
    const citation = { jurisdiction: "Example County", section: "Sec. 1" };
    const code: Installation["code"] = {
      year: "2014",
      readings: { [reading]: "largest-of-kinds" },
      amendments: [{ kind: "reading", reading, alternative: "all-of-a-kind", citation }],
    };
    const data = { ...installation({ services: [service({ electrodes })] }, "2014"), code };
    expect(sizes(data)["grounding-electrode-conductor E1"]).toBe("1/0 AWG");
  });

  it("refuses an amended cell that the edition does not have, and a rating beyond the table", () => {
    const citation = { jurisdiction: "Example County", section: "Sec. 1" };
    const cell = {
      kind: "cell" as const,
      table: "electrode-conductor",
      row: "5 AWG",
      column: "copper",
      size: "6 AWG",
      citation,
    };
    const data = installation({ services: [service()] });
    expect(refused({ ...data, code: { year: "2023", amendments: [cell] } })).toHaveLength(1);
    const basis = { kind: "basis", role: "grounded-conductor", use: "equipment-grounding-table", citation };
    const beyond = { year: "2023", amendments: [basis], circumstances: { serviceAmperes: 7000 } };
    expect(() => scheduleOf({ ...data, code: beyond as never })).toThrow(InputError);
  });

  it("does not pass a control transformer, a branch circuit or a disconnect of any rating without a word", () => {
    const source = { id: "T1", kind: "transformer" as const, outdoors: false, controlTransformer: true };
    const transformer = derived({ source, disconnects: [{ id: "P1", amperes: 1000 }], electrodes: [] });
    expect(isSaid(installation({ derivedSystems: [transformer] }), "X1", "T1", "P1")).toBe(true);
    const building = installation({
      existing: [{ id: "panel" }],
      circuits: [{ id: "C1", from: "panel", to: "H1", device: { amperes: 1200 }, wiring: "raceway" }],
      buildings: [{ id: "H1", circuit: "C1", onSingleBranchCircuit: true }],
    });
    expect(isSaid(building, "H1", "C1")).toBe(true);
    const thin = service({
      runs: [run("R1", "U1", "D1", setsOf(1, "3 AWG"))],
      disconnects: [disconnect("D1", 4000)],
    });
    expect(isSaid(installation({ services: [thin] }), "D1", "R1", "S1")).toBe(true);
  });

  it("has another fingerprint for everything that is shown", () => {
    const boxes = [{ id: "B1", kind: "meter" as const, bondedBy: "jumper" as const }];
    const runs = [
      run("R1", "U1", "B1", setsOf(1, "500 kcmil")),
      run("R2", "B1", "D1", setsOf(1, "500 kcmil")),
    ];
    const of = (parts: Partial<Service>, kind: "transformer" | "generator" = "transformer"): string =>
      scheduleOf(
        installation({
          services: [service({ boxes, runs, ...parts })],
          derivedSystems: [derived({ source: { id: "T1", kind, outdoors: false } })],
        }),
      ).fingerprint;
    const prints = [
      of({}),
      of({}, "generator"),
      of({ disconnects: [disconnect("D1", 450)] }),
      of({ boxes: [{ id: "B1", kind: "gutter", bondedBy: "jumper" }] }),
    ];
    expect(new Set(prints).size).toBe(prints.length);
  });
});

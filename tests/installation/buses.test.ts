import { drawingOf, type Installation, mainBondingJumper, scheduleOf, size } from "bondmil";
import { describe, expect, it } from "vitest";
import { checkFound, checkRest, findings } from "./found.js";
import { derived, installation, refused, service, setsOf } from "./installations.js";

type Service = NonNullable<Installation["services"]>[number];

const ids = ["D1", "D2", "D3"];
const sections = ids.map((id) => ({
  id,
  designation: "service-disconnect" as const,
  amperes: 800,
  bus: "B1",
}));
const feed = {
  id: "R1",
  from: "U1",
  to: "B1",
  supply: setsOf(6, "500 kcmil"),
  raceways: { count: 6, kind: "nonmetallic" as const },
};
const switchboard = (parts: Partial<Service> = {}) =>
  installation({
    services: [
      service({
        runs: [feed],
        buses: [{ id: "B1" }],
        disconnects: sections,
        electrodes: [{ id: "E1", kind: "other", from: "B1" }],
        ...parts,
      }),
    ],
  });
const find = (data: Installation, id: string) => scheduleOf(data).conductors.find((one) => one.id === id);

describe("sections of a switchboard on one bus", () => {
  it("have one main bonding jumper, by the sets that feed the bus, counted once", () => {
    const mains = scheduleOf(switchboard()).conductors.filter(({ role }) => role === "main-bonding-jumper");
    // 6 x 500 kcmil = 3000 kcmil, over 1100 kcmil copper: 12.5 percent is 375 kcmil.
    expect(mains).toMatchObject([
      {
        id: "main-bonding-jumper B1",
        to: { kind: "place", id: "B1" },
        by: ["R1"],
        result: { outcome: { size: "400 kcmil" }, requiredArea: 375_000 },
      },
    ]);
  });

  it("have jumper and electrode conductor on the bars of the switchboard", () => {
    const from = { kind: "place", id: "B1", on: "neutral-bar" };
    const to = { kind: "place", id: "B1", on: "grounding-bar" };
    expect(find(switchboard(), "main-bonding-jumper B1")).toMatchObject({ from, to });
    expect(find(switchboard(), "grounding-electrode-conductor E1")).toMatchObject({ from });
  });

  it("have a jumper in bus form where it is drawn so, as the role itself gives it", () => {
    const data = switchboard({ buses: [{ id: "B1", jumperForm: "bus" }] });
    const alone = size(mainBondingJumper, {
      code: { year: "2023" },
      supply: setsOf(6, "500 kcmil"),
      conductor: { material: "copper", form: "bus" },
    });
    expect(find(data, "main-bonding-jumper B1")?.result).toEqual(alone);
    expect(alone.outcome).toEqual({ kind: "area-only", requiredArea: 375_000, why: "bus" });
  });

  it("count the sets once in what hangs on the service", () => {
    const electrode = (from: string) =>
      find(
        switchboard({ electrodes: [{ id: "E1", kind: "other", from }] }),
        "grounding-electrode-conductor E1",
      );
    expect(electrode("B1")).toMatchObject({ by: ["R1"], result: { outcome: { size: "3/0 AWG" } } });
    expect(electrode("D2")?.result).toEqual(electrode("B1")?.result);
    const tapped = switchboard({
      commonElectrodeConductor: { id: "C1" },
      electrodes: [{ id: "E1", kind: "other", from: "C1" }],
    });
    expect(scheduleOf(tapped).conductors.filter(({ part }) => part === "tap")).toMatchObject([
      { subject: "B1", from: { kind: "place", id: "B1" } },
    ]);
  });

  it("say nothing of a section's rating and miss no electrode conductor", () => {
    const { cautions, violations } = scheduleOf(switchboard());
    expect(cautions.map(({ code }) => code)).not.toContain("conductors-below-rating");
    expect(violations).toEqual([]);
  });

  it("are found at the bus or at any of its sections", () => {
    const at = (place: string) =>
      ({ role: "main-bonding-jumper", size: "400 kcmil", material: "copper", at: place }) as never;
    expect(findings(checkRest(switchboard(), [at("B1")]))).toEqual([]);
    expect(findings(checkRest(switchboard(), [at("D2")]))).toEqual([]);
    const elsewhere = checkFound(switchboard(), [at("U1")]);
    expect(findings(elsewhere)).toContainEqual(["main-bonding-jumper B1", "missing"]);
  });

  it("are drawn on their bus", () => {
    const [sheet] = drawingOf(switchboard()).sheets;
    const texts = sheet?.labels.flatMap(({ lines }) => lines) ?? [];
    expect(texts.join(" ")).toContain("section on the bus");
  });

  it("are refused with one issue for what contradicts the bus", () => {
    const path = "services[0]";
    expect(refused(switchboard())).toEqual([]);
    expect(
      refused(switchboard({ disconnects: [...sections, { ...sections[0], id: "D4", bus: "B2" }] as never })),
    ).toEqual([["dangling-reference", `${path}.disconnects[3].bus`]]);
    expect(refused(switchboard({ runs: [feed, { ...feed, id: "R2", to: "D1" }] }))).toEqual([
      ["unknown-value", `${path}.runs[1].to`],
    ]);
    expect(
      refused(
        switchboard({ buses: [{ id: "B1" }, { id: "B2" }], runs: [feed, { ...feed, id: "R2", to: "B2" }] }),
      ),
    ).toEqual([["dangling-reference", `${path}.buses[1].id`]]);
    const [first, ...rest] = sections;
    expect(
      refused(switchboard({ disconnects: [{ ...first, jumperForm: "bus" }, ...rest] as never })),
    ).toEqual([["unknown-key", `${path}.disconnects[0].jumperForm`]]);
  });
});

describe("a conductor in bus form", () => {
  const area = (data: Installation, id: string) => find(data, id)?.result.outcome;

  it("gets an area at a disconnect, at a box, along a run, as grounded conductor and in a derived system", () => {
    const run = {
      ...feed,
      to: "D1",
      raceways: { count: 1, kind: "nonflexible-metal" as const },
      jumperForm: "bus" as const,
      groundedConductorForm: "bus" as const,
    };
    const data = installation({
      services: [
        service({
          boxes: [{ id: "W1", kind: "wireway", bondedBy: "jumper", jumperForm: "bus" }],
          runs: [run, { ...feed, id: "R2", to: "W1" }, { ...feed, id: "R3", from: "W1", to: "D2" }],
          disconnects: [
            { id: "D1", designation: "service-disconnect", amperes: 400, jumperForm: "bus" },
            { id: "D2", designation: "service-disconnect", amperes: 400 },
          ],
        }),
      ],
      derivedSystems: [derived({ jumperForm: "bus" })],
    });
    const bus = { kind: "area-only", why: "bus" };
    for (const id of [
      "main-bonding-jumper D1",
      "supply-side-bonding-jumper W1",
      "supply-side-bonding-jumper R1",
      "grounded-conductor R1",
      "system-bonding-jumper T1",
    ])
      expect([id, area(data, id)]).toMatchObject([id, bus]);
    expect(area(data, "main-bonding-jumper D2")).toMatchObject({ kind: "conductor" });
  });
});

import { drawingOf, type EditionYear, type Installation, readInstallation, scheduleOf } from "bondmil";
import { describe, expect, it } from "vitest";
import { copper, derived, installation, refused, setsOf } from "./installations.js";

type Generator = NonNullable<Installation["generators"]>[number];
type Switch = NonNullable<Installation["transferSwitches"]>[number];

const generator = (parts: Partial<Generator> = {}): Generator => ({
  id: "N1",
  supply: copper,
  to: "ATS",
  integralOvercurrentDevice: true,
  deviceAmperes: 400,
  ...parts,
});
const transferSwitch = (groundedConductor: Switch["groundedConductor"]): Switch => ({
  id: "ATS",
  groundedConductor,
});
const set = (parts: object = {}, more: object = {}) =>
  derived({
    source: { id: "G", kind: "generator", outdoors: true, deviceAmperes: 400, ...parts },
    runs: [{ id: "Y1", from: "G", to: "P1", supply: copper, raceways: { count: 1, kind: "nonmetallic" } }],
    electrodes: [{ id: "E1", kind: "structural-metal", from: "G" }],
    ...more,
  } as never);

function shown(drawn: Installation) {
  return scheduleOf(drawn).conductors.map(({ id, quantity, result: { outcome, citation } }) => [
    id,
    outcome.kind === "conductor" ? `${quantity} x ${outcome.size}` : "why" in outcome ? outcome.why : "",
    citation.section,
  ]);
}

const lineOf = (drawn: Installation, id: string) => shown(drawn).find(([one]) => one === id);
const messageOf = (drawn: Installation): string => {
  try {
    readInstallation(drawn);
    return "";
  } catch (error) {
    return String((error as Error).message);
  }
};

describe("a generator that is not separately derived", () => {
  it("has no jumper and no electrode conductor of its own, and is a feeder from its breaker (250.35(B))", () => {
    const drawn = installation({
      generators: [generator({ groundedConductor: { load: { amperes: 90, circuitAmperes: 400 } } })],
      transferSwitches: [transferSwitch("carried-through")],
    });
    expect(shown(drawn)).toEqual([
      ["system-bonding-jumper N1", "jumper-of-other-system-serves", "250.30 note"],
      ["supply-side-bonding-jumper N1", "no-conductors-ahead-of-the-device", "250.35(B)"],
      ["equipment-grounding-conductor N1", "1 x 3 AWG", "250.122(A)"],
      ["grounded-conductor N1", "1 x 3 AWG", "215.2(B)"],
      ["grounding-electrode-conductor N1", "electrode-conductor-of-other-system-serves", "250.30 note"],
    ]);
    expect(scheduleOf(drawn).violations).toEqual([]);
  });

  it("has jumpers on both sides of its device in 2008", () => {
    const integral = installation({ generators: [generator()] }, "2008");
    expect(shown(integral).map(([id]) => id)).toContain("equipment-bonding-jumper N1");
    const { deviceAmperes: _, ...open } = generator({ integralOvercurrentDevice: false });
    const schedule = (year: EditionYear) => scheduleOf(installation({ generators: [open] }, year));
    const codes = (year: EditionYear) => schedule(year).cautions.map(({ code }) => code);
    expect(codes("2008")).toContain("load-side-jumper-behind-device");
    expect(codes("2011")).not.toContain("load-side-jumper-behind-device");
  });

  it("must lose the jumper that the factory fitted", () => {
    const violations = (year: EditionYear, factoryJumper?: "in-place" | "removed") =>
      scheduleOf(installation({ generators: [generator(factoryJumper && { factoryJumper })] }, year))
        .violations;
    expect(violations("2020", "in-place")).toMatchObject([
      {
        code: "factory-jumper-to-be-removed",
        section: "250.24(A)(5)",
        at: ["N1"],
        remedies: [{ code: "remove-connection" }],
      },
    ]);
    expect(violations("2023", "in-place")).toMatchObject([{ section: "250.24(B)" }]);
    expect(violations("2023", "removed")).toEqual([]);
    expect(violations("2023")).toEqual([]);
  });

  it("says of a grounded conductor without device or load that it is not sized", () => {
    const { deviceAmperes: _, ...open } = generator({
      integralOvercurrentDevice: false,
      groundedConductor: {},
    });
    const { notSized } = scheduleOf(installation({ generators: [open] }));
    expect(notSized).toEqual([{ what: "grounded conductor of N1", see: "220.61" }]);
  });
});

describe("a transfer switch", () => {
  it("decides the kind of the source behind it, and a contradiction is one issue", () => {
    const tied = (how: Switch["groundedConductor"]) =>
      installation({ generators: [generator()], transferSwitches: [transferSwitch(how)] });
    expect(refused(tied("carried-through"))).toEqual([]);
    expect(refused(tied("switched"))).toEqual([["unknown-value", "generators[0].to"]]);
    expect(refused(tied("none"))).toEqual([["unknown-value", "generators[0].to"]]);
    expect(messageOf(tied("switched"))).toContain("transferSwitches[0].groundedConductor");
    const own = (how: Switch["groundedConductor"], more: object = {}) =>
      installation({
        derivedSystems: [{ ...set(), transferSwitch: "ATS", ...more }],
        transferSwitches: [transferSwitch(how)],
      });
    expect(refused(own("switched"))).toEqual([]);
    expect(refused(own("carried-through"))).toEqual([["unknown-value", "derivedSystems[0].transferSwitch"]]);
    expect(refused(own("switched", { transferSwitch: "nowhere" }))).toEqual([
      ["dangling-reference", "derivedSystems[0].transferSwitch"],
    ]);
  });

  it("is found over the circuits that end at it", () => {
    const circuits = (from: string) =>
      [{ id: "C1", from, to: "ATS", device: { amperes: 400 }, wiring: "raceway" }] as const;
    const transferSwitches = [transferSwitch("carried-through")];
    const drawn = { derivedSystems: [set()], circuits: [...circuits("P1")], transferSwitches };
    expect(refused(installation(drawn))).toEqual([["unknown-value", "circuits[0].to"]]);
    const transformer = { ...drawn, derivedSystems: [derived()] };
    expect(refused(installation(transformer))).toEqual([]);
  });

  it("may be where circuits start", () => {
    const drawn = installation({
      generators: [generator()],
      transferSwitches: [transferSwitch("carried-through")],
      circuits: [{ id: "C1", from: "ATS", to: "LP", device: { amperes: 100 }, wiring: "raceway" }],
    });
    expect(lineOf(drawn, "equipment-grounding-conductor C1")).toBeDefined();
    const labels = drawingOf(drawn).sheets.flatMap((sheet) =>
      sheet.labels.map(({ lines }) => lines.join(" ")),
    );
    expect(labels.join(" ")).toContain("ATS transfer switch, grounded conductor carried through");
  });
});

describe("a source with the first overcurrent device in its own enclosure", () => {
  it("has its jumper there, and feeders with equipment grounding conductors", () => {
    const drawn = installation({ derivedSystems: [set()] }, "2020");
    expect(shown(drawn)).toEqual([
      ["system-bonding-jumper G", "1 x 1/0 AWG", "250.28(D)(1)"],
      ["supply-side-bonding-jumper Y1", "source-and-disconnect-in-one-enclosure", "250.30(A)(2)"],
      ["equipment-grounding-conductor Y1", "1 x 3 AWG", "250.122(A)"],
      ["grounded-conductor Y1", "1 x 3 AWG", "215.2(A)(2)"],
      ["grounding-electrode-conductor E1", "1 x 1/0 AWG", "250.30(A)(5)"],
    ]);
  });

  it("may have no jumper beyond that device", () => {
    const violations = (jumperAt: string, outdoors = false) =>
      scheduleOf(installation({ derivedSystems: [set({ outdoors }, { jumperAt })] }, "2020")).violations;
    const misplaced = { code: "jumper-not-permitted-here", section: "250.30(A)(1)", at: ["P1"] };
    expect(violations("disconnects")).toMatchObject([misplaced]);
    expect(violations("both-ends")).toMatchObject([{ code: "jumper-not-permitted-here" }]);
    expect(violations("source")).toEqual([]);
    expect(violations("compare")).toEqual([]);
  });

  it("keeps the factory jumper as its system bonding jumper, unless the jumper is elsewhere", () => {
    const of = (parts: object, more: object = {}) =>
      scheduleOf(
        installation({ derivedSystems: [set({ factoryJumper: "in-place", ...parts }, more)] }, "2020"),
      );
    expect(of({}).violations).toEqual([]);
    expect(of({}).cautions.map(({ code }) => code)).toContain("factory-jumper-serves");
    const elsewhere = of({ outdoors: false, deviceAmperes: undefined }, { jumperAt: "disconnects" });
    expect(elsewhere.violations.map(({ code }) => code)).toContain("factory-jumper-to-be-removed");
    expect(elsewhere.cautions.map(({ code }) => code)).not.toContain("factory-jumper-serves");
    const ungrounded = of({}, { grounding: "ungrounded", connection: "three-phase-delta" });
    expect(ungrounded.violations).toMatchObject([{ code: "factory-jumper-to-be-removed", at: ["G"] }]);
  });

  it("is a place where circuits may start", () => {
    const circuits = [
      { id: "C1", from: "G", to: "LP", device: { amperes: 100 }, wiring: "raceway" } as const,
    ];
    expect(refused(installation({ derivedSystems: [set()], circuits }))).toEqual([]);
    const plain = [set({ deviceAmperes: undefined })];
    expect(refused(installation({ derivedSystems: plain, circuits }))).toEqual([
      ["dangling-reference", "circuits[0].from"],
    ]);
  });

  it("refuses jumpers of raceways behind the device, and ratings without a row", () => {
    const runs = [
      {
        id: "Y1",
        from: "G",
        to: "P1",
        supply: setsOf(1, "4/0 AWG"),
        racewayJumpers: "common",
        raceways: { count: 1, kind: "nonmetallic" },
      },
    ];
    expect(refused(installation({ derivedSystems: [set({}, { runs })] }))).toEqual([
      ["unknown-key", "derivedSystems[0].runs[0].racewayJumpers"],
    ]);
    expect(refused(installation({ derivedSystems: [set({ deviceAmperes: 7000 })] }))).toEqual([
      ["out-of-range", "derivedSystems[0].source.deviceAmperes"],
    ]);
  });
});

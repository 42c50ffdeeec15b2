import { drawingOf, type EditionYear, type Installation, scheduleOf } from "bondmil";
import { describe, expect, it } from "vitest";
import { derived, installation, refused, service } from "./installations.js";

type Impedance = NonNullable<NonNullable<Installation["services"]>[number]["impedance"]>;

const through = (impedance: Partial<Impedance> = {}) =>
  ({
    grounding: "impedance",
    connection: "three-phase-wye",
    impedance: { amperes: 10, electrodeConductorAt: "first-disconnect", ...impedance },
  }) as const;
const electrode = (from: string) =>
  [
    { id: "E1", kind: "metal-water-pipe", from },
    { id: "E2", kind: "structural-metal", from: "E1" },
  ] as const;
const onService = (parts: object, from = "D1", year: EditionYear = "2023") =>
  installation({ services: [service({ ...parts, electrodes: [...electrode(from)] })] }, year);
const onDerived = (parts: object, from = "T1", year: EditionYear = "2023") =>
  installation({ derivedSystems: [derived({ ...parts, electrodes: [...electrode(from)] })] }, year);

const lineOf = (drawn: Installation, id: string) =>
  scheduleOf(drawn).conductors.find((conductor) => conductor.id === id);
const codes = (drawn: Installation) => scheduleOf(drawn).cautions.map(({ code }) => code);
/** What is forbidden, save that a water pipe alone lacks its supplement. */
const violations = (drawn: Installation) =>
  scheduleOf(drawn)
    .violations.filter(({ code }) => code !== "water-pipe-not-supplemented")
    .map(({ code, at }) => [code, ...at]);

describe("a system that is grounded through an impedance (250.36)", () => {
  it("has its electrode conductor by 250.36(F) in every kind of system", () => {
    for (const drawn of [onService(through()), onDerived(through(), "P1")]) {
      expect(lineOf(drawn, "grounding-electrode-conductor E1")?.result.citation.section).toBe("250.36(F)");
    }
  });

  it("has its jumper from the first disconnect to the impedance", () => {
    const ends = (drawn: Installation, id: string) => {
      const line = lineOf(drawn, `impedance-bonding-jumper ${id}`);
      return [line?.from, line?.to];
    };
    expect(ends(onService(through()), "S1")).toEqual([
      { kind: "place", id: "D1" },
      { kind: "impedance", of: "S1" },
    ]);
    expect(ends(onDerived(through({ id: "NGR" }), "P1"), "X1")).toEqual([
      { kind: "place", id: "P1" },
      { kind: "place", id: "NGR" },
    ]);
  });

  it("says that no grounded conductor runs, and what the system must be", () => {
    const line = lineOf(onService(through()), "grounded-conductor R1");
    expect(line?.quantity).toBe(0);
    expect(line?.result.citation.section).toBe("250.36(C)");
    expect(codes(onService(through()))).toContain("impedance-conditions");
    expect(codes(onService({}))).not.toContain("impedance-conditions");
  });

  it("may have its electrode conductor start at the impedance by name", () => {
    const drawn = onService(through({ id: "NGR", electrodeConductorAt: "impedance" }), "NGR");
    expect(refused(drawn)).toEqual([]);
    expect(violations(drawn)).toEqual([]);
    expect(lineOf(drawn, "grounding-electrode-conductor E1")?.from).toEqual({ kind: "place", id: "NGR" });
    expect(JSON.stringify(drawingOf(drawn))).toContain("impedance");
    const own = onDerived(through({ id: "NGR", electrodeConductorAt: "impedance" }), "NGR");
    expect(violations(own)).toEqual([]);
    expect(lineOf(own, "grounding-electrode-conductor E1")?.result.requiredArea).toBe(105_600);
  });

  it("forbids an electrode conductor that starts elsewhere than it is said to", () => {
    const astray = ["electrode-conductor-not-at-impedance", "E1"];
    const atImpedance = { id: "NGR", electrodeConductorAt: "impedance" } as const;
    expect(violations(onService(through(atImpedance)))).toContainEqual(astray);
    expect(violations(onService(through()))).toEqual([]);
    expect(violations(onService(through({ id: "NGR" }), "NGR"))).toContainEqual(astray);
    expect(violations(onDerived(through(atImpedance), "T1"))).toEqual([]);
    expect(violations(onDerived(through(atImpedance), "P1"))).toContainEqual(astray);
    expect(violations(onDerived(through(), "P1"))).toEqual([]);
    expect(violations(onDerived(through(), "T1"))).toContainEqual(astray);
  });
});

describe("a corner-grounded system", () => {
  const corner = { grounding: "grounded-phase", connection: "three-phase-delta" };

  it("warns of devices in its grounded conductor (240.22)", () => {
    expect(codes(onService(corner))).toContain("grounded-phase-devices");
    expect(codes(onDerived(corner))).toContain("grounded-phase-devices");
    expect(codes(onDerived({}))).not.toContain("grounded-phase-devices");
  });
});

describe("an ungrounded system", () => {
  const ungrounded = { grounding: "ungrounded", connection: "three-phase-delta" };

  it("has its supply-side jumper by 250.30(B), and no grounded conductor", () => {
    const drawn = onDerived(ungrounded);
    expect(lineOf(drawn, "supply-side-bonding-jumper Y1")?.result.citation.section).toBe("250.30(B)(3)");
    expect(lineOf(onDerived({}), "supply-side-bonding-jumper Y1")?.result.citation.section).toBe(
      "250.30(A)(2)",
    );
    expect(lineOf(drawn, "grounded-conductor Y1")?.result.outcome).toMatchObject({
      why: "no-grounded-conductor",
      citation: { section: "250.30(B)" },
    });
    expect(lineOf(onService(ungrounded), "grounded-conductor R1")?.result.outcome).toMatchObject({
      citation: { section: "250.24(F)" },
    });
  });
});

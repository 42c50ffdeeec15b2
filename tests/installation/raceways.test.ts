import { type Installation, render, reportDocument, scheduleDocument, scheduleOf } from "bondmil";
import { describe, expect, it } from "vitest";
import { checkFound, checkRest, findings, piece } from "./found.js";
import { derived, installation, service, setsOf } from "./installations.js";

type Run = NonNullable<Installation["services"]>[number]["runs"][number];

const kinds = (kind: "unknown" | "nonmetallic" | "nonflexible-metal" | "flexible-metal", count = 1) => ({
  raceways: { count, kind },
});
const run = (parts: Partial<Run> = {}): Run => ({
  id: "R1",
  from: "U1",
  to: "D1",
  supply: setsOf(1, "500 kcmil"),
  ...kinds("unknown"),
  ...parts,
});
const served = (parts: Partial<Run> = {}) => installation({ services: [service({ runs: [run(parts)] })] });
const jumper = "supply-side-bonding-jumper R1";
const found = (data: Installation, id = jumper) => {
  const one = scheduleOf(data).conductors.find((conductor) => conductor.id === id);
  if (one === undefined) throw new Error(`${id} is not in the schedule`);
  return one;
};
const outcomes = (data: Installation, id = jumper) =>
  found(data, id).open?.outcomes.map(({ if: material, quantity, result }) => [
    material,
    quantity,
    result.outcome.kind === "conductor" ? result.outcome.size : result.outcome.kind,
  ]);

describe("a raceway of unknown material", () => {
  it("has both outcomes at a service, each as if it were known", () => {
    expect(outcomes(served())).toEqual([
      ["metal", 1, "1/0 AWG"],
      ["nonmetallic", 0, "not-required"],
    ]);
    expect(found(served()).result).toEqual(found(served(kinds("nonflexible-metal"))).result);
    expect(outcomes(served({ racewayJumpers: "fittings-instead" }))).toEqual([
      ["metal", 0, "not-required"],
      ["nonmetallic", 0, "not-required"],
    ]);
    expect(found(served(kinds("nonflexible-metal"))).open).toBeUndefined();
  });

  it("has both outcomes of a derived system, where a nonflexible metal raceway serves", () => {
    const parts = { id: "Y1", from: "T1", to: "P1", supply: setsOf(2, "500 kcmil"), ...kinds("unknown", 2) };
    const data = installation({ derivedSystems: [derived({ runs: [parts] })] });
    expect(outcomes(data, "supply-side-bonding-jumper Y1")).toEqual([
      ["flexible-metal-or-nonmetallic", 2, "1/0 AWG"],
      ["nonflexible-metal", 0, "not-required"],
    ]);
  });

  it("permits jumpers at both ends on that condition only, and does not count on them", () => {
    const source = { id: "T1", kind: "transformer", outdoors: true } as const;
    const parts = { id: "Y1", from: "T1", to: "P1", supply: setsOf(1, "500 kcmil") };
    const both = (kind: "unknown" | "nonmetallic" | "flexible-metal") =>
      scheduleOf(
        installation({
          derivedSystems: [derived({ source, jumperAt: "both-ends", runs: [{ ...parts, ...kinds(kind) }] })],
        }),
      );
    const codes = (kind: Parameters<typeof both>[0]) => [
      ...both(kind).violations.map(({ code }) => code),
      ...both(kind).cautions.map(({ code }) => code),
    ];
    expect(codes("unknown")).toContain("only-without-parallel-path");
    expect(codes("unknown")).not.toContain("jumper-not-permitted-here");
    expect(codes("flexible-metal")).toContain("jumper-not-permitted-here");
  });

  it("is sufficient only where both outcomes are, and missing only where both are", () => {
    expect(findings(checkRest(served(), [piece(jumper, "1/0 AWG")]))).toEqual([]);
    expect(findings(checkRest(served(), [piece(jumper, "2 AWG")]))).toEqual([[jumper, "open"]]);
    expect(findings(checkRest(served(), []))).toEqual([[jumper, "open"]]);
    expect(findings(checkFound(served(), [], { asScheduled: ["R1"] }))).toContainEqual([jumper, "open"]);
    expect(findings(checkFound(served(), [piece("main-bonding-jumper D1", "1/0 AWG")]))).toContainEqual([
      jumper,
      "open",
    ]);
    const [open] = checkRest(served(), []).findings;
    expect(open).toMatchObject({
      todo: "settle",
      required: { quantity: 1, size: "1/0 AWG" },
      remedies: [{ do: "find-out", what: "raceway-material" }, { do: "install" }],
    });
  });

  it("is said as a sentence with both sizes, beside the schedule", () => {
    const sentence =
      "supply-side bonding jumper R1: it is not known what the raceway is made of; if it is metal: 1 x 1/0 AWG copper [250.102(C)(1)]; if it is nonmetallic: none, a nonmetallic raceway has no metal that could be bonded [250.92(A)].";
    for (const document of [scheduleDocument(scheduleOf(served())), reportDocument(served())]) {
      const text = render(document, { as: "text" }).replaceAll(/\s+/g, " ");
      expect(text).toContain(sentence);
    }
  });
});

describe("a raceway that several runs share", () => {
  const nipple = (kind: "unknown" | "nonmetallic" | "nonflexible-metal", parts: object = {}) => {
    const { raceways: _, ...bare } = run();
    return installation({
      services: [
        service({
          runs: [
            { ...bare, in: "N1" },
            { ...bare, id: "R2", to: "D2", supply: setsOf(2, "3/0 AWG"), in: "N1" },
          ],
          sharedRaceways: [{ id: "N1", kind, ...parts }],
          disconnects: ["D1", "D2"].map((id) => ({ id, designation: "service-disconnect", amperes: 400 })),
        }),
      ],
    });
  };
  const ofRaceways = (data: Installation) =>
    scheduleOf(data).conductors.filter(
      ({ role, quantity }) => role === "supply-side-bonding-jumper" && quantity > 0,
    );

  it("has one jumper, by all conductors in it, named once", () => {
    const [one, ...others] = ofRaceways(nipple("nonflexible-metal"));
    expect(others).toEqual([]);
    // 500 kcmil and two of 3/0 AWG: 835,600 cmil, over 600 through 1100 kcmil copper.
    expect(one).toMatchObject({
      id: "supply-side-bonding-jumper N1",
      by: ["R1", "R2"],
      quantity: 1,
      result: { outcome: { size: "2/0 AWG" } },
      from: { kind: "raceway-fitting", of: "N1" },
      to: { kind: "place", id: "U1" },
    });
    const none = scheduleOf(nipple("nonmetallic")).conductors.find(({ subject }) => subject === "N1");
    expect(none).toMatchObject({ quantity: 0, result: { outcome: { why: "nonmetallic-raceway" } } });
    expect(outcomes(nipple("unknown"), "supply-side-bonding-jumper N1")).toEqual([
      ["metal", 1, "2/0 AWG"],
      ["nonmetallic", 0, "not-required"],
    ]);
  });

  it("leaves each grounded conductor in it to its own run", () => {
    const grounded = scheduleOf(nipple("unknown")).conductors.filter(
      ({ role }) => role === "grounded-conductor",
    );
    expect(grounded.map(({ subject, by, quantity }) => [subject, by, quantity])).toEqual([
      ["R1", ["R1"], 1],
      ["R2", ["R2"], 1],
    ]);
  });

  it("may be bonded by fittings at a service", () => {
    const { conductors } = scheduleOf(nipple("nonflexible-metal", { bondedBy: "fittings" }));
    const one = conductors.find(({ subject }) => subject === "N1");
    expect(one?.result.outcome).toMatchObject({ kind: "not-required", why: "bonding-fittings-serve" });
  });

  it("has one wire in it from a derived source", () => {
    const parts = { from: "T1", in: "N1", supply: setsOf(1, "500 kcmil") };
    const data = installation({
      derivedSystems: [
        derived({
          runs: [
            { ...parts, id: "Y1", to: "P1" },
            { ...parts, id: "Y2", to: "P2" },
          ],
          sharedRaceways: [{ id: "N1", kind: "nonmetallic" }],
          disconnects: ["P1", "P2"].map((id) => ({ id, amperes: 400 })),
        }),
      ],
    });
    expect(ofRaceways(data)).toMatchObject([
      { id: "supply-side-bonding-jumper N1", by: ["Y1", "Y2"], from: { id: "T1" }, to: { id: "N1" } },
    ]);
  });
});

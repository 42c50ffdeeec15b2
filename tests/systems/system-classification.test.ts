import {
  classifySource,
  editionYears,
  explain,
  type Grounding,
  InputError,
  type Role,
  type RoleFollows,
  roleIds,
  type SourceInput,
  weakestEvidence,
} from "bondmil";
import { describe, expect, it } from "vitest";

const generator = (overcurrentDevice: "integral" | "not-integral" = "not-integral") =>
  ({ kind: "generator", overcurrentDevice }) as const;
const transformer = (windings: "separate" | "common" = "separate") =>
  ({ kind: "transformer", windings, overcurrentDevice: "not-integral" }) as const;
const classify = (input: Partial<SourceInput>) =>
  classifySource({
    code: { year: "2020" },
    source: generator(),
    grounding: "solidly-grounded",
    ...input,
  });
const carried = { transferSwitch: { switchesGroundedConductor: false } };
const switched = { transferSwitch: { switchesGroundedConductor: true } };
const brief = ({ status, citation }: RoleFollows) => [status, citation.section];
const statusesOf = (input: Partial<SourceInput>, wanted: readonly Role[]) => {
  const { follows } = classify(input);
  return wanted.map((role) => follows[role].status);
};
const jumpers: readonly Role[] = [
  "system-bonding-jumper",
  "supply-side-bonding-jumper",
  "equipment-bonding-jumper",
  "equipment-grounding-conductor",
  "grounding-electrode-conductor",
];

describe("whether a source is separately derived", () => {
  it.each(editionYears)("goes by the grounded conductor of a generator in %s", (year) => {
    const code = { year };
    const section = year === "2008" ? "250.20(D) FPN No. 1" : "250.30 note";
    expect(classify({ code, ...carried })).toMatchObject({
      edition: year,
      kind: "not-separately-derived",
      why: "grounded-conductor-solidly-connected",
      citation: { section },
    });
    expect(classify({ code, ...switched })).toMatchObject({
      kind: "separately-derived",
      why: "grounded-conductor-switched",
      citation: { section },
    });
  });

  it("is as sure as the weakest of what it decides for a role", () => {
    for (const year of editionYears) {
      const { citation, follows, evidence } = classify({ code: { year }, ...switched });
      // What goes by its own rule is decided there, with evidence of its own.
      const decided = Object.values(follows).filter(({ status }) => status !== "by-its-own-rule");
      const levels = [citation, ...decided.map((one) => one.citation)].map((one) => one.evidence);
      expect(evidence).toBe(weakestEvidence(levels));
    }
  });

  it.each([
    ["the connection decides over the switch", { ...carried, groundedConductorSolidlyConnected: false }],
    ["no connection at all", { groundedConductorSolidlyConnected: false }],
  ] as const)("says so where the grounded conductor is not brought along: %s", (_what, input) => {
    expect(classify(input)).toMatchObject({
      kind: "separately-derived",
      why: "grounded-conductor-not-connected",
    });
  });

  it("knows a solid connection beside the switch", () => {
    expect(classify({ ...switched, groundedConductorSolidlyConnected: true }).kind).toBe(
      "not-separately-derived",
    );
    const source = { kind: "other", overcurrentDevice: "integral" } as const;
    expect(classify({ source, groundedConductorSolidlyConnected: true }).kind).toBe("not-separately-derived");
  });

  it("takes the grounded corner of a delta as a grounded conductor", () => {
    expect(classify({ grounding: "grounded-phase", ...carried }).why).toBe(
      "grounded-conductor-solidly-connected",
    );
    expect(classify({ grounding: "grounded-phase", ...switched }).why).toBe("grounded-conductor-switched");
  });

  it("goes by the windings of a transformer", () => {
    expect(classify({ source: transformer() })).toMatchObject({
      kind: "separately-derived",
      why: "separate-windings",
      citation: { section: "Article 100" },
    });
    expect(classify({ source: transformer("common") })).toMatchObject({
      kind: "not-separately-derived",
      why: "common-windings",
    });
    expect(classify({ source: transformer(), groundedConductorSolidlyConnected: true })).toMatchObject({
      kind: "not-separately-derived",
      why: "grounded-conductor-solidly-connected",
    });
  });

  it.each(["ungrounded", "impedance"] as const)(
    "needs no word on the grounded conductor of an %s system",
    (grounding) => {
      expect(classify({ grounding })).toMatchObject({
        kind: "separately-derived",
        why: "no-grounded-conductor",
      });
    },
  );
});

describe("what follows from a separately derived system", () => {
  it.each(editionYears)("answers for every role in %s, with a section", (year) => {
    for (const grounding of ["solidly-grounded", "grounded-phase", "impedance", "ungrounded"] as const) {
      const { follows } = classify({ code: { year }, source: transformer(), grounding });
      expect(Object.keys(follows).sort()).toEqual([...roleIds].sort());
      for (const role of roleIds) expect(follows[role].citation.section).toMatch(/^\d{3}\.\d/);
    }
  });

  it.each([
    ["2008", "250.30(A)(3)"],
    ["2011", "250.30(A)(5)"],
    ["2014", "250.30(A)(5)"],
    ["2017", "250.30(A)(5)"],
    ["2020", "250.30(A)(5)"],
    ["2023", "250.30(A)(5)"],
    ["2026", "250.30(A)(5)"],
  ] as const)("is a jumper, a supply-side jumper and an electrode conductor in %s", (year, electrode) => {
    for (const input of [{ source: transformer() }, switched]) {
      const { follows } = classify({ code: { year }, ...input });
      expect(brief(follows["main-bonding-jumper"])).toEqual(["not-required", "250.30(A)(1)"]);
      expect(brief(follows["system-bonding-jumper"])).toEqual(["required", "250.30(A)(1)"]);
      expect(brief(follows["supply-side-bonding-jumper"])).toEqual(["required", "250.30(A)(2)"]);
      expect(brief(follows["grounding-electrode-conductor"])).toEqual(["required", electrode]);
      expect(follows["grounded-conductor"].status).toBe("by-its-own-rule");
      expect(brief(follows["water-piping-bonding-jumper"])).toEqual(["by-its-own-rule", "250.104(D)"]);
      expect(follows["impedance-bonding-jumper"].status).toBe("not-required");
    }
  });

  it("is an equipment grounding conductor where the first disconnect is at the source", () => {
    expect(statusesOf({ source: generator("integral"), ...switched }, jumpers)).toEqual([
      "required",
      "not-required",
      "by-its-own-rule",
      "required",
      "required",
    ]);
  });

  it.each(editionYears)("is no system jumper in an ungrounded system, yet the other two, in %s", (year) => {
    const { follows } = classify({ code: { year }, source: transformer(), grounding: "ungrounded" });
    expect(brief(follows["main-bonding-jumper"])).toEqual(["not-required", "250.30(B)"]);
    expect(brief(follows["system-bonding-jumper"])).toEqual(["not-required", "250.30(B)"]);
    expect(brief(follows["supply-side-bonding-jumper"])).toEqual(["required", "250.30(B)(3)"]);
    expect(brief(follows["grounding-electrode-conductor"])).toEqual(["required", "250.30(B)(1)"]);
    expect(follows["grounded-conductor"].status).toBe("not-required");
  });

  it("is the impedance's own conductor and jumper in an impedance-grounded system", () => {
    const { follows } = classify({ source: transformer(), grounding: "impedance" });
    expect(brief(follows["system-bonding-jumper"])).toEqual(["not-required", "250.36(C)"]);
    expect(brief(follows["impedance-grounding-conductor"])).toEqual(["required", "250.36(B)"]);
    expect(brief(follows["impedance-bonding-jumper"])).toEqual(["required", "250.36(E)"]);
    expect(brief(follows["grounding-electrode-conductor"])).toEqual(["required", "250.36(F)"]);
    expect(follows["supply-side-bonding-jumper"].status).toBe("required");
  });
});

describe("what follows from a generator that is not separately derived", () => {
  it.each(editionYears.slice(1))("is a supply-side jumper where its device is not integral in %s", (year) => {
    const { follows } = classify({ code: { year }, ...carried });
    expect(follows["supply-side-bonding-jumper"]).toMatchObject({
      status: "required",
      note: "generator-to-disconnect",
      citation: { section: "250.35(B)" },
    });
    expect(statusesOf({ code: { year }, ...carried }, jumpers)).toEqual([
      "not-required",
      "required",
      "by-its-own-rule",
      "by-its-own-rule",
      "not-required",
    ]);
  });

  it.each(editionYears.slice(1))("is an equipment grounding conductor where it is integral in %s", (year) => {
    const { follows } = classify({ code: { year }, source: generator("integral"), ...carried });
    expect(brief(follows["supply-side-bonding-jumper"])).toEqual(["not-required", "250.35(B)"]);
    expect(brief(follows["equipment-grounding-conductor"])).toEqual([
      "required",
      year === "2026" ? "250.122" : "250.122(A)",
    ]);
    expect(follows["equipment-bonding-jumper"].status).toBe("by-its-own-rule");
  });

  it("is a jumper on both sides of its device in 2008, from memory", () => {
    const found = classify({ code: { year: "2008" }, ...carried });
    expect(brief(found.follows["supply-side-bonding-jumper"])).toEqual(["required", "250.35(B)"]);
    expect(brief(found.follows["equipment-bonding-jumper"])).toEqual(["required", "250.35(B)"]);
    expect(found.evidence).toBe("memory");
    const integral = { code: { year: "2008" as const }, source: generator("integral"), ...carried };
    expect(statusesOf(integral, jumpers)).toEqual([
      "not-required",
      "not-required",
      "required",
      "by-its-own-rule",
      "not-required",
    ]);
  });

  it("leaves the jumpers and the electrode conductor to the system that it is tied to", () => {
    const { follows } = classify(carried);
    for (const role of ["main-bonding-jumper", "system-bonding-jumper"] as const)
      expect(follows[role]).toMatchObject({
        status: "not-required",
        note: "jumper-of-other-system-serves",
      });
    expect(follows["grounding-electrode-conductor"].note).toBe("electrode-conductor-of-other-system-serves");
    expect(brief(follows["grounded-conductor"])).toEqual(["by-its-own-rule", "220.61"]);
  });

  it("is the ordinary rule for another source", () => {
    for (const source of [
      transformer("common"),
      { kind: "other", overcurrentDevice: "not-integral" },
    ] as const) {
      const tied = source.kind === "transformer" ? {} : carried;
      const { follows } = classify({ source, ...tied });
      expect(brief(follows["supply-side-bonding-jumper"])).toEqual(["required", "250.102(C)(1)"]);
    }
    const source = { kind: "other", overcurrentDevice: "integral" } as const;
    expect(statusesOf({ source, ...carried }, jumpers)).toEqual([
      "not-required",
      "not-required",
      "by-its-own-rule",
      "required",
      "not-required",
    ]);
  });
});

describe("a classification", () => {
  it("is plain data and told in sentences", () => {
    const found = classify(carried);
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
    const told = explain(found);
    expect(
      told.startsWith(
        "Not separately derived: its grounded conductor stays solidly connected to that of another system [250.30 note].",
      ),
    ).toBe(true);
    expect(told).toContain(
      "Supply-side bonding jumper: required, from the generator to the disconnect [250.35(B)].",
    );
    expect(told).not.toContain("own rule");
  });

  it("rests on its weakest section", () => {
    const evidence = (year: "2011" | "2014" | "2017" | "2026") =>
      classify({ code: { year }, ...carried }).evidence;
    expect(evidence("2011")).toBe("single");
    expect(evidence("2014")).toBe("bracketed");
    expect(evidence("2017")).toBe("single");
    expect(evidence("2026")).toBe("carried");
    expect(classify({ source: transformer() }).evidence).toBe("memory");
  });
});

describe("a bad input", () => {
  const issues = (input: unknown): readonly string[] => {
    try {
      classifySource(input as SourceInput);
    } catch (error) {
      if (error instanceof InputError) return error.issues.map(({ code, path }) => `${code} ${path}`);
    }
    return [];
  };
  const code = { year: "2020" };
  const grounding: Grounding = "solidly-grounded";

  it("is refused with everything that is wrong", () => {
    expect(issues({})).toEqual(["missing code", "missing source", "missing grounding"]);
    expect(issues({ code, grounding, source: { kind: "generator" } })).toEqual([
      "missing source.overcurrentDevice",
    ]);
    expect(issues({ code, grounding, source: { kind: "transformer", overcurrentDevice: "none" } })).toEqual([
      "unknown-value source.overcurrentDevice",
      "missing source.windings",
    ]);
    expect(issues({ code, grounding, source: generator(), transferSwitch: { poles: 3 } })).toEqual([
      "unknown-key transferSwitch.poles",
      "missing transferSwitch.switchesGroundedConductor",
    ]);
  });

  it("is one that leaves the grounded conductor open", () => {
    expect(issues({ code, grounding, source: generator() })).toEqual(["missing transferSwitch"]);
    expect(issues({ code, grounding, source: { ...generator(), windings: "separate" }, ...carried })).toEqual(
      ["unknown-key source.windings"],
    );
  });

  it("is told which members there may be", () => {
    const free = (input: unknown): readonly string[] => {
      try {
        classifySource(input as SourceInput);
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
        return error.issues.flatMap((one) => (one.code === "unknown-key" ? one.alternatives : []));
      }
      return [];
    };
    const extra = { code, grounding, poles: 3 };
    expect(free({ ...extra, source: generator() })).toEqual([
      "groundedConductorSolidlyConnected",
      "transferSwitch",
    ]);
    expect(free({ ...extra, source: transformer() })).toEqual(["groundedConductorSolidlyConnected"]);
    expect(free({ ...extra, source: transformer(), grounding: "impedance" })).toEqual([]);
    expect(free({ code, grounding, source: { kind: "generator", poles: 3 }, ...carried })).toEqual([
      "overcurrentDevice",
    ]);
  });

  it("is one that speaks of what the source does not have", () => {
    expect(issues({ code, grounding, source: transformer(), ...carried })).toEqual([
      "unknown-key transferSwitch",
    ]);
    expect(issues({ code, grounding: "ungrounded", source: generator(), ...carried })).toEqual([
      "unknown-key transferSwitch",
    ]);
    expect(
      issues({
        code,
        grounding: "impedance",
        source: transformer(),
        groundedConductorSolidlyConnected: true,
      }),
    ).toEqual(["unknown-key groundedConductorSolidlyConnected"]);
  });
});

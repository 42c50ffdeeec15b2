import {
  type Evidence,
  equipmentGroundingConductor,
  groundedConductor,
  InputError,
  type Issue,
  intersystemBondingConductor,
  mainBondingJumper,
  requireEvidence,
  type SizingResult,
  size,
} from "bondmil";
import { describe, expect, it } from "vitest";

const jumper = (year: "2008" | "2017" | "2020"): SizingResult =>
  size(mainBondingJumper, {
    code: { year },
    supply: { sets: [{ count: 3, size: "600 kcmil", material: "aluminum" }] },
    conductor: { material: "copper" },
  });

function issuesOf(result: SizingResult, level: Evidence): readonly Issue[] {
  try {
    requireEvidence(result, level);
    return [];
  } catch (error) {
    if (error instanceof InputError) return error.issues;
    throw error;
  }
}

describe("requireEvidence", () => {
  it("gives back the very result where nothing is weaker", () => {
    const result = jumper("2017");
    expect(result.evidence).toBe("single");
    expect(requireEvidence(result, "single")).toBe(result);
    expect(requireEvidence(result, "memory")).toBe(result);
  });

  it("refuses a size that no text gives, though the text beside it was read", () => {
    const tie = (year: "2017" | "2020" | "2023") =>
      size(intersystemBondingConductor, { code: { year }, termination: "busbar" });
    expect(tie("2023").steps[0]?.citation.evidence).toBe("single");
    for (const year of ["2017", "2020"] as const) {
      expect([tie(year).evidence, tie(year).citation]).toEqual([
        "memory",
        { section: "250.94(B)", evidence: "single" },
      ]);
      expect(issuesOf(tie(year), "carried").map(({ path }) => path)).toEqual(["steps[0]"]);
    }
  });

  it("names each weaker place, and no other", () => {
    const { steps, ...sized } = jumper("2020");
    const levels: readonly Evidence[] = ["single", "confirmed", "single", "bracketed"];
    expect(steps.map(({ kind }) => kind)).toEqual(["sum", "assumed", "one-eighth", "standard-size"]);
    const result: SizingResult = {
      ...sized,
      citation: { section: "250.28(D)(1)", evidence: "single" },
      steps: steps.map((step, i) => ({
        ...step,
        citation: { ...step.citation, evidence: levels[i] ?? "memory" },
      })),
    };
    expect(issuesOf(result, "single")).toEqual([
      {
        code: "evidence-too-weak",
        path: "steps[1].conductors[0]",
        keys: ["steps", 1, "conductors", 0],
        alternatives: [],
        expected: "at least single",
        received: "bracketed",
        message:
          "Table 310.16 in the 2020 edition decides the ampacities for 600 kcmil aluminum, and what is known of it is bracketed, not single; read it in that edition, or accept bracketed",
      },
      {
        code: "evidence-too-weak",
        path: "steps[3]",
        keys: ["steps", 3],
        alternatives: [],
        expected: "at least single",
        received: "bracketed",
        message:
          "Chapter 9 Table 8 in the 2020 edition decides the standard sizes and their areas, and what is known of it is bracketed, not single; read it in that edition, or accept bracketed",
      },
    ]);
  });

  it("names the rule itself, and every step of an edition that nobody has read", () => {
    expect(issuesOf(jumper("2008"), "bracketed").map(({ path }) => path)).toEqual([
      "citation",
      "steps[0]",
      "steps[1]",
      "steps[2]",
      "steps[3]",
    ]);
  });

  it("sees the evidence of one cell", () => {
    const at4000 = size(equipmentGroundingConductor, {
      code: { year: "2008" },
      circuits: [{ device: { amperes: 4000 } }],
      conductor: { material: "aluminum" },
    });
    const found = issuesOf(at4000, "carried");
    expect(found.map(({ path, received }) => [path, received])).toEqual([["steps[0]", "memory"]]);
    expect(found[0]?.message).toContain("Table 250.122");
  });

  it("lets a result through at its own level and not above, whatever was sized", () => {
    const levels: readonly Evidence[] = ["memory", "carried", "bracketed", "single", "confirmed"];
    const notRequired: SizingResult = {
      ...jumper("2020"),
      outcome: {
        kind: "not-required",
        why: "ungrounded-system",
        citation: { section: "250.21", evidence: "carried" },
      },
      citation: { section: "250.21", evidence: "carried" },
      steps: [],
      governs: null,
      evidence: "carried",
    };
    const grounded = size(groundedConductor, {
      code: { year: "2014" },
      supply: { sets: [{ count: 2, size: "4/0 AWG", material: "copper" }] },
      conductor: { material: "aluminum" },
      system: "service",
    });
    for (const result of [jumper("2008"), jumper("2017"), jumper("2020"), notRequired, grounded]) {
      for (const level of levels) {
        const enough = levels.indexOf(result.evidence) >= levels.indexOf(level);
        expect([level, issuesOf(result, level).length === 0]).toEqual([level, enough]);
      }
    }
  });

  it("believes a result that calls itself weaker than what it shows", () => {
    const stored: SizingResult = { ...jumper("2017"), evidence: "memory" };
    expect(issuesOf(stored, "single").map(({ path }) => path)).toEqual(["evidence"]);
  });

  it("takes a level that it does not know for the weakest, and refuses one in the request", () => {
    const stored = { ...jumper("2017"), citation: { section: "250.28(D)(1)", evidence: "sure" as never } };
    expect(issuesOf(stored, "memory").map(({ path }) => path)).toEqual(["citation"]);
    expect(issuesOf(jumper("2017"), "sure" as never).map(({ code, path }) => [code, path])).toEqual([
      ["unknown-value", "level"],
    ]);
  });
});

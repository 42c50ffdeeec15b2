import { readFileSync } from "node:fs";
import { buildSchedule, checkInstalled, writeCheck, writeSchedule } from "bondmil";
import { describe, expect, it } from "vitest";

function demo(name: string): unknown {
  return JSON.parse(readFileSync(new URL(`../../docs/drawings/${name}.json`, import.meta.url), "utf8"));
}

describe("a written schedule", () => {
  const schedule = buildSchedule(demo("print-works"));
  const text = writeSchedule(schedule);
  const lines = text.split("\n");

  it("names every conductor once, under the system that it belongs to", () => {
    const headings = lines.filter((_, i) => /^-+$/.test(lines[i + 1] ?? ""));
    expect(headings).toEqual([
      "Fault path (by it a breaker opens)",
      "Grounding electrode system (ties to earth, clears no fault)",
      "Equalizing (keeps metal at one potential)",
      "Cautions",
      "Metal of the conductors whose length is given",
    ]);
    for (const { id } of schedule.conductors)
      expect(lines.filter((line) => line === id || line.startsWith(`${id} (jumper-`))).toHaveLength(1);
  });

  it("tells of each its places, quantity, size, what decides, sections and evidence", () => {
    const at = lines.indexOf("grounded-conductor lateral");
    expect(lines.slice(at, at + 3)).toEqual([
      "grounded-conductor lateral",
      "  5 x 1/0 AWG copper, from vault to CT cabinet, 60 ft",
      "  grounded conductor; sized by the conductors of lateral; 250.24(C)(2), the row of the supply by Table 250.102(C)(1): 105,600 cmil; evidence: bracketed",
    ]);
    const none = lines.indexOf("supply-side-bonding-jumper T2 to LP3");
    expect(lines[none + 1]).toBe(
      "  not required: a nonflexible metal raceway serves in its place, from T2 case to LP3, 14 ft",
    );
  });

  it("says each caution once, with all its places, and ends with the standing cautions and the fingerprint", () => {
    const cautions = lines.filter((line) => line.startsWith("- Listed equipment comes"));
    expect(cautions).toHaveLength(1);
    expect(lines.at(-1)).toBe(`Fingerprint: ${schedule.fingerprint}`);
    expect(text).toContain("This checks arithmetic, not an installation.");
  });

  it("shows areas, open readings and what is not sized", () => {
    const supply = { sets: [{ count: 40, size: "2000 kcmil", material: "copper" }] };
    const large = buildSchedule({
      format: 1,
      title: "Large",
      code: { year: "2014" },
      materials: {
        bondingJumpers: "copper",
        groundedConductors: "copper",
        electrodeConductors: "copper",
        equipmentGrounding: "copper",
      },
      services: [
        {
          id: "S1",
          grounding: "solidly-grounded",
          connection: "three-phase-wye",
          utility: { id: "U1", outdoorTransformer: false },
          runs: [
            { id: "R1", from: "U1", to: "D1", supply },
            {
              id: "R2",
              from: "U1",
              to: "D2",
              supply: { sets: [{ count: 1, size: "12 AWG", material: "copper" }] },
            },
          ],
          disconnects: ["D1", "D2"].map((id) => ({ id, designation: "service-disconnect", amperes: 20 })),
          housing: "separate-enclosures",
        },
      ],
    });
    const written = writeSchedule(large);
    expect(written).toContain("  1 x copper of at least 10,000,000 cmil, from grounded conductor to D1");
    expect(written).toContain(
      "- main-bonding-jumper D2: cap-in-2014 is read as absent; as-in-2017 asks for 6,530 cmil",
    );
    expect(written).toContain("- grounding electrode conductor of S1: see 250.24(A)(1)");
  });
});

describe("a written check", () => {
  const lines = writeCheck(checkInstalled(demo("print-works"))).split("\n");

  it("says of every conductor what is wrong with it", () => {
    expect(lines).toContain(
      "SHORT: main-bonding-jumper PV, 1 x 6 AWG copper; 15,500 cmil less than the 41,740 cmil of 250.28(D)(1)",
    );
    expect(lines).toContain(
      "MISSING: other-piping-bonding-jumper compressed air; required: the 10,380 cmil of 250.104(B)",
    );
    expect(lines).toContain(
      "NOT IN THE SCHEDULE: system-bonding-jumper T2 case, 1 x 1/0 AWG copper [250.30(A)(1)]",
    );
  });

  it("counts the verdicts, the faults first", () => {
    expect(lines).toContainEqual(
      expect.stringMatching(/^short 4, too few 2, missing 2, wrong place 1, not in the schedule 1, /),
    );
  });
});

import { readFileSync } from "node:fs";
import {
  type Installation,
  readInstallation,
  render,
  type Schedule,
  scheduleDocument,
  scheduleOf,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { conductorName } from "../../src/installation/conductor-names.js";
import { servedWords } from "../../src/report/words/schedule-words.js";

function demo(name: string): Installation {
  return readInstallation(
    readFileSync(new URL(`../../docs/installations/${name}.json`, import.meta.url), "utf8"),
  );
}

const writeSchedule = (schedule: Schedule): string =>
  render(scheduleDocument(schedule), { as: "text", width: 10_000 });

it("names four of the runs that size a conductor, and how many more there are", () => {
  const served = (...by: readonly string[]) => servedWords({ by });
  expect(served("A", "B", "C", "D", "E", "F")).toBe("sized by the conductors of A, B, C, D and 2 more");
  expect([served("A", "B", "C", "D"), served()]).toEqual(["sized by the conductors of A, B, C, D", ""]);
});

describe("a written schedule", () => {
  const schedule = scheduleOf(demo("print-works"));
  const text = writeSchedule(schedule);
  const lines = text.split("\n");

  it("names every conductor once, under the system that it belongs to", () => {
    const headings = lines.filter((_, i) => /^-+$/.test(lines[i + 1] ?? ""));
    expect(headings).toEqual([
      "Effective ground-fault current path (opens the overcurrent device on a fault)",
      "Grounding electrode system (ties to earth, clears no fault)",
      "Equalizing (keeps metal at one potential)",
      "Grounded conductors that carry load only (no part of the fault path)",
      "Cautions",
      "Metal of the conductors whose length is given",
      "Notes",
    ]);
    for (const one of schedule.conductors)
      expect(lines.filter((line) => line.startsWith(`${conductorName(one)}: `))).toHaveLength(1);
  });

  it("tells of each its places, quantity, size, what decides, sections and evidence", () => {
    const at = lines.indexOf("grounded conductor lateral: 5 x 1/0 AWG copper");
    expect(lines[at + 1]).toBe(
      "  from: neutral terminal of vault; to: grounded conductor in CT cabinet; length: 60 ft; basis: sized by the conductors of lateral; 250.24(C)(2), the row of the supply by Table 250.102(C)(1): 105,600 cmil; placed by 250.24(C); insulation: insulated, bare in stated cases [230.41 Exception, one source]; evidence: the same in the editions before and after",
    );
    expect(lines).toContain(
      "supply-side bonding jumper T2 to LP3: not required: a nonflexible metal raceway serves in its place",
    );
  });

  it("says each caution once, with all its places, and has the notes and the fingerprint", () => {
    const cautions = lines.filter((line) => line.startsWith("- Listed equipment comes"));
    expect(cautions).toHaveLength(1);
    expect(lines).toContain(`Fingerprint: ${schedule.fingerprint}`);
    expect(text).toContain("This checks arithmetic, not an installation.");
  });

  it("shows areas, open readings and what is not sized", () => {
    const supply = { sets: [{ count: 40, size: "2000 kcmil", material: "copper" }] } as const;
    const large = scheduleOf({
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
            { id: "R1", from: "U1", to: "D1", supply, raceways: { count: 1, kind: "nonmetallic" } },
            {
              id: "R2",
              from: "U1",
              to: "D2",
              supply: { sets: [{ count: 1, size: "12 AWG", material: "copper" }] },
              raceways: { count: 1, kind: "nonmetallic" },
            },
          ],
          disconnects: ["D1", "D2"].map((id) => ({ id, designation: "service-disconnect", amperes: 20 })),
          housing: "separate-enclosures",
        },
      ],
    });
    const written = writeSchedule(large);
    expect(written).toContain("main bonding jumper D1: 1 x copper of at least 10,000,000 cmil");
    expect(written).toContain(
      "- As scheduled, if the 2014 table has no limit at the largest ungrounded conductor or set: 8 AWG copper; if it has the limit of 2017: 12 AWG copper. At: main bonding jumper D2",
    );
    expect(written).toContain("- grounding electrode conductor of S1: see 250.24(A)(1)");
  });
});

import { type SupplyCandidates, type SupplyCandidatesQuestion, supplyCandidates } from "bondmil";
import { describe, expect, it } from "vitest";
import { runHere } from "./run-here.js";

const question = {
  code: { year: "2023" },
  system: { kind: "feeder", ungrounded: 3, grounded: { currentCarrying: false } },
  load: { continuous: 0, other: 400 },
  conductor: { insulation: "THWN-2", materials: ["copper", "aluminum"] },
  place: { location: "wet" },
  limits: { mostSets: 2 },
  raceways: ["pvc-schedule-40"],
  bonding: { material: "copper" },
};

const barn = {
  format: 1,
  title: "Barn",
  code: { year: "2020" },
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
      connection: "single-phase-three-wire",
      utility: { id: "pole", outdoorTransformer: true },
      runs: [
        {
          id: "R1",
          from: "pole",
          to: "D1",
          supply: {
            toChoose: {
              load: { continuous: 0, other: 180 },
              device: 200,
              conductor: { insulation: "XHHW-2", materials: ["copper"] },
              place: { location: "wet" },
              limits: { mostSets: 1 },
            },
          },
          raceways: { count: 1, kind: "nonmetallic" },
        },
      ],
      disconnects: [{ id: "D1", designation: "service-disconnect", amperes: 200 }],
      housing: "separate-enclosures",
      electrodes: [{ id: "E1", kind: "concrete-encased", from: "D1" }],
    },
  ],
};

const asking = (given: unknown, ...options: readonly string[]) =>
  runHere(["supplies", ...options], { input: JSON.stringify(given) });

describe("bondmil supplies", () => {
  it("tells the candidates of a question in a table", async () => {
    const { code, output } = await asking(question);
    expect(code).toBe(0);
    expect(output).toContain("2 x 3/0 AWG copper");
    expect(output).toContain("2 x Schedule 40 PVC 2");
  });

  it("has a row for each candidate in CSV, and all of them in JSON", async () => {
    const [csv, json] = [await asking(question, "--as", "csv"), await asking(question, "--as", "json")];
    const found = JSON.parse(json.output) as SupplyCandidates;
    expect(found).toEqual(supplyCandidates(question as SupplyCandidatesQuestion));
    expect(csv.output.trimEnd().split("\r\n")).toHaveLength(found.total + 1);
  });

  it("draws the trade-off of a question", async () => {
    const { output } = await asking(question, "--as", "svg");
    expect(output.startsWith("<svg")).toBe(true);
    expect(output).toContain("Pounds of metal per 1000 ft");
  });

  it("tells the candidates of each run of an installation, which has no schedule until one is chosen", async () => {
    const { code, output } = await asking(barn);
    expect(code).toBe(0);
    expect(output).toContain("Run R1, device of 200 A");
    expect(output).toContain("1 x 3/0 AWG copper");
    const schedule = await runHere(["schedule"], { input: JSON.stringify(barn) });
    expect(schedule.code).not.toBe(0);
    expect(schedule.errors).toContain("choose one of the candidates");
  });

  it("refuses what is wrong with its place, and what is no JSON", async () => {
    const wrong = await asking({ ...question, limits: { mostSets: 0 } });
    expect(wrong.errors).toContain("limits.mostSets");
    expect(wrong.code).not.toBe(0);
    const broken = await runHere(["supplies"], { input: "{" });
    expect(broken.errors).toContain("is not JSON");
  });
});

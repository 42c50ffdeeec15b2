import {
  arrangeSeparatelyDerivedSystem,
  arrangeService,
  cautionCodes,
  explain,
  type Supply,
  sizeMainBondingJumper,
  sizeSupplySideBondingJumper,
  writeArrangements,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { cautionWords } from "../../src/report/words.js";

const size = (
  supply: Supply,
  year: "2011" | "2017" | "2023" = "2023",
  material: "copper" | "aluminum" = "copper",
) => sizeMainBondingJumper({ code: { year }, supply, jumper: { material } });

describe("explanations are rendered from the steps", () => {
  it("row", () => {
    expect(explain(size({ sets: [{ count: 1, size: "250 kcmil", material: "copper" }] }))).toBe(
      "1 x 250 kcmil copper: 250,000 cmil [250.28(D)(1)]. " +
        "250,000 cmil falls in the copper row that ends at 350 kcmil, which asks for 2 AWG copper [Table 250.102(C)(1)]. " +
        "Main bonding jumper: 2 AWG copper [250.28(D)(1)].",
    );
  });

  it("assumed conductors and one eighth", () => {
    expect(explain(size({ sets: [{ count: 4, size: "600 kcmil", material: "aluminum" }] }))).toBe(
      "4 x 600 kcmil aluminum: 2,400,000 cmil [250.28(D)(1)]. " +
        "Assumed instead, matched at 75 C: 500 kcmil for each 600 kcmil aluminum (340 A); together 2,000,000 cmil [Table 250.102(C)(1) note 2]. " +
        "2,000,000 cmil is above 1,100 kcmil copper: one eighth is 250,000 cmil [Table 250.102(C)(1) note 1]. " +
        "The smallest standard size with 250,000 cmil is 250 kcmil, 250,000 cmil [Chapter 9 Table 8]. " +
        "Main bonding jumper: 250 kcmil copper [250.28(D)(1)].",
    );
  });

  it("equal conductance where no conductor has the ampacity", () => {
    expect(
      explain(size({ sets: [{ count: 2, size: "1500 kcmil", material: "copper" }] }, "2023", "aluminum")),
    ).toContain(
      "2,459,017 cmil of equal conductance for each 1500 kcmil copper (625 A); together 4,918,034 cmil",
    );
  });

  it("floor and cap", () => {
    expect(explain(size({ sets: [{ count: 1, size: "1250 kcmil", material: "copper" }] }, "2011"))).toContain(
      "Not below 3/0 AWG, 167,800 cmil [Table 250.66]",
    );
    expect(explain(size({ sets: [{ count: 1, size: "10 AWG", material: "copper" }] }, "2017"))).toContain(
      "Not required above the ungrounded conductor or set: 10,380 cmil [Table 250.102(C)(1) note 1]. The smallest standard size with 10,380 cmil is 10 AWG",
    );
  });

  it("an area where no standard size is large enough", () => {
    expect(explain(size({ sets: [{ count: 17, size: "1000 kcmil", material: "copper" }] }))).toContain(
      "Main bonding jumper: copper with at least 2,125,000 cmil, 1076.8 mm2, 1.669 in2",
    );
  });

  it("unlike phases and the sum of largest conductors", () => {
    const phases = [
      { size: "500 kcmil", material: "copper" },
      null,
      { size: "250 kcmil", material: "copper" },
    ] as const;
    const result = sizeSupplySideBondingJumper({
      code: { year: "2023" },
      supply: { sets: [{ count: 1, phases }] },
      jumper: { material: "copper" },
    });
    expect(explain(result)).toContain(
      "1 x (500 kcmil copper, none, 250 kcmil copper): 500,000 cmil, each set's largest conductor added [250.102(C)(2)]",
    );
  });
});

describe("schedule text", () => {
  it("has words for every caution", () => {
    expect(Object.keys(cautionWords).sort()).toEqual([...cautionCodes].sort());
  });

  it("says what is not permitted, which bar meets an area, and which reading would change a size", () => {
    const derived = arrangeSeparatelyDerivedSystem({
      code: { year: "2023" },
      source: { id: "T1", outdoors: true },
      enclosures: [{ id: "P1", supply: { sets: [{ count: 1, size: "10 AWG", material: "copper" }] } }],
      jumper: { material: "copper", form: "bus" },
    });
    const text = writeArrangements(derived, "Kiosk");
    expect(text).toContain("A jumper in each enclosure (250.30(C)): NOT PERMITTED here");
    expect(text).toContain("a bar of 0.25 in. x 0.25 in. meets it");
    expect(text).toContain(
      "reading cap-on-small-supplies: every-supply; large-supplies-only would ask for 16,510 cmil",
    );
    expect(text).toContain("not affiliated");
  });

  it("names each caution once, with its section", () => {
    const service = arrangeService({
      code: { year: "2017" },
      enclosures: ["A", "B"].map((id) => ({
        id,
        supply: { sets: [{ count: 2, size: "1 AWG", material: "copper" }] },
      })),
      jumper: { material: "aluminum" },
    });
    const lines = writeArrangements(service, "Depot").split("\n");
    expect(
      lines.filter((line) => line.includes("smaller than 1/0 AWG are permitted in parallel")),
    ).toHaveLength(2);
    expect(
      lines.some((line) => line.includes("does not name aluminum") && line.endsWith("[250.28(A)]")),
    ).toBe(true);
  });
});

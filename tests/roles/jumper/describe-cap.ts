import { describe, expect, it } from "vitest";
import { type JumperFacts, ownCautions, type Sizer, withCap, withoutCap } from "./facts.js";
import { ask, brief, cautionsOf, kinds, sectionOf, sets, sizeIn, step } from "./supplies.js";

/** The sentence that a jumper need not be larger than the ungrounded conductor or set. */
export function describeCap(sized: Sizer, facts: JumperFacts): void {
  const small = sets(1, "10 AWG", "copper");
  const own = ownCautions(facts);

  describe.each(withCap)("the cap in %s", (year) => {
    it("requires no more than the ungrounded conductor", () => {
      const result = sized(ask(year, small, "copper"));
      expect(brief(result)).toEqual(["10 AWG", 10380, "cap"]);
      expect(kinds(result)).toEqual(["sum", "row", "cap", "standard-size"]);
      expect(step(result, "row").requiredArea).toBe(16510);
      expect(step(result, "cap").citation.section).toBe("Table 250.102(C)(1) note 1");
      expect(cautionsOf(result)).toEqual(["cap-applied", ...own]);
      expect(sectionOf(result, "cap-applied")).toBe("Table 250.102(C)(1) note 1");
      expect(result.readings).toEqual([
        {
          id: "cap-on-small-supplies",
          chosen: "every-supply",
          otherwise: [{ alternative: "large-supplies-only", requiredArea: 16510 }],
        },
      ]);
    });

    it("is the area of the whole set", () => {
      expect(brief(sized(ask(year, sets(2, "10 AWG", "copper"), "copper")))).toEqual(["8 AWG", 16510, "row"]);
      // 3 x 4110 = 12,330: less than the row requires, but the next standard size is the same.
      expect(brief(sized(ask(year, sets(3, "14 AWG", "copper"), "copper")))).toEqual(["8 AWG", 12330, "cap"]);
    });

    it("does not show where it takes nothing away", () => {
      const result = sized(ask(year, sets(1, "8 AWG", "copper"), "copper"));
      expect(brief(result)).toEqual(["8 AWG", 16510, "row"]);
      expect(kinds(result)).not.toContain("cap");
      expect(result.readings).toEqual([]);
    });

    it("holds for aluminum and copper-clad aluminum as one material", () => {
      const supply = sets(1, "8 AWG", "aluminum");
      expect(brief(sized(ask(year, supply, "aluminum")))).toEqual(["8 AWG", 16510, "cap"]);
      expect(brief(sized(ask(year, supply, "copper-clad aluminum")))).toEqual(["8 AWG", 16510, "cap"]);
    });

    it("does not cross materials", () => {
      const result = sized(ask(year, sets(1, "10 AWG", "aluminum"), "copper"));
      expect(brief(result)).toEqual(["8 AWG", 16510, "row"]);
      expect(cautionsOf(result)).toContain("no-cap-across-materials");
      expect(sectionOf(result, "no-cap-across-materials")).toBe("Table 250.102(C)(1) note 1");
      const mixed = sized(ask(year, [sets(1, "14 AWG", "copper"), sets(1, "12 AWG", "aluminum")], "copper"));
      expect(brief(mixed)).toEqual(["8 AWG", 16510, "row"]);
      expect(cautionsOf(mixed)).toContain("no-cap-across-materials");
    });

    it("never acts under the reading that it belongs to large supplies", () => {
      const readings = { "cap-on-small-supplies": "large-supplies-only" } as const;
      const result = sized(ask(year, small, "copper", { readings }));
      expect(brief(result)).toEqual(["8 AWG", 16510, "row"]);
      expect(kinds(result)).not.toContain("cap");
      expect(cautionsOf(result)).toEqual(own);
      expect(result.readings).toEqual([
        {
          id: "cap-on-small-supplies",
          chosen: "large-supplies-only",
          otherwise: [{ alternative: "every-supply", requiredArea: 10380 }],
        },
      ]);
    });
  });

  describe.each(withoutCap)("without a cap in %s", (year) => {
    it("gives a 10 AWG supply the first row", () => {
      const result = sized(ask(year, small, "copper"));
      expect(brief(result)).toEqual(["8 AWG", 16510, "row"]);
      expect(cautionsOf(result)).toEqual(own);
      expect(result.readings).toEqual(
        year === "2014"
          ? [
              {
                id: "cap-in-2014",
                chosen: "absent",
                otherwise: [{ alternative: "as-in-2017", requiredArea: 10380 }],
              },
            ]
          : [],
      );
    });

    it("pays no attention to a reading of other editions", () => {
      const readings = { "cap-on-small-supplies": "every-supply" } as const;
      expect(sizeIn(sized(ask(year, small, "copper", { readings })))).toBe("8 AWG");
    });
  });

  it("has the cap of 2017 in 2014 only as a chosen reading, and says how weak that is", () => {
    const result = sized(ask("2014", small, "copper", { readings: { "cap-in-2014": "as-in-2017" } }));
    expect(brief(result)).toEqual(["10 AWG", 10380, "cap"]);
    expect(result.evidence).toBe("memory");
    expect(cautionsOf(result)).toEqual(["cap-applied", ...own]);
  });
}

import { type EditionYear, editionYears } from "bondmil";
import { describe, expect, it } from "vitest";
import {
  type JumperFacts,
  ownCautions,
  parallelNotes,
  type Sizer,
  unnamedCautions,
  withFloor,
} from "./facts.js";
import { ask, brief, cautionsOf, kinds, sectionOf, sets, sizeIn, step } from "./supplies.js";

/** Supplies whose material is not the jumper's, or not one material. */
export function describeOtherMaterial(sized: Sizer, facts: JumperFacts): void {
  describe.each(editionYears)("another material in %s", (year) => {
    const atAnySize = facts.replacedAtAnySize.includes(year);
    const isOpen = facts.openThreshold?.includes(year) ?? false;
    const floor = withFloor.includes(year);
    const own = ownCautions(facts);
    const unnamed = unnamedCautions(facts, year);

    it("keeps an aluminum supply in the table past copper's threshold", () => {
      const result = sized(ask(year, sets(3, "500 kcmil", "aluminum"), "copper"));
      expect(brief(result)).toEqual(["2/0 AWG", 133100, "row"]);
      // Replaced at any size: 3 x 350 kcmil copper, the same row.
      expect(kinds(result).includes("assumed")).toBe(atAnySize || isOpen);
      const areas = result.steps.flatMap((one) => (one.kind === "row" ? [one.area] : []));
      expect(areas).toEqual([...(atAnySize ? [] : [1500000]), ...(atAnySize || isOpen ? [1050000] : [])]);
    });

    it("replaces every conductor above the threshold, 600 kcmil aluminum by 500 kcmil copper", () => {
      const result = sized(ask(year, sets(4, "600 kcmil", "aluminum"), "copper"));
      expect(brief(result)).toEqual(["250 kcmil", 250000, "one-eighth"]);
      const { conductors, area, temperature, citation } = step(result, "assumed");
      expect(area).toBe(2000000);
      expect(temperature).toBe(75);
      expect(citation.section).toBe(facts.otherMaterial[year]);
      expect(conductors.map(({ citation: _, ...rest }) => rest)).toEqual([
        {
          installed: { size: "600 kcmil", material: "aluminum" },
          installedAmperes: 340,
          assumed: "500 kcmil",
          area: 500000,
        },
      ]);
      expect(conductors[0]?.citation.section).toMatch(/^Table 310\.1(6|5\(B\)\(16\))$/);
      expect(cautionsOf(result)).toEqual(["assumed-conductors", ...own]);
      expect(sectionOf(result, "assumed-conductors")).toBe(facts.otherMaterial[year]);
    });

    it("counts equal conductance where no single aluminum conductor carries as much", () => {
      const result = sized(ask(year, sets(2, "1500 kcmil", "copper"), "aluminum"));
      const { conductors, area } = step(result, "assumed");
      // 1,500,000 / 0.61 = 2,459,016.39...
      expect(conductors).toMatchObject([{ installedAmperes: 625, assumed: null, area: 2459017 }]);
      expect(area).toBe(4918034);
      expect(brief(result)).toEqual(["700 kcmil", 614755, "one-eighth"]);
      expect(cautionsOf(result)).toEqual([
        "assumed-conductors",
        "no-single-conductor-of-equal-ampacity",
        ...unnamed,
        ...own,
      ]);
      expect(sectionOf(result, "no-single-conductor-of-equal-ampacity")).toBe(facts.otherMaterial[year]);
    });

    it("takes 1000 kcmil copper as the last that a single aluminum conductor matches", () => {
      const conductorsFor = (one: "1000 kcmil" | "1250 kcmil") =>
        step(sized(ask(year, sets(2, one, "copper"), "aluminum")), "assumed").conductors;
      expect(conductorsFor("1000 kcmil")).toMatchObject([
        { installedAmperes: 545, assumed: "1750 kcmil", area: 1750000 },
      ]);
      expect(conductorsFor("1250 kcmil")).toMatchObject([
        { installedAmperes: 590, assumed: null, area: 2049181 },
      ]);
    });

    it("replaces a single conductor of another material above the threshold", () => {
      const result = sized(ask(year, sets(1, "2000 kcmil", "aluminum"), "copper"));
      expect(step(result, "assumed")).toMatchObject({
        area: 1250000,
        conductors: [{ installedAmperes: 560, assumed: "1250 kcmil" }],
      });
      expect(brief(result)).toEqual(floor ? ["3/0 AWG", 167800, "floor"] : ["3/0 AWG", 156250, "one-eighth"]);
      expect(result.readings).toEqual(
        parallelNotes.includes(year)
          ? [
              {
                id: "single-conductor-of-another-material",
                chosen: "as-in-parallel",
                otherwise: [{ alternative: "parallel-only", requiredArea: 250000 }],
              },
            ]
          : [],
      );
    });

    it("enters the floor by what is installed, not by what is assumed", () => {
      // 1163.6 kcmil copper; 5 x 300 kcmil and 3/0 AWG aluminum, 1667.8 kcmil, are assumed.
      const supply = [sets(5, "4/0 AWG", "copper"), sets(1, "1/0 AWG", "copper")];
      const result = sized(ask(year, supply, "aluminum"));
      expect(step(result, "row")).toMatchObject({ area: 1667800, requiredArea: 211600 });
      expect(brief(result)).toEqual(floor ? ["250 kcmil", 250000, "floor"] : ["4/0 AWG", 211600, "row"]);
    });

    it("counts copper and aluminum together by the jumper's material, at any size", () => {
      const supply = [sets(1, "500 kcmil", "copper"), sets(1, "750 kcmil", "aluminum")];
      const result = sized(ask(year, supply, "copper"));
      // 385 A of 750 kcmil aluminum are 600 kcmil copper: 1100 kcmil, the end of the last row.
      expect(step(result, "sum")).toMatchObject({ column: "mixed", area: 1250000 });
      expect(step(result, "assumed")).toMatchObject({
        area: 1100000,
        conductors: [{ installed: { size: "750 kcmil", material: "aluminum" }, assumed: "600 kcmil" }],
      });
      expect(brief(result)).toEqual(["2/0 AWG", 133100, "row"]);
      expect(cautionsOf(result)).toEqual(["assumed-conductors", "mixed-supply-materials", ...own]);
      expect(sectionOf(result, "mixed-supply-materials")).toBe(facts.otherMaterial[year]);

      const twice = supply.map((set) => ({ ...set, count: 2 }));
      expect(brief(sized(ask(year, twice, "copper")))).toEqual(["300 kcmil", 275000, "one-eighth"]);
      // 380 A of 500 kcmil copper are 750 kcmil aluminum: 4 x 750 kcmil.
      expect(brief(sized(ask(year, twice, "aluminum")))).toEqual(["400 kcmil", 375000, "one-eighth"]);
    });

    it("requires no less than one of the two materials alone would", () => {
      // 3 x 1 AWG aluminum, 251.07 kcmil, stand in the row of 2 AWG; assumed copper, 3 x 3 AWG, in that of 4 AWG.
      const aluminum = sets(3, "1 AWG", "aluminum");
      const alone = sized(ask(year, aluminum, "copper"));
      const joined = sized(ask(year, [aluminum, sets(1, "18 AWG", "copper")], "copper"));
      expect(brief(alone)).toEqual(atAnySize ? ["4 AWG", 41740, "row"] : ["2 AWG", 66360, "row"]);
      expect(brief(joined)).toEqual(brief(alone));
      expect(step(joined, "assumed").area).toBe(159480);
    });

    it("treats copper-clad aluminum as aluminum", () => {
      for (const count of [1, 3, 6]) {
        for (const other of ["copper", "aluminum"] as const) {
          const clad = sized(ask(year, sets(count, "600 kcmil", "copper-clad aluminum"), other));
          expect(brief(clad)).toEqual(brief(sized(ask(year, sets(count, "600 kcmil", "aluminum"), other))));
          const jumper = sized(ask(year, sets(count, "600 kcmil", other), "copper-clad aluminum"));
          expect(brief(jumper)).toEqual(brief(sized(ask(year, sets(count, "600 kcmil", other), "aluminum"))));
          expect(jumper.material).toBe("copper-clad aluminum");
        }
      }
      const both = [sets(2, "600 kcmil", "aluminum"), sets(2, "600 kcmil", "copper-clad aluminum")];
      const result = sized(ask(year, both, "aluminum"));
      expect(step(result, "sum").column).toBe("aluminum");
      expect(cautionsOf(result)).not.toContain("mixed-supply-materials");
      expect(step(sized(ask(year, both, "copper")), "assumed").conductors).toHaveLength(1);
    });

    it("matches conductors in the temperature column that is asked for", () => {
      const assumedAt = (temperature: 60 | 75 | 90 | undefined) => {
        const asked = ask(
          year,
          sets(4, "750 kcmil", "aluminum"),
          "copper",
          temperature === undefined ? {} : { temperature },
        );
        const result = sized(asked);
        const { conductors, temperature: used } = step(result, "assumed");
        return [used, conductors[0]?.installedAmperes, conductors[0]?.assumed, sizeIn(result)];
      };
      expect(assumedAt(undefined)).toEqual([75, 385, "600 kcmil", "300 kcmil"]);
      expect(assumedAt(75)).toEqual([75, 385, "600 kcmil", "300 kcmil"]);
      expect(assumedAt(60)).toEqual([60, 320, "500 kcmil", "250 kcmil"]);
      expect(assumedAt(90)).toEqual([90, 435, "600 kcmil", "300 kcmil"]);
    });

    it("uses the ampacities of the edition", () => {
      // 260 A of 4/0 AWG copper at 90 C: 300 kcmil aluminum carried 255 A through 2008 and 260 A since.
      const result = sized(ask(year, sets(6, "4/0 AWG", "copper"), "aluminum", { temperature: 90 }));
      expect(step(result, "assumed").conductors[0]?.assumed).toBe(
        year === "2008" ? "350 kcmil" : "300 kcmil",
      );
      expect(sizeIn(result)).toBe(year === "2008" ? "300 kcmil" : "250 kcmil");
    });
  });

  const readings = { "single-conductor-of-another-material": "parallel-only" } as const;
  const jumperFor = (year: EditionYear, count: number) =>
    sized(ask(year, sets(count, "2000 kcmil", "aluminum"), "copper", { readings }));

  it.each(parallelNotes)(
    "leaves a single conductor in place when the %s notes are read by the letter",
    (year) => {
      const result = jumperFor(year, 1);
      expect(brief(result)).toEqual(["250 kcmil", 250000, "one-eighth"]);
      expect(kinds(result)).toEqual(["sum", "one-eighth", "standard-size"]);
      expect(step(result, "one-eighth")).toMatchObject({ entered: "aluminum", threshold: 1750000 });
      expect(cautionsOf(result)).toContain("single-conductor-above-threshold");
      expect(result.readings).toEqual([
        {
          id: "single-conductor-of-another-material",
          chosen: "parallel-only",
          otherwise: [{ alternative: "as-in-parallel", requiredArea: 156250 }],
        },
      ]);
      expect(brief(jumperFor(year, 2))).toEqual(["350 kcmil", 312500, "one-eighth"]);
    },
  );

  it("knows that reading in no edition whose notes name single conductors", () => {
    for (const year of ["2014", "2017", "2020"] as const) {
      expect(brief(jumperFor(year, 1))).toEqual(["3/0 AWG", 156250, "one-eighth"]);
      expect(jumperFor(year, 1).readings).toEqual([]);
    }
  });
}

import { editionYears } from "bondmil";
import { describe, expect, it } from "vitest";
import { requiredForLoad } from "../../../src/supply/for-load.js";
import {
  evidence,
  type JumperFacts,
  ownCautions,
  parallelNotes,
  type Sizer,
  unnamedCautions,
  withFloor,
} from "./facts.js";
import { ask, brief, cautionsOf, sectionOf, sets, sizeIn, step } from "./supplies.js";
import { rowTable } from "./table-rows.js";

/** What a result says beside its size: names, citations, evidence, cautions. */
export function describeResult(sized: Sizer, facts: JumperFacts): void {
  describe.each(editionYears)("the result in %s", (year) => {
    const own = ownCautions(facts);
    const unnamed = unnamedCautions(facts, year);

    it("says what it is and on what it rests", () => {
      const result = sized(ask(year, sets(1, "4/0 AWG", "copper"), "copper"));
      expect(result.role).toBe(facts.role);
      expect(result.purpose).toBe("fault-path");
      expect(result.edition).toBe(year);
      expect(result.name).toBe(facts.name[year]);
      expect(result.material).toBe("copper");
      expect(result.form).toBe("wire");
      expect(result.outcome).toEqual({ kind: "conductor", size: "2 AWG", quantity: 1 });
      expect(result.citation.section).toBe(facts.rule[year]);
      expect(result.evidence).toBe(evidence[year]);
      expect(result.readings).toEqual([]);
      expect(cautionsOf(result)).toEqual(own);
      expect(result.steps.map(({ kind, citation }) => [kind, citation.section])).toEqual([
        ["sum", facts.sum[year]],
        ["row", rowTable[year]],
        ["standard-size", "Chapter 9 Table 8"],
      ]);
    });

    it("cites the 12.5 percent sentence, and the last row where it stays as a floor", () => {
      const result = sized(ask(year, sets(3, "600 kcmil", "copper"), "copper"));
      expect(brief(result)).toEqual(["250 kcmil", 225000, "one-eighth"]);
      expect(result.steps.map(({ kind, citation }) => [kind, citation.section])).toEqual([
        ["sum", facts.sum[year]],
        ["one-eighth", facts.oneEighth[year]],
        ...(withFloor.includes(year) ? [["floor", "Table 250.66"]] : []),
        ["standard-size", "Chapter 9 Table 8"],
      ]);
      expect(step(result, "one-eighth")).toMatchObject({ area: 1800000, threshold: 1100000 });
    });

    it("says that conductors are only those required for a load", () => {
      const supply = requiredForLoad(year, { amperes: 380, material: "copper", sets: 1 });
      if (supply === null) throw new Error("no supply for 380 A");
      const result = sized({ code: { year }, supply, conductor: { material: "copper" } });
      expect(sizeIn(result)).toBe("1/0 AWG");
      expect(cautionsOf(result)).toEqual(["conductors-required-for-load", ...own]);
      expect(sectionOf(result, "conductors-required-for-load")).toBe(
        withFloor.includes(year)
          ? "Table 250.66 note 2"
          : `Table 250.102(C)(1) note ${parallelNotes.includes(year) ? 3 : 4}`,
      );
    });

    it("notes parallel sets below 1/0 AWG and sizes for them all the same", () => {
      const result = sized(ask(year, sets(2, "1 AWG", "copper"), "copper"));
      expect(sizeIn(result)).toBe("4 AWG");
      const section = year === "2008" ? "310.4" : year < "2020" ? "310.10(H)" : "310.10(G)";
      expect(sectionOf(result, "parallel-below-1-0")).toBe(section);
      for (const fine of [sets(1, "1 AWG", "copper"), sets(2, "1/0 AWG", "copper")]) {
        expect(cautionsOf(sized(ask(year, fine, "copper")))).toEqual(own);
      }
    });

    it("notes a jumper material that the edition does not name", () => {
      for (const material of ["aluminum", "copper-clad aluminum"] as const) {
        const result = sized(ask(year, sets(1, "500 kcmil", "aluminum"), material));
        expect(sizeIn(result)).toBe("1/0 AWG");
        expect(cautionsOf(result)).toEqual([...unnamed, ...own]);
        expect(sectionOf(result, "material-not-named")).toBe(unnamed.length > 0 ? facts.material : undefined);
      }
    });

    it("says that a listed jumper comes with its equipment, where one does", () => {
      const result = sized(ask(year, sets(1, "500 kcmil", "copper"), "copper"));
      expect(sectionOf(result, "listed-equipment")).toBe(facts.mayComeWithEquipment ? null : undefined);
    });
  });
}

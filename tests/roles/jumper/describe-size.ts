import { editionYears } from "bondmil";
import { describe, expect, it } from "vitest";
import { type JumperFacts, ownCautions, parallelNotes, type Sizer, withFloor } from "./facts.js";
import { ask, brief, cautionsOf, kinds, sectionOf, sets, sizeIn, step } from "./supplies.js";
import { columns, smallestConductor, tableRows } from "./table-rows.js";

/** Rows, 12.5 percent, floor, and what becomes of the area. */
export function describeSize(sized: Sizer, facts: JumperFacts): void {
  describe.each(editionYears)("the size in %s", (year) => {
    const atAnySize = [...facts.replacedAtAnySize, ...(facts.openThreshold ?? [])].includes(year);
    const floor = withFloor.includes(year);
    const own = ownCautions(facts);

    describe.each(columns)("a supply of %s", (supply) => {
      describe.each(columns.filter((jumper) => jumper === supply || !atAnySize))(
        "with a jumper of %s",
        (jumper) => {
          it.each(tableRows.map((row, i) => [i, row] as const))(
            "ends row %i where the table does",
            (i, row) => {
              const atEnd = row.end[supply].map((one) => sets(1, one, supply));
              const [answer, area] = row.answer[jumper];
              const last = sized(ask(year, atEnd, jumper));
              expect(brief(last)).toEqual([answer, area, "row"]);
              expect(step(last, "row")).toMatchObject({ entered: supply, read: jumper, size: answer });
              expect(step(last, "row").through).toBe(step(last, "sum").area);

              const next = tableRows[i + 1]?.answer[jumper];
              if (next === undefined) return;
              const beyond = sized(ask(year, [...atEnd, sets(1, smallestConductor, supply)], jumper));
              expect(step(beyond, "row").area).toBe(step(last, "row").area + 1620);
              expect(brief(beyond)).toEqual([...next, "row"]);
            },
          );

          it("gives every single conductor its row", () => {
            const found = tableRows.map(({ singles }) =>
              singles[supply].map((one) => sizeIn(sized(ask(year, sets(1, one, supply), jumper)))),
            );
            expect(found).toEqual(
              tableRows.map(({ singles, answer }) => singles[supply].map(() => answer[jumper][0])),
            );
          });
        },
      );
    });

    it("starts the 12.5 percent just above the last row of a copper supply", () => {
      const supply = [
        sets(1, "600 kcmil", "copper"),
        sets(1, "500 kcmil", "copper"),
        sets(1, "18 AWG", "copper"),
      ];
      expect(brief(sized(ask(year, supply, "copper")))).toEqual(
        floor ? ["3/0 AWG", 167800, "floor"] : ["3/0 AWG", 137703, "one-eighth"],
      );
      // 900 and 750 kcmil for the large ones, 12 AWG for 18 AWG: together still within the aluminum rows.
      const other = sized(ask(year, supply, "aluminum"));
      expect(step(other, "assumed").area).toBe(1656530);
      expect(brief(other)).toEqual(floor ? ["250 kcmil", 250000, "floor"] : ["4/0 AWG", 211600, "row"]);
    });

    it("starts the 12.5 percent just above the last row of an aluminum supply", () => {
      const supply = [
        sets(1, "1000 kcmil", "aluminum"),
        sets(1, "750 kcmil", "aluminum"),
        sets(1, "18 AWG", "aluminum"),
      ];
      expect(brief(sized(ask(year, supply, "aluminum")))).toEqual(
        floor ? ["250 kcmil", 250000, "floor"] : ["250 kcmil", 218953, "one-eighth"],
      );
      const other = sized(ask(year, supply, "copper"));
      expect(step(other, "assumed").area).toBe(1304110);
      expect(brief(other)).toEqual(floor ? ["3/0 AWG", 167800, "floor"] : ["3/0 AWG", 163014, "one-eighth"]);
    });

    it("is met by a size on which the 12.5 percent lands exactly", () => {
      const result = sized(ask(year, sets(8, "500 kcmil", "copper"), "copper"));
      expect(brief(result)).toEqual(["500 kcmil", 500000, "one-eighth"]);
      expect(step(result, "standard-size")).toMatchObject({ requiredArea: 500000, area: 500000 });
    });

    it("does not round through square millimeters: 6 x 400 kcmil is 300, not 350 kcmil", () => {
      expect(brief(sized(ask(year, sets(6, "400 kcmil", "copper"), "copper")))).toEqual([
        "300 kcmil",
        300000,
        "one-eighth",
      ]);
    });

    it("takes 12.5 percent of a single conductor above the threshold", () => {
      const result = sized(ask(year, sets(1, "1250 kcmil", "copper"), "copper"));
      expect(brief(result)).toEqual(floor ? ["3/0 AWG", 167800, "floor"] : ["3/0 AWG", 156250, "one-eighth"]);
      const noted = parallelNotes.includes(year);
      expect(cautionsOf(result)).toEqual([...(noted ? ["single-conductor-above-threshold"] : []), ...own]);
      if (noted) expect(sectionOf(result, "single-conductor-above-threshold")).toBe(facts.oneEighth[year]);
      expect(cautionsOf(sized(ask(year, sets(2, "1250 kcmil", "copper"), "copper")))).toEqual(own);
    });

    it("keeps the last row as a floor only where the table has one, visible for a bus", () => {
      const result = sized(ask(year, sets(1, "1250 kcmil", "copper"), { material: "copper", form: "bus" }));
      const requiredArea = floor ? 167800 : 156250;
      expect(result.outcome).toEqual({ kind: "area-only", requiredArea, why: "bus" });
      expect(result.form).toBe("bus");
      expect(result.requiredArea).toBe(requiredArea);
      expect(result.governs).toBe(floor ? "floor" : "one-eighth");
      expect(kinds(result)).toEqual(["sum", "one-eighth", ...(floor ? ["floor"] : [])]);
      if (floor) {
        expect(step(result, "floor")).toMatchObject({
          size: "3/0 AWG",
          requiredArea: 167800,
          citation: { section: "Table 250.66" },
        });
      }
      expect(cautionsOf(result)).not.toContain("above-largest-standard-size");
    });

    it("gives a bus the area of its row", () => {
      const result = sized(ask(year, sets(1, "350 kcmil", "copper"), { material: "copper", form: "bus" }));
      expect(result.outcome).toEqual({ kind: "area-only", requiredArea: 66360, why: "bus" });
      expect(kinds(result)).toEqual(["sum", "row"]);
    });

    it("has the largest standard size for 16,000 kcmil and only an area above", () => {
      expect(brief(sized(ask(year, sets(8, "2000 kcmil", "copper"), "copper")))).toEqual([
        "2000 kcmil",
        2000000,
        "one-eighth",
      ]);
      const supply = [sets(8, "2000 kcmil", "copper"), sets(1, "18 AWG", "copper")];
      const result = sized(ask(year, supply, "copper"));
      expect(result.outcome).toEqual({
        kind: "area-only",
        requiredArea: 2000203,
        why: "above-largest-standard-size",
      });
      expect(kinds(result)).not.toContain("standard-size");
      expect(sectionOf(result, "above-largest-standard-size")).toBe("Chapter 9 Table 8");
    });
  });
}

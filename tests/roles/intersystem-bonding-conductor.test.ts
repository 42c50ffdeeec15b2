import { type EditionYear, editionYears, type Input, intersystemBondingConductor, size } from "bondmil";
import { describe, expect, it } from "vitest";
import { brief, cautionsOf, sectionOf } from "./jumper/supplies.js";

const sized = (
  year: EditionYear,
  termination: Input<typeof intersystemBondingConductor>["termination"],
  more: Partial<Input<typeof intersystemBondingConductor>> = {},
) => size(intersystemBondingConductor, { code: { year }, termination, ...more });
const withBusbar = ["2017", "2020", "2023", "2026"] as const;

describe("the conductor to an intersystem bonding termination", () => {
  it.each(editionYears)("is at least 6 AWG copper in %s", (year) => {
    const found = sized(year, "apart");
    expect(found).toMatchObject({
      role: "intersystem-bonding-conductor",
      purpose: "equalizing",
      material: "copper",
      citation: { section: year < "2017" ? "250.94" : "250.94(A)" },
    });
    expect(brief(found)).toEqual(["6 AWG", 26240, "named-size"]);
    expect(found.cautions).toEqual([]);
  });

  it.each(editionYears)("is not required where the termination sits on the enclosure in %s", (year) => {
    expect(sized(year, "on-enclosure").outcome).toMatchObject({
      kind: "not-required",
      why: "termination-on-enclosure",
    });
  });

  it("is not required where communications are unlikely, from 2017", () => {
    for (const year of editionYears) {
      const { outcome, cautions } = sized(year, "apart", { communicationsUnlikely: true });
      expect(cautions.map(({ code }) => code)).toEqual(year < "2017" ? ["not-excused-in-this-edition"] : []);
      expect(outcome).toMatchObject(
        year < "2017"
          ? { kind: "conductor", size: "6 AWG" }
          : { kind: "not-required", why: "communications-unlikely" },
      );
    }
    expect(sized("2020", "apart", { communicationsUnlikely: false }).outcome.kind).toBe("conductor");
  });

  it.each(withBusbar)("to a busbar in %s says on what it rests", (year) => {
    const found = sized(year, "busbar");
    expect(brief(found)).toEqual(["6 AWG", 26240, "named-size"]);
    expect(found.citation.section).toBe("250.94(B)");
    expect(cautionsOf(found)).toEqual(year < "2023" ? ["busbar-tie-inferred"] : []);
  });

  it("to a busbar follows the largest electrode conductor on it from 2023", () => {
    const onBusbar = { electrodeConductorOnBusbar: "3/0 AWG" } as const;
    expect(brief(sized("2023", "busbar", onBusbar))).toEqual(["3/0 AWG", 167800, "floor"]);
    expect(brief(sized("2026", "busbar", onBusbar))).toEqual(["3/0 AWG", 167800, "floor"]);
    expect(brief(sized("2020", "busbar", onBusbar))).toEqual(["6 AWG", 26240, "named-size"]);
    expect(sectionOf(sized("2020", "busbar", onBusbar), "busbar-tie-inferred")).toBe("250.94(B)");
    expect(brief(sized("2023", "busbar", { electrodeConductorOnBusbar: "8 AWG" }))).toEqual([
      "6 AWG",
      26240,
      "named-size",
    ]);
  });
});

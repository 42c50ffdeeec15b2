import { describe, expect, it } from "vitest";
import { policiesByEdition } from "../../tables/tools/generator/by-edition.js";
import { inForce } from "../../tables/tools/generator/in-force.js";
import type { Known } from "../../tables/tools/generator/ladder.js";
import type { PolicyEntry } from "../../tables/tools/generator/model.js";

const entries: readonly PolicyEntry[] = [
  { from: "2008", cap: "none", floor: null, sections: { rule: "250.1", cap: "250.2" } },
  { from: "2014", floor: { copper: "6 AWG", aluminum: "4 AWG", section: "250.9" } },
  { from: "2020", cap: "set", sections: { cap: "250.3" } },
];

describe("what holds from an edition on", () => {
  it("is laid over what held before, also inside of an object", () => {
    expect(inForce(entries, "2011")).toEqual(entries[0]);
    expect(inForce(entries, "2017")).toEqual({
      from: "2014",
      cap: "none",
      floor: { copper: "6 AWG", aluminum: "4 AWG", section: "250.9" },
      sections: { rule: "250.1", cap: "250.2" },
    });
    expect(inForce(entries, "2026")).toEqual({
      from: "2020",
      cap: "set",
      floor: { copper: "6 AWG", aluminum: "4 AWG", section: "250.9" },
      sections: { rule: "250.1", cap: "250.3" },
    });
  });

  it("is nothing before the first entry, and leaves the entries as they were", () => {
    const before = structuredClone(entries);
    expect(inForce(entries, "2005")).toBeUndefined();
    inForce(entries, "2026");
    expect(entries).toEqual(before);
  });

  it("gets the evidence of each edition, part by part", () => {
    const known = (part: string | undefined, year: string): Known => {
      if (year !== "2020") return { level: "carried", sources: ["two"] };
      return { level: part === "floor" ? "memory" : part === "cap" ? "carried" : "single", sources: ["one"] };
    };
    const { invented } = policiesByEdition(
      "policies",
      { through: "2026", policies: { invented: entries } },
      (_, [, part], year) => known(part, year),
      [],
    );
    expect(invented?.["2020"].basis).toEqual({
      rule: ["250.1", "single", ["one"]],
      cap: ["250.3", "carried", ["one"]],
    });
    expect(invented?.["2020"].limits).toEqual({ floor: ["250.9", "memory", ["one"]] });
    expect(invented?.["2011"].limits).toEqual({});
    expect(invented?.["2023"].basis["cap"]).toEqual(["250.3", "carried", ["two"]]);
    expect(Object.keys(invented?.["2008"].fields ?? {})).toEqual(["cap", "floor"]);
  });
});

import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { editionsPage } from "../../docs/pages/tables/editions.js";
import { changeOf, span } from "../../docs/pages/tables/parts.js";
import { changedPolicies, movedRules } from "../../docs/pages/tables/policy-changes.js";
import { tablesPage } from "../../docs/pages/tables/tables.js";
import type { Policies } from "../../tables/tools/generator/by-edition.js";
import { collect } from "../../tables/tools/generator/collect.js";
import { inventedTable } from "../tables/invented.js";

const folder = join(import.meta.dirname, "../../tables");
const { collected } = collect(folder);
const { tables } = collected;

describe("the page of tables", () => {
  it("shows a value that never changed bare, and one that did with its editions", () => {
    const page = tablesPage(tables);
    expect(page).toContain("| 4000 | 500 kcmil | 800 kcmil (2008), 750 kcmil (2011 to 2026) |");
    expect(page).toContain("| 5000 | 700 kcmil | 1200 kcmil (2008 to 2017), 1250 kcmil (2020 to 2026) |");
    expect(page).toContain("| 400 | 3 AWG | 1 AWG |");
    expect(page).toContain("| 2008 | Table 250.66 | carried |");
    expect(page).toMatch(/\| 2008 \| 4000 \| aluminum \| memory \|/);
  });

  it("has no edition in which the table is missing", () => {
    const page = tablesPage([inventedTable]);
    expect(page).not.toContain("| 2008 |");
    expect(page).toContain("| 250 kcmil | 350 kcmil | 4 AWG | none |");
    expect(page).toContain("| last | none | 3/0 AWG | 250 kcmil |");
  });
});

describe("the page of editions", () => {
  const page = editionsPage(collected);
  const part = (before: string, after: string): string =>
    page.split("\n## ").find((text) => text.startsWith(`${before} to ${after}`)) ?? "";

  it("has a part for each pair of neighbors", () =>
    expect(page.match(/^## \d+ to \d+$/gm)).toEqual([
      "## 2008 to 2011",
      "## 2011 to 2014",
      "## 2014 to 2017",
      "## 2017 to 2020",
      "## 2020 to 2023",
      "## 2023 to 2026",
    ]));

  it.each([
    ["2008", "2011", "equipment grounding: 4000, aluminum | 800 kcmil | 750 kcmil | memory / single"],
    ["2011", "2014", "bonding conductor: number | none | Table 250.102(C)(1) | none / bracketed"],
    ["2014", "2017", "main bonding jumper: cap | none | set | memory / single"],
    ["2017", "2020", "equipment grounding: 6000, aluminum | 1200 kcmil | 1250 kcmil | single / carried"],
    [
      "2017",
      "2020",
      "water piping service: ceiling | none | 3/0 AWG copper, 250 kcmil aluminum | single / single",
    ],
    ["2020", "2023", "main jumper place | 250.24(B) | 250.24(C) | single / single"],
    ["2020", "2023", "busbar follows electrode conductor | false | true | single / single"],
    ["2020", "2023", "copper-clad to rods | open | not open | not recorded"],
    [
      "2008",
      "2011",
      "supply-side bonding jumper | equipment bonding jumper on the supply side of the service | supply-side bonding jumper | not recorded",
    ],
  ])("says what changed from %s to %s: %s", (before, after, line) =>
    expect(part(before, after)).toContain(`| ${line} |`),
  );

  it("does not list what stayed", () => {
    expect(part("2020", "2023")).not.toContain("equipment grounding:");
    expect(part("2017", "2020")).not.toContain("main jumper place");
    expect(changeOf("x", "a", "a", ["single", "single"])).toEqual([]);
  });
});

describe("changes of a policy", () => {
  const floor = { copper: "1/0 AWG", aluminum: "1/0 AWG", section: "250.9" };
  const basis = { rule: ["250.1", "single"], cap: ["250.2", "carried"] };
  const policies = {
    invented: {
      "2020": { fields: { cap: "none", floor: null }, basis, limits: {}, sources: ["one"] },
      "2023": {
        fields: { cap: "set", floor },
        basis: { ...basis, cap: ["250.3", "bracketed"] },
        limits: { floor: ["250.9", "memory"] },
        sources: [],
      },
    },
  } as unknown as Policies;

  it("have the evidence of the part that changed, or of the size's own place", () => {
    expect(changedPolicies(policies, "2020", "2023")).toEqual([
      { what: "invented: cap", before: "none", after: "set", evidence: "carried / bracketed" },
      {
        what: "invented: floor",
        before: "none",
        after: "1/0 AWG copper, 1/0 AWG aluminum",
        evidence: "single / memory",
      },
    ]);
    expect(movedRules(policies, "2020", "2023")).toEqual([
      { what: "invented: cap", before: "250.2", after: "250.3", evidence: "carried / bracketed" },
    ]);
  });
});

describe("a span of editions", () => {
  it("joins neighbors only", () => {
    expect(span(["2008"])).toBe("2008");
    expect(span(["2008", "2011", "2017", "2023", "2026"])).toBe("2008 to 2011, 2017, 2023 to 2026");
  });
});

import { mainBondingJumper, size } from "bondmil";
import { describe, expect, it } from "vitest";
import { mainBondingJumperPolicies } from "../../src/edition/tables/policies.generated.js";
import { bySupplyCautions } from "../../src/rules/by-supply-cautions.js";
import type { CapStep, Governing } from "../../src/sizing/index.js";
import type { Supply } from "../../src/supply/index.js";

const citation = { section: "an invented section", evidence: "memory" } as const;
const policy = { ...mainBondingJumperPolicies.byEdition["2023"], cap: "set" } as const;
const cap = (why: CapStep["why"], requiredArea: number): CapStep => ({
  kind: "cap",
  why,
  requiredArea,
  citation,
});

/** The cautions on a supply of 13060 circular mils, whatever the kernel would make of it. */
const cautions = (
  requiredArea: number,
  governs: Governing,
  caps: readonly CapStep[] = [],
  material: "copper" | "aluminum" = "copper",
) => {
  const supply: Supply = { sets: [{ count: 2, size: "12 AWG", material: "copper" }] };
  const sum = {
    kind: "sum",
    rule: "corresponding",
    supply,
    column: "copper",
    area: 13_060,
    citation,
  } as const;
  return bySupplyCautions(
    { code: { year: "2023" }, supply, conductor: { material } },
    { policies: mainBondingJumperPolicies },
    policy,
    { requiredArea, governs, steps: [sum, ...caps] },
  ).map(({ code }) => code);
};

describe("the caution on a cap at the ungrounded conductors", () => {
  const both = [cap("ungrounded-conductors", 13_060), cap("largest-size", 10_380)];

  it("stands where they decide, not where a lower cap or a floor of the same area does", () => {
    expect(cautions(13_060, "cap", both.slice(0, 1))).toContain("cap-applied");
    expect(cautions(10_380, "cap", both)).not.toContain("cap-applied");
    expect(cautions(13_060, "floor", both)).not.toContain("cap-applied");
  });

  it("says that there is none across materials, only where it would have acted", () => {
    expect(cautions(16_510, "row", [], "aluminum")).toContain("no-cap-across-materials");
    expect(cautions(13_060, "row", [], "aluminum")).not.toContain("no-cap-across-materials");
    expect(cautions(16_510, "floor", [], "copper")).not.toContain("no-cap-across-materials");
  });
});

describe("the cautions on unlike conductors", () => {
  const codes = (supply: Supply, material: "copper" | "aluminum") =>
    size(mainBondingJumper, { code: { year: "2023" }, supply, conductor: { material } }).cautions.map(
      ({ code }) => code,
    );

  it("name a conductor without an equal beside one that has one", () => {
    const sets = (size: "1500 kcmil" | "600 kcmil") =>
      ({
        sets: [
          {
            count: 2,
            phases: [
              { size, material: "copper" },
              { size: "600 kcmil", material: "copper" },
            ],
          },
        ],
      }) as const;
    expect(codes(sets("1500 kcmil"), "aluminum")).toContain("no-single-conductor-of-equal-ampacity");
    expect(codes(sets("600 kcmil"), "aluminum")).not.toContain("no-single-conductor-of-equal-ampacity");
  });

  it("name one conductor below 1/0 AWG in parallel sets", () => {
    const sets = (size: "1 AWG" | "1/0 AWG") =>
      ({
        sets: [
          {
            count: 2,
            phases: [
              { size, material: "copper" },
              { size: "2/0 AWG", material: "copper" },
            ],
          },
        ],
      }) as const;
    expect(codes(sets("1 AWG"), "copper")).toContain("parallel-below-1-0");
    expect(codes(sets("1/0 AWG"), "copper")).not.toContain("parallel-below-1-0");
  });
});

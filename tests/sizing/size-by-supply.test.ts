import { describe, expect, it } from "vitest";
import type { Policy, SupplyAreaTable } from "../../src/edition/index.js";
import { electrodeConductor } from "../../src/edition/tables/electrode-conductor.generated.js";
import { mainBondingJumperPolicies } from "../../src/edition/tables/policies.generated.js";
import { sizeBySupply } from "../../src/sizing/size-by-supply.js";
import type { Supply } from "../../src/supply/index.js";

const printed = electrodeConductor["2011"] ?? expect.fail("no table");
const unlimited: Partial<Policy> = { cap: "none", ceiling: null, floor: null };

/** Sizes with a policy of its own; nothing stands in for a conductor of the other metal, so each counts with its own area. */
const sized = (
  supply: Supply,
  policy: Partial<Policy>,
  material: "copper" | "aluminum" = "copper",
  table: SupplyAreaTable = printed,
) =>
  sizeBySupply({
    table,
    policy: { ...mainBondingJumperPolicies.byEdition["2011"], ...unlimited, ...policy },
    supply,
    material,
    temperature: 75,
    assume: () => [],
  });

describe("the limit in the ungrounded conductors", () => {
  const unlike: Supply = {
    sets: [
      {
        count: 2,
        phases: [
          { size: "14 AWG", material: "copper" },
          { size: "12 AWG", material: "copper" },
        ],
      },
    ],
  };

  it.each([
    ["none", 16510],
    ["set", 2 * 6530],
    ["conductor", 6530],
  ] as const)("of policy %s leaves %i circular mils", (cap, area) => {
    expect(sized(unlike, { cap }).requiredArea).toBe(area);
  });
});

describe("a supply of both metals", () => {
  /** Copper in one phase, and little aluminum in the other. */
  const mostlyCopper = (each: "350 kcmil" | "600 kcmil"): Supply => ({
    sets: [
      {
        count: 2,
        phases: [
          { size: each, material: "copper" },
          { size: "1/0 AWG", material: "aluminum" },
        ],
      },
    ],
  });
  const steps = (supply: Supply, policy: Partial<Policy>) => sized(supply, policy, "aluminum").steps;

  it("shows the part of one metal before the rule only where that part decides", () => {
    const sums = (supply: Supply) =>
      steps(supply, { otherMaterial: "never" }).flatMap((step) =>
        step.kind === "sum" ? [[step.column, step.area]] : [],
      );
    expect(sums(mostlyCopper("350 kcmil"))).toEqual([
      ["mixed", 700_000],
      ["copper", 700_000],
    ]);
    expect(sums(mostlyCopper("600 kcmil"))).toEqual([["mixed", 1_200_000]]);
  });

  it("keeps the last row as a floor where one metal alone lies above its threshold", () => {
    const floors = (lastRowFloor: boolean) =>
      steps(mostlyCopper("600 kcmil"), { otherMaterial: "never", lastRowFloor }).flatMap((step) =>
        step.kind === "floor" ? [[step.why, step.size]] : [],
      );
    expect(printed.threshold).toEqual({ copper: 1_100_000, aluminum: 1_750_000 });
    expect([floors(false), floors(true)]).toEqual([[], [["last-row", "250 kcmil"]]]);
  });
});

describe("above the last bounded row", () => {
  const supply: Supply = { sets: [{ count: 3, size: "600 kcmil", material: "copper" }] };
  const governs = (policy: Partial<Policy>, table?: SupplyAreaTable) => {
    const { governs, requiredArea } = sized(supply, policy, "copper", table);
    return [governs, requiredArea];
  };

  it("12.5 percent decides, or the open last row where the policy has no 12.5 percent", () => {
    expect(governs({ oneEighth: true })).toEqual(["one-eighth", 225_000]);
    expect(governs({ oneEighth: false })).toEqual(["row", 167_800]);
  });

  it("a last row that sends to the notes is no floor", () => {
    const sent: SupplyAreaTable = { ...printed, last: null };
    const { steps } = sized(supply, { oneEighth: true, lastRowFloor: true }, "copper", sent);
    expect(steps.map(({ kind }) => kind)).toEqual(["sum", "one-eighth"]);
  });
});

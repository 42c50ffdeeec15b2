import type { Evidence } from "bondmil";
import { describe, expect, it } from "vitest";
import type { SupplyAreaTable } from "../../src/edition/index.js";
import { bondingConductor } from "../../src/edition/tables/bonding-conductor.generated.js";
import { electrodeConductor } from "../../src/edition/tables/electrode-conductor.generated.js";
import { mainBondingJumperPolicies } from "../../src/edition/tables/policies.generated.js";
import { sizeBySupply } from "../../src/sizing/size-by-supply.js";

/** Levels that no file of the tables holds, so that only these cells can be where they come from. */
const cells: Readonly<Record<string, Evidence>> = {
  "1 copper": "confirmed",
  "1 aluminum": "memory",
  "last copper": "memory",
};

const sized = (year: "2011" | "2023", printed: SupplyAreaTable | null, sets: number, conductor = "1 AWG") =>
  sizeBySupply({
    table: { ...(printed ?? expect.fail("no table")), cells },
    policy: mainBondingJumperPolicies.byEdition[year],
    supply: { sets: [{ count: sets, size: conductor as "1 AWG", material: "copper" }] },
    material: "copper",
    temperature: 75,
    assume: () => [],
  }).steps;

describe("the evidence of one cell of a table of supply areas", () => {
  it("reaches the step that reads it, and no other step", () => {
    const steps = sized("2023", bondingConductor["2023"], 1);
    expect(steps.map(({ kind, citation }) => [kind, citation])).toEqual([
      ["sum", mainBondingJumperPolicies.byEdition["2023"].basis.sum],
      ["row", { section: "Table 250.102(C)(1)", evidence: "confirmed" }],
    ]);
  });

  it("leaves the other rows with that of the table", () => {
    const [, row] = sized("2023", bondingConductor["2023"], 2);
    expect(row).toMatchObject({ kind: "row", size: "4 AWG", citation: { evidence: "single" } });
  });

  it("reaches the last row where that stays as a floor", () => {
    const steps = sized("2011", electrodeConductor["2011"], 3, "600 kcmil");
    const floor = steps.find(({ kind }) => kind === "floor");
    expect(floor).toMatchObject({
      size: "3/0 AWG",
      citation: { section: "Table 250.66", evidence: "memory" },
    });
  });
});

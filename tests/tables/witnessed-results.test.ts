import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import type { StandardSize } from "bondmil";
import { afterAll, describe, expect, it } from "vitest";
import type { SupplyAreaTable } from "../../src/edition/index.js";
import { mainBondingJumperPolicies } from "../../src/edition/tables/policies.generated.js";
import { sizeBySupply } from "../../src/sizing/size-by-supply.js";
import { cellKey, cellsOf } from "../../tables/tools/generator/cells.js";
import { readTables } from "../../tables/tools/witness/answer.js";
import { hashOf } from "../../tables/tools/witness/canonical.js";
import { witness } from "../../tables/tools/witness/command.js";
import { copyRepository } from "./repository-copy.js";

const copy = copyRepository();
afterAll(copy.remove);

/** An invented answer: nobody read this, the values are our own. */
function inventAnswer(change: Readonly<Record<string, string | null>>): string {
  const table = readTables(copy.path("tables")).find(({ id }) => id === "bonding-conductor");
  if (table === undefined) return expect.fail("no table");
  const cells = cellsOf(table, "2014")
    .filter(({ isLabel }) => !isLabel)
    .map((cell) => [cellKey(cell), String(cell.value)] as const);
  const answer = {
    format: 1,
    table: "bonding-conductor",
    edition: "2014",
    printing: "invented for a test",
    channel: "print",
    witness: "invented",
    date: "2020-01-01",
    hash: hashOf(table, "2014"),
    cells: { ...Object.fromEntries(cells), ...change },
  };
  const file = copy.path("answer.json");
  writeFileSync(file, JSON.stringify(answer));
  return file;
}

async function tableIn2014(): Promise<SupplyAreaTable> {
  const path = copy.path("src/edition/tables/bonding-conductor.generated.ts");
  const module = (await import(path)) as {
    readonly bondingConductor: Readonly<Record<string, SupplyAreaTable>>;
  };
  return module.bondingConductor["2014"] ?? expect.fail("no table");
}

const rowEvidence = (table: SupplyAreaTable, size: StandardSize, material: "copper" | "aluminum") => {
  const { steps } = sizeBySupply({
    table,
    policy: mainBondingJumperPolicies.byEdition["2014"],
    supply: { sets: [{ count: 1, size, material }] },
    material,
    temperature: 75,
    assume: () => [],
  });
  return steps.find(({ kind }) => kind === "row")?.citation.evidence;
};

describe("an accepted answer", () => {
  it("reaches the results of exactly the cells that were read", async () => {
    const file = inventAnswer({ "600 kcmil|aluminum": null });
    const { ok } = witness(copy.path("tables"), ["--read", file, "--accept"]);
    expect(ok).toBe(true);
    const generated = copy.generate();
    expect(generated.ok).toBe(true);
    expect(generated.said).toContain('raise "single"');
    const table = await tableIn2014();
    expect(rowEvidence(table, "1/0 AWG", "copper")).toBe("single");
    expect(rowEvidence(table, "500 kcmil", "copper")).toBe("single");
    expect(rowEvidence(table, "1/0 AWG", "aluminum")).toBe("single");
    expect(rowEvidence(table, "700 kcmil", "aluminum")).toBe("bracketed");
    expect(readFileSync(copy.path("tables/unconfirmed.md"), "utf8")).toMatch(
      /bonding-conductor, 1 of 24 cells .*bracketed/,
    );
  });

  it("that contradicts a value stops the generator, wherever it came from", () => {
    const file = inventAnswer({ "600 kcmil|copper": "2/0" });
    mkdirSync(copy.path("tables/witnessed"), { recursive: true });
    writeFileSync(copy.path("tables/witnessed/invented.json"), readFileSync(file));
    const { ok, said } = copy.generate();
    expect(ok).toBe(false);
    expect(said).toContain(
      "witnessed/invented.json: contradicts bonding-conductor of 2014 at 600 kcmil|copper: the sheet says 2/0, the table 1/0 AWG",
    );
  });
});

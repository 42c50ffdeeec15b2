import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { editionYears } from "bondmil";
import { afterAll, describe, expect, it } from "vitest";
import { unfilledPlaces } from "../../tables/tools/generator/answers.js";
import { readSchemas } from "../../tables/tools/generator/schemas.js";
import { scaffoldEdition } from "../../tables/tools/scaffold/scaffold.js";
import { withStubs } from "../../tables/tools/scaffold/stubs.js";
import { copyRepository } from "./repository-copy.js";

const newest = String(editionYears.at(-1));
const next = String(Number(newest) + 3);
const copy = copyRepository();
afterAll(copy.remove);

const file = (name: string): string => copy.path("tables", name);
const read = (name: string): unknown => JSON.parse(readFileSync(file(name), "utf8"));
const names = (): readonly string[] =>
  readdirSync(copy.path("tables")).filter((name) => name.endsWith(".json"));

/** Takes every stub as it is, as nobody should. */
function filled(data: unknown): unknown {
  if (data === "unfilled") return "carried";
  if (Array.isArray(data)) return data.map(filled);
  if (typeof data !== "object" || data === null) return data;
  if ("unfilled" in data) return data.unfilled;
  return Object.fromEntries(Object.entries(data).map(([key, value]) => [key, filled(value)]));
}

describe("the scaffold of a new edition", () => {
  it("refuses a year that is not later, and writes nothing", () => {
    const before = names().map(read);
    for (const year of [newest, "2025", "1999", "next", ""])
      expect(scaffoldEdition(copy.path(), year).ok).toBe(false);
    expect(names().map(read)).toEqual(before);
  });

  it("writes stubs that the schemas and the generator refuse, until they are filled", () => {
    const { ok, lines } = scaffoldEdition(copy.path(), next);
    expect([ok, lines]).toEqual([true, expect.arrayContaining(["written: tables/roles.json"])]);

    const data = new Map(names().map((name) => [name, read(name) as { $schema?: string }]));
    const schemaFaults = readSchemas(copy.path("tables"));
    const passing = [...data].filter(([, content]) => {
      if (unfilledPlaces(content).length === 0 || content.$schema === undefined) return false;
      return schemaFaults(content.$schema, content).length === 0;
    });
    expect(passing.map(([name]) => name)).toEqual([]);

    const list = copy.path("src/edition/edition-year.ts");
    writeFileSync(list, readFileSync(list, "utf8").replace(`"${newest}"]`, `"${newest}", "${next}"]`));
    const refused = copy.generate();
    expect(refused.ok).toBe(false);
    const toFill = refused.said.trim().split("\n").slice(1);
    expect(toFill).toEqual(
      expect.arrayContaining([
        `electrode-conductor/number/${next}`,
        "policies/through",
        "sections/through",
        "roles/through",
        "placements/through",
        "named-sizes/through",
      ]),
    );
    expect(lines.join("\n")).toContain(`${toFill.length} places are to be read`);

    for (const [name, content] of data) writeFileSync(file(name), JSON.stringify(filled(content)));
    const accepted = copy.generate();
    expect(accepted).toEqual({ ok: true, said: expect.stringContaining("files written") });
    const module = readFileSync(copy.path("src/edition/tables/electrode-conductor.generated.ts"), "utf8");
    expect(module).toContain(`"${next}": { number: "Table 250.66"`);
  });

  it("does not write over what is there", () => {
    const before = names().map(read);
    const { ok, lines } = scaffoldEdition(copy.path(), next);
    expect([ok, lines]).toEqual([false, expect.arrayContaining(["tables/electrode-conductor.json"])]);
    expect(names().map(read)).toEqual(before);
  });

  it("copies the edition before, and says so", () => {
    const stubs = withStubs(
      {
        through: "2026",
        number: { "2026": "Table 250.66" },
        entries: [{ from: "2026", cap: "set" }],
        reading: { id: "open", editions: ["2023", "2026"] },
        older: { id: "closed", editions: ["2014"] },
      },
      "2026",
      "2029",
    );
    expect(stubs).toEqual({
      through: { unfilled: "2029" },
      number: { "2026": "Table 250.66", "2029": { unfilled: "Table 250.66" } },
      entries: [{ from: "2026", cap: "set" }],
      reading: { id: "open", editions: ["2023", "2026", { unfilled: "2029" }] },
      older: { id: "closed", editions: ["2014"] },
    });
  });
});

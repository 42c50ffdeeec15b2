import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { editionYears } from "bondmil";
import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { cellsOf } from "../../tables/tools/generator/cells.js";
import type { TableFile } from "../../tables/tools/generator/model.js";
import { readWitnesses, type WitnessFile } from "../../tables/tools/generator/witnesses.js";
import { readTables } from "../../tables/tools/witness/answer.js";
import { canonicalJson, hashOf } from "../../tables/tools/witness/canonical.js";
import { witness } from "../../tables/tools/witness/command.js";
import { sheetOf } from "../../tables/tools/witness/sheet.js";
import { inventedTable, inventedWitness } from "./invented.js";

const real = join(import.meta.dirname, "../../tables");
const temp = mkdtempSync(join(tmpdir(), "bondmil-witness-"));
const folder = join(temp, "tables");
const sheet = join(temp, "sheet.html");
const answer = join(temp, "answer.json");

beforeEach(() => {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder);
  cpSync(join(real, "schema"), join(folder, "schema"), { recursive: true });
  mkdirSync(join(folder, "copies"));
  const { evidence, cells, ...printed } = inventedTable;
  writeFileSync(join(folder, "invented.json"), JSON.stringify(printed));
  writeFileSync(join(folder, "copies/invented.json"), JSON.stringify({ table: "invented", copies: [] }));
});
afterAll(() => rmSync(temp, { recursive: true, force: true }));

const bring = (change: Partial<WitnessFile> = {}): void =>
  writeFileSync(answer, JSON.stringify(inventedWitness({ hash: hashOf(inventedTable, "2014"), ...change })));
const read = (...more: readonly string[]) => witness(folder, ["--read", answer, ...more]);

/** What stands in the cells of the table of a sheet. */
const cellsIn = (html: string): readonly string[] =>
  [...html.matchAll(/<td[^>]*>(.*?)<\/td>/g)].map(([, text = ""]) => text);

describe("a witness sheet", () => {
  it("has the rows and columns of the table, empty cells, and the hash of our values", () => {
    const args = ["--table", "invented", "--edition", "2014", "--out", sheet];
    expect(witness(folder, args)).toEqual({ lines: [`written: ${sheet}`], ok: true });
    const html = readFileSync(sheet, "utf8");
    expect(cellsIn(html)).toEqual(Array(9).fill(""));
    for (const word of ["2 AWG", "250 kcmil", "last", "supplyAluminumThrough", "copper", "Table 1", "2014"])
      expect(html).toContain(word);
    expect(html).toContain(hashOf(inventedTable, "2014"));
    expect(html).not.toMatch(/src=|href=|<script|https?:/);
  });

  it("shows no value of ours, for any table in any edition", () => {
    const labels = (table: TableFile) =>
      new Set(table.blocks.flatMap(({ rows }) => rows.map(([first]) => first)));
    for (const table of readTables(real)) {
      for (const year of editionYears.filter((one) => table.number[one] !== null)) {
        const html = sheetOf(table, year);
        expect(new Set(cellsIn(html))).toEqual(new Set([""]));
        const secret = cellsOf(table, year)
          .filter(({ isLabel, value }) => !isLabel && typeof value === "string" && !labels(table).has(value))
          .map(({ value }) => String(value));
        expect(
          secret.filter((value) => html.includes(`>${value}<`) || html.includes(`: &quot;${value}&quot;`)),
        ).toEqual([]);
        const file = JSON.parse(
          /<pre>(.*)<\/pre>/s.exec(html)?.[1]?.replaceAll("&quot;", '"') ?? "",
        ) as WitnessFile;
        expect(new Set(Object.values(file.cells))).toEqual(new Set([null]));
      }
    }
  });

  it("has no rows that the book has not", () => {
    const conductors = readTables(real).find(({ id }) => id === "conductor-properties");
    const rows = cellsOf(conductors ?? expect.fail("no table"), "2017").map(({ row }) => row);
    expect(rows).toContain("1250 kcmil");
    expect(rows).not.toContain("1200 kcmil");
  });

  it("is refused for what is not there, with how to ask", () => {
    const ask = (...args: readonly string[]) => witness(folder, args);
    expect(ask("--table", "invented", "--edition", "2008", "--out", sheet).ok).toBe(false);
    expect(ask("--table", "other", "--edition", "2014", "--out", sheet).ok).toBe(false);
    expect(ask("--table", "invented", "--edition", "2014").lines.join()).toContain("--out <file>");
    expect(() => ask("--cheat")).toThrow(/cheat/);
  });
});

describe("the hash of our values", () => {
  it("is of a text with its keys in order", () => {
    expect(canonicalJson(inventedTable, "2014")).toBe(
      '{"cells":{"2 AWG|aluminum":"6 AWG","2 AWG|copper":"8 AWG","2 AWG|supplyAluminumThrough":"1/0 AWG","2 AWG|supplyCopperThrough":"2 AWG","250 kcmil|aluminum":null,"250 kcmil|copper":"4 AWG","250 kcmil|supplyAluminumThrough":"350 kcmil","250 kcmil|supplyCopperThrough":"250 kcmil","last|aluminum":"250 kcmil","last|copper":"3/0 AWG"},"edition":"2014","table":"invented"}',
    );
  });

  it("changes with a value and with the edition, not with evidence", () => {
    const other = structuredClone(inventedTable) as unknown as { blocks: { rows: unknown[][] }[] };
    (other.blocks[0]?.rows[0] ?? [])[2] = "6 AWG";
    const hash = hashOf(inventedTable, "2014");
    expect(hash).toMatch(/^[0-9a-f]{64}$/);
    expect(hashOf(other as unknown as TableFile, "2014")).not.toBe(hash);
    expect(hashOf(inventedTable, "2017")).not.toBe(hash);
    expect(hashOf({ ...inventedTable, cells: [], title: "another" }, "2014")).toBe(hash);
  });
});

describe("an answer that came back", () => {
  it("is compared cell by cell, and stored only when accepted", () => {
    bring({ cells: { "2 AWG|copper": "8", "last|copper": null } });
    const { lines, ok } = read();
    expect(ok).toBe(true);
    expect(lines.filter((line) => !line.startsWith("not-given"))).toEqual([
      "confirms 2 AWG|copper: 8",
      "unreadable last|copper",
      "1 confirmed, 0 contradicted, 1 unreadable, 6 not given",
    ]);
    expect(existsSync(join(folder, "witnessed"))).toBe(false);

    expect(read("--accept").lines.at(-1)).toBe(
      'stored as tables/witnessed/invented-2014-print-invented-2020-01-01.json; now run "npm run generate"',
    );
    expect([...readWitnesses(folder).values()]).toEqual([JSON.parse(readFileSync(answer, "utf8"))]);
  });

  it("is not stored twice", () => {
    bring();
    expect(read("--accept").ok).toBe(true);
    expect(read("--accept").ok).toBe(false);
    expect(readdirSync(join(folder, "witnessed"))).toHaveLength(1);
  });

  it("is not accepted while it contradicts a value, and is once the value was changed", () => {
    bring({ cells: { "2 AWG|copper": "6 AWG" } });
    const { lines, ok } = read("--accept");
    expect(ok).toBe(false);
    expect(lines[1]).toBe("contradicts 2 AWG|copper: 6 AWG, the table has 8 AWG");
    expect(existsSync(join(folder, "witnessed"))).toBe(false);

    const text = readFileSync(join(folder, "invented.json"), "utf8");
    writeFileSync(join(folder, "invented.json"), text.replace('"8 AWG"', '"6 AWG"'));
    const again = read("--accept");
    expect(again.ok).toBe(true);
    expect(again.lines).toContain(
      "our values were others when the sheet was made; it was compared with those of today",
    );
  });

  it("is refused in another form, with the place", () => {
    const refused = (change: object): readonly string[] => {
      bring(change as Partial<WitnessFile>);
      const { lines, ok } = read("--accept");
      expect(ok).toBe(false);
      return lines;
    };
    expect(refused({ channel: "hearsay" })).toEqual(["/channel: must be equal to one of the allowed values"]);
    expect(refused({ witness: "a@b" })[0]).toContain("/witness");
    expect(refused({ date: "yesterday" })[0]).toContain("/date");
    expect(refused({ cells: {} })[0]).toContain("/cells");
    expect(refused({ extra: 1 })[0]).toContain("additional properties");
    expect(refused({ table: "other" })[0]).toContain("no table other");
    expect(refused({ cells: { "9 AWG|copper": "1" } }).at(-1)).toContain("has no cell 9 AWG|copper");
    expect(existsSync(join(folder, "witnessed"))).toBe(false);
  });
});

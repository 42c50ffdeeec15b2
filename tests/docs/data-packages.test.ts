import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { readColumns } from "../../docs/pages/data-packages/columns.js";
import { packageOfCorpus } from "../../docs/pages/data-packages/corpus.js";
import type { DataPackage } from "../../docs/pages/data-packages/package.js";
import { packageOfTables } from "../../docs/pages/data-packages/tables.js";

const root = join(import.meta.dirname, "../..");
const read = (path: string) => readFileSync(join(root, path), "utf8");
const described = (folder: string) => JSON.parse(read(`${folder}/datapackage.json`)) as DataPackage;

/** What a cell of a type looks like, after the Table Schema. */
const types: Readonly<Record<string, RegExp>> = {
  string: /./,
  year: /^[0-9]{4}$/,
  integer: /^[0-9]+$/,
  number: /^[0-9]+(\.[0-9]+)?$/,
  boolean: /^(true|false)$/,
};

describe("the data package of the tables", () => {
  const { resources } = described("tables");

  it("names every CSV file, and lies above all of them", () => {
    const files = readdirSync(join(root, "tables/csv")).map((name) => `csv/${name}`);
    expect(resources.map(({ path }) => path).sort()).toEqual(files.sort());
  });

  it.each(resources.map((one) => [one.name, one] as const))(
    "describes %s cell by cell",
    (_, { path, schema }) => {
      const lines = parse(read(`tables/${path}`), {
        columns: true,
        record_delimiter: "\r\n",
      }) as readonly Readonly<Record<string, string>>[];
      expect(Object.keys(lines[0] ?? {})).toEqual(schema.fields.map(({ name }) => name));
      for (const { name, type, constraints } of schema.fields) {
        const cells = lines.map((line) => line[name] ?? "").filter((cell) => cell !== "");
        expect(cells.filter((cell) => types[type]?.test(cell) !== true)).toEqual([]);
        expect(cells.filter((cell) => constraints?.enum.includes(cell) === false)).toEqual([]);
      }
      const { primaryKey } = schema;
      if (primaryKey === undefined) return;
      const keys = lines.map((line) => JSON.stringify(primaryKey.map((name) => line[name])));
      expect(new Set(keys).size).toBe(lines.length);
      expect(keys.filter((key) => key.includes('""'))).toEqual([]);
    },
  );

  it("refuses a column that nothing explains, and explains none that is nowhere", () => {
    const columns = readColumns();
    const file = new Map([["x.csv", "edition,shade\r\n2008,red\r\n"]]);
    expect(() => packageOfTables(file, [], columns)).toThrow("explains shade");
    const used = resources.flatMap(({ schema }) => schema.fields);
    expect(Object.keys(columns).filter((name) => !used.some((field) => field.name === name))).toEqual([]);
  });

  it("explains the columns of a table as the table does", () => {
    const adjustment = resources.find(({ name }) => name === "conductor-count-adjustment");
    const percent = adjustment?.schema.fields.find(({ name }) => name === "percent");
    expect(percent).toEqual({
      name: "percent",
      type: "integer",
      description: "Percent of the ampacity after any correction for ambient temperature, in percent.",
    });
  });
});

describe("the data package of the corpus", () => {
  it("tells a file that was cut off or changed", () => {
    const text = read("corpus/flat/checks.jsonl");
    const [checks] = described("corpus").resources;
    expect(checks?.bytes).toBe(Buffer.byteLength(text));
    expect(checks?.hash).toBe(`sha256:${createHash("sha256").update(text).digest("hex")}`);
    const cut = text.slice(0, text.lastIndexOf("\n", text.length - 2) + 1);
    expect(packageOfCorpus(cut).resources[0]?.bytes).not.toBe(checks?.bytes);
    const names = checks?.schema.fields.map(({ name }) => name);
    expect(names).toEqual(Object.keys(JSON.parse(text.slice(0, text.indexOf("\n")))));
  });

  it("lies inside the folders of data, and none at the top", () => {
    expect(readdirSync(root)).not.toContain("datapackage.json");
  });
});

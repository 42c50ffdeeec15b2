import { mainBondingJumper, render, rowsDocument, sweep, version } from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { rowsToCsv } from "../../src/report/render/csv.js";

/** A reader of RFC 4180, to read back what was written. */
function readCsv(text: string): readonly (readonly string[])[] {
  const rows: string[][] = [];
  const field = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/y;
  let row: string[] = [];
  while (field.lastIndex < text.length) {
    const found = field.exec(text);
    if (found === null) throw new Error("not RFC 4180");
    row.push(found[1]?.replaceAll('""', '"') ?? found[2] ?? "");
    if (found[3] === "\r\n") {
      rows.push(row);
      row = [];
    }
  }
  return rows;
}

const formulas = ["=", "+", "-", "@", "＝", "＋", "－", "＠", "﹢", "﹣", "﹦", "﹫", "\u2212"];

/** What a spreadsheet does not show, or trims away, before the first character that is seen. */
const unseen = [
  ..." \t\r\n\v\0\u001b\u0085\u00a0\u00ad\u034f\u061c\u115f\u1680\u2000\u200b\u200d\u200f\u2028\u202e\u2060\u3000\u3164\ufe0f\ufeff",
  "\u{e0041}",
];

/** The text that a cell was written for, as the documentation of `rowsToCsv` tells a reader. */
function textOf(cell: string): string {
  const first = [...cell].find((one) => one !== "'" && !unseen.includes(one));
  return cell.startsWith("'") && formulas.includes(first ?? "") ? cell.slice(1) : cell;
}

describe("rows as CSV", () => {
  const text = fc.string({
    unit: fc.constantFrom('"', ",", "'", "a", "1", ...formulas, ...unseen),
    maxLength: 6,
  });

  it("can be read back, whatever is in them", () => {
    const cell = fc.oneof(text, fc.integer(), fc.boolean(), fc.constant(null), fc.constant(undefined));
    const rows = fc.array(fc.record({ one: cell, 'two, or "2"': cell }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(rows, (list) => {
        const [head, ...lines] = readCsv(rowsToCsv(list));
        expect(head).toEqual(["one", 'two, or "2"']);
        const cells = list.map((row) => Object.values(row));
        expect(lines.map((line) => line.map(textOf))).toEqual(
          cells.map((row) => row.map((value) => String(value ?? ""))),
        );
      }),
    );
  });

  it("keep a spreadsheet from computing a text or the name of a column", () => {
    fc.assert(
      fc.property(text, (value) => {
        const [[head = ""] = [], [cell = ""] = []] = readCsv(rowsToCsv([{ [value]: value }]));
        expect(head).toBe(cell);
        const first = [...cell].find((one) => !unseen.includes(one));
        expect(formulas).not.toContain(first);
      }),
    );
    for (const before of ["", ...unseen])
      for (const formula of formulas) {
        const value = `${before}${formula}1`;
        expect(readCsv(rowsToCsv([{ value }]))[1]).toEqual([`'${value}`]);
      }
  });

  it("leave numbers numbers, and a text alone that starts with something else", () => {
    const row = { negative: -6130, small: 1e-7, flag: false, text: "a=1", marked: "'tis", none: null };
    expect(readCsv(rowsToCsv([row]))[1]).toEqual(["-6130", "1e-7", "false", "a=1", "'tis", ""]);
  });

  it("writes a sweep, and nothing for nothing", () => {
    const rows = sweep(mainBondingJumper, {
      editions: ["2017"],
      supplyMaterial: "copper",
      material: "copper",
      sizes: ["2000 kcmil"],
      counts: [9],
    });
    expect(render(rowsDocument(rows), { as: "csv" })).toBe(
      [
        "edition,sets,supplySize,supplyMaterial,supplyArea,material,outcome,requiredArea,size,governs,section,evidence,refused,library",
        `2017,9,2000 kcmil,copper,18000000,copper,area-only,2250000,,one-eighth,Table 250.102(C)(1) note 1,single,,bondmil ${version}`,
        "",
      ].join("\r\n"),
    );
    expect(render(rowsDocument([]), { as: "csv" })).toBe("");
    expect(rowsToCsv([])).toBe("");
  });

  it("takes no row with a cell that is no scalar", () => {
    const rows = [{ edition: "2017" }, { edition: "2020", size: { awg: 4 } }];
    expect(() => rowsDocument(rows as never)).toThrow("[1].size: expected a text, a finite number");
  });

  it("has a column for every key of any row", () => {
    const rows: readonly { readonly a?: number; readonly b?: number }[] = [{ a: 1 }, { b: 2 }];
    expect(rowsToCsv(rows)).toBe("a,b\r\n1,\r\n,2\r\n");
  });
});

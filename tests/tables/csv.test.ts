import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { editionYears } from "bondmil";
import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import type { ChannelsFile } from "../../tables/tools/generator/channels.js";
import { blockFor } from "../../tables/tools/generator/checks.js";
import { collect } from "../../tables/tools/generator/collect.js";
import type { Cell, Cited, Limit } from "../../tables/tools/generator/model.js";
import { readTable } from "../../tables/tools/generator/read-tables.js";
import type { WithstandFile } from "../../tables/tools/generator/withstand-file.js";
import { readWitnesses, withWitnesses } from "../../tables/tools/generator/witnesses.js";

const folder = join(import.meta.dirname, "../../tables");
const json = <T>(name: string): T => JSON.parse(readFileSync(join(folder, `${name}.json`), "utf8")) as T;

/** A file as a general CSV reader gives it: text by column. */
function csv(name: string): readonly Readonly<Record<string, string>>[] {
  return parse(readFileSync(join(folder, "csv", `${name}.csv`)), {
    columns: true,
    record_delimiter: "\r\n",
  });
}

/** What stands in a CSV for a cell of a JSON file: empty for nothing. */
const asText = (cell: Cell | undefined): string => String(cell ?? "");

/** A line as text, whatever the cells were. */
const line = (cells: Readonly<Record<string, Cell | undefined>>): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(cells).map(([column, cell]) => [column, asText(cell)]));

const citedIn = ([section, level, sources]: Cited) => ({ section, level, sources: sources.join(" ") });

const named = readdirSync(folder).filter((name) => name.endsWith(".json"));
const tables = named
  .map((name) => name.replace(".json", ""))
  .filter((id) => "blocks" in json<object>(id))
  .map((id) => readTable(folder, id));
const { policies, ratingPolicies, namedSizes, placements, sections, roles, passages } =
  collect(folder).collected;

describe("the tables as CSV", () => {
  it("are these", () => {
    const others =
      "evidence extracts named-sizes placements policies policy-basis rating-policies roles sections";
    const names = [...tables.map(({ id }) => id), ...others.split(" "), "short-time-withstand"];
    expect(readdirSync(join(folder, "csv"))).toEqual(names.map((name) => `${name}.csv`).sort());
  });

  it.each(tables.map((table) => [table.id, table] as const))("%s has the cells of its JSON", (id, table) => {
    const lines = csv(id);
    for (const edition of editionYears) {
      const rows = table.number[edition] === null ? [] : (blockFor(table, edition)?.rows ?? []);
      expect(lines.filter((one) => one["edition"] === edition)).toEqual(
        rows.map((row, i) =>
          line({
            edition,
            number: table.number[edition],
            row: i + 1,
            ...Object.fromEntries(table.columns.map((column, at) => [column.id, row[at]])),
          }),
        ),
      );
    }
    expect(lines.filter((one) => !(editionYears as readonly unknown[]).includes(one["edition"]))).toEqual([]);
  });

  it("name the evidence of each table and cell", () => {
    const channels = json<ChannelsFile>("channels");
    const witnesses = [...readWitnesses(folder).values()];
    const lines = csv("evidence");
    let expected = 0;
    for (const table of tables.map((one) => withWitnesses(one, witnesses, channels))) {
      for (const edition of editionYears) {
        const of = lines.filter((one) => one["table"] === table.id && one["edition"] === edition);
        const whole = table.evidence[edition];
        const cells = (table.cells ?? []).filter((cell) => cell.edition === edition);
        expect(of[0]?.["level"]).toBe(whole?.level);
        expect(of[0]?.["sources"]).toBe(whole?.sources.join(" "));
        const rows = csv(table.id).filter((one) => one["edition"] === edition);
        const first = table.columns[0]?.id ?? "";
        expect(
          of.slice(1).map(({ row, column, level, sources }) => ({
            row: rows.find((one) => one["row"] === row)?.[first] || "last",
            column,
            level,
            sources,
          })),
        ).toEqual(
          cells.map(({ row, column, level, sources }) => ({
            row,
            column,
            level,
            sources: (sources ?? []).join(" "),
          })),
        );
        expected += whole === undefined ? 0 : 1 + cells.length;
      }
    }
    expect(lines).toHaveLength(expected);
  });

  it.each([
    ["policies", policies],
    ["rating-policies", ratingPolicies],
  ])("%s have the fields of their JSON", (name, sets) => {
    const lines = Object.entries(sets).flatMap(([policy, byEdition]) =>
      editionYears.map((edition) => {
        const { ceiling, floor, ...fields } = byEdition[edition].fields;
        const limits = ["ceiling", "floor"].filter((field) => field in byEdition[edition].fields);
        const sizes = limits.map((field) => {
          const limit = byEdition[edition].fields[field] as Limit | null;
          return { [`${field}Copper`]: limit?.copper, [`${field}Aluminum`]: limit?.aluminum };
        });
        return line(Object.assign({ policy, edition }, fields, ...sizes));
      }),
    );
    expect(csv(name)).toEqual(lines);
  });

  it("hold the section and evidence of every part of a policy", () => {
    const lines = Object.entries({ ...policies, ...ratingPolicies }).flatMap(([policy, byEdition]) =>
      editionYears.flatMap((edition) => {
        const { basis, limits } = byEdition[edition];
        return [...Object.entries(basis), ...Object.entries(limits)].map(([part, cited]) =>
          line({ policy, edition, part, ...citedIn(cited) }),
        );
      }),
    );
    expect(csv("policy-basis")).toEqual(lines);
  });

  it("hold the sizes that sections name, the facts of placement, the sections and the names", () => {
    const byEdition = <T>(entries: Readonly<Record<string, T>>, cells: (one: T, year: never) => object) =>
      Object.entries(entries).flatMap(([key, one]) =>
        editionYears.map((edition) => ({ key, edition, ...cells(one, edition as never) })),
      );
    const lines = (name: string) =>
      csv(name).map((one) => {
        const [[, key] = [], ...rest] = Object.entries(one);
        return { key, ...Object.fromEntries(rest) };
      });
    expect(lines("named-sizes")).toEqual(
      byEdition(namedSizes, ({ values }, year) => {
        const { copper, aluminum, citation } = values[year];
        return line({ copper, aluminum, ...citedIn(citation) });
      }),
    );
    expect(lines("placements")).toEqual(
      byEdition(placements, ({ topic, values, citations }, year) =>
        line({ value: values[year], topic, ...citedIn(citations[year]) }),
      ),
    );
    expect(lines("sections")).toEqual(
      byEdition(sections, ({ sections: own }, year) => line(citedIn(own[year]))),
    );
    expect(lines("roles")).toEqual(
      byEdition(roles, ({ purpose, name }, year) => line({ purpose, name: name[year] })),
    );
  });

  it("hold every passage that was read, with its source", () => {
    const lines = csv("extracts");
    expect(lines.map((one) => [one["file"], one["statement"], one["source"], one["section"]])).toEqual(
      passages.map(({ of, file, path, passage }) => [file, path.join("/"), of.source, passage.at]),
    );
    expect(lines.length).toBeGreaterThan(1000);
  });

  it("hold the constants of the short-time withstand under the editions that were read", () => {
    const { metals, basis } = json<WithstandFile>("short-time-withstand");
    expect(csv("short-time-withstand")).toEqual(
      Object.entries(metals).flatMap(([metal, { factor, offset, highestFinal }]) =>
        basis.editions.map((edition) => line({ metal, edition, factor, offset, highestFinal })),
      ),
    );
  });
});

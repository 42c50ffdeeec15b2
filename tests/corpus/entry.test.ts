import { readdirSync, readFileSync } from "node:fs";
import { intersystemBondingConductor, roleIds, size } from "bondmil";
import { checkFiles, corpusCases, type Implementation, judgeCase, mistakes, runCorpus } from "bondmil/corpus";
import * as tables from "bondmil/tables";
import { describe, expect, it } from "vitest";
import { library } from "../../corpus/tools/runner/library.js";

const read = (path: string) => JSON.parse(readFileSync(new URL(`../../${path}`, import.meta.url), "utf8"));

describe("bondmil/corpus", () => {
  it("holds the file of every role", () => {
    expect(Object.keys(checkFiles)).toEqual(roleIds);
    for (const role of roleIds) expect(checkFiles[role]).toEqual(read(`corpus/${role}.json`));
  });

  it("puts every check under every edition to an implementation, here to this library", () => {
    const rows = runCorpus(library);
    const holds = roleIds.flatMap((role) =>
      checkFiles[role].groups.flatMap(({ checks }) => checks.flatMap((check) => check.holds)),
    );
    expect(rows).toHaveLength(holds.length);
    expect(rows.filter(({ verdict }) => verdict !== "met")).toEqual([]);
    expect(rows.flatMap(({ skipped }) => skipped)).toEqual([]);
  });

  it("finds what another implementation gets wrong, and leaves alone what it does not size", () => {
    const always: Implementation = ({ role }) =>
      role === "intersystem-bonding-conductor" ? { size: "8 AWG" } : null;
    const rows = runCorpus(always);
    const own = rows.filter(({ role }) => role === "intersystem-bonding-conductor");
    expect(own.length).toBeGreaterThan(5);
    expect(own.filter(({ verdict }) => verdict === "met")).toEqual([]);
    expect(rows.filter(({ verdict }) => verdict === "unanswered")).toHaveLength(rows.length - own.length);
  });

  it("gives an input that is typed by its role, without the edition in it", () => {
    const rows = runCorpus(
      (question) => {
        if (question.role !== "intersystem-bonding-conductor") return null;
        const { outcome } = size(intersystemBondingConductor, {
          ...question.input,
          code: { year: question.edition },
        });
        return outcome.kind === "conductor" ? { size: outcome.size } : { outcome: outcome.kind };
      },
      { role: "intersystem-bonding-conductor", edition: "2023" },
    );
    // What is refused throws here, and is no answer in the words of the corpus.
    const answered = rows.filter(({ expected }) => !("error" in expected));
    expect(answered.length).toBeGreaterThan(5);
    expect(answered.map(({ verdict }) => verdict)).toEqual(answered.map(() => "met"));
  });

  it("asks one by one as it asks at once", () => {
    const filter = { standing: "disputed", edition: "2017" } as const;
    const cases = corpusCases(filter);
    expect(cases.map((one) => judgeCase(one, library(one.question)))).toEqual(runCorpus(library, filter));
    expect(cases.every(({ check, edition }) => check.standing === "disputed" && edition === "2017")).toBe(
      true,
    );
  });

  it("refuses an answer that only says to be long", () => {
    const [one] = corpusCases({ edition: "2017" });
    if (one === undefined) throw new Error("there is no case of 2017");
    const errors = new Array<string>(2 ** 32 - 1);
    expect(() => judgeCase(one, { errors } as never)).toThrow("expected null, or an object with size");
  });

  it("names the mistakes that the schema explains", () => {
    const { mistake } = read("corpus/schema/checks.schema.json").$defs;
    expect(mistake.oneOf.map((one: { readonly const: string }) => one.const)).toEqual(mistakes);
  });
});

describe("bondmil/tables", () => {
  // The accounts of evidence and the public channels are about the making of the tables, the data package is about the CSV.
  const apart = ["channels", "debts", "datapackage"];
  const files = readdirSync(new URL("../../tables", import.meta.url))
    .filter((name) => name.endsWith(".json"))
    .map((name) => name.replace(".json", ""))
    .filter((name) => !apart.includes(name));

  it.each(files)("holds %s", (name) => {
    const exported: Readonly<Record<string, unknown>> = tables;
    const id = name.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());
    expect(exported[id]).toEqual(read(`tables/${name}.json`));
  });

  it.each(readdirSync(new URL("../../tables/evidence", import.meta.url)))(
    "holds the evidence of %s",
    (name) => {
      const id = name.replace(".json", "").replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());
      expect((tables.evidence as Readonly<Record<string, unknown>>)[id]).toEqual(
        read(`tables/evidence/${name}`),
      );
    },
  );

  it("gives the rows in force, with the cells by column", () => {
    const { equipmentGrounding, rowsIn } = tables;
    const largest = (edition: "2008" | "2026") => rowsIn(equipmentGrounding, edition).at(-1);
    expect(largest("2008")).toEqual({ ratingThrough: 6000, copper: "800 kcmil", aluminum: "1200 kcmil" });
    expect(largest("2026")).toEqual({ ratingThrough: 6000, copper: "800 kcmil", aluminum: "1250 kcmil" });
  });
});

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { editionYears } from "bondmil";
import { describe, expect, it } from "vitest";
import { type ChannelsFile, channelsFor, checkChannels } from "../../tables/tools/generator/channels.js";
import { collect } from "../../tables/tools/generator/collect.js";
import type { Collected } from "../../tables/tools/generator/collected.js";
import { checkDebts, collectDebts, countByLevel, type Debt } from "../../tables/tools/generator/debts.js";
import { debtsPage } from "../../tables/tools/generator/page-debts.js";
import { inventedTable } from "./invented.js";

const folder = join(import.meta.dirname, "../../tables");
const read = <T>(name: string): T => JSON.parse(readFileSync(join(folder, `${name}.json`), "utf8")) as T;
const channels = read<ChannelsFile>("channels");
const { collected } = collect(folder);
const debts = collectDebts(collected);
const only = (change: Partial<Collected>): readonly Debt[] =>
  collectDebts({
    ...collected,
    tables: [],
    policies: {},
    ratingPolicies: {},
    sections: {},
    namedSizes: {},
    placements: {},
    readings: { readings: [] },
    withstand: {
      ...collected.withstand,
      basis: { ...collected.withstand.basis, editions: [] },
    },
    ...change,
  });

describe("the list of what is not confirmed", () => {
  it("counts every cell of a table once, and names those that differ", () => {
    const found = only({ tables: [inventedTable] });
    expect(
      found.map(({ kind, edition, what, level, values }) => [kind, edition, what, level, values]),
    ).toEqual([
      ["table", "2011", "invented, 10 of 10 cells", "single", 10],
      ["table", "2014", "invented, 9 of 10 cells", "carried", 9],
      ["cell", "2014", "invented, row 2 AWG, column copper", "memory", 1],
      ["table", "2017", "invented, 10 of 10 cells", "single", 10],
      ["table", "2020", "invented, 10 of 10 cells", "bracketed", 10],
      ["table", "2026", "invented, 10 of 10 cells", "carried", 10],
    ]);
  });

  it("leaves out what is confirmed, and nothing else", () => {
    const pair = (level: "single" | "confirmed") => ["250.1", level, []] as const;
    const sections = Object.fromEntries(
      editionYears.map((year) => [year, pair(year === "2017" ? "confirmed" : "single")]),
    );
    const found = only({
      sections: { invented: { says: "", sections } } as unknown as Collected["sections"],
    });
    expect(found.map(({ edition }) => edition)).toEqual(editionYears.filter((year) => year !== "2017"));
  });

  it("holds every part of every policy, every section, named size, fact and reading below confirmed", () => {
    const count = (kind: Debt["kind"]): number => debts.filter((debt) => debt.kind === kind).length;
    const pairs = (data: unknown): readonly (readonly [string, string])[] => {
      if (typeof data !== "object" || data === null) return [];
      const isPair = Array.isArray(data) && data.length === 3 && levels.includes(String(data[1]));
      return isPair ? [data as unknown as [string, string]] : Object.values(data).flatMap(pairs);
    };
    const levels = ["memory", "carried", "bracketed", "single", "confirmed"];
    const owed = (data: unknown): number => pairs(data).filter(([, level]) => level !== "confirmed").length;
    expect(count("policy")).toBe(owed(collected.policies) + owed(collected.ratingPolicies));
    expect(count("section")).toBe(owed(collected.sections));
    expect(count("named size")).toBe(owed(collected.namedSizes));
    expect(count("placement")).toBeGreaterThan(100);
    const open = collected.readings.readings.reduce((sum, { editions }) => sum + editions.length, 0);
    expect(count("reading")).toBe(open);
  });

  it("takes a reading for as sure as the words that its alternatives disagree on", () => {
    const level = (id: string, year: string): string | undefined =>
      debts.find(
        ({ kind, edition, what }) => kind === "reading" && edition === year && what.startsWith(`${id},`),
      )?.level;
    expect(level("cap-in-2014", "2014")).toBe("memory");
    expect(level("cap-on-small-supplies", "2017")).toBe("single");
    expect(level("electrode-connection-with-several-jumpers", "2008")).toBe("memory");
  });

  it("has one line for each, and the committed page is what the files give", () => {
    const page = debtsPage(debts, channels);
    expect(
      page.split("\n").filter((line) => /^- .*: (memory|carried|bracketed|single); /.test(line)),
    ).toHaveLength(debts.length);
    expect(page).toContain("### Policies, 2014");
  });
});

describe("the guard of the list", () => {
  const counted = countByLevel(debts);

  it("passes at exactly the allowed counts", () =>
    expect(checkDebts(debts, { allowed: counted })).toEqual([]));

  it("fails when the list grows, and when it shrinks unsaid", () => {
    const allowed = { ...counted, memory: counted.memory - 1, single: counted.single + 2 };
    expect(checkDebts(debts, { allowed })).toEqual([
      `${counted.memory} values are memory, ${allowed.memory} are allowed: settle some, or raise "memory" in tables/debts.json to ${counted.memory} knowingly`,
      `only ${counted.single} values are single: lower "single" in tables/debts.json from ${allowed.single} to ${counted.single}`,
    ]);
  });
});

describe("channels", () => {
  const settle = (level: Debt["level"], section: string, sources: readonly string[] = []) =>
    channelsFor(channels, { edition: "2017", section, level, sources }).map(({ id }) => id);

  it("are those that cover the place", () => {
    expect(settle("carried", "Table 250.122")).toEqual([
      "print",
      "free-access",
      "ntc-2050",
      "residential-2018",
    ]);
    expect(settle("carried", "250.28(D)(1)")).toEqual(["print", "free-access", "ntc-2050"]);
  });

  it("are of another kind for what was read once", () => {
    expect(settle("single", "250.28(D)(1)", ["nfpa-70-2017"])).toEqual(["free-access", "ntc-2050"]);
    expect(settle("bracketed", "250.28(D)(1)", ["nfpa-70-2017"])).toContain("print");
  });

  it("are refused when an id stands twice or a source is not registered", () => {
    const [channel] = channels.editions["2017"];
    const broken = {
      editions: { "2017": [channel, channel] },
      readThrough: { nowhere: "print" },
    } as unknown as ChannelsFile;
    expect(checkChannels(broken, {})).toEqual(["2017: the channel print stands twice", "no source nowhere"]);
    expect(checkChannels(channels, read("sources"))).toEqual([]);
  });
});

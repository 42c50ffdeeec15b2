import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { areaReader } from "../../tables/tools/generator/areas.js";
import {
  checkEntries,
  checkPlacements,
  checkPolicies,
  checkReadings,
  checkRising,
  checkTable,
  checkTopics,
} from "../../tables/tools/generator/checks.js";
import { collect } from "../../tables/tools/generator/collect.js";
import type {
  PlacementsFile,
  PoliciesFile,
  ReadingsFile,
  SectionsFile,
} from "../../tables/tools/generator/model.js";
import { readTable } from "../../tables/tools/generator/read-tables.js";

const folder = join(import.meta.dirname, "../../tables");
const read = <T>(name: string): T => JSON.parse(readFileSync(join(folder, `${name}.json`), "utf8")) as T;
const bonding = readTable(folder, "bonding-conductor");
const electrode = readTable(folder, "electrode-conductor");
const ampacity = readTable(folder, "raceway-ampacity");
const conductors = readTable(folder, "conductor-properties");
const policiesFile = read<PoliciesFile>("policies");
const { policies, ratingPolicies } = collect(folder).collected;
const allPolicies = { ...policies, ...ratingPolicies };
const readings = read<ReadingsFile>("readings");
const sections = read<SectionsFile>("sections");
const placements = read<PlacementsFile>("placements");
const sources = read<Readonly<Record<string, unknown>>>("sources");
const ratings = readTable(folder, "equipment-grounding");
const trays = readTable(folder, "tray-as-conductor");
const tables = [bonding, electrode, ampacity, conductors, ratings, trays];
const changed = <T>(value: T, change: (copy: T) => void): T => {
  const copy = structuredClone(value);
  change(copy);
  return copy;
};
type Loose = Record<string, never> & {
  blocks: { rows: unknown[][] }[];
  evidence: Record<string, unknown>;
  cells: unknown[];
};

describe("table files", () => {
  it("hold no fault", () => {
    for (const table of tables) expect(checkTable(table)).toEqual([]);
    expect(checkPolicies(policies, tables)).toEqual([]);
    expect(checkEntries(policiesFile.policies)).toEqual([]);
    expect(checkReadings(readings, allPolicies)).toEqual([]);
    expect(checkPlacements(placements, sections)).toEqual([]);
  });

  it("name sources that are in the register", () => {
    const named = tables.flatMap((table) => [
      ...Object.values(table.evidence).flatMap((one) => one?.sources ?? []),
      ...(table.cells ?? []).flatMap((cell) => cell.sources ?? []),
    ]);
    expect(named.filter((source) => sources[source] === undefined)).toEqual([]);
    expect(named.length).toBeGreaterThan(20);
  });

  it("are refused when an edition is numbered without evidence", () => {
    const broken = changed(bonding, (copy) => delete (copy as unknown as Loose).evidence["2017"]);
    expect(checkTable(broken)).toEqual(["2017: a number and its evidence go together"]);
  });

  it("are refused when a row is short or a column does not rise", () => {
    const areaOf = areaReader(conductors);
    const broken = changed(bonding, (copy) => {
      const rows = (copy as unknown as Loose).blocks[0]?.rows ?? [];
      rows[1]?.pop();
      (rows[2] ?? [])[2] = "6 AWG";
    });
    expect(checkTable(broken)).toEqual(["2014: row 2 has 3 cells"]);
    expect(checkRising(broken, 2, (cell) => areaOf(String(cell)))).toEqual([
      "2014: column copper is out of order at 6 AWG",
    ]);
  });

  it("are refused when cell evidence names nothing", () => {
    const broken = changed(ampacity, (copy) => {
      (copy as unknown as Loose).cells = [
        { edition: "2008", row: "5 AWG", column: "copper61", level: "memory" },
      ];
    });
    expect(checkTable(broken)).toHaveLength(2);
  });

  it("are refused when a policy goes by no table of its edition", () => {
    const broken = changed(policies, (copy) => {
      const { "2008": first } = copy["main-bonding-jumper"] ?? expect.fail("no such set");
      (first.fields as Record<string, unknown>)["table"] = "bonding-conductor";
    });
    expect(checkPolicies(broken, tables)).toEqual([
      "main-bonding-jumper: 2008 has no table bonding-conductor",
    ]);
  });

  it("are refused when a topic that is a table does not stand where it does", () => {
    const broken = changed(sections, (copy) => {
      const topic = copy.topics["conductor-sizes"] ?? expect.fail("no such topic");
      (topic as { sections: unknown }).sections = [{ from: "2008", section: "Chapter 9 Table 5" }];
    });
    expect(checkTopics(sections, tables)).toEqual([]);
    expect(checkTopics(broken, tables)).toHaveLength(7);
  });

  it("are refused when entries leave an edition out, fall back, or say nothing new", () => {
    const entry = (from: string, cap: string) => ({ from: from as "2008", cap });
    expect(checkEntries({ late: [entry("2011", "none")] })).toEqual(["late: nothing holds in 2008"]);
    expect(checkEntries({ none: [] })).toEqual(["none: nothing holds in 2008"]);
    expect(
      checkEntries({ back: [entry("2008", "none"), entry("2014", "set"), entry("2011", "conductor")] }),
    ).toEqual(["back: not in order of edition"]);
    expect(checkEntries({ idle: [entry("2008", "none"), entry("2014", "none")] })).toEqual([
      "idle: 2014 says nothing new; leave it out",
    ]);
  });

  it("are refused when a reading's default is not what the policies say", () => {
    const broken = changed(readings, (copy) => {
      (copy.readings[0] as { default: string }).default = "large-supplies-only";
    });
    const [first] = readings.readings;
    expect(checkReadings(broken, allPolicies)).toHaveLength(
      (first?.policies.length ?? 0) * (first?.editions.length ?? 0),
    );
  });

  it("are refused when a column falls where neighboring rows may be alike", () => {
    const areaOf = areaReader(conductors);
    const measure = (cell: string | number) => areaOf(String(cell));
    expect(checkRising(ratings, 2, measure, "may-be-alike")).toEqual([]);
    expect(checkRising(ratings, 2, measure)).toHaveLength(6);
    const broken = changed(ratings, (copy) => {
      ((copy as unknown as Loose).blocks[0]?.rows[3] ?? [])[2] = "10 AWG";
    });
    expect(checkRising(broken, 2, measure, "may-be-alike")).toEqual([
      "2008: column aluminum is out of order at 10 AWG",
    ]);
  });
});

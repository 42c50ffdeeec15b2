import { describe, expect, it } from "vitest";
import { type CheckFile, entriesOf } from "../../corpus/tools/runner/model.js";
import { gapsSection } from "../../docs/pages/role-coverage/gaps.js";
import type { Source } from "../../tables/tools/source.js";
import { check, source as handbook } from "../corpus/fixtures.js";

const five = ["page 1", "page 2", "page 3", "page 4", "page 5"];

interface Place {
  readonly source: string;
  readonly locator: string;
}

/** The row on main bonding jumpers of either table, of a corpus with one check at each place. */
function rowsOf(
  places: readonly Place[],
  copies: string | null = null,
  standing = check.standing,
  ofThird: Partial<Source> = {},
) {
  const groups = places.map(({ source, locator }) => ({ source, checks: [{ ...check, locator, standing }] }));
  const source = (publisher: string, of: string | null) => ({ ...handbook, publisher, copies: of });
  const sources = {
    a: source("One", null),
    b: source("Two", null),
    c: { ...source("Three", copies), ...ofThird },
  };
  const file: CheckFile<"main-bonding-jumper"> = {
    $schema: "./schema/checks.schema.json",
    version: 1,
    role: "main-bonding-jumper",
    count: groups.length,
    flags: {},
    groups,
  };
  const corpus = { files: [file], sources };
  return gapsSection(entriesOf(corpus), corpus)
    .split("\n")
    .filter((line) => line.startsWith("| main bonding jumper "));
}

const places = five.map((locator, index) => ({ source: ["a", "b", "c"][index % 3] ?? "a", locator }));

describe("what could not be filled", () => {
  it("leaves out a role with five places from three publishers", () => {
    expect(rowsOf(places)).toEqual(["| main bonding jumper | 2008, 2011, 2014, 2020, 2023, 2026 | none |"]);
  });

  it("counts several checks from one place once", () => {
    expect(rowsOf([...places.slice(1), ...places.slice(1)])[0]).toBe(
      "| main bonding jumper | 4 | 3 | places |",
    );
  });

  it("counts a copy as the source that it repeats", () => {
    expect(rowsOf(places, "a")[0]).toBe("| main bonding jumper | 5 | 2 | hosts |");
  });

  it("counts one host under several names once", () => {
    expect(rowsOf(places, null, "cited", { host: "One" })[0]).toBe("| main bonding jumper | 5 | 2 | hosts |");
  });

  it("does not count what cannot be found again", () => {
    const lost = rowsOf(places, null, "cited", { url: null, findAgain: "no" });
    expect(lost[0]).toBe("| main bonding jumper | 4 | 2 | places and hosts |");
    expect(rowsOf(places, null, "cited", { url: null, findAgain: "by-title" })).toHaveLength(1);
  });

  it("does not count what only follows from the text", () => {
    expect(rowsOf(places, null, "arithmetic")).toEqual([
      "| main bonding jumper | 0 | 0 | places and hosts |",
      "| main bonding jumper | 2008, 2011, 2014, 2020, 2023, 2026 | 2017 |",
    ]);
  });

  it("counts an answer that contradicts the text", () => {
    expect(rowsOf(places, null, "disputed")).toHaveLength(1);
  });
});

import { candidatesDocument, explain, InputError, type Issue, mainBondingJumper, size } from "bondmil";
import { describe, expect, it } from "vitest";
import { useResult } from "../../src/input/given-result.js";

const jumper = size(mainBondingJumper, {
  code: { year: "2023" },
  supply: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] },
  conductor: { material: "copper" },
});

function issuesOf(given: unknown): readonly Issue[] {
  try {
    explain(given as never);
    return [];
  } catch (error) {
    if (error instanceof InputError) return error.issues;
    throw error;
  }
}

const marks = [
  ...["role", "edition", "name", "material", "outcome", "requiredArea"],
  ...["steps", "citation", "readings", "evidence", "cautions"],
] as const;

describe("a result that is handed back", () => {
  it.each(marks)("is refused without its %s, and with something else in its place", (mark) => {
    const { [mark as keyof typeof jumper]: _, ...rest } = jumper;
    expect(issuesOf(rest)).toMatchObject([{ code: "missing", path: mark }]);
    const strange = mark === "requiredArea" ? "large" : null;
    expect(issuesOf({ ...jumper, [mark]: strange })).toMatchObject([{ code: "wrong-type", path: mark }]);
  });

  it("is refused with an object where a list belongs, and the other way round", () => {
    expect(issuesOf({ ...jumper, steps: {} })).toMatchObject([{ path: "steps", expected: "a list" }]);
    const { cautions: _, ...rest } = jumper;
    expect(issuesOf({ ...rest, cautions: "none" })).toMatchObject([{ path: "cautions", expected: "a list" }]);
  });

  it("is taken with members that hold nothing, and refused with what is no data", () => {
    expect(issuesOf({ ...jumper, note: undefined, cautions: [...jumper.cautions] })).toEqual([]);
    expect(issuesOf({ ...jumper, note: () => 1 })).toMatchObject([{ code: "wrong-type", path: "note" }]);
    expect(issuesOf({ ...jumper, requiredArea: Number.NaN })).toMatchObject([{ path: "requiredArea" }]);
  });

  it("that breaks inside is refused as one that is not whole", () => {
    const [issue] = issuesOf({ ...jumper, steps: [{ kind: "row" }] });
    expect(issue?.message).toContain("one that is not whole");
  });

  it.each<readonly [string, object, readonly string[]]>([
    [
      "what a conductor withstands",
      { withstands: true },
      ["material", "temperatures", "capacity", "letThrough", "ratio", "steps", "cautions"],
    ],
    [
      "the fill of a raceway",
      { permittedSquareInches: 1 },
      ["edition", "raceway", "tradeSize", "percent", "conductors", "citations", "cautions"],
    ],
    [
      "a voltage drop",
      { impedanceFrom: "table-9" },
      [
        ...["edition", "circuitVolts", "volts", "percent", "impedance"],
        ...["conductors", "sufficient", "citations", "cautions"],
      ],
    ],
    ["a designation", { designation: "x" }, ["mainBondingJumper", "box", "electrodeConductor", "beyond"]],
    ["a source", { follows: {} }, ["edition", "kind", "why", "citation"]],
    ["a cable tray", { metal: "steel" }, ["edition", "amperes", "outcome", "citation", "cautions"]],
    ["a count", { kind: "current-carrying" }, ["edition", "count", "circuits", "spares", "citation"]],
    [
      "a device",
      { kind: "device" },
      ["edition", "ampacity", "most", "limitedBy", "neighbors", "cautions", "citation", "evidence"],
    ],
    [
      "a dwelling",
      { kind: "dwelling-conductor" },
      ["edition", "size", "by", "amperes", "citation", "evidence"],
    ],
    ["a load", { kind: "required-by-load" }, ["edition", "of", "load", "conductors"]],
    ["a tap", { kind: "feeder-tap" }, ["edition", "rules", "evidence", "cautions"]],
    [
      "a secondary",
      { kind: "transformer-secondary" },
      ["edition", "primary", "secondary", "rules", "citations", "evidence", "cautions"],
    ],
    [
      "an ampacity",
      { kind: "ampacity" },
      ["edition", "amperes", "limitedBy", "steps", "cautions", "evidence"],
    ],
  ])("names each member that is missing in what only looks like %s", (_, given, missing) => {
    expect(issuesOf(given).map(({ path }) => path)).toEqual(missing);
  });

  it("names each member that is missing in what only looks like candidates", () => {
    expect(() => candidatesDocument({} as never)).toThrow(/edition.*device.*candidates.*total.*cautions/s);
  });

  it("inside another keeps its own error", () => {
    const { role: _, ...rest } = jumper;
    const use = () => explain(rest as never);
    expect(() => useResult({ rows: [] }, "listing", { rows: "list" }, use)).toThrow(/a result of size/);
    expect(() => useResult({ rows: [] }, "listing", { rows: "list" }, use)).not.toThrow(
      /a result of listing/,
    );
  });
});

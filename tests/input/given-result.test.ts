import { explain, InputError, type Issue, mainBondingJumper, size } from "bondmil";
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

  it("is taken with members that hold nothing, and refused with what is no data", () => {
    expect(issuesOf({ ...jumper, note: undefined, cautions: [...jumper.cautions] })).toEqual([]);
    expect(issuesOf({ ...jumper, note: () => 1 })).toMatchObject([{ code: "wrong-type", path: "note" }]);
    expect(issuesOf({ ...jumper, requiredArea: Number.NaN })).toMatchObject([{ path: "requiredArea" }]);
  });

  it("that breaks inside is refused as one that is not whole", () => {
    const [issue] = issuesOf({ ...jumper, steps: [{ kind: "row" }] });
    expect(issue?.message).toContain("one that is not whole");
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

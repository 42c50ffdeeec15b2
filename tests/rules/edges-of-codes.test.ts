import { type Amendment, amend, InputError, type Issue } from "bondmil";
import { describe, expect, it } from "vitest";

const citation = { jurisdiction: "Example County", section: "1" };
const cell = (row: unknown, copper: string) =>
  ({ kind: "cell", table: "bonding-conductor", row, column: "copper", size: copper, citation }) as Amendment;

function issuesOf(...amendments: readonly Amendment[]): readonly Issue[] {
  try {
    amend({ year: "2023" }, ...amendments);
    return [];
  } catch (error) {
    if (error instanceof InputError) return error.issues;
    throw error;
  }
}

describe("the row of an amended cell", () => {
  it.each([
    ["250 kcmil and more", "unknown-value"],
    ["about 250 kcmil", "unknown-value"],
    [undefined, "missing"],
    [null, "unknown-value"],
  ])("is a size and nothing else: %s", (row, code) => {
    expect(issuesOf(cell(row, "4/0 AWG")).map((one) => [one.code, one.path])).toEqual([
      [code, "amendments[0].row"],
    ]);
  });

  it("is refused at the first of two cells that clash, in whichever order they are given", () => {
    const [low, high] = [cell("350 kcmil", "3/0 AWG"), cell("600 kcmil", "2/0 AWG")];
    for (const two of [
      [low, high],
      [high, low],
    ])
      expect(issuesOf(...two).map(({ path }) => path)).toEqual(["amendments[0].size"]);
  });
});

import { feederTap, InputError, type Issue, mainBondingJumper, size } from "bondmil";
import { describe, expect, it } from "vitest";

function issuesOf(ask: () => unknown): readonly Issue[] {
  try {
    ask();
    return [];
  } catch (error) {
    if (error instanceof InputError) return error.issues;
    throw error;
  }
}

const good = {
  code: { year: "2023" },
  supply: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] },
  conductor: { material: "copper" },
};
const ask = (input: unknown) => issuesOf(() => size(mainBondingJumper, input as never));

describe("a member that there is not", () => {
  it("is told the member of nearly its name, or that there is none", () => {
    const { supply, ...rest } = good;
    expect(ask({ ...rest, suply: supply })).toMatchObject([
      { code: "unknown-key", path: "suply", expected: '"supply"', alternatives: ["supply"] },
      { code: "missing", path: "supply" },
    ]);
    expect(ask({ ...good, weather: "fine" })).toMatchObject([
      { code: "unknown-key", path: "weather", expected: "no such member" },
    ]);
  });
});

describe("an amount", () => {
  const tap = {
    edition: "2023",
    feederDevice: 400,
    feet: 20,
    place: "inside",
    endsIn: { device: 100 },
  } as const;
  const withLoad = (load: number) => issuesOf(() => feederTap({ ...tap, load }));

  it("may be a thousand million, and no more", () => {
    expect(withLoad(1_000_000_000)).toEqual([]);
    expect(withLoad(1_000_000_001)).toMatchObject([{ path: "load", alternatives: [] }]);
  });
});

import { arrangementsOf, groundedConductor, InputError, mainBondingJumper } from "bondmil";
import { describe, expect, it } from "vitest";

const input = {
  code: { year: "2023" },
  enclosures: [{ id: "D1", supply: { sets: [{ count: 1, size: "3/0 AWG", material: "copper" }] } }],
  conductor: { material: "copper" },
} as const;

function issuesOf(ask: () => unknown): unknown {
  try {
    ask();
  } catch (error) {
    if (error instanceof InputError) return error.issues.map(({ code, path }) => [code, path]);
    throw error;
  }
  return undefined;
}

describe("the arrangements of a role", () => {
  it("are asked of four roles only", () => {
    // @ts-expect-error: a role without arrangements of its own
    expect(issuesOf(() => arrangementsOf(groundedConductor, input))).toEqual([["unknown-value", "role"]]);
  });

  it.each([
    [undefined, "missing"],
    ["main-bonding-jumper", "wrong-type"],
    [{ id: "main-bonding-jumper" }, "wrong-type"],
  ])("%j is no role", (role, code) => {
    expect(issuesOf(() => arrangementsOf(role as never, input as never))).toEqual([[code, "role"]]);
  });

  it("keep their places apart from parts that the question does not name", () => {
    const named = (id: string) => {
      const [one] = input.enclosures;
      const { arrangements } = arrangementsOf(mainBondingJumper, {
        ...input,
        enclosures: [
          { ...one, id },
          { ...one, id: "D2" },
        ],
        wireway: { ...one, id: "W1" },
      });
      return arrangements.map(({ conductors, violations }) => [
        conductors.map(({ result }) => result.requiredArea),
        violations,
      ]);
    };
    for (const id of ["utility", "service", "other utility"]) expect(named(id)).toEqual(named("D1"));
  });
});

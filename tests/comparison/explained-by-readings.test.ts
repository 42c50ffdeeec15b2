import { type Input, mainBondingJumper, type SizingResult, size } from "bondmil";
import { describe, expect, it } from "vitest";
import { changesBetween } from "../../src/comparison/changes.js";
import { explainedByReadings } from "../../src/comparison/explained-by-readings.js";

// Two editions are made up here: the result of one that has an open reading, and the same with other steps.

const input: Input<typeof mainBondingJumper> = {
  code: { year: "2020" },
  supply: { sets: [{ count: 1, size: "10 AWG", material: "copper" }] },
  conductor: { material: "copper" },
};
const before = size(mainBondingJumper, input);

function withSteps(edit: (step: SizingResult["steps"][number]) => object): SizingResult {
  const steps = before.steps.map((step) => ({ ...step, ...edit(step) }));
  return { ...before, readings: [], steps: steps as SizingResult["steps"] };
}

const otherSum = (kind: string) => (kind === "sum" ? { rule: "largest" } : {});
const after = withSteps(({ kind, citation }) =>
  kind === "cap" ? { citation: { ...citation, section: "Elsewhere" } } : otherSum(kind),
);

/** Kind and subject of the changes, if the alternative gives a result. */
const explained = (alternative: SizingResult, later = after) =>
  explainedByReadings(
    () => alternative,
    { edition: "2020", input, result: before },
    { edition: "2023", input, result: later },
    changesBetween(before, later),
  ).map(({ kind, what, because }) => [kind, what, because?.alternative]);

describe("what an open reading explains", () => {
  it("is every change of a rule that its alternative leaves none of", () => {
    expect(explained(withSteps(({ kind }) => otherSum(kind)))).toEqual([
      ["reading", "sum", "large-supplies-only"],
      ["place", "cap", undefined],
      ["reading", "reading", undefined],
    ]);
  });

  it("is nothing where the alternative changes another rule instead", () => {
    const another = withSteps(({ kind }) => (kind === "cap" ? { requiredArea: 1 } : otherSum(kind)));
    expect(explained(another).slice(0, 2)).toEqual([
      ["policy", "sum", undefined],
      ["place", "cap", undefined],
    ]);
  });

  it("is nothing where the alternative brings another limit of the same kind of step, or lets another step decide", () => {
    const lower = withSteps(({ kind }) => (kind === "cap" ? { requiredArea: 9000 } : otherSum(kind)));
    const limit = before.steps.flatMap((step) => (step.kind === "cap" ? [step] : []));
    const another = limit.map((step) => ({ ...step, why: "largest-size", requiredArea: 1 }) as const);
    const alternative = { ...lower, steps: [...lower.steps, ...another] };
    expect(explained(alternative, lower).slice(0, 2)).toEqual([
      ["policy", "sum", undefined],
      ["policy", "cap", undefined],
    ]);
    expect(explained({ ...lower, governs: "row" }, lower).slice(0, 2)).toEqual([
      ["policy", "sum", undefined],
      ["policy", "cap", undefined],
    ]);
    expect(explained(lower, lower).slice(0, 2)).toEqual([
      ["reading", "sum", "large-supplies-only"],
      ["reading", "cap", "large-supplies-only"],
    ]);
  });

  it("is nothing where the alternative changes nothing", () => {
    expect(explained(before).slice(0, 2)).toEqual([
      ["policy", "sum", undefined],
      ["place", "cap", undefined],
    ]);
  });
});

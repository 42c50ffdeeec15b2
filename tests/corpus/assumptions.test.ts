import { describe, expect, it } from "vitest";
import { alternativesAt } from "../../corpus/tools/assumptions/alternatives.js";
import { hangs, movesOf } from "../../corpus/tools/assumptions/moves.js";
import { valueAt, withValueAt } from "../../corpus/tools/assumptions/places.js";
import { canCarry, suppliesFor } from "../../corpus/tools/assumptions/supplies.js";
import { library } from "../../corpus/tools/runner/library.js";
import { type Check, type Entry, entriesOf } from "../../corpus/tools/runner/model.js";
import { readDocuments } from "../../corpus/tools/runner/read.js";
import { validate } from "../../corpus/tools/runner/validate.js";
import { check } from "./fixtures.js";

const { corpus } = validate(readDocuments());
const entries = entriesOf(corpus ?? { files: [] });
const withAssumptions = entries.filter(({ check }) => check.assumed.length > 0);

function entry(changes: Partial<Check>): Entry {
  return {
    role: "main-bonding-jumper",
    source: "handbook",
    check: { ...check, figures: {}, ...changes } as Check,
  };
}

describe("an answer that hangs on what was assumed", () => {
  it("is found out by varying what was assumed", () => {
    const moves = movesOf(entry({ assumed: ["supply"] }), library);
    expect(moves).toMatchObject([{ path: "supply", edition: "2017" }]);
    expect(hangs(entry({ assumed: ["supply"] }), library)).toBe(true);
    expect(hangs(entry({ assumed: [] }), library)).toBe(false);
  });

  it("does not hang where all that the amperes allow gives the same", () => {
    expect(hangs(entry({ assumed: ["supply"], amperes: 200 }), library)).toBe(false);
    expect(hangs(entry({ assumed: ["supply"], amperes: 400 }), library)).toBe(true);
  });

  it("does not hang on us where the code says what holds when nothing is said, and the move is still shown", () => {
    const unnamed = entry({ assumed: ["supply.sets.0.material"] });
    expect(movesOf(unnamed, library)).toMatchObject([{ settledBy: "unnamed-material", value: "aluminum" }]);
    expect(hangs(unnamed, library)).toBe(false);
    // 3/0 AWG aluminum does not carry 200 A, so that the amperes say copper.
    expect(movesOf(entry({ assumed: ["supply.sets.0.material"], amperes: 200 }), library)).toEqual([]);
  });

  it("hangs on aluminum that we assumed, which no section assumes", () => {
    const supply = { sets: [{ count: 1, size: "4/0 AWG", material: "aluminum" }] };
    const input = { ...check.input, supply } as Check["input"];
    expect(hangs(entry({ input, assumed: ["supply.sets.0.material"] }), library)).toBe(true);
  });

  it("is never cited", () => {
    expect(withAssumptions.length).toBeGreaterThan(100);
    const cited = withAssumptions.filter(({ check }) => check.standing === "cited");
    expect(cited.filter((one) => hangs(one, library)).map(({ check }) => check.id)).toEqual([]);
  });

  it("varies every assumed place of the corpus", () => {
    for (const { check } of withAssumptions) {
      for (const path of check.assumed)
        expect(alternativesAt(check, path), `${check.id} ${path}`).not.toEqual([]);
    }
  });
});

describe("the conductors of so many amperes", () => {
  it("are the smallest that carry them, of both metals, and in parallel from 1/0 AWG on", () => {
    const said = suppliesFor(200).map(({ sets: [set] }) => `${set?.count} x ${set?.size} ${set?.material}`);
    expect(said).toEqual([
      "1 x 3/0 AWG copper",
      "1 x 2/0 AWG copper",
      "1 x 250 kcmil aluminum",
      "1 x 4/0 AWG aluminum",
    ]);
    expect(suppliesFor(400).some(({ sets: [set] }) => set?.count === 2)).toBe(true);
    expect(suppliesFor(undefined).length).toBeGreaterThan(150);
  });

  it("are told from those that do not carry them", () => {
    const of = (count: number, material: "copper" | "aluminum") =>
      ({ sets: [{ count, size: "500 kcmil", material }] }) as const;
    expect([canCarry(of(1, "copper"), 400), canCarry(of(1, "aluminum"), 400)]).toEqual([true, false]);
    expect(canCarry(of(2, "aluminum"), 1000)).toBe(false);
  });
});

describe("a place in an input", () => {
  const input = { supply: { sets: [{ count: 1 }, { count: 2 }] } };
  it("is read, changed in a copy and left out", () => {
    expect(valueAt(input, "supply.sets.1.count")).toBe(2);
    expect(valueAt(input, "supply.run.kind")).toBeUndefined();
    expect(withValueAt(input, "supply.sets.1.count", 3).supply.sets[1]?.count).toBe(3);
    expect(withValueAt(input, "supply.sets.0", undefined).supply.sets).toEqual([{ count: 2 }]);
    expect(withValueAt(input, "supply", undefined)).toEqual({});
    expect(input.supply.sets).toHaveLength(2);
    expect(() => withValueAt(input, "none.of.these", 1)).toThrow("nothing is at none.of.these");
  });
});

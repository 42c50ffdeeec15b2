import { describe, expect, it } from "vitest";
import { readShape } from "../../src/input/read-shape.js";
import { wholeOf } from "../../src/input/reader.js";
import type { Shape } from "../../src/input/shapes.js";
import { take, wrong } from "../../src/input/take.js";

const shapes: Readonly<Record<string, Shape>> = {
  between: { is: "between", unit: "degrees", least: 5, most: 9 },
  "whole between": { is: "between", unit: "degrees", least: 5, most: 9, whole: true },
  number: { is: "number", unit: "feet" },
  "number or zero": { is: "number", unit: "feet", orZero: true },
  count: { is: "number", unit: "sets", whole: true },
  words: { is: "words", of: ["copper", "aluminum"] },
  flag: { is: "flag", says: "it" },
  name: { is: "name", says: "it" },
  exactly: { is: "exactly", value: 1 },
  list: { is: "list", of: { is: "flag", says: "it" }, least: 1, most: 2 },
};

const values = [
  ...[undefined, null, true, "", " ", "copper", "tin", [], [true], [true, false, true], ["x"], {}],
  ...[-1, 0, 0.5, 1, 4.999, 5, 7.5, 8, 9, 9.001, 10, 99, 100, 101, 1e9, 1e9 + 1, Number.NaN, Infinity],
];

describe.each(Object.entries(shapes))("the quick check of a shape: %s", (_, shape) => {
  it.each(values)("refuses what the full check refuses, and nothing else: %s", (value) => {
    const at = wholeOf(value);
    readShape(at, shape);
    expect(take(value, shape, []) === wrong).toBe(at.issues.length > 0);
  });
});

it("a member that is like none of the known ones is no such member", () => {
  const shape: Shape = { is: "object", members: { size: { is: "flag", says: "it" } } };
  const at = wholeOf({ size: true, zzzzzzzzzz: 1 });
  readShape(at, shape);
  expect(at.issues).toMatchObject([{ code: "unknown-key", expected: "no such member", alternatives: [] }]);
});

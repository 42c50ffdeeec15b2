import { describe, expect, it } from "vitest";
import { unbeatenOf } from "../../src/candidates/unbeaten.js";

const plain = { copper: 100, aluminum: 100, terminations: 10, raceways: 2 };
const placesOf = (...expenses: Parameters<typeof unbeatenOf>[0]) => [...unbeatenOf(expenses)].sort();

describe("what no other beats", () => {
  it.each(["copper", "aluminum", "terminations", "raceways"] as const)(
    "takes no less %s than any other",
    (expense) => {
      const less = { ...plain, [expense]: plain[expense] - 1 };
      expect(placesOf(plain, less)).toEqual([1]);
      expect(placesOf(less, plain)).toEqual([0]);
    },
  );

  it.each([
    ["copper", "aluminum"],
    ["aluminum", "terminations"],
    ["terminations", "raceways"],
    ["raceways", "copper"],
    ["copper", "terminations"],
    ["aluminum", "raceways"],
  ] as const)("may take less %s for more %s", (less, more) => {
    expect(placesOf(plain, { ...plain, [less]: plain[less] - 1, [more]: plain[more] + 1 })).toEqual([0, 1]);
  });

  it("is both of two that take the same", () => {
    expect(placesOf(plain, plain)).toEqual([0, 1]);
  });
});

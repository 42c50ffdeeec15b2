import { describe, expect, it } from "vitest";
import { LETTER_WIDTH, wrap } from "../../src/drawing/wrap.js";

describe("a text in lines", () => {
  it("is broken between words and after hyphens, but not between a length and its unit", () => {
    expect(wrap("raceway, 60 ft", LETTER_WIDTH * 12)).toEqual(["raceway,", "60 ft"]);
    expect(wrap("a 1,250.5 ft", LETTER_WIDTH * 11)).toEqual(["a", "1,250.5 ft"]);
    expect(wrap("non-metallic tubing", LETTER_WIDTH * 12)).toEqual(["non-", "metallic", "tubing"]);
    expect(wrap("60 fts of it", LETTER_WIDTH * 4)).toEqual(["60", "fts", "of", "it"]);
  });

  it("is broken inside a word, or a length, only where nothing else helps", () => {
    expect(
      wrap("1234567 ft", LETTER_WIDTH * 4)
        .join("")
        .replaceAll(" ", ""),
    ).toBe("1234567ft");
    expect(wrap("", 100)).toEqual([]);
  });
});

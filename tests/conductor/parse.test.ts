import { conductorSizes, formatSize, InputError, parseSize } from "bondmil";
import { describe, expect, it } from "vitest";

const issueOf = (text: unknown): unknown => {
  try {
    return parseSize(text as string);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.issues.map(({ code, path, expected }) => ({ code, path, expected }))[0];
  }
};

describe("parsing what people write", () => {
  it.each([
    ["4/0", "4/0 AWG"],
    ["4 / 0", "4/0 AWG"],
    ["4 /0", "4/0 AWG"],
    ["4/ 0", "4/0 AWG"],
    ["#4/0", "4/0 AWG"],
    ["0000", "4/0 AWG"],
    ["000", "3/0 AWG"],
    ["0", "1/0 AWG"],
    ["#2", "2 AWG"],
    ["# 2", "2 AWG"],
    ["No. 6", "6 AWG"],
    ["no 6", "6 AWG"],
    ["no 6 awg", "6 AWG"],
    ["6 awg", "6 AWG"],
    ["6awg", "6 AWG"],
    ["AWG 6", "6 AWG"],
    ["#6 AWG", "6 AWG"],
    ["8 ga", "8 AWG"],
    ["8 gauge", "8 AWG"],
    ["12", "12 AWG"],
    ["1/0 AWG", "1/0 AWG"],
    ["one aught", "1/0 AWG"],
    ["two-aught", "2/0 AWG"],
    ["4 ought", "4/0 AWG"],
    ["4ought", "4/0 AWG"],
    ["3 - aught", "3/0 AWG"],
    ["250 kcmil", "250 kcmil"],
    ["250kcmil", "250 kcmil"],
    ["250MCM", "250 kcmil"],
    ["750", "750 kcmil"],
    ["250,000 cmil", "250 kcmil"],
    ["250000cmil", "250 kcmil"],
    ["500000 circular mils", "500 kcmil"],
    ["1,250 kcmil", "1250 kcmil"],
    ["  3/0  ", "3/0 AWG"],
    ["4/0".padStart(100), "4/0 AWG"],
  ])("%s is %s", (text, size) => {
    expect(parseSize(text)).toBe(size);
  });

  it("reads back every size that it writes", () => {
    for (const size of conductorSizes) expect(parseSize(formatSize(size))).toBe(size);
  });

  it.each(["1", "2", "3", "4"])("never guesses what a bare %s means", (digit) => {
    expect(issueOf(digit)).toEqual({
      code: "ambiguous-size",
      path: "",
      expected: `${digit} AWG or ${digit}/0 AWG`,
    });
  });

  it.each([
    "",
    "5",
    "5/0",
    "9 AWG",
    "70 mm2",
    "275 kcmil",
    "4-0",
    "four",
    "0.5",
    "-4",
    "4/0/0",
    "00000",
    "0/0 AWG",
    "3 x 250 kcmil",
    "250 kcmil each",
    "250000 cmil each",
    "3 x 250000 cmil",
    "2 x #6",
    "#6 each",
    "2 x 6 AWG",
    "6 AWG each",
    "4/0 each",
    "#",
    "awg",
  ])("knows no size %j", (text) => {
    expect(issueOf(text)).toMatchObject({
      code: text === "four" ? "ambiguous-size" : "unknown-size",
      path: "",
    });
  });

  it("names the sizes that there are", () => {
    expect(issueOf("70 mm2")).toMatchObject({ expected: "a size from 18 AWG to 2000 kcmil" });
  });

  it("does not search through what is too long for a size", () => {
    expect(issueOf("4/0".padStart(101))).toMatchObject({ code: "out-of-range" });
  });

  it.each([4, null, undefined, ["4/0"]])("wants text, not %j", (value) => {
    expect(issueOf(value)).toMatchObject({ code: "wrong-type" });
  });
});

import { describe, expect, it } from "vitest";
import { progressOn } from "../../src/command/progress.js";
import { colored, isColored, printable, readingWidth } from "../../src/command/terminal.js";

const outlet = (isTerminal: boolean, columns?: number) => ({ isTerminal, columns, write: async () => {} });

describe("the width of a text", () => {
  it.each([
    [true, undefined, 80],
    [true, 0, 80],
    [true, 20, 40],
    [true, 90, 90],
    [false, 90, undefined],
  ])("on a terminal (%s) of %s letters is %s", (isTerminal, columns, width) => {
    expect(readingWidth(outlet(isTerminal, columns))).toBe(width);
  });
});

describe("color", () => {
  it.each([
    [{}, true],
    [{ NO_COLOR: "" }, true],
    [{ NO_COLOR: "1" }, false],
    [{ TERM: "xterm" }, true],
    [{ TERM: "dumb" }, false],
  ])("is left out where %j says so", (environment, is) => {
    expect(isColored(outlet(true), { environment })).toBe(is);
    expect(isColored(outlet(false), { environment })).toBe(false);
  });

  it.each([
    ["SHORT: a", "\u001b[31mSHORT\u001b[0m: a"],
    ["CANNOT SERVE: a", "\u001b[31mCANNOT SERVE\u001b[0m: a"],
    ["OPEN: a", "\u001b[33mOPEN\u001b[0m: a"],
    ["No findings. a", "\u001b[32mNo findings\u001b[0m. a"],
    ["a\n=====", "\u001b[1ma\u001b[0m\n====="],
    ["a\n-\nb", "\u001b[1ma\u001b[0m\n-\nb"],
  ])("marks a heading or a finding: %j", (text, marked) => {
    expect(colored(text)).toBe(marked);
  });

  it.each([
    ...["a SHORT: b", "an OPEN: b", "x No findings. b", "SHORT", "OPEN a", "No findings, b"],
    ...["a\n- b", "a\nb -", "a\n=b", "a\nb ="],
  ])("marks nothing else: %j", (text) => {
    expect(colored(text)).toBe(text);
  });
});

it("characters that a terminal would obey are shown by their numbers, and no others", () => {
  const obeyed = [0x00, 0x09, 0x0b, 0x1f, 0x7f, 0x9f, 0x202a, 0x202e, 0x2066, 0x2069];
  for (const code of obeyed)
    expect(printable(`a${String.fromCodePoint(code)}b`)).toBe(`a\\u${code.toString(16).padStart(4, "0")}b`);
  const plain = String.fromCodePoint(0x0a, 0x20, 0x7e, 0xa0, 0x2029, 0x202f, 0x2065, 0x206a, 0x1f50c);
  expect(printable(plain)).toBe(plain);
});

describe("progress", () => {
  const run = async (times: readonly number[], isTerminal = true) => {
    let told = "";
    const left = [...times];
    const write = async (text: string) => {
      told += text;
    };
    const progress = progressOn({ ...outlet(isTerminal), write }, () => left.shift() ?? 0);
    for (const time of times.slice(1)) await progress.step(time * 5, 1234);
    await progress.end();
    return told.replaceAll("\r\u001b[K", "|");
  };

  it("is told a few times in a second, and wiped away at the end", async () => {
    expect(await run([0, 249, 250, 499, 500])).toBe(
      "|1,250 lines, 1,234 refused, 5,000 in a second|2,500 lines, 1,234 refused, 5,000 in a second|",
    );
    expect(await run([1000, 1500])).toBe("|7,500 lines, 1,234 refused, 15,000 in a second|");
  });

  it("is not told of what is done at once, nor elsewhere than on a terminal", async () => {
    expect(await run([0, 249])).toBe("");
    expect(await run([0, 250], false)).toBe("");
  });
});

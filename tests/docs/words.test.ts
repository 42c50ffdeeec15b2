import { describe, expect, it } from "vitest";
import { findAvoided } from "../../docs/pages/words/find.js";
import { readTexts, textsOfCode, textsOfData, textsOfMarkdown } from "../../docs/pages/words/texts.js";
import { readWords } from "../../docs/pages/words/words.js";

const { words, exceptions } = readWords();
const texts = readTexts();
const finds = findAvoided(texts, words);

describe("the words of the project", () => {
  it("are those of the list, wherever a person reads", () => {
    const wrong = finds.filter(
      ({ file, avoided }) => !exceptions.some((one) => one.file === file && one.avoided === avoided),
    );
    const said = wrong.map(
      ({ file, line, avoided, write, around }) => `${file}:${line} "${avoided}", write "${write}": ${around}`,
    );
    expect(said).toEqual([]);
  });

  it("have no exception that is not needed, or says no reason", () => {
    const idle = exceptions.filter(
      ({ file, avoided, why }) =>
        why === "" || !finds.some((find) => find.file === file && find.avoided === avoided),
    );
    expect(idle).toEqual([]);
  });

  it("are each listed once, and avoided under one of them", () => {
    for (const list of [words.map(({ word }) => word), words.flatMap(({ avoid = [] }) => avoid)])
      expect([...new Set(list)]).toEqual(list);
  });
});

describe("what a person reads", () => {
  it("is comments, texts, prose and notes of every part", () => {
    const parts = [
      /^src\/roles\//,
      /^src\/report\/words\//,
      /^docs\/roles\//,
      /^docs\/pages\//,
      /^\.changeset\//,
    ];
    const more = [
      /^README\.md/,
      /^DEVELOPERS\.md/,
      /^tables\/readings\.json/,
      /^corpus\/grounded-conductor\.json/,
    ];
    for (const part of [...parts, ...more]) expect(texts.some(({ file }) => part.test(file))).toBe(true);
  });

  const avoided = (taken: readonly { line: number; text: string }[]) =>
    findAvoided(
      taken.map((one) => ({ file: "any", ...one })),
      [{ word: "required", means: "", avoid: ["asks for"], right: ["asks for help"] }],
    ).map(({ line }) => line);

  it("of code is its comments and its texts, not its names and examples", () => {
    expect(avoided(textsOfCode("/** It asks\n * for more. */\nconst a = 1;"))).toEqual([1]);
    expect(avoided(textsOfCode("const a = 1; // It asks for more."))).toEqual([1]);
    expect(avoided(textsOfCode("const a = 1;\n// It asks for more.\nconst b = 2;"))).toEqual([2]);
    expect(avoided(textsOfCode("f(\n  'it asks for more',\n  `$" + "{x} asks for $" + "{y}`);"))).toEqual([
      2, 3,
    ]);
    expect(avoided(textsOfCode("/**\n * @example\n * asks for\n */\nconst a = 1;"))).toEqual([]);
    expect(avoided(textsOfCode("/** `asks for` */\nconst a = 1;"))).toEqual([]);
  });

  it("of a guide is its prose, not its code", () => {
    expect(avoided(textsOfMarkdown("# A\n\nIt asks\nfor more.\n\nIt asks for help."))).toEqual([3]);
    expect(avoided(textsOfMarkdown("```ts\nasks for\n```\n\n`asks for`"))).toEqual([]);
    expect(avoided(textsOfMarkdown("<!-- Generated from x -->\nasks for"))).toEqual([]);
  });

  it("of data is its sentences, not its titles and ids", () => {
    const data = { title: "asks for", id: "asks for", note: "It asks for more.", readings: ["asks for it"] };
    expect(avoided(textsOfData(JSON.stringify(data, null, 2)))).toEqual([4, 6]);
  });
});

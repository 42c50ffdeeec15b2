import { describe, expect, it } from "vitest";
import type { Corpus } from "../../corpus/tools/runner/model.js";
import { readFilter } from "../../corpus/tools/runner/read-filter.js";
import { fileOf, source } from "./fixtures.js";

const corpus = { files: [fileOf([])], sources: { handbook: source } } as unknown as Corpus;

describe("the filter of a command line", () => {
  it("takes every option", () => {
    const args =
      "--role grounded-conductor --source handbook --flag basic-row --edition 2014 --standing disputed";
    expect(readFilter(args.split(" "), corpus)).toEqual({
      role: "grounded-conductor",
      source: "handbook",
      flag: "basic-row",
      edition: "2014",
      standing: "disputed",
    });
    expect(Object.values(readFilter([], corpus)).every((value) => value === undefined)).toBe(true);
  });

  it.each([
    ["--edition 2010", "--edition 2010: expected one of 2008, 2011"],
    ["--role jumper", "--role jumper: expected one of main-bonding-jumper"],
    ["--standing good", "--standing good: expected one of cited, arithmetic"],
    ["--source leaflet", "--source leaflet: expected an id of tables/sources.json"],
    ["--flag other", "--flag other: expected a flag of one of the files"],
    ["--colour red", "--colour"],
  ])("refuses %s and says what may stand there", (args, words) => {
    expect(() => readFilter(args.split(" "), corpus)).toThrow(words);
  });
});

import { readFileSync } from "node:fs";
import { voices } from "bondmil/corpus";
import { describe, expect, it } from "vitest";
import { validateInstallationChecks } from "../../corpus/tools/installations/read.js";
import { countHosts, hostOf, isAddress, isNameless } from "../../corpus/tools/runner/hosts.js";
import { judge } from "../../corpus/tools/runner/judge.js";
import { entriesOf } from "../../corpus/tools/runner/model.js";
import { readDocuments } from "../../corpus/tools/runner/read.js";
import { select } from "../../corpus/tools/runner/select.js";
import { validate } from "../../corpus/tools/runner/validate.js";
import { check, documentsOf, fileOf, source, sourcesWith } from "./fixtures.js";

const faultsOf = (changes: object): string =>
  validate(documentsOf([{ ...check, ...changes }])).faults.join("\n");

describe("who says it, and what we added", () => {
  it("cites neither the one who asks nor the code itself", () => {
    expect(faultsOf({ voice: "asker" })).toBe("one-service: what somebody asks is not cited");
    expect(faultsOf({ voice: "code" })).toContain("is not cited, what follows from it is arithmetic");
    expect(faultsOf({ voice: "asker", standing: "arithmetic" })).toBe("");
    expect(faultsOf({ voice: "somebody" })).toContain("voice");
  });

  it("names only places that the input has", () => {
    expect(faultsOf({ assumed: ["supply.sets.0.material"] })).toBe("");
    expect(faultsOf({ assumed: ["supply.sets.1.material"] })).toBe(
      "one-service: assumes supply.sets.1.material, which the input does not have",
    );
    const { assumed: _, ...silent } = check;
    expect(validate(documentsOf([silent])).faults.join()).toContain("assumed");
  });

  it("gives amperes only in place of conductors", () => {
    expect(faultsOf({ amperes: 200, assumed: ["supply"] })).toBe("");
    for (const assumed of [[], ["conductor.material"]])
      expect(faultsOf({ amperes: 200, assumed })).toBe("one-service: has amperes, but assumes no conductors");
  });

  it("carries to an edition that was not read only arithmetic, from one that was", () => {
    const open = { standing: "arithmetic", stated: null, holds: ["2023", "2026"] };
    expect(faultsOf({ ...open, carried: ["2026"] })).toBe("");
    expect(faultsOf({ ...open, carried: ["2020"] })).toBe(
      "one-service: is carried to 2020, where it does not hold",
    );
    expect(faultsOf({ ...open, holds: ["2026"], carried: ["2026"] })).toBe(
      "one-service: is carried from no edition",
    );
    expect(faultsOf({ ...open, standing: "cited", carried: ["2026"] })).toBe(
      "one-service: is carried, so it is arithmetic and not cited",
    );
  });

  it("has a sentence of the schema for every voice", () => {
    const { $defs } = JSON.parse(
      readFileSync(new URL("../../corpus/schema/checks.schema.json", import.meta.url), "utf8"),
    );
    expect($defs.voice.oneOf.map((one: { readonly const: string }) => one.const)).toEqual(voices);
  });

  it("can be selected by", () => {
    const given = fileOf([check, { ...check, id: "b", voice: "reply", assumed: ["supply"] }]);
    const ids = (filter: object) =>
      select(entriesOf({ files: [given as never] }), filter).map((entry) => entry.check.id);
    expect(ids({ voice: "reply" })).toEqual(["b"]);
    expect(ids({ assumed: "none" })).toEqual(["one-service"]);
    expect(ids({ assumed: "some", voice: "author" })).toEqual([]);
  });
});

describe("a limit and a floor", () => {
  const verdict = (expected: object, given: object) =>
    judge({ ...check, expect: expected } as never, given as never).verdict;

  it("is met by what lies within it, and by one conductor", () => {
    const limit = { notLargerThan: "6 AWG" };
    expect(["8 AWG", "6 AWG", "4 AWG"].map((size) => verdict(limit, { size }))).toEqual([
      "met",
      "met",
      "missed",
    ]);
    const floor = { notSmallerThan: "6 AWG" };
    expect(["8 AWG", "6 AWG", "4 AWG"].map((size) => verdict(floor, { size }))).toEqual([
      "missed",
      "met",
      "met",
    ]);
    expect(verdict(limit, { size: "6 AWG", quantity: 2 })).toBe("missed");
    expect(verdict(limit, { size: "six" })).toBe("missed");
    expect(verdict(limit, { outcome: "not-required" })).toBe("missed");
    expect(verdict(limit, { errors: ["empty-list"] })).toBe("missed");
  });
});

describe("what a source is counted as", () => {
  const sources = {
    handbook: source,
    "same-bank": { ...source, publisher: "Another name", host: source.publisher },
    copy: { ...source, publisher: "A copier", copies: "same-bank" },
    other: { ...source, publisher: "Another one" },
  };

  it("is its bank, host or author, under whatever name, and a copy that of what it repeats", () => {
    expect(Object.keys(sources).map((id) => hostOf(id, sources))).toEqual([
      ...Array.from({ length: 3 }, () => source.publisher),
      "Another one",
    ]);
    expect(
      countHosts(
        ["handbook", "same-bank", "copy", "other"].map((id) => ({ source: id })),
        sources,
      ),
    ).toBe(2);
  });

  it("is nameless where nobody stands behind it", () => {
    const kinds = ["question-bank", "homework", "unsigned", "forum", "exam-prep"] as const;
    const ofKind = Object.fromEntries(kinds.map((kind) => [kind, { ...source, kind }]));
    expect(kinds.map((kind) => isNameless(kind, ofKind))).toEqual([true, true, true, false, false]);
  });

  it("says how it is found where it has no address of its own", () => {
    expect(["https://a.org", "https://a.org/", "https://a.org/page", null].map(isAddress)).toEqual([
      false,
      false,
      true,
      false,
    ]);
    const file = { ...fileOf([check]), groups: [{ source: "site", checks: [check] }] };
    const faults = (changes: object) =>
      validate(
        documentsOf([], {
          files: new Map([["main-bonding-jumper.json", { ...file, count: 1 }]]),
          sources: sourcesWith("site", { url: "https://a.org", ...changes }),
          namedByTables: ["handbook"],
        }),
      ).faults;
    expect(faults({})).toEqual(["site: has no address of its own, so it needs findAgain: by-title or no"]);
    expect(faults({ findAgain: "by-title" })).toEqual([]);
  });
});

describe("a file that was cut off", () => {
  it("shows by its count", () => {
    const cut = { ...fileOf([check]), count: 2 };
    const { faults } = validate(documentsOf([], { files: new Map([["main-bonding-jumper.json", cut]]) }));
    expect(faults).toEqual(["main-bonding-jumper: has 1 checks, and its count is 2"]);
  });

  it("shows among the installations", () => {
    const path = new URL("../../corpus/installations/services.json", import.meta.url);
    const file = JSON.parse(readFileSync(path, "utf8"));
    const cut = { ...file, groups: file.groups.slice(0, -1) };
    expect(validateInstallationChecks(new Map([["services.json", cut]])).faults.join("\n")).toContain(
      `and its count is ${file.count}`,
    );
  });
});

it("no source of a check is left without a way to it", () => {
  const { files, sources } = readDocuments();
  const { corpus } = validate({ ...readDocuments(), files, sources });
  const named = new Set(entriesOf(corpus ?? { files: [] }).map((entry) => entry.source));
  const lost = [...named].filter((id) => corpus?.sources[id]?.findAgain !== undefined);
  expect(lost.length).toBeGreaterThan(10);
  expect(
    lost.every(
      (id) => !isAddress(corpus?.sources[id]?.url ?? null) || corpus?.sources[id]?.findAgain === "no",
    ),
  ).toBe(true);
});

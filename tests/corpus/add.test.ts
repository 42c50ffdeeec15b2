import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { roleIds } from "bondmil";
import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { addCheck } from "../../corpus/tools/addition/add-check.js";
import { addToCorpus } from "../../corpus/tools/addition/command.js";
import { draftOf } from "../../corpus/tools/addition/draft.js";
import { skeletonOf } from "../../corpus/tools/addition/skeleton.js";
import { writeAll } from "../../corpus/tools/addition/write-all.js";
import type { CheckGroup } from "../../corpus/tools/runner/model.js";
import { readDocuments } from "../../corpus/tools/runner/read.js";
import { shapeFaults } from "../../corpus/tools/runner/shape-faults.js";
import { shapesOf } from "../../corpus/tools/runner/validate.js";
import { check, disputed, documentsOf, fileOf } from "./fixtures.js";

const root = join(import.meta.dirname, "../..");
const temp = mkdtempSync(join(tmpdir(), "bondmil-corpus-"));
const draft = join(temp, "draft.json");
afterAll(() => rmSync(temp, { recursive: true, force: true }));

// A corpus of two files, so that a test does not read all of them.
const names = ["main-bonding-jumper", "intersystem-bonding-conductor"];
const files = names.map((name) => readFileSync(join(root, "corpus", `${name}.json`), "utf8"));
const used = new Set(
  files.flatMap((text) => JSON.parse(text).groups.map((group: CheckGroup) => group.source)),
);
const sources = Object.fromEntries(
  Object.entries(JSON.parse(readFileSync(join(root, "tables/sources.json"), "utf8"))).filter(([id]) =>
    used.has(id),
  ),
);
for (const part of [
  "corpus/references",
  "corpus/installations",
  "corpus/supply",
  "tables/copies",
  "tables/extracts",
  "tables/evidence",
])
  mkdirSync(join(temp, part), { recursive: true });
for (const part of ["corpus/schema", "tables/schema"])
  cpSync(join(root, part), join(temp, part), { recursive: true });

beforeEach(() => {
  for (const [index, name] of names.entries())
    writeFileSync(join(temp, "corpus", `${name}.json`), files[index] ?? "");
  writeFileSync(join(temp, "tables/sources.json"), JSON.stringify(sources));
  rmSync(draft, { force: true });
});

function contents(): ReadonlyMap<string, string> {
  const names = ["corpus", "tables"].flatMap((part) =>
    readdirSync(join(temp, part), { recursive: true, encoding: "utf8" }).map((name) => join(part, name)),
  );
  return new Map(
    names
      .filter((name) => name.endsWith(".json"))
      .map((name) => [name, readFileSync(join(temp, name), "utf8")]),
  );
}

function run(...args: readonly string[]) {
  const { lines, exitCode } = addToCorpus(temp, args);
  return { exitCode, said: lines.join("\n") };
}

function add(addition: unknown) {
  writeFileSync(draft, typeof addition === "string" ? addition : JSON.stringify(addition));
  return run(draft);
}

const register = {
  title: "An invented handbook",
  publisher: "Nobody",
  url: null,
  findAgain: "by-title",
  date: null,
  kind: "handbook",
  copies: null,
  seen: "whole",
};
const ofRole = JSON.parse(readFileSync(join(root, "corpus/main-bonding-jumper.json"), "utf8"));
const known: string = ofRole.groups[0].source;
const one = { ...check, id: "", locator: "an invented page" };
const addition = { role: "main-bonding-jumper", source: known, check: one };

describe("a check that is added", () => {
  it("goes into the group of its source, numbered, and the files stay formatted and valid", () => {
    const before = contents();
    const { exitCode, said } = add(addition);
    expect({ exitCode, said }).toMatchObject({ exitCode: 0, said: expect.stringContaining(`${known}-1`) });
    const after = contents();
    const changed = [...after].filter(([name, text]) => before.get(name) !== text).map(([name]) => name);
    expect(changed).toEqual(["corpus/main-bonding-jumper.json"]);
    const file = JSON.parse(after.get("corpus/main-bonding-jumper.json") ?? "");
    expect(file.groups[0].checks.at(-1)).toEqual({ ...one, id: `${known}-1` });
    expect(file.groups).toHaveLength(ofRole.groups.length);
    expect(file.count).toBe(ofRole.count + 1);
    // Only lines that were added, and none that was reformatted.
    const lines = new Set(
      after
        .get("corpus/main-bonding-jumper.json")
        ?.split("\n")
        .map((line) => line.replace(/,$/, "")),
    );
    const kept = before.get("corpus/main-bonding-jumper.json")?.split("\n") ?? [];
    for (const line of kept.filter((one) => !one.includes('"count": ')))
      expect(lines).toContain(line.replace(/,$/, ""));
  });

  it("brings its source and its flags along, and keeps an id that it has", () => {
    const flags = { "invented-flag": { kind: "basic", why: "One.", consequence: "Another." } };
    const own = { ...one, id: "of-its-own", flags: ["invented-flag"] };
    expect(add({ ...addition, source: "invented", register, flags, check: own })).toMatchObject({
      exitCode: 0,
    });
    const after = contents();
    const file = JSON.parse(after.get("corpus/main-bonding-jumper.json") ?? "");
    expect(file.groups.at(-1)).toEqual({ source: "invented", checks: [own] });
    expect(file.flags["invented-flag"]).toEqual(flags["invented-flag"]);
    expect(JSON.parse(after.get("tables/sources.json") ?? "").invented).toEqual(register);
  });

  it("is numbered past what is taken, withdrawn ids too", () => {
    const taken = {
      ...fileOf([{ ...check, id: "handbook-1" }]),
      withdrawn: { "handbook-2": "copied wrongly" },
    };
    const documents = documentsOf([], { files: new Map([["main-bonding-jumper.json", taken]]) });
    expect(addCheck(documents, { ...addition, source: "handbook" })).toMatchObject({ id: "handbook-3" });
  });
});

describe("what is refused leaves every file as it was", () => {
  const { mistake: _, ...dispute } = disputed.dispute ?? {};
  it.each<[string, unknown, string]>([
    ["no JSON", "{", "cannot be read as JSON"],
    ["another shape", { ...addition, remark: "x" }, "must NOT have additional properties"],
    ["an unknown role", { ...addition, role: "jumper" }, "draft/role"],
    ["an unknown source", { ...addition, source: "invented" }, 'describe it in the member "register"'],
    ["a source that is there", { ...addition, register }, "is in the register already"],
    [
      "a source of another shape",
      { ...addition, source: "invented", register: { title: "x" } },
      "sources/invented",
    ],
    ["a flag that is there", { ...addition, flags: { "basic-row": {} } }, "is explained already"],
    ["a flag that nobody explains", { ...addition, check: { ...one, flags: ["invented"] } }, "unknown flag"],
    [
      "an id that is taken",
      { ...addition, check: { ...one, id: ofRole.groups[0].checks[0].id } },
      "two checks",
    ],
    [
      "the same check again",
      { ...addition, check: { ...ofRole.groups[0].checks[0], id: "" } },
      "the same source",
    ],
    ["an input of another role", { ...addition, role: "intersystem-bonding-conductor" }, "input"],
    [
      "a stated edition that does not stand alone",
      { ...addition, check: { ...one, holds: ["2014"] } },
      "states 2017",
    ],
    ["a dispute without its mistake", { ...addition, check: { ...disputed, id: "", dispute } }, "or null"],
  ])("%s", (_, given, words) => {
    const before = contents();
    const { exitCode, said } = add(given);
    expect({ exitCode, said }).toMatchObject({ exitCode: 1, said: expect.stringContaining(words) });
    expect(said).toContain("nothing was written");
    expect(
      said
        .split("\n")
        .slice(1)
        .filter((line) => !line.startsWith(`${draft}: `)),
    ).toEqual([]);
    expect(contents()).toEqual(before);
  });

  it("anything, if the corpus is not valid before", () => {
    const path = join(temp, "corpus/main-bonding-jumper.json");
    writeFileSync(path, readFileSync(path, "utf8").replace('"version": 1', '"version": 2'));
    const before = contents();
    expect(add(addition).said).toContain("not valid as it is");
    expect(contents()).toEqual(before);
  });

  it("also when only the second file cannot be written", () => {
    const before = contents();
    const texts = new Map([
      ["corpus/main-bonding-jumper.json", "new"],
      ["tables/sources.json", { toString: () => "new" } as unknown as string],
    ]);
    expect(() => writeAll(temp, texts)).toThrow();
    expect(contents()).toEqual(before);
  });
});

describe("a draft", () => {
  const documents = readDocuments(pathToFileURL(`${root}/`));
  const { isCheckFile, isSources } = shapesOf(documents);

  it.each(roleIds)("of %s is refused until it is filled in", (role) => {
    const { register, check: empty } = draftOf(
      { role, source: "invented", standing: "disputed" },
      documents,
    ) as { readonly register: object; readonly check: object };
    const file = { ...fileOf([{ ...empty, id: "invented-1" }]), role };
    expect([isCheckFile(file), isSources({ invented: register })]).toEqual([false, false]);
    const faults = [
      ...shapeFaults("file", isCheckFile.errors ?? [], file),
      ...shapeFaults("sources", isSources.errors ?? [], register),
    ].join("\n");
    for (const place of ["holds", "flags", "input", "expect", "locator", "dispute/mistake", "invented/title"])
      expect(faults).toContain(place);
  });

  it("is written once, and names what to choose from", () => {
    const before = contents();
    const args = [draft, "--role", "main-bonding-jumper", "--source", known];
    expect(run(...args)).toMatchObject({ exitCode: 0, said: expect.stringContaining("basic-row") });
    const written = JSON.parse(readFileSync(draft, "utf8"));
    expect(written.register).toBeUndefined();
    expect(written.check.standing).toBe("cited");
    expect(written.check.input.conductor).toEqual({ material: "copper|aluminum|copper-clad aluminum" });
    expect(run(...args)).toMatchObject({ exitCode: 1, said: expect.stringContaining("is there already") });

    const { input, locator, holds, stated, flags, voice, expect: size } = one;
    const filled = {
      ...written,
      check: { ...written.check, input, locator, holds, stated, flags, voice, expect: size },
    };
    expect(contents()).toEqual(before);
    expect(add(filled)).toMatchObject({ exitCode: 0 });
  });

  it.each([
    ["no file", [], "name one file"],
    [
      "an unknown role",
      [draft, "--role", "x", "--source", "y"],
      "--role: expected one of main-bonding-jumper",
    ],
    ["no source", [draft, "--role", "main-bonding-jumper"], "--source: expected"],
    [
      "an unknown standing",
      [draft, "--role", roleIds[0], "--source", "y", "--standing", "z"],
      "--standing: expected",
    ],
    ["an unknown option", [draft, "--kind", "x"], "--kind"],
  ])("is not begun with %s", (_, args, words) => {
    const { exitCode, said } = run(...args);
    expect({ exitCode, said }).toMatchObject({ exitCode: 2, said: expect.stringContaining(words) });
    expect(said).toContain("usage:");
  });

  it("takes of several forms the first, and leaves nothing that would pass", () => {
    const defs = { size: { type: "string" } };
    const node = {
      type: "object",
      required: ["a", "b", "c", "d", "e"],
      properties: {
        a: { $ref: "#/$defs/size" },
        b: { oneOf: [{ const: 1 }, { const: 2 }] },
        c: { type: "array", items: { type: "integer" } },
        d: { enum: ["x", "y"] },
        e: { type: "boolean" },
        f: { type: "string" },
      },
    };
    expect(skeletonOf(node, defs)).toEqual({ a: "", b: 1, c: [0], d: "x|y", e: "true|false" });
    expect(() => skeletonOf({ $ref: "#/$defs/none" }, defs)).toThrow("no definition none");
  });
});

import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { isDeepStrictEqual } from "node:util";
import { Ajv2020 } from "ajv/dist/2020.js";
import { corpusCases, judgeCase, runCorpus } from "bondmil/corpus";
import { afterAll, describe, expect, it } from "vitest";
import { readDefaults, withDefaults } from "../../corpus/tools/flat/defaults.js";
import { flatFields, flatLines } from "../../corpus/tools/flat/lines.js";
import { answerLine } from "../../corpus/tools/pipe/answer-lines.js";
import { library } from "../../corpus/tools/runner/library.js";
import { entriesOf } from "../../corpus/tools/runner/model.js";
import { readDocuments } from "../../corpus/tools/runner/read.js";
import { validate } from "../../corpus/tools/runner/validate.js";
import { python } from "../installation/verifier.js";
import { crooked } from "./crooked.js";

const root = fileURLToPath(new URL("../..", import.meta.url));
const path = join(root, "corpus/flat/checks.jsonl");
const text = readFileSync(path, "utf8");
const lines = text
  .trimEnd()
  .split("\n")
  .map((line) => JSON.parse(line));
const { corpus } = validate(readDocuments());
const defaults = readDefaults();
const cases = corpusCases();

describe("the flat file", () => {
  it("is fresh", () => {
    expect(flatLines(entriesOf(corpus ?? { files: [] }), defaults)).toBe(text);
  });

  it("has every check under every edition, with the same members", () => {
    expect(lines.map(({ id, edition }) => `${id} ${edition}`)).toEqual(
      cases.map(({ check, edition }) => `${check.id} ${edition}`),
    );
    const names = flatFields.map(([name]) => name);
    expect(new Set(lines.map((line) => Object.keys(line).join()))).toEqual(new Set([names.join()]));
  });

  it("says which answers are carried to an edition that was not read, and marks no published one so", () => {
    const carried = lines.filter((line) => line.carried);
    expect(new Set(carried.map(({ edition, standing }) => `${edition} ${standing}`))).toEqual(
      new Set(["2026 arithmetic"]),
    );
  });

  it("has beside an answer what another reading gives", () => {
    const of = (id: string, edition: string) =>
      lines.find((line) => line.id === id && line.edition === edition)?.acceptable;
    expect(of("hand-main-10-awg", "2017")).toEqual([
      { reading: "cap-on-small-supplies", alternative: "large-supplies-only", expected: { size: "8 AWG" } },
    ]);
    expect(of("hand-main-three-aught", "2017")).toEqual([]);
  });

  it("asks the same with the defaults in it", () => {
    const told = lines.map(({ role, edition, input }) => library({ role, edition, input }));
    expect(told).toEqual(cases.map(({ question }) => library(question)));
  });
});

describe("the defaults as data", () => {
  it("keep their schema", () => {
    const read = (name: string) => JSON.parse(readFileSync(join(root, "corpus", name), "utf8"));
    const ajv = new Ajv2020({ strictRequired: false });
    expect(ajv.validate(read("schema/defaults.schema.json"), read("flat/defaults.json"))).toBe(true);
  });

  it("act, each of them, somewhere in the corpus", () => {
    // Defaults of members that no check has had a reason for yet.
    const without = ["supply-side-bonding-jumper: ungrounded", "water-piping-bonding-jumper: isElectrode"];
    const idle = defaults.filter((_, at) => {
      const upTo = (end: number) => (one: (typeof cases)[number]) =>
        withDefaults(one.role, one.question.input, defaults.slice(0, end));
      return cases.every((one) => isDeepStrictEqual(upTo(at)(one), upTo(at + 1)(one)));
    });
    expect(without).toEqual(expect.arrayContaining(idle.map(({ roles, at }) => `${roles.join()}: ${at}`)));
  });

  it("leave what an input says, and what it has no place for", () => {
    const input = { conductor: { material: "copper" }, temperature: 60 };
    expect(withDefaults("main-bonding-jumper", input, defaults)).toEqual({
      conductor: { material: "copper", form: "wire" },
      temperature: 60,
    });
    const derived = { system: "separately-derived", conductor: {}, load: { amperes: 1 } };
    expect(withDefaults("grounded-conductor", derived, defaults)).toMatchObject({
      load: { listedFor75: false },
    });
    expect(withDefaults("water-piping-bonding-jumper", { system: "service" }, defaults)).toEqual({
      system: "service",
    });
  });
});

describe("a pipe", () => {
  it("has an answer for every line", () => {
    expect(JSON.parse(answerLine(JSON.stringify(cases[0]?.question), library))).toEqual(
      JSON.parse(JSON.stringify(library(cases[0]?.question as never))),
    );
    expect(JSON.parse(answerLine("{", library))).toMatchObject({
      thrown: expect.stringContaining("no JSON"),
    });
    expect(JSON.parse(answerLine('{"role":"none"}', library))).not.toHaveProperty("size");
  });
});

describe.skipIf(python.isMissing)(`the runner in Python${python.because}`, () => {
  const temp = mkdtempSync(join(tmpdir(), "bondmil-runner-"));
  afterAll(() => rmSync(temp, { recursive: true, force: true }));
  const run = (...args: readonly string[]) => {
    const runner = join(root, "corpus/tools/runner-in-python/run.py");
    const { status, stdout, stderr } = spawnSync("python3", [runner, ...args], {
      cwd: root,
      encoding: "utf8",
      maxBuffer: 100_000_000,
    });
    return { status, stdout, stderr };
  };
  const node = process.execPath;
  const counts = (stdout: string, role: string) =>
    new RegExp(`^${role} +([0-9]+) +([0-9]+) +([0-9]+) +([0-9]+)$`, "m").exec(stdout)?.slice(1).map(Number);

  it("is plain and short", () => {
    const source = readFileSync(join(root, "corpus/tools/runner-in-python/run.py"), "utf8");
    expect(source.split("\n").length).toBeLessThan(150);
  });

  it("meets this library behind a pipe in every line", () => {
    const { status, stdout } = run(path, "--", node, "--import", "tsx", "corpus/tools/pipe/library.ts");
    expect(counts(stdout, "all")).toEqual([lines.length, 0, 0, 0]);
    expect(status).toBe(0);
  });

  it("judges as the runner in TypeScript does, whatever is answered", () => {
    const { status, stdout } = run(path, "--", node, "--import", "tsx", "tests/corpus/crooked.ts");
    expect(status).toBe(1);
    const verdicts = cases.map((one, number) => judgeCase(one, crooked(number)).verdict);
    for (const role of new Set(cases.map((one) => one.role))) {
      const of = (verdict: string) =>
        verdicts.filter((one, number) => one === verdict && cases[number]?.role === role).length;
      expect([role, counts(stdout, role)]).toEqual([
        role,
        [of("met"), of("missed"), of("changed-side"), of("unanswered")],
      ]);
    }
    expect(new Set(verdicts)).toEqual(new Set(["met", "missed", "changed-side", "unanswered"]));
  });

  it("accepts another reading where it is told to", () => {
    const program = join(temp, "eight.py");
    writeFileSync(program, 'import sys\nfor line in sys.stdin:\n    print(\'{"size": "8 AWG"}\')\n');
    const of = (...more: readonly string[]) =>
      run(path, "--id", "hand-main-10-awg", "--edition", "2017", ...more, "--", "python3", program).status;
    expect([of(), of("--open-readings")]).toEqual([1, 0]);
  });

  it("judges a program in another language, and narrows to what is asked for", () => {
    const program = join(temp, "always-six.py");
    writeFileSync(
      program,
      'import sys\nfor line in sys.stdin:\n    print(\'{"size": "6 AWG"}\' if "intersystem" in line else "null")\n',
    );
    const filter = ["--role", "intersystem-bonding-conductor", "--standing", "cited"];
    const rows = runCorpus(() => ({ size: "6 AWG" }), {
      role: "intersystem-bonding-conductor",
      standing: "cited",
    });
    const { stdout, status } = run(path, ...filter, "--", "python3", program);
    const missed = rows.filter(({ verdict }) => verdict === "missed").length;
    expect(missed).toBeGreaterThan(0);
    expect(counts(stdout, "all")).toEqual([rows.length - missed, missed, 0, 0]);
    expect(status).toBe(1);
    const given = run(path, "--voice", "reply", "--assumed", "none", "--", "python3", program);
    const of = lines.filter(({ voice, assumed }) => voice === "reply" && assumed.length === 0);
    expect(counts(given.stdout, "all")?.reduce((sum, one) => sum + one)).toBe(of.length);
  });

  it.each([
    ["no command", [path], "run.py checks.jsonl"],
    ["a command that is not there", [path, "--", "no-such-program"], "no-such-program"],
    ["a program that ends early", [path, "--", "true"], "0 answers"],
    [
      "a program that says something else",
      [path, "--id", "quiz-50-amperes", "--", "cat", "/etc/hostname"],
      "run.py:",
    ],
    ["nothing to ask", [path, "--id", "none", "--", "cat"], "no check matches"],
    ["a file that is not there", ["none.jsonl", "--", "cat"], "none.jsonl"],
  ])("exits with 2 for %s", (_, args, said) => {
    const { status, stderr } = run(...args);
    expect([status, stderr]).toEqual([2, expect.stringContaining(said)]);
  });
});

import {
  type CheckFinding,
  checkOf,
  type FoundConductor,
  type Installation,
  readInstallation,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { exitCodes } from "../../src/command/exit-codes.js";
import { piece } from "../installation/found.js";
import { demo, installation, service } from "../installation/installations.js";
import { runHere } from "./run-here.js";

type FindingKind = CheckFinding["kind"];

const shop = "docs/installations/shop.json";
const bare = installation({ services: [service()] });
const withoutElectrode = installation({ services: [service({ electrodes: [] })] });
const { installed: _, ...store } = demo("cold-store");

/** A found conductor beside a rest that is as scheduled. */
const besides = (drawn: Installation, found: FoundConductor): Installation => ({
  ...drawn,
  installed: { rest: "as-scheduled", found: [found] },
});

const jumper = "main-bonding-jumper D1";
// The code names copper for this conductor.
const tied: Installation = {
  ...bare,
  intersystem: [{ id: "I1", at: "D1", termination: "apart" }],
  existing: [{ id: "roof" }],
};
const tie = piece("intersystem-bonding-conductor I1", "500 kcmil", { material: "aluminum" });
const lone = { ...piece("equipment-bonding-jumper D1", "4 AWG"), name: "green wire" };

describe("a check ends by its findings", () => {
  it.each<readonly [finding: FindingKind | undefined, code: number, drawn: Installation]>([
    [undefined, 0, { ...bare, installed: { rest: "as-scheduled" } }],
    [undefined, 0, besides(bare, piece(jumper, "500 kcmil"))],
    [undefined, 1, bare],
    // Without an electrode nothing that is listed is wrong, but what is drawn is forbidden.
    [undefined, 1, { ...withoutElectrode, installed: { rest: "as-scheduled" } }],
    ["short", 1, besides(bare, piece(jumper, "14 AWG"))],
    ["too-few", 1, besides(store, piece("grounded-conductor lateral", "500 kcmil"))],
    ["missing", 1, { ...bare, installed: { asScheduled: ["R1", "E1"] } }],
    ["wrong-material", 1, besides(tied, tie)],
    ["wrong-place", 1, besides(tied, { ...tie, size: "6 AWG", material: "copper", at: "roof" })],
    ["not-in-schedule", 1, besides(bare, lone)],
  ])("with %s: %i", async (finding, code, drawn) => {
    const input = JSON.stringify(drawn);
    const kinds = checkOf(readInstallation(input)).findings.map(({ kind }) => kind);
    expect(kinds).toEqual(finding === undefined ? [] : [finding]);
    expect((await runHere(["check"], { input })).code).toBe(code);
  });
});

describe("every answer", () => {
  it.each([
    ["schedule", ["text", "markdown", "csv", "json", "html"]],
    ["report", ["html", "markdown", "svg"]],
    ["check", ["text", "markdown", "csv", "json", "html"]],
    ["compare", ["text", "markdown", "csv", "json", "html"]],
  ] as const)("of %s ends with one line break and its code, in each format", async (name, formats) => {
    for (const format of formats) {
      const { code, output } = await runHere([name, shop, "--as", format]);
      expect([name, format, code]).toEqual([name, format, name === "check" ? 1 : 0]);
      expect([format, /[^\n]\n$/.test(output)]).toEqual([format, true]);
    }
    expect((await runHere(["report", shop, "--as", "svg"])).output.startsWith("<svg")).toBe(true);
  });

  it("is fitted to a terminal where it is for reading, and only there", async () => {
    const columns = 60;
    const plain = await runHere(["schedule", shop, "--as", "json"]);
    expect(await runHere(["schedule", shop, "--as", "json"], { columns })).toEqual(plain);
    const csv = await runHere(["schedule", shop, "--as", "csv"]);
    expect(await runHere(["schedule", shop, "--as", "csv"], { columns })).toEqual(csv);
    const { output } = await runHere(["help"], { columns });
    expect(Math.max(...output.split("\n").map(({ length }) => length))).toBeLessThanOrEqual(columns);
    const unfitted = await runHere(["help"]);
    expect(Math.max(...unfitted.output.split("\n").map(({ length }) => length))).toBeGreaterThan(columns);
  });
});

describe("every complaint", () => {
  it("names what is refused, and is fitted to a terminal", async () => {
    const open = async function* () {
      yield Buffer.from('{"format":1}');
    };
    const { code, errors } = await runHere(["schedule", "barn.json"], { open });
    expect([code, errors]).toEqual([
      2,
      expect.stringMatching(/^bondmil: barn\.json is refused, 3 things are wrong:\n/),
    ]);
    const narrow = await runHere(["schedule", "barn.json"], {
      open,
      errorColumns: 60,
      environment: { NO_COLOR: "1" },
    });
    const lengths = narrow.errors.split("\n").map(({ length }) => length);
    expect(Math.max(...lengths)).toBeLessThanOrEqual(60);
    expect(narrow.errors.split("\n").length).toBeGreaterThan(errors.split("\n").length);
    const one = await runHere(["schedule"], { input: "{" });
    expect(one.errors).toMatch(/^bondmil: standard input is refused, one thing is wrong:\n {2}the whole: /);
  });

  it("says once where more is told", async () => {
    const { errors } = await runHere(["schedul"]);
    expect(errors).toBe(
      'bondmil: there is no subcommand "schedul"; did you mean schedule? See bondmil --help.\n',
    );
    const none = await runHere(["zzzzzzzz"]);
    expect(none.errors).toBe(
      'bondmil: there is no subcommand "zzzzzzzz"; there are begin, schedule, report, check, compare, supplies, size, sweep, stream, corpus. See bondmil --help.\n',
    );
  });

  it("of a defect shows where it is", async () => {
    const open = () => {
      throw new TypeError("odd");
    };
    const { code, errors } = await runHere(["schedule", "a.json"], { open });
    expect(code).toBe(exitCodes.defect.code);
    expect(errors).toMatch(/^bondmil: this is a defect of bondmil, [^\n]*\nTypeError: odd\n +at /);
  });
});

describe("an option", () => {
  it("takes what starts like an option only with an equals sign", async () => {
    const seen: string[] = [];
    const open = (path: string) => {
      seen.push(path);
      return (async function* () {
        yield Buffer.from("[");
      })();
    };
    const words = ["compare", "--over", "amendments"];
    const apart = await runHere([...words, "--amendments", "--as", "csv"], { open });
    expect([apart.code, apart.errors]).toEqual([
      3,
      expect.stringContaining("--amendments requires a value: a file"),
    ]);
    const joined = await runHere([...words, "--amendments=--as"], { open });
    expect([joined.code, seen]).toEqual([2, ["--as"]]);
    expect(joined.errors).toMatch(/^bondmil: --as is not JSON: (?!SyntaxError)/);
  });

  it("leaves a path to be read where standard input is a terminal", async () => {
    expect((await runHere(["schedule", shop], { inputIsTerminal: true })).code).toBe(0);
  });
});

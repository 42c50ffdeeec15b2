import { Readable } from "node:stream";
import {
  type Check,
  checkOf,
  type InstallationComparison,
  readInstallation,
  render,
  type Schedule,
  scheduleDocument,
  scheduleOf,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { exitCodes } from "../../src/command/exit-codes.js";
import { subcommands } from "../../src/command/subcommands.js";
import { conductorName } from "../../src/installation/conductor-names.js";
import { foundAsScheduled } from "../installation/found.js";
import { demo, demoNames, installation, service } from "../installation/installations.js";
import { runHere } from "./run-here.js";

const shop = "docs/installations/shop.json";
const tall = (name: string) => `docs/installations/${name}.json`;

/** The rows of a CSV text, by a reader of its own: quotes doubled, line breaks inside of quotes kept. */
function csvRows(text: string): readonly (readonly string[])[] {
  const rows: string[][] = [[""]];
  let quoted = false;
  for (let i = 0; i < text.length; i += 1) {
    const row = rows.at(-1) as string[];
    const letter = text[i] as string;
    if (quoted && letter === '"' && text[i + 1] === '"') {
      row[row.length - 1] += '"';
      i += 1;
    } else if (letter === '"') quoted = !quoted;
    else if (!quoted && letter === ",") row.push("");
    else if (!quoted && letter === "\r" && text[i + 1] === "\n") {
      rows.push([""]);
      i += 1;
    } else row[row.length - 1] += letter;
  }
  expect(rows.pop()).toEqual([""]);
  return rows;
}

describe("bondmil schedule", () => {
  it.each(demoNames)("writes %s in each format", async (name) => {
    const schedule = scheduleOf(demo(name));
    const text = await runHere(["schedule", tall(name)]);
    expect(text).toEqual({ code: 0, output: render(scheduleDocument(schedule), { as: "text" }), errors: "" });
    const json = await runHere(["schedule", tall(name), "--as", "json"]);
    expect(JSON.parse(json.output)).toEqual(schedule);
    const [head, ...rows] = csvRows((await runHere(["schedule", tall(name), "--as=csv"])).output);
    expect(head?.slice(0, 2)).toEqual(["id", "role"]);
    expect(rows.map(([id]) => id)).toEqual(schedule.conductors.map(({ id }) => id));
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([head?.length]));
    const markdown = await runHere(["schedule", tall(name), "--as", "markdown"]);
    for (const one of schedule.conductors) expect(markdown.output).toContain(`| ${conductorName(one)} |`);
    expect(markdown.output).toContain(`| Fingerprint | ${schedule.fingerprint} |`);
  });

  it("names the place, who prepared it and when, in every paper", async () => {
    const by = ["--place", "12 Mill Road", "--prepared-by", "J. Doe", "--date=31 January 2026"];
    for (const words of [["schedule"], ["report"], ["check"], ["compare", "--editions", "2017"]]) {
      const { output, errors } = await runHere([words[0] ?? "", shop, ...words.slice(1), ...by]);
      expect([errors, output]).toEqual(["", expect.stringContaining("J. Doe")]);
      expect(output).toContain("31 January 2026");
      expect(output).toContain("12 Mill Road");
    }
    const blank = await runHere(["schedule", shop, "--date", " "]);
    expect([blank.errors, blank.output.includes("Date")]).toEqual(["", false]);
  });

  it("reads standard input, with a byte order mark or without", async () => {
    const input = JSON.stringify(demo("shop"));
    const { output } = await runHere(["schedule", shop]);
    expect((await runHere(["schedule"], { input })).output).toBe(output);
    expect((await runHere(["schedule", "-"], { input: `\ufeff${input}` })).output).toBe(output);
  });

  it("refuses an installation with every path and what to do", async () => {
    const input = '{"format":1,"title":"Barn","code":{"yeer":"2020"}}';
    const { code, output, errors } = await runHere(["schedule"], { input });
    expect([code, output]).toEqual([exitCodes.refused.code, ""]);
    expect(errors).toContain("standard input is refused, 3 things are wrong:");
    for (const path of ["code.year", "code.yeer", "materials"]) expect(errors).toContain(`\n  ${path}: `);
    expect(errors).toContain('did you mean "year"?');
    const broken = await runHere(["schedule"], { input: "{" });
    expect([broken.code, broken.errors]).toEqual([
      2,
      expect.stringContaining("the whole: expected JSON text"),
    ]);
    const latin = await runHere(["schedule"], { input: [Uint8Array.of(0xff)] });
    expect([latin.code, latin.errors]).toEqual([2, expect.stringContaining("save it as UTF-8")]);
  });

  it("keeps spreadsheets from computing what an installation names", async () => {
    const runs = [
      {
        id: '=1+"1",2',
        from: "U1",
        to: "-D1",
        supply: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] },
        raceways: { count: 1, kind: "nonmetallic" },
      },
    ];
    const disconnects = [{ id: "-D1", designation: "service-disconnect", amperes: 400 }];
    const input = JSON.stringify(
      installation({
        services: [service({ runs, disconnects, electrodes: [] } as never)],
        circuits: [{ id: "C1", from: "-D1", to: "-pump", device: { amperes: 20 }, wiring: "raceway" }],
      }),
    );
    const { output } = await runHere(["schedule", "--as", "csv"], { input });
    const rows = csvRows(output);
    const cells = rows.flat();
    expect(cells).toContain("'-pump");
    expect(cells).toContain('grounded-conductor =1+"1",2');
    expect(cells.filter((cell) => /^[=+@-]/.test(cell))).toEqual([]);
  });
});

describe("bondmil check", () => {
  const installed = (size: string): string => {
    const bare = installation({ services: [service()] });
    const found = foundAsScheduled(bare).map((one) => ({ ...one, size }));
    return JSON.stringify({ ...bare, installed: { found } });
  };

  it("ends with 0 where everything holds and with 1 where something does not", async () => {
    for (const [size, code] of [
      ["500 kcmil", 0],
      ["14 AWG", 1],
    ] as const) {
      const input = installed(size);
      const ran = await runHere(["check", "--as", "json"], { input });
      expect(ran.code).toBe(code);
      const check = checkOf(readInstallation(input));
      expect(JSON.parse(ran.output) as Check).toEqual(check);
      const rows = csvRows((await runHere(["check", "--as", "csv"], { input })).output);
      expect(rows.slice(1).map(([, , id, verdict]) => [id, verdict])).toEqual(
        check.conductors.map(({ id, verdict }) => [id, verdict]),
      );
      const { output } = await runHere(["check", "--as", "markdown"], { input });
      expect(output).toContain(
        code === 0 ? "**No findings.** 3 of 3 as required" : "| SHORT | main bonding jumper D1 |",
      );
    }
    const missing = await runHere(["check", shop]);
    expect([missing.code, missing.output]).toEqual([
      1,
      expect.stringContaining("Nothing is listed as installed."),
    ]);
  });

  it("marks findings by color on a terminal only, and not against NO_COLOR", async () => {
    const world = { input: installed("14 AWG"), columns: 100 };
    const red = "\u001b[31mSHORT\u001b[0m: main bonding jumper D1";
    expect((await runHere(["check"], world)).output).toContain(red);
    for (const environment of [{ NO_COLOR: "1" }, { TERM: "dumb" }]) {
      expect((await runHere(["check"], { ...world, environment })).output).not.toContain("\u001b");
    }
    expect((await runHere(["check"], { input: world.input })).output).not.toContain("\u001b");
    expect((await runHere(["check", "--as", "json"], world)).output).not.toContain("\u001b");
  });
});

describe("bondmil compare", () => {
  const compared = async (...words: readonly string[]) => {
    const ran = await runHere(["compare", tall("cold-store"), "--as", "json", ...words]);
    expect(ran.code).toBe(0);
    return (JSON.parse(ran.output) as InstallationComparison).variants.map(
      ({ key, change }) => `${key} ${change.kind}`,
    );
  };

  it("takes editions, readings and arrangements", async () => {
    expect(await compared("--editions", "2020,2014")).toEqual(["2020 edition", "2014 edition"]);
    expect(await compared()).toHaveLength(7);
    expect((await compared("--over", "readings")).slice(0, 2)).toEqual(["A as-read", "B reading"]);
    expect((await compared("--over", "arrangements"))[0]).toBe("A as-drawn");
  });

  it("takes amendments from a file", async () => {
    const citation = { jurisdiction: "Example County", section: "Sec. 12-3" };
    const floor = { kind: "floor", role: "grounding-electrode-conductor", copper: "2/0 AWG", citation };
    const withFile = (text: string) => ({
      input: JSON.stringify(demo("shop")),
      open: () => Readable.from([Buffer.from(text)]),
    });
    const words = ["compare", "--over", "amendments", "--amendments", "county.json"];
    const ran = await runHere(words, withFile(JSON.stringify([floor])));
    expect([ran.code, ran.output]).toEqual([0, expect.stringContaining("2/0 AWG Cu +")]);
    const unknown = await runHere(words, withFile('[{"kind":"wish"}]'));
    expect([unknown.code, unknown.errors]).toEqual([2, expect.stringContaining("[0].kind")]);
    const broken = await runHere(words, withFile("["));
    expect([broken.code, broken.errors]).toEqual([2, expect.stringContaining("county.json is not JSON")]);
    const none = await runHere(["compare", shop, "--over", "amendments"]);
    expect([none.code, none.errors]).toEqual([2, expect.stringContaining("code.amendments: ")]);
  });

  it("writes one row for each conductor in each column, and a table in text and Markdown", async () => {
    const { output } = await runHere(["compare", tall("print-works"), "--as", "csv"]);
    const [head = [], ...rows] = csvRows(output);
    const json = JSON.parse(
      (await runHere(["compare", tall("print-works"), "--as", "json"])).output,
    ) as InstallationComparison;
    expect(rows).toHaveLength(json.conductors.length * json.variants.length);
    const cell = (row: readonly string[], name: string) => row[head.indexOf(name)];
    const pipe = rows.filter((row) => cell(row, "id") === "water-piping-bonding-jumper cold water");
    expect(pipe.map((row) => cell(row, "size"))).toEqual([
      ...["3/0 AWG", "3/0 AWG", "3/0 AWG", "400 kcmil"],
      ...["3/0 AWG", "3/0 AWG", "3/0 AWG"],
    ]);
    const markdown = await runHere(["compare", tall("print-works"), "--as", "markdown"]);
    expect(markdown.output).toContain(
      "| water piping bonding jumper cold water \\[250.104(A)(1)\\] | 3/0 AWG Cu | 3/0 AWG Cu | 3/0 AWG Cu | 400 kcmil Cu + | 3/0 AWG Cu - | 3/0 AWG Cu | 3/0 AWG Cu |",
    );
  });

  it("refuses an installation only if every column does", async () => {
    const some = await runHere(["compare", tall("cold-store"), "--editions", "2014,2017"]);
    expect([some.code, some.output]).toEqual([
      0,
      expect.stringContaining("2014, refused: NFPA 70-2014; refused"),
    ]);
    const all = await runHere(["compare", tall("cold-store"), "--editions", "2011,2014"]);
    expect(all.code).toBe(2);
  });
});

describe("a terminal", () => {
  const visible = (line: string): number =>
    // biome-ignore lint/suspicious/noControlCharactersInRegex: color is not seen
    [...line.replace(/\u001b\[\d+m/g, "")].length;

  it.each([
    [80, 80],
    [200, 200],
  ])("of %d letters gets lines of at most %d", async (columns, most) => {
    for (const words of [
      ["schedule", tall("print-works")],
      ["check", tall("print-works")],
      ["compare", tall("print-works")],
      ["compare", tall("cold-store"), "--over", "readings"],
      ["--help"],
      ["compare", "--help"],
    ]) {
      const lengths = (await runHere(words, { columns })).output.split("\n").map(visible);
      expect(Math.max(...lengths)).toBeLessThanOrEqual(most);
    }
  });

  it("is not given orders by what an installation names", async () => {
    const evil = { ...demo("shop"), title: "a\u001b[2Jb\u009bc\u202ed" };
    for (const words of [["schedule"], ["check"], ["compare"]]) {
      const { output } = await runHere(words, { input: JSON.stringify(evil) });
      expect(output).toContain("a\\u001b[2Jb\\u009bc\\u202ed");
    }
    const { errors } = await runHere(["schedule"], { input: JSON.stringify({ ...evil, "\u001b[2J": 1 }) });
    expect(errors).not.toContain("\u001b");
  });
});

describe("the command line", () => {
  it("is answered by help and version, without anything else", async () => {
    for (const words of [[], ["--help"], ["-h"], ["help"]]) {
      const { code, output, errors } = await runHere(words);
      expect([code, errors]).toEqual([0, ""]);
      for (const { name } of subcommands) expect(output).toContain(`\n  ${name}`);
      for (const { code: number } of Object.values(exitCodes)) expect(output).toContain(`\n  ${number} `);
    }
    for (const { name, options } of subcommands) {
      const { output } = await runHere([name, "--help"]);
      expect((await runHere(["help", name])).output).toBe(output);
      for (const option of options) expect(output).toContain(`\n  --${option.name}`);
    }
    expect(await runHere(["--version"])).toEqual({ code: 0, output: "1.2.3\n", errors: "" });
  });

  it.each([
    ["schedul", 'there is no subcommand "schedul"; did you mean schedule?'],
    ["help nothing", 'there is no subcommand "nothing"'],
    ["schedule --sa csv", 'there is no option "--sa"'],
    ["schedule --as", "--as requires a value: one of text, markdown, csv, json"],
    ["schedule --as pdf", '--as does not know "pdf": one of text'],
    ["schedule --as csv --as json", "--as is given twice"],
    ["schedule a.json b.json", 'one file at a time, "b.json" is one too many'],
    ["compare --editions 2020,1999", '--editions does not know "1999": some of 2008'],
    ["compare a.json --over readings --editions 2020", "--editions is for --over editions only"],
    ["compare a.json --amendments x.json", "--amendments is for --over amendments only"],
    ["stream a.json", "stream takes no path"],
    ["stream --strict=no", "--strict takes no value"],
    ["stream --first-line 0", '--first-line requires a whole number from 1, not "0"'],
  ])("%s is told what is wrong with it", async (words, message) => {
    const { code, output, errors } = await runHere(words.split(" "));
    expect([code, output]).toEqual([exitCodes.usage.code, ""]);
    expect(errors).toContain(`bondmil: ${message}`);
    expect(errors).toContain("--help.");
  });

  it("waits for nobody at a terminal", async () => {
    for (const words of [["schedule"], ["stream"]]) {
      expect((await runHere(words, { inputIsTerminal: true })).code).toBe(exitCodes.usage.code);
    }
  });

  it("tells of a file that cannot be read, and of a defect", async () => {
    const gone = await runHere(["schedule", "no/such.json"]);
    expect([gone.code, gone.errors]).toEqual([4, expect.stringContaining("no/such.json cannot be read")]);
    const defect = await runHere(["help", 7 as unknown as string]);
    expect([defect.code, defect.errors]).toEqual([
      5,
      expect.stringContaining("this is a defect of bondmil, please report it"),
    ]);
  });

  it("gives the schedule that the library gives", async () => {
    const { output } = await runHere(["schedule", shop, "--as", "json"]);
    expect((JSON.parse(output) as Schedule).fingerprint).toBe(scheduleOf(demo("shop")).fingerprint);
  });
});

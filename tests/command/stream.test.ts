import { spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import {
  checkOf,
  type Issue,
  intersystemBondingConductor,
  mainBondingJumper,
  readInstallation,
  type Schedule,
  scheduleDocument,
  scheduleOf,
  size,
  sweep,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { linesOf } from "../../src/command/lines.js";
import { mostBytes } from "../../src/command/source.js";
import { answerLines, type StreamOptions } from "../../src/command/stream.js";
import { demo, installation, service } from "../installation/installations.js";
import { answers, need } from "../needs.js";
import { root, runHere } from "./run-here.js";

const barn = JSON.stringify(installation({ services: [service()] }));
const titled = (title: string): string =>
  JSON.stringify({ ...installation({ services: [service()] }), title });

interface Answered {
  readonly line: number;
  readonly schedule?: Schedule;
  readonly result?: unknown;
  readonly rows?: unknown;
  readonly error?: { readonly issues: readonly Issue[] };
}

const answersIn = (output: string): readonly Answered[] =>
  output
    .trimEnd()
    .split("\n")
    .map((line) => JSON.parse(line) as Answered);

async function* pieces(bytes: Uint8Array, cuts: readonly number[]): AsyncGenerator<Uint8Array> {
  let start = 0;
  for (const cut of [...cuts].sort((a, b) => a - b)) {
    yield bytes.subarray(start, Math.max(start, cut));
    start = Math.max(start, cut);
  }
  yield bytes.subarray(start);
}

async function collected<T>(items: AsyncIterable<T>): Promise<readonly T[]> {
  const all: T[] = [];
  for await (const item of items) all.push(item);
  return all;
}

describe("the lines of a stream", () => {
  it("are the same however the bytes arrive", async () => {
    const text = fc
      .array(fc.constantFrom("a", "bc", "\u00e9", "\u{1f50c}", "\n", "\r\n", " "))
      .map((all) => all.join(""));
    const cuts = fc.array(fc.nat(40));
    await fc.assert(
      fc.asyncProperty(text, cuts, async (written, at) => {
        const found = (await collected(linesOf(pieces(Buffer.from(written), at), 1000))).flat();
        const whole = written.split("\n");
        if (whole.at(-1) === "") whole.pop();
        expect(found.map((line) => Buffer.from(line ?? []).toString())).toEqual(whole);
      }),
    );
  });

  it("leave out what is too long, and go on behind it", async () => {
    const text = Buffer.from("12345\n123456\n\n1234567890");
    const found = (await collected(linesOf(pieces(text, [3, 8, 9, 18]), 5))).flat();
    expect(found.map((line) => (line === null ? null : Buffer.from(line).toString()))).toEqual([
      "12345",
      null,
      "",
      null,
    ]);
  });

  it("come together as they end in one piece, and never none", async () => {
    const text = Buffer.from("1\n2\n34\n5");
    const found = await collected(linesOf(pieces(text, [5, 6]), 5));
    expect(found.map((lines) => lines.map((line) => Buffer.from(line ?? []).toString()))).toEqual([
      ["1", "2"],
      ["34"],
      ["5"],
    ]);
  });

  it("keep nothing of one that is too long", async () => {
    const mebibyte = 2 ** 20;
    setFlagsFromString("--expose-gc");
    const collect = runInNewContext("gc") as () => void;
    const kept = (): number => {
      collect();
      return process.memoryUsage().arrayBuffers;
    };
    const before = kept();
    async function* long(): AsyncGenerator<Uint8Array> {
      for (let i = 0; i < 100; i += 1) yield new Uint8Array(mebibyte);
      expect(kept() - before).toBeLessThan(20 * mebibyte);
    }
    expect(await collected(linesOf(long(), mebibyte))).toEqual([[null]]);
  });
});

describe("the answers of a stream", () => {
  const options = { give: "rows", isFingerprinted: false, firstLine: 1 } as const;
  const answered = async (text: string, given: StreamOptions = options) =>
    collected(answerLines(pieces(Buffer.from(text), []), given));

  it("are handed on together, but no more than are worth a write", async () => {
    const [few, ...none] = await answered(`${barn}\n{\n${barn}\n`);
    expect([few?.lines, few?.refused, none]).toEqual([3, 1, []]);
    const long = "x".repeat(40_000);
    const [one] = await answered(`${titled(long)}\n`);
    const enough = Math.ceil(65_537 / (one?.text.length ?? 0));
    const parts = await answered(`${titled(long)}\n`.repeat(2 * enough));
    expect(parts.map(({ lines }) => lines)).toEqual([enough, enough]);
  });

  it("refuse a line with more letters than an installation has, wherever they are", async () => {
    const most = barn.padEnd(5_000_000);
    const parts = await answered(`${most}\n${most} \n`);
    expect(parts.map(({ refused }) => refused)).toEqual([1]);
    expect(parts[0]?.text).toContain("expected at most 5000000 characters");
  });

  it("tell a defect in the shape of what is refused", async () => {
    const [part] = await answered(barn, { ...options, give: "nothing" as never });
    const [answer] = answersIn(part?.text ?? "");
    expect(answer?.error?.issues).toEqual([
      {
        path: "",
        keys: [],
        expected: "a line of output",
        alternatives: [],
        received: "a defect",
        message: expect.stringMatching(
          /^this is a defect of bondmil, please report it with the installation: Cannot /,
        ),
      },
    ]);
  });
});

describe("bondmil stream", () => {
  it("gives one line for each line, in order, with its number, whatever is wrong", async () => {
    const input = [barn, "{", "", '{"format":1}', titled("last")].join("\n");
    const { code, output, errors } = await runHere(["stream", "--fingerprint"], { input });
    const answers = answersIn(output);
    expect([code, errors]).toEqual([0, "bondmil: 3 of 5 lines refused\n"]);
    expect(answers.map(({ line }) => line)).toEqual([1, 2, 3, 4, 5]);
    expect(answers.map(({ error }) => error?.issues[0]?.code)).toEqual([
      undefined,
      "wrong-type",
      "missing",
      "missing",
      undefined,
    ]);
    expect(answers[0]?.schedule).toEqual(scheduleOf(readInstallation(barn)));
    expect(answers[4]?.schedule?.title).toBe("last");
    expect((await runHere(["stream", "--strict"], { input })).code).toBe(2);
    expect((await runHere(["stream", "--strict"], { input: barn })).code).toBe(0);
    expect(await runHere(["stream"])).toEqual({ code: 0, output: "", errors: "" });
  });

  it("gives rows or the check, and counts from another line", async () => {
    const input = JSON.stringify(demo("shop"));
    const words = ["stream", "--give", "rows", "--first-line", "1001"];
    const { rows } = scheduleDocument(scheduleOf(readInstallation(input)));
    const marked = await runHere([...words, "--fingerprint"], { input });
    expect(JSON.parse(marked.output)).toEqual({ line: 1001, rows });
    const unmarked = await runHere(words, { input });
    expect(JSON.parse(unmarked.output)).toEqual({
      line: 1001,
      rows: rows.map(({ fingerprint: _, ...row }) => row),
    });
    const check = await runHere(["stream", "--give", "check"], { input });
    expect(JSON.parse(check.output)).toEqual({ line: 1, check: checkOf(readInstallation(input)) });
  });

  it("gives the same schedule without its fingerprints, which are given on demand", async () => {
    const { fingerprint, installationFingerprint, ...rest } = scheduleOf(readInstallation(barn));
    expect([fingerprint, installationFingerprint]).toEqual([expect.any(String), expect.any(String)]);
    const [answer] = answersIn((await runHere(["stream"], { input: barn })).output);
    expect(answer?.schedule).toEqual(rest);
  });

  it("takes questions of single conductors between installations", async () => {
    const input = {
      code: { year: "2020" },
      supply: { sets: [{ count: 2, size: "500 kcmil", material: "copper" }] },
      conductor: { material: "copper" },
    } as const;
    const tie = { code: { year: "2020" }, termination: "apart" } as const;
    const lines = [
      { role: "main-bonding-jumper", input },
      { role: "roof-jumper", input },
      { role: "main-bonding-jumper", input: { ...input, supply: {} }, more: 1 },
      { input: tie, role: "intersystem-bonding-conductor" },
    ].map((one) => JSON.stringify(one));
    const all = { input: [lines[0], barn, ...lines.slice(1)].join("\n") };
    const answers = answersIn((await runHere(["stream"], all)).output);
    expect(answers[0]?.result).toEqual(size(mainBondingJumper, input));
    expect(answers[1]?.schedule?.title).toBe("Test");
    const paths = (at: number) => answers[at]?.error?.issues.map(({ path }) => path);
    expect([paths(2), paths(3)]).toEqual([["role"], ["more", "input.supply.sets"]]);
    expect(answers[4]?.result).toEqual(size(intersystemBondingConductor, tie));
    const rows = answersIn((await runHere(["stream", "--give", "rows"], all)).output);
    const [swept] = sweep(mainBondingJumper, {
      editions: ["2020"],
      supplyMaterial: "copper",
      material: "copper",
      sizes: ["500 kcmil"],
      counts: [2],
    });
    const {
      sets: _,
      supplySize: __,
      supplyMaterial: ___,
      supplyArea: ____,
      ...columns
    } = swept ?? ({} as never);
    expect(rows[0]?.rows).toEqual([
      { role: "main-bonding-jumper", ...columns, cautions: "listed-equipment" },
    ]);
    const checks = answersIn((await runHere(["stream", "--give", "check"], all)).output);
    expect(checks[0]?.error?.issues[0]?.path).toBe("role");
  });

  it("takes lines that end with CR LF, and a byte order mark", async () => {
    const input = `\ufeff${barn}\r\n${barn}\r\n`;
    const answers = answersIn((await runHere(["stream"], { input })).output);
    expect(answers.map(({ line, schedule }) => [line, schedule?.title])).toEqual([
      [1, "Test"],
      [2, "Test"],
    ]);
  });

  it("refuses bytes that are no text, and lines without end", async () => {
    const long = Array.from({ length: 21 }, () => new Uint8Array(1_000_000).fill(0x20));
    const input = [Uint8Array.of(0xff, 0x0a), ...long, Buffer.from(`\n${barn}\n`)];
    const answers = answersIn((await runHere(["stream"], { input })).output);
    expect(answers.map(({ error }) => error?.issues.map(({ path, expected }) => [path, expected]))).toEqual([
      [["", "UTF-8 text"]],
      [["", `at most ${mostBytes} bytes`]],
      undefined,
    ]);
  });

  it("reads no further than its answers are taken", async () => {
    let read = 0;
    async function* input(): AsyncGenerator<Uint8Array> {
      for (;;) {
        read += 1;
        yield Buffer.from(`${barn}\n`);
      }
    }
    const answers = answerLines(input(), { give: "rows", isFingerprinted: false, firstLine: 1 });
    for (let taken = 1; taken <= 3; taken += 1) {
      await answers.next();
      expect(read).toBe(taken);
    }
    await answers.return(undefined);
  });

  it("shows on a terminal how far it is, and wipes it away", async () => {
    const input = Array.from({ length: 10 }, (_, i) => Buffer.from(i % 2 === 0 ? `${barn}\n` : "{\n"));
    const stream = await runHere(["stream"], { input, errorColumns: 80 });
    expect(stream.errors).toContain("\r\u001b[K3 lines, 1 refused, 10 in a second");
    expect(stream.errors.endsWith("\r\u001b[Kbondmil: 5 of 10 lines refused\n")).toBe(true);
    expect((await runHere(["stream"], { input })).errors).toBe("bondmil: 5 of 10 lines refused\n");
    const shared = await runHere(["stream"], { input, columns: 80 });
    expect(shared.errors).toBe("bondmil: 5 of 10 lines refused\n");
    expect((await runHere(["stream"], { input: barn, errorColumns: 80 })).errors).toBe("");
  });
});

const command = ["--import", "tsx", join(root, "src/command/main.ts")];
describe("the process", () => {
  it("ends quietly when its reader goes away", async () => {
    const child = spawn(process.execPath, [...command, "stream"], { cwd: root });
    const errors: string[] = [];
    child.stderr.on("data", (data: Buffer) => errors.push(data.toString()));
    child.stdin.on("error", () => {});
    const line = `${barn}\n`.repeat(100);
    const feed = (): void => {
      while (child.stdin.writable && child.stdin.write(line));
    };
    child.stdin.on("drain", feed);
    feed();
    const [first] = (await once(child.stdout, "data")) as [Buffer];
    expect(first.toString().startsWith('{"line":1,"schedule":')).toBe(true);
    child.stdout.destroy();
    const [code] = (await once(child, "exit")) as [number];
    expect([code, errors.join("")]).toEqual([0, ""]);
  });

  it("needs no more memory for a longer stream", () => {
    const lines = 3000;
    const script = `"$0" --max-old-space-size=24 "$@" stream < <(yes '${barn}' | head -n ${lines}) | wc -l`;
    const { stdout, stderr } = spawnSync("bash", ["-c", script, process.execPath, ...command], {
      cwd: root,
      encoding: "utf8",
    });
    // Kept answers end the process after some 2,700 lines.
    expect([stderr, stdout.trim()]).toEqual(["", `${lines}`]);
  });
});

const parallel = need(
  "GNU parallel",
  answers("parallel", ["--version"], /GNU parallel/i),
  "on Debian apt-get install parallel",
);

describe("GNU parallel", () => {
  it.skipIf(parallel.isMissing)(`divides a stream over two processes, in order${parallel.because}`, () => {
    const folder = mkdtempSync(join(tmpdir(), "bondmil-parallel-"));
    const lines = Array.from({ length: 40 }, (_, i) => (i === 16 ? "{" : titled(`drawing ${i + 1}`)));
    const log = join(folder, "jobs");
    const words = [process.execPath, ...command, "stream", "--first-line"].join(" ");
    const number = "{= $_ = (seq() - 1) * 10 + 1 =}";
    const { status, stdout } = spawnSync(
      "parallel",
      ["--pipe", "-N", "10", "-j", "2", "--keep-order", "--joblog", log, `${words} ${number}`],
      { cwd: root, input: lines.join("\n"), encoding: "utf8" },
    );
    const jobs = readFileSync(log, "utf8").trimEnd().split("\n").slice(1);
    rmSync(folder, { recursive: true });
    expect([status, jobs.length]).toEqual([0, 4]);
    const answers = answersIn(stdout);
    expect(answers.map(({ line }) => line)).toEqual(lines.map((_, i) => i + 1));
    expect(answers.map(({ schedule }) => schedule?.title)).toEqual(
      lines.map((_, i) => (i === 16 ? undefined : `drawing ${i + 1}`)),
    );
  });
});

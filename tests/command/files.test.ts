import { describe, expect, it } from "vitest";
import { exitCodes } from "../../src/command/exit-codes.js";
import { mostBytes } from "../../src/command/source.js";
import { demo } from "../installation/installations.js";
import { runHere } from "./run-here.js";

const shop = "docs/installations/shop.json";
const barn = JSON.stringify(demo("shop"));
const error = (code: string): NodeJS.ErrnoException => Object.assign(new Error(`${code}: as told`), { code });
const full = (where: "output" | "errors") => (to: string) => (to === where ? error("ENOSPC") : undefined);
const gone = (where: "output" | "errors") => (to: string) => (to === where ? error("EPIPE") : undefined);

describe("an output that fails", () => {
  it.each([
    ["schedule", shop],
    ["report", shop],
    ["check", shop],
    ["compare", shop],
    ["stream"],
    ["--help"],
    ["--version"],
  ])("is told, with a code of its own: %s", async (...words) => {
    const ran = await runHere(words, { input: barn, hinders: full("output") });
    const errors = "bondmil: standard output cannot be written, what is there is not all: ENOSPC: as told\n";
    expect(ran).toEqual({ code: exitCodes.output.code, output: "", errors });
  });

  it("is nothing to tell where the reader went away", async () => {
    for (const words of [["schedule", shop], ["check", shop], ["stream", "--strict"], ["--version"]]) {
      const ran = await runHere(words, { input: "{", hinders: gone("output") });
      expect(ran).toEqual({ code: 0, output: "", errors: "" });
    }
  });

  it("is told where it is a file to begin with", async () => {
    const create = async () => {
      throw error("EACCES");
    };
    expect(await runHere(["begin", "shop.json", "--edition", "2020"], { create })).toEqual({
      code: exitCodes.output.code,
      output: "",
      errors: "bondmil: shop.json cannot be written, what is there is not all: EACCES: as told\n",
    });
  });

  it("ends a stream, which reads no further", async () => {
    let read = 0;
    let ended = false;
    async function* input(): AsyncGenerator<Uint8Array> {
      try {
        while (read < 10) {
          read += 1;
          yield Buffer.from(`${barn}\n`);
        }
      } finally {
        ended = true;
      }
    }
    const hinders = (to: string, text: string) =>
      to === "output" && text.startsWith('{"line":3,') ? error("EIO") : undefined;
    const { code, output, errors } = await runHere(["stream"], { input: input(), hinders });
    expect([code, output.trimEnd().split("\n").length, read, ended]).toEqual([6, 2, 3, true]);
    expect(errors).toContain("EIO");
  });

  it("changes no other code where it is standard error", async () => {
    const codes: number[] = [];
    for (const hinders of [full("errors"), gone("errors")])
      for (const words of [
        ["schedul"],
        ["schedule", "no/such.json"],
        ["schedule"],
        ["help", 7 as never],
        ["stream", "--strict"],
      ])
        codes.push((await runHere(words, { input: "{", hinders })).code);
    // The count of refused lines is all that a stream tells of them: it may be unread, but not lost.
    expect(codes).toEqual([3, 4, 2, 5, 6, 3, 4, 2, 5, 2]);
    expect((await runHere(["stream"], { input: barn, hinders: full("errors") })).code).toBe(0);
    const unseen = { input: `${barn}\n{\n`.repeat(5), errorColumns: 80 };
    const alone = await runHere(["stream"], { ...unseen, hinders: gone("errors") });
    expect([alone.code, alone.output.trimEnd().split("\n").length]).toEqual([0, 10]);
    expect((await runHere(["stream"], { ...unseen, hinders: full("errors") })).code).toBe(6);
  });
});

describe("a source that cannot be read", () => {
  const tooMuch = `is refused: more than ${mostBytes} bytes are no installation; several go through bondmil stream.`;

  it("is read no further than an installation can be long", async () => {
    let taken = 0;
    let ended = false;
    async function* long(): AsyncGenerator<Uint8Array> {
      try {
        while (taken < 50) {
          taken += 1;
          yield new Uint8Array(1_000_000).fill(0x20);
        }
      } finally {
        ended = true;
      }
    }
    for (const [words, name] of [
      [["schedule"], "standard input"],
      [["schedule", "any.json"], "any.json"],
      [["compare", "--over", "amendments", "--amendments", "any.json"], "any.json"],
    ] as const) {
      taken = 0;
      ended = false;
      const ran = await runHere(words, { input: long(), open: long });
      expect(ran).toEqual({
        code: exitCodes.refused.code,
        output: "",
        errors: `bondmil: ${name} ${tooMuch}\n`,
      });
      expect([taken, ended]).toEqual([mostBytes / 1_000_000 + 1, true]);
    }
    const most = new Uint8Array(mostBytes).fill(0x78);
    const { code, errors } = await runHere(["schedule"], { input: [most] });
    expect([code, errors]).toEqual([
      2,
      expect.stringContaining("the whole: expected at most 5000000 characters"),
    ]);
  });

  it.each([
    ["ENOENT", "there is no such file"],
    ["ENOTDIR", "there is no such file"],
    ["EISDIR", "it is a directory"],
    ["EACCES", "permission is denied"],
    ["EIO", "EIO: as told"],
  ])("says why: %s", async (code, why) => {
    async function* broken(): AsyncGenerator<Uint8Array> {
      yield Buffer.from(`${barn}\n`);
      throw error(code);
    }
    for (const [words, name] of [
      [["schedule", "a.json"], "a.json"],
      [["schedule"], "standard input"],
      [["stream"], "standard input"],
      [["compare", shop, "--over", "amendments", "--amendments", "a.json"], "a.json"],
    ] as const) {
      const ran = await runHere(words, { input: broken(), open: broken });
      expect([ran.code, ran.errors]).toEqual([
        exitCodes.file.code,
        `bondmil: ${name} cannot be read: ${why}\n`,
      ]);
    }
  });

  it("is no text", async () => {
    const open = () => bytes();
    async function* bytes(): AsyncGenerator<Uint8Array> {
      yield Uint8Array.of(0x7b, 0xc3, 0x28);
    }
    const file = await runHere(["check", "a.json"], { open });
    expect(file).toEqual({
      code: 2,
      output: "",
      errors: "bondmil: a.json is not UTF-8 text; save it as UTF-8.\n",
    });
    const input = await runHere(["check"], { input: bytes() });
    expect([input.code, input.errors]).toEqual([
      2,
      "bondmil: standard input is not UTF-8 text; save it as UTF-8.\n",
    ]);
  });
});

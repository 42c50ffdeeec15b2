import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { render, reportDocument, scheduleOf } from "bondmil";
import { afterAll, describe, expect, it } from "vitest";
import { mostBytes } from "../../src/command/source.js";
import { demo } from "../installation/installations.js";
import { answers, need } from "../needs.js";
import { root } from "./run-here.js";

const shop = "docs/installations/shop.json";
const barn = JSON.stringify(demo("shop"));
const folder = mkdtempSync(join(tmpdir(), "bondmil-files-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Runs a line of a shell in which `bondmil` is the command, in a process of its own. */
function inShell(line: string): {
  readonly code: number | null;
  readonly output: string;
  readonly errors: string;
} {
  const script = `bondmil() { "$node" --import tsx "$main" "$@"; }; ${line}`;
  const env = { ...process.env, node: process.execPath, main: join(root, "src/command/main.ts"), folder };
  const { status, stdout, stderr } = spawnSync("bash", ["-c", script], { cwd: root, env, encoding: "utf8" });
  return { code: status, output: stdout, errors: stderr };
}

describe("an output of the process that fails", () => {
  const full = need("/dev/full", existsSync("/dev/full"), "a full disk is not tried");

  it.skipIf(full.isMissing)(`is noticed on a full disk${full.because}`, () => {
    const told = expect.stringContaining("bondmil: standard output cannot be written");
    expect(inShell(`bondmil schedule ${shop} > /dev/full`)).toEqual({ code: 6, output: "", errors: told });
    const lines = `${barn}\n`.repeat(3);
    writeFileSync(join(folder, "lines"), lines);
    expect(inShell('bondmil stream < "$folder/lines" > /dev/full')).toEqual({
      code: 6,
      output: "",
      errors: told,
    });
    expect(inShell("bondmil schedule no/such.json 2> /dev/full").code).toBe(4);
    expect(inShell(`bondmil schedule ${shop} 2> /dev/full`).code).toBe(0);
  });

  it("is noticed where a file takes a part only", () => {
    const whole = render(reportDocument(demo("shop")), { as: "html" });
    const cut = inShell(`ulimit -f 8; bondmil report ${shop} > "$folder/cut.html"`);
    expect(cut).toEqual({ code: 6, output: "", errors: expect.stringContaining("is not all: EFBIG") });
    const written = readFileSync(join(folder, "cut.html"), "utf8");
    expect(written.length).toBeGreaterThan(0);
    expect(whole.startsWith(written)).toBe(true);
  });

  it("is none where a file or a slow reader takes all", () => {
    const large = { ...demo("shop"), title: "a".repeat(100) };
    writeFileSync(join(folder, "lines"), `${JSON.stringify(large)}\n`.repeat(30));
    const { code, output } = inShell(
      'bondmil stream < "$folder/lines" > "$folder/file"; bondmil stream < "$folder/lines" | (sleep 1; cmp - "$folder/file" && wc -l < "$folder/file")',
    );
    expect([code, output.trim()]).toEqual([0, "30"]);
    const slow = inShell(`bondmil schedule "${shop}" --as json | (sleep 1; cat)`);
    expect(JSON.parse(slow.output)).toEqual(scheduleOf(demo("shop")));
  });
});

describe("a source of the process that has no end, or is none", () => {
  const tooMuch = `is refused: more than ${mostBytes} bytes are no installation; several go through bondmil stream.`;

  it("is a directory, a device without end, a pipe without end or a file of three gigabytes", () => {
    writeFileSync(join(folder, "large"), "");
    truncateSync(join(folder, "large"), 3 * 2 ** 30);
    const directory = [4, "cannot be read: it is a directory"] as const;
    const refused = [2, tooMuch] as const;
    for (const [line, [code, why]] of [
      ["bondmil schedule .", directory],
      ["bondmil schedule < .", directory],
      ["bondmil schedule /dev/zero", refused],
      ["bondmil schedule < /dev/zero", refused],
      ['bondmil schedule "$folder/large"', refused],
      ["yes | bondmil schedule", refused],
      ['mkfifo "$folder/pipe"; yes > "$folder/pipe" & bondmil schedule "$folder/pipe"', refused],
    ] as const)
      expect([line, inShell(line)]).toEqual([
        line,
        {
          code,
          output: "",
          errors: expect.stringMatching(new RegExp(`^bondmil: .* ${why.replaceAll(".", "\\.")}\n$`)),
        },
      ]);
  });
});

describe("a process at a terminal", () => {
  const script = need(
    "script",
    answers("script", ["--version"], /util-linux/),
    "a terminal is not tried; on Debian apt-get install bsdutils",
  );

  it.skipIf(script.isMissing)(`fits what it says, in color, and waits for nobody${script.because}`, () => {
    const line = `stty cols 60; NO_COLOR= TERM=xterm "$node" --import tsx "$main" schedule -`;
    const { code, output } = inShell(`script -qec '${line}' /dev/null < /dev/null`);
    expect([code, output.replaceAll("\r", "").split("\n").slice(0, 2)]).toEqual([
      3,
      [
        "\u001b[31mbondmil:\u001b[0m no installation is given; name its path, or send",
        "  it to standard input. To begin:",
      ],
    ]);
  });
});

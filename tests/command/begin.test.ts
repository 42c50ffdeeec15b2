import { readInstallation, scheduleOf, supplyCandidates } from "bondmil";
import { describe, expect, it } from "vitest";
import { startable } from "../../src/command/facts/of-installation.js";
import { editionYears } from "../../src/edition/edition-year.js";
import { runHere } from "./run-here.js";

describe("bondmil begin", () => {
  it.each(startable)("writes a %s that is valid in every edition and forbids nothing", async (holds) => {
    for (const year of editionYears) {
      const { code, output } = await runHere(["begin", "--edition", year, "--holds", holds]);
      expect(code).toBe(0);
      if (holds === "load") {
        expect(supplyCandidates(JSON.parse(output)).total).toBeGreaterThan(1);
        continue;
      }
      const schedule = scheduleOf(readInstallation(output));
      expect([year, schedule.edition, schedule.violations]).toEqual([year, year, []]);
      expect(schedule.conductors.length).toBeGreaterThan(3);
      expect(JSON.parse(output).$schema).toMatch(/docs\/schema\/installation\.schema\.json$/);
    }
  });

  it("writes a file that is not there, says what comes next, and never over one that is", async () => {
    const created = new Map<string, string>();
    const first = await runHere(["begin", "my shop.json", "--edition", "2017"], { created });
    expect([first.code, first.output]).toEqual([0, ""]);
    expect(first.errors).toContain("  bondmil schedule 'my shop.json'\n");
    expect(first.errors).toContain("node_modules/bondmil/docs/installation.md");
    const written = created.get("my shop.json") ?? "";
    expect(readInstallation(written).code.year).toBe("2017");
    const again = await runHere(["begin", "my shop.json", "--edition", "2020"], { created });
    expect([again.code, again.errors]).toEqual([
      6,
      "bondmil: my shop.json is there already and is left as it is; name another file.\n",
    ]);
    expect(created.get("my shop.json")).toBe(written);
  });

  it("names no edition by itself", async () => {
    const { code, output, errors } = await runHere(["begin", "shop.json"]);
    expect([code, output]).toEqual([3, ""]);
    expect(errors).toContain("--edition is required");
  });
});

describe("whoever gives nothing", () => {
  it.each([
    ["schedule", "bondmil schedule shop.json"],
    ["report", "bondmil report shop.json > shop.html"],
    ["check", "bondmil check shop.json"],
    ["compare", "bondmil compare shop.json"],
    ["supplies", "bondmil supplies feeder.json"],
    ["stream", "bondmil stream < lines.ndjson"],
  ])("to %s is taught how to begin", async (name, line) => {
    const terminal = await runHere([name], { inputIsTerminal: true });
    expect([terminal.code, terminal.output]).toEqual([3, ""]);
    expect(terminal.errors).toContain(`\n  ${line}\nSee bondmil ${name} --help.\n`);
    if (name === "stream") return;
    const empty = await runHere([name], { input: "\n" });
    expect(empty).toEqual(terminal);
  });
});

describe("a page", () => {
  it("is not poured over a terminal, which is told where to send it", async () => {
    const shop = "docs/installations/shop.json";
    for (const [words, line] of [
      [["report", shop], `bondmil report ${shop} > shop.html`],
      [["report", shop, "--as", "svg"], `bondmil report ${shop} --as svg > shop.svg`],
      [["check", shop, "--as", "html"], `bondmil check ${shop} --as html > shop.html`],
      [
        ["size", "main-bonding-jumper", "-", "--as", "html"],
        "bondmil size main-bonding-jumper - --as html > ",
      ],
    ] as const) {
      const { code, output, errors } = await runHere(words, { columns: 100, environment: { NO_COLOR: "1" } });
      expect([code, output]).toEqual([3, ""]);
      expect(errors).toContain(`send it to a file:\n  ${line}`);
    }
    const markdown = await runHere(["report", shop, "--as", "markdown"], { columns: 100 });
    expect([markdown.code, markdown.errors]).toEqual([0, ""]);
  });
});

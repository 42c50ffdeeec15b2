import {
  checkDocument,
  checkOf,
  compareInstallation,
  comparisonDocument,
  drawingAsSvg,
  drawingOf,
  render,
  reportDocument,
} from "bondmil";
import { standings, voices } from "bondmil/corpus";
import { describe, expect, it } from "vitest";
import { countable, saying } from "../../src/command/facts/of-lines.js";
import { demo } from "../installation/installations.js";
import { runHere } from "./run-here.js";

const shop = "docs/installations/shop.json";
const printWorks = "docs/installations/print-works.json";
const asked = async (...words: readonly string[]) => {
  const { code, output, errors } = await runHere(words);
  expect(errors).toBe("");
  return { code, output };
};

describe("bondmil report", () => {
  it("writes HTML by default, Markdown, and the drawing alone", async () => {
    const html = render(reportDocument(demo("shop")), { as: "html" });
    expect(await asked("report", shop)).toEqual({ code: 0, output: html });
    expect(await asked("report", shop, "--as", "html")).toEqual({ code: 0, output: html });
    expect((await asked("report", shop, "--as", "markdown")).output).toBe(
      render(reportDocument(demo("shop")), { as: "markdown" }),
    );
    expect((await asked("report", shop, "--as", "svg")).output).toBe(drawingAsSvg(drawingOf(demo("shop"))));
  });

  it("knows no format of rows", async () => {
    const { code, errors } = await runHere(["report", shop, "--as", "csv"]);
    expect(code).toBe(3);
    expect(errors).toContain("one of html, markdown, svg");
  });
});

describe("pages of the other subcommands", () => {
  it("are HTML files that load nothing", async () => {
    const installation = demo("shop");
    expect((await asked("schedule", shop, "--as", "html")).output).toBe(
      render(reportDocument(installation), { as: "html" }),
    );
    const check = await asked("check", printWorks, "--as", "html");
    expect(check.output).toBe(render(checkDocument(checkOf(demo("print-works"))), { as: "html" }));
    const wanted = { over: "editions", editions: ["2017", "2020"] } as const;
    const comparison = await asked("compare", shop, "--editions", "2017,2020", "--as", "html");
    expect(comparison.output).toBe(
      render(comparisonDocument(compareInstallation({ ...wanted, installation })), { as: "html" }),
    );
    for (const { output } of [check, comparison]) {
      expect(output).toMatch(/^<!doctype html>\n.*<(?:table|ul)\b.*<\/html>\n$/s);
      expect(output).not.toMatch(/src=|<script|<link|https?:/);
    }
  });

  it("escape what an installation names", () => {
    const title = '<script>alert("x")</script>';
    const installation = { ...demo("shop"), title };
    for (const page of [
      render(checkDocument(checkOf(installation)), { as: "html" }),
      render(comparisonDocument(compareInstallation({ over: "readings", installation })), { as: "html" }),
    ]) {
      expect(page).not.toContain("<script>");
      expect(page).toContain("&lt;script&gt;");
    }
  });
});

describe("bondmil corpus", () => {
  it("runs the published checks that the options leave", async () => {
    const { code, output } = await asked("corpus", "--role", "main-bonding-jumper", "--edition", "2023");
    expect(code).toBe(0);
    expect(output).toMatch(/By role and standing.* 0 missed\.\n$/s);
    expect(output).not.toContain("system-bonding-jumper");
  });

  it("knows the voices and standings of the corpus", async () => {
    expect(countable).toEqual(standings);
    expect(saying).toEqual(voices);
    const { code, output } = await asked("corpus", "--voice", "author", "--assumed", "none");
    expect(code).toBe(0);
    expect(output).not.toContain("keyed-answer");
  });

  it("refuses options that leave nothing, or that it does not know", async () => {
    for (const [words, told] of [
      [["--source", "nowhere"], "no published check is left"],
      [["--role", "roof"], "one of main-bonding-jumper"],
      [["--standing", "believed"], "one of cited"],
      [["--voice", "nobody"], "one of author"],
      [["--assumed", "much"], "one of none"],
      [["installation.json"], "takes no path"],
    ] as const) {
      const { code, errors } = await runHere(["corpus", ...words]);
      expect([code, errors]).toEqual([3, expect.stringContaining(told)]);
    }
  });
});

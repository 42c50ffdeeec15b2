import { execFileSync, spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import axe from "axe-core";
import { drawingAsSvg, drawingOf, render, reportDocument } from "bondmil";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { FONT_SIZE } from "../../src/drawing/wrap.js";
import { demo, demoNames } from "../installation/installations.js";
import { diceOf } from "../laws/installations/dice.js";
import { drawInstallation } from "../laws/installations/drawn/installation.js";
import { need } from "../needs.js";

const executablePath = process.env.CHROMIUM ?? "/usr/bin/chromium";
const browserThere = need(
  executablePath,
  existsSync(executablePath),
  "install chromium or set CHROMIUM to its path",
);

const pdftotext = need(
  "pdftotext",
  spawnSync("pdftotext", ["-v"]).error === undefined,
  "install poppler-utils",
);

/** Boxes of all labels as the browser draws them, and the pairs that overlap. */
const overlapsInPage = `(() => {
  const found = [];
  for (const svg of document.querySelectorAll("svg.bondmil")) {
    const boxes = [...svg.querySelectorAll("text.label")].map((one) => [one.textContent, one.getBoundingClientRect()]);
    boxes.forEach(([name, a], i) => boxes.slice(i + 1).forEach(([other, b]) => {
      if (a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom) found.push(name + " / " + other);
    }));
  }
  return { found, count: document.querySelectorAll("text.label").length };
})()`;

/** Width of the widest line of each label of the sheets, without title, key and list. */
const widthsInPage = `[...document.querySelectorAll("svg.bondmil > g > text.label")].map((one) =>
  Math.max(...[...one.querySelectorAll("tspan")].map((line) => line.getComputedTextLength())))`;

interface Overlaps {
  readonly found: readonly string[];
  readonly count: number;
}

describe.skipIf(browserThere.isMissing)(`in Chromium${browserThere.because}`, () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
  });
  afterAll(() => browser.close());

  async function open(content: string, width = 1600, colorScheme: "light" | "dark" = "light"): Promise<Page> {
    const page = await browser.newPage({ viewport: { width, height: 900 }, colorScheme });
    await page.setContent(content);
    return page;
  }

  it.each(demoNames)("no label of the drawing overlaps another: %s", async (name) => {
    const drawing = drawingOf(demo(name));
    const page = await open(drawingAsSvg(drawing));
    const { found, count } = await page.evaluate<Overlaps>(overlapsInPage);
    expect(found).toEqual([]);
    expect(count).toBeGreaterThan(drawing.sheets.flatMap(({ labels }) => labels).length);
    await page.close();
  });

  it("text takes no more room than the layout gives it, in the demos and 200 installations", async () => {
    const random = Array.from({ length: 200 }, (_, i) => drawInstallation(diceOf(i + 1)));
    const page = await open("");
    for (const one of [...demoNames.map(demo), ...random]) {
      const drawing = drawingOf(one);
      await page.setContent(drawingAsSvg(drawing));
      const given = drawing.sheets.flatMap(({ labels }) => labels.map(({ width }) => width));
      const widths = await page.evaluate<readonly number[]>(widthsInPage);
      expect(widths).toHaveLength(given.length);
      expect(widths.filter((width, i) => width > (given[i] ?? 0) + 0.5)).toEqual([]);
      expect((await page.evaluate<Overlaps>(overlapsInPage)).found).toEqual([]);
    }
    await page.close();
  });

  it.each(["Letter", "A4"] as const)(
    "no text of a drawing is smaller than 7 points on %s paper",
    async (format) => {
      const [wide, high] = format === "Letter" ? [8.5, 11] : [8.27, 11.69];
      const margins = (2 * 12) / 25.4;
      const [width, height] = [(wide - margins) * 96, (high - margins) * 96];
      const page = await browser.newPage({
        viewport: { width: Math.floor(width), height: Math.floor(height) },
      });
      await page.setContent(render(reportDocument(demo("cold-store")), { as: "html" }));
      await page.emulateMedia({ media: "print" });
      const boxes = await page.evaluate<readonly (readonly [number, number, number])[]>(
        `[...document.querySelectorAll("svg.bondmil")].map((one) => {
        const { width, height } = one.getBoundingClientRect();
        const scale = one.querySelector("text.label").getScreenCTM().a;
        return [width, height, scale];
      })`,
      );
      expect(boxes.length).toBeGreaterThan(2);
      for (const [, tall, scale] of boxes) {
        // 96 pixels are an inch, and 72 points.
        expect(scale * FONT_SIZE * 0.75).toBeGreaterThanOrEqual(7);
        expect(tall).toBeLessThanOrEqual(height);
      }
      await page.close();
    },
  );

  it("sees two labels that overlap", async () => {
    const label = '<text class="label" y="20">same place</text>';
    const page = await open(`<svg class="bondmil">${label}${label}</svg>`);
    const { found } = await page.evaluate<Overlaps>(overlapsInPage);
    expect(found).toHaveLength(1);
    await page.close();
  });

  it.each([
    ["shop", 360, "light"],
    ["shop", 1600, "dark"],
    ["cold-store", 360, "dark"],
    ["cold-store", 1600, "light"],
  ] as const)("the report of %s at %i px, %s, fits and is accessible", async (name, width, theme) => {
    const page = await open(render(reportDocument(demo(name)), { as: "html" }), width, theme);
    expect(await page.evaluate<number>("document.documentElement.scrollWidth")).toBeLessThanOrEqual(width);
    await page.evaluate(axe.source);
    const violations = await page.evaluate<readonly string[]>(
      "axe.run().then(({ violations }) => violations.map(({ id, nodes }) => id + ': ' + nodes[0].html))",
    );
    expect(violations).toEqual([]);
    await page.close();
  });

  it("can be walked with the keyboard, drawings included", async () => {
    const page = await open(render(reportDocument(demo("shop")), { as: "html" }));
    const reached: string[] = [];
    for (let i = 0; i < 40; i++) {
      await page.keyboard.press("Tab");
      reached.push(await page.evaluate<string>("document.activeElement.tagName"));
    }
    expect(reached[0]).toBe("A");
    expect(reached.indexOf("SUMMARY")).toBe(reached.indexOf("DIV") + 1);
    expect(reached).toContain("DIV");
    await page.close();
  });

  it.each(["Letter", "A4"] as const)(
    "a shop fits three pages of %s, and six enclosures seven",
    async (format) => {
      for (const [name, most] of [
        ["shop", 3],
        ["cold-store", 7],
      ] as const) {
        const page = await open(render(reportDocument(demo(name)), { as: "html" }));
        const pdf = (await page.pdf({ format })).toString("latin1");
        expect(pdf.match(/\/Type\s*\/Page\b/g)?.length).toBeLessThanOrEqual(most);
        await page.close();
      }
    },
  );

  it.skipIf(pdftotext.isMissing).each(["Letter", "A4"] as const)(
    `has a head and its number on every page of %s, and no heading alone at the end of one${pdftotext.because}`,
    async (format) => {
      const document = reportDocument(demo("cold-store"));
      const page = await open(render(document, { as: "html" }));
      const pdf = await page.pdf({ format });
      const pages = execFileSync("pdftotext", ["-raw", "-", "-"], { input: pdf })
        .toString()
        .split("\f")
        .slice(0, -1);
      const headings = document.parts.flatMap((part) => (part.kind === "heading" ? [part.text] : []));
      expect(pages.length).toBeGreaterThan(4);
      for (const [i, text] of pages.entries()) {
        expect(text).toContain(document.title);
        expect(text).toContain(`Page ${i + 1} of ${pages.length}`);
        const margins = [document.title, "Page ", "Fingerprint "];
        const lines = text
          .split("\n")
          .filter((line) => line !== "" && !margins.some((one) => line.startsWith(one)));
        expect(headings).not.toContain(lines.at(-1));
      }
      await page.close();
    },
  );

  it("no page scrolls sideways from 360 to 1600 px, whatever the names", async () => {
    const long = `${"Verwaltungsgebäude".repeat(10)} ${"w".repeat(20)}`;
    const rightToLeft = "\u05DE\u05D1\u05E0\u05D4 \u05DE\u05E9\u05E8\u05D3\u05D9\u05DD";
    const base = demo("shop");
    const page = await open("");
    for (const title of [long, rightToLeft, base.title]) {
      await page.setContent(render(reportDocument({ ...base, title }), { as: "html" }));
      for (const width of [360, 480, 721, 900, 1200, 1600]) {
        await page.setViewportSize({ width, height: 900 });
        expect(await page.evaluate<number>("document.documentElement.scrollWidth")).toBeLessThanOrEqual(
          width,
        );
      }
    }
    await page.close();
  });

  it("prints black on white, with table heads on every page", async () => {
    const page = await open(render(reportDocument(demo("cold-store")), { as: "html" }), 1600, "dark");
    await page.emulateMedia({ media: "print", colorScheme: "dark" });
    const styles = await page.evaluate<readonly string[]>(`(() => {
      const of = (selector) => getComputedStyle(document.querySelector(selector));
      return [of("body").color, of("body").backgroundColor, of("svg.bondmil text").fill, of("thead").display];
    })()`);
    expect(styles).toEqual(["rgb(0, 0, 0)", "rgb(255, 255, 255)", "rgb(0, 0, 0)", "table-header-group"]);
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page\b/g)?.length).toBeGreaterThan(3);
    await page.close();
  });
});

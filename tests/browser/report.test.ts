import { existsSync } from "node:fs";
import axe from "axe-core";
import { drawingAsSvg, drawingOf, render, reportDocument } from "bondmil";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { demo, demoNames } from "../installation/installations.js";
import { need } from "../needs.js";

const executablePath = process.env.CHROMIUM ?? "/usr/bin/chromium";
const browserThere = need(
  executablePath,
  existsSync(executablePath),
  "install chromium or set CHROMIUM to its path",
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

/** Labels of a drawing that stick out of the box or the row that the layout gave them. */
const widthsInPage = `[...document.querySelectorAll("text.label tspan")].map((one) => [one.textContent, one.getComputedTextLength()])`;

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
    const widest = Math.max(...drawing.sheets.flatMap(({ labels }) => labels.map(({ width }) => width)));
    const widths = await page.evaluate<readonly (readonly [string, number])[]>(widthsInPage);
    expect(widths.filter(([, width]) => width > widest)).toEqual([]);
    await page.close();
  });

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
    for (let i = 0; i < 8; i++) {
      await page.keyboard.press("Tab");
      reached.push(await page.evaluate<string>("document.activeElement.tagName"));
    }
    expect(reached).toEqual(["A", "A", "A", "A", "A", "A", "DIV", "DIV"]);
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

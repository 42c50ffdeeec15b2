import { existsSync } from "node:fs";
import axe from "axe-core";
import { render } from "bondmil";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { need } from "../needs.js";
import { kinds } from "../report/every-kind.js";

const executablePath = process.env.CHROMIUM ?? "/usr/bin/chromium";
const browserThere = need(
  executablePath,
  existsSync(executablePath),
  "install chromium or set CHROMIUM to its path",
);

/** Marks whatever can be reached with a number, and gives how many there are. */
const numberReachable = `(() => {
  const all = [...document.querySelectorAll("a[href], summary, [tabindex='0']")];
  const shown = all.filter((one) => one.checkVisibility());
  shown.forEach((one, i) => { one.dataset.stop = String(i); });
  return shown.length;
})()`;

describe.skipIf(browserThere.isMissing)(`in Chromium${browserThere.because}, as HTML`, () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
  });
  afterAll(() => browser.close());

  async function open(content: string, width: number, colorScheme: "light" | "dark"): Promise<Page> {
    const page = await browser.newPage({ viewport: { width, height: 900 }, colorScheme });
    await page.setContent(content);
    return page;
  }

  const documents = Object.entries(kinds).map(([name, make]) => [name, make] as const);

  it.each(documents)(
    "a %s is accessible, fits from telephone to desk, and is walked by keyboard",
    async (_, make) => {
      const [first] = make();
      if (first === undefined) throw new TypeError("each kind has a document");
      const html = render(first.document, { as: "html" });
      for (const [width, theme] of [
        [360, "dark"],
        [768, "light"],
        [1280, "dark"],
        [1600, "light"],
      ] as const) {
        const page = await open(html, width, theme);
        expect(await page.evaluate<number>("document.documentElement.scrollWidth")).toBeLessThanOrEqual(
          width,
        );
        if (width === 360 || width === 1600) {
          await page.evaluate(axe.source);
          const violations = await page.evaluate<readonly string[]>(
            "axe.run().then(({ violations }) => violations.map(({ id, nodes }) => id + ': ' + nodes[0].html))",
          );
          expect(violations).toEqual([]);
        }
        if (width === 360) {
          const stops = await page.evaluate<number>(numberReachable);
          const reached: (string | null)[] = [];
          for (let i = 0; i < stops; i++) {
            await page.keyboard.press("Tab");
            reached.push(await page.evaluate<string | null>("document.activeElement.dataset.stop ?? null"));
          }
          expect(reached).toEqual(Array.from({ length: stops }, (__, i) => `${i}`));
        }
        await page.close();
      }
    },
  );
});

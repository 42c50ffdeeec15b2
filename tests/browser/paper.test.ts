import { execFileSync, spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { render, reportDocument } from "bondmil";
import { type Browser, chromium } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { demo } from "../installation/installations.js";
import { need } from "../needs.js";

const executablePath = process.env.CHROMIUM ?? "/usr/bin/chromium";
const browserThere = need(
  executablePath,
  existsSync(executablePath),
  "install chromium or set CHROMIUM to its path",
);
const pdftohtml = need(
  "pdftohtml",
  spawnSync("pdftohtml", ["-v"]).error === undefined,
  "install poppler-utils",
);

const formats = ["Letter", "A4"] as const;
const html = (name: "shop" | "cold-store"): string => render(reportDocument(demo(name)), { as: "html" });

/** What pdftohtml multiplies a size with; it rounds to a whole number. */
const zoom = 3;

describe.skipIf(browserThere.isMissing)(`on paper${browserThere.because}`, () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
  });
  afterAll(() => browser.close());

  async function pdfOf(content: string, format: (typeof formats)[number]): Promise<Buffer> {
    const page = await browser.newPage();
    await page.setContent(content);
    const pdf = await page.pdf({ format });
    await page.close();
    return pdf;
  }

  /** Sizes of all text of a file in points, page margins and drawings included. */
  function sizesIn(pdf: Buffer): readonly number[] {
    const xml = execFileSync("pdftohtml", ["-xml", "-i", "-stdout", "-zoom", `${zoom}`, "-", "out"], {
      input: pdf,
    });
    const sizes = [...xml.toString().matchAll(/<fontspec [^>]*size="(\d+)"/g)];
    return sizes.map(([, size]) => Number(size) / zoom);
  }

  it.skipIf(pdftohtml.isMissing).each(formats)(
    `no text is smaller than 7 points on %s, page margins and drawings included${pdftohtml.because}`,
    async (format) => {
      const report = html("cold-store");
      const sizes = sizesIn(await pdfOf(report, format));
      expect(sizes.length).toBeGreaterThan(5);
      expect(Math.min(...sizes)).toBeGreaterThanOrEqual(7);
      const smaller = report.replace(/(@page\{[^}]*?font:)[\d.]+pt/, "$16pt");
      expect(smaller).not.toBe(report);
      expect(Math.min(...sizesIn(await pdfOf(smaller, format)))).toBe(6);
    },
  );

  it("has lines for preparer and reviewer to sign, which a screen does not show", async () => {
    const page = await browser.newPage();
    await page.setContent(html("shop"));
    const shown = () =>
      page
        .locator(".signatures tr")
        .evaluateAll((rows) => rows.map((row) => [(row as HTMLElement).offsetHeight > 0, row.textContent]));
    const fields = "NameLicense no.SignatureDate";
    expect(await shown()).toEqual([
      [false, `Prepared by${fields}`],
      [false, `Reviewed by${fields}`],
    ]);
    await page.emulateMedia({ media: "print" });
    expect((await shown()).map(([isShown]) => isShown)).toEqual([true, true]);
    await page.close();
  });
});

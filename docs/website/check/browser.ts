import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { type Browser, chromium, type Page } from "playwright-core";

/** A telephone, a tablet, a desk. */
const widths = [360, 900, 1600] as const;

/** Pages that are open at the same time. */
const TABS = 3;

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/**
 * Every fault of pages that only a browser sees: a page that scrolls sideways at one of the widths, what axe finds in light, and the contrast in
 * dark, errors of scripts, and requests that leave the folder of the site. `pages` are paths in that folder.
 */
export async function browserFaults(
  executablePath: string,
  site: string,
  pages: readonly string[],
): Promise<readonly string[]> {
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
  try {
    const left = [...pages];
    const faults: string[] = [];
    const work = async (): Promise<void> => {
      for (let path = left.shift(); path !== undefined; path = left.shift())
        faults.push(...(await faultsOf(browser, site, path)));
    };
    await Promise.all(Array.from({ length: TABS }, work));
    return faults;
  } finally {
    await browser.close();
  }
}

async function faultsOf(browser: Browser, site: string, path: string): Promise<readonly string[]> {
  const page = await browser.newPage({ colorScheme: "light" });
  const faults: string[] = [];
  page.on("pageerror", (error) => faults.push(`${path}: ${error.message}`));
  page.on("request", (request) => {
    if (!request.url().startsWith(pathToFileURL(site).href)) faults.push(`${path} loads ${request.url()}`);
  });
  await page.goto(pathToFileURL(join(site, path)).href);
  for (const width of widths) {
    await page.setViewportSize({ width, height: 900 });
    const needed = await page.evaluate<number>("document.documentElement.scrollWidth");
    if (needed > width) faults.push(`${path} is ${needed} pixels wide at ${width}`);
  }
  await page.evaluate(axe);
  const light = await violationsIn(page, "{}");
  await page.emulateMedia({ colorScheme: "dark" });
  const dark = await violationsIn(page, '{ runOnly: ["color-contrast"] }');
  await page.close();
  return [...faults, ...light.map((one) => `${path}: ${one}`), ...dark.map((one) => `${path}, dark: ${one}`)];
}

function violationsIn(page: Page, options: string): Promise<readonly string[]> {
  return page.evaluate<readonly string[]>(
    `axe.run(document, Object.assign({ resultTypes: ["violations"] }, ${options})).then(({ violations }) =>
      violations.map(({ id, nodes }) => id + " (" + nodes.length + "): " + nodes[0].html.slice(0, 200)))`,
  );
}

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join, posix } from "node:path";
import { pathToFileURL } from "node:url";
import { chromium, type Page, type Request } from "playwright-core";

/** A telephone, a tablet, a desk. */
const widths = [360, 900, 1600] as const;

/** What is looked at on a page. */
interface Look {
  readonly widths: readonly number[];
  readonly isInDark: boolean;
  /** What axe reads: an expression of the page. */
  readonly part: string;
}

const whole: Look = { widths, isInDark: true, part: "document" };

/** Pages of one folder of the reference are of one make, so what wide and dark do to the first of them they do to all. */
const oneOfMany: Look = { widths: [widths[0]], isInDark: false, part: '"main"' };

/** Pages that are open at the same time. */
const TABS = 3;

/** A page has to be among so many places when its title is given. */
const FIRST = 5;

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/**
 * Every fault of pages that only a browser sees: a page that scrolls sideways at one of the widths, what axe finds in light, and the contrast in
 * dark, errors of scripts, and requests that leave the folder of the site. `pages` are paths in that folder. Of the pages in one folder of the
 * reference the first is looked at in full, the others as on a telephone in light.
 */
export async function browserFaults(
  executablePath: string,
  site: string,
  pages: readonly string[],
): Promise<readonly string[]> {
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
  try {
    const left = [...pages];
    const firsts = firstsOf(pages);
    const faults: string[] = [];
    const work = async (): Promise<void> => {
      const tab = await browser.newPage();
      for (let path = left.shift(); path !== undefined; path = left.shift())
        faults.push(...(await faultsOf(tab, site, path, firsts.has(path) ? whole : oneOfMany)));
    };
    await Promise.all(Array.from({ length: TABS }, work));
    return faults;
  } finally {
    await browser.close();
  }
}

/** The pages that are looked at in full: every page outside the reference, and the first of each of its folders. */
function firstsOf(pages: readonly string[]): ReadonlySet<string> {
  const folders = new Set<string>();
  return new Set(
    pages.filter((path) => {
      if (!path.startsWith("reference/")) return true;
      const folder = posix.dirname(path);
      return !folders.has(folder) && folders.add(folder);
    }),
  );
}

async function faultsOf(tab: Page, site: string, path: string, look: Look): Promise<readonly string[]> {
  const faults: string[] = [];
  const folder = pathToFileURL(site).href;
  const onError = (error: Error): void => void faults.push(`${path}: ${error.message}`);
  const onRequest = (request: Request): void => {
    if (!/^(?:data|blob):/.test(request.url()) && !request.url().startsWith(folder))
      faults.push(`${path} loads ${request.url()}`);
  };
  tab.on("pageerror", onError).on("request", onRequest);
  await tab.emulateMedia({ colorScheme: "light" });
  await tab.goto(pathToFileURL(join(site, path)).href);
  for (const width of look.widths) {
    await tab.setViewportSize({ width, height: 900 });
    const needed = await tab.evaluate<number>("document.documentElement.scrollWidth");
    if (needed > width) faults.push(`${path} is ${needed} pixels wide at ${width}`);
  }
  await tab.evaluate(axe);
  const light = await violationsIn(tab, look.part, "{}");
  if (look.isInDark) await tab.emulateMedia({ colorScheme: "dark" });
  const dark = look.isInDark ? await violationsIn(tab, look.part, '{ runOnly: ["color-contrast"] }') : [];
  tab.off("pageerror", onError).off("request", onRequest);
  return [...faults, ...light.map((one) => `${path}: ${one}`), ...dark.map((one) => `${path}, dark: ${one}`)];
}

/** What is wrong with the search: given the title of a page, it has to name that page. */
export async function searchFaults(
  executablePath: string,
  site: string,
  asked: string,
  wanted: string,
): Promise<readonly string[]> {
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
  try {
    const page = await browser.newPage();
    await page.goto(pathToFileURL(join(site, "index.html")).href);
    await page.getByRole("searchbox").fill(asked);
    await page.keyboard.press("Enter");
    await page.waitForURL(/search\.html/);
    const found = await page.evaluate<readonly string[]>(
      '[...document.querySelectorAll(".results a")].map((one) => one.getAttribute("href"))',
    );
    return found.slice(0, FIRST).includes(wanted)
      ? []
      : [
          `the search for "${asked}" has ${found[0] ?? "nothing"} first, and ${wanted} is not among the first ${FIRST}`,
        ];
  } finally {
    await browser.close();
  }
}

function violationsIn(page: Page, part: string, options: string): Promise<readonly string[]> {
  return page.evaluate<readonly string[]>(
    `axe.run(${part}, Object.assign({ resultTypes: ["violations"], preload: false }, ${options})).then(({ violations }) =>
      violations.map(({ id, nodes }) => id + " (" + nodes.length + "): " + nodes[0].html.slice(0, 200)))`,
  );
}

import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import axe from "axe-core";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { expect } from "vitest";
import { buildTryPage } from "../../docs/try/build.js";
import { launch } from "./chromium.js";
import { type Served, serve } from "./serve.js";

/** The built page in a browser, and everything that went wrong in it. */
export interface Tried {
  readonly browser: Browser;
  readonly served: Served;
  /** Opens the page at a fragment, waits for its answer, and watches it. */
  readonly open: (options?: OpenOptions) => Promise<Opened>;
  readonly close: () => Promise<void>;
}

/** Only what hangs is to end here; how long something takes says nothing of it on a busy machine. */
const patience = 120_000;

interface OpenOptions {
  readonly fragment?: string;
  readonly width?: number;
  readonly theme?: "light" | "dark";
  /** How many times slower the processor is to be. */
  readonly slowness?: number;
}

/** Notes when the first drawing was painted, when one was that the page worked out itself, when its last part was there, and how long tasks took before the second. */
const watchFirsts = `globalThis.firsts = { busy: 0 };
new PerformanceObserver((list) => {
  for (const { startTime, duration } of list.getEntries())
    if (firsts.live === undefined || startTime < firsts.live) firsts.busy += duration;
}).observe({ type: "longtask", buffered: true });
const look = () => {
  if (document.querySelector("#report svg.bondmil")) firsts.drawn ??= performance.now();
  if (document.querySelector("#page:not(.built) #report svg.bondmil")) firsts.live ??= performance.now();
  if (document.querySelector("#report table") && document.querySelector("#entry input")) firsts.filled ??= performance.now();
  if (firsts.filled === undefined) requestAnimationFrame(look);
};
requestAnimationFrame(look);`;

/** A page that is watched. */
export interface Opened {
  readonly context: BrowserContext;
  readonly page: Page;
  /** Errors, refusals of the policy and requests that leave the folder. */
  readonly wrong: readonly string[];
  readonly close: () => Promise<void>;
}

export async function tryPage(): Promise<Tried> {
  const folder = mkdtempSync(join(tmpdir(), "bondmil-try-"));
  await buildTryPage(folder);
  const served = await serve(folder);
  const browser = await launch();
  return {
    browser,
    served,
    open: async ({ fragment = "", width = 1600, theme = "light", slowness = 1 } = {}) => {
      const context = await browser.newContext({ viewport: { width, height: 900 }, colorScheme: theme });
      const page = await context.newPage();
      page.setDefaultTimeout(patience);
      const wrong: string[] = [];
      page.on("pageerror", ({ message }) => wrong.push(message));
      page.on("console", (one) => one.type() === "error" && wrong.push(one.text()));
      page.on("dialog", (one) => wrong.push(`a dialog: ${one.message()}`));
      context.on("request", (one) => {
        if (!one.url().startsWith(served.address) && !one.url().startsWith("blob:")) wrong.push(one.url());
      });
      if (slowness > 1) {
        const devtools = await context.newCDPSession(page);
        await devtools.send("Emulation.setCPUThrottlingRate", { rate: slowness });
        await page.addInitScript(watchFirsts);
      }
      await page.goto(served.address + fragment);
      await page.locator("[role=status]:not(:empty, .is-built)").waitFor();
      return { context, page, wrong, close: () => context.close() };
    },
    close: async () => {
      await browser.close();
      await served.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** The number of a line in the list of installations to begin with, by a part of its name. */
export async function beginWith(page: Page, name: string): Promise<void> {
  const options = await page.locator("#begin option").allTextContents();
  const label = options.find((one) => one.includes(name));
  if (label === undefined) throw new Error(`there is no installation "${name}" to begin with`);
  await page.locator("#begin").selectOption({ label });
}

/** The control of a place of the installation. */
export function at(page: Page, path: string) {
  return page.locator(`[id="${path}"]`);
}

/** The minimum size that the schedule on the page gives for a conductor. */
export async function sizeOf(page: Page, conductor: string): Promise<string> {
  const row = page.locator("#report tr", { has: page.getByRole("link", { name: conductor, exact: true }) });
  return (await row.locator("[data-label='Minimum size']").textContent()) ?? "";
}

/** What has the focus: the place of a control, or the words of a button. */
export function focused(page: Page): Promise<string> {
  return page.evaluate<string>("document.activeElement.id || document.activeElement.textContent");
}

/** What axe finds, of all its rules or of one. */
export async function accessible(page: Page, rule?: string): Promise<void> {
  await page.evaluate(axe.source);
  const options = rule === undefined ? "{}" : `{ runOnly: [${JSON.stringify(rule)}] }`;
  const found = await page.evaluate<readonly string[]>(
    `axe.run(document, Object.assign({ resultTypes: ["violations"], preload: false }, ${options})).then(({ violations }) => violations.map(({ id, nodes }) => id + ': ' + nodes[0].html))`,
  );
  expect(found).toEqual([]);
}

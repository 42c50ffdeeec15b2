import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fingerprintOf, scheduleOf } from "bondmil";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildBrowserEntry } from "../../docs/try/build.js";
import { demo, demoNames } from "../installation/installations.js";
import { launch, neededChromium } from "./chromium.js";
import { type Served, serve } from "./serve.js";

const chromium = neededChromium();

const inPage = `import { fingerprintOf, scheduleOf } from "./browser.js";
globalThis.answer = (installations) => installations.map((one) => fingerprintOf(scheduleOf(one)));`;

const inWorker = `import { fingerprintOf, scheduleOf } from "./browser.js";
addEventListener("message", ({ data }) => postMessage(data.map((one) => fingerprintOf(scheduleOf(one)))));`;

describe.skipIf(chromium.isMissing)(`the entry for browsers, in Chromium${chromium.because}`, () => {
  const folder = mkdtempSync(join(tmpdir(), "bondmil-browser-"));
  const installations = demoNames.map(demo);
  const expected = installations.map((one) => fingerprintOf(scheduleOf(one)));
  let browser: Browser;
  let served: Served;

  beforeAll(async () => {
    await buildBrowserEntry(folder);
    writeFileSync(
      join(folder, "index.html"),
      `<!doctype html><title>Entry</title><script type="module">${inPage}</script>`,
    );
    writeFileSync(join(folder, "worker.js"), inWorker);
    served = await serve(folder);
    browser = await launch();
  });
  afterAll(async () => {
    await browser.close();
    await served.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it("loads from a plain script element, and alone, with the fingerprints that Node gives", async () => {
    const page = await browser.newPage();
    const loaded: string[] = [];
    page.on("request", (request) => loaded.push(request.url().replace(served.address, "")));
    await page.goto(served.address);
    const fingerprints = await page.evaluate(`answer(${JSON.stringify(installations)})`);
    expect(fingerprints).toEqual(expected);
    expect(loaded.filter((path) => path !== "favicon.ico")).toEqual(["", "browser.js"]);
    await page.close();
  });

  it("loads in a worker, with the fingerprints that Node gives", async () => {
    const page = await browser.newPage();
    await page.goto(served.address);
    const fingerprints = await page.evaluate(`new Promise((done, failed) => {
      const worker = new Worker("worker.js", { type: "module" });
      worker.onerror = ({ message }) => failed(new Error(message));
      worker.onmessage = ({ data }) => done(data);
      worker.postMessage(${JSON.stringify(installations)});
    })`);
    expect(fingerprints).toEqual(expected);
    await page.close();
  });
});

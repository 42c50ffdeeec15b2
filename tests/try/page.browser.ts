import { execFileSync, spawnSync } from "node:child_process";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Json } from "../../docs/try/state/data.js";
import { fragmentOf } from "../../docs/try/state/link.js";
import { need } from "../needs.js";
import { neededChromium } from "./chromium.js";
import { accessible, at, beginWith, focused, sizeOf, type Tried, tryPage } from "./page.js";

const chromium = neededChromium();

function neededPdftotext() {
  const isThere = () => spawnSync("pdftotext", ["-v"]).error === undefined;
  if (!isThere() && process.getuid?.() === 0)
    spawnSync("bash", ["-c", "apt-get update && apt-get install -y --no-install-recommends poppler-utils"], {
      stdio: "ignore",
      timeout: 120_000,
    });
  return need("pdftotext", isThere(), "install poppler-utils");
}

const pdftotext = neededPdftotext();

describe.skipIf(chromium.isMissing)(`the page to try, in Chromium${chromium.because}`, () => {
  let tried: Tried;
  beforeAll(async () => {
    tried = await tryPage();
  });
  afterAll(() => tried?.close());

  it("is filled in from a blank sheet, by keyboard where it can be, and gives sizes", async () => {
    const { page, wrong, close } = await tried.open();
    await beginWith(page, "Blank sheet");
    await page.getByRole("button", { name: "Add service" }).press("Enter");
    const first = "services.[0]";
    await expect.poll(() => page.locator("[role=status]").textContent()).toContain("missing or wrong");
    const texts = [
      [`${first}.runs.[0].from`, "utility 1"],
      [`${first}.runs.[0].to`, "D1"],
      [`${first}.runs.[0].supply.sets.[0].count`, "2"],
      [`${first}.disconnects.[0].amperes`, "400"],
    ] as const;
    for (const [path, text] of texts) await at(page, path).fill(text);
    const choices = [
      [`${first}.grounding`, "solidly grounded"],
      [`${first}.connection`, "three-phase wye"],
      [`${first}.utility.outdoorTransformer`, "yes"],
      [`${first}.runs.[0].supply.sets.[0].size`, "3/0 AWG"],
      [`${first}.runs.[0].supply.sets.[0].material`, "copper"],
      [`${first}.disconnects.[0].designation`, "service disconnect"],
      [`${first}.housing`, "separate enclosures"],
    ] as const;
    for (const [path, label] of choices) await at(page, path).selectOption({ label });
    // The raceways of a run have to be known; the way to their field leads from the issue.
    await page.locator(".issues button", { hasText: "raceways" }).first().press("Enter");
    await expect.poll(() => focused(page)).toBe("Add raceways");
    await page.keyboard.press("Enter");
    await expect.poll(() => focused(page)).toBe(`${first}.runs.[0].raceways.count`);
    await at(page, `${first}.runs.[0].raceways.count`).fill("2");
    await at(page, `${first}.runs.[0].raceways.kind`).selectOption({ label: "nonmetallic" });
    // 2 x 3/0 AWG copper: 335,600 cmil, so 2 AWG by Table 250.102(C)(1); docs/installation.md has the same service.
    await expect.poll(() => sizeOf(page, "main bonding jumper D1")).toBe("1 x 2 AWG Cu");
    expect(await sizeOf(page, "grounded conductor R1")).toBe("2 x 1/0 AWG Cu");
    expect(await page.locator("#report svg.bondmil").count()).toBeGreaterThan(0);
    // A new name goes along to whatever goes there, and Undo takes it back in one step.
    await at(page, `${first}.disconnects.[0].id`).fill("main board");
    await at(page, `${first}.disconnects.[0].id`).press("Tab");
    expect(await at(page, `${first}.runs.[0].to`).inputValue()).toBe("main board");
    await page.keyboard.press("Control+z");
    expect(await at(page, `${first}.runs.[0].to`).inputValue()).toBe("D1");
    await page.getByRole("button", { name: "Redo" }).click();
    expect(await at(page, `${first}.runs.[0].to`).inputValue()).toBe("main board");
    expect(wrong).toEqual([]);
    await close();
  });

  it("shows its first answer before the rest, on a processor four times slower", async () => {
    const { page, wrong, close } = await tried.open({ slowness: 4 });
    const { drawn, live, filled, busy } = await page.evaluate<Readonly<Record<string, number>>>("firsts");
    expect(drawn).toBeLessThan(live ?? 0);
    expect(live).toBeLessThan(filled ?? 0);
    const in4x = [drawn, live, busy, filled].map((one) => Math.round(one ?? 0));
    console.log(
      `at 4x slowdown: first answer ${in4x[0]} ms; worked out in the page ${in4x[1]} ms, of which ${in4x[2]} ms in long tasks; whole page ${in4x[3]} ms`,
    );
    expect(wrong).toEqual([]);
    await close();
  });

  it("has its first answer before its script runs, the one that it works out; under a link it has none", async () => {
    const sheets = "[...document.querySelectorAll('#report svg.bondmil')].map((one) => one.innerHTML)";
    const { page, wrong, close } = await tried.open();
    const live = await page.evaluate<readonly string[]>(sheets);
    expect(live.length).toBeGreaterThan(0);
    await close();
    const context = await tried.browser.newContext();
    const built = await context.newPage();
    await context.route("**/try.js", (route) => route.abort());
    await built.goto(tried.served.address);
    expect(await built.evaluate<readonly string[]>(sheets)).toEqual(live);
    expect(await built.locator("#report svg.bondmil").first().isVisible()).toBe(true);
    await built.goto(`${tried.served.address}?${await fragmentOf({ format: 1 })}`);
    expect(await built.locator("#report svg.bondmil").first().isVisible()).toBe(false);
    expect(await built.locator("[role=status]").isVisible()).toBe(true);
    expect(wrong).toEqual([]);
    await context.close();
  });

  it("leads from a line of the schedule to its calculation, and keeps what is put in beside it", async () => {
    const { page, wrong, close } = await tried.open();
    const line = page.getByRole("link", { name: "structural metal bonding jumper steel frame" });
    await line.press("Enter");
    expect(await focused(page)).toMatch(/^report:/);
    await expect.poll(() => page.locator(":focus").textContent()).toContain("17. Structural metal");
    expect(await at(page, "entry").isVisible()).toBe(true);
    expect(await at(page, "entry:title").evaluate((one) => one.getBoundingClientRect().top)).toBeGreaterThan(
      0,
    );
    expect(wrong).toEqual([]);
    await close();
  });

  it("gives other sizes under another edition, and says what is not permitted where it is drawn", async () => {
    const { page, wrong, close } = await tried.open();
    await beginWith(page, "Transformer of a workshop");
    await at(page, "code.year").selectOption("0");
    await expect.poll(() => page.locator("[role=status]").textContent()).toContain("2008 edition");
    expect(await page.locator("#report .block").textContent()).toContain("NFPA 70-2008");
    await at(page, "code.year").selectOption({ label: "2023" });
    await at(page, "derivedSystems.[0].jumperAt").selectOption({ label: "both ends" });
    await expect.poll(() => page.locator("[role=status]").textContent()).toMatch(/[1-9] violation/);
    expect(await page.locator("#report").getByRole("heading", { name: "Not permitted" }).count()).toBe(1);
    await expect.poll(() => page.locator("#editions table").count()).toBeGreaterThan(0);
    expect(await page.locator("#editions table").first().textContent()).toContain("2008");
    expect(await page.locator("#arrangements").textContent()).toContain("jumper");
    expect(wrong).toEqual([]);
    await close();
  });

  it("says what is wrong beside the field, in the words of the library, and gives no size until it is mended", async () => {
    const { page, wrong, close } = await tried.open();
    await page.locator("summary", { hasText: "bakery, service disconnect" }).click();
    const rating = at(page, "services.[0].disconnects.[0].amperes");
    await rating.fill("many");
    await expect.poll(() => page.locator("[role=status]").textContent()).toContain("No sizes");
    expect(await rating.getAttribute("aria-invalid")).toBe("true");
    const note = at(page, "services.[0].disconnects.[0].amperes:wrong");
    expect(await note.textContent()).toContain("expected a positive number of amperes");
    expect(await rating.getAttribute("aria-describedby")).toContain("amperes:wrong");
    expect(await page.locator("#report table").count()).toBe(0);
    expect(await page.locator("#report svg").count()).toBe(0);
    await accessible(page);
    await rating.fill("200");
    await expect.poll(() => page.locator("#report svg").count()).toBeGreaterThan(0);
    expect(wrong).toEqual([]);
    await close();
  });

  it("takes a candidate for a load, and sizes by it", async () => {
    const { page, wrong, close } = await tried.open();
    await beginWith(page, "Boat house");
    await page.getByRole("button", { name: "Take 2 sets of 3/0 AWG copper" }).click();
    await expect.poll(() => sizeOf(page, "main bonding jumper main")).toBe("1 x 2 AWG Cu");
    expect(await at(page, "services.[0].runs.[0].raceways.count").inputValue()).toBe("2");
    expect(wrong).toEqual([]);
    await close();
  });

  it("checks found conductors", async () => {
    const { page, wrong, close } = await tried.open();
    await beginWith(page, "Dwelling");
    await expect.poll(() => page.locator("#found").textContent()).toMatch(/replace/i);
    await page
      .locator("#found")
      .getByLabel(/electrode conductor water pipe/)
      .selectOption("4 AWG");
    await expect.poll(() => page.locator("#found .document").textContent()).not.toMatch(/replace/i);
    const entry = at(page, "json");
    await page.locator("#text summary").click();
    expect(JSON.parse(await entry.inputValue()).installed.found[1].size).toBe("4 AWG");
    expect(wrong).toEqual([]);
    await close();
  });

  it("keeps form and JSON as one, and carries the installation in its address", async () => {
    const { page, wrong, close } = await tried.open();
    await page.locator("#text summary").click();
    const changed = JSON.parse(await at(page, "json").inputValue());
    await at(page, "json").fill(JSON.stringify({ ...changed, title: "Row of barns" }));
    expect(await at(page, "title").inputValue()).toBe("Row of barns");
    await at(page, "json").fill("{");
    expect(await at(page, "json:wrong").textContent()).toContain("No JSON yet");
    expect(await at(page, "title").inputValue()).toBe("Row of barns");
    await expect.poll(() => page.evaluate("location.hash")).toContain("#installation=");
    const fragment = await page.evaluate<string>("location.hash");
    await close();
    const other = await tried.open({ fragment });
    expect(await at(other.page, "title").inputValue()).toBe("Row of barns");
    const [download] = await Promise.all([
      other.page.waitForEvent("download"),
      other.page.getByRole("button", { name: "Save" }).click(),
    ]);
    expect(download.suggestedFilename()).toBe("row-of-barns.json");
    const path = await download.path();
    await beginWith(other.page, "Dwelling");
    await at(other.page, "load").setInputFiles(path);
    await expect.poll(() => at(other.page, "title").inputValue()).toBe("Row of barns");
    expect([...wrong, ...other.wrong]).toEqual([]);
    await other.close();
  });

  it("shows names that look like programs as names", async () => {
    const script = `<img src=x onerror="alert(1)"><script>alert(2)</script>`;
    const document: Json = {
      format: 1,
      title: script,
      code: { year: "2023" },
      materials: {
        bondingJumpers: "copper",
        groundedConductors: "copper",
        electrodeConductors: "copper",
        equipmentGrounding: "copper",
      },
      existing: [{ id: `"><svg onload=alert(3)>` }],
      circuits: [
        {
          id: "javascript:alert(4)",
          from: `"><svg onload=alert(3)>`,
          to: "</style><script>alert(5)</script>",
          device: { amperes: 20 },
          wiring: "raceway",
        },
      ],
      [script]: script,
    };
    const { [script]: _unknown, ...known } = document as Readonly<Record<string, Json>>;
    for (const one of [document, known]) {
      const { page, wrong, close } = await tried.open({ fragment: await fragmentOf(one) });
      expect(await at(page, "title").inputValue()).toBe(script);
      expect(await page.locator("#page img, #page script").count()).toBe(0);
      expect(wrong).toEqual([]);
      await close();
    }
    const { page, wrong, close } = await tried.open({ fragment: "#installation=<script>alert(6)</script>" });
    expect(await page.locator("[role=status]").textContent()).toContain("no installation that can be read");
    expect(wrong).toEqual([]);
    await close();
  });

  it("works after a reload without a network", async () => {
    const { page, context, wrong, close } = await tried.open();
    await page.evaluate("navigator.serviceWorker.ready.then(() => undefined)");
    await at(page, "title").fill("Without a network");
    await expect.poll(() => page.evaluate("location.hash")).toContain("#installation=");
    await context.setOffline(true);
    await page.reload();
    await page.locator("#report svg.bondmil").first().waitFor();
    expect(await at(page, "title").inputValue()).toBe("Without a network");
    expect(wrong).toEqual([]);
    await close();
  });

  it.skipIf(pdftotext.isMissing)(`prints the report${pdftotext.because}`, async () => {
    const { page, wrong, close } = await tried.open({ theme: "dark" });
    const pdf = await page.pdf({ preferCSSPageSize: true });
    const text = execFileSync("pdftotext", ["-", "-"], { input: pdf, encoding: "utf8" }).replace(/\s+/g, " ");
    for (const part of [
      "Row of shops: bonding and grounding conductors",
      "Not permitted",
      "4 AWG Cu MBJ (1)",
      "Calculations",
      "authority having jurisdiction",
    ])
      expect(text).toContain(part);
    for (const part of ["What is there", "Editions compared", "Undo"]) expect(text).not.toContain(part);
    expect(wrong).toEqual([]);
    await close();
  });

  it("fits and is accessible from telephone to desk, in light and in dark", async () => {
    const { page, wrong, close } = await tried.open({ width: 360 });
    await beginWith(page, "Dwelling");
    await page.locator("#editions table").first().waitFor();
    for (const summary of await page.locator(".fold.more > summary").all()) await summary.click();
    for (const width of [360, 900, 1600]) {
      await page.setViewportSize({ width, height: 900 });
      expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(width);
      await accessible(page);
    }
    await page.emulateMedia({ colorScheme: "dark" });
    await accessible(page, "color-contrast");
    expect(wrong).toEqual([]);
    await close();
  });
});

import { readdirSync, readFileSync } from "node:fs";
import {
  editionYears,
  groundingElectrodeConductor,
  mainBondingJumper,
  size,
  waterPipingBondingJumper,
} from "bondmil";
import { parse } from "csv-parse/sync";
import { JSDOM } from "jsdom";
import { describe, expect, it } from "vitest";
import { filesOf, type Picture } from "../../docs/pages/pictures/picture.js";

const docs = new URL("../../docs/", import.meta.url);
const folder = new URL("pictures/", docs);
const names = readdirSync(folder)
  .filter((name) => name.endsWith(".svg"))
  .map((name) => name.slice(0, -".svg".length));
const guides = (readdirSync(docs, { recursive: true }) as string[])
  .filter((name) => name.endsWith(".md"))
  .map((name) => readFileSync(new URL(name, docs), "utf8"));

function dataOf(name: string): readonly (readonly string[])[] {
  return parse(readFileSync(new URL(`${name}.csv`, folder), "utf8")) as string[][];
}

describe.each(names)("the picture %s", (name) => {
  const svg = new JSDOM(readFileSync(new URL(`${name}.svg`, folder), "utf8"), {
    contentType: "image/svg+xml",
  }).window.document.documentElement;
  const title = svg.querySelector("title")?.textContent ?? "";

  it("says in words what it shows", () => {
    expect(svg.getAttribute("role")).toBe("img");
    expect(title).not.toBe("");
    expect(svg.querySelector("desc")?.textContent?.length).toBeGreaterThan(100);
  });

  it("stands in a guide under its title, with its data beside", () => {
    const showing = guides.filter((text) => text.includes(`pictures/${name}.svg)`));
    expect(showing).not.toEqual([]);
    for (const text of showing) {
      expect(text).toContain(`![${title}`);
      expect(text).toContain(`pictures/${name}.csv)`);
    }
  });

  it("has data in whole rows", () => {
    const [head, ...rows] = dataOf(name);
    expect(rows.length).toBeGreaterThan(5);
    for (const row of rows) expect(row.length).toBe(head?.length);
  });

  it("marks no place with a number that is none", () => {
    expect(svg.outerHTML).not.toMatch(/NaN|undefined|Infinity/);
  });
});

it("draws the sizes that the library gives", () => {
  const rows = dataOf("required-area-by-supply");
  const supply = { sets: [{ count: 5, size: "500 kcmil", material: "copper" }] } as const;
  const at = (conductor: string): string | undefined =>
    rows.find(([metal, what, area]) => metal === "copper" && what === conductor && area === "2500000")?.[3];
  const code = { year: "2023" } as const;
  const conductor = { material: "copper" } as const;
  expect(at("main bonding jumper")).toBe(
    `${size(mainBondingJumper, { code, supply, conductor }).requiredArea}`,
  );
  expect(at("grounding electrode conductor")).toBe(
    `${size(groundingElectrodeConductor, { code, supply, conductor, system: "service", electrodes: [{ kind: "metal-water-pipe" }] }).requiredArea}`,
  );
});

it("quotes what would break a line of the data", () => {
  const picture: Picture = {
    name: "p",
    title: "",
    description: "",
    columns: ["a"],
    rows: [['x, "y"']],
    svg: "<svg/>",
  };
  expect(filesOf([picture])["docs/pictures/p.csv"]).toBe('a\r\n"x, ""y"""\r\n');
});

it("draws what each edition requires, where they differ", () => {
  const rows = dataOf("required-area-by-edition");
  const supply = { sets: [{ count: 5, size: "500 kcmil", material: "copper" }] } as const;
  const conductor = { material: "copper" } as const;
  const drawnFor = (year: string) =>
    rows.find(
      ([what, editions = "", area]) =>
        what === "water piping bonding jumper" &&
        area === "2500000" &&
        editions.split(", ").some((run) => {
          const [from = "", to = from] = run.split(" to ");
          return from <= year && year <= to;
        }),
    )?.[3];
  for (const year of editionYears) {
    const { requiredArea } = size(waterPipingBondingJumper, {
      code: { year },
      system: "service",
      supply,
      conductor,
    });
    expect([year, drawnFor(year)]).toEqual([year, `${requiredArea}`]);
  }
});

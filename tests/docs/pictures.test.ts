import { readdirSync, readFileSync } from "node:fs";
import { groundingElectrodeConductor, mainBondingJumper, size } from "bondmil";
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

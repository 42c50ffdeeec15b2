import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { explain, mainBondingJumper, size } from "bondmil";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../../", import.meta.url));
const text = readFileSync(`${root}README.md`, "utf8");
const { files } = JSON.parse(readFileSync(`${root}package.json`, "utf8")) as {
  readonly files: readonly string[];
};

/** What is seen before anything is opened, as a reader counts words: addresses and comments aside. */
function wordsAboveTheFold(markdown: string): number {
  return markdown
    .replace(/<details>[\s\S]*?<\/details>/g, "")
    .replace(/<!--[\s\S]*?-->/g, "")
    .replace(/\]\([^)]*\)/g, "]")
    .split(/\s+/)
    .filter((word) => /\w/.test(word)).length;
}

describe("the front page", () => {
  it("says the job in its first paragraph", () => {
    const [title, job = ""] = text.split("\n\n");
    expect(title).toBe("# bondmil");
    for (const word of ["service", "separately derived system", "minimum size", "material", "section"])
      expect(job).toContain(word);
  });

  it("has at most 700 words above the fold", () => {
    expect(wordsAboveTheFold("one [two](three four) <details>five</details> <!-- six --> | --- |")).toBe(2);
    expect(wordsAboveTheFold(text)).toBeLessThanOrEqual(700);
  });

  it("shows what explain says of its example", () => {
    const shown = /```text\n(.*?)\n```/s.exec(text)?.[1]?.replaceAll("\n", " ");
    const jumper = size(mainBondingJumper, {
      code: { year: "2023" },
      supply: { sets: [{ count: 3, size: "600 kcmil", material: "copper" }] },
      conductor: { material: "copper" },
    });
    expect(shown).toBe(explain(jumper));
  });

  it("has its drawing in the package", () => {
    const [, picture = ""] = /!\[[^\]]+\]\(([^)]+)\)/.exec(text) ?? [];
    expect(files.some((path) => picture.startsWith(`${path}/`))).toBe(true);
  });

  it("links only to what is there", () => {
    const targets = [...text.matchAll(/\]\(([^)#]+)/g)].map(([, path = ""]) => path);
    expect(targets.length).toBeGreaterThan(30);
    expect(targets.filter((path) => !existsSync(root + path))).toEqual([]);
  });
});

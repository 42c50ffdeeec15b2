import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { differencesOf } from "../../release/differences.js";
import { faultsOf, type Papers } from "../../release/faults.js";

const root = fileURLToPath(new URL("../../", import.meta.url));
const read = (path: string): string => readFileSync(root + path, "utf8");

const address = "https://somewhere.example/bondmil";
const ready: Papers = {
  home: JSON.stringify({ repository: address }),
  manifest: JSON.stringify({
    version: "0.1.0",
    homepage: `${address}#readme`,
    repository: { url: `git+${address}.git` },
    bugs: { url: `${address}/issues` },
  }),
  citation: `version: 0.1.0\nrepository-code: "${address}"\n`,
  changelog: "# bondmil\n\n## 0.1.0\n",
  results: JSON.stringify({ version: "0.1.0" }),
};

describe("what is published", () => {
  it("has a home, a version and its papers", () => {
    expect(faultsOf(ready)).toEqual([]);
    const without = (papers: Partial<Papers>): number => faultsOf({ ...ready, ...papers }).length;
    expect(without({ changelog: "# bondmil\n\n## 0.1.0-beta\n" })).toBe(1);
    expect(without({ results: JSON.stringify({ version: "0.0.0" }) })).toBe(1);
    expect(without({ citation: "version: 0.1.0\n" })).toBe(1);
    expect(without({ citation: ready.citation.replace("0.1.0", "0.1.00") })).toBe(1);
    expect(without({ manifest: ready.manifest.replace(`${address}/issues`, "") })).toBe(1);
    expect(without({ home: JSON.stringify({ repository: "http://somewhere.example/bondmil" }) })).toBe(2);
  });

  it("is refused while the placeholder stands, wherever else it was overwritten", () => {
    const placeholder = "https://set-before-release.invalid/bondmil";
    const everywhere = (text: string): string => text.replaceAll(address, placeholder);
    const papers = Object.fromEntries(Object.entries(ready).map(([name, text]) => [name, everywhere(text)]));
    expect(faultsOf(papers as unknown as Papers)).toEqual([
      expect.stringContaining("release/home.json has the placeholder"),
    ]);
    expect(faultsOf({ ...ready, home: everywhere(ready.home) }).length).toBe(2);
  });

  it("is what npm asks before it publishes", () => {
    const { scripts } = JSON.parse(read("package.json")) as {
      readonly scripts: Readonly<Record<string, string>>;
    };
    expect(scripts["prepublishOnly"]).toBe("tsx release/publishable.ts");
    const faults = faultsOf({
      home: read("release/home.json"),
      manifest: read("package.json"),
      citation: read("CITATION.cff"),
      changelog: read("CHANGELOG.md"),
      results: read("release/results.json"),
    });
    const tsx = `${root}node_modules/tsx/dist/cli.mjs`;
    const { status, stderr } = spawnSync(process.execPath, [tsx, `${root}release/publishable.ts`], {
      encoding: "utf8",
    });
    expect(status).toBe(faults.length === 0 ? 0 : 1);
    expect(stderr.trim().split("\n").filter(Boolean)).toEqual(faults.map((one) => `not publishable: ${one}`));
  });
});

describe("a result that was recorded", () => {
  it("is missed where it is another, is gone, or is new", () => {
    const recorded = { grid: { jumper: { "2020": "a", "2023": "b" } }, missed: 0 };
    expect(differencesOf(recorded, structuredClone(recorded))).toEqual([]);
    expect(differencesOf(recorded, { grid: { jumper: { "2020": "c", "2026": "d" } }, missed: 0 })).toEqual([
      'grid, jumper, 2020: recorded "a", now "c"',
      'grid, jumper, 2023: recorded "b", now nothing',
      'grid, jumper, 2026: recorded nothing, now "d"',
    ]);
  });
});

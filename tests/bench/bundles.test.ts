import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { describe, expect, it } from "vitest";
import { byEsbuild, byRollup, imported, kilobytes, published } from "./bundles.js";

const manifest = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8")) as {
  readonly "size-limit": readonly { readonly name: string; readonly limit: string }[];
};

const dist = dirname(published);

/** What the entry of sizing and the whole library have in common. */
const [shared = "index.js"] = existsSync(dist)
  ? readdirSync(dist).filter(
      (name) => /^chunk-.*\.js$/.test(name) && readFileSync(join(dist, "sizing.js"), "utf8").includes(name),
    )
  : [];

function budgetOf(what: string): number {
  const line = manifest["size-limit"].find(({ name }) => name === what);
  return Number.parseFloat(line?.limit ?? "0");
}

describe.skipIf(!existsSync(published))("a program that imports one thing", () => {
  it.each(imported)("carries of $what no more than its budget, whichever bundler makes it", async (one) => {
    const [esbuild, rollup] = [kilobytes(await byEsbuild(one)), kilobytes(await byRollup(one))];
    expect(esbuild).toBeGreaterThan(1);
    expect(esbuild).toBeLessThanOrEqual(budgetOf(one.what));
    expect(rollup).toBeLessThanOrEqual(budgetOf(one.what));
  });

  it.each(["index.js", shared])(
    "carries nothing of the library where it uses nothing of it: %s",
    async (name) => {
      // Without its exports all of the module is unused; what is left, every program would carry.
      const unused = readFileSync(join(dist, name), "utf8").replace(/^export \{[^}]*\};?\s*$/m, "");
      expect(unused.length).toBeGreaterThan(400_000);
      expect(unused).not.toContain("\nexport");
      const { outputFiles } = await build({
        stdin: { contents: unused, resolveDir: dist },
        ...{ bundle: true, format: "esm", minify: true, write: false },
      });
      expect(outputFiles.map(({ text }) => text)).toEqual([""]);
    },
  );

  it("reads no code of installations, engineering or reports for the entry of sizing", async () => {
    const { metafile } = await build({
      entryPoints: [fileURLToPath(new URL("../../src/sizing.entry.ts", import.meta.url))],
      ...{ bundle: true, format: "esm", write: false, metafile: true },
    });
    const rooms = new Set(Object.keys(metafile.inputs).map((path) => path.split("/")[1]));
    const own = ["input", "units", "conductor", "edition", "ampacity", "supply", "sizing", "rules", "roles"];
    expect([...rooms].sort()).toEqual([...own, "asking", "comparison", "sizing.entry.ts"].sort());
  });

  it("does not carry what it does not import", async () => {
    const code = await byEsbuild({ names: ["size", "mainBondingJumper"] });
    expect(code).not.toContain("readInstallation");
    expect(kilobytes(code)).toBeLessThan(kilobytes(await byEsbuild({ names: ["scheduleOf"] })) / 2);
  });
});

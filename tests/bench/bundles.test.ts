import { existsSync, readFileSync } from "node:fs";
import { dirname } from "node:path";
import { build } from "esbuild";
import { describe, expect, it } from "vitest";
import { byEsbuild, byRollup, imported, kilobytes, published } from "./bundles.js";

const manifest = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8")) as {
  readonly "size-limit": readonly { readonly name: string; readonly limit: string }[];
};

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

  it("carries nothing of the library where it uses nothing of it", async () => {
    // Without its exports all of the module is unused; what is left, every program would carry.
    const unused = readFileSync(published, "utf8").replace(/^export \{[^}]*\};?\s*$/m, "");
    expect(unused).not.toContain("\nexport");
    const { outputFiles } = await build({
      stdin: { contents: unused, resolveDir: dirname(published) },
      ...{ bundle: true, format: "esm", minify: true, write: false },
    });
    expect(outputFiles.map(({ text }) => text)).toEqual([""]);
  });

  it("does not carry what it does not import", async () => {
    const code = await byEsbuild({ names: ["size", "mainBondingJumper"] });
    expect(code).not.toContain("readInstallation");
    expect(kilobytes(code)).toBeLessThan(kilobytes(await byEsbuild({ names: ["scheduleOf"] })) / 2);
  });
});

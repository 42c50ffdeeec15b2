import { existsSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { roles } from "../../src/roles/register.generated.js";

const root = fileURLToPath(new URL("../../", import.meta.url));

describe("one thing has one name", () => {
  it.each(Object.keys(roles))("%s has its folder, test, corpus and page", (role) => {
    const companions = [
      `src/roles/${role}/index.ts`,
      `tests/roles/${role}.test.ts`,
      `corpus/${role}.json`,
      `docs/roles/${role}.md`,
    ];
    expect(companions.filter((path) => !existsSync(root + path))).toEqual([]);
  });

  it("has no folder that is no role", () => {
    const folders = readdirSync(`${root}src/roles`).filter((name) => !name.endsWith(".ts"));
    expect(folders.sort()).toEqual(Object.keys(roles).sort());
  });
});

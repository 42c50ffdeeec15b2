import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { roles } from "../../src/edition/role.js";

const root = fileURLToPath(new URL("../../", import.meta.url));

describe("one thing has one name", () => {
  const written = roles.filter((role) => existsSync(`${root}src/rules/${role}.ts`));

  it("has at least one role with a rule", () => expect(written).not.toEqual([]));

  it.each(written)("%s has its test, corpus and page", (role) => {
    const companions = [`tests/rules/${role}.test.ts`, `corpus/${role}.json`, `docs/rules/${role}.md`];
    expect(companions.filter((path) => !existsSync(root + path))).toEqual([]);
  });
});

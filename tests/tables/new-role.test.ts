import { cpSync, existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { roles } from "bondmil";
import { afterAll, describe, expect, it } from "vitest";
import { unfilledPlaces } from "../../tables/generator/answers.js";
import { scaffoldRole } from "../../tables/scaffold/role.js";
import { filesOfRole } from "../../tables/scaffold/role-stubs.js";
import { copyRepository } from "./repository-copy.js";

const copy = copyRepository();
afterAll(copy.remove);
for (const folder of ["tests/rules", "docs/rules"]) mkdirSync(copy.path(folder), { recursive: true });

const role = "roof-bonding-jumper";
const read = (path: string): string => readFileSync(copy.path(path), "utf8");

describe("the stubs of a new role", () => {
  it("are refused for a name that is none, or that is taken", () => {
    for (const name of ["", "Roof Jumper", "roof", "../roof-jumper", ...roles])
      expect(scaffoldRole(copy.path(), name).ok).toBe(false);
    const taken = `docs/rules/${role}.md`;
    cpSync(join(import.meta.dirname, "../../docs/rules/main-bonding-jumper.md"), copy.path(taken));
    expect(scaffoldRole(copy.path(), role).lines).toContain(taken);
    expect(existsSync(copy.path(`src/rules/${role}.ts`))).toBe(false);
    rmSync(copy.path(taken));
  });

  it("stand under one name, and fail until they are filled", () => {
    const { ok, lines } = scaffoldRole(copy.path(), role);
    expect(ok).toBe(true);
    for (const { path } of filesOfRole(role)) expect(lines).toContain(`written: ${path}`);

    expect(read("src/edition/role.ts")).toContain(`"${role}",\n] as const`);
    expect(read("src/index.ts")).toContain(`export { sizeRoofBondingJumper } from "./rules/${role}.js";`);
    expect(read(`src/rules/${role}.ts`)).toContain("throw new Error");
    expect(read(`tests/rules/${role}.test.ts`)).toContain("expect.fail");
    expect(unfilledPlaces(JSON.parse(read("tables/roles.json")))).toContain(`roles/${role}/purpose`);
    const refused = copy.generate();
    expect(refused.ok).toBe(false);
    expect(refused.said).toContain(`roles/roles/${role}/purpose`);
  });

  it("do not write over what is there", () => {
    const before = read("src/edition/role.ts");
    expect(scaffoldRole(copy.path(), role).ok).toBe(false);
    expect(read("src/edition/role.ts")).toBe(before);
  });
});

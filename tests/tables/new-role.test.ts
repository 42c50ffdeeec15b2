import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { type AnyRole, roleIds } from "bondmil";
import { afterAll, describe, expect, it } from "vitest";
import { unfilledPlaces } from "../../tables/tools/generator/answers.js";
import { scaffoldRole } from "../../tables/tools/scaffold/role.js";
import { filesOfRole } from "../../tables/tools/scaffold/role-stubs.js";
import { copyRepository } from "./repository-copy.js";

const copy = copyRepository();
afterAll(copy.remove);

const role = "roof-bonding-jumper";
const read = (path: string): string => readFileSync(copy.path(path), "utf8");

describe("the stubs of a new role", () => {
  it("are refused for a name that is none, or that is taken", () => {
    for (const name of ["", "Roof Jumper", "roof", "../roof-jumper", ...roleIds])
      expect(scaffoldRole(copy.path(), name).ok).toBe(false);
    const taken = `docs/roles/${role}.md`;
    mkdirSync(dirname(copy.path(taken)));
    writeFileSync(copy.path(taken), "taken");
    expect(scaffoldRole(copy.path(), role).lines).toContain(taken);
    expect(existsSync(copy.path(`src/roles/${role}`))).toBe(false);
    expect(read("tables/roles.json")).not.toContain(role);
    rmSync(copy.path(taken));
  });

  it("stand under one name, and fail until they are filled", () => {
    const { ok, lines } = scaffoldRole(copy.path(), role);
    expect(ok).toBe(true);
    for (const { path } of filesOfRole(role)) expect(lines).toContain(`written: ${path}`);

    expect(read(`src/roles/${role}/rule.ts`)).toContain("throw new Error");
    expect(read(`tests/roles/${role}.test.ts`)).toContain("expect.fail");
    expect(unfilledPlaces(JSON.parse(read("tables/roles.json")))).toContain(`roles/${role}/purpose`);
    const refused = copy.generate();
    expect(refused.ok).toBe(false);
    expect(refused.said).toContain(`roles/roles/${role}/purpose`);
  });

  it("do not write over what is there", () => {
    const before = read("tables/roles.json");
    expect(scaffoldRole(copy.path(), role).ok).toBe(false);
    expect(read("tables/roles.json")).toBe(before);
  });

  it("are registered and exported once the entry is filled, and refuse to size", async () => {
    const list = read("tables/roles.json").replaceAll(/\{\s*"unfilled": ("[^"]+")\s*\}/g, "$1");
    writeFileSync(copy.path("tables/roles.json"), list);
    expect(copy.generate()).toMatchObject({ ok: true });
    expect(copy.generate("shapes")).toMatchObject({ ok: true });
    const face = (await import(copy.path("src/index.ts"))) as typeof import("bondmil") & {
      readonly roofBondingJumper: AnyRole;
    };
    const { roofBondingJumper, size } = face;
    expect(roofBondingJumper.id).toBe(role);
    expect(Object.keys(roofBondingJumper).sort()).toEqual(
      Object.keys(face.intersystemBondingConductor).sort(),
    );
    expect(Object.values(face.roles).at(-1)).toBe(roofBondingJumper);
    expect(face.roleIds.at(-1)).toBe(role);
    const input = { code: { year: "2023" } } as const;
    expect(() => size(roofBondingJumper, input)).toThrow("not written yet");
    expect(() => size(roofBondingJumper, {} as never)).toThrow(face.InputError);
  });
});

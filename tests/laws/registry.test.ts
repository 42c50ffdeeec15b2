import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { roles } from "bondmil";
import { describe, expect, it } from "vitest";
import { jumperRoles, lawsElsewhere, underLaw } from "./roles.js";

const folder = fileURLToPath(new URL(".", import.meta.url));

/** Laws that are about the roles; a file left out of this list must have a reason beside its name. */
const lawsOfRoles = ["containment", "evidence", "limits", "materials", "order", "plain-data", "prepared"];
/** The grid walks all roles in one loop; the others are not about roles. */
const otherLaws = ["amendments", "grid", "registry", "sizes", "source"];

const roleIsWritten = (role: string) => existsSync(new URL(`../../src/rules/${role}.ts`, import.meta.url));

describe("the laws", () => {
  it("reach the function that bears the role's name", () => {
    for (const role of jumperRoles) {
      const input = {
        code: { year: "2017" },
        supply: { sets: [{ count: 1, size: "4/0 AWG", material: "copper" }] },
        jumper: { material: "copper" },
      } as const;
      expect(underLaw[role].size(input).role).toBe(role);
    }
  });

  it.each(roles.filter(roleIsWritten))("are run for %s", (role) => {
    const elsewhere = lawsElsewhere[role];
    const isHere = (jumperRoles as readonly string[]).includes(role);
    expect(isHere || elsewhere !== undefined).toBe(true);
    if (elsewhere !== undefined) expect(readFileSync(`${folder}${elsewhere}`, "utf8")).toContain(role);
  });

  it("are all on one of the two lists", () => {
    const written = readdirSync(folder).filter((name) => name.endsWith(".test.ts"));
    const listed = [...lawsOfRoles, ...otherLaws].map((name) => `${name}.test.ts`);
    expect(written.sort()).toEqual([...listed, ...new Set(Object.values(lawsElsewhere))].sort());
  });

  it.each(lawsOfRoles)("%s is asked of every jumper", (name) => {
    const text = readFileSync(`${folder}${name}.test.ts`, "utf8");
    expect(text).toContain("describe.each(jumperRoles)");
    expect(text).toContain("underLaw[role]");
  });
});

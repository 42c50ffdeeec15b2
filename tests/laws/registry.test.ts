import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { everyRole, jumpers } from "./roles.js";

const folder = fileURLToPath(new URL(".", import.meta.url));
const textOf = (name: string) => readFileSync(`${folder}${name}.test.ts`, "utf8");

/** Laws that every jumper shares; a file left out of this list must have a reason beside its name. */
const lawsOfJumpers = ["containment", "evidence", "limits", "materials", "order", "plain-data", "prepared"];
/** Laws of roles with another input. */
const lawsOfOthers = [
  "electrode-conductors",
  "equipment-grounding",
  "grounded-conductors",
  "impedance-grounding",
  "metal-parts",
];
/** The grid and the ways of asking walk all roles in one loop; the others are not about roles. */
const otherLaws = [
  "ampacity",
  "amendments",
  "arrangements",
  "asking",
  "candidates",
  "grid",
  "own-citations",
  "raceways",
  "registry",
  "sizes",
  "source",
  "violations",
  "voltage-drops",
];

describe("the laws", () => {
  it("take the jumpers from the register: those that a supply and a material size", () => {
    expect(jumpers.map(({ id }) => id)).toEqual([
      "main-bonding-jumper",
      "system-bonding-jumper",
      "supply-side-bonding-jumper",
    ]);
  });

  it.each(everyRole.filter((role) => !(jumpers as readonly unknown[]).includes(role)))(
    "are run for the $id",
    ({ id }) => {
      const value = id.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());
      expect(lawsOfOthers.filter((name) => textOf(name).includes(`size(${value},`))).not.toEqual([]);
    },
  );

  it("are all on one of the lists", () => {
    const written = readdirSync(folder).filter((name) => name.endsWith(".test.ts"));
    const listed = [...lawsOfJumpers, ...lawsOfOthers, ...otherLaws].map((name) => `${name}.test.ts`);
    expect(written.sort()).toEqual(listed.sort());
  });

  it.each(lawsOfJumpers)("%s is asked of every jumper", (name) => {
    expect(textOf(name)).toContain("describe.each(jumpers)");
    expect(textOf(name)).toContain("size(role, ");
  });
});

import { readFileSync } from "node:fs";
import { roleIds } from "bondmil";
import { describe, expect, it } from "vitest";
import { namesBehind } from "../../docs/pages/role-coverage/basis.js";
import { givenInWords } from "../../docs/pages/role-pages/given.js";

describe("the page of a role", () => {
  it.each([
    [
      {
        supply: { sets: [{ count: 4, size: "500 kcmil", material: "copper" }] },
        conductor: { material: "copper" },
      },
      "supply: 4 x 500 kcmil copper; conductor: copper",
    ],
    [{ circuits: [{ device: { amperes: 60 } }, { device: { amperes: 100 } }] }, "circuits: 60 A and 100 A"],
    [
      { electrodes: [{ kind: "metal-water-pipe" }], system: "service" },
      "electrodes: metal water pipe; system: service",
    ],
    [
      {
        supply: {
          sets: [
            {
              count: 1,
              phases: [
                { size: "2 AWG", material: "copper" },
                { size: "4 AWG", material: "copper" },
              ],
            },
          ],
        },
      },
      "supply: 1 x (2 AWG copper, 4 AWG copper)",
    ],
  ])("says what a check gives: %j", (input, words) => expect(givenInWords(input)).toBe(words));

  it("takes the changes of all that the role is sized by", () => {
    expect(namesBehind("water-piping-bonding-jumper")).toEqual(
      new Set([
        "water-piping-service",
        "water-piping-derived",
        "water-piping-building",
        "piping-by-device",
        "building-piping-by-device",
      ]),
    );
    expect(namesBehind("intersystem-bonding-conductor")).toContain("intersystem-least");
  });

  it.each(roleIds)("has its drawing and what the corpus and the tables say: %s", (role) => {
    const page = readFileSync(new URL(`../../docs/roles/${role}.md`, import.meta.url), "utf8");
    expect(page).toContain(`](../samples/roles/${role}.svg)`);
    const headings = [...page.matchAll(/^## (.*)$/gm)].map(([, heading]) => heading);
    expect(headings.slice(-5)).toEqual([
      "Worked examples and their sources",
      "What each edition changed",
      "Readings",
      "Mistakes in print",
      "The checks that hold it",
    ]);
  });
});

import { type Amendment, type Code, type ConductorSize, conductorSizes, type Role } from "bondmil";
import { describe, expect, it } from "vitest";
import { mainBondingJumperPolicies } from "../../src/edition/tables/policies.generated.js";
import { mainBondingJumperFacts } from "../../src/edition/tables/roles.generated.js";
import { decideBySupply } from "../../src/rules/by-supply.js";
import { finish } from "../../src/rules/finish.js";

/** Every amendment here is invented. */
const citation = { jurisdiction: "Nowhere", section: "Sec. 1" };
const role: Role = "main-bonding-jumper";
const most = 100;

/** How often a jumper of 3/0 AWG is decided under a code, its open readings among it. */
function decisionsUnder(amendments: readonly Amendment[]): number {
  let decisions = 0;
  const code: Code = { year: "2020", amendments };
  const supply = { sets: [{ count: 1, size: "3/0 AWG", material: "copper" }] } as const;
  finish(code, (under) => {
    decisions += 1;
    const policies = mainBondingJumperPolicies;
    return decideBySupply(
      { facts: mainBondingJumperFacts, policies },
      { code: under, supply, conductor: { material: "copper" } },
    );
  });
  return decisions;
}

const hundred = (one: (place: number) => object): readonly Amendment[] =>
  Array.from({ length: most }, (_, place) => ({ citation, ...one(place) }) as Amendment);
const sizeAt = (place: number): ConductorSize => conductorSizes[place % conductorSizes.length] ?? "1 AWG";
const onRoofs = { location: "rooftop" };

describe("the number of times that an answer is decided again", () => {
  const printed = decisionsUnder([]);

  it.each<readonly [string, number, (place: number) => object]>([
    ["floors", 0, (place) => ({ kind: "floor", role, copper: sizeAt(place) })],
    [
      "floors under a condition",
      0,
      (place) => ({ kind: "floor", role, copper: sizeAt(place), when: onRoofs }),
    ],
    [
      "materials",
      0,
      () => ({ kind: "material", role: "every-role", material: "copper", allowedFrom: "6 AWG" }),
    ],
    ["wires", 0, () => ({ kind: "always-wire", role })],
    ["other roles", 0, () => ({ kind: "basis", role: "equipment-grounding-conductor", use: "no-increase" })],
    [
      "cells of the other metal",
      0,
      () => ({ kind: "cell", table: "bonding-conductor", row: "3/0 AWG", column: "aluminum", size: "1 AWG" }),
    ],
    [
      "cells of one place",
      2,
      (place) => ({
        kind: "cell",
        table: "bonding-conductor",
        row: "3/0 AWG",
        column: "copper",
        size: "3 AWG",
        citation: { jurisdiction: "Nowhere", section: `Sec. ${place}` },
      }),
    ],
    [
      "readings of other editions",
      0,
      () => ({ kind: "reading", reading: "cap-in-2014", alternative: "as-in-2017" }),
    ],
    [
      "readings of one alternative",
      2,
      (place) => ({
        kind: "reading",
        reading: "cap-on-small-supplies",
        alternative: "large-supplies-only",
        citation: { jurisdiction: "Nowhere", section: `Sec. ${place}` },
      }),
    ],
  ])("does not grow with a hundred %s", (_, more, one) => {
    expect(decisionsUnder(hundred(one)) - printed).toBeLessThanOrEqual(more);
  });

  it("is never above one for each amendment", () => {
    const ratings = [15, 20, 60, 100, 200, 300, 400, 500, 600, 800, 1000, 1200, 1600, 2000, 2500];
    const cells = hundred((place) => ({
      kind: "cell",
      table: "equipment-grounding",
      row: ratings[place % ratings.length],
      column: "copper",
      size: sizeAt(place),
      when: onRoofs,
    }));
    expect(decisionsUnder(cells) - printed).toBeLessThanOrEqual(most);
  });
});

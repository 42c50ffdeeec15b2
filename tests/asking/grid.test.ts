import {
  electrodeRacewayBondingJumper,
  equipmentGroundingConductor,
  impedanceGroundingConductor,
  intersystemBondingConductor,
  mainBondingJumper,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { gridOf } from "../../src/asking/grid.js";
import type { AnyRole } from "../../src/roles/definition.js";

const code = { year: "2023" } as const;
const questionsOf = (role: AnyRole) => gridOf(role, code);
const named = (role: AnyRole, name: string) => questionsOf(role).filter((one) => one.name === name);

describe("the grid of a role", () => {
  it("by supply is every standard size from 12 AWG, 1 to 20 sets, of either metal for a conductor of either", () => {
    // 12 gauges from 12 AWG to 4/0 AWG, and 15 sizes from 250 to 2000 kcmil.
    const sizes = 12 + 15;
    expect(questionsOf(mainBondingJumper)).toHaveLength(2 * 2 * sizes * 20);
    expect(named(mainBondingJumper, "1 x 12 AWG copper, aluminum")).toEqual([
      {
        name: "1 x 12 AWG copper, aluminum",
        question: {
          code,
          material: "aluminum",
          supply: { sets: [{ count: 1, size: "12 AWG", material: "copper" }] },
        },
      },
    ]);
    expect(named(mainBondingJumper, "20 x 2000 kcmil aluminum, copper")).toHaveLength(1);
    expect(named(mainBondingJumper, "1 x 14 AWG copper, copper")).toEqual([]);
    expect(named(mainBondingJumper, "21 x 500 kcmil copper, copper")).toEqual([]);
  });

  it("by rating is the end of every row", () => {
    expect(questionsOf(equipmentGroundingConductor)).toHaveLength(2 * 19);
    expect(named(equipmentGroundingConductor, "60 A, copper")).toEqual([
      { name: "60 A, copper", question: { code, material: "copper", amperes: 60 } },
    ]);
  });

  it("by a current is every ampacity at 60 C", () => {
    // Table 310.16: 12 AWG aluminum has 15 A, 500 kcmil copper 320 A.
    expect(named(impedanceGroundingConductor, "15 A, aluminum")).toHaveLength(1);
    expect(named(impedanceGroundingConductor, "320 A, copper")).toEqual([
      { name: "320 A, copper", question: { code, material: "copper", amperes: 320 } },
    ]);
    expect(named(impedanceGroundingConductor, "321 A, copper")).toEqual([]);
  });

  it("by a conductor is every size, and by a size that the code names one question", () => {
    expect(named(electrodeRacewayBondingJumper, "4 AWG, copper")).toEqual([
      { name: "4 AWG, copper", question: { code, material: "copper", size: "4 AWG" } },
    ]);
    expect(questionsOf(intersystemBondingConductor)).toEqual([
      { name: "copper", question: { code, material: "copper" } },
    ]);
  });
});

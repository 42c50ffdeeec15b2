import {
  type Code,
  groundingElectrodeConductor,
  InputError,
  mainBondingJumper,
  type Supply,
  size,
} from "bondmil";
import { plainly } from "../../src/asking/plainly.js";
import { everyRole } from "./contenders.js";

const code = { year: "2023" } as const;
const supply: Supply = { sets: [{ count: 3, size: "600 kcmil", material: "copper" }] };
const conductor = { material: "copper" } as const;

/** The full call on one typical input: reading, steps, citations, evidence, cautions. */
export function fullCall(): number {
  return size(mainBondingJumper, { code, supply, conductor }).requiredArea;
}

const ofAluminum: Supply = { sets: [{ count: 3, size: "600 kcmil", material: "aluminum" }] };
const ofBothMetals: Supply = {
  sets: [
    { count: 2, size: "500 kcmil", material: "copper" },
    { count: 3, size: "750 kcmil", material: "aluminum" },
    {
      count: 1,
      phases: [{ size: "350 kcmil", material: "copper" }, { size: "600 kcmil", material: "aluminum" }, null],
    },
    {
      count: 1,
      phases: [null, { size: "250 kcmil", material: "copper" }, { size: "3/0 AWG", material: "copper" }],
    },
  ],
};
const amended: Code = {
  ...code,
  amendments: [
    {
      kind: "floor",
      role: "main-bonding-jumper",
      copper: "4 AWG",
      citation: { jurisdiction: "Example County", section: "1" },
    },
    {
      kind: "cell",
      table: "bonding-conductor",
      row: "350 kcmil",
      column: "copper",
      size: "1/0 AWG",
      citation: { jurisdiction: "Example County", section: "2" },
    },
  ],
};

/** Calls that give a whole result: the plainest question of every role, and questions that are hard. */
export const calls: Readonly<Record<string, () => number>> = {
  "main-bonding-jumper, three sets": fullCall,
  "the same, from aluminum": () =>
    size(mainBondingJumper, { code, supply: ofAluminum, conductor }).requiredArea,
  "the same, under two amendments": () =>
    size(mainBondingJumper, { code: amended, supply, conductor }).requiredArea,
  "the same, from unlike phases of both metals": () =>
    size(mainBondingJumper, { code, supply: ofBothMetals, conductor }).requiredArea,
  "grounding-electrode-conductor of 2023, two kinds of electrodes": () =>
    size(groundingElectrodeConductor, {
      code,
      system: "service",
      supply,
      conductor,
      electrodes: [{ kind: "metal-water-pipe" }, { kind: "rod" }],
    }).requiredArea,
  "grounding-electrode-conductor of 2011, two kinds of electrodes": () =>
    size(groundingElectrodeConductor, {
      code: { year: "2011" },
      system: "service",
      supply,
      conductor,
      electrodes: [{ kind: "metal-water-pipe" }, { kind: "rod" }],
    }).requiredArea,
  ...Object.fromEntries(
    everyRole.map((role) => {
      const input = plainly(role, { code, material: "copper", supply });
      return [`${role.id}, plainest question`, () => size(role, input).requiredArea];
    }),
  ),
  "an input with five things wrong": () => {
    try {
      const wrong = {
        code: { year: "2022" },
        supply: { sets: [{ count: 0, size: "600", material: "tin" }] },
      };
      return size(mainBondingJumper, { ...wrong, conductor: { metal: "copper" } } as never).requiredArea;
    } catch (error) {
      return error instanceof InputError ? error.issues.length : Number.NaN;
    }
  },
};

import {
  type AnyRole,
  type Code,
  electrodeBondingJumper,
  equipmentBondingJumper,
  equipmentGroundingConductor,
  groundedConductor,
  groundingElectrodeConductor,
  type Input,
  type Material,
  type Role,
  type SizingResult,
  type StandardSize,
  type Supply,
  size,
  supplySideBondingJumper,
} from "bondmil";
import fc from "fast-check";
import { plainly } from "../../src/asking/plainly.js";
import type { PlainQuestion } from "../../src/roles/definition.js";
import { everyRole } from "./roles.js";

/** A question about one role that only wants a code and a material. */
export interface Asked {
  readonly role: Role;
  readonly ask: (code: Code, material: Material) => SizingResult;
}

const run = (count: number, size: StandardSize, material: Material = "copper"): Supply => ({
  sets: [{ count, size, material }],
});
const supplies = [run(1, "10 AWG"), run(1, "3/0 AWG"), run(3, "500 kcmil"), run(1, "250 kcmil", "aluminum")];
const amperes = [60, 400];
const circuit = {
  device: { amperes: 60 },
  conductors: run(1, "4 AWG"),
  increasedFrom: { conductors: run(1, "6 AWG"), reason: "voltage-drop" },
} as const;
const load = { amperes: 150, circuitAmperes: 200 };

/** What decides the size of a role in its plainest question. */
const deciding: Readonly<Record<AnyRole["by"], readonly Partial<PlainQuestion>[]>> = {
  supply: supplies.map((supply) => ({ supply })),
  rating: amperes.map((one) => ({ amperes: one })),
  current: [{ amperes: 10 }],
  conductor: [{ size: "4 AWG" }],
  "named-size": [{}],
};

const plain: readonly Asked[] = everyRole.flatMap((role) =>
  deciding[role.by].map((question) => ({
    role: role.id,
    ask: (code: Code, material: Material) => size(role, plainly(role, { ...question, code, material })),
  })),
);

const particular: readonly Asked[] = [
  ...supplies.flatMap((supply): readonly Asked[] => [
    {
      role: "supply-side-bonding-jumper",
      ask: (code, material) =>
        size(supplySideBondingJumper, { code, supply, conductor: { material }, instead: "bonding-fittings" }),
    },
    {
      role: "grounded-conductor",
      ask: (code, material) =>
        size(groundedConductor, {
          code,
          system: "service",
          supply,
          scope: "raceway",
          conductor: { material },
          load,
        }),
    },
    ...(["rod", "concrete-encased"] as const).flatMap((kind): readonly Asked[] => [
      {
        role: "grounding-electrode-conductor",
        ask: (code, material) =>
          size(groundingElectrodeConductor, {
            code,
            system: "service",
            supply,
            conductor: { material },
            electrodes: [{ kind }],
          }),
      },
      {
        role: "electrode-bonding-jumper",
        ask: (code, material) =>
          size(electrodeBondingJumper, { code, supply, conductor: { material }, electrodes: [{ kind }] }),
      },
    ]),
  ]),
  {
    role: "grounding-electrode-conductor",
    ask: (code, material) =>
      size(groundingElectrodeConductor, {
        code,
        system: "separately-derived",
        part: "common",
        conductor: { material },
        electrodes: [{ kind: "rod" }],
      }),
  },
  {
    role: "equipment-grounding-conductor",
    ask: (code, material) =>
      size(equipmentGroundingConductor, {
        code,
        circuits: [{ device: { amperes: 400 } }, circuit],
        conductor: { material },
      }),
  },
  ...[equipmentGroundingConductor, equipmentBondingJumper].map(
    (role): Asked => ({
      role: role.id,
      ask: (code, material) =>
        size<Input<typeof role>, SizingResult>(role, { code, circuits: [circuit], conductor: { material } }),
    }),
  ),
];

/** Every role in its plainest questions, some in particular situations too. */
const asked: readonly Asked[] = [...plain, ...particular];

export const question: fc.Arbitrary<Asked> = fc.constantFrom(...asked);

import {
  type Code,
  type Material,
  type Role,
  roles,
  type SizingResult,
  type StandardSize,
  type Supply,
  sizeCommonConductorOfDerivedSystems,
  sizeElectrodeBondingJumper,
  sizeElectrodeRacewayBondingJumper,
  sizeEquipmentBondingJumper,
  sizeEquipmentGroundingConductor,
  sizeGroundedConductor,
  sizeGroundingElectrodeConductor,
  sizeImpedanceBondingJumper,
  sizeImpedanceGroundingConductor,
  sizeIntersystemBondingConductor,
  sizeMainBondingJumper,
  sizeOtherPipingBondingJumper,
  sizeStructuralMetalBondingJumper,
  sizeSupplySideBondingJumper,
  sizeSystemBondingJumper,
  sizeWaterPipingBondingJumper,
} from "bondmil";
import fc from "fast-check";

/** A question about one role that only wants a code and a material. */
export interface Asked {
  readonly role: Role;
  readonly ask: (code: Code, material: Material) => SizingResult;
}

const run = (count: number, size: StandardSize, material: Material = "copper"): Supply => ({
  sets: [{ count, size, material }],
});
const supplies = [run(1, "10 AWG"), run(1, "3/0 AWG"), run(3, "500 kcmil"), run(1, "250 kcmil", "aluminum")];
const circuit = {
  device: { amperes: 60 },
  conductors: run(1, "4 AWG"),
  increasedFrom: { conductors: run(1, "6 AWG"), reason: "voltage-drop" },
} as const;
const load = { amperes: 150, circuitAmperes: 200 };

function bySupply(supply: Supply): readonly Asked[] {
  const system = "service";
  return [
    {
      role: "main-bonding-jumper",
      ask: (code, material) => sizeMainBondingJumper({ code, supply, jumper: { material } }),
    },
    {
      role: "system-bonding-jumper",
      ask: (code, material) => sizeSystemBondingJumper({ code, supply, jumper: { material } }),
    },
    {
      role: "supply-side-bonding-jumper",
      ask: (code, material) => sizeSupplySideBondingJumper({ code, supply, jumper: { material } }),
    },
    {
      role: "supply-side-bonding-jumper",
      ask: (code, material) =>
        sizeSupplySideBondingJumper({ code, supply, jumper: { material }, instead: "bonding-fittings" }),
    },
    {
      role: "grounded-conductor",
      ask: (code, material) =>
        sizeGroundedConductor({ code, system, supply, scope: "raceway", conductor: { material }, load }),
    },
    {
      role: "grounded-conductor",
      ask: (code, material) => sizeGroundedConductor({ code, system, supply, conductor: { material } }),
    },
    {
      role: "impedance-bonding-jumper",
      ask: (code, material) =>
        sizeImpedanceBondingJumper({ code, electrodeConductorAt: "impedance", supply, jumper: { material } }),
    },
    {
      role: "water-piping-bonding-jumper",
      ask: (code, material) =>
        sizeWaterPipingBondingJumper({ code, of: "service", supply, jumper: { material } }),
    },
    {
      role: "structural-metal-bonding-jumper",
      ask: (code, material) =>
        sizeStructuralMetalBondingJumper({ code, of: "service", supply, jumper: { material } }),
    },
    ...(["metal-water-pipe", "rod", "concrete-encased"] as const).flatMap((kind): readonly Asked[] => [
      {
        role: "grounding-electrode-conductor",
        ask: (code, material) =>
          sizeGroundingElectrodeConductor({
            code,
            of: "service",
            supply,
            conductor: { material },
            electrodes: [{ kind }],
          }),
      },
      {
        role: "electrode-bonding-jumper",
        ask: (code, material) =>
          sizeElectrodeBondingJumper({ code, supply, jumper: { material }, to: [{ kind }] }),
      },
    ]),
  ];
}

/** Every role, most of them in several situations. */
export const asked: readonly Asked[] = [
  ...supplies.flatMap(bySupply),
  {
    role: "grounding-electrode-conductor",
    ask: (code, material) =>
      sizeCommonConductorOfDerivedSystems({ code, conductor: { material }, electrodes: [{ kind: "rod" }] }),
  },
  {
    role: "impedance-grounding-conductor",
    ask: (code, material) =>
      sizeImpedanceGroundingConductor({ code, impedanceAmperes: 10, conductor: { material } }),
  },
  {
    role: "equipment-grounding-conductor",
    ask: (code, material) =>
      sizeEquipmentGroundingConductor({
        code,
        circuits: [{ device: { amperes: 400 } }, circuit],
        conductor: { material },
      }),
  },
  {
    role: "equipment-grounding-conductor",
    ask: (code, material) =>
      sizeEquipmentGroundingConductor({ code, circuits: [circuit], conductor: { material } }),
  },
  {
    role: "equipment-bonding-jumper",
    ask: (code, material) => sizeEquipmentBondingJumper({ code, circuits: [circuit], jumper: { material } }),
  },
  {
    role: "other-piping-bonding-jumper",
    ask: (code, material) => sizeOtherPipingBondingJumper({ code, deviceAmperes: 400, jumper: { material } }),
  },
  {
    role: "electrode-raceway-bonding-jumper",
    ask: (code, material) =>
      sizeElectrodeRacewayBondingJumper({
        code,
        ferrous: true,
        enclosed: [{ size: "4 AWG", material: "copper" }],
        jumper: { material },
      }),
  },
  {
    role: "intersystem-bonding-conductor",
    ask: (code) => sizeIntersystemBondingConductor({ code, termination: "apart" }),
  },
];

/** Roles of which something is asked. */
export const askedRoles: readonly Role[] = roles.filter((role) => asked.some((one) => one.role === role));

export const question: fc.Arbitrary<Asked> = fc.constantFrom(...asked);

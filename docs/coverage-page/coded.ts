import type { Code, EditionYear, Role, Supply } from "bondmil";
import * as bondmil from "bondmil";

const supply: Supply = { sets: [{ count: 1, size: "4/0 AWG", material: "copper" }] };
const copper = { material: "copper" } as const;
const circuits = [{ device: { amperes: 100 } }];

/** The plainest question to each role. */
const questions: Readonly<Record<Role, (code: Code) => bondmil.SizingResult>> = {
  "main-bonding-jumper": (code) => bondmil.sizeMainBondingJumper({ code, supply, jumper: copper }),
  "system-bonding-jumper": (code) => bondmil.sizeSystemBondingJumper({ code, supply, jumper: copper }),
  "supply-side-bonding-jumper": (code) =>
    bondmil.sizeSupplySideBondingJumper({ code, supply, jumper: copper }),
  "grounded-conductor": (code) =>
    bondmil.sizeGroundedConductor({ code, system: "service", supply, conductor: copper }),
  "impedance-grounding-conductor": (code) =>
    bondmil.sizeImpedanceGroundingConductor({ code, impedanceAmperes: 10, conductor: copper }),
  "impedance-bonding-jumper": (code) =>
    bondmil.sizeImpedanceBondingJumper({ code, electrodeConductorAt: "impedance", supply, jumper: copper }),
  "equipment-grounding-conductor": (code) =>
    bondmil.sizeEquipmentGroundingConductor({ code, circuits, conductor: copper }),
  "equipment-bonding-jumper": (code) =>
    bondmil.sizeEquipmentBondingJumper({ code, circuits, jumper: copper }),
  "water-piping-bonding-jumper": (code) =>
    bondmil.sizeWaterPipingBondingJumper({ code, of: "service", supply, jumper: copper }),
  "other-piping-bonding-jumper": (code) =>
    bondmil.sizeOtherPipingBondingJumper({ code, deviceAmperes: 100, jumper: copper }),
  "structural-metal-bonding-jumper": (code) =>
    bondmil.sizeStructuralMetalBondingJumper({ code, of: "service", supply, jumper: copper }),
  "grounding-electrode-conductor": (code) =>
    bondmil.sizeGroundingElectrodeConductor({
      code,
      of: "service",
      supply,
      conductor: copper,
      electrodes: [{ kind: "metal-water-pipe" }],
    }),
  "electrode-bonding-jumper": (code) =>
    bondmil.sizeElectrodeBondingJumper({ code, supply, jumper: copper, to: [{ kind: "rod" }] }),
  "electrode-raceway-bonding-jumper": (code) =>
    bondmil.sizeElectrodeRacewayBondingJumper({
      code,
      ferrous: true,
      enclosed: [{ size: "2 AWG", material: "copper" }],
      jumper: copper,
    }),
  "intersystem-bonding-conductor": (code) =>
    bondmil.sizeIntersystemBondingConductor({ code, termination: "apart" }),
};

/** Whether the library answers for a role in an edition: the plainest question gets a conductor. */
export function isCoded(role: Role, year: EditionYear): boolean {
  return questions[role]({ year }).outcome.kind === "conductor";
}

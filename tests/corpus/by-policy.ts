import {
  type Code,
  type Material,
  type SizingResult,
  type Supply,
  sizeElectrodeBondingJumper,
  sizeGroundedConductor,
  sizeGroundingElectrodeConductor,
  sizeImpedanceBondingJumper,
  sizeMainBondingJumper,
  sizeStructuralMetalBondingJumper,
  sizeSupplySideBondingJumper,
  sizeSystemBondingJumper,
  sizeWaterPipingBondingJumper,
  type TemperatureColumn,
} from "bondmil";

/** One conductor that goes by its supply, asked for under a policy. */
export interface Asked {
  readonly code: Code;
  readonly supply: Supply;
  readonly material: Material;
  readonly temperature: TemperatureColumn;
}

type Ask = (asked: Asked) => SizingResult;

/** The question that is decided by a policy and nothing else, by the policy's name in `tables/policies.json`. */
export const byPolicy: Readonly<Record<string, Ask>> = {
  "main-bonding-jumper": ({ code, supply, material, temperature }) =>
    sizeMainBondingJumper({ code, supply, jumper: { material }, temperature }),
  "system-bonding-jumper": ({ code, supply, material, temperature }) =>
    sizeSystemBondingJumper({ code, supply, jumper: { material }, temperature }),
  "supply-side-bonding-jumper": supplySide("service", "all"),
  "supply-side-bonding-jumper-raceway": supplySide("service", "raceway"),
  "supply-side-bonding-jumper-derived": supplySide("separately-derived", "all"),
  "supply-side-bonding-jumper-derived-raceway": supplySide("separately-derived", "raceway"),
  "grounded-conductor": grounded("service", "all"),
  "grounded-conductor-raceway": grounded("service", "raceway"),
  "grounded-conductor-derived": grounded("separately-derived", "all"),
  "grounded-conductor-derived-raceway": grounded("separately-derived", "raceway"),
  "grounding-electrode-conductor-service": electrode({ of: "service" }),
  "grounding-electrode-conductor-derived": electrode({ of: "separately-derived" }),
  "grounding-electrode-conductor-building": electrode({ of: "building" }),
  "grounding-electrode-conductor-common": electrode({ of: "service", part: "common" }),
  "grounding-electrode-conductor-common-from-drop": electrode({
    of: "service",
    part: "common",
    fromDrop: true,
  }),
  "electrode-bonding-jumper": ({ code, supply, material }) =>
    sizeElectrodeBondingJumper({ code, supply, jumper: { material }, to: [{ kind: "metal-water-pipe" }] }),
  "impedance-bonding-jumper": ({ code, supply, material }) =>
    sizeImpedanceBondingJumper({ code, supply, jumper: { material }, electrodeConductorAt: "impedance" }),
  "water-piping-service": waterPiping("service"),
  "water-piping-derived": waterPiping("separately-derived"),
  "water-piping-building": waterPiping("building"),
  "structural-metal-service": structuralMetal("service"),
  "structural-metal-derived": structuralMetal("separately-derived"),
};

/** Policies whose questions let the caller choose the column of temperature in which metals are matched. */
export const withTemperature: readonly string[] = [
  "main-bonding-jumper",
  "system-bonding-jumper",
  ...Object.keys(byPolicy).filter((policy) =>
    /^(supply-side-bonding-jumper|grounded-conductor)/.test(policy),
  ),
];

function supplySide(system: "service" | "separately-derived", scope: "all" | "raceway"): Ask {
  return ({ code, supply, material, temperature }) =>
    sizeSupplySideBondingJumper({ code, supply, jumper: { material }, system, scope, temperature });
}

function grounded(system: "service" | "separately-derived", scope: "all" | "raceway"): Ask {
  const more = system === "separately-derived" ? ({ jumperAt: "enclosure" } as const) : {};
  return ({ code, supply, material, temperature }) =>
    sizeGroundedConductor({ code, supply, conductor: { material }, system, scope, temperature, ...more });
}

function electrode(
  more: Pick<Parameters<typeof sizeGroundingElectrodeConductor>[0], "of" | "part" | "fromDrop">,
): Ask {
  return ({ code, supply, material }) =>
    sizeGroundingElectrodeConductor({
      code,
      supply,
      conductor: { material },
      electrodes: [{ kind: "metal-water-pipe" }],
      ...more,
    });
}

function waterPiping(of: "service" | "separately-derived" | "building"): Ask {
  return ({ code, supply, material }) =>
    sizeWaterPipingBondingJumper({ code, of, supply, jumper: { material } });
}

function structuralMetal(of: "service" | "separately-derived"): Ask {
  return ({ code, supply, material }) =>
    sizeStructuralMetalBondingJumper({ code, of, supply, jumper: { material } });
}

import {
  type Code,
  electrodeBondingJumper,
  groundedConductor,
  groundingElectrodeConductor,
  type Input,
  impedanceBondingJumper,
  type Material,
  mainBondingJumper,
  type SizingResult,
  type Supply,
  size,
  structuralMetalBondingJumper,
  supplySideBondingJumper,
  systemBondingJumper,
  type TemperatureColumn,
  waterPipingBondingJumper,
} from "bondmil";

/** One conductor that goes by its supply, asked for under a policy. */
export interface Asked {
  readonly code: Code;
  readonly supply: Supply;
  readonly material: Material;
  readonly temperature: TemperatureColumn;
}

type Ask = (asked: Asked) => SizingResult;

type OfSupply = Extract<Input<typeof groundingElectrodeConductor>, { readonly supply: Supply }>;

/** The question that is decided by a policy and nothing else, by the policy's name in `tables/policies.json`. */
export const byPolicy: Readonly<Record<string, Ask>> = {
  "main-bonding-jumper": ({ code, supply, material, temperature }) =>
    size(mainBondingJumper, { code, supply, conductor: { material }, temperature }),
  "system-bonding-jumper": ({ code, supply, material, temperature }) =>
    size(systemBondingJumper, { code, supply, conductor: { material }, temperature }),
  "supply-side-bonding-jumper": supplySide("service", "all"),
  "supply-side-bonding-jumper-raceway": supplySide("service", "raceway"),
  "supply-side-bonding-jumper-single-raceway": supplySide("service", "single-raceway"),
  "supply-side-bonding-jumper-derived": supplySide("separately-derived", "all"),
  "supply-side-bonding-jumper-derived-raceway": supplySide("separately-derived", "raceway"),
  "supply-side-bonding-jumper-derived-single-raceway": supplySide("separately-derived", "single-raceway"),
  "grounded-conductor": grounded("service", "all"),
  "grounded-conductor-raceway": grounded("service", "raceway"),
  "grounded-conductor-derived": grounded("separately-derived", "all"),
  "grounded-conductor-derived-raceway": grounded("separately-derived", "raceway"),
  "grounding-electrode-conductor-service": electrode({ system: "service" }),
  "grounding-electrode-conductor-derived": electrode({ system: "separately-derived" }),
  "grounding-electrode-conductor-building": electrode({ system: "building" }),
  "grounding-electrode-conductor-common": electrode({ system: "service", part: "common" }),
  "grounding-electrode-conductor-common-from-drop": electrode({
    system: "service",
    part: "common",
    fromDrop: true,
  }),
  "electrode-bonding-jumper": ({ code, supply, material }) =>
    size(electrodeBondingJumper, {
      code,
      supply,
      conductor: { material },
      electrodes: [{ kind: "metal-water-pipe" }],
    }),
  "impedance-bonding-jumper": ({ code, supply, material }) =>
    size(impedanceBondingJumper, {
      code,
      supply,
      conductor: { material },
      electrodeConductorAt: "impedance",
    }),
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

function supplySide(
  system: "service" | "separately-derived",
  scope: "all" | "single-raceway" | "raceway",
): Ask {
  return ({ code, supply, material, temperature }) =>
    size(supplySideBondingJumper, { code, supply, conductor: { material }, system, scope, temperature });
}

function grounded(system: "service" | "separately-derived", scope: "all" | "raceway"): Ask {
  const more = system === "separately-derived" ? ({ jumperAt: "enclosure" } as const) : {};
  return ({ code, supply, material, temperature }) =>
    size(groundedConductor, { code, supply, conductor: { material }, system, scope, temperature, ...more });
}

function electrode(more: Pick<OfSupply, "system" | "part" | "fromDrop">): Ask {
  return ({ code, supply, material }) =>
    size(groundingElectrodeConductor, {
      code,
      supply,
      conductor: { material },
      electrodes: [{ kind: "metal-water-pipe" }],
      ...more,
    });
}

function waterPiping(system: "service" | "separately-derived" | "building"): Ask {
  return ({ code, supply, material }) =>
    size(waterPipingBondingJumper, { code, system, supply, conductor: { material } });
}

function structuralMetal(system: "service" | "separately-derived"): Ask {
  return ({ code, supply, material }) =>
    size(structuralMetalBondingJumper, { code, system, supply, conductor: { material } });
}

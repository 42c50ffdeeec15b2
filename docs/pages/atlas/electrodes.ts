import {
  columnOf,
  type EditionYear,
  type Electrode,
  electrodeBondingJumper,
  groundingElectrodeConductor,
  type Material,
  materials,
  type Readings,
  type SizingResult,
  type Supply,
  size,
} from "bondmil";
import { defaultReadings, readingFacts } from "../../../src/edition/tables/readings.generated.js";
import { gridSupplies, isOrdinary, requiredAreas, supplyName, supplyPolicies } from "./supplies.js";
import { type Case, type TallyRow, tallyOf } from "./tally.js";

/** What of the electrode system is sized. */
interface ElectrodeRole {
  readonly name: string;
  /** Set of policies that gives its size by the table alone. */
  readonly policies: string;
  readonly size: (
    code: { readonly year: EditionYear; readonly readings: Partial<Readings> },
    supply: Supply,
    material: Material,
    electrodes: readonly Electrode[],
  ) => SizingResult;
}

/** The conductors, materials and electrodes over which a reading is counted, and in words. */
interface ElectrodeGrid {
  readonly words: string;
  readonly roles: readonly ElectrodeRole[];
  readonly materials: readonly Material[];
  readonly electrodes: readonly (readonly Electrode[])[];
}

const whose = ["service", "separately-derived", "building"] as const;
const whoseWords = {
  service: "service",
  "separately-derived": "separately derived system",
  building: "building",
} as const;
const policiesOf = {
  service: "grounding-electrode-conductor-service",
  "separately-derived": "grounding-electrode-conductor-derived",
  building: "grounding-electrode-conductor-building",
} as const;

const onlyConductors: readonly ElectrodeRole[] = whose.map((system) => ({
  name: `electrode conductor of a ${whoseWords[system]}`,
  policies: policiesOf[system],
  size: (code, supply, material, electrodes) =>
    size(groundingElectrodeConductor, { code, system, supply, conductor: { material }, electrodes }),
}));

const taps: readonly ElectrodeRole[] = whose.map((system) => ({
  name: `tap of a ${whoseWords[system]}`,
  policies: policiesOf[system],
  size: (code, supply, material, electrodes) =>
    size(groundingElectrodeConductor, {
      code,
      system,
      part: "tap",
      supply,
      conductor: { material },
      electrodes,
    }),
}));

const commonConductors: readonly ElectrodeRole[] = (["service", "building"] as const).map((system) => ({
  name: `common conductor of a ${whoseWords[system]}`,
  policies: "grounding-electrode-conductor-common",
  size: (code, supply, material, electrodes) =>
    size(groundingElectrodeConductor, {
      code,
      system,
      part: "common",
      supply,
      conductor: { material },
      electrodes,
    }),
}));

const jumpers: ElectrodeRole = {
  name: "jumper between electrodes",
  policies: "electrode-bonding-jumper",
  size: (code, supply, material, electrodes) =>
    size(electrodeBondingJumper, { code, supply, conductor: { material }, electrodes }),
};

const rod: Electrode = { kind: "rod" };
const concrete: Electrode = { kind: "concrete-encased" };
const ring: Electrode = { kind: "ring", conductor: "2 AWG" };

const supplyWords = "every standard size in 1 to 20 sets of copper and aluminum as supply";

/** Readings of the sizes that a conductor to particular electrodes need not exceed. */
export const electrodeGrids: Readonly<Partial<Record<keyof Readings, ElectrodeGrid>>> = {
  "electrode-ceiling-for-several": {
    words: `${supplyWords}; a copper, aluminum or copper-clad aluminum conductor that serves two rods, two concrete-encased electrodes, a rod and a concrete-encased electrode, a rod and a 2 AWG ring, or a concrete-encased electrode and such a ring`,
    roles: [...onlyConductors, jumpers],
    materials,
    electrodes: [
      [rod, rod],
      [concrete, concrete],
      [rod, concrete],
      [rod, ring],
      [concrete, ring],
    ],
  },
  "electrode-ceiling-on-common-conductor": {
    words: `${supplyWords}; a copper, aluminum or copper-clad aluminum common conductor or tap that serves one rod, one concrete-encased electrode, or one 2 AWG ring`,
    roles: [...commonConductors, ...taps],
    materials,
    electrodes: [[rod], [concrete], [ring]],
  },
  "copper-clad-to-rods": {
    words: `${supplyWords}; a copper-clad aluminum conductor that serves one rod`,
    roles: [...onlyConductors, ...commonConductors, ...taps, jumpers],
    materials: ["copper-clad aluminum"],
    electrodes: [[rod]],
  },
};

/** What each other alternative of a reading changes, over the whole grid. */
export function electrodeRows(reading: keyof Readings, grid: ElectrodeGrid): readonly TallyRow[] {
  const { editions, policy } = readingFacts[reading];
  const alternatives = Object.keys(policy).filter((one) => one !== defaultReadings[reading]);
  return grid.roles.flatMap((role) =>
    editions.flatMap((edition) =>
      alternatives.map((alternative): TallyRow => {
        const tally = tallyOf(casesOf(role, grid, edition, { [reading]: alternative }));
        return { of: role.name, edition, alternative, tally };
      }),
    ),
  );
}

/** The limit acts on what the table requires, so that one supply speaks for all that fall into the same row. */
function casesOf(
  role: ElectrodeRole,
  grid: ElectrodeGrid,
  year: EditionYear,
  readings: Partial<Readings>,
): readonly Case[] {
  return grid.materials.flatMap((material) =>
    rowsOf(role, year, material).flatMap(({ name, supply, count, ordinary }) =>
      grid.electrodes.map((electrodes): Case => {
        const under = (chosen: Partial<Readings>): number =>
          role.size({ year, readings: chosen }, supply, material, electrodes).requiredArea;
        const served = electrodes.map(({ kind }) => kind).join(" and ");
        return {
          name: `${name}, ${material} conductor to ${served}`,
          before: under({}),
          after: under(readings),
          count,
          ordinary,
        };
      }),
    ),
  );
}

interface GridRow {
  readonly name: string;
  readonly supply: Supply;
  readonly count: number;
  readonly ordinary: boolean;
}

function rowsOf({ policies }: ElectrodeRole, year: EditionYear, material: Material): readonly GridRow[] {
  const set = supplyPolicies.get(policies);
  if (set === undefined) throw new TypeError(`there are no policies ${policies}`);
  const areas = requiredAreas(set, year, {}, columnOf(material));
  const rows = new Map<string, GridRow>();
  for (const [i, one] of gridSupplies.entries()) {
    const key = `${one.material} ${areas[i]}`;
    const known = rows.get(key);
    const { size, material: metal, sets: count } = one;
    const supply = { sets: [{ count, size, material: metal }] };
    const ordinary = isOrdinary(one, year);
    const first = known === undefined || (ordinary && !known.ordinary);
    const shown = first ? { name: supplyName(one), supply, ordinary } : known;
    rows.set(key, { ...shown, count: (known?.count ?? 0) + 1 });
  }
  return [...rows.values()];
}

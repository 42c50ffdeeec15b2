import {
  areaOf,
  type ConductorColumn,
  conductorColumns,
  type EditionYear,
  equipmentBondingJumper,
  equipmentGroundingConductor,
  type ProtectedCircuit,
  type Readings,
  type StandardSize,
  size,
  standardSizes,
} from "bondmil";
import { equipmentGrounding } from "../../../src/edition/tables/equipment-grounding.generated.js";
import { defaultReadings, readingFacts } from "../../../src/edition/tables/readings.generated.js";
import { requiredForLoad } from "../../../src/supply/for-load.js";
import { type Case, type TallyRow, tallyOf } from "./tally.js";

/** Circuits with a name, on which a reading may act. */
interface NamedCircuits {
  readonly name: string;
  readonly circuits: readonly ProtectedCircuit[];
  readonly ordinary: boolean;
}

/** The conductors over which a reading is counted where they go by their device, and in words. */
interface DeviceGrid {
  readonly words: string;
  readonly circuits: (year: EditionYear, material: ConductorColumn) => readonly NamedCircuits[];
}

const asLoaded: DeviceGrid = {
  words:
    "every rating that ends a row of the table, on the smallest circuit conductors that carry it, in 1 to 20 sets (from two sets on not below 1/0 AWG), copper and aluminum, without an increase; and as the device of a motor, 250 percent of the current that the conductors carry",
  circuits: (year, material) =>
    ratings(year).flatMap((amperes) => [
      ...conductorsFor(year, amperes, material).map((set) => ({
        name: `${amperes} A on ${nameOf(set)}`,
        circuits: [{ device: { amperes }, conductors: { sets: [set] } }],
        ordinary: set.count <= 6,
      })),
      ...conductorsFor(year, amperes / 2.5, material).map((set) => ({
        name: `a motor's ${amperes} A on ${nameOf(set)}`,
        circuits: [
          {
            device: { motor: { kind: "inverse-time-or-fuse" as const, deviceAmperes: amperes } },
            conductors: { sets: [set] },
          },
        ],
        ordinary: set.count <= 6,
      })),
    ]),
};

const increased: DeviceGrid = {
  words:
    "every rating that ends a row of the table, on the smallest circuit conductors that carry it, in 1 to 20 sets, copper and aluminum, increased by one to five standard sizes because temperature or the number of conductors requires it",
  circuits: (year, material) =>
    ratings(year).flatMap((amperes) =>
      conductorsFor(year, amperes, material).flatMap((set) =>
        largerThan(set).map((larger) => ({
          name: `${amperes} A on ${nameOf(larger)}, increased from ${set.size}`,
          circuits: [increasedCircuit(amperes, set, larger, "temperature-or-number")],
          ordinary: set.count <= 6,
        })),
      ),
    ),
};

const shared: DeviceGrid = {
  words:
    "every pair of ratings that end rows of the table, copper and aluminum: the circuit with the larger device on the smallest conductors that carry it, in the fewest sets, the other likewise and increased by one to five standard sizes for voltage drop",
  circuits: (year, material) =>
    ratings(year).flatMap((large) =>
      ratings(year)
        .filter((small) => small < large)
        .flatMap((small) => {
          const [own] = conductorsFor(year, large, material);
          const [other] = conductorsFor(year, small, material);
          if (own === undefined || other === undefined) return [];
          return largerThan(other).map((larger) => ({
            name: `${large} A on ${nameOf(own)} beside ${small} A on ${nameOf(larger)}, increased from ${other.size}`,
            circuits: [
              { device: { amperes: large }, conductors: { sets: [own] } },
              increasedCircuit(small, other, larger, "voltage-drop"),
            ],
            ordinary: true,
          }));
        }),
    ),
};

/** Readings of conductors that go by their device. */
export const deviceGrids: Readonly<Partial<Record<keyof Readings, DeviceGrid>>> = {
  "equipment-grounding-limit": asLoaded,
  "equipment-grounding-limit-in-2026": asLoaded,
  "load-side-jumper-limit": asLoaded,
  "increase-in-2014": increased,
  "shared-equipment-grounding": shared,
};

const sizing: Readonly<
  Record<
    string,
    (year: EditionYear, readings: Partial<Readings>, of: NamedCircuits, material: ConductorColumn) => number
  >
> = {
  "equipment-grounding-conductor": (year, readings, { circuits }, material) =>
    size(equipmentGroundingConductor, { code: { year, readings }, circuits, conductor: { material } })
      .requiredArea,
  "equipment-bonding-jumper": (year, readings, { circuits }, material) =>
    size(equipmentBondingJumper, { code: { year, readings }, circuits, conductor: { material } })
      .requiredArea,
};

/** What each other alternative of a reading changes, over the circuits for which it is counted. */
export function deviceRows(reading: keyof Readings, { circuits }: DeviceGrid): readonly TallyRow[] {
  const { policies, editions, policy } = readingFacts[reading];
  const alternatives = Object.keys(policy).filter((one) => one !== defaultReadings[reading]);
  return policies.flatMap((of) => {
    const size = sizing[of];
    if (size === undefined) throw new TypeError(`no role for the policies ${of}`);
    return editions.flatMap((edition) => {
      const grid = conductorColumns.flatMap((wire) =>
        circuits(edition, wire).flatMap((one) =>
          conductorColumns.map((material) => ({ one, material, before: size(edition, {}, one, material) })),
        ),
      );
      return alternatives.map((alternative): TallyRow => {
        const cases = grid.map(
          ({ one, material, before }): Case => ({
            name: `${one.name}, ${material} conductor`,
            before,
            after: size(edition, { [reading]: alternative }, one, material),
            count: 1,
            ordinary: one.ordinary,
          }),
        );
        return { of, edition, alternative, tally: tallyOf(cases) };
      });
    });
  });
}

interface GridSet {
  readonly count: number;
  readonly size: StandardSize;
  readonly material: ConductorColumn;
}

function ratings(year: EditionYear): readonly number[] {
  return equipmentGrounding[year].rows.map(({ through }) => through);
}

const known = new Map<string, readonly GridSet[]>();

function conductorsFor(year: EditionYear, amperes: number, material: ConductorColumn): readonly GridSet[] {
  const key = `${year} ${amperes} ${material}`;
  const found = known.get(key) ?? setsFor(year, amperes, material);
  known.set(key, found);
  return found;
}

function setsFor(year: EditionYear, amperes: number, material: ConductorColumn): readonly GridSet[] {
  const counts = Array.from({ length: 20 }, (_, at) => at + 1);
  return counts.flatMap(
    (sets) => (requiredForLoad(year, { amperes, material, sets })?.sets ?? []) as readonly GridSet[],
  );
}

function largerThan(set: GridSet): readonly GridSet[] {
  return standardSizes
    .filter((size) => areaOf(size) > areaOf(set.size))
    .slice(0, 5)
    .map((size) => ({ ...set, size }));
}

function increasedCircuit(
  amperes: number,
  from: GridSet,
  to: GridSet,
  reason: "voltage-drop" | "temperature-or-number",
): ProtectedCircuit {
  return {
    device: { amperes },
    conductors: { sets: [to] },
    increasedFrom: { conductors: { sets: [from] }, reason },
  };
}

function nameOf({ count, size, material }: GridSet): string {
  return `${count} x ${size} ${material}`;
}

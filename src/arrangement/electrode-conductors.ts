import type { Citation } from "../edition/index.js";
import { commonConductorOfDerivedSystems } from "../edition/tables/named-sizes.generated.js";
import {
  derivedElectrodeConnection,
  serviceElectrodeCommon,
  serviceElectrodeIndividual,
  serviceElectrodeOnePlace,
} from "../edition/tables/sections.generated.js";
import { readAll } from "../input/reader.js";
import { sizeCommonConductorOfDerivedSystems } from "../rules/common-derived-electrode-conductor.js";
import { sizeGroundingElectrodeConductor } from "../rules/grounding-electrode-conductor.js";
import type { ElectrodeConductorInput } from "../rules/grounding-electrode-conductor-input.js";
import type { Supply } from "../supply/index.js";
import {
  type Arrangement,
  type ArrangementComparison,
  type Connection,
  type ConnectionNote,
  compareArrangements,
  type PlacedConductor,
  totalAreaOf,
} from "./arrangement.js";
import {
  type DerivedElectrodesInput,
  type ElectrodeArrangementInput,
  type EnclosureElectrodesInput,
  readElectrodeArrangement,
} from "./electrode-conductors-input.js";
import { joinSupplies, type SuppliedPlace } from "./enclosure.js";

/**
 * Puts the ways to connect several places to the electrodes side by side. For several enclosures of a service, or of a building on
 * a feeder, there are three (250.64(D)): a common conductor with a tap into each enclosure, by each set's largest conductor added;
 * an individual conductor from each; one conductor from an accessible place on the supply side, by the conductors there. For several
 * separately derived systems there are two (250.30(A)(5), (6)): a common conductor of a fixed size with a tap from each system, or
 * an individual conductor from each. One place alone has one way.
 *
 * @param input - the code, the enclosures or systems with their ungrounded conductors, the material, and the electrodes
 * @returns the arrangements; total metal counts every conductor once, whatever its length
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { arrangeElectrodeConductors } from "bondmil";
 * const { arrangements } = arrangeElectrodeConductors({
 *   code: { year: "2020" },
 *   of: "service",
 *   enclosures: [
 *     { id: "D1", supply: { sets: [{ count: 1, size: "3/0 AWG", material: "copper" }] } },
 *     { id: "D2", supply: { sets: [{ count: 1, size: "3/0 AWG", material: "copper" }] } },
 *   ],
 *   conductor: { material: "copper" },
 *   electrodes: [{ kind: "metal-water-pipe" }],
 * });
 * arrangements.map(({ conductors }) => conductors.map(({ at, result }) => [at, result.requiredArea]));
 * // => [
 * //   [["common", 66360], ["D1", 41740], ["D2", 41740]],
 * //   [["D1", 41740], ["D2", 41740]],
 * //   [["supply side", 66360]],
 * // ]
 * ```
 */
export function arrangeElectrodeConductors(input: ElectrodeArrangementInput): ArrangementComparison {
  const read = readAll(input, readElectrodeArrangement);
  const arrangements = read.of === "separately-derived" ? waysOfSystems(read) : waysOfEnclosures(read);
  return compareArrangements(read.code.year, arrangements);
}

function waysOfEnclosures(input: EnclosureElectrodesInput): readonly Arrangement[] {
  const { code, enclosures, wireway, fromDrop } = input;
  const ids = idsOf(enclosures);
  const all = joinSupplies(enclosures);
  const individual = arrange(
    "individual-electrode-conductors",
    serviceElectrodeIndividual[code.year],
    enclosures.map(({ id, supply }) => conductorAt(input, id, supply)),
    [connected(ids, "from-each-enclosure", serviceElectrodeIndividual[code.year])],
  );
  if (enclosures.length === 1) return [individual];
  const common = { part: "common", ...(fromDrop === undefined ? {} : { fromDrop }) } as const;
  return [
    arrange(
      "common-electrode-conductor",
      serviceElectrodeCommon[code.year],
      [
        conductorAt(input, commonPlace, all, common),
        ...enclosures.map(({ id, supply }) => tapAt(input, id, supply)),
      ],
      [connected(ids, "tap-into-each-enclosure", serviceElectrodeCommon[code.year])],
    ),
    individual,
    arrange(
      "electrode-conductor-at-one-place",
      serviceElectrodeOnePlace[code.year],
      [conductorAt(input, wireway?.id ?? "supply side", wireway?.supply ?? all)],
      [
        connected(
          wireway === undefined ? [] : [wireway.id],
          "at-one-place-ahead",
          serviceElectrodeOnePlace[code.year],
        ),
      ],
    ),
  ];
}

function waysOfSystems(input: DerivedElectrodesInput): readonly Arrangement[] {
  const { code, systems, conductor, electrodes } = input;
  const ids = idsOf(systems);
  const { citation } = commonConductorOfDerivedSystems[code.year];
  const individual = arrange(
    "individual-electrode-conductors",
    derivedElectrodeConnection[code.year],
    systems.map(({ id, supply }) => conductorAt(input, id, supply)),
    [connected(ids, "at-the-jumper", derivedElectrodeConnection[code.year])],
  );
  if (systems.length === 1) return [individual];
  const common: PlacedConductor = {
    id: `grounding-electrode-conductor ${commonPlace}`,
    at: commonPlace,
    result: sizeCommonConductorOfDerivedSystems({ code, conductor, electrodes }),
  };
  return [
    arrange(
      "common-electrode-conductor",
      citation,
      [common, ...systems.map(({ id, supply }) => tapAt(input, id, supply))],
      [
        connected(ids, "at-the-jumper", citation),
        { ...connected([], "frame-may-serve-as-common", citation), standing: "permitted" },
      ],
    ),
    individual,
  ];
}

const commonPlace = "common";

function arrange(
  id: Arrangement["id"],
  citation: Citation,
  conductors: readonly PlacedConductor[],
  connections: readonly Connection[],
): Arrangement {
  const totalArea = totalAreaOf(conductors);
  return { id, standing: "permitted", citation, conductors, totalArea, connections, cautions: [] };
}

function connected(at: readonly string[], note: ConnectionNote, citation: Citation): Connection {
  return { kind: "grounding-electrode-conductor", standing: "required", at, note, citation };
}

function tapAt(input: ElectrodeArrangementInput, at: string, supply: Supply): PlacedConductor {
  return { ...conductorAt(input, at, supply, { part: "tap" }), id: `grounding-electrode-tap ${at}` };
}

function conductorAt(
  { code, of, conductor, electrodes }: ElectrodeArrangementInput,
  at: string,
  supply: Supply,
  more: Pick<ElectrodeConductorInput, "part" | "fromDrop"> = {},
): PlacedConductor {
  return {
    id: `grounding-electrode-conductor ${at}`,
    at,
    result: sizeGroundingElectrodeConductor({ code, of, supply, conductor, electrodes, ...more }),
  };
}

function idsOf(places: readonly SuppliedPlace[]): readonly string[] {
  return places.map(({ id }) => id);
}

import { assemblyDivided } from "../edition/tables/placements.generated.js";
import {
  listedAssembly,
  mainJumperPlace,
  mainJumperSeveralEnclosures,
  numberOfDisconnects,
  serviceBoxes,
  serviceElectrodeConnection,
  serviceElectrodeSeveralEnclosures,
  serviceGroundedConductor,
  serviceLoadSide,
  supplySideConnections,
} from "../edition/tables/sections.generated.js";
import { member, optional, type Reader, readAll, readObject } from "../input/reader.js";
import type { Caution } from "../rules/caution.js";
import { sizeMainBondingJumper } from "../rules/main-bonding-jumper.js";
import { sizeSupplySideBondingJumper } from "../rules/supply-side-bonding-jumper.js";
import {
  type Arrangement,
  type ArrangementComparison,
  type Connection,
  compareArrangements,
  totalAreaOf,
} from "./arrangement.js";
import {
  type CommonInput,
  commonKeys,
  joinSupplies,
  jumperInput,
  readCommon,
  readSuppliedPlace,
  refuseDuplicates,
  type SuppliedPlace,
  withPaths,
} from "./enclosure.js";

/** A service with one enclosure or several. */
export interface ServiceInput extends CommonInput {
  /** A wireway, gutter or box ahead of the enclosures, with all the conductors that supply it. */
  readonly wireway?: SuppliedPlace;
}

/**
 * Puts the legal arrangements of a service's main bonding jumpers side by side: one in the enclosure of each disconnect,
 * by the conductors to it (250.28(D)(2)), with a supply-side bonding jumper for a wireway ahead of them; or one in an
 * assembly that is listed as service equipment, by all conductors that supply it. Each says where the grounded conductor
 * and the electrode conductor are then connected, and which further connections are normal and which are a fault.
 *
 * @param input - the code, the enclosures with the ungrounded conductors to each, and the jumper's material and form
 * @returns the arrangements; a service with one enclosure has one
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { arrangeService } from "bondmil";
 * const { arrangements } = arrangeService({
 *   code: { year: "2020" },
 *   wireway: { id: "W1", supply: { sets: [{ count: 2, size: "600 kcmil", material: "copper" }] } },
 *   enclosures: [
 *     { id: "D1", supply: { sets: [{ count: 1, size: "600 kcmil", material: "copper" }] } },
 *     { id: "D2", supply: { sets: [{ count: 1, size: "3/0 AWG", material: "copper" }] } },
 *   ],
 *   jumper: { material: "copper" },
 * });
 * const [inEach, inAssembly] = arrangements;
 * inEach?.conductors.map(({ id, result }) => [id, result.requiredArea]);
 * // => [
 * //   ["main-bonding-jumper D1", 105600],
 * //   ["main-bonding-jumper D2", 41740],
 * //   ["supply-side-bonding-jumper W1", 150000],
 * // ]
 * inAssembly?.conductors.map(({ id, result }) => [id, result.requiredArea]);
 * // => [["main-bonding-jumper assembly", 150000]]
 * ```
 */
export function arrangeService(input: ServiceInput): ArrangementComparison {
  const read = readAll(input, readService);
  const arrangements = [inEachEnclosure(read)];
  if (read.enclosures.length > 1) arrangements.push(inListedAssembly(read));
  return compareArrangements(read.code.year, arrangements);
}

function inEachEnclosure(input: ServiceInput): Arrangement {
  const { code, enclosures, wireway } = input;
  const { year } = code;
  const ids = enclosures.map(({ id }) => id);
  const conductors = enclosures.map(({ id, supply }) => ({
    id: `main-bonding-jumper ${id}`,
    at: id,
    result: sizeMainBondingJumper(jumperInput(input, supply)),
  }));
  const connections: Connection[] = [
    {
      kind: "grounded-conductor",
      standing: "required",
      at: ids,
      note: "bonded-in-each-enclosure",
      citation: serviceGroundedConductor[year],
    },
    electrodeConnection(input, ids),
  ];
  const cautions: Caution[] = [...disconnectCautions(input)];
  if (wireway !== undefined) {
    conductors.push({
      id: `supply-side-bonding-jumper ${wireway.id}`,
      at: wireway.id,
      result: sizeSupplySideBondingJumper(jumperInput(input, wireway.supply)),
    });
    connections.push({
      kind: "supply-side-bonding-jumper",
      standing: "required",
      at: [wireway.id],
      note: "by-jumper-or-grounded-conductor",
      citation: serviceBoxes[year],
    });
    cautions.push({ code: "jumper-in-wireway", section: mainJumperPlace[year].section });
  }
  return {
    id: "jumper-in-each-enclosure",
    standing: "permitted",
    citation: ids.length > 1 ? mainJumperSeveralEnclosures[year] : mainJumperPlace[year],
    conductors,
    totalArea: totalAreaOf(conductors),
    connections: [...connections, ...furtherConnections(input)],
    cautions,
  };
}

function inListedAssembly(input: ServiceInput): Arrangement {
  const { code, enclosures, wireway } = input;
  const { year } = code;
  const at = "assembly";
  const supply = wireway?.supply ?? joinSupplies(enclosures);
  const result = sizeMainBondingJumper(jumperInput(input, supply));
  const conductors = [{ id: `main-bonding-jumper ${at}`, at, result }];
  const cautions: Caution[] = [{ code: "assembly-size-inferred", section: listedAssembly[year].section }];
  if (assemblyDivided[year]) {
    cautions.push({ code: "assembly-narrowed", section: numberOfDisconnects[year].section });
  }
  return {
    id: "one-jumper-in-listed-assembly",
    standing: "permitted",
    citation: listedAssembly[year],
    conductors,
    totalArea: totalAreaOf(conductors),
    connections: [
      {
        kind: "grounded-conductor",
        standing: "required",
        at: [at],
        note: "bonded-at-assembly-terminal",
        citation: listedAssembly[year],
      },
      electrodeConnection(input, [at]),
      ...furtherConnections(input),
    ],
    cautions: [...cautions, ...disconnectCautions(input)],
  };
}

function electrodeConnection({ code }: ServiceInput, at: readonly string[]): Connection {
  const several = at.length > 1;
  return {
    kind: "grounding-electrode-conductor",
    standing: "required",
    at: several ? [] : at,
    note: several ? "common-individual-or-one-place" : "anywhere-on-supply-side",
    citation: several ? serviceElectrodeSeveralEnclosures[code.year] : serviceElectrodeConnection[code.year],
  };
}

function furtherConnections({ code }: ServiceInput): readonly Connection[] {
  return [
    {
      kind: "second-connection-supply-side",
      standing: "permitted",
      at: [],
      note: "several-on-supply-side-are-normal",
      citation: supplySideConnections[code.year],
    },
    {
      kind: "second-connection-load-side",
      standing: "fault",
      at: [],
      note: "none-beyond-the-disconnect",
      citation: serviceLoadSide[code.year],
    },
  ];
}

function disconnectCautions({ code, enclosures }: ServiceInput): readonly Caution[] {
  const { section } = numberOfDisconnects[code.year];
  return enclosures.length > 6 ? [{ code: "more-than-six-disconnects", section }] : [];
}

function readService(at: Reader): ServiceInput | undefined {
  if (!readObject(at, [...commonKeys, "wireway"])) return undefined;
  const common = readCommon(at);
  const wireway = optional(member(at, "wireway"), readSuppliedPlace);
  if (common === undefined) return undefined;
  const ahead = wireway === undefined ? [] : [{ id: wireway.id, path: "wireway" }];
  refuseDuplicates(at, [...withPaths("enclosures", common.enclosures), ...ahead]);
  return { ...common, ...(wireway && { wireway }) };
}

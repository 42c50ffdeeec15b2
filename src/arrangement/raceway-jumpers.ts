import type { TemperatureColumn } from "../ampacity/index.js";
import { type Code, readCode } from "../edition/index.js";
import { serviceBoxes } from "../edition/tables/sections.generated.js";
import { member, optional, type Reader, readAll, readList, readObject } from "../input/reader.js";
import { type JumperRequest, readJumperRequest } from "../rules/jumper-input.js";
import { sizeSupplySideBondingJumper } from "../rules/supply-side-bonding-jumper.js";
import { readSystemKind, type SystemKind } from "../rules/system-kind.js";
import { readColumn } from "../supply/for-load.js";
import type { Supply } from "../supply/index.js";
import { areLikePhases } from "../supply/read.js";
import {
  type Arrangement,
  type ArrangementComparison,
  type Connection,
  compareArrangements,
  type PlacedConductor,
  totalAreaOf,
} from "./arrangement.js";
import {
  joinSupplies,
  readSuppliedPlace,
  refuseDuplicates,
  type SuppliedPlace,
  withPaths,
} from "./enclosure.js";

/** Metal raceways that end together, each with the ungrounded conductors in it. */
export interface RacewayJumpersInput {
  readonly code: Code;
  /** A service unless told. */
  readonly system?: SystemKind;
  readonly raceways: readonly SuppliedPlace[];
  readonly jumper: JumperRequest;
  readonly temperature?: TemperatureColumn;
}

/**
 * Puts the two ways to bond several metal raceways on the supply side side by side: a supply-side bonding jumper in each, by the
 * ungrounded conductors in that raceway, or one jumper in common, by all of them (250.102(C)(2)).
 *
 * @param input - the code, the raceways with what runs in each, and the jumper's material and form
 * @returns the arrangements; one raceway has one
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { arrangeRacewayJumpers } from "bondmil";
 * const supply = { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] } as const;
 * const { arrangements } = arrangeRacewayJumpers({
 *   code: { year: "2020" },
 *   raceways: ["A", "B", "C"].map((id) => ({ id, supply })),
 *   jumper: { material: "copper" },
 * });
 * arrangements.map((one) => one.conductors.map(({ result }) => result.requiredArea));
 * // => [[105600, 105600, 105600], [187500]]
 * ```
 */
export function arrangeRacewayJumpers(input: RacewayJumpersInput): ArrangementComparison {
  const read = readAll(input, readInput);
  const arrangements = [inEachRaceway(read)];
  if (read.raceways.length > 1) arrangements.push(inCommon(read));
  return compareArrangements(read.code.year, arrangements);
}

function inEachRaceway(input: RacewayJumpersInput): Arrangement {
  const conductors = input.raceways.map(({ id, supply }) => jumperAt(input, id, supply, "raceway"));
  return arrangementOf(input, "jumper-in-each-raceway", conductors);
}

function inCommon(input: RacewayJumpersInput): Arrangement {
  return arrangementOf(input, "one-common-raceway-jumper", [
    jumperAt(input, "all raceways", joinSupplies(input.raceways), "all"),
  ]);
}

function arrangementOf(
  { code, raceways }: RacewayJumpersInput,
  id: Arrangement["id"],
  conductors: readonly PlacedConductor[],
): Arrangement {
  const connection: Connection = {
    kind: "supply-side-bonding-jumper",
    standing: "required",
    at: raceways.map((raceway) => raceway.id),
    note: "by-jumper-or-grounded-conductor",
    citation: serviceBoxes[code.year],
  };
  const citation = conductors[0]?.result.citation ?? serviceBoxes[code.year];
  return {
    id,
    standing: "permitted",
    citation,
    conductors,
    totalArea: totalAreaOf(conductors),
    connections: [connection],
    cautions: [],
  };
}

function jumperAt(
  { code, system, jumper, temperature }: RacewayJumpersInput,
  at: string,
  supply: Supply,
  scope: "raceway" | "all",
): PlacedConductor {
  const result = sizeSupplySideBondingJumper({
    code,
    supply,
    jumper,
    scope,
    ...(system && { system }),
    ...(temperature && { temperature }),
  });
  return { id: `supply-side-bonding-jumper ${at}`, at, result };
}

function readInput(at: Reader): RacewayJumpersInput | undefined {
  if (!readObject(at, ["code", "system", "raceways", "jumper", "temperature"])) return undefined;
  const code = readCode(member(at, "code"));
  const system = optional(member(at, "system"), readSystemKind);
  const raceways = readList(member(at, "raceways"), readSuppliedPlace);
  const jumper = readJumperRequest(member(at, "jumper"));
  const temperature = optional(member(at, "temperature"), readColumn);
  if (raceways === undefined || code === undefined || jumper === undefined) return undefined;
  refuseDuplicates(at, withPaths("raceways", raceways));
  const sets = raceways.flatMap(({ supply }) => supply.sets);
  if (!areLikePhases(member(at, "raceways"), sets)) return undefined;
  return { code, raceways, jumper, ...(system && { system }), ...(temperature && { temperature }) };
}

import { chosenReading, citeAmendment, overruledReadings } from "../edition/index.js";
import {
  bothEndsAllowedFor,
  outdoorSourceAtSource,
  supplySideJumperWithBothEnds,
} from "../edition/tables/placements.generated.js";
import {
  derivedElectrodeConnection,
  derivedGroundedConductor,
  derivedLoadSide,
  derivedSupplySideJumper,
  outdoorSource,
  systemJumperBothEnds,
  systemJumperPlace,
  systemJumperSeveralEnclosures,
} from "../edition/tables/sections.generated.js";
import { member, type Reader, readAll, readFlag, readName, readObject } from "../input/reader.js";
import { sizeSystemBondingJumper } from "../rules/system-bonding-jumper.js";
import type { Supply } from "../supply/index.js";
import {
  type Arrangement,
  type ArrangementComparison,
  type ArrangementStanding,
  type Connection,
  compareArrangements,
  type PlacedConductor,
  totalAreaOf,
} from "./arrangement.js";
import {
  type CommonInput,
  commonKeys,
  joinSupplies,
  jumperInput,
  readCommon,
  refuseDuplicates,
  withPaths,
} from "./enclosure.js";

/** The source of a separately derived system. */
export interface DerivedSource {
  /** Name on the drawing. */
  readonly id: string;
  /** Whether the source stands outside the building that it supplies. */
  readonly outdoors: boolean;
}

/** A separately derived system that feeds one enclosure or several. */
export interface DerivedSystemInput extends CommonInput {
  readonly source: DerivedSource;
}

/**
 * Puts the arrangements of a separately derived system's system bonding jumpers side by side: one in the enclosure of each
 * first disconnect, by the feeder to it; one at the source, by the largest sum of corresponding conductors of all feeders
 * (250.28(D)(3)); and, for a single enclosure, jumpers at both ends where the exception allows it. Each says whether it is
 * permitted, where the grounded conductor and the electrode conductor are then connected, and which second connection is a
 * fault.
 *
 * @param input - the code, the source, the enclosures with the ungrounded feeder conductors to each, and the jumper
 * @returns the arrangements, also those that are not permitted, marked as such
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { arrangeSeparatelyDerivedSystem } from "bondmil";
 * const { arrangements } = arrangeSeparatelyDerivedSystem({
 *   code: { year: "2017" },
 *   source: { id: "T1", outdoors: false },
 *   enclosures: [
 *     { id: "P1", supply: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] } },
 *     { id: "P2", supply: { sets: [{ count: 2, size: "500 kcmil", material: "copper" }] } },
 *   ],
 *   jumper: { material: "copper" },
 * });
 * arrangements.map((one) => one.conductors.map(({ at, result }) => [at, result.requiredArea]));
 * // => [[["P1", 105600], ["P2", 133100]], [["T1", 187500]]]
 * ```
 */
export function arrangeSeparatelyDerivedSystem(input: DerivedSystemInput): ArrangementComparison {
  const read = readAll(input, readDerivedSystem);
  const arrangements = [inEachEnclosure(read), atSource(read)];
  if (read.enclosures.length === 1) arrangements.push(atBothEnds(read));
  return compareArrangements(read.code.year, arrangements);
}

function inEachEnclosure(input: DerivedSystemInput): Arrangement {
  const { code, source, enclosures } = input;
  const { year } = code;
  const ids = idsOf(input);
  const several = ids.length > 1;
  const conductors = enclosures.map(({ id, supply }) => jumperAt(input, id, supply));
  const boundToSource = source.outdoors && outdoorSourceAtSource[year];
  return {
    id: "jumper-in-each-enclosure",
    standing: boundToSource ? "not-permitted" : "permitted",
    citation: boundToSource ? outdoorSource[year] : placeCitation(input),
    conductors,
    totalArea: totalAreaOf(conductors),
    connections: [
      {
        kind: "grounded-conductor",
        standing: "required",
        at: ids,
        note: "table-minimum-applies",
        citation: derivedGroundedConductor[year],
      },
      {
        kind: "grounding-electrode-conductor",
        standing: "required",
        at: ids,
        note: several ? chosenReading(code, "electrode-connection-with-several-jumpers") : "at-the-jumper",
        citation: derivedElectrodeConnection[year],
      },
      supplySideJumper(input),
      {
        kind: "second-connection-at-source",
        standing: "fault",
        at: [source.id],
        note: "only-one-point-per-system",
        citation: systemJumperPlace[year],
      },
      loadSide(input),
    ],
    cautions: [...outdoorCaution(input), ...(several ? overruledCaution(input) : [])],
  };
}

function atSource(input: DerivedSystemInput): Arrangement {
  const { code, source, enclosures } = input;
  const { year } = code;
  const ids = idsOf(input);
  const conductors = [jumperAt(input, source.id, joinSupplies(enclosures))];
  return {
    id: "jumper-at-source",
    standing: "permitted",
    citation: placeCitation(input),
    conductors,
    totalArea: totalAreaOf(conductors),
    connections: [
      {
        kind: "grounded-conductor",
        standing: "permitted",
        at: ids,
        note: "sized-for-its-load-only",
        citation: derivedGroundedConductor[year],
      },
      {
        kind: "grounding-electrode-conductor",
        standing: "required",
        at: [source.id],
        note: "at-the-source",
        citation: source.outdoors ? outdoorSource[year] : derivedElectrodeConnection[year],
      },
      supplySideJumper(input),
      {
        kind: "second-connection-at-disconnect",
        standing: "fault",
        at: ids,
        note: "only-one-point-per-system",
        citation: systemJumperPlace[year],
      },
      loadSide(input),
    ],
    cautions: outdoorCaution(input),
  };
}

function atBothEnds(input: DerivedSystemInput): Arrangement {
  const { code, source, enclosures } = input;
  const { year } = code;
  const ids = idsOf(input);
  const conductors = [
    jumperAt(input, source.id, joinSupplies(enclosures)),
    ...enclosures.map(({ id, supply }) => jumperAt(input, id, supply)),
  ];
  return {
    id: "jumpers-at-source-and-disconnect",
    standing: bothEndsStanding(input),
    citation: systemJumperBothEnds[year],
    conductors,
    totalArea: totalAreaOf(conductors),
    connections: [
      {
        kind: "grounded-conductor",
        standing: "required",
        at: ids,
        note: "at-least-the-jumper",
        citation: systemJumperBothEnds[year],
      },
      {
        kind: "grounding-electrode-conductor",
        standing: "required",
        at: source.outdoors ? [source.id] : [source.id, ...ids],
        note: source.outdoors ? "at-the-source" : "at-one-jumper",
        citation: source.outdoors ? outdoorSource[year] : derivedElectrodeConnection[year],
      },
      supplySideJumperWithBothEnds[year]
        ? supplySideJumper(input)
        : {
            kind: "supply-side-bonding-jumper",
            standing: "permitted",
            at: [],
            note: "not-required-with-both-jumpers",
            citation: derivedSupplySideJumper[year],
          },
      loadSide(input),
    ],
    cautions: outdoorCaution(input),
  };
}

function bothEndsStanding({ code, source }: DerivedSystemInput): ArrangementStanding {
  const allowed = bothEndsAllowedFor[code.year] === "any-system" || source.outdoors;
  return allowed ? "permitted-without-parallel-path" : "not-permitted";
}

function placeCitation({ code, enclosures }: DerivedSystemInput): Arrangement["citation"] {
  return enclosures.length > 1 ? systemJumperSeveralEnclosures[code.year] : systemJumperPlace[code.year];
}

function supplySideJumper(input: DerivedSystemInput): Connection {
  return {
    kind: "supply-side-bonding-jumper",
    standing: "required",
    at: [input.source.id, ...idsOf(input)],
    note: "from-source-to-each-enclosure",
    citation: derivedSupplySideJumper[input.code.year],
  };
}

function loadSide({ code }: DerivedSystemInput): Connection {
  return {
    kind: "second-connection-load-side",
    standing: "fault",
    at: [],
    note: "none-beyond-the-disconnect",
    citation: derivedLoadSide[code.year],
  };
}

function outdoorCaution({ code, source }: DerivedSystemInput): Arrangement["cautions"] {
  return source.outdoors ? [{ code: "outdoor-source", section: outdoorSource[code.year].section }] : [];
}

/** Where the electrode conductor lands is a reading that a jurisdiction may enforce against what the code chooses. */
function overruledCaution({ code }: DerivedSystemInput): Arrangement["cautions"] {
  return overruledReadings(code)
    .filter(({ id }) => id === "electrode-connection-with-several-jumpers")
    .map(({ by }) => ({ code: "enforced-reading-overrules-chosen", section: citeAmendment(by) }));
}

function idsOf({ enclosures }: DerivedSystemInput): readonly string[] {
  return enclosures.map(({ id }) => id);
}

function jumperAt(input: CommonInput, at: string, supply: Supply): PlacedConductor {
  return {
    id: `system-bonding-jumper ${at}`,
    at,
    result: sizeSystemBondingJumper(jumperInput(input, supply)),
  };
}

function readDerivedSystem(at: Reader): DerivedSystemInput | undefined {
  if (!readObject(at, [...commonKeys, "source"])) return undefined;
  const common = readCommon(at);
  const source = readSource(member(at, "source"));
  if (common === undefined || source === undefined) return undefined;
  refuseDuplicates(at, [{ id: source.id, path: "source" }, ...withPaths("enclosures", common.enclosures)]);
  return { ...common, source };
}

function readSource(at: Reader): DerivedSource | undefined {
  if (!readObject(at, ["id", "outdoors"])) return undefined;
  const id = readName(member(at, "id"), "the source, as on the drawing");
  const outdoors = readFlag(member(at, "outdoors"), "whether the source stands outdoors");
  return id === undefined || outdoors === undefined ? undefined : { id, outdoors };
}

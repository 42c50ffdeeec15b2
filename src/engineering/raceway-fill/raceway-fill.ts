import {
  type Citation,
  distinctCitations,
  type EditionYear,
  type Evidence,
  weakestEvidence,
} from "../../edition/index.js";
import { evidenceOfCell } from "../../edition/plain-table.js";
import { racewayFill as fillTable } from "../../edition/tables/raceway-fill.generated.js";
import type { Marks } from "../../input/given-result.js";
import { placeIn, type Reader, readAll, refuse } from "../../input/reader.js";
import { areaIn, type FillArea, type InRaceway, tenThousandths } from "./areas.js";
import { readFillQuestion } from "./read.js";
import type { RacewayFillQuestion, RacewayKind, TradeSize } from "./shape.generated.js";
import {
  type AreaCount,
  type Bore,
  boresOf,
  filledBy,
  fillRow,
  holdIn,
  smallestBore,
} from "./trade-sizes.js";

export type { RacewayFillQuestion, RacewayKind, TradeSize };

/**
 * What to know beside a raceway fill, as stable codes.
 *
 * @example
 * ```ts
 * import { racewayFillCautionCodes } from "bondmil";
 * racewayFillCautionCodes.includes("may-jam"); // => true
 * ```
 */
export const racewayFillCautionCodes = ["may-jam", "rounded-up-in-nipple"] as const;

/** One of {@link racewayFillCautionCodes}. */
export type RacewayFillCautionCode = (typeof racewayFillCautionCodes)[number];

/** Conductors of one kind in the raceway, with the area that counts. */
export interface FilledBy {
  /** How many. */
  readonly count: number;
  /** Square inches of one, as printed or stated. */
  readonly squareInches: number;
  /** Table and evidence of the area; `null` where it was stated. */
  readonly citation: Citation | null;
}

/** How far a raceway is filled, and whether that is permitted. */
export interface Fill {
  /** How many conductors are counted. */
  readonly count: number;
  /** Square inches that they fill. */
  readonly squareInches: number;
  /** Percent of the area of the raceway that they fill, not rounded. */
  readonly percent: number;
  /** Percent that so many may fill: 53, 31 or 40, in a nipple 60. */
  readonly permittedPercent: number;
  /** Square inches that they may fill, as printed for the raceway. */
  readonly permittedSquareInches: number;
  /** Whether the raceway may hold them. */
  readonly fits: boolean;
  /** Whether it may only because their count is rounded up (note 7). */
  readonly byRounding: boolean;
  /** Smallest trade size of the kind that may hold them; `null` if none may. */
  readonly smallestTradeSize: TradeSize | null;
}

/** A raceway with what it holds. Plain JSON. */
export interface RacewayFill extends Fill {
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** Kind of raceway. */
  readonly raceway: RacewayKind;
  /** Trade size that was asked about, else the smallest that may hold all. */
  readonly tradeSize: TradeSize;
  /** Smallest trade size of the kind that may hold all. */
  readonly smallestTradeSize: TradeSize;
  /** Whether it is a nipple. */
  readonly nipple: boolean;
  /** What fills it, in the order of the question, what was added last. */
  readonly conductors: readonly FilledBy[];
  /** The same raceway without what was added; `null` where nothing was. */
  readonly withoutAdded: Fill | null;
  /** Where the edition says so. */
  readonly citations: readonly Citation[];
  /** Weakest evidence among them. */
  readonly evidence: Evidence;
  /** What to know beside it, as stable codes. */
  readonly cautions: readonly RacewayFillCautionCode[];
}

/**
 * How far conductors fill a raceway, whether that is permitted, and the smallest trade size that takes them (Chapter 9 Tables 1, 4, 5, 5A and 8,
 * with notes 3, 4, 5, 7 and 8). Areas are added in whole ten-thousandths of a square inch, as the tables print them.
 *
 * @param question - edition, kind of raceway, its trade size if it is there, the conductors, and what is to be pulled in besides
 * @returns square inches, percent, whether it fits, and the smallest trade size
 * @throws {@link InputError} listing everything that is wrong in the question; more conductors than the largest trade size takes are `out-of-range`
 *
 * @example
 * ```ts
 * import { racewayFill } from "bondmil";
 * const filled = racewayFill({
 *   edition: "2017",
 *   raceway: "rigid-metal",
 *   conductors: [
 *     { count: 1, size: "12 AWG", insulation: "THHN" },
 *     { count: 1, size: "10 AWG", insulation: "THHN" },
 *     { count: 3, size: "8 AWG", insulation: "THHN" },
 *   ],
 * });
 * filled.tradeSize; // => "3/4"
 * filled.squareInches; // => 0.1442
 * filled.permittedSquareInches; // => 0.22
 * ```
 */
export function racewayFill(question: RacewayFillQuestion): RacewayFill {
  return readAll(question, (at) => {
    const read = readFillQuestion(at);
    return read && fillOf(at, read);
  });
}

/** By what a raceway fill is known. */
export const racewayFillMarks: Marks<RacewayFill> = {
  edition: "text",
  raceway: "text",
  tradeSize: "text",
  permittedSquareInches: "number",
  percent: "number",
  conductors: "list",
  citations: "list",
  cautions: "list",
};

function fillOf(at: Reader, question: RacewayFillQuestion): RacewayFill | undefined {
  const { edition, raceway, nipple = false, conductors, added = [] } = question;
  const before = countsOf(edition, conductors);
  const all = [...before, ...countsOf(edition, added)];
  const smallest = smallestBore(edition, raceway, all, nipple);
  if (smallest === null) return refuseTooMany(at, question, all);
  const bore =
    boresOf(edition, raceway).find(({ tradeSize }) => tradeSize === question.tradeSize) ?? smallest;
  const filled = { ...fillIn(question, bore, all), smallestTradeSize: smallest.tradeSize };
  const citations = citationsOf(edition, bore, all, filled, nipple);
  return {
    edition,
    raceway,
    tradeSize: bore.tradeSize,
    nipple,
    ...filled,
    conductors: all.map(({ count, area, citation }) => ({
      count,
      squareInches: area / tenThousandths,
      citation,
    })),
    withoutAdded: added.length === 0 ? null : fillIn(question, bore, before),
    citations,
    evidence: weakestEvidence(citations.map(({ evidence }) => evidence)),
    cautions: cautionsOf(bore, all, filled, nipple),
  };
}

type Counted = AreaCount & Pick<FillArea, "citation">;

function countsOf(edition: EditionYear, conductors: readonly InRaceway[]): readonly Counted[] {
  return conductors.flatMap((one) => {
    const found = areaIn(edition, one);
    return found === null ? [] : [{ count: one.count, ...found }];
  });
}

function fillIn(
  { edition, raceway, nipple = false }: RacewayFillQuestion,
  bore: Bore,
  conductors: readonly Counted[],
): Fill {
  const count = countOf(conductors);
  const filled = filledBy(conductors);
  const { fits, byRounding, permitted } = holdIn(edition, bore, conductors, nipple);
  const row = fillRow(edition, count);
  return {
    count,
    squareInches: filled / tenThousandths,
    percent: (100 * filled) / bore.area,
    permittedPercent: nipple ? row.nipple : row.percent,
    permittedSquareInches: permitted / tenThousandths,
    fits,
    byRounding,
    smallestTradeSize: smallestBore(edition, raceway, conductors, nipple)?.tradeSize ?? null,
  };
}

function countOf(conductors: readonly AreaCount[]): number {
  return conductors.reduce((sum, one) => sum + one.count, 0);
}

function citationsOf(
  edition: EditionYear,
  bore: Bore,
  conductors: readonly Counted[],
  { count, byRounding }: Fill,
  nipple: boolean,
): readonly Citation[] {
  const table = fillTable[edition];
  const row = String(fillRow(edition, count).conductors ?? "last");
  const cite = (section: string, column: string): Citation => ({
    section,
    evidence: evidenceOfCell(table, row, column),
  });
  return distinctCitations([
    nipple ? cite("Chapter 9 note 4", "nipple") : cite(table.number, "percent"),
    ...(byRounding ? [cite("Chapter 9 note 7", "roundsUpFrom")] : []),
    { ...bore.citation },
    ...conductors.flatMap(({ citation }) => citation ?? []),
  ]);
}

/** Ratios of the diameter of the raceway to that of one of three alike conductors at which they may wedge (note to Table 1). */
const jamsFrom = 2.8;
const jamsThrough = 3.2;

function cautionsOf(
  bore: Bore,
  conductors: readonly AreaCount[],
  { count, byRounding }: Fill,
  nipple: boolean,
): readonly RacewayFillCautionCode[] {
  const areas = conductors.map(({ area }) => area);
  const [area = 0] = areas;
  const ratio = bore.diameter / Math.sqrt((4 * area) / tenThousandths / Math.PI);
  const jams = count === 3 && areas.every((one) => one === area) && ratio >= jamsFrom && ratio <= jamsThrough;
  return [
    ...(jams ? ["may-jam" as const] : []),
    ...(nipple && byRounding ? ["rounded-up-in-nipple" as const] : []),
  ];
}

function refuseTooMany(
  at: Reader,
  { edition, raceway, added }: RacewayFillQuestion,
  all: readonly AreaCount[],
): undefined {
  const largest = boresOf(edition, raceway).at(-1) as Bore;
  const room = largest.more / tenThousandths;
  return refuse(
    placeIn(at, [added === undefined ? "conductors" : "added"], countOf(all)),
    "out-of-range",
    `conductors that trade size ${largest.tradeSize} takes, ${room} in2 of more than two, not ${filledBy(all) / tenThousandths} in2`,
    "divide them among several raceways, or take another kind",
  );
}

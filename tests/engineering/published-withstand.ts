import type { ConductorSize } from "bondmil";

/** A coefficient of I = coefficient x A / sqrt(t), as a source prints it. */
export interface PublishedCoefficient {
  readonly id: string;
  readonly source: string;
  readonly locator: string;
  readonly material: "copper" | "aluminum";
  readonly initial: number;
  readonly final: number;
  readonly printed: number;
  /** Decimals that the source prints. */
  readonly decimals: number;
  /** Why the formula of the same source gives another figure; absent where they agree. */
  readonly disputed?: string;
}

const sheet = { source: "cable-maker-short-circuit-sheet-2010", locator: "formula block of the first page" };

export const publishedCoefficients: readonly PublishedCoefficient[] = [
  {
    ...sheet,
    id: "copper-90-to-250",
    material: "copper",
    initial: 90,
    final: 250,
    printed: 0.07195,
    decimals: 5,
  },
  {
    ...sheet,
    id: "copper-105-to-250",
    material: "copper",
    initial: 105,
    final: 250,
    printed: 0.06773,
    decimals: 5,
    disputed: "0.0297 and 234, printed in the same sheet, give 0.06777; a slip in the last digit",
  },
  {
    ...sheet,
    id: "aluminum-90-to-250",
    material: "aluminum",
    initial: 90,
    final: 250,
    printed: 0.047,
    decimals: 4,
  },
  {
    ...sheet,
    id: "aluminum-105-to-250",
    material: "aluminum",
    initial: 105,
    final: 250,
    printed: 0.044,
    decimals: 3,
  },
];

/** Circular mils for each ampere of fault current, as a source prints them. */
export interface PublishedMultiplier {
  readonly id: string;
  readonly source: string;
  readonly locator: string;
  readonly cycles: number;
  readonly initial: number;
  readonly final: number;
  readonly printed: number;
  readonly decimals: number;
  readonly disputed?: string;
}

const multipliers = {
  source: "forum-multipliers-for-bonding-conductors",
  locator: "table of multipliers in the quoted text",
  // The text names 250 C only; 75 C is the initial temperature that reproduces three of its four figures.
  initial: 75,
  final: 250,
  decimals: 2,
};

export const publishedMultipliers: readonly PublishedMultiplier[] = [
  {
    ...multipliers,
    id: "half-cycle",
    cycles: 0.5,
    printed: 1.56,
    disputed: "the formula gives 1.20; the figure is 1.3 times that, apparently for asymmetry",
  },
  { ...multipliers, id: "one-cycle", cycles: 1, printed: 1.7 },
  { ...multipliers, id: "two-cycles", cycles: 2, printed: 2.4 },
  { ...multipliers, id: "three-cycles", cycles: 3, printed: 2.94 },
];

/** What a source says that one conductor withstands, copper from 75 C to 150 C. */
export interface PublishedWithstand {
  readonly id: string;
  readonly source: string;
  readonly locator: string;
  readonly size: ConductorSize;
  /** Seconds, and the amperes that the source gives for them. */
  readonly seconds: number;
  readonly amperes: number;
  /** The printed amperes are whole multiples of this. */
  readonly step: number;
}

export const publishedWithstands: readonly PublishedWithstand[] = [
  {
    id: "ten-awg-one-cycle",
    source: "fuse-maker-wire-and-cable-protection",
    locator: "text beside the chart for copper with 75 C thermoplastic insulation",
    size: "10 AWG",
    seconds: 1 / 60,
    amperes: 4300,
    step: 100,
  },
];

/** The withstand of 10 AWG copper in the substantiation behind Table 240.92(B): 303 thousand ampere-squared seconds. */
export const publishedCapacity = {
  id: "ten-awg-capacity",
  source: "forum-how-to-apply-tap-short-circuit-table",
  locator: "quotation of the substantiation of proposal 10-21",
  size: "10 AWG",
  printed: 303_000,
  disputed:
    "temperatures are not named; from 75 C to 150 C the formula gives 302,000, and 5 s x (246 A)2, the rounded five-second current, gives 303,000",
} as const;

/** One ampere per 42.25 circular mils for five seconds; the formula gives 42.24. */
export const publishedRule = {
  id: "one-ampere-per-42-circular-mils",
  source: "forum-one-ampere-per-42-circular-mils",
  locator: "question 1 of the first post",
  printed: 42.25,
  seconds: 5,
} as const;

/** Five-second currents that follow from the rule; no outside figure. */
export const fiveSecondAmperes: readonly (readonly [ConductorSize, number])[] = [
  ["6 AWG", 621],
  ["4 AWG", 988],
  ["2 AWG", 1571],
  ["1/0 AWG", 2499],
  ["3/0 AWG", 3972],
  ["4/0 AWG", 5008],
  ["250 kcmil", 5917],
  ["500 kcmil", 11834],
];

/** The constants as the tables of the code state them. */
export const publishedConstants = [
  { source: "nfpa-70-2023", locator: "Table 240.92(B)", material: "copper", factor: 0.0297, offset: 234 },
  { source: "nfpa-70-2023", locator: "Table 240.92(B)", material: "aluminum", factor: 0.0125, offset: 228 },
] as const;

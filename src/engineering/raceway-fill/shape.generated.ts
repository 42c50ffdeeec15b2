// Generated from shape.ts by "npm run generate"; do not edit.
import type { ConductorSize } from "../../conductor/index.js";
import { readSize } from "../../conductor/read.js";
import type { EditionYear } from "../../edition/edition-year.js";
import type { Shape } from "../../input/shapes.js";

/** Bare conductors of one size in a raceway, by their overall area (Chapter 9 note 8 and Table 8). */
export interface BareInRaceway {
  /** How many of them are in the raceway. */
  readonly count: number;
  /** Trade size, for example 4/0 AWG or 500 kcmil. */
  readonly size: ConductorSize;
  /** How the bare conductor is made. */
  readonly bare: "stranded" | "solid";
}

export const bareInRacewayShape: Shape = {
  is: "object",
  members: {
    count: { is: "number", unit: "conductors", whole: true },
    size: { is: "checked", read: readSize },
    bare: { is: "words", of: ["stranded", "solid"] },
  },
};

/** Type of insulation that Chapter 9 Table 5 gives an area for. */
export type Insulation =
  | "THHN"
  | "THWN"
  | "THWN-2"
  | "XHH"
  | "XHHW"
  | "XHHW-2"
  | "TW"
  | "THW"
  | "THW-2"
  | "THHW"
  | "RHH"
  | "RHW"
  | "RHW-2";

export const insulationShape: Shape = {
  is: "words",
  of: [
    "THHN",
    "THWN",
    "THWN-2",
    "XHH",
    "XHHW",
    "XHHW-2",
    "TW",
    "THW",
    "THW-2",
    "THHW",
    "RHH",
    "RHW",
    "RHW-2",
  ],
};

/** Insulated conductors of one size and type in a raceway. */
export interface InsulatedInRaceway {
  /** How many of them are in the raceway. */
  readonly count: number;
  /** Trade size, for example 4/0 AWG or 500 kcmil. */
  readonly size: ConductorSize;
  /** Type of insulation that Chapter 9 Table 5 gives an area for. */
  readonly insulation: Insulation;
  /** Whether its strands are compact, so that Table 5A gives its area. */
  readonly compact?: boolean;
  /** Of RHH, RHW and RHW-2, whether it lacks the outer covering. With it, it is much larger. */
  readonly withoutCovering?: boolean;
}

export const insulatedInRacewayShape: Shape = {
  is: "object",
  members: {
    count: { is: "number", unit: "conductors", whole: true },
    size: { is: "checked", read: readSize },
    insulation: insulationShape,
    compact: { is: "flag", says: "whether its strands are compact" },
    withoutCovering: { is: "flag", says: "whether it lacks the outer covering" },
  },
  optional: ["compact", "withoutCovering"],
};

/** Conductors or cables that the tables do not list, by the area that their maker states (note 5). */
export interface MeasuredInRaceway {
  /** How many of them are in the raceway. */
  readonly count: number;
  /** Area of one, with its insulation; the part of a ten-thousandth counts as a whole one. */
  readonly squareInches: number;
}

export const measuredInRacewayShape: Shape = {
  is: "object",
  members: {
    count: { is: "number", unit: "conductors", whole: true },
    squareInches: {
      is: "between",
      unit: "square inches",
      least: 0.0001,
      most: 100,
      advice: "give the area of one, with its insulation",
    },
  },
};

/** Kind of conduit or tubing whose dimensions Chapter 9 Table 4 gives. */
export type RacewayKind =
  | "electrical-metallic-tubing"
  | "intermediate-metal"
  | "rigid-metal"
  | "pvc-schedule-40"
  | "pvc-schedule-80";

export const racewayKindShape: Shape = {
  is: "words",
  of: [
    "electrical-metallic-tubing",
    "intermediate-metal",
    "rigid-metal",
    "pvc-schedule-40",
    "pvc-schedule-80",
  ],
};

/** Trade size; tubing and intermediate metal conduit end at 4. */
export type TradeSize =
  | "1/2"
  | "3/4"
  | "1"
  | "1-1/4"
  | "1-1/2"
  | "2"
  | "2-1/2"
  | "3"
  | "3-1/2"
  | "4"
  | "5"
  | "6";

export const tradeSizeShape: Shape = {
  is: "words",
  of: ["1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "3-1/2", "4", "5", "6"],
};

/** A raceway and what it holds or is to hold. */
export interface RacewayFillQuestion {
  /** Edition whose tables are used. */
  readonly edition: EditionYear;
  /** Kind of conduit or tubing whose dimensions Chapter 9 Table 4 gives. */
  readonly raceway: RacewayKind;
  /** The raceway that is there; without it the smallest that takes all is used. */
  readonly tradeSize?: TradeSize;
  /** Whether it is a nipple of at most 24 in between enclosures, which may be filled to 60 percent (note 4). */
  readonly nipple?: boolean;
  /** All that is in it: grounding and bonding conductors count like all others (note 3). */
  readonly conductors: readonly (
    | (InsulatedInRaceway & { readonly bare?: never; readonly squareInches?: never })
    | (BareInRaceway & {
        readonly insulation?: never;
        readonly compact?: never;
        readonly withoutCovering?: never;
        readonly squareInches?: never;
      })
    | (MeasuredInRaceway & {
        readonly size?: never;
        readonly insulation?: never;
        readonly compact?: never;
        readonly withoutCovering?: never;
        readonly bare?: never;
      })
  )[];
  /** What is to be pulled in besides, such as a required jumper; the answer then also says how it was without. */
  readonly added?: readonly (
    | (InsulatedInRaceway & { readonly bare?: never; readonly squareInches?: never })
    | (BareInRaceway & {
        readonly insulation?: never;
        readonly compact?: never;
        readonly withoutCovering?: never;
        readonly squareInches?: never;
      })
    | (MeasuredInRaceway & {
        readonly size?: never;
        readonly insulation?: never;
        readonly compact?: never;
        readonly withoutCovering?: never;
        readonly bare?: never;
      })
  )[];
}

export const racewayFillQuestionShape: Shape = {
  is: "object",
  members: {
    edition: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
    raceway: racewayKindShape,
    tradeSize: tradeSizeShape,
    nipple: { is: "flag", says: "whether it is a nipple" },
    conductors: {
      is: "list",
      of: {
        is: "variants",
        of: [
          {
            is: "object",
            members: {
              count: { is: "number", unit: "conductors", whole: true },
              size: { is: "checked", read: readSize },
              insulation: insulationShape,
              compact: { is: "flag", says: "whether its strands are compact" },
              withoutCovering: { is: "flag", says: "whether it lacks the outer covering" },
            },
            optional: ["compact", "withoutCovering"],
          },
          {
            is: "object",
            members: {
              count: { is: "number", unit: "conductors", whole: true },
              size: { is: "checked", read: readSize },
              bare: { is: "words", of: ["stranded", "solid"] },
            },
          },
          {
            is: "object",
            members: {
              count: { is: "number", unit: "conductors", whole: true },
              squareInches: {
                is: "between",
                unit: "square inches",
                least: 0.0001,
                most: 100,
                advice: "give the area of one, with its insulation",
              },
            },
          },
        ],
      },
      least: 1,
      most: 2000,
    },
    added: {
      is: "list",
      of: {
        is: "variants",
        of: [
          {
            is: "object",
            members: {
              count: { is: "number", unit: "conductors", whole: true },
              size: { is: "checked", read: readSize },
              insulation: insulationShape,
              compact: { is: "flag", says: "whether its strands are compact" },
              withoutCovering: { is: "flag", says: "whether it lacks the outer covering" },
            },
            optional: ["compact", "withoutCovering"],
          },
          {
            is: "object",
            members: {
              count: { is: "number", unit: "conductors", whole: true },
              size: { is: "checked", read: readSize },
              bare: { is: "words", of: ["stranded", "solid"] },
            },
          },
          {
            is: "object",
            members: {
              count: { is: "number", unit: "conductors", whole: true },
              squareInches: {
                is: "between",
                unit: "square inches",
                least: 0.0001,
                most: 100,
                advice: "give the area of one, with its insulation",
              },
            },
          },
        ],
      },
      least: 1,
      most: 2000,
    },
  },
  optional: ["tradeSize", "nipple", "added"],
};

// Generated from shape.ts by "npm run generate"; do not edit.
import type { ConductorSize, Material } from "../conductor/index.js";
import { readMaterial, readSize } from "../conductor/read.js";
import type { EditionYear } from "../edition/edition-year.js";
import { readRecord } from "../input/reader.js";
import type { Shape } from "../input/shapes.js";

/** A comparison of amendments. */
export interface AmendmentsRequest {
  /** What is compared. */
  readonly over: "amendments";
  /** What the role takes, with its amendments. */
  readonly input: object;
}

export const amendmentsRequestShape: Shape = {
  is: "object",
  members: { over: { is: "exactly", value: "amendments" }, input: { is: "checked", read: readRecord } },
};

/** What one input of a role is compared over. */
export type CompareRequest = EditionsRequest | ReadingsRequest | AmendmentsRequest;

export const compareRequestShape: Shape = {
  is: "variants",
  by: "over",
  of: [
    {
      is: "object",
      members: {
        over: { is: "exactly", value: "editions" },
        editions: {
          is: "list",
          of: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
          least: 1,
          most: 20,
        },
        input: { is: "checked", read: readRecord },
      },
      optional: ["editions"],
    },
    {
      is: "object",
      members: { over: { is: "exactly", value: "readings" }, input: { is: "checked", read: readRecord } },
    },
    {
      is: "object",
      members: { over: { is: "exactly", value: "amendments" }, input: { is: "checked", read: readRecord } },
    },
  ],
};

/** A comparison of editions. */
export interface EditionsRequest {
  /** What is compared. */
  readonly over: "editions";
  /** Editions in the order of the columns; all of them, oldest first, by default. */
  readonly editions?: readonly EditionYear[];
  /** What the role takes, without an edition. */
  readonly input: object;
}

export const editionsRequestShape: Shape = {
  is: "object",
  members: {
    over: { is: "exactly", value: "editions" },
    editions: {
      is: "list",
      of: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
      least: 1,
      most: 20,
    },
    input: { is: "checked", read: readRecord },
  },
  optional: ["editions"],
};

/** The overcurrent devices for which a role is sized, and under which editions. */
export interface RatingSweep {
  /** All editions by default. */
  readonly editions?: readonly EditionYear[];
  /** Material of the conductor to be sized. */
  readonly material: Material;
  /** Ratings in amperes; the last rating of each row of the tables of these editions by default. */
  readonly ratings?: readonly number[];
  /** Changes to the plainest question, which the role checks. */
  readonly with?: object;
}

export const ratingSweepShape: Shape = {
  is: "object",
  members: {
    editions: {
      is: "list",
      of: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
      least: 1,
      most: 20,
    },
    material: { is: "checked", read: readMaterial },
    ratings: { is: "list", of: { is: "number", unit: "amperes" }, least: 1, most: 2000 },
    with: { is: "checked", read: readRecord },
  },
  optional: ["editions", "ratings", "with"],
};

/** A comparison of readings. */
export interface ReadingsRequest {
  /** What is compared. */
  readonly over: "readings";
  /** What the role takes. */
  readonly input: object;
}

export const readingsRequestShape: Shape = {
  is: "object",
  members: { over: { is: "exactly", value: "readings" }, input: { is: "checked", read: readRecord } },
};

/** The supplies for which a role is sized, and under which editions. */
export interface SupplySweep {
  /** All editions by default. */
  readonly editions?: readonly EditionYear[];
  /** Material of the ungrounded conductors. */
  readonly supplyMaterial: Material;
  /** Material of the conductor to be sized. */
  readonly material: Material;
  /** Sizes of the supply conductors; every standard size by default. */
  readonly sizes?: readonly ConductorSize[];
  /** Numbers of sets; 1 to 20 by default. */
  readonly counts?: readonly number[];
  /** Changes to the plainest question, which the role checks. */
  readonly with?: object;
}

export const supplySweepShape: Shape = {
  is: "object",
  members: {
    editions: {
      is: "list",
      of: { is: "words", of: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"] },
      least: 1,
      most: 20,
    },
    supplyMaterial: { is: "checked", read: readMaterial },
    material: { is: "checked", read: readMaterial },
    sizes: { is: "list", of: { is: "checked", read: readSize }, least: 1, most: 100 },
    counts: { is: "list", of: { is: "number", unit: "sets", whole: true }, least: 1, most: 100 },
    with: { is: "checked", read: readRecord },
  },
  optional: ["editions", "sizes", "counts", "with"],
};

// Generated from tables/readings.json by "npm run generate"; do not edit.
import type { ReadingFacts } from "../reading.js";

/** Every open question of the text that a caller can decide, with the answers to choose from. */
export interface Readings {
  /** Does the sentence that a jumper need not be larger than the largest ungrounded conductor or set apply to a supply below the threshold of the note in which it stands? (Table 250.102(C)(1) note 1) */
  readonly "cap-on-small-supplies": "every-supply" | "large-supplies-only";
  /** Did the notes of the 2014 table already carry the sentence that a jumper need not be larger than the largest ungrounded conductor or set? (Table 250.102(C)(1) note 1) */
  readonly "cap-in-2014": "absent" | "as-in-2017";
  /** Does the 2011 rule for supply and jumper of different materials apply below the threshold of the 12.5 percent sentence too? (250.102(C)(3)) */
  readonly "supply-side-other-material-in-2011": "at-any-size" | "above-threshold";
  /** Had the 2014 notes already a threshold for supply and jumper of different materials? (Table 250.102(C)(1) note 2) */
  readonly "supply-side-other-material-in-2014": "at-any-size" | "above-threshold";
  /** Does the rule for different materials apply to a single supply conductor above the threshold, when the note names conductors in parallel only? (Table 250.102(C)(1) notes 1 and 2) */
  readonly "single-conductor-of-another-material": "as-in-parallel" | "parallel-only";
  /** Where does the grounding electrode conductor of a separately derived system land when each of several enclosures has a system bonding jumper? (250.30(A)(5)) */
  readonly "electrode-connection-with-several-jumpers": "at-each-jumper" | "at-one-jumper";
}

export const defaultReadings: Readings = {
  "cap-on-small-supplies": "every-supply",
  "cap-in-2014": "absent",
  "supply-side-other-material-in-2011": "at-any-size",
  "supply-side-other-material-in-2014": "at-any-size",
  "single-conductor-of-another-material": "as-in-parallel",
  "electrode-connection-with-several-jumpers": "at-each-jumper",
};

export const readingFacts: { readonly [K in keyof Readings]: ReadingFacts<Readings[K]> } = {
  "cap-on-small-supplies": {
    policies: ["main-bonding-jumper", "system-bonding-jumper", "supply-side-bonding-jumper"],
    editions: ["2017", "2020", "2023", "2026"],
    policy: { "every-supply": { cap: "set" }, "large-supplies-only": { cap: "none" } },
  },
  "cap-in-2014": {
    policies: ["main-bonding-jumper", "system-bonding-jumper", "supply-side-bonding-jumper"],
    editions: ["2014"],
    policy: { absent: { cap: "none" }, "as-in-2017": { cap: "set" } },
  },
  "supply-side-other-material-in-2011": {
    policies: ["supply-side-bonding-jumper"],
    editions: ["2011"],
    policy: {
      "at-any-size": { otherMaterial: "always" },
      "above-threshold": { otherMaterial: "above-threshold" },
    },
  },
  "supply-side-other-material-in-2014": {
    policies: ["supply-side-bonding-jumper"],
    editions: ["2014"],
    policy: {
      "at-any-size": { otherMaterial: "always" },
      "above-threshold": { otherMaterial: "above-threshold" },
    },
  },
  "single-conductor-of-another-material": {
    policies: ["main-bonding-jumper", "system-bonding-jumper", "supply-side-bonding-jumper"],
    editions: ["2023", "2026"],
    policy: {
      "as-in-parallel": { otherMaterial: "above-threshold" },
      "parallel-only": { otherMaterial: "parallel-above-threshold" },
    },
  },
  "electrode-connection-with-several-jumpers": {
    policies: [],
    editions: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"],
    policy: { "at-each-jumper": {}, "at-one-jumper": {} },
  },
};

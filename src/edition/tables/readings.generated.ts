// Generated from tables/readings.json by "npm run generate"; do not edit.
import type { ReadingFacts } from "../reading.js";

/** Every open question of the text that a caller can decide, with the answers to choose from. */
export interface Readings {
  /** Does the sentence that a jumper or grounded conductor need not be larger than the largest ungrounded conductor or set apply to a supply below the threshold of the note in which it stands? (Table 250.102(C)(1) note 1) */
  readonly "cap-on-small-supplies": "every-supply" | "large-supplies-only";
  /** Does the sentence of the table's first note, that a bonding jumper need not be larger than the largest ungrounded conductor or set, hold for jumpers to water piping and structural metal, whose section sends them to the table? (Table 250.102(C)(1) note 1, 250.104) */
  readonly "cap-on-piping-jumpers": "no-cap" | "as-for-other-jumpers";
  /** Did the notes of the 2014 table already carry the sentence that a jumper need not be larger than the largest ungrounded conductor or set? (Table 250.102(C)(1) note 1) */
  readonly "cap-in-2014": "absent" | "as-in-2017";
  /** Does the table note's sentence that a grounded conductor need not be larger than the largest ungrounded conductor or set apply to a small separately derived supply in 2017, when the section itself has no such sentence yet? (Table 250.102(C)(1) note 1) */
  readonly "cap-on-small-derived-supplies-in-2017": "every-supply" | "large-supplies-only";
  /** Does the 2011 rule for supply and jumper of different materials apply below the threshold of the 12.5 percent sentence too? (250.102(C)(3)) */
  readonly "supply-side-other-material-in-2011": "at-any-size" | "above-threshold";
  /** Had the 2014 notes already a threshold for supply and jumper of different materials? (Table 250.102(C)(1) note 2) */
  readonly "supply-side-other-material-in-2014": "larger-of-both" | "at-any-size" | "above-threshold";
  /** Does the rule for different materials apply to a single supply conductor above the threshold, when the note names conductors in parallel only? (Table 250.102(C)(1) notes 1 and 2) */
  readonly "single-conductor-of-another-material": "as-in-parallel" | "parallel-only";
  /** Where does the grounding electrode conductor of a separately derived system land when each of several enclosures has a system bonding jumper? (250.30(A)(5)) */
  readonly "electrode-connection-with-several-jumpers": "at-each-jumper" | "at-one-jumper";
  /** What size has a common grounding electrode conductor that several system bonding jumpers of one separately derived system tap? (250.30(A)(5), 250.30(A)(6)) */
  readonly "common-conductor-of-one-derived-system": "by-its-conductors" | "as-of-several-systems";
  /** Had the 2014 notes already a sentence for supply and grounded conductor of different materials? (Table 250.102(C)(1) note 2) */
  readonly "grounded-conductor-other-material-in-2014": "larger-of-both" | "as-in-2017";
  /** Does a jumper per raceway follow the 12.5 percent rule above the threshold, when the 2011 text sends it to the table alone? (250.102(C)(2)) */
  readonly "jumper-per-raceway-in-2011": "one-eighth-too" | "table-alone";
  /** What counts for a jumper of one raceway in which several sets run, when the text names the largest conductor in it? (250.102(C)(2)) */
  readonly "several-sets-in-a-raceway": "sum-of-sets" | "largest-conductor";
  /** Do the sizes that a grounding electrode conductor need not exceed hold where it serves several electrodes, of one kind or of different kinds, when the text speaks of the sole connection to the electrode? (250.66(A), 250.66(B), 250.66(C)) */
  readonly "electrode-ceiling-for-several": "all-of-a-kind" | "one-electrode-only" | "largest-of-kinds";
  /** Do the sizes for particular electrodes limit the common grounding electrode conductor and the taps of several enclosures, and the taps of several separately derived systems through 2017? (250.64(D)(1), 250.30(A)(6), 250.66) */
  readonly "electrode-ceiling-on-common-conductor": "applies" | "table-only";
  /** Does the size that an aluminum conductor to rods, pipes and plates need not exceed hold for copper-clad aluminum, when the text names aluminum only? (250.66(A), 250.53(E)) */
  readonly "copper-clad-to-rods": "not-named" | "as-aluminum";
  /** Are the circuit conductors, above which an equipment grounding conductor need not rise, the whole parallel set or one of its conductors? (250.122(A)) */
  readonly "equipment-grounding-limit": "whole-set" | "one-conductor";
  /** Does the 2026 edition limit an equipment grounding conductor at one circuit conductor? (250.122(A)) */
  readonly "equipment-grounding-limit-in-2026": "whole-set" | "one-conductor";
  /** Does the limit at the circuit conductors, which stands in the section on equipment grounding conductors, hold for a load-side bonding jumper that is sized by that section? (250.102(D), 250.122(A)) */
  readonly "load-side-jumper-limit": "whole-set" | "one-conductor" | "no-limit";
  /** Did the 2014 edition already count an increase only from the smallest size with sufficient ampacity for the installation? (250.122(B)) */
  readonly "increase-in-2014": "any-increase" | "as-in-2017";
  /** One conductor serves several circuits, and one of them was increased: does the largest device alone decide, or each circuit with its own increase and limit? (250.122(B), 250.122(C)) */
  readonly "shared-equipment-grounding": "each-circuit" | "largest-device";
  /** Must the enclosure of a source that is connected on the supply side of the service disconnect have a grounding electrode conductor, when its section still names the paragraphs by the letters of 2020 and the one on that conductor has got the next letter? (250.25(A), 250.24(E)) */
  readonly "electrode-conductor-of-supply-side-source": "required" | "not-named";
}

export const defaultReadings: Readings = {
  "cap-on-small-supplies": "every-supply",
  "cap-on-piping-jumpers": "no-cap",
  "cap-in-2014": "absent",
  "cap-on-small-derived-supplies-in-2017": "every-supply",
  "supply-side-other-material-in-2011": "at-any-size",
  "supply-side-other-material-in-2014": "larger-of-both",
  "single-conductor-of-another-material": "as-in-parallel",
  "electrode-connection-with-several-jumpers": "at-each-jumper",
  "common-conductor-of-one-derived-system": "by-its-conductors",
  "grounded-conductor-other-material-in-2014": "larger-of-both",
  "jumper-per-raceway-in-2011": "one-eighth-too",
  "several-sets-in-a-raceway": "sum-of-sets",
  "electrode-ceiling-for-several": "all-of-a-kind",
  "electrode-ceiling-on-common-conductor": "applies",
  "copper-clad-to-rods": "not-named",
  "equipment-grounding-limit": "whole-set",
  "equipment-grounding-limit-in-2026": "whole-set",
  "load-side-jumper-limit": "whole-set",
  "increase-in-2014": "any-increase",
  "shared-equipment-grounding": "each-circuit",
  "electrode-conductor-of-supply-side-source": "required",
};

export const readingFacts: { readonly [K in keyof Readings]: ReadingFacts<Readings[K]> } = {
  "cap-on-small-supplies": {
    policies: [
      "main-bonding-jumper",
      "system-bonding-jumper",
      "supply-side-bonding-jumper",
      "supply-side-bonding-jumper-raceway",
      "supply-side-bonding-jumper-single-raceway",
      "grounded-conductor",
      "grounded-conductor-raceway",
    ],
    editions: ["2017", "2020", "2023", "2026"],
    policy: { "every-supply": { cap: "set" }, "large-supplies-only": { cap: "none" } },
  },
  "cap-on-piping-jumpers": {
    policies: [
      "water-piping-service",
      "water-piping-derived",
      "structural-metal-service",
      "structural-metal-derived",
    ],
    editions: ["2017", "2020", "2023", "2026"],
    policy: { "no-cap": { cap: "none" }, "as-for-other-jumpers": { cap: "set" } },
  },
  "cap-in-2014": {
    policies: [
      "main-bonding-jumper",
      "system-bonding-jumper",
      "supply-side-bonding-jumper",
      "supply-side-bonding-jumper-raceway",
      "supply-side-bonding-jumper-single-raceway",
    ],
    editions: ["2014"],
    policy: { absent: { cap: "none" }, "as-in-2017": { cap: "set" } },
  },
  "cap-on-small-derived-supplies-in-2017": {
    policies: ["grounded-conductor-derived", "grounded-conductor-derived-raceway"],
    editions: ["2017"],
    policy: { "every-supply": { cap: "set" }, "large-supplies-only": { cap: "none" } },
  },
  "supply-side-other-material-in-2011": {
    policies: [
      "supply-side-bonding-jumper",
      "supply-side-bonding-jumper-raceway",
      "supply-side-bonding-jumper-single-raceway",
      "supply-side-bonding-jumper-derived",
      "supply-side-bonding-jumper-derived-raceway",
      "supply-side-bonding-jumper-derived-single-raceway",
    ],
    editions: ["2011"],
    policy: {
      "at-any-size": { otherMaterial: "always" },
      "above-threshold": { otherMaterial: "above-threshold" },
    },
  },
  "supply-side-other-material-in-2014": {
    policies: [
      "supply-side-bonding-jumper",
      "supply-side-bonding-jumper-raceway",
      "supply-side-bonding-jumper-single-raceway",
      "supply-side-bonding-jumper-derived",
      "supply-side-bonding-jumper-derived-raceway",
      "supply-side-bonding-jumper-derived-single-raceway",
    ],
    editions: ["2014"],
    policy: {
      "larger-of-both": { otherMaterial: "larger-through-threshold" },
      "at-any-size": { otherMaterial: "always" },
      "above-threshold": { otherMaterial: "above-threshold" },
    },
  },
  "single-conductor-of-another-material": {
    policies: [
      "main-bonding-jumper",
      "system-bonding-jumper",
      "supply-side-bonding-jumper",
      "supply-side-bonding-jumper-raceway",
      "supply-side-bonding-jumper-single-raceway",
      "supply-side-bonding-jumper-derived",
      "supply-side-bonding-jumper-derived-raceway",
      "supply-side-bonding-jumper-derived-single-raceway",
      "grounded-conductor",
      "grounded-conductor-raceway",
      "grounded-conductor-derived",
      "grounded-conductor-derived-raceway",
      "water-piping-service",
      "water-piping-derived",
      "water-piping-building",
      "structural-metal-service",
      "structural-metal-derived",
    ],
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
  "common-conductor-of-one-derived-system": {
    policies: [],
    editions: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"],
    policy: { "by-its-conductors": {}, "as-of-several-systems": {} },
  },
  "grounded-conductor-other-material-in-2014": {
    policies: [
      "grounded-conductor",
      "grounded-conductor-raceway",
      "grounded-conductor-derived",
      "grounded-conductor-derived-raceway",
    ],
    editions: ["2014"],
    policy: {
      "larger-of-both": { otherMaterial: "larger-of-both" },
      "as-in-2017": { otherMaterial: "above-threshold" },
    },
  },
  "jumper-per-raceway-in-2011": {
    policies: ["supply-side-bonding-jumper-raceway", "supply-side-bonding-jumper-derived-raceway"],
    editions: ["2011"],
    policy: { "one-eighth-too": { oneEighth: true }, "table-alone": { oneEighth: false } },
  },
  "several-sets-in-a-raceway": {
    policies: ["supply-side-bonding-jumper-raceway", "supply-side-bonding-jumper-derived-raceway"],
    editions: ["2023", "2026"],
    policy: { "sum-of-sets": { sum: "largest" }, "largest-conductor": { sum: "largest-conductor" } },
  },
  "electrode-ceiling-for-several": {
    policies: [
      "grounding-electrode-conductor-service",
      "grounding-electrode-conductor-derived",
      "grounding-electrode-conductor-building",
      "grounding-electrode-conductor-common",
      "grounding-electrode-conductor-common-from-drop",
      "electrode-bonding-jumper",
    ],
    editions: ["2008", "2011", "2014"],
    policy: { "all-of-a-kind": {}, "one-electrode-only": {}, "largest-of-kinds": {} },
  },
  "electrode-ceiling-on-common-conductor": {
    policies: [
      "grounding-electrode-conductor-service",
      "grounding-electrode-conductor-derived",
      "grounding-electrode-conductor-building",
      "grounding-electrode-conductor-common",
      "grounding-electrode-conductor-common-from-drop",
    ],
    editions: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"],
    policy: { applies: {}, "table-only": {} },
  },
  "copper-clad-to-rods": {
    policies: [
      "grounding-electrode-conductor-service",
      "grounding-electrode-conductor-derived",
      "grounding-electrode-conductor-building",
      "grounding-electrode-conductor-common",
      "grounding-electrode-conductor-common-from-drop",
      "electrode-bonding-jumper",
    ],
    editions: ["2008", "2011", "2014", "2017", "2020"],
    policy: { "not-named": {}, "as-aluminum": {} },
  },
  "equipment-grounding-limit": {
    policies: ["equipment-grounding-conductor"],
    editions: ["2008", "2011", "2014", "2017", "2020", "2023"],
    policy: { "whole-set": { cap: "set" }, "one-conductor": { cap: "conductor" } },
  },
  "equipment-grounding-limit-in-2026": {
    policies: ["equipment-grounding-conductor"],
    editions: ["2026"],
    policy: { "whole-set": { cap: "set" }, "one-conductor": { cap: "conductor" } },
  },
  "load-side-jumper-limit": {
    policies: ["equipment-bonding-jumper"],
    editions: ["2011", "2014", "2017", "2020", "2023", "2026"],
    policy: {
      "whole-set": { cap: "set" },
      "one-conductor": { cap: "conductor" },
      "no-limit": { cap: "none" },
    },
  },
  "increase-in-2014": {
    policies: ["equipment-grounding-conductor", "equipment-bonding-jumper"],
    editions: ["2014"],
    policy: { "any-increase": { increase: "any" }, "as-in-2017": { increase: "from-minimum-ampacity" } },
  },
  "shared-equipment-grounding": {
    policies: ["equipment-grounding-conductor", "equipment-bonding-jumper"],
    editions: ["2008", "2011", "2014", "2017", "2020", "2023", "2026"],
    policy: { "each-circuit": { shared: "each-circuit" }, "largest-device": { shared: "largest-device" } },
  },
  "electrode-conductor-of-supply-side-source": {
    policies: [],
    editions: ["2023", "2026"],
    policy: { required: {}, "not-named": {} },
  },
};

import type { Readings } from "../../edition/index.js";
import type { ReadingUsed } from "../../rules/result.js";
import { writtenArea } from "../../units/area.js";

const forSupplies = {
  "every-supply": "holds for every supply",
  "large-supplies-only": "holds for large supplies only",
};

const assumedConductors = {
  "at-any-size": "conductors are assumed at any size",
  "above-threshold": "conductors are assumed over the threshold only",
};

const wholeSet = "the whole parallel set";
const oneConductor = "its largest single conductor";
const atCircuitConductors = { "whole-set": wholeSet, "one-conductor": oneConductor };

/** What each open text is about, and what each alternative says. */
const readingWords: {
  readonly [Id in keyof Readings]: readonly [about: string, says: Readonly<Record<Readings[Id], string>>];
} = {
  "cap-on-small-supplies": ["the limit at the largest ungrounded conductor or set", forSupplies],
  "cap-on-piping-jumpers": [
    "the limit at the largest ungrounded conductor or set, for jumpers to water piping and structural metal",
    { "no-cap": "does not hold", "as-for-other-jumpers": "holds as for other jumpers" },
  ],
  "cap-in-2014": [
    "the limit at the largest ungrounded conductor or set in the 2014 edition",
    { absent: "not there yet", "as-in-2017": "as in 2017" },
  ],
  "cap-on-small-derived-supplies-in-2017": [
    "the limit at the largest ungrounded conductor or set, for separately derived systems in the 2017 edition",
    forSupplies,
  ],
  "supply-side-other-material-in-2011": [
    "supply and jumper of different materials in the 2011 edition",
    assumedConductors,
  ],
  "supply-side-other-material-in-2014": [
    "supply and jumper of different materials in the 2014 edition",
    {
      "larger-of-both": "through the threshold the larger of the two methods",
      "at-any-size": "conductors are assumed at any size",
      "above-threshold": "conductors are assumed over the threshold only",
    },
  ],
  "single-conductor-of-another-material": [
    "a single supply conductor of another material, over the threshold",
    { "as-in-parallel": "replaced as conductors in parallel are", "parallel-only": "not replaced" },
  ],
  "electrode-connection-with-several-jumpers": [
    "where the grounding electrode conductor lands with several system bonding jumpers",
    { "at-each-jumper": "at each of them", "at-one-jumper": "at one of them" },
  ],
  "common-conductor-of-one-derived-system": [
    "the common grounding electrode conductor for several system bonding jumpers of one system",
    {
      "by-its-conductors": "goes by the conductors of the system",
      "as-of-several-systems": "has the fixed size of several systems",
    },
  ],
  "grounded-conductor-other-material-in-2014": [
    "supply and grounded conductor of different materials in the 2014 edition",
    {
      "larger-of-both": "the larger of the two methods",
      "as-in-2017": "the assumed conductors decide, as in 2017",
    },
  ],
  "jumper-per-raceway-in-2011": [
    "a jumper for each raceway in the 2011 edition",
    { "one-eighth-too": "12.5 percent over the threshold", "table-alone": "the table alone" },
  ],
  "several-sets-in-a-raceway": [
    "several sets in one raceway",
    { "sum-of-sets": "the sets are added", "largest-conductor": "the largest conductor alone counts" },
  ],
  "electrode-ceiling-for-several": [
    "the largest sizes for particular electrodes, where a conductor serves several",
    {
      "all-of-a-kind": "hold for several of one kind",
      "one-electrode-only": "hold for a single electrode only",
      "largest-of-kinds": "hold, with the largest of their sizes",
    },
  ],
  "electrode-ceiling-on-common-conductor": [
    "the largest sizes for particular electrodes, for common conductors and taps",
    { applies: "hold", "table-only": "do not hold: the table alone counts" },
  ],
  "copper-clad-to-rods": [
    "the largest aluminum size to rods, pipes and plates, for copper-clad aluminum",
    { "not-named": "does not hold", "as-aluminum": "holds as for aluminum" },
  ],
  "equipment-grounding-limit": [
    "the limit of an equipment grounding conductor at the circuit conductors",
    atCircuitConductors,
  ],
  "equipment-grounding-limit-in-2026": [
    "the limit of an equipment grounding conductor at the circuit conductors in the 2026 edition",
    atCircuitConductors,
  ],
  "load-side-jumper-limit": [
    "the limit of a load-side bonding jumper at the circuit conductors",
    { "whole-set": wholeSet, "one-conductor": oneConductor, "no-limit": "none" },
  ],
  "increase-in-2014": [
    "an increase of the circuit conductors in the 2014 edition",
    {
      "any-increase": "counts whatever its reason",
      "as-in-2017": "does not count for temperature or the number of conductors",
    },
  ],
  "shared-equipment-grounding": [
    "a conductor shared by several circuits",
    {
      "each-circuit": "each circuit with its own increase and limit",
      "largest-device": "the circuit with the largest device alone",
    },
  ],
  "electrode-conductor-of-supply-side-source": [
    "the grounding electrode conductor of a source on the supply side",
    { required: "required, as in 2020", "not-named": "not named" },
  ],
};

/** What an open text is about. */
export function readingAbout(id: keyof Readings): string {
  return readingWords[id][0];
}

/** What an alternative of an open text says; what is no alternative is shown as it is. */
export function alternativeWords(id: keyof Readings, alternative: string): string {
  const says: Readonly<Record<string, string>> = readingWords[id][1];
  return says[alternative] ?? alternative;
}

/** An open text and how it is read. */
export function readingPhrase(id: keyof Readings, chosen: string): string {
  return `${readingAbout(id)}: read as "${alternativeWords(id, chosen)}"`;
}

/** A reading that has a say in a result, with what its other alternatives would require. */
export function readingSentence({ id, chosen, otherwise }: ReadingUsed): string {
  const others = otherwise.map(
    ({ alternative, requiredArea }) =>
      `; "${alternativeWords(id, alternative)}" would require ${requiredArea === 0 ? "none" : writtenArea(requiredArea)}`,
  );
  return `${readingPhrase(id, chosen)}${others.join("")}.`;
}

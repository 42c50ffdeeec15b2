import type { Readings } from "../../edition/index.js";
import { conductorWords } from "../../installation/conductor-words.js";
import type { ScheduledConductor } from "../../installation/schedule.js";
import type { ReadingUsed, SizingResult } from "../../rules/result.js";
import { standardSizeStep } from "../../sizing/size-by-supply.js";
import { writtenArea } from "../../units/area.js";

/** What each alternative of an open text holds, to stand after "if". */
const conditions: { readonly [Id in keyof Readings]: Readonly<Record<Readings[Id], string>> } = {
  "cap-on-small-supplies": {
    "every-supply":
      "the table's note limits the conductor at the largest ungrounded conductor or set for every supply",
    "large-supplies-only": "the table's note does so for large supplies only",
  },
  "cap-on-piping-jumpers": {
    "no-cap": "the table's note does not limit jumpers to piping and structural metal",
    "as-for-other-jumpers": "the table's note limits them too, at the largest ungrounded conductor or set",
  },
  "cap-in-2014": {
    absent: "the 2014 table has no limit at the largest ungrounded conductor or set",
    "as-in-2017": "it has the limit of 2017",
  },
  "cap-on-small-derived-supplies-in-2017": {
    "every-supply":
      "the 2017 note limits the grounded conductor of a derived system at the largest ungrounded conductor or set for every supply",
    "large-supplies-only": "the note does so for large supplies only",
  },
  "supply-side-other-material-in-2011": {
    "at-any-size": "the 2011 rule for different materials holds at any size",
    "above-threshold": "it holds over the threshold only",
  },
  "supply-side-other-material-in-2014": {
    "larger-of-both":
      "the 2014 rule for different materials is open through the threshold, so that the larger of both methods counts",
    "at-any-size": "the 2014 rule for different materials holds at any size",
    "above-threshold": "it holds over the threshold only",
  },
  "single-conductor-of-another-material": {
    "as-in-parallel":
      "a single supply conductor of another material is replaced as conductors in parallel are",
    "parallel-only": "only conductors in parallel are replaced",
  },
  "electrode-connection-with-several-jumpers": {
    "at-each-jumper": "the grounding electrode conductor lands at each system bonding jumper",
    "at-one-jumper": "it lands at one of them",
  },
  "common-conductor-of-one-derived-system": {
    "by-its-conductors":
      "the common grounding electrode conductor for several system bonding jumpers of one system goes by the conductors of the system",
    "as-of-several-systems": "it has the fixed size of several systems",
  },
  "grounded-conductor-other-material-in-2014": {
    "larger-of-both":
      "the 2014 notes have no sentence for a grounded conductor of another material, so that the larger of both methods counts",
    "as-in-2017": "they have that of 2017",
  },
  "jumper-per-raceway-in-2011": {
    "one-eighth-too": "a jumper for each raceway follows the 12.5 percent rule in 2011",
    "table-alone": "the table alone counts for it",
  },
  "several-sets-in-a-raceway": {
    "sum-of-sets": "several sets in one raceway are added",
    "largest-conductor": "the largest conductor in it counts alone",
  },
  "electrode-ceiling-for-several": {
    "all-of-a-kind": "250.66(A), (B) and (C) limit a conductor to several electrodes of one kind",
    "one-electrode-only": "they limit the conductor to a single electrode only",
    "largest-of-kinds": "they limit one to several kinds too, at the largest of their sizes",
  },
  "electrode-ceiling-on-common-conductor": {
    applies: "250.66(A), (B) and (C) limit a common grounding electrode conductor and its taps",
    "table-only": "250.66(A), (B) and (C) do not limit this conductor",
  },
  "copper-clad-to-rods": {
    "not-named": "the limit for aluminum to rods, pipes and plates does not hold for copper-clad aluminum",
    "as-aluminum": "it holds as for aluminum",
  },
  "equipment-grounding-limit": {
    "whole-set": "an equipment grounding conductor is limited at the whole parallel set",
    "one-conductor": "it is limited at the largest single circuit conductor",
  },
  "equipment-grounding-limit-in-2026": {
    "whole-set": "2026 limits an equipment grounding conductor at the whole parallel set",
    "one-conductor": "it limits it at the largest single circuit conductor",
  },
  "load-side-jumper-limit": {
    "whole-set": "a load-side bonding jumper is limited at the whole parallel set",
    "one-conductor": "it is limited at the largest single circuit conductor",
    "no-limit": "it is not limited at the circuit conductors",
  },
  "increase-in-2014": {
    "any-increase": "every increase of the circuit conductors counts in 2014",
    "as-in-2017": "one for temperature or the number of conductors does not count",
  },
  "shared-equipment-grounding": {
    "each-circuit": "each circuit that shares the conductor counts with its own increase and limit",
    "largest-device": "the circuit with the largest device counts alone",
  },
  "electrode-conductor-of-supply-side-source": {
    required: "a source on the supply side has a grounding electrode conductor",
    "not-named": "it has none of its own",
  },
};

/**
 * The open readings that change a size, each as one sentence with the size that stands in the schedule and the other ones, and the conductors
 * that it is about. Whatever comes to the same standard size is left out.
 */
export function readingSizes(
  conductors: readonly ScheduledConductor[],
  placesOf: (alike: readonly ScheduledConductor[]) => string = namesOf,
): readonly string[] {
  const places = new Map<string, ScheduledConductor[]>();
  for (const one of conductors) {
    for (const reading of one.result.readings) {
      const sentence = sentenceOf(reading, one.result);
      if (sentence === null) continue;
      const known = places.get(sentence);
      if (known === undefined) places.set(sentence, [one]);
      else known.push(one);
    }
  }
  return [...places].map(([sentence, at]) => `${sentence} At: ${placesOf(at)}`);
}

function namesOf(alike: readonly ScheduledConductor[]): string {
  return alike.map(conductorWords).join("; ");
}

function sentenceOf({ id, chosen, otherwise }: ReadingUsed, result: SizingResult): string | null {
  const scheduled = sizeWords(result.requiredArea, result);
  const others = otherwise
    .map(({ alternative, requiredArea }) => ({ alternative, words: sizeWords(requiredArea, result) }))
    .filter(({ words }) => words !== scheduled);
  if (others.length === 0) return null;
  const further = others.map(({ alternative, words }) => `; if ${conditionOf(id, alternative)}: ${words}`);
  return `As scheduled, if ${conditionOf(id, chosen)}: ${scheduled}${further.join("")}.`;
}

function conditionOf(id: keyof Readings, alternative: string): string {
  const says: Readonly<Record<string, string>> = conditions[id];
  return says[alternative] ?? alternative;
}

function sizeWords(area: number, { material, form, citation }: SizingResult): string {
  if (area === 0) return "none";
  const standard = form === "bus" ? null : standardSizeStep(area, citation);
  return standard === null ? `${material} of at least ${writtenArea(area)}` : `${standard.size} ${material}`;
}

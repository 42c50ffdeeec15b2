import type { UnmetCondition } from "../../installation/violation.js";

const words: Readonly<Record<UnmetCondition, string>> = {
  "branch-circuit-not-existing": "the branch circuit is new, or has an equipment grounding conductor",
  "conductor-not-insulated": "the grounded conductor is neither insulated nor part of a service cable",
  "conductor-too-small": "the grounded conductor is too small",
  "not-beside-service-disconnect": "it does not stand beside the service disconnect",
  "ground-fault-protection": "there is ground-fault protection of equipment",
  "several-disconnects": "the exception names one first disconnect, and there are several",
  "source-may-not": "the source may not have it",
  "against-masonry": "it lies against masonry",
  "against-concrete": "it lies against concrete",
  "against-earth": "it lies against the earth",
  "corrosive-surroundings": "it is where corrosion threatens",
  "end-near-earth": "it ends outdoors within 18 in. of the earth",
};

/** Conditions that are not met, in a row. */
export function unmetWords(unmet: readonly UnmetCondition[]): string {
  return unmet.map((one) => words[one]).join("; ");
}

import { type Check, type CheckVerdict, checkOf, type Installation } from "bondmil";
import type { Installed } from "./parts.js";

/** Verdicts that leave nothing to be done. */
const inOrder: readonly CheckVerdict[] = [
  "sufficient",
  "sufficient-on-unconfirmed-values",
  "larger-than-needed",
];

/** What a check finds: the conductors that are not in order, each with its verdict. */
export function findingsOf(installation: Installation, installed: readonly Installed[]): readonly string[] {
  return findingsIn(checkOf({ ...installation, installed: [...installed] }));
}

export function findingsIn({ conductors }: Check): readonly string[] {
  return conductors
    .filter(({ verdict }) => !inOrder.includes(verdict))
    .map(({ id, verdict }) => `${id}: ${verdict}`);
}

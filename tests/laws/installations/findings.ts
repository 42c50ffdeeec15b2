import { type Check, checkOf, type Installation } from "bondmil";
import type { Installed } from "./parts.js";

/** What a check finds: the conductors that are not in order, each with what is wrong. */
export function findingsOf(installation: Installation, found: readonly Installed[]): readonly string[] {
  return findingsIn(checkOf({ ...installation, installed: { found } }));
}

export function findingsIn({ findings }: Check): readonly string[] {
  return findings.map(({ id, kind }) => `${id}: ${kind}`);
}

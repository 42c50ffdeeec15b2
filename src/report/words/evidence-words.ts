import type { CitedEvidence } from "../../edition/index.js";

/** How well a value or a wording is known. */
const evidenceLevelWords: Readonly<Record<CitedEvidence, string>> = {
  memory: "from memory",
  carried: "from one neighboring edition",
  bracketed: "the same in the editions before and after",
  single: "one source",
  confirmed: "two sources",
  vouched: "as the amendment says",
};

/** A level of evidence in words. */
export function evidenceWords(level: CitedEvidence): string {
  return evidenceLevelWords[level];
}

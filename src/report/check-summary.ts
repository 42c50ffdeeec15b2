import { type CitedEvidence, evidenceLevels } from "../edition/index.js";
import type { Check, CheckedConductor, CheckVerdict } from "../installation/installed/checked.js";
import { writtenArea } from "../units/area.js";
import { amountWords, checkedWords, foundWords } from "./words/check-words.js";
import { evidenceWords } from "./words/evidence-words.js";

/** What is in order, in one paragraph, with every reserve that there is. */
export function summaryOf({ conductors }: Check): string {
  const of = (verdict: CheckVerdict): readonly CheckedConductor[] =>
    conductors.filter((one) => one.verdict === verdict);
  const met = of("as-required");
  const larger = met.filter(({ reserve }) => reserve !== null && reserve > 0);
  const exact = met.length - larger.length;
  const reserves = larger.map((one) => `${checkedWords(one)} ${writtenArea(one.reserve ?? 0)}`);
  const needless = of("not-required").map(
    (one) => `${checkedWords(one)} (${one.found.map(foundWords).join(", ")})`,
  );
  const untouched = of("as-scheduled").length;
  return [
    `${met.length} of ${conductors.length} as required${exact === 0 ? "" : `, ${exact} of them without a reserve`}.`,
    ...(reserves.length === 0 ? [] : [`With a reserve, of one conductor: ${reserves.join("; ")}.`]),
    ...(untouched === 0 ? [] : [`${untouched} taken as scheduled.`]),
    ...(needless.length === 0 ? [] : [`Not required, and may stay: ${needless.join("; ")}.`]),
  ].join(" ");
}

/** Each conductor that is as required or taken as scheduled, with what is there, what is required, and its section. */
export function metLines({ conductors }: Check): readonly string[] {
  return conductors.flatMap((one) => {
    const { verdict, found, required, citation } = one;
    if (required === null || (verdict !== "as-required" && verdict !== "as-scheduled")) return [];
    const there = found.length === 0 ? "" : `, ${found.map(foundWords).join(", ")}`;
    const section = citation === null ? "" : ` [${citation.section}]`;
    return [`${checkedWords(one)}${there}; required ${amountWords(required)}${section}`];
  });
}

/** How well what is required is known: once for most conductors, and by name where it is weaker than that. */
export function evidenceOf({ conductors }: Pick<Check, "conductors">): string {
  const known = conductors.flatMap((one) =>
    one.evidence === null || one.verdict === "not-required" ? [] : [{ one, level: rank(one.evidence) }],
  );
  const counts = new Map<number, number>();
  for (const { level } of known) counts.set(level, (counts.get(level) ?? 0) + 1);
  const [usual] = [...counts].sort(([a, n], [b, m]) => m - n || b - a);
  if (usual === undefined) return "nothing is required";
  const weaker = known.filter(({ level }) => level < usual[0]);
  const levels = [...new Set(weaker.map(({ level }) => level))].sort((a, b) => a - b);
  const said = levels.map((level) => {
    const names = weaker.filter((one) => one.level === level).map(({ one }) => checkedWords(one));
    return `${evidenceWords(evidenceAt(level))}: ${names.join(", ")}`;
  });
  return [evidenceWords(evidenceAt(usual[0])), ...said].join("; weaker, ");
}

/** What an amendment vouches for stands above all that was looked up. */
function rank(evidence: CitedEvidence): number {
  return evidence === "vouched" ? evidenceLevels.length : evidenceLevels.indexOf(evidence);
}

function evidenceAt(level: number): CitedEvidence {
  return evidenceLevels[level] ?? "vouched";
}

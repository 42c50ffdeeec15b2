import type { Check, CheckVerdict } from "../../installation/check.js";
import { conductorWords } from "../../installation/conductor-words.js";
import type { Schedule, ScheduledConductor } from "../../installation/schedule.js";
import type { Caution } from "../../rules/caution.js";
import type { SizingResult } from "../../rules/result.js";
import type { Governing } from "../../sizing/index.js";
import { formatArea } from "../../units/area.js";
import { notRequiredWords } from "./not-required-words.js";

/** The systems that conductors belong to, as headings. */
export const purposeNames: Readonly<Record<SizingResult["purpose"], string>> = {
  "fault-path": "Effective ground-fault current path (opens the overcurrent device on a fault)",
  "electrode-system": "Grounding electrode system (ties to earth, clears no fault)",
  equalizing: "Equalizing (keeps metal at one potential)",
  load: "Grounded conductors that carry load only (no part of the fault path)",
};

/** Those systems in the order in which they are written. */
export const purposes = /* @__PURE__ */ Object.keys(purposeNames) as readonly SizingResult["purpose"][];

/** The verdicts of a check; those in capitals are findings. */
export const verdictWords: Readonly<Record<CheckVerdict, string>> = {
  short: "SHORT",
  "too-few": "TOO FEW",
  missing: "MISSING",
  "wrong-material": "WRONG MATERIAL",
  "wrong-place": "WRONG PLACE",
  "not-permitted": "NOT PERMITTED",
  "not-in-schedule": "NOT IN THE SCHEDULE",
  "not-required": "Not required",
  "larger-than-needed": "Larger than needed",
  sufficient: "Sufficient",
  "sufficient-on-unconfirmed-values": "Sufficient on values that are not confirmed",
};

/** What each step that decides is called. */
export const governingWords: Readonly<Record<Governing, string>> = {
  row: "the row of the supply",
  "one-eighth": "12.5 percent of the sum",
  floor: "a minimum size",
  cap: "a limit",
  "rating-row": "the row of the device",
  increase: "the increase in proportion",
  load: "the load",
  "named-size": "a named size",
};

/** What is required, in short. */
export function sizeOf({ quantity, result: { outcome, material } }: ScheduledConductor): string {
  switch (outcome.kind) {
    case "conductor":
      return `${quantity} x ${outcome.size} ${material}`;
    case "area-only":
      return `${quantity} x ${material} of at least ${formatArea(outcome.requiredArea)}`;
    case "not-required":
      return `not required: ${notRequiredWords[outcome.why]}`;
  }
}

/** What decides, by which sections. */
export function basisOf({ governs, steps, requiredArea, citation }: SizingResult): string {
  if (governs === null) return citation.section;
  const deciding = steps.filter(
    (step) => step.kind === governs && "requiredArea" in step && step.requiredArea === requiredArea,
  );
  const at = deciding[0]?.citation.section ?? citation.section;
  const rule = at === citation.section ? "" : `${citation.section}, `;
  return `${rule}${governingWords[governs]} by ${at}: ${formatArea(requiredArea)}`;
}

/** Sections that say where a conductor goes, which conductors size it, and what may bond in its place. */
export function sectionsBeside({
  placement,
  sizing,
  insteadPermitted,
}: ScheduledConductor): readonly string[] {
  return [
    ...(placement === undefined ? [] : [`placed by ${placement.section}`]),
    ...(sizing === undefined ? [] : [`its conductors by ${sizing.section}`]),
    ...(insteadPermitted === undefined
      ? []
      : [`${insteadWords[insteadPermitted.by]} (${insteadPermitted.citation.section})`]),
  ];
}

const insteadWords: Readonly<Record<NonNullable<ScheduledConductor["insteadPermitted"]>["by"], string>> = {
  "bonding-fittings":
    "threaded hubs, tight threadless fittings or listed bonding devices may serve instead, ordinary locknuts and bushings may not",
  "grounded-conductor": "the grounded conductor may bond it instead",
};

/** A caution with every place that it is about. */
export interface CautionAtPlaces extends Caution {
  readonly at: readonly string[];
}

/** Each different caution of a schedule and of its conductors once. */
export function placedCautions({ cautions, conductors }: Schedule): readonly CautionAtPlaces[] {
  const placed = [
    ...cautions,
    ...conductors.flatMap((conductor) =>
      conductor.result.cautions.map((one) => ({ ...one, at: conductorWords(conductor) })),
    ),
  ];
  const places = new Map<string, { readonly caution: Caution; readonly at: Set<string> }>();
  for (const { code, section, at } of placed) {
    const key = `${code} ${section}`;
    const known = places.get(key);
    if (known === undefined) places.set(key, { caution: { code, section }, at: new Set([at]) });
    else known.at.add(at);
  }
  return [...places.values()].map(({ caution, at }) => ({ ...caution, at: [...at] }));
}

/** How many there are of each verdict. */
export function checkCounts({ conductors }: Check): string {
  const counts = (Object.keys(verdictWords) as CheckVerdict[]).flatMap((verdict) => {
    const count = conductors.filter((one) => one.verdict === verdict).length;
    return count === 0 ? [] : [`${verdictWords[verdict].toLowerCase()} ${count}`];
  });
  return counts.join(", ") || "nothing to check";
}

const mostRuns = 4;

/** By whose conductors a conductor is sized; nothing where none decide. */
export function servedWords({ by }: Pick<ScheduledConductor, "by">): string {
  if (by.length === 0) return "";
  const more = by.length > mostRuns ? ` and ${by.length - mostRuns} more` : "";
  return `sized by the conductors of ${by.slice(0, mostRuns).join(", ")}${more}`;
}

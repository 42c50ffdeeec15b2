import { conductorWords, endWords } from "../../installation/conductor-words.js";
import type { Schedule, ScheduledConductor } from "../../installation/schedule.js";
import type { Caution } from "../../rules/caution.js";
import type { SizingResult } from "../../rules/result.js";
import type { Governing } from "../../sizing/index.js";
import { writtenArea } from "../../units/area.js";
import { notRequiredWords } from "./not-required-words.js";
import { onlyIf } from "./open-words.js";

/** The systems that conductors belong to, as headings. */
export const purposeNames: Readonly<Record<SizingResult["purpose"], string>> = {
  "fault-path": "Effective ground-fault current path (opens the overcurrent device on a fault)",
  "electrode-system": "Grounding electrode system (ties to earth, clears no fault)",
  equalizing: "Equalizing (keeps metal at one potential)",
  load: "Grounded conductors that carry load only (no part of the fault path)",
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
export function sizeOf(one: ScheduledConductor): string {
  const { quantity, to, result } = one;
  const { outcome, material } = result;
  switch (outcome.kind) {
    case "conductor":
      return `${quantity} x ${outcome.size} ${material}${onlyIf(one)}`;
    case "area-only":
      return `${quantity} x ${material} of at least ${writtenArea(outcome.requiredArea)}${onlyIf(one)}`;
    case "not-required":
      return `not required: ${notRequiredWords[outcome.why]}${outcome.why === "bonded-by-another-part" ? `: ${endWords(to)}` : ""}`;
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
  return `${rule}${governingWords[governs]} by ${at}: ${writtenArea(requiredArea)}`;
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

const mostRuns = 4;

/** By whose conductors a conductor is sized; nothing where none decide. */
export function servedWords({ by }: Pick<ScheduledConductor, "by">): string {
  if (by.length === 0) return "";
  const more = by.length > mostRuns ? ` and ${by.length - mostRuns} more` : "";
  return `sized by the conductors of ${by.slice(0, mostRuns).join(", ")}${more}`;
}

import type { Check, CheckedConductor, CheckVerdict } from "../installation/check.js";
import type { Schedule, ScheduledConductor } from "../installation/schedule.js";
import type { Caution, CautionCode } from "../rules/caution.js";
import type { ReadingUsed, SizingResult } from "../rules/result.js";
import type { Governing } from "../sizing/index.js";
import { formatArea } from "../units/area.js";
import { cautionWords, notRequiredWords, standingCautions } from "./words.js";

/**
 * Writes a schedule of conductors as plain text for reading: every conductor by the system that it belongs to, with its places,
 * quantity and size, what decides it, the sections and the evidence; then what to be careful of, open readings, what is not sized,
 * the metal by size, and the fingerprint.
 *
 * @param schedule - a schedule
 * @returns lines of text, none of them wrapped
 *
 * @example
 * ```ts
 * import { buildSchedule, writeSchedule } from "bondmil";
 * const schedule = buildSchedule({
 *   format: 1,
 *   title: "Pump house",
 *   code: { year: "2020" },
 *   materials: {
 *     bondingJumpers: "copper",
 *     groundedConductors: "copper",
 *     electrodeConductors: "copper",
 *     equipmentGrounding: "copper",
 *   },
 *   existing: [{ id: "P1" }],
 *   circuits: [{ id: "C1", from: "P1", to: "pump", device: { amperes: 100 }, wiring: "raceway" }],
 * });
 * writeSchedule(schedule).split("\n").slice(5, 7);
 * // => ["equipment-grounding-conductor C1", "  1 x 8 AWG copper, from P1 to pump"]
 * ```
 */
export function writeSchedule(schedule: Schedule): string {
  const { title, edition, conductors, notSized, totals, fingerprint } = schedule;
  return [
    ...headed(`${title}: bonding and grounding conductors, NFPA 70-${edition}`, "="),
    ...(Object.keys(purposeNames) as SizingResult["purpose"][]).flatMap((purpose) =>
      section(
        purposeNames[purpose],
        conductors.filter(({ result }) => result.purpose === purpose).flatMap(conductorLines),
      ),
    ),
    ...section("Cautions", cautionLines(schedule)),
    ...section("Open readings", conductors.flatMap(readingLines)),
    ...section(
      "Not sized here",
      notSized.map(({ what, see }) => `- ${what}: see ${see}`),
    ),
    ...section(
      "Metal of the conductors whose length is given",
      totals.map(({ size, material, feet }) => `- ${size} ${material}: ${Math.round(feet * 100) / 100} ft`),
    ),
    "",
    ...standingCautions,
    "",
    `Fingerprint: ${fingerprint}`,
  ].join("\n");
}

/**
 * Writes a check of installed conductors as plain text: every verdict with what is installed, what is required and by how much it
 * misses, and how many there are of each.
 *
 * @param check - a check
 * @returns lines of text, none of them wrapped
 *
 * @example
 * ```ts
 * import { checkInstalled, writeCheck } from "bondmil";
 * const check = checkInstalled({
 *   format: 1,
 *   title: "Pump house",
 *   code: { year: "2020" },
 *   materials: {
 *     bondingJumpers: "copper",
 *     groundedConductors: "copper",
 *     electrodeConductors: "copper",
 *     equipmentGrounding: "copper",
 *   },
 *   existing: [{ id: "P1" }],
 *   circuits: [{ id: "C1", from: "P1", to: "pump", device: { amperes: 100 }, wiring: "raceway" }],
 *   installed: [{ conductor: "equipment-grounding-conductor C1", size: "10 AWG", material: "copper" }],
 * });
 * writeCheck(check).split("\n")[3];
 * // => "SHORT: equipment-grounding-conductor C1, 1 x 10 AWG copper; 6,130 cmil less than the 16,510 cmil of 250.122(A)"
 * ```
 */
export function writeCheck({ schedule, conductors }: Check): string {
  const counts = (Object.keys(verdictWords) as CheckVerdict[]).flatMap((verdict) => {
    const count = conductors.filter((one) => one.verdict === verdict).length;
    return count === 0 ? [] : [`${verdictWords[verdict].toLowerCase()} ${count}`];
  });
  return [
    ...headed(`${schedule.title}: check of installed conductors, NFPA 70-${schedule.edition}`, "="),
    "",
    ...conductors.map(checkLine),
    "",
    `${counts.join(", ") || "nothing to check"}.`,
    ...standingCautions,
    "",
    `Fingerprint of the schedule: ${schedule.fingerprint}`,
  ].join("\n");
}

const purposeNames: Readonly<Record<SizingResult["purpose"], string>> = {
  "fault-path": "Fault path (by it a breaker opens)",
  "electrode-system": "Grounding electrode system (ties to earth, clears no fault)",
  equalizing: "Equalizing (keeps metal at one potential)",
};

const governingWords: Readonly<Record<Governing, string>> = {
  row: "the row of the supply",
  "one-eighth": "one eighth of the sum",
  floor: "a least size",
  cap: "a limit",
  "rating-row": "the row of the device",
  increase: "the increase in proportion",
  load: "the current",
  "named-size": "a named size",
};

const verdictWords: Readonly<Record<CheckVerdict, string>> = {
  short: "SHORT",
  "too-few": "TOO FEW",
  missing: "MISSING",
  "wrong-material": "WRONG MATERIAL",
  "wrong-place": "WRONG PLACE",
  "not-in-schedule": "NOT IN THE SCHEDULE",
  "not-required": "Not required",
  "larger-than-needed": "Larger than needed",
  sufficient: "Sufficient",
  "sufficient-on-unconfirmed-values": "Sufficient on values that are not confirmed",
};

function headed(heading: string, line: string): readonly string[] {
  return [heading, line.repeat(heading.length)];
}

function section(heading: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ["", ...headed(heading, "-"), ...lines];
}

function conductorLines(one: ScheduledConductor): readonly string[] {
  const { id, from, to, result, alternative, lengthFeet } = one;
  const length = lengthFeet === undefined ? "" : `, ${lengthFeet} ft`;
  const isSaid = alternative === undefined || id.endsWith(`(${alternative})`);
  const instead = isSaid ? "" : ` (${alternative})`;
  return [
    `${id}${instead}`,
    `  ${sizeOf(one)}, from ${from} to ${to}${length}`,
    `  ${result.name}; ${basisOf(result)}; evidence: ${result.evidence}`,
  ];
}

function sizeOf({ quantity, result: { outcome, material } }: ScheduledConductor): string {
  switch (outcome.kind) {
    case "conductor":
      return `${quantity} x ${outcome.size} ${material}`;
    case "area-only":
      return `${quantity} x ${material} of at least ${formatArea(outcome.requiredArea)}`;
    case "not-required":
      return `not required: ${notRequiredWords[outcome.why]}`;
  }
}

function basisOf({ governs, steps, requiredArea, citation }: SizingResult): string {
  if (governs === null) return citation.section;
  const deciding = steps.filter(
    (step) => step.kind === governs && "requiredArea" in step && step.requiredArea === requiredArea,
  );
  const at = deciding[0]?.citation.section ?? citation.section;
  const rule = at === citation.section ? "" : `${citation.section}, `;
  return `${rule}${governingWords[governs]} by ${at}: ${formatArea(requiredArea)}`;
}

/** One line for each different caution, with every place that it is about. */
function cautionLines({ cautions, conductors }: Schedule): readonly string[] {
  const placed = [
    ...cautions,
    ...conductors.flatMap(({ id, result }) => result.cautions.map((one) => ({ ...one, at: id }))),
  ];
  const places = new Map<string, { readonly caution: Caution; readonly at: Set<string> }>();
  for (const { code, section: where, at } of placed) {
    const key = `${code} ${where}`;
    const known = places.get(key);
    if (known === undefined) places.set(key, { caution: { code, section: where }, at: new Set([at]) });
    else known.at.add(at);
  }
  return [...places.values()].flatMap(({ caution, at }) => [
    `- ${wordsOf(caution.code)}${caution.section === null ? "" : ` [${caution.section}]`}`,
    `    ${[...at].join("; ")}`,
  ]);
}

function wordsOf(code: CautionCode): string {
  return cautionWords[code];
}

function readingLines({ id, result }: ScheduledConductor): readonly string[] {
  return result.readings.map(
    (reading) => `- ${id}: ${reading.id} is read as ${reading.chosen}; ${othersOf(reading)}`,
  );
}

function othersOf({ otherwise }: ReadingUsed): string {
  return otherwise
    .map(({ alternative, requiredArea }) => `${alternative} asks for ${formatArea(requiredArea)}`)
    .join("; ");
}

function checkLine({ id, verdict, installed, requiredArea, reserve, citation }: CheckedConductor): string {
  const found =
    installed === null ? "" : `, ${installed.quantity ?? 1} x ${installed.size} ${installed.material}`;
  const place = installed?.at === undefined ? "" : ` at ${installed.at}`;
  const at = citation === null ? "" : ` of ${citation.section}`;
  const required = requiredArea === 0 ? "" : ` the ${formatArea(requiredArea)}${at}`;
  const head = `${verdictWords[verdict]}: ${id}${found}${place}`;
  if (reserve !== null && requiredArea > 0) {
    if (reserve === 0) return `${head}; exactly${required}`;
    const difference = formatArea(Math.abs(reserve));
    return `${head}; ${difference} ${reserve < 0 ? "less" : "more"} than${required}`;
  }
  if (requiredArea > 0) return `${head}; required:${required}`;
  return citation === null ? head : `${head} [${citation.section}]`;
}

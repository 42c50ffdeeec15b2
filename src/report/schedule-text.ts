import type {
  Arrangement,
  ArrangementComparison,
  Connection,
  PlacedConductor,
} from "../arrangement/arrangement.js";
import { arrangementMarks } from "../arrangement/arrangement.js";
import { rectangularBarsFor } from "../engineering/rectangular-bar.js";
import { useResult } from "../input/given-result.js";
import { member, readAll, readText } from "../input/reader.js";
import type { Caution } from "../rules/caution.js";
import type { SizingResult } from "../rules/result.js";
import { formatArea } from "../units/area.js";
import { explain } from "./explain.js";
import {
  cautionWords,
  connectionNames,
  connectionWords,
  notRequiredWords,
  standingCautions,
} from "./words.js";

const arrangementNames: Readonly<Record<Arrangement["id"], string>> = {
  "jumper-in-each-enclosure": "A jumper in each enclosure",
  "one-jumper-in-listed-assembly": "One jumper in a listed assembly",
  "jumper-at-source": "One jumper at the source",
  "jumpers-at-source-and-disconnect": "Jumpers at the source and at the disconnect",
  "common-electrode-conductor": "A common electrode conductor with taps",
  "individual-electrode-conductors": "An electrode conductor from each",
  "electrode-conductor-at-one-place": "One electrode conductor on the supply side",
  "jumper-in-each-raceway": "A jumper in each raceway",
  "one-common-raceway-jumper": "One jumper for all raceways",
};

const standingWords: Readonly<Record<Arrangement["standing"], string>> = {
  permitted: "permitted",
  "permitted-without-parallel-path": "permitted only if no parallel path for the grounded conductor arises",
  "not-permitted": "NOT PERMITTED here",
};

/**
 * Writes arrangements side by side as plain text for reading: every conductor with its size, place, reason, section and
 * evidence, where things are connected, what is a fault, and what to be careful of.
 *
 * @param comparison - the arrangements of a service, of a separately derived system or of electrode conductors
 * @param title - heading
 * @returns lines of text, none of them wrapped
 * @throws {@link InputError} for anything but what a function of arrangements gives
 *
 * @example
 * ```ts
 * import { arrangeService, writeArrangements } from "bondmil";
 * const comparison = arrangeService({
 *   code: { year: "2020" },
 *   enclosures: [{ id: "D1", supply: { sets: [{ count: 1, size: "4/0 AWG", material: "aluminum" }] } }],
 *   jumper: { material: "copper" },
 * });
 * writeArrangements(comparison, "Shop").split("\n")[0]; // => "Shop, NFPA 70-2020"
 * ```
 */
export function writeArrangements(comparison: ArrangementComparison, title: string): string {
  const heading = readAll({ title }, (at) => readText(member(at, "title"), "the heading"));
  return useResult(comparison, "a function of arrangements", arrangementMarks, (given) =>
    arrangementsText(given, heading),
  );
}

function arrangementsText(comparison: ArrangementComparison, title: string): string {
  const { edition, arrangements, differences } = comparison;
  const heading = `${title}, NFPA 70-${edition}`;
  const lines = [heading, "=".repeat(heading.length)];
  for (const arrangement of arrangements) lines.push("", ...writeArrangement(arrangement));
  if (differences.length > 0) lines.push("", `The arrangements differ in: ${differences.join(", ")}.`);
  lines.push("", ...standingCautions);
  return lines.join("\n");
}

function writeArrangement(arrangement: Arrangement): readonly string[] {
  const { id, standing, citation, conductors, totalArea, connections } = arrangement;
  const heading = `${arrangementNames[id]} (${citation.section}): ${standingWords[standing]}`;
  return [
    heading,
    "-".repeat(heading.length),
    ...conductors.flatMap(writeConductor),
    `  total metal: ${formatArea(totalArea)} (${formatArea(totalArea, "mm2")})`,
    "  connections:",
    ...connections.map((connection) => `    - ${writeConnection(connection)}`),
    ...cautionLines(cautionsOf(arrangement)),
  ];
}

function writeConductor({ id, at, result }: PlacedConductor): readonly string[] {
  return [
    `  ${id}: ${writeOutcome(result)}`,
    `    place: ${at}; purpose: ${result.purpose}; decided by: ${result.governs}; evidence: ${result.evidence}`,
    `    ${explain(result)}`,
    ...result.readings.map(
      ({ id: reading, chosen, otherwise }) =>
        `    reading ${reading}: ${chosen}; ${otherwise.map((one) => `${one.alternative} would ask for ${formatArea(one.requiredArea)}`).join("; ")}`,
    ),
  ];
}

function writeOutcome({ outcome, material }: SizingResult): string {
  if (outcome.kind === "conductor") return `${outcome.size} ${material}`;
  if (outcome.kind === "not-required") return `not required, ${notRequiredWords[outcome.why]}`;
  const { requiredArea } = outcome;
  const bar = rectangularBarsFor(requiredArea).find(({ thickness }) => thickness === 0.25);
  const example = bar === undefined ? "" : `; a bar of ${bar.thickness} in. x ${bar.width} in. meets it`;
  return `${material}, at least ${formatArea(requiredArea)} (${formatArea(requiredArea, "mm2")}, ${formatArea(requiredArea, "in2")})${example}`;
}

function writeConnection({ kind, at, note, citation }: Connection): string {
  const places = at.length === 0 ? "" : ` (${at.join(", ")})`;

  return `${connectionNames[kind]}${places}: ${connectionWords[note]} [${citation.section}]`;
}

function cautionsOf({ conductors, cautions }: Arrangement): readonly Caution[] {
  const all = [...conductors.flatMap(({ result }) => result.cautions), ...cautions];
  return all.filter((one, i) => all.findIndex((other) => other.code === one.code) === i);
}

function cautionLines(cautions: readonly Caution[]): readonly string[] {
  if (cautions.length === 0) return [];
  const line = ({ code, section }: Caution): string =>
    `    - ${cautionWords[code]}${section === null ? "" : ` [${section}]`}`;
  return ["  cautions:", ...cautions.map(line)];
}

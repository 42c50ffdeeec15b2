import type { CausedConductor, SupplyCandidate, SupplyCandidates } from "../candidates/candidate.js";
import { candidatesMarks } from "../candidates/candidate.js";
import type { Role } from "../edition/index.js";
import { useResult } from "../input/given-result.js";
import type { InstallationCandidates } from "../installation/candidates-of.js";
import { writtenArea } from "../units/area.js";
import type { Document, DocumentPart, DocumentRow, DocumentTable } from "./document.js";
import { type DocumentOptions, framed, listed, readOptions } from "./frame.js";
import { candidateCautionWords } from "./words/candidate-words.js";
import { evidenceWords } from "./words/evidence-words.js";
import { notRequiredWords } from "./words/not-required-words.js";
import { racewayNames } from "./words/raceway-words.js";

/**
 * Makes a document of the candidates for a supply: those that no other one beats, and the smallest size of each number of sets; every
 * candidate is in the rows, which CSV holds.
 *
 * @param candidates - what supplyCandidates gives
 * @param options - another title, who prepared it, the date
 * @returns a document for {@link render}; amperes, pounds per 1000 ft, areas in circular mils
 * @throws {@link InputError} for anything but such candidates, and for wrong options
 *
 * @example
 * ```ts
 * import { candidatesDocument, render, supplyCandidates } from "bondmil";
 * const found = supplyCandidates({
 *   code: { year: "2023" },
 *   system: { kind: "service", ungrounded: 3, grounded: { currentCarrying: false } },
 *   load: { continuous: 0, other: 250 },
 *   conductor: { insulation: "THWN-2", materials: ["copper"], largest: "250 kcmil" },
 *   place: { location: "dry" },
 *   limits: { mostSets: 2 },
 *   bonding: { material: "copper" },
 * });
 * render(candidatesDocument(found), { as: "csv" }).split("\r\n")[1]?.startsWith("copper,1,250 kcmil"); // => true
 * ```
 */
export function candidatesDocument(candidates: SupplyCandidates, options: DocumentOptions = {}): Document {
  const own = readOptions(options);
  return useResult(candidates, "supplyCandidates", candidatesMarks, (given) =>
    framed(
      {
        title: "Candidates for a supply",
        editions: [given.edition],
        facts: [
          {
            name: "Device",
            text: `${given.device} A${deviceWords(given)}`,
          },
          {
            name: "Load",
            text: `${amperes(given.requiredInPlace)} A; ${amperes(given.requiredBefore)} A before correction and adjustment`,
          },
          { name: "Evidence", text: evidenceWords(given.evidence) },
        ],
        parts: candidateParts(given),
        rows: given.candidates.map((one) => rowOf(given, one)),
      },
      own,
    ),
  );
}

/** How the device came about, and its neighbors where it has no standard rating. */
function deviceWords({ deviceGiven, neighbors }: SupplyCandidates): string {
  if (!deviceGiven) return ", the smallest standard rating for the load";
  return neighbors.length === 0 ? "" : `, no standard rating; next to it are ${neighbors.join(" and ")} A`;
}

/** The same of every run of an installation whose conductors are yet to be chosen; the rows name the run. */
export function runsDocument({ edition, runs }: InstallationCandidates, options: DocumentOptions): Document {
  return framed(
    {
      title: "Candidates for the supplies of an installation",
      editions: [edition],
      parts:
        runs.length === 0
          ? [{ kind: "text", text: "The conductors of every run are chosen." }]
          : runs.flatMap(({ run, candidates }) => [
              { kind: "heading", level: 2, text: `Run ${run}, device of ${candidates.device} A` },
              ...candidateParts(candidates, 3),
            ]),
      rows: runs.flatMap(({ run, candidates }) =>
        candidates.candidates.map((one) => ({ run, ...rowOf(candidates, one) })),
      ),
    },
    readOptions(options),
  );
}

/** The parts that tell the candidates, also of one run among several. */
function candidateParts(given: SupplyCandidates, level: 2 | 3 = 2): readonly DocumentPart[] {
  const { candidates, total, more } = given;
  const unbeaten = candidates.filter((one) => one.unbeaten);
  const smallest = candidates.filter((one) => one.smallestSize && !one.unbeaten);
  const listedOnes = more === 0 ? "" : `; ${more} more are not listed`;
  return [
    {
      kind: "text",
      text: `${total} lawful combinations of sets, size, material and raceways${listedOnes}. Unbeaten are ${unbeaten.length}: no other has as little copper, aluminum, terminations and raceways, and less of one of them.`,
    },
    { kind: "heading", level, text: "Unbeaten" },
    tableOf(unbeaten),
    ...(smallest.length === 0
      ? []
      : ([
          { kind: "heading", level, text: "Smallest size of each other number of sets" },
          tableOf(smallest),
        ] as const)),
    ...listed(
      "Cautions",
      given.cautions.map(
        ({ code, section }) => `${candidateCautionWords[code]}${section === null ? "" : ` [${section}]`}.`,
        level,
      ),
    ),
  ];
}

function tableOf(candidates: readonly SupplyCandidate[]): DocumentTable {
  const roles = [...new Set(candidates.flatMap(({ conductors }) => conductors.map(({ role }) => role)))];
  return {
    kind: "table",
    of: "records",
    head: [
      "Conductors",
      "Raceways",
      "Ampacity",
      ...roles.map((role) => roleNames[role] ?? role),
      "Copper, lb/1000 ft",
      "Aluminum, lb/1000 ft",
      "Terminations",
    ],
    rows: candidates.map((one) => [
      `${one.sets} x ${one.size} ${one.material}`,
      one.raceways === null
        ? "not chosen"
        : `${one.raceways.count} x ${racewayNames[one.raceways.kind]} ${one.raceways.tradeSize}`,
      `${amperes(one.ampacity.amperes)} A, ${limitWords(one)}`,
      ...roles.map((role) => caused(one.conductors.find((conductor) => conductor.role === role))),
      pounds(one.mass.copper),
      pounds(one.mass.aluminum),
      String(one.terminations),
    ]),
  };
}

/** Heads of the columns of what is caused; the conductor in each raceway where there are several. */
const roleNames: Readonly<Partial<Record<Role, string>>> = {
  "main-bonding-jumper": "Main bonding jumper",
  "system-bonding-jumper": "System bonding jumper",
  "supply-side-bonding-jumper": "Supply-side bonding jumper",
  "equipment-grounding-conductor": "Equipment grounding conductor",
  "grounded-conductor": "Grounded conductor, at least",
  "grounding-electrode-conductor": "Grounding electrode conductor",
};

function limitWords({ ampacity }: SupplyCandidate): string {
  const { limitedBy, terminations, nextRating } = ampacity;
  const limit =
    limitedBy === "terminations" ? `terminations at ${terminations} C` : "insulation in its place";
  return `by ${limit}${nextRating ? "; next standard rating" : ""}`;
}

function caused(conductor: CausedConductor | undefined): string {
  if (conductor === undefined) return "none";
  const { outcome, count } = conductor;
  if (outcome.kind === "not-required") return `not required, ${notRequiredWords[outcome.why]}`;
  const each = count > 1 ? `${count} x ` : "";
  return outcome.kind === "conductor"
    ? `${each}${outcome.size}`
    : `${each}${writtenArea(outcome.requiredArea)}`;
}

function amperes(value: number): string {
  return String(Math.round(value * 100) / 100);
}

function pounds(value: number): string {
  return value === 0 ? "0" : value.toFixed(0);
}

/** A row for a program. */
function rowOf({ edition, device, cautions }: SupplyCandidates, one: SupplyCandidate): DocumentRow {
  const { ampacity, raceways, grounded, mass } = one;
  return {
    material: one.material,
    sets: one.sets,
    size: one.size,
    setsInRaceway: one.setsInRaceway,
    raceway: raceways?.kind,
    raceways: raceways?.count,
    tradeSize: raceways?.tradeSize,
    ampacity: ampacity.amperes,
    limitedBy: ampacity.limitedBy,
    nextRating: ampacity.nextRating,
    device,
    groundedSize: grounded?.size,
    groundedCount: grounded?.count,
    mainBondingJumper: sizeOf(one, "main-bonding-jumper"),
    systemBondingJumper: sizeOf(one, "system-bonding-jumper"),
    supplySideBondingJumper: sizeOf(one, "supply-side-bonding-jumper"),
    groundedConductor: sizeOf(one, "grounded-conductor"),
    groundingElectrodeConductor: sizeOf(one, "grounding-electrode-conductor"),
    equipmentGroundingConductor: sizeOf(one, "equipment-grounding-conductor"),
    copperPounds: mass.copper,
    aluminumPounds: mass.aluminum,
    terminations: one.terminations,
    smallestSize: one.smallestSize,
    unbeaten: one.unbeaten,
    cautions: cautions.map(({ code }) => code).join(" "),
    edition,
  };
}

/** A size, or the area where no standard size has it; empty where none is required. */
function sizeOf({ conductors }: SupplyCandidate, role: Role): string | number | null {
  const found = conductors.find((one) => one.role === role)?.outcome;
  if (found === undefined || found.kind === "not-required") return null;
  return found.kind === "conductor" ? found.size : found.requiredArea;
}

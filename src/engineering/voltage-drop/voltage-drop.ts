import { areaOf, type ConductorSize } from "../../conductor/index.js";
import {
  type Citation,
  distinctCitations,
  type EditionYear,
  type Evidence,
  weakestEvidence,
} from "../../edition/index.js";
import type { Marks } from "../../input/given-result.js";
import { placeIn, type Reader, readAll, refuse } from "../../input/reader.js";
import type { Increase } from "../../rules/shape.generated.js";
import type { Supply } from "../../supply/index.js";
import { type Drop, dropOf, dropsFor, smallestFor } from "./drop.js";
import type { Impedance } from "./impedance.js";
import { readDropQuestion } from "./read.js";
import type { VoltageDropQuestion } from "./shape.generated.js";

export type { VoltageDropQuestion };

/**
 * What to know beside a voltage drop, as stable codes.
 *
 * @example
 * ```ts
 * import { voltageDropCautionCodes } from "bondmil";
 * voltageDropCautionCodes.includes("drop-is-no-rule"); // => true
 * ```
 */
export const voltageDropCautionCodes = [
  "drop-is-no-rule",
  "ampacity-not-asked",
  "reactance-left-out",
  "grounding-conductor-increases",
] as const;

/** One of {@link voltageDropCautionCodes}. */
export type VoltageDropCautionCode = (typeof voltageDropCautionCodes)[number];

/** Conductors that keep the permitted drop. */
export interface SufficientConductors {
  /** Sets in parallel. */
  readonly sets: number;
  /** Smallest size that suffices in so many sets. */
  readonly size: ConductorSize;
  /** Volts lost. */
  readonly volts: number;
  /** The same in percent of the voltage of the circuit. */
  readonly percent: number;
  /** Whether that is more than ampacity requires, so that the equipment grounding conductor grows too (250.122(B)). */
  readonly increased: boolean;
  /** Conductors and baseline as a circuit of the equipment grounding conductor takes them, beside its device. */
  readonly circuit: {
    /** The conductors as they are to be installed. */
    readonly conductors: Supply;
    /** The baseline, the conductors of the question, and why they were increased. */
    readonly increasedFrom: Increase;
  };
}

/** The drop along a run. Plain JSON. */
export interface VoltageDrop {
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** How the load is connected. */
  readonly current: VoltageDropQuestion["current"];
  /** Voltage of the circuit. */
  readonly circuitVolts: number;
  /** Amperes of the load. */
  readonly amperes: number;
  /** Feet, one way. */
  readonly feet: number;
  /** The conductors of the question. */
  readonly conductors: {
    /** Sets in parallel. */
    readonly sets: number;
    /** Trade size. */
    readonly size: ConductorSize;
    /** Copper or aluminum. */
    readonly material: "copper" | "aluminum";
  };
  /** Volts lost with them. */
  readonly volts: number;
  /** The same in percent of the voltage of the circuit. */
  readonly percent: number;
  /** Which table the impedance is from. */
  readonly impedanceFrom: VoltageDropQuestion["impedance"]["from"];
  /** Impedance of one conductor of the question, in ohms per 1000 ft. */
  readonly impedance: Impedance;
  /** Percent that the question permits; `null` if it does not say. */
  readonly permittedPercent: number | null;
  /** For each number of sets the smallest size that keeps it, fewest sets first; those that none keeps it with are left out. */
  readonly sufficient: readonly SufficientConductors[];
  /** Weakest evidence of the impedances used. */
  readonly evidence: Evidence;
  /** Where the edition says so. */
  readonly citations: readonly Citation[];
  /** What to know beside it, as stable codes. */
  readonly cautions: readonly VoltageDropCautionCode[];
}

/**
 * The voltage drop along a run, by the impedances of Chapter 9 Table 9 at a power factor or the direct-current resistance of Table 8, and for a
 * permitted drop the smallest conductors that keep it, with the increase that the equipment grounding conductor follows (250.122(B)). The code
 * has informational notes on voltage drop, no rule; ampacity is another question, whose answer is the conductors given here.
 *
 * @param question - edition, connection, volts, amperes, feet one way, conductors, the table, and the permitted percent
 * @returns volts and percent, the impedance in ohms per 1000 ft, and the conductors that suffice
 * @throws {@link InputError} listing everything that is wrong in the question; a permitted drop that nothing reaches is `out-of-range` and names the nearest
 *
 * @example
 * ```ts
 * import { voltageDrop } from "bondmil";
 * const drop = voltageDrop({
 *   edition: "2023",
 *   current: "three-phase",
 *   volts: 480,
 *   amperes: 200,
 *   feet: 500,
 *   conductors: { size: "3/0 AWG", material: "copper" },
 *   impedance: { from: "table-9", conduit: "steel", powerFactor: 0.85 },
 *   permittedPercent: 3,
 * });
 * drop.percent.toFixed(2); // => "3.41"
 * drop.sufficient[0]?.size; // => "4/0 AWG"
 * drop.sufficient[0]?.circuit.increasedFrom.reason; // => "voltage-drop"
 * ```
 */
export function voltageDrop(question: VoltageDropQuestion): VoltageDrop {
  return readAll(question, (at) => {
    const read = readDropQuestion(at);
    return read && answer(at, read);
  });
}

/** By what a voltage drop is known. */
export const voltageDropMarks: Marks<VoltageDrop> = {
  edition: "text",
  circuitVolts: "number",
  volts: "number",
  percent: "number",
  impedance: "object",
  conductors: "object",
  sufficient: "list",
  citations: "list",
  cautions: "list",
};

function answer(at: Reader, question: VoltageDropQuestion): VoltageDrop | undefined {
  const { edition, current, conductors, impedance, permittedPercent = null, mostSets } = question;
  const { sets: ownSets = 1, size } = conductors;
  const own = dropOf(question, ownSets, size);
  if (own === null) return undefined;
  const counts = Array.from({ length: (mostSets ?? ownSets) - ownSets + 1 }, (_, i) => ownSets + i);
  const found =
    permittedPercent === null
      ? []
      : counts.flatMap((sets) => smallestFor(question, sets, permittedPercent) ?? []);
  if (permittedPercent !== null && found.length === 0) return refuseDrop(at, question, counts);
  const sufficient = found.map((drop) => sufficientFrom(question, drop));
  const citations = distinctCitations([own, ...found].map((drop) => drop.impedance.citation));
  return {
    edition,
    current,
    circuitVolts: question.volts,
    amperes: question.amperes,
    feet: question.feet,
    conductors: { sets: ownSets, size, material: conductors.material },
    volts: own.volts,
    percent: own.percent,
    impedanceFrom: impedance.from,
    impedance: own.impedance,
    permittedPercent,
    sufficient,
    evidence: weakestEvidence(citations.map(({ evidence }) => evidence)),
    citations,
    cautions: [
      ...(permittedPercent === null ? [] : (["drop-is-no-rule", "ampacity-not-asked"] as const)),
      ...(impedance.from === "table-8" && current !== "direct" ? ["reactance-left-out" as const] : []),
      ...(sufficient.some(({ increased }) => increased) ? ["grounding-conductor-increases" as const] : []),
    ],
  };
}

function sufficientFrom(
  { conductors }: VoltageDropQuestion,
  { sets, size, volts, percent }: Drop,
): SufficientConductors {
  const { sets: ownSets = 1, size: ownSize, material } = conductors;
  const baseline: Supply = { sets: [{ count: ownSets, size: ownSize, material }] };
  return {
    sets,
    size,
    volts,
    percent,
    increased: areaOf(size) * sets > areaOf(ownSize) * ownSets,
    circuit: {
      conductors: { sets: [{ count: sets, size, material }] },
      increasedFrom: { conductors: baseline, reason: "voltage-drop" },
    },
  };
}

function refuseDrop(at: Reader, question: VoltageDropQuestion, counts: readonly number[]): undefined {
  const { sets, size, percent } = counts
    .flatMap((one) => dropsFor(question, one))
    .reduce((least, drop) => (drop.percent < least.percent ? drop : least));
  const nearest = `at least ${percent.toFixed(2)} percent, the drop of ${sets} x ${size}`;
  return refuse(
    placeIn(at, ["permittedPercent"], question.permittedPercent),
    "out-of-range",
    nearest,
    "permit more, or give mostSets so that the conductors may be divided",
  );
}

import { areaOf, type ConductorColumn, type ConductorSize, type StandardSize } from "../conductor/index.js";
import { type Citation, type Evidence, weakestEvidence } from "../edition/index.js";
import { withstandFacts } from "../edition/tables/short-time-withstand.generated.js";
import type { Marks } from "../input/given-result.js";
import { readAll } from "../input/reader.js";
import type { StandardSizeStep } from "../sizing/index.js";
import { standardSizeStep } from "../sizing/size-by-supply.js";
import type { ShortTimeWithstandInput, WithstandTemperatures } from "./shape.generated.js";
import { readWithstandInput } from "./short-time-withstand-input.js";

export type { ShortTimeWithstandInput };

/** What a squared circular mil of the metal can take between two temperatures. */
export interface HeatStep {
  /** Tells the members of the union apart. */
  readonly kind: "heat";
  /** Material of the conductor. */
  readonly material: ConductorColumn;
  /** The constant before the logarithm. */
  readonly factor: number;
  /** The constant added to both temperatures. */
  readonly offset: number;
  /** Degrees Celsius. */
  readonly initial: number;
  /** Degrees Celsius. */
  readonly final: number;
  /** Ampere-squared seconds per squared circular mil. */
  readonly perSquaredCircularMil: number;
  /** Where the edition says so. */
  readonly citation: Citation;
}

/** What the conductor can take. */
export interface CapacityStep {
  /** Tells the members of the union apart. */
  readonly kind: "capacity";
  /** Circular mils. */
  readonly area: number;
  /** Ampere-squared seconds. */
  readonly capacity: number;
  /** Where the edition says so. */
  readonly citation: Citation;
}

/** What the fault brings. */
export interface LetThroughStep {
  /** Tells the members of the union apart. */
  readonly kind: "let-through";
  /** `null` where the device's maker states the let-through. */
  readonly amperes: number | null;
  /** `null` where the device's maker states the let-through. */
  readonly seconds: number | null;
  /** Ampere-squared seconds. */
  readonly letThrough: number;
  /** `null` where the device's maker states the let-through: no code says it. */
  readonly citation: Citation | null;
}

/** The smallest area that withstands the fault. */
export interface WithstandAreaStep {
  /** Tells the members of the union apart. */
  readonly kind: "required-area";
  /** Whole circular mils, rounded up. */
  readonly requiredArea: number;
  /** Where the edition says so. */
  readonly citation: Citation;
}

/** One step of a short-time withstand. */
export type WithstandStep = HeatStep | CapacityStep | LetThroughStep | WithstandAreaStep | StandardSizeStep;

/**
 * Stable codes of what to know beside a short-time withstand.
 *
 * @example
 * ```ts
 * import { withstandCautionCodes } from "bondmil";
 * withstandCautionCodes[0]; // => "never-lowers-the-code-minimum"
 * ```
 */
export const withstandCautionCodes = [
  "never-lowers-the-code-minimum",
  "not-the-code-size",
  "asymmetry-not-included",
  "let-through-as-stated",
] as const;

/** One of {@link withstandCautionCodes}. */
export type WithstandCautionCode = (typeof withstandCautionCodes)[number];

/** A rule of thumb, printed beside the formula; it decides nothing. */
export interface WithstandCrossCheck {
  /** Circular mils for each ampere. */
  readonly circularMilsPerAmpere: number;
  /** Duration in seconds. */
  readonly seconds: number;
  /** Initial temperature of the rule, in degrees Celsius. */
  readonly initial: number;
  /** Final temperature of the rule, in degrees Celsius. */
  readonly final: number;
  /** Amperes that the rule gives this conductor for its seconds. */
  readonly amperes: number;
  /** The same in ampere-squared seconds. */
  readonly capacity: number;
  /** Whether the rule has the temperatures of the input. */
  readonly sameTemperatures: boolean;
  /** What the rule rests on. */
  readonly restsOn: "one-practitioner-source";
  /** How sure the texts and values behind it are, weakest first used. */
  readonly evidence: Evidence;
}

/** A conductor held against a fault. Plain JSON, sharing nothing with the input. */
export interface ShortTimeWithstand {
  /** `null` for a conductor given by its area. */
  readonly size: ConductorSize | null;
  /** Circular mils. */
  readonly area: number;
  /** Material of the conductor. */
  readonly material: ConductorColumn;
  /** Temperatures, in degrees Celsius. */
  readonly temperatures: WithstandTemperatures;
  /** Ampere-squared seconds that the conductor can take. */
  readonly capacity: number;
  /** Ampere-squared seconds that the fault brings. */
  readonly letThrough: number;
  /** Capacity over let-through; at least 1 withstands. */
  readonly ratio: number;
  /** Whether the conductor withstands the fault; `null` where none was given. */
  readonly withstands: boolean;
  /** Smallest area, in whole circular mils, with a ratio of at least 1. */
  readonly requiredArea: number;
  /** Smallest standard size with that area; `null` above the largest. */
  readonly smallestSize: StandardSize | null;
  /** The steps that decided, in their order. */
  readonly steps: readonly WithstandStep[];
  /** `null` for aluminum, for which no such rule is known. */
  readonly crossCheck: WithstandCrossCheck | null;
  /** Weakest evidence among the steps. */
  readonly evidence: Evidence;
  /** What to know beside it, as stable codes with their section. */
  readonly cautions: readonly WithstandCautionCode[];
}

/**
 * Holds a conductor against a fault: (I / A)2 t = C log10((T2 + K) / (T1 + K)), no heat leaving the conductor, with the
 * constants of Table 240.92(B) (the form of ICEA P-32-382). Beside the code minimum: a conductor that the code sizes may
 * have to be larger for this, never smaller.
 *
 * @param input - the conductor, its initial and final temperature in degrees Celsius, and the fault: symmetrical amperes for
 *   0.1 s to 5 s, or the let-through in ampere-squared seconds that the device's maker states
 * @returns capacity and let-through in ampere-squared seconds, their ratio, and the smallest area (circular mils, rounded
 *   up) and standard size that withstand the fault
 * @throws {@link InputError} listing everything that is wrong in the input; a time outside 0.1 s to 5 s is `out-of-range`
 *
 * @example
 * ```ts
 * import { shortTimeWithstand } from "bondmil";
 * const jumper = shortTimeWithstand({
 *   conductor: { size: "4 AWG", material: "copper" },
 *   temperatures: { initial: 75, final: 150 },
 *   fault: { amperes: 5000, seconds: 0.25 },
 * });
 * jumper.withstands; // => false
 * jumper.ratio.toFixed(2); // => "0.78"
 * jumper.requiredArea; // => 47222
 * jumper.smallestSize; // => "3 AWG"
 * ```
 */
export function shortTimeWithstand(input: ShortTimeWithstandInput): ShortTimeWithstand {
  const { conductor, temperatures, fault } = readAll(input, readWithstandInput);
  const { material } = conductor;
  const { initial, final } = temperatures;
  const { formula, sizes, metals } = withstandFacts;
  const { factor, offset } = metals[material];
  const size = "size" in conductor ? conductor.size : null;
  const area = "size" in conductor ? areaOf(conductor.size) : conductor.areaCircularMils;

  const perSquaredCircularMil = factor * Math.log10((final + offset) / (initial + offset));
  const capacity = capacityOf(area, perSquaredCircularMil);
  const stated = "letThrough" in fault;
  const [amperes, seconds] = stated ? [null, null] : [fault.amperes, fault.seconds];
  const letThrough = stated ? fault.letThrough : fault.amperes * fault.amperes * fault.seconds;
  const requiredArea = smallestArea(letThrough, perSquaredCircularMil);
  const standard = standardSizeStep(requiredArea, { ...sizes });
  const steps: readonly WithstandStep[] = [
    {
      kind: "heat",
      material,
      factor,
      offset,
      initial,
      final,
      perSquaredCircularMil,
      citation: { ...formula },
    },
    { kind: "capacity", area, capacity, citation: { ...formula } },
    { kind: "let-through", amperes, seconds, letThrough, citation: stated ? null : { ...formula } },
    { kind: "required-area", requiredArea, citation: { ...formula } },
    ...(standard === null ? [] : [standard]),
  ];
  return {
    size,
    area,
    material,
    temperatures,
    capacity,
    letThrough,
    ratio: capacity / letThrough,
    withstands: capacity >= letThrough,
    requiredArea,
    smallestSize: standard?.size ?? null,
    steps,
    crossCheck: material === withstandFacts.crossCheck.metal ? crossCheckOf(area, temperatures) : null,
    evidence: weakestEvidence(steps.flatMap((step) => step.citation?.evidence ?? [])),
    cautions: [
      "never-lowers-the-code-minimum",
      "not-the-code-size",
      stated ? "let-through-as-stated" : "asymmetry-not-included",
    ],
  };
}

function capacityOf(area: number, perSquaredCircularMil: number): number {
  return perSquaredCircularMil * area * area;
}

/** The root is a first guess only; the smallest whole area is the one that the capacity itself confirms. */
function smallestArea(letThrough: number, perSquaredCircularMil: number): number {
  const withstands = (area: number): boolean => capacityOf(area, perSquaredCircularMil) >= letThrough;
  let area = Math.max(1, Math.ceil(Math.sqrt(letThrough / perSquaredCircularMil)));
  while (!withstands(area)) area += 1;
  while (area > 1 && withstands(area - 1)) area -= 1;
  return area;
}

function crossCheckOf(area: number, { initial, final }: WithstandTemperatures): WithstandCrossCheck {
  const rule = withstandFacts.crossCheck;
  const { circularMilsPerAmpere, seconds, restsOn, evidence } = rule;
  const amperes = area / circularMilsPerAmpere;
  return {
    circularMilsPerAmpere,
    seconds,
    initial: rule.initial,
    final: rule.final,
    amperes,
    capacity: amperes * amperes * seconds,
    sameTemperatures: initial === rule.initial && final === rule.final,
    restsOn,
    evidence,
  };
}

/** By what a conductor held against a fault is known. */
export const withstandMarks: Marks<ShortTimeWithstand> = {
  material: "text",
  temperatures: "object",
  capacity: "number",
  letThrough: "number",
  ratio: "number",
  steps: "list",
  cautions: "list",
};

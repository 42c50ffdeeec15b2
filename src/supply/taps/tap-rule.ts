import { smallestConductorIn, type TemperatureColumn, terminationColumn } from "../../ampacity/index.js";
import { areaOf, type StandardSize } from "../../conductor/index.js";
import type { Citation, EditionYear } from "../../edition/index.js";
import type { ConductorEnding } from "./shape.generated.js";

/** What a rule asks of conductors beyond their ampacity, as stable codes. */
export type TapCondition =
  | "at-most-10-feet"
  | "at-most-25-feet"
  | "at-most-100-feet"
  | "at-most-25-feet-horizontal"
  | "tap-at-least-30-feet-above-floor"
  | "walls-above-35-feet"
  | "one-device"
  | "device-known"
  | "outside"
  | "high-bay"
  | "qualified-persons"
  | "unspliced"
  | "supplies-transformer"
  | "supplies-no-transformer"
  | "industrial"
  | "two-wire-or-delta-delta"
  | "supplied-by-tap";

/** One of the amperes that a conductor must have; the largest of them decides. */
export interface TapPart {
  /** What the amperes follow from. */
  readonly from:
    | "load"
    | "device-at-end"
    | "equipment-at-end"
    | "sum-of-devices"
    | "transformer-current"
    | "feeder-device"
    | "primary-device";
  /** Amperes of what they follow from. */
  readonly of: number;
  /** The part of it that is required: 1 for the whole, 3 for a third, 10 for a tenth. */
  readonly divisor: 1 | 3 | 10;
  /** Primary over secondary volts where they are multiplied by it, else `null`. */
  readonly ratio: number | null;
  /** Amperes that the conductor must have at least; not rounded. */
  readonly amperes: number;
}

/** The smallest sizes that a rule names. */
export interface SmallestOfRule {
  /** Copper. */
  readonly copper: StandardSize;
  /** Aluminum or copper-clad aluminum. */
  readonly aluminum: StandardSize;
}

/** One of the rules under which conductors may have their protection at the far end, held against a question. */
export interface TapRule {
  /** Where the edition says so. */
  readonly citation: Citation;
  /** Whether the conductors meet its conditions. */
  readonly holds: boolean;
  /** The conditions that they do not meet. */
  readonly unmet: readonly TapCondition[];
  /** Amperes that the conductor must have at least; `null` where the rule does not hold. */
  readonly amperes: number | null;
  /** What the amperes follow from. */
  readonly parts: readonly TapPart[];
  /** The smallest sizes that the rule allows, whatever their ampacity; `null` for all but the high bay. */
  readonly smallest: SmallestOfRule | null;
}

/** The smallest single conductors that a rule allows. */
export interface TapSizes {
  /** Copper; `null` where no single conductor of the table has the ampacity. */
  readonly copper: StandardSize | null;
  /** Aluminum or copper-clad aluminum; `null` where no single conductor of the table has the ampacity. */
  readonly aluminum: StandardSize | null;
  /** Temperature column of the ampacity table that was read, in degrees Celsius. */
  readonly temperature: TemperatureColumn;
}

/** Puts a rule together; the conditions are given with whether they are met. */
export function tapRule(
  citation: Citation,
  conditions: readonly (readonly [TapCondition, boolean])[],
  parts: readonly TapPart[],
  smallest: TapRule["smallest"] = null,
): TapRule {
  const unmet = conditions.filter(([, isMet]) => !isMet).map(([condition]) => condition);
  const holds = unmet.length === 0;
  const amperes = holds ? Math.max(...parts.map((part) => part.amperes)) : null;
  return { citation: { ...citation }, holds, unmet, amperes, parts: holds ? parts : [], smallest };
}

/** A part that is the whole of something. */
export function whole(from: TapPart["from"], of: number): TapPart {
  return { from, of, divisor: 1, ratio: null, amperes: of };
}

/** A part that is a share of a device, through the voltages of a transformer where there is one. */
export function shareOfDevice(
  from: TapPart["from"],
  of: number,
  divisor: TapPart["divisor"],
  volts?: { readonly primaryVolts: number; readonly secondaryVolts: number },
): TapPart {
  if (volts === undefined) return { from, of, divisor, ratio: null, amperes: of / divisor };
  const { primaryVolts, secondaryVolts } = volts;
  const amperes = (of * primaryVolts) / (secondaryVolts * divisor);
  return { from, of, divisor, ratio: primaryVolts / secondaryVolts, amperes };
}

/** The load, and what the conductors end in where any number of devices may stand there. */
export function atTheEnd(load: number, endsIn: ConductorEnding): readonly TapPart[] {
  const end =
    endsIn.device === undefined
      ? whole("equipment-at-end", endsIn.equipment)
      : whole("device-at-end", endsIn.device);
  return [whole("load", load), end];
}

/** The load and the one device at the end, neither of which may be above the ampacity. */
export function oneAtTheEnd(load: number, endsIn: ConductorEnding): readonly TapPart[] {
  return endsIn.device === undefined ? [] : [whole("load", load), whole("device-at-end", endsIn.device)];
}

/** The rule that asks the smallest conductor, of those that hold; the first of alike ones. */
export function leastDemanding<R extends TapRule>(rules: readonly R[]): R | null {
  const holding = rules.filter(({ holds }) => holds);
  return holding.reduce<R | null>(
    (least, rule) => (least === null || (rule.amperes ?? 0) < (least.amperes ?? 0) ? rule : least),
    null,
  );
}

/** The smallest single conductors of a rule: a circuit through 100 A has terminations for 60 C, one above for 75 C (110.14(C)(1)). */
export function tapSizes(
  year: EditionYear,
  { amperes, smallest }: TapRule,
  circuitAmperes: number,
): TapSizes {
  const temperature = terminationColumn(circuitAmperes, false);
  const of = (material: "copper" | "aluminum"): StandardSize | null => {
    const carrying = smallestConductorIn(year, amperes ?? 0, material, temperature);
    const least = smallest?.[material];
    return carrying !== null && least !== undefined && areaOf(least) > areaOf(carrying) ? least : carrying;
  };
  return { copper: of("copper"), aluminum: of("aluminum"), temperature };
}

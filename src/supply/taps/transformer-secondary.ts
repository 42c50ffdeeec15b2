import { type Citation, type EditionYear, type Evidence, weakestEvidence } from "../../edition/index.js";
import { transformerSecondaryConductors } from "../../edition/tables/sections.generated.js";
import { readShape } from "../../input/read-shape.js";
import { readAll } from "../../input/reader.js";
import { lineCurrent } from "../transformer-current.js";
import { secondaryRules } from "./secondary-rules.js";
import { type TransformerQuestion, transformerQuestionShape } from "./shape.generated.js";
import { type TapCaution, tapCautions } from "./tap-cautions.js";
import { leastDemanding, type TapRule, type TapSizes, tapSizes } from "./tap-rule.js";
import { type PermittedDevice, permittedDevice } from "./transformer-device.js";

export type { TransformerQuestion };

/** One side of a transformer: its current, and its device. */
export interface TransformerSide {
  /** Rated current in amperes, not rounded. */
  readonly amperes: number;
  /** The largest device that the table permits; `null` where it asks none on this side. */
  readonly permitted: PermittedDevice | null;
  /** Amperes of the device, as given, or else the largest permitted one; `null` where neither is known. */
  readonly device: number | null;
  /** Whether the device was given. */
  readonly given: boolean;
}

/** The devices and secondary conductors of a transformer. Plain JSON, sharing nothing with the question. */
export interface TransformerSecondary {
  /** Tells the members of the union apart. */
  readonly kind: "transformer-secondary";
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** The primary. */
  readonly primary: TransformerSide;
  /** The secondary. */
  readonly secondary: TransformerSide;
  /** The six rules, (C)(1) to (C)(6), each held against the question. */
  readonly rules: readonly TapRule[];
  /** Place in the list of the rule that asks the smallest conductor; `null` where none holds. */
  readonly decides: number | null;
  /** Amperes that the secondary conductors must have at least under it, without the next standard rating; `null` where none holds. */
  readonly amperes: number | null;
  /** The smallest single conductors with that ampacity, by the table; `null` where no rule holds. */
  readonly smallest: TapSizes | null;
  /** The rule of the table of protection, and the one that decides the conductors. */
  readonly citations: readonly Citation[];
  /** Weakest evidence that the answer rests on. */
  readonly evidence: Evidence;
  /** What to know beside it. */
  readonly cautions: readonly TapCaution[];
}

/**
 * A transformer as far as it decides its secondary conductors: the currents of both sides, the devices that Table 450.3(B) permits, and
 * the ampacity that each rule of 240.21(C) asks of the secondary conductors. That the device may be the next standard rating above the
 * ampacity (240.4(B)) is not for secondary conductors; that the table of transformer protection allows it for the device is another matter.
 *
 * @param question - nameplate, protected sides, devices in amperes, and the secondary conductors with their length in feet and load in amperes
 * @returns both sides, the rules, and the one that asks the smallest conductor; amperes, not rounded
 * @throws {@link InputError} listing everything that is wrong in the question
 *
 * @example
 * ```ts
 * import { transformerSecondary } from "bondmil";
 * const answer = transformerSecondary({
 *   edition: "2023",
 *   transformer: { kva: 30, primaryVolts: 480, secondaryVolts: 208, phases: 3, windings: "other" },
 *   protection: "primary-and-secondary",
 *   conductors: { feet: 10, place: "inside", load: 80 },
 * });
 * answer.primary.device; // => 90
 * answer.secondary.device; // => 110
 * answer.amperes; // => 110
 * answer.smallest?.copper; // => "2 AWG"
 * ```
 */
export function transformerSecondary(question: TransformerQuestion): TransformerSecondary {
  const read = readAll(question, (at) => readShape<TransformerQuestion>(at, transformerQuestionShape));
  const { edition, conductors, feederTap } = read;
  const primary = sideOf(read, "primary", read.primaryDevice ?? feederTap?.feederDevice);
  const { endsIn } = conductors;
  const atEnd = endsIn?.device ?? sumOf(endsIn?.devices);
  const secondary = sideOf(read, "secondary", atEnd);
  const rules = secondaryRules(read, primary.device, secondary.amperes, endsIn ?? assumed(secondary));
  const least = leastDemanding(rules);
  const citations = [
    ...[primary.permitted, secondary.permitted].flatMap((one) => (one === null ? [] : [one.citation])),
    least?.citation ?? { ...transformerSecondaryConductors[edition] },
  ];
  const circuit = endsIn?.equipment ?? secondary.device ?? least?.amperes ?? secondary.amperes;
  return {
    kind: "transformer-secondary",
    edition,
    primary,
    secondary,
    rules,
    decides: least === null ? null : rules.indexOf(least),
    amperes: least?.amperes ?? null,
    smallest: least === null ? null : tapSizes(edition, least, circuit),
    citations,
    evidence: weakestEvidence(citations.map(({ evidence }) => evidence)),
    cautions: cautionsOf(read, { primary, secondary, least, rules }),
  };
}

/** Amperes of devices that count as one where they are grouped; `undefined` for none. */
function sumOf(devices: readonly number[] | undefined): number | undefined {
  return devices?.reduce((sum, one) => sum + one, 0);
}

function assumed({ device }: TransformerSide): { readonly device: number } | undefined {
  return device === null ? undefined : { device };
}

function sideOf(
  { edition, transformer, protection }: TransformerQuestion,
  side: "primary" | "secondary",
  given: number | undefined,
): TransformerSide {
  const { kva, phases } = transformer;
  const volts = side === "primary" ? transformer.primaryVolts : transformer.secondaryVolts;
  const amperes = lineCurrent({ kva, volts, phases });
  const permitted = permittedDevice(edition, protection, side, amperes);
  return { amperes, permitted, device: given ?? permitted?.rating ?? null, given: given !== undefined };
}

interface Found {
  readonly primary: TransformerSide;
  readonly secondary: TransformerSide;
  readonly least: TapRule | null;
  readonly rules: readonly TapRule[];
}

function cautionsOf(
  { edition, conductors }: TransformerQuestion,
  { primary, secondary, least, rules }: Found,
): readonly TapCaution[] {
  const rule = least?.citation.section ?? null;
  const { section } = transformerSecondaryConductors[edition];
  const [byPrimary] = rules;
  const table = primary.permitted?.citation.section ?? null;
  return tapCautions([
    [true, "never-next-rating", section],
    [least === null, "no-rule-holds", section],
    [least !== null && least !== byPrimary, "protect-from-damage", rule],
    [conductors.place === "outside" && least !== null, "device-beside-disconnect", rule],
    [isAbove(primary) || isAbove(secondary), "device-above-permitted", table],
    [
      (!primary.given && primary.device !== null) || (!secondary.given && secondary.device !== null),
      "largest-device-assumed",
      table,
    ],
    [(conductors.endsIn?.devices ?? []).length > 6, "grouped-devices-as-one", table],
    [conductors.load === 0, "load-not-given", null],
    [isAbove(primary), "thermally-protected-transformer", table],
    [least !== null, "terminations-by-rating", "110.14(C)(1)"],
  ]);
}

/** Whether the device is more than the table permits: above the percentage, and above the standard rating where that may be more. */
function isAbove({ device, permitted }: TransformerSide): boolean {
  if (device === null || permitted === null) return false;
  return device > Math.max(permitted.amperes, permitted.rating ?? 0);
}

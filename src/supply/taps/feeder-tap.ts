import { type EditionYear, type Evidence, weakestEvidence } from "../../edition/index.js";
import {
  feederTapHighBay,
  feederTapOutdoors,
  feederTapTenFeet,
  feederTapTransformer,
  feederTapTwentyFiveFeet,
  tapConductors,
} from "../../edition/tables/sections.generated.js";
import { readShape } from "../../input/read-shape.js";
import { readAll } from "../../input/reader.js";
import { type FeederTapQuestion, feederTapQuestionShape } from "./shape.generated.js";
import { type TapCaution, tapCautions } from "./tap-cautions.js";
import {
  atTheEnd,
  leastDemanding,
  oneAtTheEnd,
  shareOfDevice,
  type TapPart,
  type TapRule,
  type TapSizes,
  tapRule,
  tapSizes,
} from "./tap-rule.js";

export type { FeederTapQuestion };

/** A rule of feeder taps; through a transformer it also asks something of the secondary conductors. */
export interface FeederTapRule extends TapRule {
  /** Amperes that the secondary conductors must have at least; `null` without a transformer. */
  readonly secondaryAmperes: number | null;
  /** What those follow from. */
  readonly secondaryParts: readonly TapPart[];
}

/** What a feeder tap must be. Plain JSON, sharing nothing with the question. */
export interface FeederTap {
  /** Tells the members of the union apart. */
  readonly kind: "feeder-tap";
  /** Edition of NFPA 70, by its year. */
  readonly edition: EditionYear;
  /** The five rules, (B)(1) to (B)(5), each held against the question. */
  readonly rules: readonly FeederTapRule[];
  /** Place in the list of the rule that asks the smallest conductor; `null` where none holds. */
  readonly decides: number | null;
  /** Amperes that the tap must have at least under it, without the next standard rating; `null` where none holds. */
  readonly amperes: number | null;
  /** The smallest single conductors with that ampacity, by the table; `null` where no rule holds. */
  readonly smallest: TapSizes | null;
  /** Weakest evidence that the answer rests on. */
  readonly evidence: Evidence;
  /** What to know beside it. */
  readonly cautions: readonly TapCaution[];
}

/**
 * Conductors that are tapped to a feeder and have their protection at the far end (240.21(B)): each of the five rules with the conditions
 * that are not met, and the ampacity that it asks. That the device may be the next standard rating above the ampacity (240.4(B)) is not for
 * taps.
 *
 * @param question - the feeder's device, the length of the tap in feet, where it runs and ends, and its load in amperes
 * @returns the rules, and the one that asks the smallest conductor; amperes, not rounded
 * @throws {@link InputError} listing everything that is wrong in the question
 *
 * @example
 * ```ts
 * import { feederTap } from "bondmil";
 * const tap = feederTap({ edition: "2023", feederDevice: 400, feet: 20, place: "inside", endsIn: { device: 150 }, load: 120 });
 * tap.amperes; // => 150
 * tap.smallest; // => { copper: "1/0 AWG", aluminum: "3/0 AWG", temperature: 75 }
 * tap.rules[0]?.unmet; // => ["at-most-10-feet"]
 * ```
 */
export function feederTap(question: FeederTapQuestion): FeederTap {
  const read = readAll(question, (at) => readShape<FeederTapQuestion>(at, feederTapQuestionShape));
  const { edition, endsIn, load } = read;
  const rules = rulesOf(read);
  const least = leastDemanding(rules);
  const section = least?.citation.section ?? tapConductors[edition].section;
  const circuit = endsIn.device ?? endsIn.equipment;
  return {
    kind: "feeder-tap",
    edition,
    rules,
    decides: least === null ? null : rules.indexOf(least),
    amperes: least?.amperes ?? null,
    smallest: least === null ? null : tapSizes(edition, least, circuit),
    evidence: weakestEvidence(
      [tapConductors[edition], ...(least ? [least.citation] : [])].map((one) => one.evidence),
    ),
    cautions: tapCautions([
      [true, "never-next-rating", tapConductors[edition].section],
      [true, "no-tap-from-a-tap", tapConductors[edition].section],
      [least === null, "no-rule-holds", section],
      [least !== null, "protect-from-damage", section],
      [least?.citation.section === feederTapOutdoors[edition].section, "device-beside-disconnect", section],
      [load === 0, "load-not-given", null],
      [least !== null, "terminations-by-rating", "110.14(C)(1)"],
    ]),
  };
}

function rulesOf(question: FeederTapQuestion): readonly FeederTapRule[] {
  const { edition, feederDevice, feet, place, endsIn, load, leavesEnclosure = true } = question;
  const { transformer, highBay } = question;
  const isDirect = ["supplies-no-transformer", transformer === undefined] as const;
  const isOne = ["one-device", endsIn.device !== undefined] as const;
  const third = shareOfDevice("feeder-device", feederDevice, 3);
  const tenth = leavesEnclosure ? [shareOfDevice("feeder-device", feederDevice, 10)] : [];
  const end = oneAtTheEnd(load, endsIn);
  return [
    plain(
      tapRule(
        feederTapTenFeet[edition],
        [["at-most-10-feet", feet <= 10], isDirect],
        [...atTheEnd(load, endsIn), ...tenth],
      ),
    ),
    plain(
      tapRule(
        feederTapTwentyFiveFeet[edition],
        [["at-most-25-feet", feet <= 25], isDirect, isOne],
        [...end, third],
      ),
    ),
    throughTransformer(question),
    plain(
      tapRule(
        feederTapHighBay[edition],
        [
          ["high-bay", highBay !== undefined],
          ["walls-above-35-feet", (highBay?.wallFeet ?? 0) > 35],
          ["at-most-100-feet", feet <= 100],
          ["at-most-25-feet-horizontal", (highBay?.horizontalFeet ?? 0) <= 25],
          ["tap-at-least-30-feet-above-floor", (highBay?.aboveFloorFeet ?? 0) >= 30],
          ["qualified-persons", highBay?.qualified === true],
          ["unspliced", highBay?.unspliced === true],
          isDirect,
          isOne,
        ],
        [...end, third],
        { copper: "6 AWG", aluminum: "4 AWG" },
      ),
    ),
    plain(tapRule(feederTapOutdoors[edition], [["outside", place === "outside"], isDirect, isOne], end)),
  ];
}

function throughTransformer(question: FeederTapQuestion): FeederTapRule {
  const { edition, feederDevice, feet, endsIn, load, transformer } = question;
  const length = feet + (transformer?.secondaryFeet ?? 0);
  const rule = tapRule(
    feederTapTransformer[edition],
    [
      ["supplies-transformer", transformer !== undefined],
      ["at-most-25-feet", length <= 25],
      ["one-device", endsIn.device !== undefined],
    ],
    [shareOfDevice("feeder-device", feederDevice, 3)],
  );
  if (!rule.holds || transformer === undefined) return plain(rule);
  const secondaryParts = [
    ...oneAtTheEnd(load, endsIn),
    shareOfDevice("feeder-device", feederDevice, 3, transformer),
  ];
  const secondaryAmperes = Math.max(...secondaryParts.map(({ amperes }) => amperes));
  return { ...rule, secondaryAmperes, secondaryParts };
}

function plain(rule: TapRule): FeederTapRule {
  return { ...rule, secondaryAmperes: null, secondaryParts: [] };
}

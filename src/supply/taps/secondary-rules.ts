import {
  secondaryIndustrial,
  secondaryOfTappedTransformer,
  secondaryOutdoors,
  secondaryProtectedByPrimary,
  secondaryTenFeet,
  secondaryTwentyFiveFeet,
} from "../../edition/tables/sections.generated.js";
import type { ConductorEnding, TransformerQuestion } from "./shape.generated.js";
import {
  atTheEnd,
  oneAtTheEnd,
  shareOfDevice,
  type TapCondition,
  type TapPart,
  type TapRule,
  tapRule,
  whole,
} from "./tap-rule.js";

/** The six rules for secondary conductors, each held against the question (240.21(C)(1) to (6)). */
export function secondaryRules(
  question: TransformerQuestion,
  primaryDevice: number | null,
  secondaryCurrent: number,
  endsIn: ConductorEnding | undefined,
): readonly TapRule[] {
  const { edition, transformer, conductors } = question;
  const { feet, place, load, leavesEnclosure = true, industrial = false } = conductors;
  const isKnown: Condition = ["device-known", endsIn !== undefined];
  const isOne: Condition = ["one-device", endsIn?.device !== undefined];
  const isPrimaryKnown = primaryDevice !== null;
  const isWithin: Condition = ["at-most-25-feet", feet <= 25];
  const share = (divisor: 1 | 3 | 10): readonly TapPart[] =>
    primaryDevice === null ? [] : [shareOfDevice("primary-device", primaryDevice, divisor, transformer)];
  const ends = endsIn === undefined ? [] : atTheEnd(load, endsIn);
  const end = endsIn === undefined ? [] : oneAtTheEnd(load, endsIn);
  return [
    tapRule(
      secondaryProtectedByPrimary[edition],
      [
        ["two-wire-or-delta-delta", transformer.windings !== "other"],
        ["device-known", isPrimaryKnown],
      ],
      [whole("load", load), ...share(1)],
    ),
    tapRule(
      secondaryTenFeet[edition],
      [
        ["at-most-10-feet", feet <= 10],
        ["device-known", endsIn !== undefined && (isPrimaryKnown || !leavesEnclosure)],
      ],
      [...ends, ...(leavesEnclosure ? share(10) : [])],
    ),
    tapRule(
      secondaryIndustrial[edition],
      [["industrial", industrial], isWithin, isKnown],
      [whole("transformer-current", secondaryCurrent), ...devicesOf(endsIn)],
    ),
    tapRule(secondaryOutdoors[edition], [["outside", place === "outside"], isKnown, isOne], end),
    ofTappedTransformer(question, endsIn),
    tapRule(
      secondaryTwentyFiveFeet[edition],
      [isWithin, ["device-known", endsIn !== undefined && isPrimaryKnown], isOne],
      [...end, ...share(3)],
    ),
  ];
}

type Condition = readonly [TapCondition, boolean];

function devicesOf(endsIn: ConductorEnding | undefined): readonly TapPart[] {
  if (endsIn === undefined) return [];
  if (endsIn.device !== undefined) return [whole("device-at-end", endsIn.device)];
  return [
    whole(
      "sum-of-devices",
      endsIn.devices.reduce((sum, one) => sum + one, 0),
    ),
  ];
}

/** The secondary conductors of a transformer that a feeder tap supplies, 240.21(B)(3). */
function ofTappedTransformer(
  { edition, transformer, conductors, feederTap }: TransformerQuestion,
  endsIn: ConductorEnding | undefined,
): TapRule {
  const length = conductors.feet + (feederTap?.primaryFeet ?? 0);
  const end = endsIn === undefined ? [] : oneAtTheEnd(conductors.load, endsIn);
  const share =
    feederTap === undefined ? [] : [shareOfDevice("feeder-device", feederTap.feederDevice, 3, transformer)];
  return tapRule(
    secondaryOfTappedTransformer[edition],
    [
      ["supplied-by-tap", feederTap !== undefined],
      ["at-most-25-feet", length <= 25],
      ["device-known", endsIn !== undefined],
      ["one-device", endsIn?.device !== undefined],
    ],
    [...end, ...share],
  );
}

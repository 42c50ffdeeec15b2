import type { FeederTap } from "../../supply/taps/feeder-tap.js";
import type { TapCaution, TapCautionCode } from "../../supply/taps/tap-cautions.js";

type Rule = FeederTap["rules"][number];

/** What each caution on a tap or on secondary conductors says. */
export const tapCautionWords: Readonly<Record<TapCautionCode, string>> = {
  "never-next-rating":
    "The conductors are not protected by the next standard rating above their ampacity: the ampacity is not below the device",
  "no-tap-from-a-tap": "No further tap is made from these conductors",
  "protect-from-damage":
    "The conductors are protected from physical damage, in a raceway or by another approved means",
  "device-beside-disconnect":
    "The overcurrent device is part of the disconnect or directly beside it, and the disconnect is readily accessible, outdoors or where the conductors enter",
  "no-rule-holds":
    "None of the rules looked at holds: the conductors have their device where they begin, or another rule of the section permits them",
  "load-not-given": "No load is named, and the conductors have to carry it",
  "device-above-permitted": "A device is rated above what the table permits for the transformer",
  "largest-device-assumed": "Where no device is named, the largest that the table permits is taken",
  "grouped-devices-as-one":
    "Not more than six devices grouped in one place count as the one device of a secondary, and here are more",
  "thermally-protected-transformer":
    "A transformer that its maker protects against overheating may have a larger primary device, which is not looked at here",
  "terminations-by-rating":
    "Sizes go by terminations without a mark, 60 C through 100 A and 75 C above, and are not corrected or adjusted for the place of the conductors",
};

/** A caution with its section. */
export function tapCautionSentence({ code, section }: TapCaution): string {
  return `${tapCautionWords[code]}${section === null ? "" : ` [${section}]`}`;
}

/** Each condition as it reads where it is not met. */
export const unmetTapWords: Readonly<Record<Rule["unmet"][number], string>> = {
  "at-most-10-feet": "the length is above 10 ft",
  "at-most-25-feet": "the length is above 25 ft",
  "at-most-100-feet": "the length is above 100 ft",
  "at-most-25-feet-horizontal": "more than 25 ft run horizontally",
  "tap-at-least-30-feet-above-floor": "the tap is made less than 30 ft above the floor",
  "walls-above-35-feet": "the walls are not above 35 ft",
  "one-device": "there is not one device at the end",
  "device-known": "a device that decides is not known",
  outside: "the conductors do not run outdoors",
  "high-bay": "no high bay of a manufacturing building is named",
  "qualified-persons": "it is not ensured that only qualified persons service the systems",
  unspliced: "there is a splice, or the conductors pass a wall, floor or ceiling",
  "supplies-transformer": "no transformer is supplied",
  "supplies-no-transformer": "a transformer is supplied",
  industrial: "the installation is not named as industrial with qualified persons alone",
  "two-wire-or-delta-delta":
    "the secondary is neither single-phase two-wire nor three-wire of a delta-delta transformer",
  "supplied-by-tap": "no feeder tap supplies the transformer",
};

/** What amperes follow from. */
export const tapPartWords: Readonly<Record<Rule["parts"][number]["from"], string>> = {
  load: "the load",
  "device-at-end": "the device at the end",
  "equipment-at-end": "the equipment at the end",
  "sum-of-devices": "the devices at the end together",
  "transformer-current": "the current of the secondary",
  "feeder-device": "the feeder's device",
  "primary-device": "the primary device",
};

/** The rules of feeder taps, in their order (240.21(B)(1) to (5)). */
export const feederTapRuleNames: readonly string[] = [
  "rule for taps through 10 ft",
  "rule for taps through 25 ft",
  "rule for taps to a transformer, through 25 ft with its secondary",
  "rule for taps through 100 ft in a high bay",
  "rule for taps outdoors",
];

/** The rules of secondary conductors, in their order (240.21(C)(1) to (6)). */
export const secondaryRuleNames: readonly string[] = [
  "rule for secondary conductors protected by the primary device",
  "rule for secondary conductors through 10 ft",
  "rule for secondary conductors through 25 ft in industry",
  "rule for secondary conductors outdoors",
  "rule for secondary conductors of a transformer on a feeder tap",
  "rule for secondary conductors through 25 ft",
];

import type {
  ConductorAmpacity,
  CurrentCarrying,
  DeviceAnswer,
  DwellingConductor,
  RequiredByLoad,
} from "../../ampacity/index.js";
import { type RacewayFill, racewayFillMarks } from "../../engineering/raceway-fill/raceway-fill.js";
import { type ShortTimeWithstand, withstandMarks } from "../../engineering/short-time-withstand.js";
import { type VoltageDrop, voltageDropMarks } from "../../engineering/voltage-drop/voltage-drop.js";
import { type Marks, useResult } from "../../input/given-result.js";
import type { CableTrayResult } from "../../roles/equipment-grounding-conductor/cable-tray.js";
import { type SizingResult, sizingResultMarks } from "../../rules/result.js";
import type { FeederTap } from "../../supply/taps/feeder-tap.js";
import type { TransformerSecondary } from "../../supply/taps/transformer-secondary.js";
import { type DesignationBonding, designationMarks } from "../../systems/designation.js";
import { classificationMarks, type SourceClassification } from "../../systems/system-classification.js";
import { tellAmpacity } from "./ampacity.js";
import { tellCableTray } from "./cable-tray.js";
import { tellCurrentCarrying, tellDevice, tellDwelling, tellRequired } from "./device.js";
import { tellRacewayFill } from "./raceway-fill.js";
import { tellSizing } from "./sizing.js";
import { tellDesignation, tellSource } from "./system.js";
import { tellFeederTap, tellTransformerSecondary } from "./taps.js";
import type { Told } from "./told.js";
import { tellVoltageDrop } from "./voltage-drop.js";
import { tellWithstand } from "./withstand.js";

/** A result of any function that says what is required, permitted or enough. */
export type AnyResult =
  | SizingResult
  | CableTrayResult
  | ShortTimeWithstand
  | RacewayFill
  | VoltageDrop
  | DesignationBonding
  | SourceClassification
  | ResultOfKind;

/** A result that says its kind: on the ampacity of conductors, their device, what a load requires of them, or taps. */
type ResultOfKind =
  | ConductorAmpacity
  | CurrentCarrying
  | DeviceAnswer
  | DwellingConductor
  | RequiredByLoad
  | FeederTap
  | TransformerSecondary;

/** Tells a result that the caller hands back; what looks like none of the others is checked as a sized conductor. */
export function useAnyResult<T>(result: AnyResult, use: (told: Told) => T): T {
  if (has(result, "withstands"))
    return useResult(result, "shortTimeWithstand", withstandMarks, (one) => use(tellWithstand(one)));
  if (has(result, "permittedSquareInches"))
    return useResult(result, "racewayFill", racewayFillMarks, (one) => use(tellRacewayFill(one)));
  if (has(result, "impedanceFrom"))
    return useResult(result, "voltageDrop", voltageDropMarks, (one) => use(tellVoltageDrop(one)));
  if (has(result, "designation"))
    return useResult(result, "bondingAtDesignation", designationMarks, (one) => use(tellDesignation(one)));
  if (has(result, "follows"))
    return useResult(result, "classifySource", classificationMarks, (one) => use(tellSource(one)));
  if (has(result, "metal")) {
    return useResult(result, "cableTrayAsEquipmentGroundingConductor", cableTrayMarks, (one) =>
      use(tellCableTray(one)),
    );
  }
  if (has(result, "kind") && typeof result.kind === "string") return useResultOfKind(result, use);
  return useResult(result, "size", sizingResultMarks, (one) => use(tellSizing(one)));
}

function useResultOfKind<T>(result: ResultOfKind, use: (told: Told) => T): T {
  switch (result.kind) {
    case "current-carrying":
      return useResult(result, "currentCarryingConductors", countMarks, (one) =>
        use(tellCurrentCarrying(one)),
      );
    case "device":
      return useResult(result, "deviceFor", deviceMarks, (one) => use(tellDevice(one)));
    case "dwelling-conductor":
      return useResult(result, "dwellingConductor", dwellingMarks, (one) => use(tellDwelling(one)));
    case "required-by-load":
      return useResult(result, "requiredByLoad", requiredMarks, (one) => use(tellRequired(one)));
    case "feeder-tap":
      return useResult(result, "feederTap", tapMarks, (one) => use(tellFeederTap(one)));
    case "transformer-secondary":
      return useResult(result, "transformerSecondary", secondaryMarks, (one) =>
        use(tellTransformerSecondary(one)),
      );
    default:
      return useResult(result, "ampacityOf", ampacityMarks, (one) => use(tellAmpacity(one)));
  }
}

const ampacityMarks: Marks<ConductorAmpacity> = {
  edition: "text",
  amperes: "number",
  limitedBy: "text",
  steps: "list",
  cautions: "list",
  evidence: "text",
};
const countMarks: Marks<CurrentCarrying> = {
  edition: "text",
  count: "number",
  circuits: "list",
  spares: "number",
  citation: "object",
};
const deviceMarks: Marks<DeviceAnswer> = {
  edition: "text",
  ampacity: "number",
  most: "number",
  limitedBy: "text",
  neighbors: "list",
  cautions: "list",
  citation: "object",
  evidence: "text",
};
const dwellingMarks: Marks<DwellingConductor> = {
  edition: "text",
  size: "text",
  by: "text",
  amperes: "number",
  citation: "object",
  evidence: "text",
};
const requiredMarks: Marks<RequiredByLoad> = {
  edition: "text",
  of: "text",
  load: "number",
  conductors: "object",
};
const tapMarks: Marks<FeederTap> = {
  edition: "text",
  rules: "list",
  evidence: "text",
  cautions: "list",
};
const secondaryMarks: Marks<TransformerSecondary> = {
  edition: "text",
  primary: "object",
  secondary: "object",
  rules: "list",
  citations: "list",
  evidence: "text",
  cautions: "list",
};

const cableTrayMarks: Marks<CableTrayResult> = {
  edition: "text",
  amperes: "number",
  metal: "text",
  outcome: "object",
  citation: "object",
  cautions: "list",
};

function has<Key extends string>(
  result: AnyResult,
  key: Key,
): result is Extract<AnyResult, { readonly [K in Key]: unknown }> {
  return typeof result === "object" && result !== null && Object.hasOwn(result, key);
}

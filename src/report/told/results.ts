import { type ShortTimeWithstand, withstandMarks } from "../../engineering/short-time-withstand.js";
import { type Marks, useResult } from "../../input/given-result.js";
import type { CableTrayResult } from "../../roles/equipment-grounding-conductor/cable-tray.js";
import { type SizingResult, sizingResultMarks } from "../../rules/result.js";
import { type DesignationBonding, designationMarks } from "../../systems/designation.js";
import { classificationMarks, type SourceClassification } from "../../systems/system-classification.js";
import { tellCableTray } from "./cable-tray.js";
import { tellSizing } from "./sizing.js";
import { tellDesignation, tellSource } from "./system.js";
import type { Told } from "./told.js";
import { tellWithstand } from "./withstand.js";

/** A result of any function that says what is required, permitted or enough. */
export type AnyResult =
  | SizingResult
  | CableTrayResult
  | ShortTimeWithstand
  | DesignationBonding
  | SourceClassification;

/** Tells a result that the caller hands back; what looks like none of the others is checked as a sized conductor. */
export function useAnyResult<T>(result: AnyResult, use: (told: Told) => T): T {
  if (has(result, "withstands"))
    return useResult(result, "shortTimeWithstand", withstandMarks, (one) => use(tellWithstand(one)));
  if (has(result, "designation"))
    return useResult(result, "bondingAtDesignation", designationMarks, (one) => use(tellDesignation(one)));
  if (has(result, "follows"))
    return useResult(result, "classifySource", classificationMarks, (one) => use(tellSource(one)));
  if (has(result, "metal")) {
    return useResult(result, "cableTrayAsEquipmentGroundingConductor", cableTrayMarks, (one) =>
      use(tellCableTray(one)),
    );
  }
  return useResult(result, "size", sizingResultMarks, (one) => use(tellSizing(one)));
}

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

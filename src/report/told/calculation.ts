import type { SizingResult } from "../../rules/result.js";
import type { Step } from "../../sizing/index.js";
import { writeSupply } from "../../supply/index.js";
import { writtenArea } from "../../units/area.js";
import { capital } from "../words/names.js";
import { assumedPhrase, capWords, outcomeWords, rowLimits } from "./sizing.js";

/** A calculation as it is set on a sheet. */
export interface Calculation {
  /** The quantities that it starts from. */
  readonly given: string;
  /** What is done with them, with sections. */
  readonly rule: string;
  /** What comes out, with units and the section that requires it. */
  readonly result: string;
}

/** How a conductor came about in three lines; nothing where none is required. */
export function calculationOf(result: SizingResult): Calculation {
  const { steps, citation, outcome } = result;
  const at = outcome.kind === "not-required" ? outcome.citation : citation;
  const given = [...new Set(steps.flatMap(givenIn))];
  return {
    given: capital(given.join("; ")),
    rule: steps.flatMap(ruleIn).map(capital).join(". "),
    result: `${capital(outcomeWords(result))}${areaBehind(result)} [${at.section}]`,
  };
}

function areaBehind({ outcome, requiredArea, governs }: SizingResult): string {
  if (outcome.kind !== "conductor") return "";
  return governs === null
    ? ""
    : `, at least ${writtenArea(requiredArea)} = ${writtenArea(requiredArea, "mm2")}`;
}

function givenIn(step: Step): readonly string[] {
  switch (step.kind) {
    case "sum":
      return [
        `${writeSupply(step.supply)} = ${writtenArea(step.area)}${step.rule === "largest" ? ", each set's largest conductor added" : ""}`,
      ];
    case "rating-row":
      return [`overcurrent device of ${step.amperes} A`];
    case "increase":
      return [
        `ungrounded conductors of ${writtenArea(step.installedArea)} in place of ${writtenArea(step.baselineArea)}`,
      ];
    case "shared":
      return [
        `shared by circuits with devices of ${step.circuits.map(({ amperes, requiredArea }) => `${amperes} A (${writtenArea(requiredArea)})`).join(", ")}`,
      ];
    case "load":
      return [
        `load of ${step.amperes} A${step.circuitAmperes === undefined ? "" : ` in a circuit of ${step.circuitAmperes} A`}`,
      ];
    case "named-size":
      return [
        step.from === "code"
          ? "its use alone"
          : `other conductor of ${step.size === null ? "" : `${step.size} = `}${writtenArea(step.requiredArea)}`,
      ];
    default:
      return [];
  }
}

function ruleIn(step: Step): readonly string[] {
  const rule = ruleOf(step);
  return rule === undefined ? [] : [`${rule} [${step.citation.section}]`];
}

function ruleOf(step: Step): string | undefined {
  switch (step.kind) {
    case "sum":
      return undefined;
    case "assumed":
      return `assumed in their place, matched at ${step.temperature} C: ${step.conductors.map(assumedPhrase).join("; ")}; together ${writtenArea(step.area)}`;
    case "row":
      return `${step.entered} row ${rowLimits(step)}: ${step.size} ${step.read} = ${writtenArea(step.requiredArea)}`;
    case "one-eighth":
      return `over ${writtenArea(step.threshold, "kcmil")} ${step.entered}: 12.5 percent x ${writtenArea(step.area)} = ${writtenArea(step.requiredArea)}`;
    case "floor":
      return `not below ${step.size} = ${writtenArea(step.requiredArea)}`;
    case "cap":
      return `not required above ${capWords[step.why]} = ${writtenArea(step.requiredArea)}`;
    case "rating-row":
      return `row of ${step.through} A: ${step.size} ${step.read} = ${writtenArea(step.requiredArea)}`;
    case "increase":
      return `${writtenArea(step.area)} x ${writtenArea(step.installedArea)} / ${writtenArea(step.baselineArea)} = ${writtenArea(step.requiredArea)}`;
    case "shared":
      return `the circuit of ${step.circuits[step.decides]?.amperes} A decides`;
    case "load":
      return `at ${step.temperature} C: ${step.size} = ${writtenArea(step.requiredArea)}`;
    case "named-size":
      return step.from === "other-conductor"
        ? "the same as the other conductor"
        : `the section names ${step.size === null ? "" : `${step.size} = `}${writtenArea(step.requiredArea)}`;
    case "standard-size":
      return step.area === step.requiredArea
        ? undefined
        : `next standard size: ${step.size} = ${writtenArea(step.area)}`;
  }
}

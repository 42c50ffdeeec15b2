import type { Material } from "../conductor/index.js";
import { type Code, type PolicySet, readCode } from "../edition/index.js";
import {
  structuralMetalDerivedPolicies,
  structuralMetalServicePolicies,
} from "../edition/tables/policies.generated.js";
import { structuralMetalGrounded } from "../edition/tables/sections.generated.js";
import { member, optional, type Reader, readAll, readFlag, readObject, readOneOf } from "../input/reader.js";
import type { Supply } from "../supply/index.js";
import { readSupply } from "../supply/read.js";
import { isAlwaysWire } from "./amendment-effects.js";
import { notRequired } from "./finish.js";
import { readConductorMaterial } from "./impedance-grounding-conductor.js";
import { sizeCheckedJumper } from "./jumper.js";
import type { SizingResult } from "./result.js";

/** A bonding jumper to exposed structural metal that is interconnected to form a building frame. */
export interface StructuralMetalInput {
  readonly code: Code;
  /** Whose jumper it is: a service (or the disconnect of a building on a feeder), or a separately derived system. */
  readonly of: "service" | "building" | "separately-derived";
  /** Ungrounded conductors of the service, of the feeder, or of the derived system. */
  readonly supply: Supply;
  readonly jumper: { readonly material: Material };
  /** Whether the frame is itself an electrode of that service, building or system, which then needs no further jumper to it. */
  readonly isElectrode?: boolean;
}

/**
 * Sizes the bonding jumper of structural metal (250.104(C), (D)(2)) by the ungrounded conductors: through 2014 by Table 250.66, whose
 * last row ends it; in 2017 by Table 250.102(C)(1) without such an end; from 2020 not above 3/0 AWG copper or 250 kcmil aluminum.
 *
 * @param input - the code, whose jumper it is, the supply, and the jumper's material
 * @returns the size with every step, or why none is required; areas in circular mils
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { sizeStructuralMetalBondingJumper } from "bondmil";
 * const jumper = sizeStructuralMetalBondingJumper({
 *   code: { year: "2023" },
 *   of: "service",
 *   supply: { sets: [{ count: 4, size: "600 kcmil", material: "copper" }] },
 *   jumper: { material: "copper" },
 * });
 * jumper.outcome; // => { kind: "conductor", size: "3/0 AWG", quantity: 1 }
 * jumper.governs; // => "cap"
 * ```
 */
export function sizeStructuralMetalBondingJumper(input: StructuralMetalInput): SizingResult {
  const { code, of, supply, jumper, isElectrode = false } = readAll(input, readInput);
  const policies = policySets[of];
  if (isElectrode && !isAlwaysWire(code, role)) {
    const { basis } = policies.byEdition[code.year];
    const citation = of === "separately-derived" ? basis.rule : structuralMetalGrounded[code.year];
    return notRequired(role, code, jumper.material, "part-is-the-electrode", citation);
  }
  return sizeCheckedJumper({ role, policies }, { code, supply, jumper });
}

const role = "structural-metal-bonding-jumper";

const policySets: Readonly<Record<StructuralMetalInput["of"], PolicySet>> = {
  service: structuralMetalServicePolicies,
  building: structuralMetalServicePolicies,
  "separately-derived": structuralMetalDerivedPolicies,
};

function readInput(at: Reader): StructuralMetalInput | undefined {
  if (!readObject(at, ["code", "of", "supply", "jumper", "isElectrode"])) return undefined;
  const code = readCode(member(at, "code"));
  const of = readOneOf(member(at, "of"), ["service", "building", "separately-derived"]);
  const supply = readSupply(member(at, "supply"));
  const jumper = readConductorMaterial(member(at, "jumper"));
  const isElectrode = optional(member(at, "isElectrode"), (one) =>
    readFlag(one, "whether the frame is itself the electrode"),
  );
  if (code === undefined || of === undefined || supply === undefined || jumper === undefined)
    return undefined;
  return { code, of, supply, jumper, ...(isElectrode === undefined ? {} : { isElectrode }) };
}

import type { Citation, PolicySet } from "../edition/index.js";
import {
  supplySideBondingJumperDerivedPolicies,
  supplySideBondingJumperDerivedRacewayPolicies,
  supplySideBondingJumperPolicies,
  supplySideBondingJumperRacewayPolicies,
} from "../edition/tables/policies.generated.js";
import {
  derivedSupplySideJumper,
  serviceBoxes,
  serviceRacewayFittings,
  supplySideBoxesByGroundedConductor,
} from "../edition/tables/sections.generated.js";
import { member, optional, type Reader, readAll, readObject, readOneOf, refuse } from "../input/reader.js";
import { isAlwaysWire } from "./amendment-effects.js";
import type { Caution } from "./caution.js";
import { notRequired } from "./finish.js";
import { type JumperRole, sizeCheckedJumper } from "./jumper.js";
import { type JumperInput, jumperKeys, readJumperMembers } from "./jumper-input.js";
import { type Prepared, type PreparedRequest, prepareJumper } from "./prepare.js";
import type { NotRequiredReason, SizingResult } from "./result.js";
import { readSystemKind, type SystemKind } from "./system-kind.js";

const insteads = ["nonflexible-metal-raceway", "grounded-conductor", "bonding-fittings"] as const;
type Instead = (typeof insteads)[number];

/** A supply-side bonding jumper to be sized. */
export interface SupplySideJumperInput extends JumperInput {
  /** A service unless told. In a separately derived system the jumper is capped at the derived ungrounded conductors. */
  readonly system?: SystemKind;
  /**
   * Whether the jumper serves one of several raceways, by the ungrounded conductors in that raceway, or all that there is.
   * All unless told.
   */
  readonly scope?: "raceway" | "all";
  /**
   * What bonds in place of a wire or bus: a nonflexible metal raceway, or, at boxes and raceways of a service, the grounded
   * conductor or fittings that are permitted for it. No jumper is then required.
   */
  readonly instead?: Instead;
}

/**
 * Sizes a supply-side bonding jumper, which bonds metal raceways, wireways, meter and transformer cabinets, gutters and pull
 * boxes ahead of the first overcurrent device, and runs from a separately derived source to its first disconnect
 * (250.102(C), 250.30(A)(2)). The supply is the ungrounded conductors that the jumper serves: those in one raceway for a jumper
 * of that raceway, all of them for one jumper in common or for a box that all of them pass.
 *
 * @param input - the code, the ungrounded conductors that the jumper serves, its material and form, and what it belongs to
 * @returns the size, or the area for a bus, with every step; areas in circular mils
 * @throws {@link InputError} listing everything that is wrong in the input
 *
 * @example
 * ```ts
 * import { sizeSupplySideBondingJumper } from "bondmil";
 * const inOneRaceway = sizeSupplySideBondingJumper({
 *   code: { year: "2017" },
 *   supply: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] },
 *   jumper: { material: "copper" },
 *   scope: "raceway",
 * });
 * inOneRaceway.outcome; // => { kind: "conductor", size: "1/0 AWG", quantity: 1 }
 * ```
 */
export function sizeSupplySideBondingJumper(input: SupplySideJumperInput): SizingResult {
  const read = readAll(input, readInput);
  const { system = "service", scope = "all", instead, ...jumper } = read;
  const { year } = read.code;
  if (!isAlwaysWire(read.code, role)) {
    const none = (
      why: NotRequiredReason,
      citation: Citation,
      cautions: readonly Caution[] = [],
    ): SizingResult => notRequired(role, read.code, read.jumper.material, why, citation, cautions);
    switch (instead) {
      case "grounded-conductor":
        return none("grounded-conductor-serves", supplySideBoxesByGroundedConductor[year]);
      case "bonding-fittings": {
        const citation = serviceRacewayFittings[year];
        return none("bonding-fittings-serve", citation, [
          { code: "impaired-knockouts-need-jumpers", section: citation.section },
        ]);
      }
      case "nonflexible-metal-raceway":
        return none(
          "metal-raceway-serves",
          system === "service" ? serviceBoxes[year] : derivedSupplySideJumper[year],
        );
    }
  }
  return sizeCheckedJumper({ role, policies: policySets[system][scope] }, jumper);
}

/**
 * Prepares the sizing of a supply-side bonding jumper of a service for a loop: the same kernel, area in, required area out,
 * without steps.
 *
 * @param request - the code and the materials
 * @returns a function of areas in circular mils; where the materials differ it also wants the assumed area
 * @throws {@link InputError} listing everything that is wrong in the request
 *
 * @example
 * ```ts
 * import { prepareSupplySideBondingJumper } from "bondmil";
 * const prepared = prepareSupplySideBondingJumper({ code: { year: "2023" }, supply: "copper", jumper: "copper" });
 * prepared.kind === "by-area" && prepared.requiredArea(1800000); // => 225000
 * ```
 */
export function prepareSupplySideBondingJumper(request: PreparedRequest): Prepared {
  return prepareJumper({ role, policies: supplySideBondingJumperPolicies }, request);
}

const role: JumperRole["role"] = "supply-side-bonding-jumper";

const policySets: Readonly<Record<SystemKind, Readonly<Record<"raceway" | "all", PolicySet>>>> = {
  service: { raceway: supplySideBondingJumperRacewayPolicies, all: supplySideBondingJumperPolicies },
  "separately-derived": {
    raceway: supplySideBondingJumperDerivedRacewayPolicies,
    all: supplySideBondingJumperDerivedPolicies,
  },
};

function readInput(at: Reader): SupplySideJumperInput | undefined {
  if (!readObject(at, [...jumperKeys, "system", "scope", "instead"])) return undefined;
  const jumper = readJumperMembers(at);
  const system = optional(member(at, "system"), readSystemKind);
  const scope = optional(member(at, "scope"), (one) => readOneOf(one, ["raceway", "all"]));
  const instead = optional(member(at, "instead"), (one) => readOneOf(one, insteads));
  if (instead !== undefined && instead !== "nonflexible-metal-raceway" && system === "separately-derived") {
    return refuse(
      member(at, "instead"),
      "unknown-value",
      '"nonflexible-metal-raceway"',
      "only at a service may the grounded conductor or fittings bond in place of the jumper",
    );
  }
  return (
    jumper && { ...jumper, ...(system && { system }), ...(scope && { scope }), ...(instead && { instead }) }
  );
}

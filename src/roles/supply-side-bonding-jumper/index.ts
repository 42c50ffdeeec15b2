import type { Citation, PolicySet } from "../../edition/index.js";
import {
  supplySideBondingJumperDerivedPolicies,
  supplySideBondingJumperDerivedRacewayPolicies,
  supplySideBondingJumperDerivedSingleRacewayPolicies,
  supplySideBondingJumperPolicies,
  supplySideBondingJumperRacewayPolicies,
  supplySideBondingJumperSingleRacewayPolicies,
} from "../../edition/tables/policies.generated.js";
import { supplySideBondingJumperFacts } from "../../edition/tables/roles.generated.js";
import {
  derivedSupplySideJumper,
  serviceBoxes,
  serviceRacewayFittings,
  supplySideBoxesByGroundedConductor,
  ungroundedDerivedSupplySide,
} from "../../edition/tables/sections.generated.js";
import { standardSchema } from "../../input/standard-schema.js";
import { isAlwaysWire } from "../../rules/amendment-effects.js";
import { decideBySupply } from "../../rules/by-supply.js";
import type { Caution } from "../../rules/caution.js";
import { finish, notRequired } from "../../rules/finish.js";
import type { NotRequiredReason, NotRequiredResult, SizedResult } from "../../rules/result.js";
import type { SystemKind } from "../../rules/shape.generated.js";
import type { RoleBySupply } from "../definition.js";
import { readInput, type SupplySideBondingJumperInput } from "./input.js";

/** The role. */
type Id = "supply-side-bonding-jumper";

const facts = supplySideBondingJumperFacts;

/**
 * The supply-side bonding jumper, which bonds metal raceways, wireways, meters, current-transformer cabinets, gutters and pull
 * boxes ahead of the first overcurrent device, and runs from a separately derived source to its first disconnect
 * (250.102(C), 250.30(A)(2)). The supply is the ungrounded conductors that the jumper serves: those in one raceway for a jumper
 * of that raceway, all of them for one jumper in common or for a box that all of them pass. Where all sets share one raceway, `scope` says so:
 * from 2023 their corresponding conductors are added, while a jumper in common to several raceways adds each set's largest.
 *
 * @example
 * ```ts
 * import { size, supplySideBondingJumper } from "bondmil";
 * const inOneRaceway = size(supplySideBondingJumper, {
 *   code: { year: "2017" },
 *   supply: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] },
 *   conductor: { material: "copper" },
 *   scope: "raceway",
 * });
 * inOneRaceway.outcome; // => { kind: "conductor", size: "1/0 AWG", quantity: 1 }
 * ```
 */
export const supplySideBondingJumper: RoleBySupply<
  Id,
  SupplySideBondingJumperInput,
  SizedResult<Id> | NotRequiredResult<Id>
> = {
  id: "supply-side-bonding-jumper",
  facts,
  by: "supply",
  policies: supplySideBondingJumperPolicies,
  "~standard": /* @__PURE__ */ standardSchema(readInput),
  read: readInput,
  decide,
  plainest: ({ code, supply, material }) => ({ code, supply, conductor: { material } }),
};

function decide(input: SupplySideBondingJumperInput): SizedResult<Id> | NotRequiredResult<Id> {
  const { code, supply, conductor, temperature } = input;
  const { system = "service", scope = "all", instead, ungrounded = false } = input;
  if (instead !== undefined && !isAlwaysWire(code, facts.role)) return served(input, system, instead);
  const policies = policySets[system][scope];
  const isOther = ungrounded && system === "separately-derived";
  const citation = isOther ? ungroundedDerivedSupplySide[code.year] : null;
  const rule = { facts, policies, citation };
  return finish(code, (under) => decideBySupply(rule, { code: under, supply, conductor, temperature }));
}

/** What bonds in place of the jumper, and where the edition says that it may. */
function served(
  { code, conductor }: SupplySideBondingJumperInput,
  system: SystemKind,
  instead: NonNullable<SupplySideBondingJumperInput["instead"]>,
): NotRequiredResult<Id> {
  const { year } = code;
  const none = (
    why: NotRequiredReason,
    citation: Citation,
    cautions: readonly Caution[] = [],
  ): NotRequiredResult<Id> => notRequired(facts, code, conductor.material, why, citation, cautions);
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

type Scope = NonNullable<SupplySideBondingJumperInput["scope"]>;

const policySets: Readonly<Record<SystemKind, Readonly<Record<Scope, PolicySet>>>> = {
  service: {
    raceway: supplySideBondingJumperRacewayPolicies,
    "single-raceway": supplySideBondingJumperSingleRacewayPolicies,
    all: supplySideBondingJumperPolicies,
  },
  "separately-derived": {
    raceway: supplySideBondingJumperDerivedRacewayPolicies,
    "single-raceway": supplySideBondingJumperDerivedSingleRacewayPolicies,
    all: supplySideBondingJumperDerivedPolicies,
  },
};

import { type EditionYear, type Evidence, type Role, weakestEvidence } from "bondmil";
import type { PolicySet } from "../../../src/edition/policy.js";
import type { RatingPolicy } from "../../../src/edition/rating-policy.js";
import type { ByEdition } from "../../../src/edition/supply-area-table.js";
import { bondingConductor } from "../../../src/edition/tables/bonding-conductor.generated.js";
import { electrodeConductor } from "../../../src/edition/tables/electrode-conductor.generated.js";
import { equipmentGrounding } from "../../../src/edition/tables/equipment-grounding.generated.js";
import * as named from "../../../src/edition/tables/named-sizes.generated.js";
import * as policy from "../../../src/edition/tables/policies.generated.js";
import * as rating from "../../../src/edition/tables/rating-policies.generated.js";
import * as section from "../../../src/edition/tables/sections.generated.js";

/** What a role is sized by: its policies, and rules outside of them. The tables that its policies name follow from these. */
interface Basis {
  readonly policies?: readonly PolicySet[];
  readonly ratingPolicies?: readonly PolicySet<RatingPolicy>[];
  /** Sections that size the conductor otherwise, and sizes that are named outright; not those that excuse from it. */
  readonly rules?: readonly ByEdition<unknown>[];
  /** Whether it also enters the table of equipment grounding conductors. */
  readonly borrowsRatingTable?: true;
}

const bases: Readonly<Record<Role, Basis>> = {
  "main-bonding-jumper": { policies: [policy.mainBondingJumperPolicies] },
  "system-bonding-jumper": { policies: [policy.systemBondingJumperPolicies] },
  "supply-side-bonding-jumper": {
    policies: [
      policy.supplySideBondingJumperPolicies,
      policy.supplySideBondingJumperRacewayPolicies,
      policy.supplySideBondingJumperDerivedPolicies,
      policy.supplySideBondingJumperDerivedRacewayPolicies,
    ],
  },
  "grounded-conductor": {
    policies: [
      policy.groundedConductorPolicies,
      policy.groundedConductorRacewayPolicies,
      policy.groundedConductorDerivedPolicies,
      policy.groundedConductorDerivedRacewayPolicies,
    ],
    rules: [
      section.deltaGroundedConductor,
      section.deltaGroundedConductorDerived,
      section.derivedGroundedConductor,
      section.neutralLoad,
      section.parallelMinimum,
      section.rebondedBuilding,
      section.terminations,
    ],
    borrowsRatingTable: true,
  },
  "impedance-grounding-conductor": { rules: [section.impedanceAmpacity, named.impedanceConductorLeast] },
  "impedance-bonding-jumper": {
    policies: [policy.impedanceBondingJumperPolicies],
    rules: [section.impedanceJumperAtDisconnect],
  },
  "equipment-grounding-conductor": {
    ratingPolicies: [rating.equipmentGroundingConductorPolicies],
    rules: [
      section.equipmentGroundingFeederTap,
      section.equipmentGroundingInstantaneousTrip,
      section.equipmentGroundingMotor,
      section.equipmentGroundingParallel,
      section.traySingleConductor,
    ],
  },
  "equipment-bonding-jumper": { ratingPolicies: [rating.equipmentBondingJumperPolicies] },
  "water-piping-bonding-jumper": {
    policies: [
      policy.waterPipingServicePolicies,
      policy.waterPipingDerivedPolicies,
      policy.waterPipingBuildingPolicies,
    ],
    rules: [section.pipingByDevice, section.buildingPipingByDevice],
    borrowsRatingTable: true,
  },
  "other-piping-bonding-jumper": { rules: [section.otherPiping], borrowsRatingTable: true },
  "structural-metal-bonding-jumper": {
    policies: [policy.structuralMetalServicePolicies, policy.structuralMetalDerivedPolicies],
  },
  "grounding-electrode-conductor": {
    policies: [
      policy.groundingElectrodeConductorServicePolicies,
      policy.groundingElectrodeConductorDerivedPolicies,
      policy.groundingElectrodeConductorBuildingPolicies,
      policy.groundingElectrodeConductorCommonPolicies,
      policy.groundingElectrodeConductorCommonFromDropPolicies,
    ],
    rules: [
      named.rodElectrodeCeiling,
      named.concreteElectrodeCeiling,
      named.ringElectrodeLeast,
      named.commonConductorOfDerivedSystems,
      section.ringElectrodeCeiling,
    ],
  },
  "electrode-bonding-jumper": {
    policies: [policy.electrodeBondingJumperPolicies],
    rules: [
      named.rodElectrodeCeiling,
      named.concreteElectrodeCeiling,
      named.supplementalRodCeiling,
      section.ringElectrodeCeiling,
    ],
  },
  "electrode-raceway-bonding-jumper": { rules: [section.electrodeRaceway] },
  "intersystem-bonding-conductor": {
    rules: [named.intersystemLeast, section.intersystemTermination, section.intersystemBusbar],
  },
};

/** Names of the sets of policies, sections and sizes in the files of the tables by which a role is sized. */
export function namesBehind(role: Role): ReadonlySet<string> {
  const { policies = [], ratingPolicies = [], rules = [] } = bases[role];
  const used = new Set<unknown>([...policies, ...ratingPolicies, ...rules]);
  const all = Object.entries({ ...policy, ...rating, ...section, ...named });
  return new Set(all.filter(([, value]) => used.has(value)).map(([name]) => nameInTables(name)));
}

/** `waterPipingServicePolicies` of a generated module is `water-piping-service` in the tables. */
function nameInTables(name: string): string {
  return name.replace(/Policies$/, "").replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}

/** Weakest evidence of the wording that a role rests on in an edition. */
export function evidenceOfRules(role: Role, year: EditionYear): Evidence {
  const { policies = [], ratingPolicies = [], rules = [] } = bases[role];
  const rows = [...policies, ...ratingPolicies].map(({ byEdition }) => byEdition[year]);
  return weakestEvidence([...rows, ...rules.map((rule) => rule[year])].flatMap(evidenceIn));
}

/** Weakest evidence of the tables that a role enters in an edition, single cells included; `null` where it enters none. */
export function evidenceOfTables(role: Role, year: EditionYear): Evidence | null {
  const { policies = [], ratingPolicies = [], borrowsRatingTable = false } = bases[role];
  const ofSupplies = policies.flatMap(({ byEdition }) => {
    const { table, basis } = byEdition[year];
    const cells = (table === "bonding-conductor" ? bondingConductor : electrodeConductor)[year]?.cells ?? {};
    return [basis.row.evidence, ...Object.values(cells)];
  });
  const ratings = equipmentGrounding[year];
  const entersRatings = ratingPolicies.length > 0 || borrowsRatingTable;
  const ofRatings = entersRatings ? [ratings.evidence, ...Object.values(ratings.cells)] : [];
  const all = [...ofSupplies, ...ofRatings];
  return all.length === 0 ? null : weakestEvidence(all);
}

/** Weakest evidence of rules and tables together. */
export function weakestOf(role: Role, year: EditionYear): Evidence {
  const table = evidenceOfTables(role, year);
  return weakestEvidence([evidenceOfRules(role, year), ...(table === null ? [] : [table])]);
}

/** Every evidence in a value, however deep. */
function evidenceIn(value: unknown): readonly Evidence[] {
  if (typeof value !== "object" || value === null) return [];
  const own = "evidence" in value ? [value.evidence as Evidence] : [];
  return [...own, ...Object.values(value).flatMap(evidenceIn)];
}

import type { Citation, Code, Role } from "../edition/index.js";
import {
  bondingJumperCovering,
  conductorsInsulated,
  electrodeConductorCovering,
  equipmentGroundingCovering,
  impedanceAmpacity,
  mainJumperCovering,
  serviceGroundedCovering,
} from "../edition/tables/sections.generated.js";

/** Whether a conductor is to be insulated or may be bare. Plain JSON. */
export interface Covering {
  /** Insulated; insulated but for stated cases in which it may be bare; or bare permitted. */
  readonly kind: "insulated" | "bare-in-stated-cases" | "bare-permitted";
  /** Where the edition says so. */
  readonly citation: Citation;
}

type ByYear = typeof conductorsInsulated;

const coverings: Readonly<Record<Role, readonly [Covering["kind"], ByYear] | null>> = {
  "main-bonding-jumper": ["bare-permitted", mainJumperCovering],
  "system-bonding-jumper": ["bare-permitted", mainJumperCovering],
  "supply-side-bonding-jumper": ["bare-permitted", bondingJumperCovering],
  "grounded-conductor": ["insulated", conductorsInsulated],
  "impedance-grounding-conductor": ["insulated", impedanceAmpacity],
  "impedance-bonding-jumper": ["bare-permitted", bondingJumperCovering],
  "equipment-grounding-conductor": ["bare-permitted", equipmentGroundingCovering],
  "equipment-bonding-jumper": ["bare-permitted", bondingJumperCovering],
  "water-piping-bonding-jumper": ["bare-permitted", bondingJumperCovering],
  "other-piping-bonding-jumper": ["bare-permitted", bondingJumperCovering],
  "structural-metal-bonding-jumper": ["bare-permitted", bondingJumperCovering],
  "grounding-electrode-conductor": ["bare-permitted", electrodeConductorCovering],
  "electrode-bonding-jumper": ["bare-permitted", electrodeConductorCovering],
  "electrode-raceway-bonding-jumper": ["bare-permitted", bondingJumperCovering],
  "intersystem-bonding-conductor": null,
};

/** Whether a conductor of a role is to be insulated; `null` where the library knows no sentence. The grounded conductor of a service has cases of its own. */
export function coveringOf(role: Role, { year }: Pick<Code, "year">, isService: boolean): Covering | null {
  if (role === "grounded-conductor" && isService)
    return { kind: "bare-in-stated-cases", citation: serviceGroundedCovering[year] };
  const known = coverings[role];
  return known && { kind: known[0], citation: known[1][year] };
}

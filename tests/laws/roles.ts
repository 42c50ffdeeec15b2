import {
  type JumperInput,
  type Prepared,
  type PreparedRequest,
  prepareMainBondingJumper,
  prepareSupplySideBondingJumper,
  prepareSystemBondingJumper,
  type Role,
  type SizingResult,
  sizeMainBondingJumper,
  sizeSupplySideBondingJumper,
  sizeSystemBondingJumper,
} from "bondmil";

/** The roles that are sized from a supply and a jumper's material alone; they share the laws of this folder. */
export type JumperRole = Extract<
  Role,
  "main-bonding-jumper" | "system-bonding-jumper" | "supply-side-bonding-jumper"
>;

/** A role's two ways to a required area. */
export interface RoleUnderLaw {
  readonly size: (input: JumperInput) => SizingResult;
  readonly prepare: (request: PreparedRequest) => Prepared;
}

export const underLaw: Readonly<Record<JumperRole, RoleUnderLaw>> = {
  "main-bonding-jumper": { size: sizeMainBondingJumper, prepare: prepareMainBondingJumper },
  "system-bonding-jumper": { size: sizeSystemBondingJumper, prepare: prepareSystemBondingJumper },
  "supply-side-bonding-jumper": {
    size: sizeSupplySideBondingJumper,
    prepare: prepareSupplySideBondingJumper,
  },
};

export const jumperRoles: readonly JumperRole[] = Object.keys(underLaw) as JumperRole[];

/** Roles with another input have laws of their own: the role and the file of this folder that runs them. */
export const lawsElsewhere: Readonly<Partial<Record<Role, string>>> = {
  "grounded-conductor": "grounded-conductors.test.ts",
  "impedance-grounding-conductor": "impedance-grounding.test.ts",
  "impedance-bonding-jumper": "impedance-grounding.test.ts",
  "equipment-grounding-conductor": "equipment-grounding.test.ts",
  "equipment-bonding-jumper": "equipment-grounding.test.ts",
  "water-piping-bonding-jumper": "metal-parts.test.ts",
  "other-piping-bonding-jumper": "metal-parts.test.ts",
  "structural-metal-bonding-jumper": "metal-parts.test.ts",
  "grounding-electrode-conductor": "electrode-conductors.test.ts",
  "electrode-bonding-jumper": "electrode-conductors.test.ts",
  "electrode-raceway-bonding-jumper": "electrode-conductors.test.ts",
  "intersystem-bonding-conductor": "electrode-conductors.test.ts",
};

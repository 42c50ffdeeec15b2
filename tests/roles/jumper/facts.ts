import {
  type CautionCode,
  type EditionYear,
  type Evidence,
  editionYears,
  type Input,
  type mainBondingJumper,
  type Role,
  type RoleBySupply,
  type SizingResult,
} from "bondmil";

/** One answer per edition. */
type Years<T> = Readonly<Record<EditionYear, T>>;

/** What a role's own page of the code says, written out by hand. */
export interface JumperFacts {
  readonly role: Role;
  readonly name: Years<string>;
  /** Rule that sends the role to its table. */
  readonly rule: Years<string>;
  readonly oneEighth: Years<string>;
  readonly otherMaterial: Years<string>;
  readonly sum: Years<string>;
  readonly material: string;
  /** First edition that names aluminum among the materials of this jumper. */
  readonly namesAluminumFrom: EditionYear;
  /** Editions that replace conductors of another material below the threshold too. */
  readonly replacedAtAnySize: readonly EditionYear[];
  /** Editions in which it is open whether they are replaced through the threshold too, so that the larger result counts. */
  readonly openThreshold?: readonly EditionYear[];
  readonly mayComeWithEquipment: boolean;
}

/** A role that is sized as the main bonding jumper is. */
export type JumperRole = RoleBySupply<Role, Input<typeof mainBondingJumper>, SizingResult>;

/** Sizes such a role. */
export type Sizer = (input: Input<typeof mainBondingJumper>) => SizingResult;

/** Editions whose last row stays as a floor beside the 12.5 percent. */
export const withFloor: readonly EditionYear[] = ["2008", "2011"];
/** Editions in whose text no cap was read. */
export const withoutCap: readonly EditionYear[] = ["2008", "2011", "2014"];
export const withCap: readonly EditionYear[] = ["2017", "2020", "2023", "2026"];
/** Editions whose notes name conductors in parallel only. */
export const parallelNotes: readonly EditionYear[] = ["2023", "2026"];

/** Weakest link of a wire of one material: rule, row and the table of sizes. */
export const evidence: Years<Evidence> = {
  "2008": "carried",
  "2011": "single",
  "2014": "carried",
  "2017": "single",
  "2020": "bracketed",
  "2023": "bracketed",
  "2026": "carried",
};

/** Cautions that the role carries whatever its supply is. */
export function ownCautions({ mayComeWithEquipment }: JumperFacts): readonly CautionCode[] {
  return mayComeWithEquipment ? ["listed-equipment"] : [];
}

/** The caution on an aluminum jumper, where the edition does not name the material. */
export function unnamedCautions(facts: JumperFacts, year: EditionYear): readonly CautionCode[] {
  return year < facts.namesAluminumFrom ? ["material-not-named"] : [];
}

/** The same answer for every edition. */
export function inEveryEdition<T>(value: T): Years<T> {
  return Object.fromEntries(editionYears.map((year) => [year, value])) as Record<EditionYear, T>;
}

import { type EditionYear, editionYears } from "../../../src/edition/edition-year.js";
import type { Evidence } from "../../../src/edition/evidence.js";
import { inForce } from "./in-force.js";
import type {
  Cited,
  EvidenceByPart,
  EvidenceFile,
  FromEdition,
  Limit,
  NamedSizesFile,
  PlacementsFile,
  PoliciesFile,
  RolesFile,
  SectionEvidenceFile,
  SectionsFile,
} from "./model.js";

export type ByEdition<T> = Readonly<Record<EditionYear, T>>;

/** How a set of policies stands in one edition: fields, the place and level of each part, and from where. */
export interface Policy {
  readonly fields: Readonly<Record<string, unknown>>;
  /** By part. A field that is a size with a place of its own is a part too. */
  readonly basis: Readonly<Record<string, Cited>>;
  readonly limits: Readonly<Record<string, Cited>>;
  readonly sources: readonly string[];
}

/** Sets of policies by name. */
export type Policies = Readonly<Record<string, ByEdition<Policy>>>;

/** Where each topic stands. */
export type Sections = Readonly<
  Record<string, { readonly says: string; readonly sections: ByEdition<Cited> }>
>;

/** Sizes that sections name outright. */
export type NamedSizes = Readonly<
  Record<
    string,
    {
      readonly says: string;
      readonly values: ByEdition<{
        readonly copper: string;
        readonly aluminum: string | null;
        readonly citation: Cited;
      }>;
    }
  >
>;

/** Facts of placement. */
export type Placements = Readonly<
  Record<
    string,
    { readonly says: string; readonly topic: string; readonly values: ByEdition<boolean | string> }
  >
>;

/** Purposes and names of the roles. */
export type Roles = Readonly<Record<string, { readonly purpose: string; readonly name: ByEdition<string> }>>;

/** Sets of policies with their evidence, under each edition. */
export function policiesByEdition(file: PoliciesFile, { evidence }: EvidenceFile<EvidenceByPart>): Policies {
  return mapped(file.policies, (entries, set) =>
    eachEdition((year) => {
      const { from, sections = {}, ...fields } = heldIn(entries, year, set);
      const known = evidence[set]?.[year] ?? missing(set, year);
      const cited = (part: string, section: string): Cited => [section, known.parts?.[part] ?? known.level];
      const limits = Object.entries(fields).flatMap(([field, value]) =>
        isLimit(value) ? [[field, cited(field, value.section)] as const] : [],
      );
      return {
        fields,
        basis: mapped(sections, (section, part) => cited(part, section)),
        limits: Object.fromEntries(limits),
        sources: known.sources,
      };
    }),
  );
}

/** Sections with their evidence, under each edition. */
export function sectionsByEdition(file: SectionsFile, { evidence }: SectionEvidenceFile): Sections {
  return mapped(file.topics, ({ says, sections }, topic) => ({
    says,
    sections: eachEdition(
      (year): Cited => [
        heldIn(sections, year, topic).section,
        evidence[topic]?.[year] ?? missing(topic, year),
      ],
    ),
  }));
}

/** Named sizes with their evidence, under each edition. */
export function namedSizesByEdition(file: NamedSizesFile, { evidence }: EvidenceFile<Evidence>): NamedSizes {
  return mapped(file.sizes, ({ says, values }, name) => ({
    says,
    values: eachEdition((year) => {
      const { copper, aluminum, section } = heldIn(values, year, name);
      if (copper === undefined || aluminum === undefined || section === undefined) return missing(name, year);
      return {
        copper,
        aluminum,
        citation: [section, evidence[name]?.[year] ?? missing(name, year)] as const,
      };
    }),
  }));
}

/** Facts of placement under each edition. */
export function placementsByEdition(file: PlacementsFile): Placements {
  return mapped(file.facts, ({ says, topic, values }, fact) => ({
    says,
    topic,
    values: eachEdition((year) => heldIn(values, year, fact).value),
  }));
}

/** Names under each edition. */
export function rolesByEdition(file: RolesFile): Roles {
  return mapped(file.roles, ({ purpose, names }, role) => ({
    purpose,
    name: eachEdition((year) => heldIn(names, year, role).name),
  }));
}

/** Whether a field of a policy is a size with a place of its own. */
export function isLimit(value: unknown): value is Limit {
  return typeof value === "object" && value !== null && "section" in value;
}

function heldIn<E extends FromEdition>(entries: readonly E[], year: EditionYear, name: string): E {
  return inForce(entries, year) ?? missing(name, year);
}

function missing(name: string, year: EditionYear): never {
  throw new Error(`${name}: no answer for ${year}`);
}

function eachEdition<T>(make: (year: EditionYear) => T): ByEdition<T> {
  return Object.fromEntries(editionYears.map((year) => [year, make(year)])) as Record<EditionYear, T>;
}

function mapped<T, U>(
  record: Readonly<Record<string, T>>,
  make: (value: T, key: string) => U,
): Readonly<Record<string, U>> {
  return Object.fromEntries(Object.entries(record).map(([key, value]) => [key, make(value, key)]));
}

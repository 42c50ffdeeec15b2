import { type EditionYear, editionYears } from "../../../src/edition/edition-year.js";
import { weakestEvidence } from "../../../src/edition/evidence.js";
import type { Levels } from "./extracts.js";
import { inForce } from "./in-force.js";
import type { Known } from "./ladder.js";
import { isLimit } from "./limit.js";
import type {
  Cited,
  FromEdition,
  NamedSizesFile,
  PlacementsFile,
  PoliciesFile,
  RolesFile,
  SectionsFile,
  TableFile,
} from "./model.js";

export type ByEdition<T> = Readonly<Record<EditionYear, T>>;

/** How a set of policies stands in one edition: fields, the place and level of each part, and from where. */
export interface Policy {
  readonly fields: Readonly<Record<string, unknown>>;
  /** By part. A field that is a size with a place of its own is a part too. */
  readonly basis: Readonly<Record<string, Cited>>;
  readonly limits: Readonly<Record<string, Cited>>;
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
    {
      readonly says: string;
      readonly topic: string;
      readonly values: ByEdition<boolean | string>;
      readonly citations: ByEdition<Cited>;
    }
  >
>;

/** Purposes and names of the roles. */
export type Roles = Readonly<Record<string, { readonly purpose: string; readonly name: ByEdition<string> }>>;

/** Sets of policies under each edition, with the level of each part; their rows are as sure as the table. */
export function policiesByEdition(
  name: "policies" | "rating-policies",
  { policies }: PoliciesFile,
  levels: Levels,
  tables: readonly TableFile[],
): Policies {
  return mapped(policies, (entries, set) =>
    eachEdition((year) => {
      const { from, sections = {}, ...fields } = heldIn(entries, year, set);
      const cited = (part: string, section: string): Cited => {
        const own = part === "row" ? ofTable(tables, fields["table"], year) : levels(name, [set, part], year);
        return [section, own.level, own.sources];
      };
      const limits = Object.entries(fields).flatMap(([field, value]) =>
        isLimit(value) ? [[field, cited(field, value.section)] as const] : [],
      );
      return {
        fields,
        basis: mapped(sections, (section, part) => cited(part, section)),
        limits: Object.fromEntries(limits),
      };
    }),
  );
}

/** Sections under each edition; a topic that is a table is as sure as it, and none is surer than the facts that rest on it. */
export function sectionsByEdition(
  { topics }: SectionsFile,
  { facts }: PlacementsFile,
  levels: Levels,
  tables: readonly TableFile[],
): Sections {
  return mapped(topics, ({ says, sections, table }, topic) => {
    const resting = Object.keys(facts).filter((fact) => facts[fact]?.topic === topic);
    return {
      says,
      sections: eachEdition((year): Cited => {
        const own = table === undefined ? levels("sections", [topic], year) : ofTable(tables, table, year);
        const all = [own, ...resting.map((fact) => levels("placements", [fact], year))];
        const level = weakestEvidence(all.map((one) => one.level));
        return [
          heldIn(sections, year, topic).section,
          level,
          all.find((one) => one.level === level)?.sources ?? [],
        ];
      }),
    };
  });
}

/** Named sizes with their evidence, under each edition. */
export function namedSizesByEdition({ sizes }: NamedSizesFile, levels: Levels): NamedSizes {
  return mapped(sizes, ({ says, values }, name) => ({
    says,
    values: eachEdition((year) => {
      const { copper, aluminum, section } = heldIn(values, year, name);
      if (copper === undefined || aluminum === undefined || section === undefined) return missing(name, year);
      const { level, sources } = levels("named-sizes", [name], year);
      return { copper, aluminum, citation: [section, level, sources] as const };
    }),
  }));
}

/** Facts of placement under each edition, and where they stand. */
export function placementsByEdition(
  { facts }: PlacementsFile,
  { topics }: SectionsFile,
  levels: Levels,
): Placements {
  return mapped(facts, ({ says, topic, values }, fact) => ({
    says,
    topic,
    values: eachEdition((year) => heldIn(values, year, fact).value),
    citations: eachEdition((year): Cited => {
      const { level, sources } = levels("placements", [fact], year);
      return [heldIn(topics[topic]?.sections ?? [], year, topic).section, level, sources];
    }),
  }));
}

/** Names under each edition. */
export function rolesByEdition(file: RolesFile): Roles {
  return mapped(file.roles, ({ purpose, names }, role) => ({
    purpose,
    name: eachEdition((year) => heldIn(names, year, role).name),
  }));
}

function ofTable(tables: readonly TableFile[], id: unknown, year: EditionYear): Known {
  return tables.find((table) => table.id === id)?.evidence[year] ?? { level: "memory", sources: [] };
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

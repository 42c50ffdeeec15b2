import { type EditionYear, editionYears } from "../../../src/edition/edition-year.js";
import { inForce } from "./in-force.js";
import { isLimit } from "./limit.js";
import type { Cell, NamedSizesFile, PlacementsFile, PoliciesFile, SectionsFile } from "./model.js";
import { basisPartOf } from "./policy-basis.js";
import type { WithstandFile } from "./withstand-file.js";

/** What one of our files says under one edition: where it stands, and what it is. */
export interface Said {
  readonly at: string;
  readonly is?: Value;
}

/** A value, or several by name. */
export type Value = Cell | Readonly<Record<string, unknown>>;

/** Something that an edition says, under every edition in which it has a say. */
export interface Statement {
  readonly file: StatingFile;
  /** Its path in an extract, below the name of the file. */
  readonly path: readonly string[];
  readonly said: Readonly<Partial<Record<EditionYear, Said>>>;
}

/** The files of which every statement is held against extracts, as extracts name them. */
export const statingFiles = [
  "policies",
  "rating-policies",
  "sections",
  "placements",
  "named-sizes",
  "short-time-withstand",
] as const;

/** One of {@link statingFiles}. */
export type StatingFile = (typeof statingFiles)[number];

/** What they hold. */
export interface StatingFiles {
  readonly policies: PoliciesFile;
  readonly "rating-policies": PoliciesFile;
  readonly sections: SectionsFile;
  readonly placements: PlacementsFile;
  readonly "named-sizes": NamedSizesFile;
  readonly "short-time-withstand": WithstandFile;
}

/** Every statement of the files. The rows of a policy, and topics that name a table, are as sure as the table and no statements. */
export function statementsOf(files: StatingFiles): readonly Statement[] {
  return [
    ...ofPolicies("policies", files.policies),
    ...ofPolicies("rating-policies", files["rating-policies"]),
    ...ofSections(files.sections),
    ...ofPlacements(files.placements, files.sections),
    ...ofNamedSizes(files["named-sizes"]),
    ...ofWithstand(files["short-time-withstand"]),
  ];
}

function ofPolicies(file: "policies" | "rating-policies", { policies }: PoliciesFile): readonly Statement[] {
  return Object.entries(policies).flatMap(([set, entries]) => {
    const byYear = editionYears.map((year) => [year, partsOf(inForce(entries, year))] as const);
    const parts = new Set(byYear.flatMap(([, own]) => Object.keys(own)));
    return [...parts].map((part): Statement => {
      const said = byYear.flatMap(([year, own]) => (own[part] === undefined ? [] : [[year, own[part]]]));
      return { file, path: [set, part], said: Object.fromEntries(said) };
    });
  });
}

/** The parts of a policy: each with the fields that it decides, and the sizes that a section names. */
function partsOf(
  policy: PoliciesFile["policies"][string][number] | undefined,
): Readonly<Record<string, Said>> {
  const { from, sections = {}, ...fields } = policy ?? { from: undefined };
  const limits = Object.entries(fields).flatMap(([field, limit]): readonly [string, Said][] => {
    if (!isLimit(limit)) return [];
    const { section, ...sizes } = limit;
    return [[field, { at: section, is: sizes }]];
  });
  const parts = Object.entries(sections)
    .filter(([part]) => part !== "row")
    .map(([part, at]): readonly [string, Said] => {
      const own = Object.entries(fields).filter(([field]) => basisPartOf(field) === part && part !== "rule");
      return [part, own.length === 0 ? { at } : { at, is: Object.fromEntries(own) }];
    });
  return Object.fromEntries([...parts, ...limits]);
}

function ofSections({ topics }: SectionsFile): readonly Statement[] {
  return Object.entries(topics)
    .filter(([, { table }]) => table === undefined)
    .map(([topic, { sections }]) => ({
      file: "sections",
      path: [topic],
      said: eachYear((year) => placeIn(sections, year)),
    }));
}

function ofPlacements({ facts }: PlacementsFile, { topics }: SectionsFile): readonly Statement[] {
  return Object.entries(facts).map(([fact, { topic, values }]) => ({
    file: "placements",
    path: [fact],
    said: eachYear((year) => {
      const place = placeIn(topics[topic]?.sections ?? [], year);
      const value = inForce(values, year)?.value;
      return place === undefined || value === undefined ? undefined : { ...place, is: value };
    }),
  }));
}

function ofNamedSizes({ sizes }: NamedSizesFile): readonly Statement[] {
  return Object.entries(sizes).map(([name, { values }]) => ({
    file: "named-sizes",
    path: [name],
    said: eachYear((year) => {
      const { copper, aluminum, section } = inForce(values, year) ?? {};
      return section === undefined ? undefined : { at: section, is: { copper, aluminum } };
    }),
  }));
}

function ofWithstand({ basis, metals, crossCheck }: WithstandFile): readonly Statement[] {
  const constants = Object.entries(metals).map(([metal, { factor, offset }]) => [metal, { factor, offset }]);
  const { circularMilsPerAmpere, seconds, final } = crossCheck;
  const parts: readonly (readonly [string, Said])[] = [
    ["formula", { at: basis.formula, is: Object.fromEntries(constants) }],
    ["cross-check", { at: "rule of thumb", is: { circularMilsPerAmpere, seconds, final } }],
  ];
  return parts.map(([part, said]) => ({
    file: "short-time-withstand",
    path: [part],
    said: Object.fromEntries(basis.editions.map((year) => [year, said])),
  }));
}

function placeIn(sections: SectionsFile["topics"][string]["sections"], year: EditionYear): Said | undefined {
  const held = inForce(sections, year);
  return held === undefined ? undefined : { at: held.section };
}

function eachYear(make: (year: EditionYear) => Said | undefined): Statement["said"] {
  const said = editionYears.flatMap((year) => {
    const own = make(year);
    return own === undefined ? [] : [[year, own] as const];
  });
  return Object.fromEntries(said);
}

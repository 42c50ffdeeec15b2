import { editionYears } from "../../../src/edition/edition-year.js";
import type { ByEdition, Policies } from "./by-edition.js";
import type { Collected } from "./collected.js";
import type { Known } from "./ladder.js";
import type { Cited, EvidenceByPart, EvidenceFile } from "./model.js";

/** The files of `evidence/`: what was computed of each statement, by name of the file. */
export function evidenceFiles(from: Collected): ReadonlyMap<string, string> {
  const files: readonly (readonly [
    string,
    EvidenceFile["evidence"] | EvidenceFile<EvidenceByPart>["evidence"],
  ])[] = [
    ["policies", ofPolicies(from.policies)],
    ["rating-policies", ofPolicies(from.ratingPolicies)],
    ["sections", ofEach(from.sections, ({ sections }, year) => sections[year])],
    ["placements", ofEach(from.placements, ({ citations }, year) => citations[year])],
    ["named-sizes", ofEach(from.namedSizes, ({ values }, year) => values[year].citation)],
  ];
  return new Map(
    files.map(([name, evidence]) => [
      `${name}.json`,
      JSON.stringify({ $schema: "../schema/evidence.schema.json", evidence }),
    ]),
  );
}

function ofPolicies(policies: Policies): EvidenceFile<EvidenceByPart>["evidence"] {
  return mapped(policies, (byYear) =>
    eachEdition((year) => mapped({ ...byYear[year].basis, ...byYear[year].limits }, knownOf)),
  );
}

function ofEach<T>(
  named: Readonly<Record<string, T>>,
  cited: (one: T, year: (typeof editionYears)[number]) => Cited,
): EvidenceFile["evidence"] {
  return mapped(named, (one) => eachEdition((year) => knownOf(cited(one, year))));
}

function knownOf([, level, sources]: Cited): Known {
  return { level, sources };
}

function mapped<T, U>(
  record: Readonly<Record<string, T>>,
  make: (value: T) => U,
): Readonly<Record<string, U>> {
  return Object.fromEntries(Object.entries(record).map(([key, value]) => [key, make(value)]));
}

function eachEdition<T>(make: (year: (typeof editionYears)[number]) => T): ByEdition<T> {
  return Object.fromEntries(editionYears.map((year) => [year, make(year)])) as unknown as ByEdition<T>;
}

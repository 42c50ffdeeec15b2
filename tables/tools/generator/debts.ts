import { type EditionYear, editionYears } from "../../../src/edition/edition-year.js";
import { type Evidence, evidenceLevels, weakestEvidence } from "../../../src/edition/evidence.js";
import type { Policies } from "./by-edition.js";
import { cellsOf, levelOfCell } from "./cells.js";
import type { Unsettled } from "./channels.js";
import type { Collected } from "./collected.js";
import type { Cited, ReadingEntry, TableFile } from "./model.js";
import { basisPartOf } from "./policy-basis.js";

/** What kind of thing is not confirmed, in the order of the list. */
export const debtKinds = [
  "table",
  "cell",
  "policy",
  "named size",
  "section",
  "placement",
  "reading",
  "constant",
] as const;

/** Something that is not confirmed. */
export interface Debt extends Unsettled {
  readonly kind: (typeof debtKinds)[number];
  readonly what: string;
  /** How many values it is. */
  readonly values: number;
}

/** Levels below `confirmed`. */
export type OwedLevel = Exclude<Evidence, "confirmed">;

/** Levels below `confirmed`, weakest first. */
export const owedLevels = evidenceLevels.filter((level): level is OwedLevel => level !== "confirmed");

/** `debts.json`. */
export interface DebtsFile {
  readonly allowed: Readonly<Record<OwedLevel, number>>;
}

/** Everything that is not confirmed, by edition and kind. */
export function collectDebts(from: Collected): readonly Debt[] {
  const all = editionYears.flatMap((year) => [
    ...from.tables.flatMap((table) => debtsOfTable(table, year)),
    ...debtsOfPolicies(from.policies, year),
    ...debtsOfPolicies(from.ratingPolicies, year),
    ...debtsOfNamedSizes(from, year),
    ...debtsOfSections(from, year),
    ...debtsOfPlacements(from, year),
    ...from.readings.readings.flatMap((reading) => debtsOfReading(reading, from, year)),
    ...debtsOfConstants(from, year),
  ]);
  return all.filter(({ level }) => level !== "confirmed");
}

/** How many values stand at each level below `confirmed`. */
export function countByLevel(debts: readonly Debt[]): Readonly<Record<OwedLevel, number>> {
  const count = (level: OwedLevel): number =>
    debts.filter((debt) => debt.level === level).reduce((sum, { values }) => sum + values, 0);
  return {
    memory: count("memory"),
    carried: count("carried"),
    bracketed: count("bracketed"),
    single: count("single"),
  };
}

/** Faults of the list against what is allowed: neither more, nor less without saying so. */
export function checkDebts(debts: readonly Debt[], { allowed }: DebtsFile): string[] {
  const counted = countByLevel(debts);
  return owedLevels.flatMap((level) => {
    const [is, may] = [counted[level], allowed[level]];
    if (is > may)
      return [
        `${is} values are ${level}, ${may} are allowed: settle some, or raise "${level}" in tables/debts.json to ${is} knowingly`,
      ];
    return is < may
      ? [`only ${is} values are ${level}: lower "${level}" in tables/debts.json from ${may} to ${is}`]
      : [];
  });
}

function debtsOfTable(table: TableFile, year: EditionYear): readonly Debt[] {
  const number = table.number[year];
  const evidence = table.evidence[year];
  if (number == null || evidence === undefined) return [];
  const cells = cellsOf(table, year);
  const own = (table.cells ?? []).filter(({ edition }) => edition === year);
  const rest = cells.filter(
    (cell) => !own.some(({ row, column }) => row === cell.row && column === cell.column),
  );
  const whole: Debt = {
    kind: "table",
    edition: year,
    what: `${table.id}, ${rest.length} of ${cells.length} cells`,
    section: number,
    level: evidence.level,
    sources: evidence.sources,
    values: rest.length,
  };
  const single = own.map(
    ({ row, column, sources }): Debt => ({
      kind: "cell",
      edition: year,
      what: `${table.id}, row ${row}, column ${column}`,
      section: number,
      level: levelOfCell(table, year, { row, column }),
      sources: sources ?? evidence.sources,
      values: 1,
    }),
  );
  return rest.length === 0 ? single : [whole, ...single];
}

function debtsOfPolicies(policies: Policies, year: EditionYear): readonly Debt[] {
  return Object.entries(policies).flatMap(([set, byYear]) => {
    const { basis, limits } = byYear[year];
    return [...Object.entries(basis), ...Object.entries(limits)].map(
      ([part, cited]): Debt => ({
        ...ofCited(year, cited),
        kind: "policy",
        what: `${set}, ${part}`,
      }),
    );
  });
}

function debtsOfNamedSizes({ namedSizes }: Collected, year: EditionYear): readonly Debt[] {
  return Object.entries(namedSizes).map(
    ([name, { values }]): Debt => ({
      ...ofCited(year, values[year].citation),
      kind: "named size",
      what: name,
    }),
  );
}

function debtsOfSections({ sections }: Collected, year: EditionYear): readonly Debt[] {
  return Object.entries(sections).map(
    ([topic, found]): Debt => ({
      ...ofCited(year, found.sections[year]),
      kind: "section",
      what: topic,
    }),
  );
}

function debtsOfPlacements({ placements }: Collected, year: EditionYear): readonly Debt[] {
  return Object.entries(placements).map(
    ([fact, { citations }]): Debt => ({ ...ofCited(year, citations[year]), kind: "placement", what: fact }),
  );
}

/** A reading stays open however often the text is read; what can be settled is the wording that its default rests on. */
function debtsOfReading(reading: ReadingEntry, from: Collected, year: EditionYear): readonly Debt[] {
  if (!reading.editions.includes(year)) return [];
  const pairs = [...wordingInPolicies(reading, from, year), ...wordingInSections(reading, from, year)];
  const level = pairs.length === 0 ? "memory" : weakestEvidence(pairs.map(([, evidence]) => evidence));
  const sources = pairs.filter(([, evidence]) => evidence === level).flatMap(([, , own]) => own);
  return [
    {
      kind: "reading",
      edition: year,
      what: `${reading.id}, default ${reading.default}`,
      section: reading.sections.join(", "),
      level,
      sources: [...new Set(sources)],
      values: 1,
    },
  ];
}

function wordingInPolicies(
  { policies, alternatives }: ReadingEntry,
  from: Collected,
  year: EditionYear,
): readonly Cited[] {
  const fields = new Set(alternatives.flatMap(({ policy }) => Object.keys(policy ?? {})));
  const parts = fields.size === 0 ? ["rule"] : [...fields].map(basisPartOf);
  const all = { ...from.policies, ...from.ratingPolicies };
  return policies.flatMap((set) => {
    const basis = all[set]?.[year].basis;
    return parts.flatMap((part) => {
      const pair = basis?.[part] ?? basis?.["rule"];
      return pair === undefined ? [] : [pair];
    });
  });
}

/** Readings of placement have no policies; their sections are found among the topics, whatever their number is that year. */
function wordingInSections(
  reading: ReadingEntry,
  { sections }: Collected,
  year: EditionYear,
): readonly Cited[] {
  if (reading.policies.length > 0) return [];
  return Object.values(sections)
    .filter((topic) => Object.values(topic.sections).some(([section]) => reading.sections.includes(section)))
    .map((topic) => topic.sections[year]);
}

function debtsOfConstants(
  { withstand: { basis }, withstandLevels }: Collected,
  year: EditionYear,
): readonly Debt[] {
  if (!basis.editions.includes(year)) return [];
  const cited: Cited = [basis.formula, withstandLevels.formula, []];
  return [{ ...ofCited(year, cited), kind: "constant", what: "short-time withstand" }];
}

function ofCited(
  edition: EditionYear,
  [section, level, sources]: Cited,
): Pick<Debt, "edition" | "section" | "level" | "sources" | "values"> {
  return { edition, section, level, sources, values: 1 };
}

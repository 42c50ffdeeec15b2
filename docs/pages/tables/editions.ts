import { type EditionYear, editionYears } from "../../../src/edition/edition-year.js";
import type { Evidence } from "../../../src/edition/evidence.js";
import type { Policies } from "../../../tables/tools/generator/by-edition.js";
import { cellKey, levelOfCell, rowLabel } from "../../../tables/tools/generator/cells.js";
import type { Collected } from "../../../tables/tools/generator/collected.js";
import type { Cell, Cited, TableFile } from "../../../tables/tools/generator/model.js";
import { inWords } from "../in-words.js";
import { type Change, changeOf, levels, markdownTable, rowsOf, shown } from "./parts.js";
import { changedPolicies, movedRules } from "./policy-changes.js";

/** What changed between each pair of neighboring editions, with the evidence on both sides. */
export function editionsPage(from: Collected): string {
  const pairs = editionYears.slice(1).map((after, i) => [editionYears[i] ?? after, after] as const);
  return `${[head, ...pairs.map(([before, after]) => pairPart(from, before, after))].join("\n\n")}\n`;
}

const head = [
  '<!-- Generated from the files of tables/ by "npm run pages -- editions"; do not edit. -->',
  "# What changed between editions",
  "",
  "As far as the library knows. The last column is the evidence before and after: a change next to `memory` or `carried` may be a gap in what",
  "was read, and what is not listed was not found to be the same unless both editions were read. Not checked is not no change.",
].join("\n");

/** A change in one of the parts of the page. */
export interface PlacedChange extends Change {
  /** Whether it is the place of the rule in the code that changed, and not what the rule says. */
  readonly isMove: boolean;
}

/** What changed of sets of policies, sections, named sizes and names, by their names in the tables. */
export function changesOf(
  from: Collected,
  names: ReadonlySet<string>,
  before: EditionYear,
  after: EditionYear,
): readonly PlacedChange[] {
  return parts
    .filter(([title]) => !["Tables", "Facts of placement", "Open readings"].includes(title))
    .flatMap(([title, changes]) =>
      changes(from, before, after)
        .filter(({ what }) => names.has(what.split(": ")[0] ?? what))
        .map((change) => ({ ...change, isMove: title.endsWith("that moved") })),
    );
}

type Changes = (from: Collected, before: EditionYear, after: EditionYear) => readonly Change[];

const parts: readonly (readonly [title: string, changes: Changes])[] = [
  ["Tables", (from, before, after) => from.tables.flatMap((table) => changedCells(table, before, after))],
  [
    "Policies",
    (from, before, after) => bothPolicies(from, (policies) => changedPolicies(policies, before, after)),
  ],
  [
    "Rules that moved",
    (from, before, after) => bothPolicies(from, (policies) => movedRules(policies, before, after)),
  ],
  ["Sections that moved", movedSections],
  ["Sizes that sections name", changedNamedSizes],
  ["Facts of placement", changedPlacements],
  ["Names", changedNames],
  ["Open readings", changedReadings],
];

function pairPart(from: Collected, before: EditionYear, after: EditionYear): string {
  const found = parts
    .map(([title, changes]) => ({ title, rows: changes(from, before, after) }))
    .filter(({ rows }) => rows.length > 0)
    .map(({ title, rows }) => {
      const table = markdownTable(
        ["what", before, after, "evidence"],
        rows.map((row) => [...[row.what, row.before, row.after].map(inWords), row.evidence]),
      );
      return `### ${title}, ${before} to ${after}\n\n${table}`;
    });
  return [
    `## ${before} to ${after}`,
    ...(found.length === 0 ? ["Nothing that the library knows of."] : found),
  ].join("\n\n");
}

function changedCells(table: TableFile, before: EditionYear, after: EditionYear): readonly Change[] {
  const number: Change = {
    what: `${table.id}: number`,
    before: shown(table.number[before]),
    after: shown(table.number[after]),
    evidence: levels(table.evidence[before]?.level, table.evidence[after]?.level),
  };
  const moved = table.number[before] === table.number[after] ? [] : [number];
  if (table.number[before] === null || table.number[after] === null) return moved;
  const cell = (year: EditionYear, label: string, column: number): Cell | undefined =>
    rowsOf(table, year).find((row) => rowLabel(row) === label)?.[column];
  const labels = [
    ...new Set([...rowsOf(table, before), ...rowsOf(table, after)].map((row) => rowLabel(row))),
  ];
  const cells = labels.flatMap((row) =>
    table.columns.flatMap(({ id: column }, i): readonly Change[] => {
      const values = [shown(cell(before, row, i)), shown(cell(after, row, i))] as const;
      if (values[0] === values[1]) return [];
      const level = (year: EditionYear): Evidence => levelOfCell(table, year, { row, column });
      const what = `${table.id}: ${cellKey({ row, column }).replace("|", ", ")}`;
      return [{ what, before: values[0], after: values[1], evidence: levels(level(before), level(after)) }];
    }),
  );
  return [...moved, ...cells];
}

function bothPolicies(
  { policies, ratingPolicies }: Collected,
  changes: (policies: Policies) => readonly Change[],
): readonly Change[] {
  return [...changes(policies), ...changes(ratingPolicies)];
}

function movedSections({ sections }: Collected, before: EditionYear, after: EditionYear): readonly Change[] {
  return Object.entries(sections).flatMap(([topic, { sections: found }]) =>
    changeOfPair(topic, found[before], found[after]),
  );
}

function changedNamedSizes(
  { namedSizes }: Collected,
  before: EditionYear,
  after: EditionYear,
): readonly Change[] {
  return Object.entries(namedSizes).flatMap(([name, { values }]) => {
    const say = (year: EditionYear): string => {
      const { copper, aluminum, citation } = values[year];
      return `${copper} copper, ${shown(aluminum)} aluminum, ${citation[0]}`;
    };
    return changeOf(name, say(before), say(after), [values[before].citation[1], values[after].citation[1]]);
  });
}

function changedPlacements(
  { placements, sections }: Collected,
  before: EditionYear,
  after: EditionYear,
): readonly Change[] {
  return Object.entries(placements).flatMap(([fact, { topic, values }]) => {
    const level = (year: EditionYear): Evidence | undefined => sections[topic]?.sections[year][1];
    return changeOf(fact, shown(values[before]), shown(values[after]), [level(before), level(after)]);
  });
}

/** Names have no evidence of their own. */
function changedNames({ roles }: Collected, before: EditionYear, after: EditionYear): readonly Change[] {
  return Object.entries(roles).flatMap(([role, { name }]) => changeOf(role, name[before], name[after]));
}

function changedReadings(
  { readings }: Collected,
  before: EditionYear,
  after: EditionYear,
): readonly Change[] {
  return readings.readings.flatMap(({ id, editions }) => {
    const state = (year: EditionYear): string => (editions.includes(year) ? "open" : "not open");
    return changeOf(id, state(before), state(after));
  });
}

function changeOfPair(what: string, before: Cited, after: Cited): readonly Change[] {
  return changeOf(what, before[0], after[0], [before[1], after[1]]);
}

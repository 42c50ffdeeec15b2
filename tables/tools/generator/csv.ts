import { type EditionYear, editionYears } from "../../../src/edition/edition-year.js";
import type { Policies, Policy } from "./by-edition.js";
import { rowLabel } from "./cells.js";
import { blockFor } from "./checks.js";
import type { Collected } from "./collected.js";
import { isLimit } from "./limit.js";
import type { Cell, Cited, TableFile } from "./model.js";

type Line = Readonly<Record<string, Cell | undefined>>;

/** The tables as CSV, by name of the file: one line for each row, policy or fact under each edition. */
export function csvFiles(collected: Collected): ReadonlyMap<string, string> {
  const { tables, policies, ratingPolicies } = collected;
  const lines: readonly (readonly [string, readonly Line[]])[] = [
    ...tables.map((table) => [table.id, rowLines(table)] as const),
    ["evidence", tables.flatMap(evidenceLines)],
    ["policies", policyLines(policies)],
    ["rating-policies", policyLines(ratingPolicies)],
    ["policy-basis", [...basisLines(policies), ...basisLines(ratingPolicies)]],
    ["named-sizes", namedSizeLines(collected)],
    ["placements", placementLines(collected)],
    ["sections", sectionLines(collected)],
    ["roles", roleLines(collected)],
    ["short-time-withstand", withstandLines(collected)],
    ["extracts", extractLines(collected)],
  ];
  return new Map(lines.map(([name, rows]) => [`${name}.csv`, csvOf(rows)]));
}

/** RFC 4180, under the columns of all lines in the order in which they appear. */
function csvOf(lines: readonly Line[]): string {
  const columns = [...new Set(lines.flatMap((line) => Object.keys(line)))];
  const rows = [columns, ...lines.map((line) => columns.map((column) => String(line[column] ?? "")))];
  return rows.map((cells) => `${cells.map(quoted).join(",")}\r\n`).join("");
}

function quoted(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

function rowLines(table: TableFile): readonly Line[] {
  return editionYears.flatMap((edition) => {
    const number = table.number[edition];
    if (number === null) return [];
    return (blockFor(table, edition)?.rows ?? []).map((cells, i) => ({
      edition,
      number,
      row: i + 1,
      ...Object.fromEntries(table.columns.map(({ id }, column) => [id, cells[column]])),
    }));
  });
}

/** The level of a whole table under an edition, and after it that of each cell that differs. */
function evidenceLines(table: TableFile): readonly Line[] {
  return editionYears.flatMap((edition) => {
    const whole = table.evidence[edition];
    if (whole === undefined) return [];
    const labels = (blockFor(table, edition)?.rows ?? []).map(rowLabel);
    const own = (table.cells ?? []).filter((cell) => cell.edition === edition);
    return [
      { table: table.id, edition, row: null, column: null, level: whole.level, ...sourced(whole) },
      ...own.map((cell) => ({
        table: table.id,
        edition,
        row: labels.indexOf(cell.row) + 1,
        column: cell.column,
        level: cell.level,
        ...sourced(cell),
      })),
    ];
  });
}

function sourced({ sources }: { readonly sources?: readonly string[] }): Line {
  return { sources: (sources ?? []).join(" ") };
}

function policyLines(policies: Policies): readonly Line[] {
  return eachPolicy(policies, (policy, edition, { fields }) => [
    { policy, edition, ...Object.assign({}, ...Object.entries(fields).map(flat)) },
  ]);
}

/** A field of a policy as columns; a size that a section names outright has one for each material. */
function flat([field, value]: readonly [string, unknown]): Line {
  if (field !== "floor" && field !== "ceiling") return { [field]: value as Cell };
  const limit = isLimit(value) ? value : undefined;
  return { [`${field}Copper`]: limit?.copper, [`${field}Aluminum`]: limit?.aluminum };
}

function basisLines(policies: Policies): readonly Line[] {
  return eachPolicy(policies, (policy, edition, { basis, limits }) =>
    [...Object.entries(basis), ...Object.entries(limits)].map(([part, cited]) => ({
      policy,
      edition,
      part,
      ...citedLine(cited),
    })),
  );
}

function eachPolicy(
  policies: Policies,
  lines: (name: string, edition: EditionYear, policy: Policy) => readonly Line[],
): readonly Line[] {
  return Object.entries(policies).flatMap(([name, byYear]) =>
    editionYears.flatMap((edition) => lines(name, edition, byYear[edition])),
  );
}

function namedSizeLines({ namedSizes }: Collected): readonly Line[] {
  return Object.entries(namedSizes).flatMap(([name, { values }]) =>
    editionYears.map((edition) => {
      const { copper, aluminum, citation } = values[edition];
      return { name, edition, copper, aluminum, ...citedLine(citation) };
    }),
  );
}

function placementLines({ placements }: Collected): readonly Line[] {
  return Object.entries(placements).flatMap(([fact, { topic, values, citations }]) =>
    editionYears.map((edition) => ({
      fact,
      edition,
      value: values[edition],
      topic,
      ...citedLine(citations[edition]),
    })),
  );
}

function sectionLines({ sections }: Collected): readonly Line[] {
  return Object.entries(sections).flatMap(([topic, { sections: places }]) =>
    editionYears.map((edition) => ({ topic, edition, ...citedLine(places[edition]) })),
  );
}

/** What was read of which statement, in which source. */
function extractLines({ passages }: Collected): readonly Line[] {
  return passages.map(({ of, file, path, passage }) => ({
    file,
    statement: path.join("/"),
    edition: of.edition,
    dated: of.dated,
    datedBy: of.datedBy,
    beside: (of.holds ?? []).join(" "),
    source: of.source,
    channel: of.channel,
    section: passage.at,
    value: passage.is === undefined ? undefined : JSON.stringify(passage.is),
    says: passage.says,
    judged: passage.judged,
  }));
}

function citedLine([section, level, sources]: Cited): Line {
  return { section, level, ...sourced({ sources }) };
}

function roleLines({ roles }: Collected): readonly Line[] {
  return Object.entries(roles).flatMap(([role, { purpose, name }]) =>
    editionYears.map((edition) => ({ role, edition, purpose, name: name[edition] })),
  );
}

function withstandLines({ withstand }: Collected): readonly Line[] {
  return Object.entries(withstand.metals).flatMap(([metal, { factor, offset, highestFinal }]) =>
    withstand.basis.editions.map((edition) => ({ metal, edition, factor, offset, highestFinal })),
  );
}

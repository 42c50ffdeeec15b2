import { editionYears } from "../../src/edition/edition-year.js";
import { type CsvCell, rowsToCsv } from "../../src/report/csv.js";
import { rowLabel } from "./cells.js";
import { blockFor } from "./checks.js";
import type { Collected } from "./collected.js";
import { isLimit } from "./emit.js";
import type { PoliciesFile, TableFile } from "./model.js";

type Line = Readonly<Record<string, CsvCell>>;

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
  ];
  return new Map(lines.map(([name, rows]) => [`${name}.csv`, rowsToCsv(rows)]));
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

function policyLines(file: PoliciesFile): readonly Line[] {
  return policiesByEdition(file).map(({ policy, edition, block }) => {
    const { editions, basis, sources, note, ...fields } = block;
    return { policy, edition, ...Object.assign({}, ...Object.entries(fields).map(flat)) };
  });
}

/** A field of a policy as columns; a size that a section names outright has one for each material. */
function flat([field, value]: readonly [string, unknown]): Line {
  if (field !== "floor" && field !== "ceiling") return { [field]: value as CsvCell };
  const limit = isLimit(value) ? value : undefined;
  return { [`${field}Copper`]: limit?.copper, [`${field}Aluminum`]: limit?.aluminum };
}

function basisLines(file: PoliciesFile): readonly Line[] {
  return policiesByEdition(file).flatMap(({ policy, edition, block }) => {
    const limits = Object.entries(block).flatMap(([field, value]) =>
      isLimit(value) ? [[field, value.citation] as const] : [],
    );
    return [...Object.entries(block.basis), ...limits].map(([part, [section, level]]) => ({
      policy,
      edition,
      part,
      section,
      level,
    }));
  });
}

function policiesByEdition({ policies }: PoliciesFile) {
  return Object.entries(policies).flatMap(([policy, blocks]) =>
    editionYears.flatMap((edition) =>
      blocks
        .filter(({ editions }) => editions.includes(edition))
        .map((block) => ({ policy, edition, block })),
    ),
  );
}

function namedSizeLines({ namedSizes }: Collected): readonly Line[] {
  return Object.entries(namedSizes.sizes).flatMap(([name, { values }]) =>
    editionYears.map((edition) => {
      const { copper, aluminum, citation } = values[edition];
      return { name, edition, copper, aluminum, section: citation[0], level: citation[1] };
    }),
  );
}

function placementLines({ placements }: Collected): readonly Line[] {
  return Object.entries(placements.facts).flatMap(([fact, { topic, values }]) =>
    editionYears.map((edition) => ({ fact, edition, value: values[edition], topic })),
  );
}

function sectionLines({ sections }: Collected): readonly Line[] {
  return Object.entries(sections.topics).flatMap(([topic, { sections: places }]) =>
    editionYears.map((edition) => {
      const [section, level] = places[edition];
      return { topic, edition, section, level };
    }),
  );
}

function roleLines({ roles }: Collected): readonly Line[] {
  return Object.entries(roles.roles).flatMap(([role, { purpose, name }]) =>
    editionYears.map((edition) => ({ role, edition, purpose, name: name[edition] })),
  );
}

function withstandLines({ withstand }: Collected): readonly Line[] {
  return Object.entries(withstand.metals).flatMap(([metal, { factor, offset, highestFinal }]) =>
    withstand.basis.editions.map((edition) => ({ metal, edition, factor, offset, highestFinal })),
  );
}

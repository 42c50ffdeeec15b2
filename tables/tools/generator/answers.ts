import { editionYears } from "../../../src/edition/edition-year.js";

/** Marks what a scaffold copied and nobody has read yet: as a level of evidence, and as the key of a value without one. */
export const unfilled = "unfilled";

/**
 * Every record by edition that does not answer each of them, and a file that says through which edition it was answered. The evidence
 * of a table is left out: an edition without the table has none.
 */
export function unanswered(data: object, years: readonly string[] = editionYears): readonly string[] {
  const through = "through" in data ? String(data.through) : undefined;
  const later = years.filter((year) => through !== undefined && year > through);
  return [
    ...later.map((year) => `through: no answer for ${year}`),
    ...recordsByEdition(data, "").flatMap(({ path, record }) =>
      years.filter((year) => !Object.hasOwn(record, year)).map((year) => `${path}: no answer for ${year}`),
    ),
  ];
}

/** Every place that a scaffold left to be filled. */
export function unfilledPlaces(data: unknown, path = ""): readonly string[] {
  if (data === unfilled) return [path];
  if (typeof data !== "object" || data === null) return [];
  if (Object.hasOwn(data, unfilled)) return [path];
  return Object.entries(data).flatMap(([key, value]) =>
    unfilledPlaces(value, path === "" ? nameOf(data, key) : `${path}/${nameOf(data, key)}`),
  );
}

/** In a list, an item that has a name is easier found by it than by its place. */
function nameOf(list: object, key: string): string {
  if (!Array.isArray(list)) return key;
  const item = (list as readonly unknown[])[Number(key)];
  if (typeof item !== "object" || item === null) return key;
  if ("id" in item) return String(item.id);
  return "from" in item ? String(item.from) : key;
}

interface YearRecord {
  readonly path: string;
  readonly record: object;
}

function recordsByEdition(data: unknown, path: string): readonly YearRecord[] {
  if (typeof data !== "object" || data === null) return [];
  const keys = Object.keys(data);
  const byEdition = !Array.isArray(data) && keys.length > 0 && keys.every((key) => /^20\d\d$/.test(key));
  const own = byEdition && !path.endsWith("evidence") ? [{ path, record: data }] : [];
  const below = Object.entries(data).flatMap(([key, value]) =>
    recordsByEdition(value, path === "" ? key : `${path}/${nameOf(data, key)}`),
  );
  return [...own, ...below];
}

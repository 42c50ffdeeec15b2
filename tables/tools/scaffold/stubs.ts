import { unfilled } from "../generator/answers.js";

/**
 * The data of a table file with a stub for a new edition wherever there is an answer by edition: a copy of the edition before, so that
 * it can be compared, marked as unfilled, so that nothing passes before somebody has looked. What holds from an edition on needs no copy:
 * the edition through which the file was answered asks. How sure it is follows from what is read.
 */
export function withStubs(data: unknown, before: string, next: string): unknown {
  if (Array.isArray(data)) return data.map((item) => withStubs(item, before, next));
  if (!isRecord(data)) return data;
  const inside = Object.entries(data).map(([key, value]) => [key, withStubs(value, before, next)] as const);
  const copy: Record<string, unknown> = Object.fromEntries(inside);
  if (Object.hasOwn(data, before)) copy[next] = stub(data[before]);
  if (isEditionList(data["editions"], before)) copy["editions"] = [...data["editions"], { [unfilled]: next }];
  if (data["through"] === before) copy["through"] = { [unfilled]: next };
  return copy;
}

/** The schema of the editions, with one more. */
export function withEdition(schema: unknown, before: string, next: string): unknown {
  if (Array.isArray(schema)) return schema.includes(before) ? [...schema, next] : schema;
  if (!isRecord(schema)) return schema;
  return Object.fromEntries(
    Object.entries(schema).map(([key, value]) => [key, withEdition(value, before, next)]),
  );
}

/** Whether an edition is named anywhere. */
export function mentions(data: unknown, year: string): boolean {
  if (data === year) return true;
  if (typeof data !== "object" || data === null) return false;
  return Object.hasOwn(data, year) || Object.values(data).some((value) => mentions(value, year));
}

function stub(answer: unknown): unknown {
  if (Array.isArray(answer)) return [];
  return { [unfilled]: answer };
}

function isEditionList(value: unknown, year: string): value is readonly unknown[] {
  return Array.isArray(value) && value.includes(year);
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

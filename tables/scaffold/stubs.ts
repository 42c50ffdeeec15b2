import { unfilled } from "../generator/answers.js";

/**
 * The data of a table file with a stub for a new edition wherever there is an answer by edition: a copy of the edition before, so that
 * it can be compared, marked as unfilled, so that nothing passes before somebody has looked.
 */
export function withStubs(data: unknown, before: string, next: string): unknown {
  if (Array.isArray(data)) {
    const items = data.map((item) => withStubs(item, before, next));
    return [...items, ...data.flatMap((item) => stubOfPolicy(item, before, next))];
  }
  if (!isRecord(data)) return data;
  const inside = Object.entries(data).map(([key, value]) => [key, withStubs(value, before, next)] as const);
  const copy: Record<string, unknown> = Object.fromEntries(inside);
  if (Object.hasOwn(data, before)) copy[next] = stub(data[before], before);
  if (isEditionList(data["editions"], before) && !isRecord(data["basis"]))
    copy["editions"] = [...data["editions"], { [unfilled]: next }];
  return copy;
}

/** A schema that knows the new edition wherever it knows the one before. */
export function withEdition(schema: unknown, before: string, next: string): unknown {
  if (Array.isArray(schema)) {
    const items = schema.map((item) => withEdition(item, before, next));
    return schema.includes(before) ? [...items, next] : items;
  }
  if (!isRecord(schema)) return schema;
  const inside = Object.entries(schema).map(([key, value]) => [key, withEdition(value, before, next)]);
  const copy: Record<string, unknown> = Object.fromEntries(inside);
  if (Object.hasOwn(schema, before)) copy[next] = structuredClone(schema[before]);
  return copy;
}

/** Whether an edition is named anywhere as a key or in a list. */
export function mentions(data: unknown, year: string): boolean {
  if (Array.isArray(data)) return data.some((item) => item === year || mentions(item, year));
  if (!isRecord(data)) return false;
  return Object.hasOwn(data, year) || Object.values(data).some((value) => mentions(value, year));
}

function stub(answer: unknown, before: string): unknown {
  if (isPair(answer)) return [answer[0], unfilled];
  if (Array.isArray(answer)) return [];
  if (!isRecord(answer)) return { [unfilled]: answer };
  if (Object.hasOwn(answer, "level")) return { level: unfilled, sources: [unfilled], note: noteOn(before) };
  if (Object.hasOwn(answer, "citation")) return { ...answer, citation: stub(answer["citation"], before) };
  if (Object.hasOwn(answer, "sources")) return { ...answer, sources: [unfilled] };
  return { [unfilled]: answer };
}

function stubOfPolicy(block: unknown, before: string, next: string): readonly object[] {
  if (!isRecord(block) || !isRecord(block["basis"]) || !isEditionList(block["editions"], before)) return [];
  const fields = Object.entries(block).map(([field, value]) => [
    field,
    isRecord(value) && Object.hasOwn(value, "citation") ? stub(value, before) : value,
  ]);
  const basis = Object.entries(block["basis"]).map(([part, pair]) => [part, stub(pair, before)]);
  return [
    {
      ...Object.fromEntries(fields),
      editions: [next],
      basis: Object.fromEntries(basis),
      sources: [unfilled],
      note: noteOn(before),
    },
  ];
}

function noteOn(before: string): string {
  return `Not read; copied from ${before} by the scaffold.`;
}

function isPair(value: unknown): value is readonly [string, string] {
  return Array.isArray(value) && value.length === 2 && value.every((one) => typeof one === "string");
}

function isEditionList(value: unknown, year: string): value is readonly unknown[] {
  return Array.isArray(value) && value.includes(year);
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

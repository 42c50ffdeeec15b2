import * as v from "valibot";
import { coherenceFaults } from "./coherence.js";
import { type Drawing, drawingSchema } from "./document.js";
import { type Fault, fault, type Keys } from "./fault.js";
import { duplicateIds } from "./ids.js";
import { referenceFaults } from "./references.js";
import { schemaFaults } from "./schema-faults.js";
import { tableFaults } from "./table-limits.js";

/** Version of the drawing format that this library reads. */
const format = 1;

/** Most characters of a JSON text, most objects and lists, and deepest nesting, that are looked at. */
const mostCharacters = 5_000_000;
const mostObjects = 50_000;
const deepest = 40;

/** A drawing that can be built from, or everything that is wrong with it. */
export type Examined =
  | { readonly drawing: Drawing; readonly faults: null }
  | { readonly drawing: null; readonly faults: readonly Fault[] };

/** Looks at a drawing: its text, its shape, then its ids, references and what the tables can answer. */
export function examine(source: unknown): Examined {
  const { data, faults } = typeof source === "string" ? parsed(source) : { data: source, faults: [] };
  const refused =
    faults.length > 0 ? faults : [...nestingFaults(data), ...formatFaults(data), ...readingsFaults(data)];
  if (refused.length > 0) return { drawing: null, faults: refused };
  const read = v.safeParse(drawingSchema, data);
  const wrong = read.success ? meaningFaults(read.output) : schemaFaults(read.issues);
  return read.success && wrong.length === 0
    ? { drawing: read.output, faults: null }
    : { drawing: null, faults: wrong };
}

function meaningFaults(drawing: Drawing): readonly Fault[] {
  return [
    ...duplicateIds(drawing),
    ...referenceFaults(drawing),
    ...coherenceFaults(drawing),
    ...tableFaults(drawing),
  ];
}

function parsed(text: string): { readonly data: unknown; readonly faults: readonly Fault[] } {
  const refused = (found: Fault) => ({ data: undefined, faults: [found] });
  if (text.length > mostCharacters) {
    const expected = `at most ${mostCharacters} characters`;
    return refused(fault("out-of-range", [], expected, text.length, "divide the drawing"));
  }
  try {
    return { data: JSON.parse(text) as unknown, faults: [] };
  } catch (error) {
    const detail = error instanceof Error ? error.message.slice(0, 120) : "not JSON";
    return refused(fault("wrong-type", [], "JSON text", text, `mend it: ${detail}`));
  }
}

/**
 * Refuses nesting and masses that no drawing has, before anything walks them recursively, and keys that every object inherits a
 * meaning for. What is met twice is walked once, so that data which refers to itself ends too.
 */
function nestingFaults(data: unknown): readonly Fault[] {
  const seen = new Set<object>();
  const faults: Fault[] = [];
  let level = inner(data, []);
  for (let depth = 0; level.length > 0; depth += 1) {
    if (depth > deepest) {
      return [fault("out-of-range", [], `at most ${deepest} levels`, "deeper nesting", "a drawing is flat")];
    }
    const next: Nested[] = [];
    for (const { value, keys } of level) {
      if (seen.has(value)) continue;
      if (seen.size === mostObjects) {
        const expected = `at most ${mostObjects} objects and lists`;
        return [fault("out-of-range", [], expected, "more of them", "divide the drawing")];
      }
      seen.add(value);
      if (Array.isArray(value) && value.length > mostObjects) {
        const expected = `lists of at most ${mostObjects} items`;
        return [fault("out-of-range", [], expected, value.length, "divide the drawing")];
      }
      for (const [key, one] of Object.entries(value)) {
        if (!Array.isArray(value) && key in Object.prototype) {
          faults.push(fault("unknown-key", [...keys, key], "no such key", key, "remove it"));
        }
        next.push(...inner(one, [...keys, Array.isArray(value) ? Number(key) : key]));
      }
    }
    level = next;
  }
  return faults;
}

interface Nested {
  readonly value: object;
  readonly keys: Keys;
}

function inner(value: unknown, keys: Keys): readonly Nested[] {
  return typeof value === "object" && value !== null ? [{ value, keys }] : [];
}

function formatFaults(data: unknown): readonly Fault[] {
  const given = memberOf(data, "format");
  if (typeof given !== "number" || given <= format) return [];
  const advice = "this document is of a newer format, use a newer version of the library";
  return [fault("unknown-value", ["format"], `format ${format}`, given, advice)];
}

/** The definition takes a list for an object without fixed keys, and would read it as an empty one. */
function readingsFaults(data: unknown): readonly Fault[] {
  const code = memberOf(data, "code");
  const readings = memberOf(code, "readings");
  if (!Array.isArray(readings)) return [];
  return [fault("wrong-type", ["code", "readings"], "an object", readings, "see the schema of drawings")];
}

function memberOf(data: unknown, key: string): unknown {
  return typeof data === "object" && data !== null && Object.hasOwn(data, key)
    ? (data as Readonly<Record<string, unknown>>)[key]
    : undefined;
}

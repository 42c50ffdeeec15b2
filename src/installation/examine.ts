import type { Issue } from "../input/input-error.js";
import { readShape } from "../input/read-shape.js";
import { type Reader, tryAll, wholeOf } from "../input/reader.js";
import { coherenceFaults } from "./coherence.js";
import { type Fault, fault, type Keys } from "./fault.js";
import { duplicateIds } from "./ids.js";
import { installedFaults } from "./installed/references.js";
import { referenceFaults } from "./references.js";
import { type Installation, installationShape } from "./shape.generated.js";
import { tableFaults } from "./table-limits.js";

/** Version of the installation format that this library reads. */
const format = 1;

/** Most characters of a JSON text, most objects and lists, and deepest nesting, that are looked at. */
const mostCharacters = 5_000_000;
const mostObjects = 50_000;
const deepest = 40;

/** An installation that can be built from, or everything that is wrong with it. */
export type Examined =
  | { readonly installation: Installation; readonly faults: null }
  | { readonly installation: null; readonly faults: readonly Fault[] };

/** Looks at an installation: its text, its shape, then its ids, references and what the tables can answer. */
export function examine(source: unknown): Examined {
  const { data, faults } = dataOf(source);
  if (faults.length > 0) return { installation: null, faults };
  const issues: Issue[] = [];
  const installation = tryAll(data, readDrawn) ?? readDrawn(wholeOf(data, issues));
  const wrong = installation === undefined ? issues.map(inWordsOfPiping) : meaningFaults(installation);
  return installation !== undefined && wrong.length === 0
    ? { installation, faults: null }
    : { installation: null, faults: wrong };
}

function readDrawn(at: Reader): Installation | undefined {
  return readShape<Installation>(at, installationShape);
}

/** The data of a source, and why nobody looks further into it. */
export function dataOf(source: unknown): { readonly data: unknown; readonly faults: readonly Fault[] } {
  const { data, faults } = typeof source === "string" ? parsed(source) : { data: source, faults: [] };
  return {
    data,
    faults:
      faults.length > 0 ? faults : [...(isFlat(data) ? [] : nestingFaults(data)), ...formatFaults(data)],
  };
}

function meaningFaults(installation: Installation): readonly Fault[] {
  const doubled = duplicateIds(installation);
  const names = new Set(doubled.map(({ received }) => received));
  // Two things of one id make circles that are none.
  const follows = ({ code, received }: Fault): boolean => code === "cycle" && names.has(received);
  return [
    ...doubled,
    ...referenceFaults(installation).filter((one) => !follows(one)),
    ...coherenceFaults(installation),
    ...tableFaults(installation),
    ...installedFaults(installation),
  ];
}

/** Piping that belongs to nobody is often given an owner, as water piping is. */
export function inWordsOfPiping(issue: Issue): Fault {
  const [list, , key, ...inner] = issue.keys;
  if (issue.code !== "unknown-key" || list !== "piping" || key !== "of" || inner.length > 0) return issue;
  const advice =
    'remove it: piping of this kind is sized by the device of the circuit that is likely to energize it, or that supplies the occupancy, in deviceAmperes; only piping of kind "water" belongs to a system';
  return { ...issue, ...fault("unknown-key", issue.keys, "no owner of such piping", "of", advice) };
}

function parsed(text: string): { readonly data: unknown; readonly faults: readonly Fault[] } {
  const refused = (found: Fault) => ({ data: undefined, faults: [found] });
  if (text.length > mostCharacters) {
    const expected = `at most ${mostCharacters} characters`;
    return refused(fault("out-of-range", [], expected, text.length, "divide the installation"));
  }
  try {
    return { data: JSON.parse(text) as unknown, faults: [] };
  } catch (error) {
    const detail = error instanceof Error ? error.message.slice(0, 120) : "not JSON";
    return refused(fault("wrong-type", [], "JSON text", text, `mend it: ${detail}`));
  }
}

/**
 * Refuses nesting and masses that no installation has, before anything walks them recursively, and keys that every object inherits a
 * meaning for. What is met twice is walked once, so that data which refers to itself ends too.
 */
function nestingFaults(data: unknown): readonly Fault[] {
  const seen = new Set<object>();
  const faults: Fault[] = [];
  let level = inner(data, []);
  for (let depth = 0; level.length > 0; depth += 1) {
    if (depth > deepest) {
      return [
        fault("out-of-range", [], `at most ${deepest} levels`, "deeper nesting", "an installation is flat"),
      ];
    }
    const next: Nested[] = [];
    for (const { value, keys } of level) {
      if (seen.has(value)) continue;
      if (seen.size === mostObjects) {
        const expected = `at most ${mostObjects} objects and lists`;
        return [fault("out-of-range", [], expected, "more of them", "divide the installation")];
      }
      seen.add(value);
      if (Array.isArray(value) && value.length > mostObjects) {
        const expected = `lists of at most ${mostObjects} items`;
        return [fault("out-of-range", [], expected, value.length, "divide the installation")];
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

/** A first look, which puts no places together. What is shared counts at every place here, so that of what is not flat a full look is due. */
function isFlat(data: unknown): boolean {
  let objects = 0;
  const isWithin = (value: unknown, depth: number): boolean => {
    if (typeof value !== "object" || value === null) return true;
    objects += 1;
    if (depth > deepest || objects > mostObjects) return false;
    if (Array.isArray(value)) {
      return value.length <= mostObjects && value.every((one) => isWithin(one, depth + 1));
    }
    for (const key in value) {
      if (key in Object.prototype) return false;
      if (!isWithin((value as Readonly<Record<string, unknown>>)[key], depth + 1)) return false;
    }
    return true;
  };
  return isWithin(data, 0);
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

function memberOf(data: unknown, key: string): unknown {
  return typeof data === "object" && data !== null && Object.hasOwn(data, key)
    ? (data as Readonly<Record<string, unknown>>)[key]
    : undefined;
}

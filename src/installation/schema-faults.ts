import * as v from "valibot";
import type { IssueCode } from "../input/input-error.js";
import { drawingSchema } from "./document.js";
import { type Fault, fault, type Keys } from "./fault.js";
import { nearest } from "./nearest.js";

type SchemaIssue = v.BaseIssue<unknown>;
type Schema = v.GenericSchema<unknown>;

/** Unknown keys that are listed of one object; further ones wait until these are mended. */
const mostUnknown = 100;

/** What the definition of drawings refuses in a value, each with one sentence of advice. */
export function schemaFaults(issues: readonly SchemaIssue[]): readonly Fault[] {
  return issues.flatMap((issue) => faultsOf(issue, drawingSchema, []));
}

function faultsOf(issue: SchemaIssue, root: Schema, before: Keys): readonly Fault[] {
  const own = keysOf(issue);
  const keys = [...before, ...own];
  const last = issue.path?.at(-1);
  if (issue.type === "strict_object" && issue.expected === "never" && last !== undefined) {
    return unknownKeys(last.input, schemaAt(root, own.slice(0, -1)), keys.slice(0, -1));
  }
  if (issue.type === "union") return unionFaults(issue, schemaAt(root, own), keys);
  return [oneFault(issue, keys, schemaAt(root, own))];
}

/** Says of a union what is wrong in the alternative that is meant, not that none of them fits. */
function unionFaults(issue: SchemaIssue, union: Schema | undefined, keys: Keys): readonly Fault[] {
  const { input } = issue;
  const options = optionsOf(union);
  const meant = isRecord(input) ? meantBy(input, options) : undefined;
  const within = meant && v.safeParse(meant, input).issues?.flatMap((one) => faultsOf(one, meant, keys));
  return within ?? [fault("wrong-type", keys, alternatives(options), input, "see the schema of drawings")];
}

/** The alternative with the most keys of the value, and of those the one with the fewest faults. */
function meantBy(input: Readonly<Record<string, unknown>>, options: readonly Schema[]): Schema | undefined {
  const rank = (option: Schema): number => {
    const known = entriesOf(option).filter((key) => Object.hasOwn(input, key)).length;
    return known * 1000 - Math.min(999, v.safeParse(option, input).issues?.length ?? 0);
  };
  return [...options].sort((a, b) => rank(b) - rank(a))[0];
}

/** Every key of an object that its definition lacks; the check itself stops at the first. */
function unknownKeys(input: unknown, schema: Schema | undefined, at: Keys): readonly Fault[] {
  const known = entriesOf(schema);
  const given = isRecord(input) || Array.isArray(input) ? keysIn(input) : [];
  return given
    .filter((key) => !known.includes(key))
    .slice(0, mostUnknown)
    .map((key) => {
      const free = known.filter((one) => !given.includes(one));
      const near = nearest(key, free);
      const shown = key.length > 60 ? `${key.slice(0, 57)}...` : key;
      const rest = free.length === 0 ? "remove it" : `remove it, or use one of ${free.join(", ")}`;
      const advice = near === undefined ? rest : `did you mean "${near}"?`;
      const expected = near === undefined ? "no such key" : `"${near}"`;
      const { keys, issue } = fault("unknown-key", [...at, key], expected, key, advice);
      return { keys, issue: { ...issue, message: `"${shown}" is not known here; ${advice}` } };
    });
}

/** The keys of an object as the definition counts them, inherited ones too. */
function keysIn(input: object): readonly string[] {
  const keys: string[] = [];
  for (const key in input) keys.push(key);
  return keys;
}

function oneFault(issue: SchemaIssue, keys: Keys, schema: Schema | undefined): Fault {
  const code = codeOf(issue);
  const expected = issue.expected ?? issue.message;
  const name = keys.at(-1);
  const isNamed = code === "missing" && typeof name === "string";
  return fault(
    code,
    keys,
    isNamed ? `"${name}"` : expected,
    issue.input,
    code === "missing" ? missingAdvice(schema) : (adviceOf(issue) ?? "see the schema of drawings"),
  );
}

/** What a missing member is, as far as its definition says. */
function missingAdvice(schema: Schema | undefined): string {
  const { options } = (unwrapped(schema) ?? {}) as { readonly options?: readonly unknown[] };
  const words = (options ?? []).filter((one) => typeof one === "string");
  const description = schema && v.getDescription(schema as Parameters<typeof v.getDescription>[0]);
  const shown = [
    ...(description === undefined ? [] : [description.replace(/\.$/, "")]),
    ...(words.length === 0 ? [] : [`one of ${words.map((word) => `"${word}"`).join(", ")}`]),
  ];
  return shown.length === 0 ? "give it" : `give it: ${shown.join("; ")}`;
}

function adviceOf({ type, expected, input }: SchemaIssue): string | undefined {
  if (type !== "picklist" || typeof input !== "string") return undefined;
  const words = (expected ?? "").split(/[^\w/ -]+/).map((word) => word.trim());
  const near = nearest(
    input,
    words.filter((word) => word !== ""),
  );
  return near === undefined ? "use one of these words" : `did you mean "${near}"?`;
}

function codeOf(issue: SchemaIssue): IssueCode {
  if (issue.input === undefined) return "missing";
  switch (issue.type) {
    case "picklist":
    case "literal":
    case "regex":
      return "unknown-value";
    case "integer":
      return "not-a-whole-number";
    case "gt_value":
    case "min_value":
      return "not-positive";
    case "finite":
    case "max_value":
    case "max_length":
      return "out-of-range";
    case "min_length":
      return "empty-list";
    default:
      return "wrong-type";
  }
}

function keysOf({ path }: SchemaIssue): Keys {
  return (path ?? []).map(({ key }) => (typeof key === "number" ? key : String(key)));
}

/** The definition at some steps below another. */
function schemaAt(root: Schema, keys: Keys): Schema | undefined {
  return keys.reduce<Schema | undefined>((schema, key) => {
    const inner = unwrapped(schema);
    if (typeof key === "number") return partOf(inner, "item");
    const holding = [inner, ...optionsOf(inner)].find((one) => entriesOf(one).includes(key));
    const entries = holding && (holding as { readonly entries?: Readonly<Record<string, Schema>> }).entries;
    return entries?.[key];
  }, root);
}

function optionsOf(schema: Schema | undefined): readonly Schema[] {
  const inner = unwrapped(schema);
  const { options } = (inner ?? {}) as { readonly options?: readonly unknown[] };
  return (options ?? []).filter((one) => typeof one === "object") as readonly Schema[];
}

function entriesOf(schema: Schema | undefined): readonly string[] {
  const inner = unwrapped(schema);
  const own = Object.keys(((inner ?? {}) as { readonly entries?: object }).entries ?? {});
  return [...own, ...optionsOf(inner).flatMap(entriesOf)];
}

/** The definition inside of optional and the like. */
function unwrapped(schema: Schema | undefined): Schema | undefined {
  const inner = partOf(schema, "wrapped");
  return inner === undefined ? schema : unwrapped(inner);
}

function partOf(schema: Schema | undefined, part: "wrapped" | "item"): Schema | undefined {
  return (schema as Readonly<Partial<Record<typeof part, Schema>>> | undefined)?.[part];
}

function alternatives(options: readonly Schema[]): string {
  return options.map((option) => `an object with ${entriesOf(option).join(", ")}`).join("; or ");
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

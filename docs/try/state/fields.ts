import schema from "bondmil/installation.schema.json" with { type: "json" };
import type { Json, Keys } from "./data.js";

/** As much of a JSON Schema as that of an installation uses. */
export interface Schema {
  readonly $ref?: string;
  readonly type?: string;
  readonly description?: string;
  readonly enum?: readonly (string | number)[];
  readonly const?: string | number;
  readonly pattern?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly items?: Schema;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly $defs?: Readonly<Record<string, Schema>>;
}

/** A member of an object in the form. */
export interface Member {
  readonly name: string;
  readonly isRequired: boolean;
  readonly schema: Schema;
}

/** What is put in at a place of the document. */
export type Field =
  | { readonly kind: "fixed"; readonly value: string | number }
  | { readonly kind: "choice"; readonly values: readonly (string | number)[] }
  | { readonly kind: "flag" | "id" | "reference" | "text" | "nothing" | "pairs" }
  | { readonly kind: "number"; readonly isWhole: boolean }
  | { readonly kind: "object"; readonly members: readonly Member[] }
  | { readonly kind: "list"; readonly item: Schema }
  | { readonly kind: "variants"; readonly of: readonly Schema[] };

/** The schema of an installation, from which the whole form is made. */
export const installation = schema as Schema;

/** A schema without a reference, which keeps the description of where it is used. */
export function resolved(given: Schema): Schema {
  const name = given.$ref?.split("/").at(-1);
  const found = name === undefined ? undefined : installation.$defs?.[name];
  if (found === undefined) return given;
  return { ...resolved(found), ...(given.description !== undefined && { description: given.description }) };
}

const idPattern = "^\\S(.*\\S)?$";

/** The schema calls what goes somewhere an id of something; only readings are named so and stand in no document. */
function isReference({ description = "" }: Schema): boolean {
  return /^Id of (?!the reading)|an id of the document/.test(description);
}

/** What is to be put in for a schema. */
export function fieldOf(given: Schema): Field {
  const one = resolved(given);
  const variants = one.anyOf ?? one.oneOf;
  if (variants !== undefined) return { kind: "variants", of: variants };
  if (one.const !== undefined) return { kind: "fixed", value: one.const };
  if (one.enum !== undefined) return { kind: "choice", values: one.enum };
  switch (one.type) {
    case "object":
      return one.properties === undefined ? { kind: "pairs" } : { kind: "object", members: membersOf(one) };
    case "array":
      return { kind: "list", item: one.items ?? {} };
    case "boolean":
      return { kind: "flag" };
    case "integer":
    case "number":
      return { kind: "number", isWhole: one.type === "integer" };
    case "null":
      return { kind: "nothing" };
    default:
      return { kind: isReference(one) ? "reference" : one.pattern === idPattern ? "id" : "text" };
  }
}

function membersOf({ properties = {}, required = [] }: Schema): readonly Member[] {
  return Object.entries(properties).map(([name, one]) => ({
    name,
    isRequired: required.includes(name),
    schema: one,
  }));
}

/** Whether a field is put in with one control. */
export function isSimple(field: Field): boolean {
  return !["object", "list", "variants", "pairs", "fixed"].includes(field.kind);
}

/** The place in a list of variants of the one that a value is of; the first for a value that is of none. */
export function variantOf(variants: readonly Schema[], value: Json | undefined): number {
  const scores = variants.map((one) => scoreOf(resolved(one), value));
  return Math.max(0, scores.indexOf(Math.max(...scores)));
}

function scoreOf(one: Schema, value: Json | undefined): number {
  const inner = one.anyOf ?? one.oneOf;
  if (inner !== undefined) return Math.max(...inner.map((each) => scoreOf(resolved(each), value)));
  if (value === undefined) return 0;
  if (value === null) return one.type === "null" ? 1 : 0;
  if (Array.isArray(value)) return one.type === "array" ? 1 : 0;
  if (typeof value !== "object") return one.type === typeof value ? 1 : 0;
  if (one.properties === undefined) return 0;
  const known = one.properties;
  return Object.entries(value).reduce((sum, [name, member]) => {
    const fixed = known[name]?.const;
    if (fixed !== undefined) return sum + (fixed === member ? 100 : -100);
    return sum + (Object.hasOwn(known, name) ? 1 : -1);
  }, 0);
}

/** The schema at a place of a document, by the variants that its values are of. */
export function schemaAt(document: Json, keys: Keys): Schema | undefined {
  let one: Schema | undefined = installation;
  let value: Json | undefined = document;
  for (const key of keys) {
    one = one === undefined ? undefined : innermost(one, value);
    one = typeof key === "number" ? one?.items : one?.properties?.[key];
    value = (value as Readonly<Record<string | number, Json>> | undefined | null)?.[key];
  }
  return one;
}

function innermost(given: Schema, value: Json | undefined): Schema {
  const one = resolved(given);
  const variants = one.anyOf ?? one.oneOf;
  if (variants === undefined) return one;
  return innermost(variants[variantOf(variants, value)] ?? {}, value);
}

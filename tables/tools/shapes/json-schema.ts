import { toJsonSchema } from "@valibot/to-json-schema";
import type { GenericSchema } from "valibot";
import type { Definitions } from "./definitions.js";

/** A JSON Schema, or a part of one. */
export type JsonSchema = Readonly<Record<string, unknown>>;

const dialect = "https://json-schema.org/draft/2020-12/schema";

/** The JSON Schema of one definition, with all that it refers to. */
export function documentSchema(
  definitions: Definitions,
  type: string,
  head: { readonly $id: string; readonly title: string; readonly description: string },
): JsonSchema {
  const all = schemaOf(definitions, definitionOf(definitions, type));
  const defs = all["$defs"] as Record<string, JsonSchema>;
  const { [type]: own, ...others } = defs;
  return { $schema: dialect, ...own, ...head, $defs: used(others, own) };
}

/** One JSON Schema with the input of each role under the id of the role. */
export function inputsSchema(
  definitions: Definitions,
  types: Readonly<Record<string, string>>,
  head: { readonly $id: string; readonly title: string; readonly description: string },
): JsonSchema & { readonly $defs: Readonly<Record<string, JsonSchema>> } {
  const defs = Object.fromEntries(
    Object.values(types).flatMap((type) =>
      Object.entries(
        schemaOf(definitions, definitionOf(definitions, type))["$defs"] as Record<string, JsonSchema>,
      ),
    ),
  );
  const byRole = Object.fromEntries(
    Object.entries(types).map(([role, type]) => [role, { $ref: `#/$defs/${type}` }]),
  );
  return { $schema: dialect, ...head, $defs: { ...byRole, ...used(defs, byRole) } };
}

/** The same without the code, which a check of the corpus gives apart; what nothing refers to any more is left out. */
export function withoutCode({
  $defs,
  ...head
}: JsonSchema & { readonly $defs: Readonly<Record<string, JsonSchema>> }) {
  const cut = Object.fromEntries(
    Object.entries($defs).map(([name, schema]) => [name, cutCode(schema) as JsonSchema]),
  );
  const roles = Object.fromEntries(Object.entries(cut).filter(([name]) => name.includes("-")));
  return { ...head, $defs: { ...roles, ...used(cut, roles) } };
}

function cutCode(part: unknown): unknown {
  if (Array.isArray(part)) return part.map(cutCode);
  if (typeof part !== "object" || part === null) return part;
  const cut = Object.fromEntries(Object.entries(part).map(([key, value]) => [key, cutCode(value)]));
  const { properties, required } = cut as {
    readonly properties?: Record<string, unknown>;
    readonly required?: string[];
  };
  if (properties === undefined || !("code" in properties)) return cut;
  const { code: _, ...others } = properties;
  return {
    ...cut,
    properties: others,
    ...(required && { required: required.filter((one) => one !== "code") }),
  };
}

function definitionOf({ names }: Definitions, type: string): GenericSchema {
  const found = [...names].find(([, named]) => named.type === type);
  if (found === undefined) throw new Error(`no shape.ts defines ${type}`);
  return found[0];
}

function schemaOf({ all }: Definitions, schema: GenericSchema): JsonSchema {
  return toJsonSchema(schema as never, {
    target: "draft-2020-12",
    ignoreActions: ["finite", "metadata"],
    definitions: Object.fromEntries([...all].map(([one, name]) => [name, one])) as never,
  }) as JsonSchema;
}

/** Of some definitions those that a schema refers to, over others too. */
function used(all: Readonly<Record<string, JsonSchema>>, by: unknown): Readonly<Record<string, JsonSchema>> {
  const found = new Set<string>();
  const visit = (part: unknown): void => {
    for (const [, name = ""] of JSON.stringify(part).matchAll(/"#\/\$defs\/([A-Za-z0-9-]+)"/g)) {
      if (found.has(name) || all[name] === undefined) continue;
      found.add(name);
      visit(all[name]);
    }
  };
  visit(by);
  return Object.fromEntries(Object.entries(all).filter(([name]) => found.has(name)));
}

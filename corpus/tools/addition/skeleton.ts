/** The part of a JSON Schema that a skeleton is made from. */
export interface SchemaNode {
  readonly $ref?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly oneOf?: readonly SchemaNode[];
  readonly anyOf?: readonly SchemaNode[];
  readonly type?: string;
  readonly required?: readonly string[];
  readonly properties?: Readonly<Record<string, SchemaNode>>;
  readonly items?: SchemaNode;
}

/**
 * A document to be filled in: what a schema requires, of several forms the first. What is still open breaks the schema, so that a document
 * that was not filled in is never accepted: texts are empty, numbers 0, and of a choice every member is named.
 */
export function skeletonOf(node: SchemaNode, defs: Readonly<Record<string, SchemaNode>>): unknown {
  if (node.$ref !== undefined) {
    const name = node.$ref.replace("#/$defs/", "");
    const target = defs[name];
    if (target === undefined) throw new Error(`the schema has no definition ${name}`);
    return skeletonOf(target, defs);
  }
  if (node.const !== undefined) return node.const;
  if (node.enum !== undefined) return node.enum.join("|");
  const [first] = node.oneOf ?? node.anyOf ?? [];
  if (first !== undefined) return skeletonOf(first, defs);
  switch (node.type) {
    case "object":
      return Object.fromEntries(
        (node.required ?? []).map((key) => [key, skeletonOf(node.properties?.[key] ?? {}, defs)]),
      );
    case "array":
      return node.items === undefined ? [] : [skeletonOf(node.items, defs)];
    case "number":
    case "integer":
      return 0;
    case "boolean":
      return "true|false";
    default:
      return "";
  }
}

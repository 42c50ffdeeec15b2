import { posix } from "node:path";
import type { GenericSchema } from "valibot";
import { mostOfACount, mostOfAnAmount } from "../../../src/input/limits.js";
import type { DefinedModule, Definitions, Named } from "./definitions.js";
import { type Part, partOf } from "./part.js";

/** Names that a module needs, by the module that exports them. */
type Needed = Map<string, Set<string>>;

/** Writes the types and the shapes of one module. */
export function emitModule({ module, schemas }: DefinedModule, { names }: Definitions): string {
  const types: Needed = new Map();
  const values: Needed = new Map();
  const parts = schemas.map((schema) => {
    const own = names.get(schema) as Named;
    const writer = new Writer(module, names, schema, types, values);
    const text = `${writer.declaration(own)}\n${writer.constant(own)}`;
    return { shape: own.shape, text, needs: writer.needsBefore };
  });
  const source = posix.basename(module).replace(".generated", ".ts");
  return [
    `// Generated from ${source} by "npm run generate"; do not edit.`,
    ...imports(module, types, "import type"),
    ...imports(module, values, "import"),
    `import type { Shape } from "${relative(module, "input/shapes")}";`,
    "",
    ...inOrder(parts),
  ].join("\n");
}

interface Emitted {
  readonly shape: string;
  readonly text: string;
  /** Shapes of the same module that have to stand before it. */
  readonly needs: ReadonlySet<string>;
}

function inOrder(parts: readonly Emitted[]): readonly string[] {
  const done = new Map<string, string>();
  const visit = ({ shape, text, needs }: Emitted): void => {
    if (done.has(shape)) return;
    for (const part of parts) if (needs.has(part.shape)) visit(part);
    done.set(shape, text);
  };
  for (const part of parts) visit(part);
  return [...done.values()];
}

class Writer {
  readonly needsBefore = new Set<string>();

  constructor(
    private readonly module: string,
    private readonly names: ReadonlyMap<GenericSchema, Named>,
    private readonly own: GenericSchema,
    private readonly types: Needed,
    private readonly values: Needed,
  ) {}

  declaration({ type }: Named): string {
    const part = partOf(this.own);
    const doc = docOf(part.description, "");
    return part.bare.type === "strict_object"
      ? `${doc}export interface ${type} ${this.object(part)}\n`
      : `${doc}export type ${type} = ${this.bareType(part)};\n`;
  }

  constant({ shape }: Named): string {
    return `export const ${shape}: Shape = ${this.bareShape(partOf(this.own))};\n`;
  }

  private type(schema: GenericSchema): string {
    const part = partOf(schema);
    const named = this.namedIn(part);
    if (part.hand?.type !== undefined) return this.need(part.hand.type);
    if (named === undefined) return this.bareType(part);
    this.add(this.types, named.module, named.type);
    return named.type;
  }

  private shape(schema: GenericSchema): string {
    const part = partOf(schema);
    if (part.hand?.read !== undefined) {
      const [name, from] = part.hand.read;
      this.add(this.values, from, name);
      return `{ is: "checked", read: ${name} }`;
    }
    const named = this.namedIn(part);
    if (named === undefined) return this.bareShape(part);
    this.add(this.values, named.module, named.shape);
    return named.shape;
  }

  private bareType(part: Part): string {
    const { bare } = part;
    switch (bare.type) {
      case "strict_object":
        return this.object(part);
      case "union":
        return this.union(bare.options as readonly GenericSchema[]);
      case "variant":
        return (bare.options as readonly GenericSchema[]).map((one) => this.type(one)).join(" | ");
      case "array":
        return `readonly (${this.type(bare.item as GenericSchema)})[]`;
      case "nullable":
        return `${this.type(bare.wrapped as GenericSchema)} | null`;
      case "picklist":
        return (bare.options as readonly unknown[]).map((one) => JSON.stringify(one)).join(" | ");
      case "literal":
        return JSON.stringify(bare.literal);
      case "record":
        return "Readonly<Record<string, string>>";
      case "loose_object":
        return "object";
      case "string":
      case "number":
      case "boolean":
        return bare.type;
      default:
        throw new Error(`${this.module}: a type for ${bare.type} is not known`);
    }
  }

  /** Objects without a word that tells them apart: none has the members of another, which the compiler would let pass. */
  private union(options: readonly GenericSchema[]): string {
    const keys = options.map((one) => Object.keys(partOf(one).bare.entries ?? {}));
    return options
      .map((one, i) => {
        const own = keys[i] ?? [];
        const foreign = [...new Set(keys.flat())].filter((key) => !own.includes(key));
        const never = foreign.map((key) => `readonly ${key}?: never`).join("; ");
        return foreign.length === 0 || own.length === 0
          ? this.type(one)
          : `(${this.type(one)} & { ${never} })`;
      })
      .join(" | ");
  }

  private object({ bare }: Part): string {
    const members = Object.entries(bare.entries ?? {}).map(([key, schema]) => {
      const { inner, isOptional } = unwrapped(schema);
      const doc = docOf(partOf(inner).description, "  ");
      const name = /^[a-zA-Z]+$/.test(key) ? key : JSON.stringify(key);
      return `${doc}  readonly ${name}${isOptional ? "?" : ""}: ${this.type(inner)};`;
    });
    return `{\n${members.join("\n")}\n}`;
  }

  private bareShape(part: Part): string {
    const { bare, called, requires } = part;
    const says = JSON.stringify(called ?? part.description ?? "it");
    switch (bare.type) {
      case "strict_object":
        return this.objectShape(bare.entries ?? {});
      case "loose_object":
        this.add(this.values, "input/reader", "readRecord");
        return `{ is: "checked", read: readRecord }`;
      case "union":
      case "variant": {
        const options = (bare.options as readonly GenericSchema[]).map((one) => this.option(one));
        const by = bare.key === undefined ? "" : `by: ${JSON.stringify(bare.key)}, `;
        return `{ is: "variants", ${by}of: [${options.join(", ")}] }`;
      }
      case "array":
        return `{ is: "list", of: ${this.shape(bare.item as GenericSchema)}, least: ${requires["min_length"] ?? 0}, most: ${requires["max_length"]} }`;
      case "nullable":
        return `{ is: "or-null", of: ${this.shape(bare.wrapped as GenericSchema)} }`;
      case "picklist":
        return (bare.options as readonly unknown[]).every((one) => typeof one === "number")
          ? `{ is: "numbers", unit: ${says}, of: ${JSON.stringify(bare.options)} }`
          : `{ is: "words", of: ${JSON.stringify(bare.options)} }`;
      case "literal":
        return `{ is: "exactly", value: ${JSON.stringify(bare.literal)} }`;
      case "number":
        return numberShape(part, says);
      case "boolean":
        return `{ is: "flag", says: ${says} }`;
      case "string":
        return `{ is: ${JSON.stringify("regex" in requires ? "name" : "text")}, says: ${says} }`;
      default:
        throw new Error(`${this.module}: a shape for ${bare.type} is not known`);
    }
  }

  /** Variants hold their objects themselves, because the member that tells them apart is looked at. */
  private option(schema: GenericSchema): string {
    const { bare } = partOf(schema);
    if (bare.type !== "strict_object") throw new Error(`${this.module}: a variant that is ${bare.type}`);
    return this.objectShape(bare.entries ?? {});
  }

  private objectShape(entries: Readonly<Record<string, GenericSchema>>): string {
    const open = Object.entries(entries).filter(([, schema]) => unwrapped(schema).isOptional);
    const members = Object.entries(entries).map(
      ([key, schema]) => `${JSON.stringify(key)}: ${this.shape(unwrapped(schema).inner)}`,
    );
    const optional = open.length === 0 ? "" : `, optional: ${JSON.stringify(open.map(([key]) => key))}`;
    return `{ is: "object", members: { ${members.join(", ")} }${optional} }`;
  }

  private namedIn({ from }: Part): Named | undefined {
    const found = from.find((one) => one !== this.own && this.names.has(one));
    return found && this.names.get(found);
  }

  private need([name, from, expression]: readonly [string, string, string?]): string {
    this.add(this.types, from, name);
    return expression ?? name;
  }

  private add(needed: Needed, from: string, name: string): void {
    if (from === this.module) {
      if (needed === this.values) this.needsBefore.add(name);
      return;
    }
    needed.set(from, (needed.get(from) ?? new Set()).add(name));
  }
}

/** A count and a number above zero have limits of their own, which every message about them says in the same words. */
function numberShape({ requires, advice }: Part, unit: string): string {
  const { min_value: least, max_value: most } = requires;
  const isWhole = "integer" in requires;
  const whole = isWhole ? ", whole: true" : "";
  const isPlain = most === (isWhole ? mostOfACount : mostOfAnAmount);
  const orZero = !isWhole && least === 0 ? ", orZero: true" : "";
  if (isPlain) return `{ is: "number", unit: ${unit}${whole}${orZero} }`;
  const advised = advice === undefined ? "" : `, advice: ${JSON.stringify(advice)}`;
  return `{ is: "between", unit: ${unit}, least: ${least}, most: ${most}${whole}${advised} }`;
}

/** What an optional member holds. */
function unwrapped(schema: GenericSchema): { readonly inner: GenericSchema; readonly isOptional: boolean } {
  const { bare } = partOf(schema);
  return bare.type === "optional"
    ? { inner: bare.wrapped as GenericSchema, isOptional: true }
    : { inner: schema, isOptional: false };
}

function docOf(description: string | undefined, indent: string): string {
  return description === undefined ? "" : `${indent}/** ${description} */\n`;
}

function imports(module: string, needed: Needed, keyword: string): readonly string[] {
  return [...needed]
    .sort()
    .map(
      ([from, names]) => `${keyword} { ${[...names].sort().join(", ")} } from "${relative(module, from)}";`,
    );
}

function relative(module: string, to: string): string {
  const path = posix.relative(posix.dirname(module), to);
  return `${path.startsWith(".") ? path : `./${path}`}.js`;
}

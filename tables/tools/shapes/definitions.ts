import { readdirSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";
import type { GenericSchema } from "valibot";
import { partOf } from "./part.js";

/** A definition that has a name, because a module exports it. */
export interface Named {
  /** Name of the type, for example `SupplySet`. */
  readonly type: string;
  /** Name of the shape, for example `supplySetShape`. */
  readonly shape: string;
  /** The generated module, below `src`, without ending. */
  readonly module: string;
}

/** A module that defines shapes, and what it defines, in its order. */
export interface DefinedModule {
  readonly module: string;
  readonly schemas: readonly GenericSchema[];
}

/** All definitions of the library. */
export interface Definitions {
  readonly modules: readonly DefinedModule[];
  /** Those whose types and shapes are generated. */
  readonly names: ReadonlyMap<GenericSchema, Named>;
  /** Names of all, for the JSON Schemas. */
  readonly all: ReadonlyMap<GenericSchema, string>;
}

const src = fileURLToPath(new URL("../../../src/", import.meta.url));

/** Every file named shape.ts below src, with the definitions that it exports and whose type is not written by hand. */
export async function loadDefinitions(): Promise<Definitions> {
  const paths = readdirSync(src, { recursive: true, encoding: "utf8" })
    .map((path) => path.replaceAll("\\", "/"))
    .filter((path) => path === "shape.ts" || path.endsWith("/shape.ts"))
    .sort();
  const names = new Map<GenericSchema, Named>();
  const all = new Map<GenericSchema, string>();
  const modules: DefinedModule[] = [];
  for (const path of paths) {
    const module = path.replace(/\.ts$/, ".generated");
    const exported = (await import(pathToFileURL(src + path).href)) as Readonly<Record<string, unknown>>;
    const exportedSchemas = Object.entries(exported).flatMap(([name, value]) =>
      isSchema(value) && partOf(value).bare.type !== "optional" ? [{ name, value }] : [],
    );
    for (const { name, value } of exportedSchemas) all.set(value, pascal(name));
    const own = exportedSchemas.filter(({ value }) => partOf(value).hand?.type === undefined);
    if (own.length === 0) continue;
    for (const { name, value } of own) {
      names.set(value, {
        type: pascal(name),
        shape: `${name}Shape`,
        module,
      });
    }
    modules.push({ module, schemas: own.map(({ value }) => value) });
  }
  return { modules, names, all };
}

function isSchema(value: unknown): value is GenericSchema {
  return typeof value === "object" && value !== null && "kind" in value && value.kind === "schema";
}

function pascal(name: string): string {
  return `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
}

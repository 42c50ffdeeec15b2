import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** Ids of the tables that no rule of their own reads: those whose file says so. */
export function plainTables(folder: string): readonly string[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(".json"))
    .filter((name) => schemaOf(join(folder, name)) === "./schema/plain-table.schema.json")
    .map((name) => name.slice(0, -".json".length))
    .sort();
}

function schemaOf(path: string): string {
  return (JSON.parse(readFileSync(path, "utf8")) as { readonly $schema?: string }).$schema ?? "";
}

import { readdirSync, readFileSync } from "node:fs";
import { join, posix } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";

/** Holds data against one schema of a folder of tables, by the schema's path from it; what is wrong, place by place. */
export type SchemaFaults = (schema: string, data: unknown) => readonly string[];

/** The schemas of a folder of tables, which name each other by file. */
export function readSchemas(folder: string): SchemaFaults {
  const ajv = new Ajv2020({ allErrors: true, allowUnionTypes: true, strictTuples: false });
  for (const name of readdirSync(join(folder, "schema")))
    ajv.addSchema(JSON.parse(readFileSync(join(folder, "schema", name), "utf8")) as object, name);
  return (schema, data) =>
    ajv.validate(posix.basename(schema), data)
      ? []
      : (ajv.errors ?? []).map(({ instancePath, message }) => `${instancePath || "/"}: ${message}`);
}

import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import { shapeFaults } from "../runner/shape-faults.js";
import { supplyFaults } from "./faults.js";
import type { SupplyCheckFile } from "./model.js";

const corpus = new URL("../../", import.meta.url);

/** What the files of supply checks hold, by file name, not yet believed. */
export function readSupplyChecks(): ReadonlyMap<string, unknown> {
  const folder = new URL("supply/", corpus);
  const names = readdirSync(fileURLToPath(folder)).filter((name) => name.endsWith(".json"));
  return new Map(names.sort().map((name) => [name, parse(new URL(name, folder))]));
}

/** Files that passed their validation, and what is wrong with those that did not. */
export interface ValidSupplyChecks {
  readonly files: readonly SupplyCheckFile[];
  readonly faults: readonly string[];
}

// To compile the schema takes far longer than to hold a file against it.
let isFile: ValidateFunction<SupplyCheckFile> | undefined;

/** Checks the shape of every file, then what a schema cannot see. */
export function validateSupplyChecks(documents: ReadonlyMap<string, unknown>): ValidSupplyChecks {
  isFile ??= compile();
  const faults: string[] = [];
  const files: SupplyCheckFile[] = [];
  for (const [name, content] of documents) {
    if (!isFile(content)) faults.push(...shapeFaults(name, isFile.errors ?? [], content));
    else if (name !== `${content.id}.json`) faults.push(`${name}: holds ${content.id}`);
    else files.push(content);
  }
  return { files, faults: [...faults, ...supplyFaults(files)] };
}

function compile(): ValidateFunction<SupplyCheckFile> {
  const ajv = new Ajv2020({
    strict: true,
    strictRequired: false,
    strictTypes: false,
    allowUnionTypes: true,
    allErrors: true,
  });
  const editions = new URL("../tables/schema/editions.schema.json", corpus);
  ajv.addSchema(parse(editions) as object, "file:///tables/schema/editions.schema.json");
  const schema = parse(new URL("schema/supply-checks.schema.json", corpus)) as object;
  return ajv.compile({ ...schema, $id: "file:///corpus/schema/supply-checks.schema.json" });
}

function parse(file: URL): unknown {
  return JSON.parse(readFileSync(file, "utf8"));
}

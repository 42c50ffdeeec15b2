import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import { shapeFaults } from "../runner/shape-faults.js";
import { installationFaults } from "./faults.js";
import type { InstallationCheckFile } from "./model.js";

const corpus = new URL("../../", import.meta.url);

/** What the files of installations hold, by file name, not yet believed. */
export function readInstallationChecks(): ReadonlyMap<string, unknown> {
  const folder = new URL("installations/", corpus);
  const names = readdirSync(fileURLToPath(folder)).filter((name) => name.endsWith(".json"));
  return new Map(names.sort().map((name) => [name, parse(new URL(name, folder))]));
}

/** Files that passed their validation, and what is wrong with those that did not. */
export interface ValidInstallationChecks {
  readonly files: readonly InstallationCheckFile[];
  readonly faults: readonly string[];
}

// To compile the schema takes far longer than to hold a file against it.
let isFile: ValidateFunction<InstallationCheckFile> | undefined;

/** Checks the shape of every file, then what a schema cannot see. */
export function validateInstallationChecks(documents: ReadonlyMap<string, unknown>): ValidInstallationChecks {
  isFile ??= compile();
  const faults: string[] = [];
  const files: InstallationCheckFile[] = [];
  for (const [name, content] of documents) {
    if (!isFile(content)) faults.push(...shapeFaults(name, isFile.errors ?? [], content));
    else if (name !== `${content.id}.json`) faults.push(`${name}: holds ${content.id}`);
    else files.push(content);
  }
  return { files, faults: [...faults, ...installationFaults(files)] };
}

function compile(): ValidateFunction<InstallationCheckFile> {
  const ajv = new Ajv2020({ strict: true, strictRequired: false, strictTypes: false, allErrors: true });
  const editions = new URL("../tables/schema/editions.schema.json", corpus);
  ajv.addSchema(parse(editions) as object, "file:///tables/schema/editions.schema.json");
  const schema = parse(new URL("schema/installation-checks.schema.json", corpus)) as object;
  return ajv.compile({ ...schema, $id: "file:///corpus/schema/installation-checks.schema.json" });
}

function parse(file: URL): unknown {
  return JSON.parse(readFileSync(file, "utf8"));
}

import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Ajv2020 } from "ajv/dist/2020.js";
import type { ReferenceFile } from "./model.js";

const here = new URL("../../references/", import.meta.url);

/** What the files of general references hold, by file name, not yet believed. */
export function readReferences(): ReadonlyMap<string, unknown> {
  const names = readdirSync(fileURLToPath(here)).filter((name) => name.endsWith(".json"));
  return new Map(names.sort().map((name) => [name, parse(new URL(name, here))]));
}

/** General references that passed their validation, and what is wrong with those that did not. */
export interface ValidReferences {
  readonly files: readonly ReferenceFile[];
  readonly faults: readonly string[];
}

/** Checks the shape of every file, its name, and that ids come once within it. */
export function validateReferences(documents: ReadonlyMap<string, unknown>): ValidReferences {
  // What a condition requires is declared beside it, not within it.
  const ajv = new Ajv2020({ strict: true, strictRequired: false, strictTypes: false, allErrors: true });
  const schema = parse(new URL("../schema/references.schema.json", here)) as object;
  const isReferenceFile = ajv.compile<ReferenceFile>(schema);
  const faults: string[] = [];
  const files: ReferenceFile[] = [];
  for (const [name, content] of documents) {
    if (!isReferenceFile(content)) {
      const errors = isReferenceFile.errors ?? [];
      faults.push(...errors.map(({ instancePath, message }) => `${name}${instancePath}: ${message}`));
    } else if (name !== `${content.id}.json`) faults.push(`${name}: holds ${content.id}`);
    else {
      const ids = content.groups.map(({ id }) => id);
      const twice = ids.filter((id, index) => ids.indexOf(id) !== index);
      faults.push(...twice.map((id) => `${name}: two groups are called ${id}`));
      files.push(content);
    }
  }
  return { files, faults };
}

function parse(file: URL): unknown {
  return JSON.parse(readFileSync(file, "utf8"));
}

import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Documents } from "./validate.js";

const repository = new URL("../../../", import.meta.url);

/** Reads the corpus, its schemas, the register of sources and what the tables, the general references, the installations and the supplies name of it. */
export function readDocuments(root: URL = repository): Documents {
  const corpus = new URL("corpus/", root);
  const references = new URL("corpus/references/", root);
  const installations = new URL("corpus/installations/", root);
  const supplies = new URL("corpus/supply/", root);
  const tables = new URL("tables/", root);
  const copies = new URL("copies/", tables);
  const extracts = new URL("extracts/", tables);
  const fromTables = jsonFiles(tables).filter((name) => name !== "sources.json");
  const named = [
    ...fromTables.map((name) => new URL(name, tables)),
    ...jsonFiles(copies).map((name) => new URL(name, copies)),
    ...jsonFiles(extracts).map((name) => new URL(name, extracts)),
    ...jsonFiles(references).map((name) => new URL(name, references)),
    ...jsonFiles(installations).map((name) => new URL(name, installations)),
    ...jsonFiles(supplies).map((name) => new URL(name, supplies)),
  ];
  return {
    files: new Map(jsonFiles(corpus).map((name) => [name, parse(new URL(name, corpus))])),
    sources: parse(new URL("sources.json", tables)),
    checksSchema: parse(new URL("schema/checks.schema.json", corpus)) as object,
    inputsSchema: parse(new URL("schema/inputs.schema.json", corpus)) as object,
    sourcesSchema: parse(new URL("schema/sources.schema.json", corpus)) as object,
    editionsSchema: parse(new URL("schema/editions.schema.json", tables)) as object,
    namedByTables: named.flatMap((file) => sourcesNamedIn(parse(file))),
  };
}

/** Every id called `source` or `datedBy`, or in a list called `sources`, wherever a table, a copy, an extract, a general reference, an installation or a supply keeps its evidence. */
function sourcesNamedIn(value: unknown): readonly string[] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => {
    if ((key === "source" || key === "datedBy") && typeof inner === "string") return [inner];
    return key === "sources" && Array.isArray(inner) ? inner.map(String) : sourcesNamedIn(inner);
  });
}

function jsonFiles(folder: URL): readonly string[] {
  return readdirSync(fileURLToPath(folder))
    .filter((name) => name.endsWith(".json") && name !== "datapackage.json")
    .sort();
}

function parse(file: URL): unknown {
  return JSON.parse(readFileSync(file, "utf8"));
}

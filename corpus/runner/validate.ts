import { Ajv2020, type ErrorObject, type ValidateFunction } from "ajv/dist/2020.js";
import { type CheckFile, type Corpus, mistakes, type Sources } from "./model.js";
import { referenceFaults } from "./references.js";

/** A corpus as it lies in its files, not yet believed. */
export interface Documents {
  /** File name to content. */
  readonly files: ReadonlyMap<string, unknown>;
  readonly sources: unknown;
  readonly checksSchema: object;
  readonly sourcesSchema: object;
  /** Ids of sources that the tables and the general references name as their evidence. */
  readonly namedByTables: readonly string[];
}

/** What is wrong with a corpus, and the corpus itself unless a file has lost its shape. */
export interface Validated {
  readonly corpus: Corpus | null;
  readonly faults: readonly string[];
}

/** Checks the shape of every file, then the references between them. */
export function validate(documents: Documents): Validated {
  const ajv = new Ajv2020({ strict: true, allErrors: true });
  const isCheckFile = ajv.compile<CheckFile>(documents.checksSchema);
  const isSources = ajv.compile<Sources>(documents.sourcesSchema);
  const faults: string[] = [];
  const files: CheckFile[] = [];

  for (const [name, content] of documents.files) {
    if (!isCheckFile(content)) faults.push(...shapeFaults(name, isCheckFile, content));
    else if (name !== `${content.role}.json`) faults.push(`${name}: holds the role ${content.role}`);
    else files.push(content);
  }
  const { sources } = documents;
  if (!isSources(sources))
    return { corpus: null, faults: [...faults, ...shapeFaults("sources", isSources, sources)] };
  // A file without its shape would make its sources look like orphans.
  if (faults.length > 0) return { corpus: null, faults };

  const corpus: Corpus = { files, sources };
  return { corpus, faults: referenceFaults(corpus, documents.namedByTables) };
}

function shapeFaults(name: string, { errors }: ValidateFunction, content: unknown): readonly string[] {
  return (errors ?? []).map((error) => {
    const id = checkIdAt(content, error.instancePath);
    const place = `${name}${error.instancePath}${id === null ? "" : ` (${id})`}`;
    return `${place}: ${error.message}${detail(error)}`;
  });
}

function detail({ params }: ErrorObject): string {
  if (params["missingProperty"] === "mistake") return `: one of ${mistakes.join(", ")}, or null`;
  const named: unknown = params["additionalProperty"] ?? params["allowedValues"] ?? params["allowedValue"];
  return named === undefined ? "" : ` (${String(named)})`;
}

/** A place in a file is a row of numbers; the id of the check in it is what a reader looks for. */
function checkIdAt(content: unknown, path: string): string | null {
  const indexes = /^\/groups\/(\d+)\/checks\/(\d+)(?:\/|$)/.exec(path);
  if (indexes === null) return null;
  const [, group = "", check = ""] = indexes;
  const { groups } = content as { readonly groups: readonly { readonly checks: readonly unknown[] }[] };
  const { id } = (groups[Number(group)]?.checks[Number(check)] ?? {}) as { readonly id?: unknown };
  return typeof id === "string" ? id : null;
}

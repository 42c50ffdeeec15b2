import { Ajv2020, type ErrorObject, type ValidateFunction } from "ajv/dist/2020.js";
import type { CheckFile, Corpus, Sources } from "./model.js";
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
    if (!isCheckFile(content)) faults.push(...shapeFaults(name, isCheckFile));
    else if (name !== `${content.role}.json`) faults.push(`${name}: holds the role ${content.role}`);
    else files.push(content);
  }
  const { sources } = documents;
  if (!isSources(sources)) return { corpus: null, faults: [...faults, ...shapeFaults("sources", isSources)] };
  // A file without its shape would make its sources look like orphans.
  if (faults.length > 0) return { corpus: null, faults };

  const corpus: Corpus = { files, sources };
  return { corpus, faults: referenceFaults(corpus, documents.namedByTables) };
}

function shapeFaults(name: string, { errors }: ValidateFunction): readonly string[] {
  return (errors ?? []).map((error) => `${name}${error.instancePath}: ${error.message}${detail(error)}`);
}

function detail({ params }: ErrorObject): string {
  const named: unknown = params["additionalProperty"] ?? params["allowedValues"] ?? params["allowedValue"];
  return named === undefined ? "" : ` (${String(named)})`;
}

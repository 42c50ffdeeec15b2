import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import type { Sources } from "../../../tables/tools/source.js";
import type { CheckFile, Corpus } from "./model.js";
import { referenceFaults } from "./references.js";
import { shapeFaults } from "./shape-faults.js";

/** A corpus as it lies in its files, not yet believed. */
export interface Documents {
  /** File name to content. */
  readonly files: ReadonlyMap<string, unknown>;
  readonly sources: unknown;
  readonly checksSchema: object;
  readonly sourcesSchema: object;
  /** The list of editions that the schema of the checks refers to. */
  readonly editionsSchema: object;
  /** The inputs of the checks by role. */
  readonly inputsSchema: object;
  /** Ids of sources that the tables, the general references, the installations and the supplies name as their evidence. */
  readonly namedByTables: readonly string[];
}

/** What is wrong with a corpus, and the corpus itself unless a file has lost its shape. */
export interface Validated {
  readonly corpus: Corpus | null;
  readonly faults: readonly string[];
}

/** The two schemas, compiled. */
export interface Shapes {
  readonly isCheckFile: ValidateFunction<CheckFile>;
  readonly isSources: ValidateFunction<Sources>;
}

// To compile a schema takes far longer than to hold a file against it, and the tests do the latter many times.
const compiled = new Map<string, Shapes>();

/** Compiles the schemas, once for the same. */
export function shapesOf({
  checksSchema,
  sourcesSchema,
  editionsSchema,
  inputsSchema,
}: Pick<Documents, "checksSchema" | "sourcesSchema" | "editionsSchema" | "inputsSchema">): Shapes {
  const key = JSON.stringify([checksSchema, sourcesSchema, editionsSchema, inputsSchema]);
  const shapes = compiled.get(key) ?? compile(checksSchema, sourcesSchema, editionsSchema, inputsSchema);
  compiled.set(key, shapes);
  return shapes;
}

/** The schema of the checks names those of the editions and of the inputs as they are seen from its own folder. */
function compile(checks: object, sources: object, editions: object, inputs: object): Shapes {
  const ajv = new Ajv2020({
    strict: true,
    allErrors: true,
    allowUnionTypes: true,
    strictRequired: false,
    strictTypes: false,
  });
  ajv.addSchema({ ...inputs, $id: "file:///corpus/schema/inputs.schema.json" });
  ajv.addSchema(editions, "file:///tables/schema/editions.schema.json");
  return {
    isCheckFile: ajv.compile<CheckFile>({ ...checks, $id: "file:///corpus/schema/checks.schema.json" }),
    isSources: ajv.compile<Sources>(sources),
  };
}

/** Checks the shape of every file, then the references between them. */
export function validate(documents: Documents): Validated {
  const { isCheckFile, isSources } = shapesOf(documents);
  const faults: string[] = [];
  const files: CheckFile[] = [];

  for (const [name, content] of documents.files) {
    if (!isCheckFile(content)) faults.push(...shapeFaults(name, isCheckFile.errors ?? [], content));
    else if (name !== `${content.role}.json`) faults.push(`${name}: holds the role ${content.role}`);
    else files.push(content);
  }
  const { sources } = documents;
  if (!isSources(sources))
    return { corpus: null, faults: [...faults, ...shapeFaults("sources", isSources.errors ?? [], sources)] };
  // A file without its shape would make its sources look like orphans.
  if (faults.length > 0) return { corpus: null, faults };

  const corpus: Corpus = { files, sources };
  return { corpus, faults: referenceFaults(corpus, documents.namedByTables) };
}

import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import { type Role, roleIds } from "../../../src/index.js";
import { formatted } from "../../../tables/tools/generator/format.js";
import { type CheckFile, type Standing, standings } from "../runner/model.js";
import { readDocuments } from "../runner/read.js";
import { addCheck } from "./add-check.js";
import { draftOf } from "./draft.js";
import { writeAll } from "./write-all.js";

/** What the command has to say, and the code that it exits with. */
export interface Outcome {
  readonly lines: readonly string[];
  readonly exitCode: 0 | 1 | 2;
}

const usage = [
  "usage: npm run corpus:add -- DRAFT.json --role ROLE --source ID [--standing STANDING]   writes a draft to fill in",
  "       npm run corpus:add -- DRAFT.json                                                 adds the draft to the corpus",
];

/** Writes a draft, or adds one to the corpus below `root`. What is refused leaves every file as it was. */
export function addToCorpus(root: string, args: readonly string[]): Outcome {
  const text = { type: "string" } as const;
  let parsed: ReturnType<typeof parse>;
  try {
    parsed = parse();
  } catch (error) {
    return misused(String(error instanceof Error ? error.message : error));
  }
  const { positionals, values } = parsed;
  const [path, ...more] = positionals;
  if (path === undefined || more.length > 0) return misused("name one file for the draft");
  const { role, source, standing } = values;
  if (role === undefined && source === undefined && standing === undefined) return add(root, path);
  if (!isOneOf(roleIds, role)) return misused(`--role: expected one of ${roleIds.join(", ")}`);
  if (source === undefined) return misused("--source: expected an id of tables/sources.json, or a new one");
  if (standing !== undefined && !isOneOf(standings, standing))
    return misused(`--standing: expected one of ${standings.join(", ")}`);
  return writeDraft(root, path, role, source, standing ?? "cited");

  function parse() {
    const options = { role: text, source: text, standing: text } as const;
    return parseArgs({ args: [...args], options, allowPositionals: true });
  }
}

function writeDraft(root: string, path: string, role: Role, source: string, standing: Standing): Outcome {
  if (existsSync(path)) return refused(`${path} is there already`);
  const documents = readDocuments(pathToFileURL(join(root, "/")));
  const draft = draftOf({ role, source, standing }, documents);
  const { flags } = documents.files.get(`${role}.json`) as CheckFile;
  writeFileSync(path, formatted("draft.json", JSON.stringify(draft)));
  return {
    exitCode: 0,
    lines: [
      `written: ${path}. Fill in what is empty, choose where members are named with | between them, and add optional keys as in corpus/${role}.json.`,
      `An empty id is numbered after the source. Flags of this file: ${Object.keys(flags).join(", ")}; a new one goes into a member "flags" with kind, why and consequence.`,
      `then: npm run corpus:add -- ${path}`,
    ],
  };
}

function add(root: string, path: string): Outcome {
  let addition: unknown;
  try {
    addition = JSON.parse(readFileSync(path, "utf8"));
  } catch (error) {
    return refused(`${path}: cannot be read as JSON: ${error instanceof Error ? error.message : error}`);
  }
  const added = addCheck(readDocuments(pathToFileURL(join(root, "/"))), addition);
  if ("faults" in added) return refused(...added.faults.map((fault) => `${path}: ${fault}`));
  const texts = [...added.files].map(
    ([file, content]) => [file, formatted(file, JSON.stringify(content, null, 2))] as const,
  );
  writeAll(root, new Map(texts));
  const { source } = addition as { readonly source: string };
  return {
    exitCode: 0,
    lines: [
      `added: ${added.id}, in ${texts.map(([file]) => file).join(" and ")}`,
      `next: npm run corpus -- --source ${source}; if it misses, find out which side is right before anything is changed`,
      "then: npm run corpus:assumed; a cited answer that moves with what is assumed is arithmetic",
      "then: npm run wrong-programs -- --settle && npm run pages && npm run changeset",
    ],
  };
}

function isOneOf<T extends string>(members: readonly T[], given: string | undefined): given is T {
  return members.some((member) => member === given);
}

function refused(...lines: readonly string[]): Outcome {
  return { exitCode: 1, lines: ["Refused, and nothing was written:", ...lines] };
}

function misused(line: string): Outcome {
  return { exitCode: 2, lines: [line, ...usage] };
}

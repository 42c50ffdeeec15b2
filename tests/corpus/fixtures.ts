import type { Answer, Implementation } from "../../corpus/tools/runner/answer.js";
import type { Check, CheckFile, Entry } from "../../corpus/tools/runner/model.js";
import { readDocuments } from "../../corpus/tools/runner/read.js";
import { type Documents, validate } from "../../corpus/tools/runner/validate.js";
import type { Source } from "../../tables/tools/source.js";

/** A sound check; tests break it in one place. */
export const check: Check<"main-bonding-jumper"> = {
  id: "one-service",
  stated: "2017",
  holds: ["2017"],
  flags: ["basic-row"],
  input: {
    supply: { sets: [{ count: 1, size: "3/0 AWG", material: "copper" }] },
    conductor: { material: "copper" },
  },
  expect: { size: "4 AWG" },
  figures: { sum: 167800 },
  locator: "page 1",
  standing: "cited",
  voice: "author",
  assumed: [],
};

/** The same check with a source that is not believed. */
export const disputed: Check<"main-bonding-jumper"> = {
  ...check,
  standing: "disputed",
  expect: { size: "6 AWG" },
  dispute: {
    section: "Table 250.102(C)(1)",
    mistake: "wrong-row",
    readings: ["one row too low", "the row of 3/0 AWG"],
    reason: "The table was misread.",
    expectByText: { size: "4 AWG" },
  },
};

/** A source that nothing is wrong with. */
export const source: Source = {
  title: "A handbook",
  publisher: "A publisher",
  url: "https://example.org/handbook",
  date: null,
  kind: "handbook",
  copies: null,
  seen: "whole",
};

const { checksSchema, sourcesSchema, editionsSchema, inputsSchema } = readDocuments();

/** A corpus of one file with these checks, and what is to be otherwise about it. */
export function documentsOf(checks: readonly object[], otherwise: Partial<Documents> = {}): Documents {
  return {
    files: new Map([["main-bonding-jumper.json", fileOf(checks)]]),
    sources: { handbook: source },
    checksSchema,
    sourcesSchema,
    editionsSchema,
    inputsSchema,
    namedByTables: [],
    ...otherwise,
  };
}

/** A file of one group. */
export function fileOf(checks: readonly object[]): object {
  const file: Omit<CheckFile, "groups"> & Readonly<Record<string, unknown>> = {
    $schema: "./schema/checks.schema.json",
    version: 1,
    role: "main-bonding-jumper",
    count: checks.length,
    flags: { "basic-row": { kind: "basic", why: "One row.", consequence: "A wrong row." } },
    groups: [{ source: "handbook", checks }],
  };
  return file;
}

/** The register with a second source of its own. */
export function sourcesWith(id: string, changes: Readonly<Record<string, unknown>> = {}): object {
  return { handbook: source, [id]: { ...source, ...changes } };
}

/** The faults of a corpus. */
export function faultsOf(documents: Documents): readonly string[] {
  return validate(documents).faults;
}

/** A check in its place. */
export function entryOf(one: Check): Entry {
  return { role: "main-bonding-jumper", source: "handbook", check: one };
}

/** An implementation that answers every question alike. */
export function answering(answer: Answer): Implementation {
  return () => answer;
}

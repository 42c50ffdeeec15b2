import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import {
  type AnyRole,
  editionYears,
  fingerprintOf,
  readInstallation,
  roles,
  scheduleOf,
  version,
} from "bondmil";
import { installationEntriesOf } from "../corpus/tools/installations/model.js";
import { readInstallationChecks, validateInstallationChecks } from "../corpus/tools/installations/read.js";
import { runInstallations } from "../corpus/tools/installations/run.js";
import { library } from "../corpus/tools/runner/library.js";
import { entriesOf } from "../corpus/tools/runner/model.js";
import { readDocuments } from "../corpus/tools/runner/read.js";
import { runChecks } from "../corpus/tools/runner/run-checks.js";
import { validate } from "../corpus/tools/runner/validate.js";
import { supplyEntriesOf } from "../corpus/tools/supply/model.js";
import { readSupplyChecks, validateSupplyChecks } from "../corpus/tools/supply/read.js";
import { runSupplies } from "../corpus/tools/supply/run.js";
import { gridOf } from "../src/asking/grid.js";
import { plainly } from "../src/asking/plainly.js";

/** Digests of what a version gives; the same on every machine. */
export interface Results {
  readonly version: string;
  /** The tables as they are printed: digests of the CSV files. */
  readonly tables: Readonly<Record<string, string>>;
  readonly corpus: { readonly checks: number; readonly missed: number; readonly digest: string };
  /** How many sizings the grid has. */
  readonly sizings: number;
  /** Every result of a role under an edition, over its whole grid. */
  readonly grid: Readonly<Record<string, Readonly<Record<string, string>>>>;
  /** The schedules of the sample installations. */
  readonly schedules: Readonly<Record<string, string>>;
}

/** Runs the tables, the corpus, the grid and the sample schedules. */
export function resultsOf(): Results {
  const { grid, sizings } = theGrid();
  return { version, tables: tables(), corpus: corpus(), sizings, grid, schedules: schedules() };
}

function tables(): Results["tables"] {
  const folder = new URL("../tables/csv/", import.meta.url);
  return Object.fromEntries(
    readdirSync(folder)
      .sort()
      .map((name) => [name, digestOf([readFileSync(new URL(name, folder), "utf8")])]),
  );
}

function corpus(): Results["corpus"] {
  const { corpus: valid, faults } = validate(readDocuments());
  const { files, faults: ofInstallations } = validateInstallationChecks(readInstallationChecks());
  const supplies = validateSupplyChecks(readSupplyChecks());
  const wrong = [...faults, ...ofInstallations, ...supplies.faults];
  if (valid === null || wrong.length > 0) throw new Error(`The corpus is not valid:\n${wrong.join("\n")}`);
  const rows: readonly { readonly verdict: string }[] = [
    ...runChecks(entriesOf(valid), library),
    ...runInstallations(installationEntriesOf(files)),
    ...runSupplies(supplyEntriesOf(supplies.files)),
  ];
  return {
    checks: rows.length,
    missed: rows.filter(({ verdict }) => verdict !== "met").length,
    digest: digestOf(rows.map((row) => JSON.stringify(row))),
  };
}

function theGrid(): Pick<Results, "grid" | "sizings"> {
  let sizings = 0;
  const grid = Object.values(roles).map((role: AnyRole) => [
    role.id,
    Object.fromEntries(
      editionYears.map((year) => {
        const lines = gridOf(role, { year } as never).map(({ name, question }) => {
          sizings++;
          return `${name} ${JSON.stringify(role.decide(plainly(role, question)))}`;
        });
        return [year, digestOf(lines)];
      }),
    ),
  ]);
  return { grid: Object.fromEntries(grid), sizings };
}

function schedules(): Results["schedules"] {
  const folder = new URL("../docs/installations/", import.meta.url);
  return Object.fromEntries(
    readdirSync(folder)
      .filter((name) => name.endsWith(".json"))
      .sort()
      .map((name) => [
        name,
        fingerprintOf(scheduleOf(readInstallation(readFileSync(new URL(name, folder), "utf8")))),
      ]),
  );
}

function digestOf(lines: readonly string[]): string {
  const hash = createHash("sha256");
  for (const line of lines) hash.update(`${line}\n`);
  return hash.digest("hex").slice(0, 32);
}

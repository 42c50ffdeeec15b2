import { roleIds } from "../edition/tables/roles.generated.js";
import { wrapped } from "../report/render/text-table.js";
import { exitCodes } from "./exit-codes.js";
import type { Operand, OptionFact, SubcommandFact } from "./facts/fact.js";
import { subcommands } from "./subcommands.js";

const indent = "  ";
const shortest = 8;

/**
 * What the command as a whole is for.
 *
 * @param width - in letters
 * @param home - the folder of the package, in which papers are named
 */
export function generalHelp(width: number, home: string): string {
  return [
    ...wrapped(
      "bondmil names the bonding and grounding conductors of services and separately derived systems under the US National Electrical Code (NFPA 70), editions 2008 to 2026. It takes an installation, one JSON document that says what is there, or sizes single conductors.",
      width,
    ),
    ...part("Begin with"),
    ...firstSteps.flatMap(([line, says]) => described(line, says, width)),
    ...part("Use"),
    `${indent}bondmil <subcommand> [file.json] [options]`,
    `${indent}bondmil <subcommand> --help`,
    `${indent}bondmil --version`,
    "",
    ...wrapped("Without a path, or with - for one, the installation is read from standard input.", width),
    ...part("Subcommands"),
    ...subcommands.flatMap(({ name, says }) => described(name, says, width)),
    ...part("To read"),
    ...papers.flatMap(([file, says]) => described(`${home}/${file}`, says, width)),
    ...part("Exit codes"),
    ...Object.values(exitCodes).flatMap(({ code, means }) => described(`${code}`, means, width)),
    "",
    ...wrapped(
      "Output goes to standard output, everything else to standard error. Color is used on a terminal only, and not where NO_COLOR is set. Sizes are minimums of the edition that the installation names; local amendments and the authority having jurisdiction decide.",
      width,
    ),
  ].join("\n");
}

/** How somebody who has nothing yet comes to a schedule. */
const firstSteps = [
  ["bondmil begin shop.json --edition 2020", "writes a first installation, to be edited"],
  ["bondmil schedule shop.json", "names its conductors"],
  ["bondmil report shop.json > shop.html", "writes the report for a plan reviewer"],
] as const;

/** What comes with the package. */
const papers = [
  ["docs/installation.md", "the installation, from one disconnect to a building"],
  ["docs/schema/installation.schema.json", "its schema, for editors"],
  ["docs/installations/shop.json", "a whole one"],
  ["docs/command.md", "all of this, and how a stream is divided"],
] as const;

/** What a subcommand is for, with its options and examples. */
export function subcommandHelp(
  { name, says, takes, more, options, examples }: SubcommandFact,
  width: number,
): string {
  return [
    ...wrapped(says, width),
    ...part("Use"),
    `${indent}bondmil ${name}${takes.map((one) => ` ${operands[one]}`).join("")} [options]`,
    "",
    ...more.flatMap((one) => wrapped(one, width)),
    ...(takes.includes("role") ? ["", ...wrapped(`Roles: ${roleIds.join(", ")}.`, width)] : []),
    ...part("Options"),
    ...options.flatMap((one) => described(written(one), meaningOf(one), width)),
    ...part("Examples"),
    ...examples.flatMap(([line, meaning]) => described(line, meaning, width)),
  ].join("\n");
}

const operands: { readonly [One in Operand]: string } = {
  role: "<role>",
  installation: "[file.json]",
  question: "[file.json]",
  input: "[file.json]",
  "new-file": "[new-file.json]",
};

function written({ name, value }: OptionFact): string {
  return value === undefined ? `--${name}` : `--${name} <${value}>`;
}

function meaningOf({ says, choices }: OptionFact): string {
  return choices === undefined ? says : `${says} Known: ${choices.join(", ")}.`;
}

function part(heading: string): readonly string[] {
  return ["", `${heading}:`];
}

/** A short term stands beside what it means, a long one above it. */
function described(term: string, says: string, width: number): readonly string[] {
  const isShort = term.length <= shortest;
  const column = isShort ? indent.length + shortest + indent.length : indent.length * 3;
  const [first = "", ...rest] = wrapped(says, width - column);
  const below = " ".repeat(column);
  const lines = [first, ...rest].map((line) => `${below}${line}`);
  return isShort
    ? [`${indent}${term}`.padEnd(column) + first, ...lines.slice(1)]
    : [`${indent}${term}`, ...lines];
}

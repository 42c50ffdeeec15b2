import { wrapped } from "../report/render/text-table.js";
import { exitCodes } from "./exit-codes.js";
import { type OptionFact, type SubcommandFact, subcommands } from "./subcommands.js";

const indent = "  ";
const shortest = 8;

/** What the command as a whole is for. */
export function generalHelp(width: number): string {
  return [
    ...wrapped(
      "bondmil names the bonding and grounding conductors of services and separately derived systems under the US National Electrical Code (NFPA 70), editions 2008 to 2026. It takes an installation: one JSON document, as docs/schema/installation.schema.json describes it and docs/installations/shop.json shows.",
      width,
    ),
    ...part("Use"),
    `${indent}bondmil <subcommand> [file.json] [options]`,
    `${indent}bondmil <subcommand> --help`,
    `${indent}bondmil --version`,
    "",
    ...wrapped("Without a path, or with - for one, the installation is read from standard input.", width),
    ...part("Subcommands"),
    ...subcommands.flatMap(({ name, says }) => described(name, says, width)),
    ...part("Start with"),
    `${indent}bondmil schedule docs/installations/shop.json`,
    ...part("Exit codes"),
    ...Object.values(exitCodes).flatMap(({ code, means }) => described(`${code}`, means, width)),
    "",
    ...wrapped(
      "Output goes to standard output, everything else to standard error. Color is used on a terminal only, and not where NO_COLOR is set. Sizes are minimums of the edition that the installation names; local amendments and the authority having jurisdiction decide.",
      width,
    ),
  ].join("\n");
}

/** What a subcommand is for, with its options and examples. */
export function subcommandHelp(
  { name, says, takesInstallation, more, options, examples }: SubcommandFact,
  width: number,
): string {
  return [
    ...wrapped(says, width),
    ...part("Use"),
    `${indent}bondmil ${name}${takesInstallation ? " [file.json]" : ""} [options]`,
    "",
    ...more.flatMap((one) => wrapped(one, width)),
    ...part("Options"),
    ...options.flatMap((one) => described(written(one), meaningOf(one), width)),
    ...part("Examples"),
    ...examples.flatMap(([line, meaning]) => described(line, meaning, width)),
  ].join("\n");
}

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

import { exitCodes } from "../../src/command/exit-codes.js";
import { generalHelp, subcommandHelp } from "../../src/command/help.js";
import { subcommands } from "../../src/command/subcommands.js";

const width = 100;

/** The page on the command: what its help says, and how streams are divided. */
export function commandPage(): string {
  return `# The command

Generated from \`bondmil --help\` by \`npm run pages -- command\`; do not edit.

\`npm install --global bondmil\`, or \`npx bondmil\` where the package is installed.

${code(generalHelp(width, "node_modules/bondmil"))}

${subcommands.map((one) => `## bondmil ${one.name}\n\n${code(subcommandHelp(one, width))}`).join("\n\n")}

## Exit codes

| code | meaning |
| --- | --- |
${Object.values(exitCodes)
  .map(({ code: number, means }) => `| ${number} | ${means} |`)
  .join("\n")}

## What comes out

- **text** is for reading. On a terminal it is fitted to its width, 120 letters at most; elsewhere lines have at most 120 letters. Characters that a
  terminal would obey are shown as \`\\u001b\`.
- **markdown** escapes whatever the installation names; what would make a link of an address stands in a code span.
- **csv** has the ids and codes that a program needs, and is RFC 4180: commas, quotes and line breaks are quoted, lines end with CR LF. A text that a spreadsheet would take for a formula, because \`=\`, \`+\`, \`-\` or \`@\` is the
  first character in it that is seen, gets an apostrophe before it. To read it back take one apostrophe away there.
- **json** is what \`scheduleOf\`, \`checkOf\` and \`compareInstallation\` give.

All but JSON name the edition with its amendments, the library with its version and, where they are given, who prepared it and the date. What the text, Markdown and HTML say in words stands in
CSV and JSON as ids.

Areas are circular mils, lengths feet.

In a comparison \`+\` marks a conductor of which a larger area is required than in the column that it is held against, \`-\` a smaller one, \`!\` one that came, went, or is required
where it was not. Metals are written by their symbols, Cu and Al.

## Dividing a stream

\`bondmil stream\` is a plain filter: a line in, a line out, in order, and no line knows of another. Whatever runs a filter over parts of a file divides the work over cores or machines.

**GNU parallel**, as many processes as there are cores. \`-N\` lines go to each process, \`--keep-order\` puts the output in the order of the installations, and the expression hands each
process the number of its first line, so that numbers count through:

\`\`\`sh
parallel --pipe -N 1000 --keep-order \\
  'bondmil stream --first-line {= $_ = (seq() - 1) * 1000 + 1 =}' \\
  < installations.ndjson > schedules.ndjson
\`\`\`

**Apache Spark**: \`pipe\` hands each partition to a process. Lines are numbered within their partition; keep the title or an id of your own in the installation to find them again.

\`\`\`python
answers = spark.sparkContext.textFile("installations.ndjson").pipe("bondmil stream --give rows")
\`\`\`

**Hadoop Streaming**, without a reducer:

\`\`\`sh
mapred streaming -D mapreduce.job.reduces=0 \\
  -input installations -output answers -mapper 'bondmil stream --give rows'
\`\`\`

The tests run GNU parallel over two processes; Spark and Hadoop are written down from what their pipes ask of a filter and were not run. Both take an exit code other than 0 for a
filter that broke, which is why refused lines change it only with \`--strict\`.
`;
}

function code(text: string): string {
  return `\`\`\`text\n${text}\n\`\`\``;
}

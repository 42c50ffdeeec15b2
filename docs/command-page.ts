import { exitCodes } from "../src/command/exit-codes.js";
import { generalHelp, subcommandHelp } from "../src/command/help.js";
import { subcommands } from "../src/command/subcommands.js";

const width = 100;

/** The page on the command: what its help says, and how streams are divided. */
export function commandPage(): string {
  return `# The command

Generated from \`bondmil --help\` by \`npm run command-page\`; do not edit.

\`npm install --global bondmil\`, or \`npx bondmil\` where the package is installed.

${code(generalHelp(width))}

${subcommands.map((one) => `## bondmil ${one.name}\n\n${code(subcommandHelp(one, width))}`).join("\n\n")}

## Exit codes

| code | meaning |
| --- | --- |
${Object.values(exitCodes)
  .map(({ code: number, means }) => `| ${number} | ${means} |`)
  .join("\n")}

## What comes out

- **text** is for reading. On a terminal it is fitted to its width, 120 letters at most; elsewhere lines are not wrapped, so that two answers can be compared. Characters that a
  terminal would obey are shown as \`\\u001b\`.
- **markdown** escapes whatever the drawing names; what would make a link of an address stands in a code span.
- **csv** is RFC 4180: commas, quotes and line breaks are quoted, lines end with CR LF. A text that a spreadsheet would take for a formula, because \`=\`, \`+\`, \`-\` or \`@\` is the
  first character in it that is seen, gets an apostrophe before it. To read it back take one apostrophe away there.
- **json** is what \`buildSchedule\`, \`checkInstalled\` and \`compareDrawing\` give.

Areas are circular mils, lengths feet.

In a comparison \`+\` marks a conductor of which a larger area is required than in the column that it is held against, \`-\` a smaller one, \`!\` one that came, went, or is required
where it was not. Metals are written by their symbols, Cu and Al.

## Dividing a stream

\`bondmil stream\` is a plain filter: a line in, a line out, in order, and no line knows of another. Whatever runs a filter over parts of a file divides the work over cores or machines.

**GNU parallel**, as many processes as there are cores. \`-N\` lines go to each process, \`--keep-order\` puts the answers in the order of the drawings, and the expression hands each
process the number of its first line, so that numbers count through:

\`\`\`sh
parallel --pipe -N 1000 --keep-order \\
  'bondmil stream --first-line {= $_ = (seq() - 1) * 1000 + 1 =}' \\
  < drawings.ndjson > schedules.ndjson
\`\`\`

**Apache Spark**: \`pipe\` hands each partition to a process. Lines are numbered within their partition; keep the title or an id of your own in the drawing to find them again.

\`\`\`python
answers = spark.sparkContext.textFile("drawings.ndjson").pipe("bondmil stream --give rows")
\`\`\`

**Hadoop Streaming**, without a reducer:

\`\`\`sh
mapred streaming -D mapreduce.job.reduces=0 \\
  -input drawings -output answers -mapper 'bondmil stream --give rows'
\`\`\`

The tests run GNU parallel over two processes; Spark and Hadoop are written down from what their pipes ask of a filter and were not run. Both take an exit code other than 0 for a
filter that broke, which is why refused lines change it only with \`--strict\`.
`;
}

function code(text: string): string {
  return `\`\`\`text\n${text}\n\`\`\``;
}

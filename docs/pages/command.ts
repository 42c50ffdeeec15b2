import { exitCodes } from "../../src/command/exit-codes.js";
import { linesOfAPart } from "../../src/command/facts/of-lines.js";
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

- **text** is for reading. On a terminal tables take its width and sentences at most 120 letters; elsewhere lines have at most 120 letters. Letters that a terminal shows
  in two columns, as Chinese and Japanese ones and emoji, count as two. Characters that a terminal would obey are shown as \`\\u001b\`.
- **markdown** escapes whatever the installation names; what would make a link of an address stands in a code span.
- **csv** has the ids and codes that a program needs, and is RFC 4180: commas, quotes and line breaks are quoted, lines end with CR LF. A text that a spreadsheet would take for a formula, because \`=\`, \`+\`, \`-\` or \`@\` is the
  first character in it that is seen, gets an apostrophe before it. To read it back take one apostrophe away there.
- **json** is what \`scheduleOf\`, \`checkOf\`, \`compareInstallation\`, \`supplyCandidates\` and \`size\` give, and of the corpus what \`runCorpus\` of \`bondmil/corpus\` gives.
- **html** and **svg** are for a file; a terminal is told where to send them.

The same word means the same everywhere: \`--as\` is the format, \`--edition\` one year and \`--editions\` several, \`--amperes\` a rating or current, \`--material\` the metal of
the conductor that is sized.

All but JSON name the edition with its amendments, the library with its version and, where they are given, who prepared it and the date. What the text, Markdown and HTML say in words stands in
CSV and JSON as ids.

Areas are circular mils, lengths feet.

In a comparison \`+\` marks a conductor of which a larger area is required than in the column that it is held against, \`-\` a smaller one, \`!\` one that came, went, or is required
where it was not. Metals are written by their symbols, Cu and Al.

## The first installation

\`bondmil begin shop.json --edition 2020\` writes one service. What stands in it:

| member | what it says |
| --- | --- |
| \`$schema\` | where an editor finds what each member means and which names there are; not looked at otherwise |
| \`code\` | the edition that the jurisdiction enforces; its amendments go here too |
| \`materials\` | the metal of each kind of conductor that is to be sized |
| \`services\` | the source, boxes ahead of the disconnects, \`runs\` of ungrounded conductors from one id to another, the disconnects, the electrodes |
| \`load\` of a run | decides the size of a grounded conductor beside the fault path |
| \`raceways\` of a run | what it lies in: metal must be bonded, \`unknown\` gives both answers |
| \`circuits\` | feeders and branch circuits, for their equipment grounding conductors |

[The guide](installation.md) grows one part by part. A conductor alone requires no installation: \`bondmil size\` asks the plainest question of its role, and takes a JSON object for any other.

## Dividing a stream

\`bondmil stream\` is a plain filter: a line in, a line out, in order, and no line knows of another. Whatever runs a filter over parts of a file divides the work over cores or machines.
Such engines take an exit code other than 0 for a filter that broke, which is why refused lines change it only with \`--strict\`.

No line is kept, so that memory does not grow with the stream. Node itself takes up to 25 MB more over the first half million lines, because it lets the part of its heap where objects begin
grow with the garbage that any program makes; where that matters, bound it: \`NODE_OPTIONS=--max-semi-space-size=4 bondmil stream\` takes the same 85 MB after 100,000 and after 1,000,000 lines.

**GNU parallel**, as many processes as there are cores. \`-N\` lines go to each process, \`--keep-order\` puts the output in the order of the input, and the expression hands each
process the number of its first line, so that numbers count through. One part for each core is fastest, because each process spends its first two seconds warming up; a part is held in
memory while it is handed out. A question of one conductor is answered faster than it can be handed out: one process takes those.

\`\`\`sh
lines=$(( ($(wc -l < installations.ndjson) + $(nproc) - 1) / $(nproc) ))
parallel --pipe -N $lines --block 200M --keep-order \\
  "bondmil stream --first-line {= \\$_ = (seq() - 1) * $lines + 1 =}" \\
  < installations.ndjson > schedules.ndjson
\`\`\`

**Dask distributed**, where one machine is not enough. On Debian \`apt-get install python3-distributed\`; start the scheduler on one machine and workers on each, all of which have bondmil:

\`\`\`sh
dask-scheduler --host 127.0.0.1 --port 8786
dask-worker tcp://127.0.0.1:8786 --nthreads 1
python3 node_modules/bondmil/docs/many-machines/stream.py tcp://127.0.0.1:8786 --lines ${linesOfAPart} \\
  -- bondmil stream < installations.ndjson > schedules.ndjson
\`\`\`

[The script](many-machines/stream.py) sends parts of whole lines to the workers, keeps order and line numbers, and has at most \`--ahead\` parts under way, so that its memory stays flat too. The
part of a worker that is lost is done again by another; each part is written once, and one that gave another number of lines than it got ends the run.

\`npm run proof:stream\` runs all of this: 1,000,000 lines through one process, GNU parallel over two, and Dask with two workers of which one is killed on the way, whose answers must be the same bytes as those of one process.
`;
}

function code(text: string): string {
  return `\`\`\`text\n${text}\n\`\`\``;
}

import { editionYears } from "../../edition/edition-year.js";
import { roleIds } from "../../edition/tables/roles.generated.js";
import { as, type SubcommandFact } from "./fact.js";

/** How far a published check can count. */
export const countable = ["cited", "arithmetic", "common-practice", "memory", "disputed"] as const;

/** Who says what a published check has. */
export const saying = [
  "author",
  "keyed-answer",
  "reply",
  "asker",
  "generated-text",
  "code",
  "unknown",
] as const;

/** What a stream can give for each line. */
export const givable = ["schedule", "rows", "check"] as const;

/** The ways in which the published checks can be written. */
export const corpusFormats = ["text", "json"] as const;

/** Installations that GNU parallel is told to give each process: enough that starting one does not count. */
export const linesOfAPart = 20_000;

/** What goes over many inputs, and over the published checks. */
export const ofLines: readonly SubcommandFact[] = [
  {
    name: "stream",
    says: "Read installations, or questions of single conductors, from standard input, one JSON document on each line, and write one JSON line for each.",
    takes: [],
    more: [
      'Every line gives exactly one line, in the same order: {"line":1,"schedule":...}, or {"line":2,"error":{"issues":[...]}} where the line is refused, an empty line too. A broken line never ends the stream.',
      'A line {"role":"main-bonding-jumper","input":{...}} is the question of one conductor and gives {"line":3,"result":...}; its input is what the library takes. Both may stand in one stream.',
      "How many lines were refused is said on standard error at the end; while it runs, a terminal shows how far it is.",
      "Memory stays flat however long the stream is. Any engine that runs a filter over lines can divide the work.",
      "When the reader of the output goes away, the stream ends quietly with exit code 0.",
    ],
    options: [
      {
        name: "give",
        value: "what",
        choices: givable,
        says: "What stands in each line: by default the schedule, or the result of a conductor; rows, flat as in CSV and in a sweep; or the check of what is installed.",
      },
      {
        name: "fingerprint",
        says: "Give each schedule and each of its rows the fingerprint that bondmil schedule shows; they take about as long as the sizes. A check always has them.",
      },
      {
        name: "first-line",
        value: "number",
        says: "The number of the first line, where it is a part of a longer stream; 1 by default.",
      },
      {
        name: "strict",
        says: "End with exit code 2 where a line was refused. Without it the stream ends with 0, since engines take other codes for a filter that broke.",
      },
    ],
    examples: [
      ["bondmil stream < installations.ndjson > schedules.ndjson", "all of them, one process"],
      [
        `parallel --pipe -N ${linesOfAPart} --block 200M --keep-order 'bondmil stream --first-line {= $_ = (seq() - 1) * ${linesOfAPart} + 1 =}' < installations.ndjson > schedules.ndjson`,
        "GNU parallel: as many processes as there are cores, order and line numbers kept",
      ],
    ],
  },
  {
    name: "corpus",
    says: "Run the published checks against this library: worked examples, quizzes and published answers with their sources, the wrong ones too.",
    takes: [],
    more: [
      "Counts by role, edition and kind of source come first, then every miss in full. A disputed check holds the library to what the text requires, not to what its source says.",
    ],
    options: [
      { name: "role", value: "role", choices: roleIds, says: "Only checks of this role." },
      { name: "edition", value: "year", choices: editionYears, says: "Only under this edition." },
      { name: "standing", value: "standing", choices: countable, says: "Only checks that count so far." },
      { name: "voice", value: "voice", choices: saying, says: "Only what this voice says." },
      {
        name: "assumed",
        value: "what",
        choices: ["none", "some"],
        says: "Only checks of which the source gives the whole input, or the others.",
      },
      {
        name: "source",
        value: "source",
        says: "Only checks of this source, by its id, as a miss and the JSON name it.",
      },
      { name: "flag", value: "flag", says: "Only checks with this flag." },
      as(
        corpusFormats,
        "Format of the output; text by default. JSON has every check under every edition: its question, its source, what was expected, what the library gave and the verdict.",
      ),
    ],
    examples: [
      ["bondmil corpus", "all of them"],
      ["bondmil corpus --role main-bonding-jumper --edition 2023", "one role under one edition"],
      ["bondmil corpus --as json > checks.json", "for a program"],
    ],
  },
];

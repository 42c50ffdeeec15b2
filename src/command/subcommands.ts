import { editionYears, roleIds } from "../edition/index.js";

/** An option as it is described and read. */
export interface OptionFact {
  readonly name: string;
  /** What stands for its value; an option without one is on or off. */
  readonly value?: string;
  /** What is allowed; none for free text. */
  readonly choices?: readonly string[];
  /** Whether several may be given, with commas between. */
  readonly several?: boolean;
  readonly says: string;
}

/** A subcommand as it is described and read. */
export interface SubcommandFact {
  readonly name: SubcommandName;
  readonly says: string;
  /** Whether it takes the path of an installation. */
  readonly takesInstallation: boolean;
  readonly more: readonly string[];
  readonly options: readonly OptionFact[];
  readonly examples: readonly (readonly [line: string, says: string])[];
}

export type SubcommandName = "schedule" | "report" | "check" | "compare" | "supplies" | "stream" | "corpus";

/** The ways in which the output can be written. */
export const formats = ["text", "markdown", "csv", "json", "html"] as const;

/** The ways in which a report can be written; SVG is the drawing alone. */
export const reportFormats = ["html", "markdown", "svg"] as const;

/** The ways in which candidates for a supply can be written; a table is for reading, SVG is the picture alone. */
export const supplyFormats = ["table", "markdown", "csv", "json", "html", "svg"] as const;

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

/** What an installation can be compared by. */
export const comparable = ["edition", "amendment", "reading", "arrangement"] as const;

/** What a stream can give for each installation. */
export const givable = ["schedule", "rows", "check"] as const;

const as: OptionFact = {
  name: "as",
  value: "format",
  choices: formats,
  says: "Format of the output; text by default. JSON is the whole result of the library; CSV has one row for each conductor; HTML is one file that loads nothing.",
};

/** What a reader has to know of a paper: who made it, and when. */
const titleBlock: readonly OptionFact[] = [
  { name: "prepared-by", value: "name", says: "Who prepared it, for the title block." },
  {
    name: "date",
    value: "date",
    says: "The date for the title block, as it is to be read; none by default.",
  },
];

/** Every subcommand, in the order in which they are taught. */
export const subcommands: readonly SubcommandFact[] = [
  {
    name: "schedule",
    says: "Name every bonding and grounding conductor of an installation, with its size, places, section and evidence.",
    takesInstallation: true,
    more: [
      "A conductor that is not required says why. Cautions, open readings and what is not sized follow; the fingerprint for a title block stands on top.",
    ],
    options: [as, ...titleBlock],
    examples: [
      ["bondmil schedule shop.json", "read it here"],
      ["bondmil schedule shop.json --as csv > shop.csv", "one row for each conductor, for a spreadsheet"],
      ["bondmil schedule --as markdown < shop.json", "the installation from standard input"],
    ],
  },
  {
    name: "report",
    says: "Write the report for a plan reviewer: title block, the drawing, the schedule, each result with its numbers and sections, cautions, what was not sized.",
    takesInstallation: true,
    more: [
      "HTML is one file that loads nothing, for a screen and for paper; print it to get a PDF. Markdown describes the path in words. SVG is the drawing alone.",
    ],
    options: [
      {
        name: "as",
        value: "format",
        choices: reportFormats,
        says: "How the report is written; HTML by default.",
      },
      ...titleBlock,
    ],
    examples: [
      ["bondmil report shop.json > shop.html", "for a browser, or to be printed"],
      ["bondmil report shop.json --as svg > shop.svg", "the drawing"],
    ],
  },
  {
    name: "check",
    says: "Hold what an installation lists as installed against its schedule, and say what is to be done.",
    takesInstallation: true,
    more: [
      'The installation lists in "installed" what was found, each by its role, what it serves and its place; "asScheduled" takes whole runs, and "rest": "as-scheduled" everything else.',
      "Findings come first, by what is to be done: to be removed, moved, replaced, installed, settled. Each says what is there, what is required, by how much it is short, the section and the remedies. What is as required is one line, with every reserve.",
      "A larger conductor, another lawful place or material, and what may serve in place of a conductor are not findings; what the schedule does not know is one. Where nothing is listed, nothing is checked.",
    ],
    options: [as, ...titleBlock],
    examples: [
      ["bondmil check shop.json", "what is to be done"],
      [
        "bondmil check shop.json > report.txt || echo 'look at it'",
        "a script sees findings by the exit code",
      ],
    ],
  },
  {
    name: "compare",
    says: "Put an installation side by side with itself under other editions, amendments, readings or arrangements.",
    takesInstallation: true,
    more: [
      "edition: the installation under each edition, and what changed from one to the next and why.",
      "amendment: as the edition is printed, and with the amendments of the installation or of a file.",
      "reading: with each other alternative where the text is open and the schedule names it.",
      "arrangement: jumpers at the source or in the enclosures, enclosures or one assembly, jumpers or fittings of raceways; one changed at a time.",
      "An edition or arrangement that refuses the installation keeps its column and says why; only when all of them refuse it is the installation refused.",
    ],
    options: [
      {
        name: "by",
        value: "what",
        choices: comparable,
        says: "What is put side by side; edition by default.",
      },
      {
        name: "years",
        value: "years",
        choices: editionYears,
        several: true,
        says: "Editions in the order of the columns, with commas between; all of them by default. Only by edition.",
      },
      {
        name: "amendments",
        value: "file",
        says: "A JSON file with a list of amendments, in place of those of the installation. Only by amendment.",
      },
      as,
      ...titleBlock,
    ],
    examples: [
      ["bondmil compare shop.json --years 2017,2020,2023", "three editions"],
      [
        "bondmil compare shop.json --by amendment --amendments county.json",
        "what a county's amendments change",
      ],
      ["bondmil compare shop.json --by arrangement --as markdown", "the legal choices as a table"],
    ],
  },
  {
    name: "supplies",
    says: "Name every lawful way to supply a load: sets, size, material and raceways, with the conductors that each causes.",
    takesInstallation: true,
    more: [
      'The file is a question of supplyCandidates, or an installation some of whose runs give "toChoose" in place of conductors; then each such run has its candidates.',
      "None is preferred. Unbeaten are those of which no other has as little copper, aluminum, terminations and raceways. At most 10,000 are listed, and it is said how many there are.",
    ],
    options: [
      {
        name: "as",
        value: "format",
        choices: supplyFormats,
        says: "How they are written; a table by default, of those that are unbeaten and the smallest sizes. CSV and JSON have every candidate; SVG draws metal against terminations and raceways, of a question alone.",
      },
      ...titleBlock,
    ],
    examples: [
      ["bondmil supplies feeder.json", "read it here"],
      ["bondmil supplies feeder.json --as csv > feeder.csv", "one row for each candidate, for a spreadsheet"],
      ["bondmil supplies feeder.json --as svg > feeder.svg", "the trade-off as a picture"],
    ],
  },
  {
    name: "stream",
    says: "Read installations from standard input, one JSON document on each line, and write one JSON line for each.",
    takesInstallation: false,
    more: [
      'Every line gives exactly one line, in the same order: {"line":1,"schedule":...}, or {"line":2,"error":{"issues":[...]}} where the line is refused, an empty line too. A broken line never ends the stream.',
      "How many lines were refused is said on standard error at the end; while it runs, a terminal shows how far it is.",
      "Memory stays flat however long the stream is. Any engine that runs a filter over lines can divide the work.",
      "When the reader of the output goes away, the stream ends quietly with exit code 0.",
    ],
    options: [
      {
        name: "give",
        value: "what",
        choices: givable,
        says: "What stands in each line: by default the schedule; rows, flat as in CSV; or the check of what is installed.",
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
        "parallel --pipe -N 1000 --keep-order 'bondmil stream --first-line {= $_ = (seq() - 1) * 1000 + 1 =}' < installations.ndjson > schedules.ndjson",
        "GNU parallel: as many processes as there are cores, order and line numbers kept",
      ],
    ],
  },
  {
    name: "corpus",
    says: "Run the published checks against this library: worked examples, quizzes and published answers with their sources, the wrong ones too.",
    takesInstallation: false,
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
      { name: "source", value: "id", says: "Only checks of this source, by its id in tables/sources.json." },
      { name: "flag", value: "flag", says: "Only checks with this flag." },
    ],
    examples: [
      ["bondmil corpus", "all of them"],
      ["bondmil corpus --role main-bonding-jumper --edition 2023", "one role under one edition"],
    ],
  },
];

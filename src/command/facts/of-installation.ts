import { editionYears } from "../../edition/edition-year.js";
import { as, formats, type OptionFact, type SubcommandFact, titleBlock } from "./fact.js";

/** The ways in which a report can be written; SVG is the drawing alone. */
export const reportFormats = ["html", "markdown", "svg"] as const;

/** The ways in which candidates for a supply can be written; SVG is the picture alone. */
export const supplyFormats = [...formats, "svg"] as const;

/** What an installation can be compared over. */
export const comparable = ["editions", "amendments", "readings", "arrangements"] as const;

/** What a first document can hold. */
export const startable = ["service", "transformer", "load"] as const;

const asDocument: OptionFact = as(
  formats,
  "Format of the output; text by default. JSON is the whole result of the library; CSV has one row for each conductor; HTML is one file that loads nothing.",
);

/** What goes over a whole installation. */
export const ofInstallation: readonly SubcommandFact[] = [
  {
    name: "begin",
    says: "Write a first installation, to be edited into your own: a small one that is valid as it stands.",
    takes: ["new-file"],
    more: [
      "It names the schema that came with this package in $schema, so that an editor shows what each member means, completes names and marks what is wrong. A file that is there already is left as it is. Without a path it goes to standard output.",
      "Change the title, the materials, and then what stands there to what is in your drawing: every thing has an id of its own in the words of the drawing, and runs go from one id to another.",
    ],
    options: [
      {
        name: "edition",
        value: "year",
        choices: editionYears,
        says: "The edition of NFPA 70 that the jurisdiction enforces, often not the newest. Always to be given.",
      },
      {
        name: "holds",
        value: "what",
        choices: startable,
        says: "What it holds: by default a service of 200 A with one disconnect, two electrodes and one feeder; a transformer of a separately derived system of 125 A, fed from a switchboard that is there; or a load whose supply is to be chosen, for bondmil supplies.",
      },
    ],
    examples: [
      ["bondmil begin shop.json --edition 2020", "a service, to be edited"],
      ["bondmil begin --edition 2023 --holds transformer > transformer.json", "a transformer"],
      ["bondmil begin feeder.json --edition 2023 --holds load", "a question for bondmil supplies"],
    ],
  },
  {
    name: "schedule",
    says: "Name every bonding and grounding conductor of an installation, with its size, places, section and evidence.",
    takes: ["installation"],
    more: [
      "A conductor that is not required says why. Cautions, open readings and what is not sized follow; the fingerprint for a title block stands on top.",
    ],
    options: [asDocument, ...titleBlock],
    examples: [
      ["bondmil schedule shop.json", "read it here"],
      ["bondmil schedule shop.json --as csv > shop.csv", "one row for each conductor, for a spreadsheet"],
      ["bondmil schedule --as markdown < shop.json", "the installation from standard input"],
    ],
  },
  {
    name: "report",
    says: "Write the report for a plan reviewer: title block, what is not permitted, the schedule, the drawing, each calculation with its numbers and sections, what is not required, cautions.",
    takes: ["installation"],
    more: [
      "HTML is one file that loads nothing, for a screen and for paper; print it to get a PDF. Markdown describes the path in words. SVG is the drawing alone. Pages and drawings go to a file, not to a terminal.",
    ],
    options: [as(reportFormats, "How the report is written; HTML by default."), ...titleBlock],
    examples: [
      ["bondmil report shop.json > shop.html", "for a browser, or to be printed"],
      ["bondmil report shop.json --as svg > shop.svg", "the drawing"],
    ],
  },
  {
    name: "check",
    says: "Hold what an installation lists as installed against its schedule, and say what is to be done.",
    takes: ["installation"],
    more: [
      'The installation lists in "installed" what was found, each by its role, what it serves and its place; "asScheduled" takes whole runs, and "rest": "as-scheduled" everything else.',
      "Findings come first, by what is to be done: to be removed, moved, replaced, installed, settled. Each says what is there, what is required, by how much it is short, the section and the remedies. What is as required is one line, with every reserve.",
      "A larger conductor, another lawful place or material, and what may serve in place of a conductor are not findings; what the schedule does not know is one. Where nothing is listed, nothing is checked.",
    ],
    options: [asDocument, ...titleBlock],
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
    takes: ["installation"],
    more: [
      "editions: the installation under each edition, and what changed from one to the next and why.",
      "amendments: as the edition is printed, and with the amendments of the installation or of a file.",
      "readings: with each other alternative where the text is open and the schedule names it.",
      "arrangements: jumpers at the source or in the enclosures, enclosures or one assembly, jumpers or fittings of raceways; one changed at a time.",
      "An edition or arrangement that refuses the installation keeps its column and says why; only when all of them refuse it is the installation refused.",
    ],
    options: [
      {
        name: "over",
        value: "what",
        choices: comparable,
        says: "What is put side by side; editions by default.",
      },
      {
        name: "editions",
        value: "years",
        choices: editionYears,
        several: true,
        says: "Editions in the order of the columns, with commas between; all of them by default. Only over editions.",
      },
      {
        name: "amendments",
        value: "file",
        says: "A JSON file with a list of amendments, in place of those of the installation. Only over amendments.",
      },
      asDocument,
      ...titleBlock,
    ],
    examples: [
      ["bondmil compare shop.json --editions 2017,2020,2023", "three editions"],
      [
        "bondmil compare shop.json --over amendments --amendments county.json",
        "what a county's amendments change",
      ],
      ["bondmil compare shop.json --over arrangements --as markdown", "the legal choices as a table"],
    ],
  },
  {
    name: "supplies",
    says: "Name every lawful way to supply a load: sets, size, material and raceways, with the conductors that each causes.",
    takes: ["question"],
    more: [
      'The file is a question of supplyCandidates, or an installation some of whose runs give "toChoose" in place of conductors; then each such run has its candidates.',
      "None is preferred. Unbeaten are those of which no other has as little copper, aluminum, terminations and raceways. At most 10,000 are listed, and it is said how many there are.",
    ],
    options: [
      as(
        supplyFormats,
        "How they are written; text by default, a table of those that are unbeaten and the smallest sizes. CSV and JSON have every candidate; SVG draws metal against terminations and raceways, of a question alone.",
      ),
      ...titleBlock,
    ],
    examples: [
      ["bondmil supplies feeder.json", "read it here"],
      ["bondmil supplies feeder.json --as csv > feeder.csv", "one row for each candidate, for a spreadsheet"],
      ["bondmil supplies feeder.json --as svg > feeder.svg", "the trade-off as a picture"],
    ],
  },
];

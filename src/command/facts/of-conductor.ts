import { materials } from "../../conductor/material.js";
import { editionYears } from "../../edition/edition-year.js";
import { as, formats, type OptionFact, type SubcommandFact, titleBlock } from "./fact.js";

/** The ways in which a sweep can be written. */
export const sweepFormats = ["csv", "json-lines"] as const;

const material: OptionFact = {
  name: "material",
  value: "material",
  choices: materials,
  says: "Material of the conductor that is sized.",
};

/** What sizes conductors of one role, without an installation. */
export const ofConductor: readonly SubcommandFact[] = [
  {
    name: "size",
    says: "Size one conductor of a role, with every step, its section and cautions.",
    takes: ["role", "input"],
    more: [
      "Options ask the plainest question of the role: a solidly grounded service, one conductor for all sets, nothing that would make it larger. Which of --supply, --amperes and --conductor is required hangs on the role, and it is said.",
      'Whatever else a role takes goes in as a JSON object, from a file or with - from standard input: the input that the library takes, {"code": {"year": "2020"}, ...}.',
    ],
    options: [
      {
        name: "edition",
        value: "year",
        choices: editionYears,
        says: "The edition of NFPA 70 that the jurisdiction enforces. Always to be given, here or in the JSON object.",
      },
      {
        name: "supply",
        value: "supply",
        says: "Ungrounded conductors as schedules write them, such as '4 x 500 kcmil Al': sets, size and material; unlike sets with + between.",
      },
      {
        name: "amperes",
        value: "number",
        says: "Rating of the overcurrent device ahead, or current of the impedance.",
      },
      {
        name: "conductor",
        value: "size",
        says: "Size of the conductor by which it goes, of the same material.",
      },
      material,
      as(
        formats,
        "Format of the output; text by default. JSON is the whole result of the library; CSV has one row for each step; HTML is one file that loads nothing.",
      ),
      ...titleBlock,
    ],
    examples: [
      [
        "bondmil size main-bonding-jumper --edition 2023 --supply '3 x 600 kcmil Cu' --material copper",
        "by its supply",
      ],
      [
        "bondmil size equipment-grounding-conductor --edition 2017 --amperes 400 --material aluminum",
        "by its overcurrent device",
      ],
      ["bondmil size grounded-conductor neutral.json --as json", "whatever the role takes, from a file"],
    ],
  },
  {
    name: "sweep",
    says: "Size a role for many supplies or overcurrent devices under many editions, a row for each.",
    takes: ["role"],
    more: [
      "Each row has the edition, what was asked, the required area in circular mils, the size, what governs, its section and evidence. What an edition refuses is a row that says so.",
      "It is the plainest question of the role, as with bondmil size. Rows go by size, then by sets, then by edition; other inputs go through bondmil stream.",
    ],
    options: [
      {
        name: "editions",
        value: "years",
        choices: editionYears,
        several: true,
        says: "Editions, with commas between; all of them by default.",
      },
      {
        name: "supply-material",
        value: "material",
        choices: materials,
        says: "Material of the ungrounded conductors, for a role that goes by its supply; copper, aluminum or both, one after the other.",
        several: true,
      },
      {
        name: "sizes",
        value: "sizes",
        several: true,
        says: "Sizes of the ungrounded conductors, with commas between, such as '4/0 AWG,250 kcmil'; every standard size by default.",
      },
      {
        name: "sets",
        value: "numbers",
        several: true,
        says: "Numbers of sets, with commas between; 1 to 20 by default.",
      },
      {
        name: "amperes",
        value: "numbers",
        several: true,
        says: "Ratings of overcurrent devices, for a role that goes by them, with commas between; the last rating of each row of the tables by default.",
      },
      {
        ...material,
        several: true,
        says: "Material of the conductor that is sized; several with commas between.",
      },
      as(sweepFormats, "CSV by default, for a spreadsheet; json-lines has one JSON object on each line."),
    ],
    examples: [
      [
        "bondmil sweep main-bonding-jumper --supply-material copper --material copper > jumpers.csv",
        "every size, 1 to 20 sets, every edition",
      ],
      [
        "bondmil sweep equipment-grounding-conductor --material copper,aluminum --amperes 100,200,400 --as json-lines",
        "three devices, both metals",
      ],
    ],
  },
];

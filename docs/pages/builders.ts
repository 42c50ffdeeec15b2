import { fileURLToPath } from "node:url";
import { readDefaults } from "../../corpus/tools/flat/defaults.js";
import { flatLines } from "../../corpus/tools/flat/lines.js";
import { decidingOwnCells, mutateOwnCells } from "../../corpus/tools/mutation/run.js";
import { missesOf } from "../../corpus/tools/references/judge.js";
import { readReferences, validateReferences } from "../../corpus/tools/references/read.js";
import { entriesOf } from "../../corpus/tools/runner/model.js";
import { readDocuments } from "../../corpus/tools/runner/read.js";
import { validate } from "../../corpus/tools/runner/validate.js";
import { judgeAll, settledAccount } from "../../corpus/tools/wrong-programs/account.js";
import { mistakeGroups, namedMistakes } from "../../corpus/tools/wrong-programs/mistakes.js";
import { pointsOf, tallyOf as tallyOfPrograms } from "../../corpus/tools/wrong-programs/tally.js";
import { collect } from "../../tables/tools/generator/collect.js";
import { csvFiles } from "../../tables/tools/generator/csv.js";
import { formatted } from "../../tables/tools/generator/format.js";
import { atlasPage, atlasRows, reaches } from "./atlas/page.js";
import { cellsPage } from "./cells/page.js";
import { commandPage } from "./command.js";
import { readColumns } from "./data-packages/columns.js";
import { packageOfCorpus } from "./data-packages/corpus.js";
import { packageOfTables } from "./data-packages/tables.js";
import { frontPage } from "./figures.js";
import { homePapers } from "./home.js";
import { pictures } from "./pictures/all.js";
import { filesOf } from "./pictures/picture.js";
import { reachOfReadings } from "./pictures/reach.js";
import { mistakeSentences } from "./published-errors/mistake-sentences.js";
import { publishedErrorsPage } from "./published-errors/page.js";
import { referencesPage } from "./references/page.js";
import { reportSamples } from "./report.js";
import { coveragePage } from "./role-coverage/page.js";
import { roleDrawings } from "./role-drawings.js";
import { rolePages } from "./role-pages/page.js";
import { guideWithRooms } from "./rooms/map.js";
import { editionsPage } from "./tables/editions.js";
import { readingsPage } from "./tables/readings.js";
import { tablesPage } from "./tables/tables.js";
import { thirdPartyPage } from "./third-party.js";
import { versionModule } from "./version.js";
import { violationsPage } from "./violations/page.js";
import { wordsPage } from "./words/page.js";
import { readWords } from "./words/words.js";
import { wrongProgramsPage } from "./wrong-programs/page.js";

/** Files of the repository by their paths, as they are to be. */
export type Written = Readonly<Record<string, string>>;

const documents = once(readDocuments);

const corpus = once(() => {
  const { corpus: valid, faults } = validate(documents());
  if (valid === null || faults.length > 0) throw new Error(`The corpus is not valid:\n${faults.join("\n")}`);
  return valid;
});

const tables = once(() => collect(fileURLToPath(new URL("../../tables/", import.meta.url))).collected);

const flat = once(() => flatLines(entriesOf(corpus()), readDefaults()));

const references = once(() => {
  const { files, faults } = validateReferences(readReferences());
  const wrong = [...faults, ...missesOf(files)];
  if (wrong.length > 0) throw new Error(`The general references do not hold:\n${wrong.join("\n")}`);
  return files;
});

const wrongPrograms = once(() => judgeAll(entriesOf(corpus()), namedMistakes));

/** What is built, by the name under which it can be built alone. The slowest comes last. */
export const builders: Readonly<Record<string, () => Written>> = {
  words: () => ({ "docs/words.md": wordsPage(readWords().words) }),
  rooms: () => ({ "DEVELOPERS.md": guideWithRooms() }),
  command: () => ({ "docs/command.md": commandPage() }),
  report: reportSamples,
  "role-drawings": roleDrawings,
  home: homePapers,
  "third-party": () => ({ "THIRD-PARTY.md": thirdPartyPage() }),
  version: () => ({ "src/input/version.generated.ts": versionModule() }),
  tables: () => ({ "docs/tables.md": tablesPage(tables().tables) }),
  editions: () => ({ "docs/editions.md": editionsPage(tables()) }),
  readings: () => ({ "docs/readings.md": readingsPage(tables().readings) }),
  references: () => ({ "docs/general-references.md": referencesPage(references(), corpus().sources) }),
  coverage: () => ({ "docs/coverage.md": coveragePage(corpus()) }),
  "published-errors": () => ({
    "docs/published-errors.md": publishedErrorsPage(corpus(), mistakeSentences(documents().checksSchema)),
  }),
  pictures: () => filesOf(pictures(corpus())),
  roles: () => rolePages(corpus(), tables(), mistakeSentences(documents().checksSchema)),
  flat: () => ({ "corpus/flat/checks.jsonl": flat() }),
  "data-packages": () => ({
    "corpus/datapackage.json": asJson("corpus/datapackage.json", packageOfCorpus(flat())),
    "tables/datapackage.json": asJson(
      "tables/datapackage.json",
      packageOfTables(csvFiles(tables()), tables().tables, readColumns()),
    ),
  }),
  violations: () => ({ "docs/violations.md": violationsPage() }),
  atlas: () => ({
    "docs/atlas.md": atlasPage(),
    "docs/atlas.csv": atlasRows(),
    ...filesOf([reachOfReadings(reaches())]),
  }),
  "wrong-programs": () => ({
    "docs/wrong-programs.md": wrongProgramsPage(mistakeGroups, wrongPrograms(), settledAccount),
  }),
  figures: () => ({
    "README.md": frontPage(
      corpus(),
      tallyOfPrograms(pointsOf(wrongPrograms(), settledAccount), ({ year }) => year !== "2026"),
    ),
  }),
  cells: () => ({ "docs/unnoticed-cells.md": cellsPage(mutateOwnCells(corpus()), decidingOwnCells()) }),
};

function asJson(path: string, value: object): string {
  return formatted(path, JSON.stringify(value));
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

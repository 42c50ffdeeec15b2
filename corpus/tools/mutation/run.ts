import { fileURLToPath } from "node:url";
import { readCopies, readTable } from "../../../tables/tools/generator/read-tables.js";
import { library } from "../runner/library.js";
import { type Corpus, entriesOf } from "../runner/model.js";
import { supplyEntriesOf } from "../supply/model.js";
import { readSupplyChecks, validateSupplyChecks } from "../supply/read.js";
import { type Deciding, decidingCells } from "./deciding.js";
import { liveTables } from "./live-tables.js";
import { type MutatedCell, mutateCells } from "./mutate.js";

const folder = fileURLToPath(new URL("../../../tables/", import.meta.url));

/** Every cell of this repository's tables, mutated under a corpus. */
export function mutateOwnCells(corpus: Corpus): readonly MutatedCell[] {
  const tables = Object.keys(liveTables).map((id) => ({
    table: readTable(folder, id),
    copies: readCopies(folder, id),
  }));
  const supplies = supplyEntriesOf(validateSupplyChecks(readSupplyChecks()).files);
  return mutateCells({ tables, entries: entriesOf(corpus), supplies, sources: corpus.sources, library });
}

/** Which cells of this repository's table of ampacities decide a size. */
export function decidingOwnCells(): Deciding {
  return decidingCells(readTable(folder, "raceway-ampacity"));
}

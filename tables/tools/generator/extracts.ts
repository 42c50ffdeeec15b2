import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { isDeepStrictEqual } from "node:util";
import { type EditionYear, editionYears } from "../../../src/edition/edition-year.js";
import type { ChannelsFile } from "./channels.js";
import { type Known, known, type Seen, type Witness } from "./ladder.js";
import { type Said, type Statement, type StatingFile, statingFiles } from "./statements.js";

/** What one source says of one statement of ours. */
export interface Passage extends Said {
  /** The words in short, in our own, where they say more than the statement does. */
  readonly says?: string;
  /** Why ours is kept where the passage says otherwise. */
  readonly judged?: string;
}

/** Passages by the statement, as deep as its path. */
type Passages = { readonly [name: string]: Passage | Passages };

/** What was read in one source, for one edition. */
export interface Extract extends Omit<Witness, "source">, Partial<Record<StatingFile, Passages>> {
  /** Where in the source, where that is not the section. */
  readonly locator?: string;
  readonly note?: string;
}

/** One file of `extracts/`. */
export interface ExtractsFile {
  readonly source: string;
  readonly extracts: readonly Extract[];
}

/** A passage with the witness behind it, and the statement that it is about. */
export interface Registered {
  readonly of: Witness;
  readonly file: StatingFile;
  readonly path: readonly string[];
  readonly passage: Passage;
}

/** How sure every statement is under every edition, by its file and path. */
export type Levels = (file: StatingFile, path: readonly string[], year: EditionYear) => Known;

/** The files of extracts, by their names. */
export function readExtracts(folder: string): ReadonlyMap<string, ExtractsFile> {
  const extracts = join(folder, "extracts");
  const names = existsSync(extracts) ? readdirSync(extracts).filter((name) => name.endsWith(".json")) : [];
  return new Map(
    names
      .sort()
      .map((name) => [
        `extracts/${name}`,
        JSON.parse(readFileSync(join(extracts, name), "utf8")) as ExtractsFile,
      ]),
  );
}

/** The level of every statement, computed from what was read. */
export function levelsOf(statements: readonly Statement[], files: Iterable<ExtractsFile>): Levels {
  const passages = new Map<string, Registered[]>();
  for (const one of passagesOf(files)) passages.set(keyOf(one), [...(passages.get(keyOf(one)) ?? []), one]);
  const levels = new Map<string, Known>();
  for (const statement of statements) {
    const own = passages.get(keyOf(statement)) ?? [];
    for (const year of editionYears) {
      const said = statement.said[year];
      if (said === undefined) continue;
      const seen = own.flatMap(({ of, passage }): readonly Seen[] => {
        const isJudged = passage.judged !== undefined && isBeside(of, year);
        return isJudged ? [] : [{ of, says: compared(of, passage, said) }];
      });
      levels.set(`${year} ${keyOf(statement)}`, known(seen, year));
    }
  }
  return (file, path, year) =>
    levels.get(`${year} ${keyOf({ file, path })}`) ?? { level: "memory", sources: [] };
}

/** Every passage of the extracts, for lists of them. */
export function passagesOf(files: Iterable<ExtractsFile>): readonly Registered[] {
  return [...files].flatMap(registered);
}

/** Faults of a file of extracts: unknown sources and statements, and every passage of an edition that contradicts what we say of it. */
export function checkExtracts(
  { source, extracts }: ExtractsFile,
  statements: readonly Statement[],
  sources: Readonly<Record<string, unknown>>,
  { readThrough }: ChannelsFile,
): readonly string[] {
  const byKey = new Map(statements.map((statement) => [keyOf(statement), statement]));
  const unknown = [source, ...extracts.flatMap(({ datedBy }) => datedBy ?? [])]
    .filter((id) => sources[id] === undefined)
    .map((id) => `${id} is not in the register of sources`);
  const otherKind = extracts
    .filter(({ channel }) => (readThrough[source] ?? null) !== channel)
    .map(({ channel }) => `is read through ${channel}, and channels.json says ${readThrough[source]}`);
  const contradicting = registered({ source, extracts }).flatMap((one) => {
    const statement = byKey.get(keyOf(one));
    if (statement === undefined) return [`speaks of ${keyOf(one)}, which there is not`];
    return faultsOfPassage(one, statement);
  });
  return [...unknown, ...otherKind, ...contradicting];
}

function faultsOfPassage({ of, passage }: Registered, statement: Statement): readonly string[] {
  const beside = editionYears.filter((year) => isBeside(of, year));
  const differing = beside.filter((year) => {
    const said = statement.said[year];
    return said === undefined || compared(of, passage, said) !== "agrees";
  });
  const name = keyOf(statement);
  if (passage.judged !== undefined)
    return differing.length > 0 ? [] : [`has a judgment on ${name}, where it says what we do`];
  return differing.map((year) => {
    const said = statement.said[year];
    return `contradicts ${name} of ${year}: it says ${shown(passage)}, we say ${said === undefined ? "nothing" : shown(said)}; judge which is right`;
  });
}

function isBeside({ edition, holds = [] }: Witness, year: EditionYear): boolean {
  return edition === year || holds.includes(year);
}

/** A section holds its paragraphs: what is cited by the section alone stands there wherever in it the passage is. */
function compared({ channel }: Witness, passage: Said, said: Said): Seen["says"] {
  const same = channel === null ? isPartOf(passage.is, said.is) : isDeepStrictEqual(passage.is, said.is);
  if (!same) return "differs";
  const isThere = isIn(passage.at, said.at) || (channel === null && isIn(said.at, passage.at));
  return isThere ? "agrees" : "moved";
}

function isIn(place: string, section: string): boolean {
  return place === section || place.startsWith(`${section}(`) || place.startsWith(`${section} `);
}

/** What is no channel may show a part of a value, or the section alone. */
function isPartOf(part: Said["is"], whole: Said["is"]): boolean {
  if (typeof part !== "object" || part === null || typeof whole !== "object" || whole === null)
    return isDeepStrictEqual(part, whole);
  const all = whole as Readonly<Record<string, unknown>>;
  return Object.entries(part).every(([name, value]) => isDeepStrictEqual(value, all[name]));
}

function shown({ at, is }: Said): string {
  return is === undefined ? at : `${JSON.stringify(is)} at ${at}`;
}

function registered({ source, extracts }: ExtractsFile): readonly Registered[] {
  return extracts.flatMap((extract) => {
    const { edition, dated, datedBy, holds, channel } = extract;
    const of: Witness = {
      source,
      edition,
      dated,
      channel,
      ...(datedBy !== undefined && { datedBy }),
      ...(holds && { holds }),
    };
    return statingFiles.flatMap((file) =>
      passagesIn(extract[file] ?? {}, []).map(({ path, passage }) => ({ of, file, path, passage })),
    );
  });
}

function passagesIn(
  passages: Passages,
  above: readonly string[],
): readonly Pick<Registered, "path" | "passage">[] {
  return Object.entries(passages).flatMap(([name, below]) => {
    const path = [...above, name];
    return isPassage(below) ? [{ path, passage: below }] : passagesIn(below, path);
  });
}

function isPassage(value: Passage | Passages): value is Passage {
  return typeof value["at"] === "string";
}

function keyOf({ file, path }: { readonly file: StatingFile; readonly path: readonly string[] }): string {
  return [file, ...path].join("/");
}

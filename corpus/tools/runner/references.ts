import { type Corpus, type Entry, entriesOf } from "./model.js";

/** What a schema cannot see: ids that point nowhere, come twice or are pointed at by nobody. */
export function referenceFaults(corpus: Corpus, namedByTables: readonly string[]): readonly string[] {
  const entries = entriesOf(corpus);
  return [
    ...entries.flatMap(checkFaults),
    ...duplicates(entries.map(({ check }) => check.id)).map((id) => `${id}: two checks have this id`),
    ...withdrawnFaults(corpus),
    ...flagFaults(corpus),
    ...sourceFaults(corpus, namedByTables),
  ];
}

function checkFaults({ check }: Entry): readonly string[] {
  const { id, stated, holds } = check;
  return stated === null || (holds.length === 1 && holds[0] === stated)
    ? []
    : [`${id}: states ${stated}, so it holds there alone, not in ${holds.join(", ")}`];
}

function withdrawnFaults(corpus: Corpus): readonly string[] {
  const withdrawn = new Set(corpus.files.flatMap((file) => Object.keys(file.withdrawn ?? {})));
  return entriesOf(corpus)
    .filter(({ check }) => withdrawn.has(check.id))
    .map(({ check }) => `${check.id}: was withdrawn, and an id is never used again`);
}

function flagFaults({ files }: Corpus): readonly string[] {
  return files.flatMap(({ role, flags, groups }) => {
    const checks = groups.flatMap((group) => group.checks);
    const used = new Set(checks.flatMap((check) => check.flags));
    const unknown = checks.flatMap((check) =>
      check.flags
        .filter((flag) => !Object.hasOwn(flags, flag))
        .map((flag) => `${check.id}: unknown flag ${flag}`),
    );
    const idle = Object.keys(flags).filter((flag) => !used.has(flag));
    return [...unknown, ...idle.map((flag) => `${role}: no check has the flag ${flag}`)];
  });
}

function sourceFaults({ files, sources }: Corpus, namedByTables: readonly string[]): readonly string[] {
  const cited = files.flatMap(({ role, groups }) => groups.map(({ source }) => ({ by: role, source })));
  const copied = Object.entries(sources).flatMap(([by, { copies }]) =>
    copies === null ? [] : [{ by, source: copies }],
  );
  const inTables = [...new Set(namedByTables)].map((source) => ({ by: "tables", source }));
  const named = [...cited, ...copied, ...inTables];
  const used = new Set(named.map(({ source }) => source));
  return [
    ...named
      .filter(({ source }) => !Object.hasOwn(sources, source))
      .map(({ by, source }) => `${by}: unknown source ${source}`),
    ...Object.keys(sources)
      .filter((source) => !used.has(source))
      .map((source) => `${source}: an orphan, nothing names this source`),
  ];
}

function duplicates(ids: readonly string[]): readonly string[] {
  return [...new Set(ids.filter((id, index) => ids.indexOf(id) !== index))];
}

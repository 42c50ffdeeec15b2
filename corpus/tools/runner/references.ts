import { valueAt } from "../assumptions/places.js";
import { isAddress } from "./hosts.js";
import { type Check, type Corpus, type Entry, entriesOf } from "./model.js";

/** What a schema cannot see: ids that point nowhere, come twice or are pointed at by nobody. */
export function referenceFaults(corpus: Corpus, namedByTables: readonly string[]): readonly string[] {
  const entries = entriesOf(corpus);
  return [
    ...entries.flatMap(checkFaults),
    ...duplicates(entries.map(({ check }) => check.id)).map((id) => `${id}: two checks have this id`),
    ...withdrawnFaults(corpus),
    ...corpus.files.flatMap((file) => countFaults(file.role, file)),
    ...flagFaults(corpus),
    ...sourceFaults(corpus, namedByTables),
  ];
}

function checkFaults({ check }: Entry): readonly string[] {
  const { id, stated, holds, input, assumed, amperes } = check;
  const isOneSided = stated !== null && (holds.length !== 1 || holds[0] !== stated);
  return [
    ...(isOneSided ? [`${id}: states ${stated}, so it holds there alone, not in ${holds.join(", ")}`] : []),
    ...carriedFaults(check).map((fault) => `${id}: ${fault}`),
    ...voiceFaults(check).map((fault) => `${id}: ${fault}`),
    ...assumed
      .filter((path) => valueAt(input, path) === undefined)
      .map((path) => `${id}: assumes ${path}, which the input does not have`),
    ...(amperes === undefined || assumed.some(isOfConductors)
      ? []
      : [`${id}: has amperes, but assumes no conductors`]),
  ];
}

/** An edition that was not read has an answer only by one that was, and such an answer is no evidence. */
function carriedFaults({
  carried = [],
  holds,
  standing,
}: Pick<Check, "carried" | "holds" | "standing">): readonly string[] {
  if (carried.length === 0) return [];
  const beyond = carried.filter((year) => !holds.includes(year));
  return [
    ...(beyond.length > 0 ? [`is carried to ${beyond.join(", ")}, where it does not hold`] : []),
    ...(holds.every((year) => carried.includes(year)) ? ["is carried from no edition"] : []),
    ...(standing === "arithmetic" ? [] : [`is carried, so it is arithmetic and not ${standing}`]),
  ];
}

function isOfConductors(path: string): boolean {
  return /^supply|conductors|enclosed/.test(path);
}

/** Of whom nothing is cited: who asks, and the code itself. */
export function voiceFaults({ voice, standing }: Pick<Check, "voice" | "standing">): readonly string[] {
  if (standing !== "cited") return [];
  if (voice === "asker") return ["what somebody asks is not cited"];
  return voice === "code" ? ["the code's own text is not cited, what follows from it is arithmetic"] : [];
}

/** A file that was cut off and closed again is still valid JSON of the right shape. */
export function countFaults(
  name: string,
  {
    count,
    groups,
  }: { readonly count: number; readonly groups: readonly { readonly checks: readonly unknown[] }[] },
): readonly string[] {
  const has = groups.reduce((sum, { checks }) => sum + checks.length, 0);
  return has === count ? [] : [`${name}: has ${has} checks, and its count is ${count}`];
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
  const lost = [...new Set(cited.map(({ source }) => source))].filter((id) => {
    const source = sources[id];
    return source !== undefined && !isAddress(source.url) && source.findAgain === undefined;
  });
  return [
    ...lost.map((id) => `${id}: has no address of its own, so it needs findAgain: by-title or no`),
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

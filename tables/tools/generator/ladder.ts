import type { EditionYear } from "../../../src/edition/edition-year.js";
import type { Evidence } from "../../../src/edition/evidence.js";
import type { ChannelKind } from "./channels.js";

/** A publication, with the edition that it is of and the kind of channel that it is. */
export interface Witness {
  /** Id of the source, as in tables/sources.json. */
  readonly source: string;
  /** The edition that it states or follows; `null` where that is not known. */
  readonly edition: string | null;
  /** How the edition is known. */
  readonly dated: "stated" | "inferred" | "undated";
  /** Of a publication that does not state its edition itself, the source that does. */
  readonly datedBy?: string;
  /** Of an undated one, the editions beside which it is held. */
  readonly holds?: readonly EditionYear[];
  /** `null` for what supports a value but is no channel. */
  readonly channel: ChannelKind | null;
}

/** What a publication shows of one value: the same at the same place, the same at another place, or another value. */
export interface Seen {
  readonly of: Witness;
  readonly says: "agrees" | "moved" | "differs";
}

/** How sure something is, and through what. */
export interface Known {
  /** Level of evidence. */
  readonly level: Evidence;
  /** Ids of the sources, as in tables/sources.json. */
  readonly sources: readonly string[];
}

/** A side of an edition: the nearest publications before it, or after it. */
interface Side {
  readonly says: Seen["says"] | "nothing";
  readonly sources: readonly string[];
}

/**
 * The one rule of evidence, for cells of tables and for wording. Two kinds of channel of the edition confirm, one is single, if the
 * edition is stated and not inferred. Else the nearest earlier and the nearest later publication bracket, as do one of them and a
 * text whose edition is inferred, or a definition outside the code; one alone carries, as does what is no channel. A value that
 * changed between the two sides is on neither known; where only its place moved, it is carried from the side with the same place.
 */
export function known(seen: readonly Seen[], year: EditionYear, isDefined = false): Known {
  const agreeing = seen.filter(({ says }) => says === "agrees").map(({ of }) => of);
  const ofEdition = agreeing.filter(({ edition, channel }) => edition === year && channel !== null);
  const own = ofEdition.filter(({ dated }) => dated === "stated");
  const inferred = ofEdition.filter(({ dated }) => dated === "inferred");
  const support = agreeing.filter(
    ({ edition, channel, holds = [] }) => channel === null && (edition === year || holds.includes(year)),
  );
  const [before, after] = [nearest(seen, year, "before"), nearest(seen, year, "after")];
  const used = [
    ...(own.length > 0 ? own : inferred).map(({ source }) => source),
    ...(own.length > 0 ? [] : [before, after].flatMap(({ sources }) => sources)),
    ...support.map(({ source }) => source),
  ];
  return { level: levelFrom(), sources: [...new Set(used)] };

  function levelFrom(): Evidence {
    const kinds = new Set(own.map(({ channel }) => channel));
    if (kinds.size > 1) return "confirmed";
    if (kinds.size === 1) return "single";
    const around = [before, after].map(({ says }) => says);
    const sides =
      around.filter((says) => says === "agrees").length + (inferred.length > 0 ? 1 : 0) + (isDefined ? 1 : 0);
    if (sides > 1) return "bracketed";
    const changed = around.includes("differs") && !around.includes("nothing");
    return (sides === 1 && !changed) || support.length > 0 || inferred.length > 0 ? "carried" : "memory";
  }
}

function nearest(seen: readonly Seen[], year: EditionYear, side: "before" | "after"): Side {
  const dated = seen.flatMap(({ of, says }) =>
    of.edition !== null && of.channel !== null ? [{ ...of, edition: of.edition, says }] : [],
  );
  const editions = [...new Set(dated.map(({ edition }) => edition))].sort();
  const edition =
    side === "before"
      ? editions.filter((one) => one < year).at(-1)
      : editions.filter((one) => one > year).at(0);
  const there = dated.filter((one) => one.edition === edition);
  if (there.length === 0) return { says: "nothing", sources: [] };
  const worst = (["differs", "moved"] as const).find((says) => there.some((one) => one.says === says));
  const says = worst ?? "agrees";
  return { says, sources: says === "agrees" ? there.map(({ source }) => source) : [] };
}

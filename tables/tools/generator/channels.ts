import type { EditionYear } from "../../../src/edition/edition-year.js";
import type { Evidence } from "../../../src/edition/evidence.js";

/** Kinds of channel through which a value can be seen; two of different kind confirm it. */
export const channelKinds = [
  "print",
  "publisher-free-access",
  "official-translation",
  "state-reprint",
  "derived-official-code",
] as const;

/** One of {@link channelKinds}. */
export type ChannelKind = (typeof channelKinds)[number];

/** A publication in which somebody could read an edition. */
export interface Channel {
  readonly id: string;
  readonly kind: ChannelKind;
  readonly title: string;
  /** `all`, or the beginnings of the places that it can settle. */
  readonly covers: "all" | readonly string[];
  /** What is known of the channel itself: read in part, its first pages seen, named elsewhere, or only from memory. */
  readonly seen: "in-part" | "front-matter" | "reported" | "memory";
  readonly note?: string;
}

/** `channels.json`. */
export interface ChannelsFile {
  readonly editions: Readonly<Record<EditionYear, readonly Channel[]>>;
  /** The kind of channel that each source of the tables shows. */
  readonly readThrough: Readonly<Record<string, ChannelKind>>;
}

/** What a channel has to settle. */
export interface Unsettled {
  readonly edition: EditionYear;
  readonly section: string;
  readonly level: Evidence;
  readonly sources: readonly string[];
}

/** The kinds of channel behind some sources; those whose kind is not known are passed over. */
export function kindsOf({ readThrough }: ChannelsFile, sources: readonly string[]): readonly ChannelKind[] {
  return sources.flatMap((source) => readThrough[source] ?? []);
}

/** The channels that could raise the level of something: for what was read once, only those of another kind. */
export function channelsFor(file: ChannelsFile, debt: Unsettled): readonly Channel[] {
  const known = debt.level === "single" ? kindsOf(file, debt.sources) : [];
  return (file.editions[debt.edition] ?? []).filter(
    ({ kind, covers }) =>
      !known.includes(kind) &&
      (covers === "all" || covers.some((beginning) => debt.section.startsWith(beginning))),
  );
}

/** Faults of the channels: an id once per edition, and only sources of the register. */
export function checkChannels(file: ChannelsFile, sources: Readonly<Record<string, unknown>>): string[] {
  const twice = Object.entries(file.editions).flatMap(([year, channels]) =>
    channels
      .map(({ id }) => id)
      .filter((id, i, ids) => ids.indexOf(id) !== i)
      .map((id) => `${year}: the channel ${id} stands twice`),
  );
  const unknown = Object.keys(file.readThrough).filter((source) => sources[source] === undefined);
  return [...twice, ...unknown.map((source) => `no source ${source}`)];
}

import type { ConductorEnd } from "../installation/conductor-identity.js";
import { endWords } from "../installation/conductor-words.js";
import type { Link, Marked, Place, PlaceKind } from "./group.js";

/** A place by its id. */
export function place(
  id: string,
  details: readonly string[],
  more: Partial<Place> = {},
  inside: readonly Marked[] = [],
): Place {
  return { key: id, name: id, details, inside, kind: "enclosure", ...more };
}

/** A place by the end of a conductor; `of` keeps those apart that are called alike. */
export function placeOfEnd(end: ConductorEnd, kind: PlaceKind = "elsewhere", of = ""): Place {
  const name = end.kind === "place" ? end.id : endWords(end);
  // No id has a line break.
  return {
    key: end.kind === "place" ? end.id : `${of}\n${name}`,
    name,
    details: [],
    inside: [],
    kind: end.kind === "place" ? "enclosure" : kind,
  };
}

/** The places that are known, and those that only a link names, by their ids. */
export function placesOfLinks(known: readonly Place[], links: readonly Link[]): readonly Place[] {
  const keys = new Set(known.map(({ key }) => key));
  const others = new Set(links.flatMap(({ from, to }) => [from, to]).filter((key) => !keys.has(key)));
  return [...known, ...[...others].map((key) => place(key, []))];
}

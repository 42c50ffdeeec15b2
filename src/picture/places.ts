import type { Link, Marked, Place } from "./group.js";
import type { SymbolKind } from "./picture.js";

/** A place by its id; what follows a line break in a key is ours. */
export function place(
  key: string,
  details: readonly string[],
  symbol?: SymbolKind,
  inside: readonly Marked[] = [],
): Place {
  const [name = key, ours] = key.split("\n");
  return { key, name: ours ?? name, details, inside, ...(symbol && { symbol }) };
}

/** The places that are known, and those that only a link names. */
export function placesOfLinks(known: readonly Place[], links: readonly Link[]): readonly Place[] {
  const keys = new Set(known.map(({ key }) => key));
  const others = new Set(links.flatMap(({ from, to }) => [from, to]).filter((key) => !keys.has(key)));
  return [...known, ...[...others].map((key) => place(key, []))];
}

/** An object in words: the keys that it has to have, then those that it may have. */
export function objectWith(known: readonly string[], open: readonly string[]): string {
  const needed = known.filter((key) => !open.includes(key));
  const may = known.filter((key) => open.includes(key)).join(", ");
  if (needed.length === 0) return `an object that may have ${may}`;
  return `an object with ${needed.join(", ")}${may === "" ? "" : `, and perhaps ${may}`}`;
}

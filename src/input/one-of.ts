/** A choice as an issue words it: the words themselves, the first ones of a long list. */
export function oneOf(words: readonly string[], most = words.length): string {
  const quoted = words.slice(0, most).map((word) => JSON.stringify(word));
  const more = words.length > most ? ` or ${words.length - most} more` : "";
  return words.length === 1 ? quoted.join("") : `one of ${quoted.join(", ")}${more}`;
}

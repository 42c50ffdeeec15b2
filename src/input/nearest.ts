/** The known word that takes the fewest changes of a letter to reach, if it is near enough to be meant. */
export function nearest(word: string, known: readonly string[]): string | undefined {
  const near = known
    .map((one) => ({ one, changes: changesBetween(word.toLowerCase(), one.toLowerCase()) }))
    .filter(({ one, changes }) => changes <= Math.max(2, Math.floor(one.length / 3)))
    .filter(({ one, changes }) => changes < Math.min(word.length, one.length))
    .sort((a, b) => a.changes - b.changes);
  return near[0]?.one;
}

/** Levenshtein distance; long words are compared by their first letters only. */
function changesBetween(a: string, b: string): number {
  const [from, to] = [a.slice(0, 40), b.slice(0, 40)];
  let row = Array.from({ length: to.length + 1 }, (_, i) => i);
  for (let i = 1; i <= from.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= to.length; j += 1) {
      const same = from[i - 1] === to[j - 1] ? 0 : 1;
      next.push(Math.min((next[j - 1] ?? 0) + 1, (row[j] ?? 0) + 1, (row[j - 1] ?? 0) + same));
    }
    row = next;
  }
  return row.at(-1) ?? 0;
}

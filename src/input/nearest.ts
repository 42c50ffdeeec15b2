/** The known word that takes the fewest changes of a letter to reach, if it is near enough to be meant. */
export function nearest(word: string, known: readonly string[]): string | undefined {
  return equallyNear(word, known)[0];
}

/** All known words that take the fewest changes of a letter to reach, if they are near enough to be meant. */
export function equallyNear(word: string, known: readonly string[]): readonly string[] {
  const near = known
    .map((one) => ({ one, changes: changesBetween(word.toLowerCase(), one.toLowerCase()) }))
    .filter(({ one, changes }) => changes <= Math.max(2, Math.floor(one.length / 3)))
    .filter(({ one, changes }) => changes < Math.min(word.length, one.length))
    .filter(({ one, changes }) => !isOpposite(word.toLowerCase(), one.toLowerCase(), changes))
    .sort((a, b) => a.changes - b.changes);
  return near.filter(({ changes }) => changes === near[0]?.changes).map(({ one }) => one);
}

const negations = ["un", "non", "not-"];

/**
 * Whether one of two words denies the other, as "grounded" and "ungrounded" do: they are nearer without the denial than with it. A letter is
 * all that lies between them, and yet neither is ever meant by the other.
 */
function isOpposite(word: string, known: string, changes: number): boolean {
  return negations.some((negation) => {
    const [denies, isDenied] = [word.startsWith(negation), known.startsWith(negation)];
    if (denies === isDenied) return false;
    const bare = (one: string): string => (one.startsWith(negation) ? one.slice(negation.length) : one);
    return changesBetween(bare(word), bare(known)) < changes;
  });
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

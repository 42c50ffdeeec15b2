/** What there is to remark on one thing in one column. */
interface Remarked {
  readonly name: string;
  /** Name of the column. */
  readonly key: string;
  readonly cautions: readonly string[];
  readonly readings: readonly string[];
}

/** The cautions and open readings of a comparison, each once, with the conductors and columns that it is about. */
export function remarksSideBySide(
  entries: readonly Remarked[],
  columns: readonly string[],
): { readonly cautions: readonly string[]; readonly readings: readonly string[] } {
  const cautions = new Places();
  const readings = new Places();
  for (const { name, key, ...remarks } of entries) {
    for (const text of remarks.cautions) cautions.add(text, name, key);
    for (const text of remarks.readings) readings.add(text, name, key);
  }
  return { cautions: cautions.lines(columns), readings: readings.lines(columns) };
}

/** Texts with the conductors that they are about, and of each the columns. */
class Places {
  readonly #texts = new Map<string, Map<string, Set<string>>>();

  add(text: string, name: string, key: string): void {
    const names = this.#texts.get(text) ?? new Map<string, Set<string>>();
    names.set(name, new Set([...(names.get(name) ?? []), key]));
    this.#texts.set(text, names);
  }

  lines(columns: readonly string[]): readonly string[] {
    return [...this.#texts].map(([text, names]) => {
      const alike = new Map<string, string[]>();
      for (const [name, keys] of names) {
        const where = columnsWords(keys, columns);
        alike.set(where, [...(alike.get(where) ?? []), name]);
      }
      return `${text} At: ${[...alike].map(([where, own]) => `${own.join(", ")} (${where})`).join("; ")}`;
    });
  }
}

/** More columns beside each other are named by the first and the last. */
const mostNamed = 2;

function columnsWords(keys: ReadonlySet<string>, columns: readonly string[]): string {
  if (keys.size === columns.length) return "every column";
  const at = columns.flatMap((key, i) => (keys.has(key) ? [i] : []));
  const [first = 0, last = first] = [at[0], at.at(-1)];
  const areNeighbors = last - first + 1 === at.length;
  return at.length > mostNamed && areNeighbors
    ? `${columns[first]} to ${columns[last]}`
    : at.map((i) => columns[i]).join(", ");
}

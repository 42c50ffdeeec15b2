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
  columns: number,
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

  lines(columns: number): readonly string[] {
    return [...this.#texts].map(([text, names]) => {
      const places = [...names].map(
        ([name, keys]) => `${name} (${keys.size === columns ? "every column" : [...keys].join(", ")})`,
      );
      return `${text} At: ${places.join("; ")}`;
    });
  }
}

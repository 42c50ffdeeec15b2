/** What is connected with what, by names of nodes. */
export class Graph {
  readonly #beside = new Map<string, Set<string>>();

  add(node: string): Set<string> {
    const known = this.#beside.get(node) ?? new Set();
    this.#beside.set(node, known);
    return known;
  }

  connect(one: string, other: string): void {
    this.add(one).add(other);
    this.add(other).add(one);
  }

  get nodes(): readonly string[] {
    return [...this.#beside.keys()];
  }

  /** All nodes that a walk from one reaches that keeps off some nodes. */
  from(start: string, isOff: (node: string) => boolean = () => false): ReadonlySet<string> {
    const reached = new Set([start]);
    for (const one of reached)
      for (const next of this.#beside.get(one) ?? []) if (!isOff(next)) reached.add(next);
    return reached;
  }
}

import { createHash } from "node:crypto";

/** A checker in front of the compiler: lets as many changes through as the sample holds, always the same ones, and refuses the rest. */
class Sample {
  static inject = [];

  #drawn = new Set();

  async init() {}

  async group(changes) {
    const place = ({ fileName, location, mutatorName, replacement }) =>
      JSON.stringify([fileName.slice(fileName.lastIndexOf("/src/")), location, mutatorName, replacement]);
    const rank = (change) => createHash("sha256").update(place(change)).digest("hex");
    const byRank = changes
      .map((change) => [rank(change), change.id])
      .sort(([one], [other]) => (one < other ? -1 : 1));
    const [from, many] = JSON.parse(process.env.MUTATION_SAMPLE);
    this.#drawn = new Set(byRank.slice(from, from + many).map(([, id]) => id));
    return [changes.map(({ id }) => id)];
  }

  async check(changes) {
    const judge = ({ id }) =>
      this.#drawn.has(id) ? { status: "passed" } : { status: "compileError", reason: "not drawn" };
    return Object.fromEntries(changes.map((change) => [change.id, judge(change)]));
  }
}

export const strykerPlugins = [{ kind: "Checker", name: "sample", injectableClass: Sample }];

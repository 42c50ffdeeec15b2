import type { Mistake } from "../../../corpus/tools/runner/model.js";

interface ChecksSchema {
  readonly $defs: {
    readonly mistake: {
      readonly oneOf: readonly { readonly const: Mistake; readonly description: string }[];
    };
  };
}

/** The sentence on each mistake, from the schema of the checks, which is where it is kept. */
export function mistakeSentences(checksSchema: object): Readonly<Record<Mistake, string>> {
  const { oneOf } = (checksSchema as ChecksSchema).$defs.mistake;
  return Object.fromEntries(oneOf.map((one) => [one.const, one.description])) as Record<Mistake, string>;
}

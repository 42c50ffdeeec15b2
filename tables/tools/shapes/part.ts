import type { GenericSchema } from "valibot";
import type { ByHand } from "../../../src/input/define.js";

/** A definition taken apart: the bare schema, and what was said of it. */
export interface Part {
  readonly bare: GenericSchema & Bare;
  /** The definitions that it was made from, the nearest first, itself among them. */
  readonly from: readonly GenericSchema[];
  readonly description: string | undefined;
  readonly called: string | undefined;
  readonly advice: string | undefined;
  readonly hand: ByHand | undefined;
  /** What its checks require, by their type: `min_length`, `max_value`, `integer`. */
  readonly requires: Readonly<Record<string, unknown>>;
}

/** Members of a schema of any type. */
interface Bare {
  readonly type: string;
  readonly entries?: Readonly<Record<string, GenericSchema>>;
  readonly options?: readonly unknown[];
  readonly item?: GenericSchema;
  readonly wrapped?: GenericSchema;
  readonly literal?: unknown;
  readonly key?: string;
}

interface Item {
  readonly kind: string;
  readonly type: string;
  readonly description?: string;
  readonly metadata?: { readonly called?: string; readonly advice?: string; readonly hand?: ByHand };
  readonly requirement?: unknown;
}

/** Takes a definition apart. */
export function partOf(schema: GenericSchema): Part {
  const { pipe } = schema as { readonly pipe?: readonly [GenericSchema, ...Item[]] };
  if (pipe === undefined) {
    const bare = schema as Part["bare"];
    return {
      bare,
      from: [schema],
      description: undefined,
      called: undefined,
      advice: undefined,
      hand: undefined,
      requires: {},
    };
  }
  const [first, ...items] = pipe;
  const before = partOf(first);
  const last = <T>(pick: (item: Item) => T | undefined): T | undefined =>
    items
      .map(pick)
      .filter((one) => one !== undefined)
      .at(-1);
  return {
    bare: before.bare,
    from: [schema, ...before.from],
    description: last(({ description }) => description) ?? before.description,
    called: last(({ metadata }) => metadata?.called) ?? before.called,
    advice: last(({ metadata }) => metadata?.advice) ?? before.advice,
    hand: last(({ metadata }) => metadata?.hand) ?? before.hand,
    requires: {
      ...before.requires,
      ...Object.fromEntries(
        items.filter(({ kind }) => kind === "validation").map(({ type, requirement }) => [type, requirement]),
      ),
    },
  };
}

import { readFileSync } from "node:fs";
import type { Role } from "../../../src/index.js";
import { valueAt, withValueAt } from "../assumptions/places.js";

/** What an input means where it leaves a member out; corpus/schema/defaults.schema.json says when one applies. */
export interface Default {
  readonly roles: readonly Role[];
  readonly at: string;
  readonly where?: Readonly<Record<string, unknown>>;
  readonly value: unknown;
  readonly says: string;
}

/** The defaults of the inputs, in the order in which they apply. */
export function readDefaults(): readonly Default[] {
  const file = new URL("../../flat/defaults.json", import.meta.url);
  return (JSON.parse(readFileSync(file, "utf8")) as { readonly defaults: readonly Default[] }).defaults;
}

/** An input that says everything, so that whoever reads it needs to know no default. */
export function withDefaults<I extends object>(role: Role, input: I, defaults: readonly Default[]): I {
  return defaults
    .filter(({ roles }) => roles.includes(role))
    .reduce((full, one) => (isMissing(full, one) ? withValueAt(full, one.at, one.value) : full), input);
}

function isMissing(input: object, { at, where = {} }: Default): boolean {
  const owner = at.includes(".") ? valueAt(input, at.slice(0, at.lastIndexOf("."))) : input;
  return (
    typeof owner === "object" &&
    owner !== null &&
    valueAt(input, at) === undefined &&
    Object.entries(where).every(([member, value]) => valueAt(input, member) === value)
  );
}

import type { FunctionComponent } from "preact";
import type { Json, Keys } from "../state/data.js";
import type { Schema } from "../state/fields.js";

/** A value at a place, with the schema that it is to follow. */
export interface ValueProps {
  readonly schema: Schema;
  readonly keys: Keys;
  readonly name: string;
  readonly value: Json | undefined;
  readonly isRequired: boolean;
}

/** What the field of a list is made of. The field of any value hands them over, for it holds the field of a list in turn. */
export interface InnerFields {
  readonly ofValue: FunctionComponent<ValueProps>;
  readonly ofMembers: FunctionComponent<Omit<ValueProps, "isRequired">>;
}

import type { Role } from "../../../src/index.js";
import { type Standing, voices } from "../runner/model.js";
import type { Documents } from "../runner/validate.js";
import { type SchemaNode, skeletonOf } from "./skeleton.js";

interface Schema {
  readonly $defs: Readonly<Record<string, SchemaNode>>;
}

/** What a draft is for. */
export interface DraftOf {
  readonly role: Role;
  readonly source: string;
  readonly standing: Standing;
}

/** An addition that still has to be filled in, with a place for the source if the register does not have it. */
export function draftOf({ role, source, standing }: DraftOf, documents: Documents): object {
  const inputs = documents.inputsSchema as Schema;
  const register = documents.sourcesSchema as { readonly additionalProperties: SchemaNode };
  const known = Object.hasOwn(documents.sources as object, source);
  return {
    role,
    source,
    // The register has null for what is not known, so that null is where a draft begins.
    ...(known
      ? {}
      : {
          register: {
            ...(skeletonOf(register.additionalProperties, {}) as object),
            url: null,
            findAgain: "by-title|no",
            date: null,
            copies: null,
          },
        }),
    check: {
      id: "",
      stated: null,
      holds: [],
      flags: [],
      input: skeletonOf({ $ref: `#/$defs/${role}` }, inputs.$defs),
      expect: { size: "" },
      locator: "",
      standing,
      voice: voices.join("|"),
      assumed: [],
      ...(standing === "disputed" ? { dispute: disputeIn(documents.checksSchema as Schema) } : {}),
    },
  };
}

function disputeIn({ $defs }: Schema): object {
  const mistakes = ($defs["mistake"]?.oneOf ?? []).map((one) => one.const);
  return {
    section: "",
    mistake: [...mistakes, "null"].join("|"),
    readings: ["", ""],
    reason: "",
    expectByText: { size: "" },
  };
}
